#include "app/gui/models/piece_tree.h"

#include "app/gui/models/job_rows.h"
#include "core/jobfile/read.h"
#include "core/units/parse.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

using jobfile::Tree;
using units::System;

namespace {

std::string textOf(const Tree* value) {
    return value && value->text() ? *value->text() : std::string();
}

bool isSided(const std::string& shape) {
    return shape == "rectangle" || shape == "bar";
}

/// Every place on the piece: of holes, of traced holes, of bad areas.
std::vector<std::string> placesOn(const Tree& tree, const std::string& at) {
    std::vector<std::string> places;
    const auto points = [&](const std::string& path) {
        for (std::size_t i = 0; i < rowCount(tree, path); ++i) {
            const std::string point = rowPath(path, i);
            const Tree* row = tree.at(point);
            places.push_back(row && row->members() ? point + ".at" : point);
        }
    };
    for (std::size_t i = 0; i < rowCount(tree, at + ".holes"); ++i) {
        const std::string hole = rowPath(at + ".holes", i);
        if (tree.at(hole + ".points"))
            points(hole + ".points");
        else
            places.push_back(hole + ".at");
    }
    for (std::size_t i = 0; i < rowCount(tree, at + ".bad_areas"); ++i)
        points(rowPath(at + ".bad_areas", i) + ".points");
    return places;
}

/// Figures apart by blanks and commas, each with its unit or that of `system`; mm.
util::Result<std::vector<double>> figuresIn(const std::string& text, System system) {
    std::vector<std::string> words;
    std::string word;
    const auto isUnit = [](const std::string& w) {
        return w == "mm" || w == "cm" || w == "m" || w == "in" || w == "\"" || w == "ft" || w == "inch";
    };
    const auto take = [&] {
        if (word.empty())
            return;
        const bool fraction = word.find('/') != std::string::npos && word.front() != '-';
        if (!words.empty() && (isUnit(word) || fraction)) // "3 1/2", "12 mm"
            words.back() += " " + word;
        else
            words.push_back(word);
        word.clear();
    };
    for (const char c : text) {
        if (c == ' ' || c == ',' || c == '\t')
            take();
        else
            word += c;
    }
    take();
    std::vector<double> figures;
    for (const std::string& each : words) {
        const bool bare = each.find_first_not_of("0123456789.-+/ ") == std::string::npos;
        const auto length =
            units::parse<units::Length>(bare ? each + (system == System::Inch ? " in" : " mm") : each);
        if (!length)
            return util::Problem{"", say("\"%1\" is not a length. Type it like %2.", {each, "20 mm"})};
        figures.push_back(length->mm());
    }
    return figures;
}

std::vector<std::string> parts(const std::string& text) {
    std::vector<std::string> found(1);
    for (const char c : text) {
        if (c == ';' || c == '\n')
            found.emplace_back();
        else
            found.back() += c;
    }
    std::erase_if(
        found, [](const std::string& part) { return part.find_first_not_of(" \t\r,") == std::string::npos; });
    return found;
}

} // namespace

Tree newPiece(const std::string& name, System system) {
    Tree piece = Tree::object();
    piece.set("name", name);
    piece.set("outline.shape", "rectangle");
    piece.set("outline.length", system == System::Inch ? "12 in" : "300 mm");
    piece.set("outline.width", system == System::Inch ? "8 in" : "200 mm");
    return piece;
}

std::optional<double> mmOf(const Tree* value) {
    if (!value)
        return {};
    if (const double* number = value->number())
        return *number;
    if (const std::string* text = value->text())
        if (const auto length = units::parse<units::Length>(*text))
            return length->mm();
    return {};
}

shape::Point zeroOf(const Tree& tree, const std::string& at) {
    if (!isSided(textOf(tree.at(at + ".outline.shape"))))
        return {};
    const auto length = mmOf(tree.at(at + ".outline.length")), width = mmOf(tree.at(at + ".outline.width"));
    return {-length.value_or(0) / 2, -width.value_or(0) / 2};
}

Tree placeFrom(const Tree& tree, const std::string& path, std::size_t axis, double zero, System system) {
    const Tree* value = tree.at(path + "[" + std::to_string(axis) + "]");
    if (!value || zero == 0)
        return value ? *value : Tree();
    const auto mm = mmOf(value);
    return mm ? Tree(typedMm(*mm - zero, system)) : *value;
}

void putSide(Tree& tree, const std::string& at, const std::string& key, const Tree& value, System system) {
    const std::string path = at + ".outline." + key;
    const shape::Point before = zeroOf(tree, at);
    if (value.isNull())
        tree.erase(path);
    else
        tree.set(path, value);
    const shape::Point by = zeroOf(tree, at) - before;
    if (value.isNull() || !mmOf(&value) || (by.x == 0 && by.y == 0) || before.x == 0 || before.y == 0)
        return;
    for (const std::string& place : placesOn(tree, at))
        for (const auto& [axis, move] : {std::pair(0, by.x), std::pair(1, by.y)}) {
            const std::string figure = place + "[" + std::to_string(axis) + "]";
            if (const auto mm = mmOf(tree.at(figure)); mm && move != 0)
                tree.set(figure, typedMm(*mm + move, system));
        }
}

void withOutline(Tree& tree, const std::string& at, const std::function<void(Tree&)>& edit) {
    Tree job = Tree::object();
    if (const Tree* outline = tree.at(at + ".outline"))
        job.set("plate.outline", *outline);
    edit(job);
    if (const Tree* outline = job.at("plate.outline"))
        tree.set(at + ".outline", *outline);
}

job::Outline outlineAt(const Tree& tree, const std::string& at) {
    Tree job = Tree::object();
    if (const Tree* outline = tree.at(at + ".outline"))
        job.set("plate.outline", *outline);
    return jobfile::readJob(job).job.plate.outline.value_or(job::Outline());
}

std::optional<UprightBox> boxAt(const Tree& tree, const std::string& path) {
    if (rowCount(tree, path) != 4)
        return {};
    std::vector<shape::Point> points;
    for (std::size_t i = 0; i < 4; ++i) {
        const Tree* row = tree.at(rowPath(path, i));
        if (!row || !row->items() || row->items()->size() != 2)
            return {};
        const auto x = mmOf(&(*row->items())[0]), y = mmOf(&(*row->items())[1]);
        if (!x || !y)
            return {};
        points.push_back({*x, *y});
    }
    shape::Point low = points[0], high = points[0];
    for (const shape::Point p : points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    constexpr double kSame = 0.01;
    const auto at = [](double a, double b) { return std::abs(a - b) < kSame; };
    for (std::size_t i = 0; i < 4; ++i) {
        const shape::Point p = points[i], q = points[(i + 1) % 4];
        const bool corner = (at(p.x, low.x) || at(p.x, high.x)) && (at(p.y, low.y) || at(p.y, high.y));
        if (!corner || at(p.x, q.x) == at(p.y, q.y)) // a side goes along one axis, and goes somewhere
            return {};
    }
    return UprightBox{low, high.x - low.x, high.y - low.y};
}

void putBox(Tree& tree, const std::string& path, const UprightBox& box, System system) {
    Tree points = Tree::list();
    const shape::Point high = box.low + shape::Point{box.wide, box.high};
    for (const shape::Point p : {box.low, {high.x, box.low.y}, high, {box.low.x, high.y}})
        points.push(typedPlace(p, system));
    tree.set(path, std::move(points));
}

util::Result<Tree> pointsFrom(const std::string& text, System system) {
    Tree points = Tree::list();
    for (const std::string& part : parts(text)) {
        const auto figures = figuresIn(part, system);
        if (!figures)
            return figures.problem();
        if (figures->size() != 2)
            return util::Problem{"", say("\"%1\" is no point. Type two figures for each, and a semicolon "
                                         "after it, like %2.",
                                         {part, "0 0; 330 0; 330 70; 0 290"})};
        points.push(typedPlace({(*figures)[0], (*figures)[1]}, system));
    }
    if (points.items()->size() < 3)
        return util::Problem{"", say("At least three points are needed, in order round the edge.")};
    return points;
}

util::Result<Tree> fourSides(const std::string& text, System system) {
    std::vector<double> sides;
    for (const std::string& part : parts(text)) {
        const auto figures = figuresIn(part, system);
        if (!figures)
            return figures.problem();
        sides.insert(sides.end(), figures->begin(), figures->end());
    }
    if (sides.size() != 5 || *std::ranges::min_element(sides) <= 0)
        return util::Problem{"", say("Type the four sides in order and then the diagonal, like %1.",
                                     {"300, 210, 290, 205; 360"})};
    const double a = sides[0], b = sides[1], c = sides[2], d = sides[3], diagonal = sides[4];
    // Corner 1 at zero, corner 2 along x, corner 3 at the far end of the diagonal.
    const double cosine = (a * a + diagonal * diagonal - b * b) / (2 * a * diagonal);
    const double other = (d * d + diagonal * diagonal - c * c) / (2 * d * diagonal);
    if (std::abs(cosine) >= 1 || std::abs(other) >= 1)
        return util::Problem{"", say("These five do not close: the diagonal is too long or too short for the "
                                     "sides. Measure it again, from corner to corner.")};
    const double angle = std::acos(cosine);
    Tree points = Tree::list();
    for (const shape::Point p : {shape::Point{}, shape::Point{a, 0}, shape::polar(diagonal, angle),
                                 shape::polar(d, angle + std::acos(other))})
        points.push(typedPlace(p, system));
    return points;
}

} // namespace pw::gui
