#include "core/jobfile/words.h"
#include "core/rack/rack_file.h"

#include <cmath>

namespace pw::rack {

namespace {

using jobfile::Tree;

Tree mm(double value) {
    // Plain numbers are mm in a file; a hundred-thousandth of one is beyond any rule.
    return Tree(std::round(value * 1e5) / 1e5);
}

Tree text(double value, const char* unit) {
    return Tree(jobfile::describe(Tree(std::round(value * 1e5) / 1e5)) + " " + unit);
}

Tree millimetres(Length value) {
    return text(value.mm(), "mm");
}

Tree place(double x, double y) {
    return Tree::List{mm(x), mm(y)};
}

Tree cornerList(const std::vector<shape::Vertex>& points) {
    Tree list = Tree::list();
    for (const shape::Vertex& point : points) {
        Tree corner = place(point.at.x, point.at.y);
        if (point.bulge != 0)
            corner.push(point.bulge);
        list.push(std::move(corner));
    }
    return list;
}

Tree outlineTree(const job::Outline& outline) {
    Tree t = Tree::object();
    switch (outline.shape) {
    case job::OutlineShape::Disc:
        t["shape"] = "disc";
        break;
    case job::OutlineShape::Bar:
        t["shape"] = "bar";
        break;
    case job::OutlineShape::Rectangle:
        t["shape"] = "rectangle";
        break;
    case job::OutlineShape::Polygon:
        t["shape"] = "polygon";
        t["points"] = cornerList(outline.points);
        return t;
    }
    const auto put = [&](const char* key, const Given<Length>& value) {
        if (value)
            t[key] = millimetres(*value);
    };
    put("diameter", outline.diameter);
    put("length", outline.length);
    put("width", outline.width);
    put("corner", outline.corner);
    if (outline.shape == job::OutlineShape::Bar)
        t["ends"] = outline.roundEnds ? "round" : "square";
    return t;
}

Tree holeTree(const StockHole& hole) {
    Tree t = Tree::object();
    if (!hole.points.empty()) {
        t["points"] = cornerList(hole.points);
        return t;
    }
    t["at"] = Tree::List{millimetres(hole.form.at.x), millimetres(hole.form.at.y)};
    const job::HoleForm& form = hole.form.form;
    if (form.shape == job::HoleShape::Slot) {
        t["shape"] = "slot";
        t["length"] = millimetres(*form.length);
        t["width"] = millimetres(*form.width);
        if (form.turn)
            t["turn"] = text(form.turn->degree(), "deg");
    } else {
        t["diameter"] = millimetres(*hole.form.diameter);
    }
    return t;
}

Tree steelTree(const job::Material& steel) {
    if (!steel.yield && !steel.ultimate && !steel.E && !steel.nu && !steel.density && !steel.expansion)
        return steel.name;
    Tree t = Tree::object();
    t["name"] = steel.name;
    const auto stress = [&](const char* key, const Given<units::Stress>& value) {
        if (value)
            t[key] = text(value->mpa(), "MPa");
    };
    stress("yield", steel.yield);
    stress("ultimate", steel.ultimate);
    stress("E", steel.E);
    const auto number = [&](const char* key, const Given<double>& value) {
        if (value)
            t[key] = *value;
    };
    number("nu", steel.nu);
    number("density", steel.density);
    number("expansion", steel.expansion);
    return t;
}

Tree testsTree(const job::ShopTests& tests) {
    Tree t = Tree::object();
    if (tests.file != job::FileTest::NotTried)
        t["file"] = tests.file == job::FileTest::Bites ? "bites" : "skates";
    if (tests.bend != job::BendTest::NotTried)
        t["bend"] = tests.bend == job::BendTest::Bent ? "bent" : "snapped";
    if (tests.cracks != job::CrackTest::NotTried)
        t["cracks"] = tests.cracks == job::CrackTest::None ? "none" : "seen";
    return t;
}

} // namespace

Tree toTree(const Offcut& offcut) {
    Tree t = Tree::object();
    t["name"] = offcut.name;
    if (offcut.thickness.low == offcut.thickness.high)
        t["thickness"] = millimetres(offcut.thickness.low);
    else
        t["thickness"] = Tree::List{millimetres(offcut.thickness.low), millimetres(offcut.thickness.high)};
    if (offcut.pitting)
        t["pitting"] = millimetres(*offcut.pitting);
    if (offcut.steel)
        t["steel"] = steelTree(*offcut.steel);
    if (offcut.steelIs == SteelIs::Guessed)
        t["steel_is"] = "guessed";
    if (!(offcut.tests == job::ShopTests{}))
        t["tests"] = testsTree(offcut.tests);
    t["outline"] = outlineTree(offcut.outline);
    if (!offcut.holes.empty()) {
        Tree& holes = t["holes"] = Tree::list();
        for (const StockHole& hole : offcut.holes)
            holes.push(holeTree(hole));
    }
    if (!offcut.badAreas.empty()) {
        Tree& areas = t["bad_areas"] = Tree::list();
        for (const BadArea& area : offcut.badAreas) {
            Tree item = Tree::object();
            item["points"] = cornerList(area.points);
            if (!area.note.empty())
                item["note"] = area.note;
            areas.push(std::move(item));
        }
    }
    if (!offcut.note.empty())
        t["note"] = offcut.note;
    if (!offcut.where.empty())
        t["where"] = offcut.where;
    if (offcut.count != 1)
        t["count"] = offcut.count;
    if (!offcut.owned)
        t["owned"] = false;
    return t;
}

} // namespace pw::rack
