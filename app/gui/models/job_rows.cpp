#include "app/gui/models/job_rows.h"

#include "core/job/station_places.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace pw::gui {

using jobfile::Tree;

namespace {

constexpr const char* kCorners = "plate.outline.points";

double figureOf(const job::Given<units::Length>& length, double otherwise) {
    return length ? length->mm() : otherwise;
}

/// Corners of about the outline there is.
std::vector<shape::Vertex> cornersOf(const job::Outline& outline) {
    if (outline.shape == job::OutlineShape::Disc) {
        // An eight-sided plate of the same width over flats.
        const double half = figureOf(outline.diameter, 160) / 2, eighth = std::numbers::pi / 4;
        std::vector<shape::Vertex> corners;
        for (int i = 0; i < 8; ++i)
            corners.push_back({shape::polar(half / std::cos(eighth / 2), (i + 0.5) * eighth), 0});
        return corners;
    }
    const double x = figureOf(outline.length, 160) / 2, y = figureOf(outline.width, 160) / 2;
    return {{{-x, -y}, 0}, {{x, -y}, 0}, {{x, y}, 0}, {{-x, y}, 0}};
}

shape::Box boxOf(const job::Outline& outline) {
    if (outline.shape == job::OutlineShape::Polygon && outline.points.size() >= 3)
        return shape::bounds(shape::Loop{outline.points});
    const double x =
        figureOf(outline.shape == job::OutlineShape::Disc ? outline.diameter : outline.length, 160) / 2;
    const double y =
        figureOf(outline.shape == job::OutlineShape::Disc ? outline.diameter : outline.width, 2 * x) / 2;
    return {{-x, -y}, {x, y}};
}

Tree cornerTree(const shape::Vertex& vertex, units::System system) {
    Tree corner = typedPlace(vertex.at, system);
    if (vertex.bulge != 0)
        corner.push(Tree(vertex.bulge));
    return corner;
}

Tree::List* listAt(Tree& tree, const std::string& group, const std::string& key) {
    Tree* parent = &tree;
    for (std::size_t from = 0; from <= group.size();) {
        const std::size_t dot = std::min(group.find('.', from), group.size());
        auto* members = parent->members();
        if (!members)
            return nullptr;
        const auto found =
            std::ranges::find(*members, group.substr(from, dot - from), &Tree::Object::value_type::first);
        if (found == members->end())
            return nullptr;
        parent = &found->second;
        from = dot + 1;
    }
    return parent->find(key) ? (*parent)[key].items() : nullptr;
}

/// Sets one entry of a list with an entry for each station; takes the list out when all are `usual`.
void setEntry(Tree& tree, const std::string& path, std::size_t count, std::size_t station, Tree value,
              const Tree& usual) {
    Tree::List entries;
    if (const Tree* now = tree.at(path); now && now->items())
        entries = *now->items();
    entries.resize(count, usual);
    if (station < count)
        entries[station] = std::move(value);
    if (std::ranges::all_of(entries, [&](const Tree& entry) { return entry == usual; }))
        tree.erase(path);
    else
        tree.set(path, Tree(std::move(entries)));
}

} // namespace

std::size_t rowCount(const Tree& tree, const std::string& path) {
    const Tree* list = tree.at(path);
    return list && list->items() ? list->items()->size() : 0;
}

std::string rowPath(const std::string& list, std::size_t row) {
    return list + "[" + std::to_string(row) + "]";
}

std::string typedMm(double mm, units::System system) {
    if (system == units::System::Metric) {
        const double rounded = std::round(mm * 100) / 100;
        return units::writtenNumber(rounded == 0 ? 0 : rounded, 8) + " mm"; // no minus nought
    }
    const std::string size =
        units::plainBlanks(units::writtenInchFraction(units::Length::fromMm(std::abs(mm))));
    return mm < -1e-9 && size != "0 in" ? "-" + size : size;
}

Tree typedPlace(shape::Point at, units::System system) {
    return Tree(Tree::List{Tree(typedMm(at.x, system)), Tree(typedMm(at.y, system))});
}

std::vector<std::size_t> understoodRows(const Tree& tree, const util::Problems& problems,
                                        const std::string& list, const std::vector<std::string>& keys) {
    std::vector<std::size_t> kept;
    for (std::size_t row = 0; row < rowCount(tree, list); ++row) {
        const std::string path = rowPath(list, row);
        const bool wrong = std::ranges::any_of(problems, [&](const util::Problem& problem) {
            return problem.field == path || std::ranges::any_of(keys, [&](const std::string& key) {
                       return problem.field.starts_with(path + "." + key);
                   });
        });
        if (!wrong)
            kept.push_back(row);
    }
    return kept;
}

std::string cornerPlacePath(const Tree& tree, std::size_t corner) {
    const std::string path = rowPath(kCorners, corner);
    const Tree* row = tree.at(path);
    return row && row->members() ? path + ".at" : path;
}

void moveCorner(Tree& tree, std::size_t corner, shape::Point to, units::System system) {
    const std::string place = cornerPlacePath(tree, corner);
    tree.set(place + "[0]", typedMm(to.x, system));
    tree.set(place + "[1]", typedMm(to.y, system));
}

void addCorner(Tree& tree, const std::vector<shape::Vertex>& corners, std::size_t side, shape::Point near,
               units::System system) {
    Tree::List* list = listAt(tree, "plate.outline", "points");
    if (!list || side >= list->size() || side >= corners.size())
        return;
    const shape::Side whole = shape::Loop{corners}.side(side);
    const shape::Point at = whole.nearestTo(near);
    shape::Vertex fresh{at, 0};
    if (whole.isArc()) {
        // tan(sweep / 4): each part keeps its share of the sweep.
        const shape::Circle circle = whole.circle();
        const shape::Point a = whole.from - circle.centre, b = at - circle.centre;
        double first = std::atan2(shape::cross(a, b), shape::dot(a, b));
        if (first * whole.sweep() < 0)
            first += whole.sweep() > 0 ? 2 * std::numbers::pi : -2 * std::numbers::pi;
        fresh.bulge = std::tan((whole.sweep() - first) / 4);
        const Tree before = cornerTree({whole.from, std::tan(first / 4)}, system);
        Tree& kept = (*list)[side];
        if (kept.members()) {
            kept.set("bulge", std::tan(first / 4));
        } else {
            const Tree::List typed = *kept.items();
            kept = Tree(Tree::List{typed[0], typed[1], (*before.items())[2]});
        }
    }
    list->insert(list->begin() + static_cast<std::ptrdiff_t>(side) + 1, cornerTree(fresh, system));
}

bool removeCorner(Tree& tree, std::size_t corner) {
    if (rowCount(tree, kCorners) <= 3)
        return false;
    return tree.erase(rowPath(kCorners, corner));
}

bool roundCorner(Tree& tree, const std::vector<shape::Vertex>& corners, std::size_t corner, double radius,
                 units::System system) {
    Tree::List* list = listAt(tree, "plate.outline", "points");
    const std::size_t n = corners.size();
    if (!list || list->size() != n || n < 3 || corner >= n || radius <= 0)
        return false;
    const shape::Loop loop{corners};
    const shape::Side in = loop.side((corner + n - 1) % n), out = loop.side(corner);
    if (in.isArc() || out.isArc())
        return false;
    const shape::Point back = (in.from - in.to) * (1 / in.length()), on = out.tangentAt(0);
    const double turn = std::atan2(shape::cross(back * -1.0, on), shape::dot(back * -1.0, on));
    // The arc begins so far from the corner on both sides.
    const double from = radius * std::abs(std::tan(turn / 2));
    if (std::abs(turn) < 1e-6 || from >= in.length() || from >= out.length())
        return false;
    const shape::Point at = corners[corner].at;
    (*list)[corner] = cornerTree({at + from * back, std::tan(turn / 4)}, system);
    list->insert(list->begin() + static_cast<std::ptrdiff_t>(corner) + 1,
                 cornerTree({at + from * on, 0}, system));
    return true;
}

void switchOutline(Tree& tree, const job::Job& job, const std::string& shape, units::System system) {
    tree.set("plate.outline.shape", shape);
    const job::Outline outline = job.plate.outline.value_or(job::Outline());
    const shape::Box box = boxOf(outline);
    const auto fill = [&](const char* key, double mm) {
        const std::string path = std::string("plate.outline.") + key;
        if (!tree.at(path))
            tree.set(path, typedMm(mm, system));
    };
    if (shape == "disc") {
        fill("diameter", std::max(box.width(), box.height()));
    } else if (shape == "bar" || shape == "rectangle") {
        fill("length", box.width());
        fill("width", shape == "bar" ? std::min(box.height(), box.width() / 2) : box.height());
    } else if (shape == "polygon" && !tree.at(kCorners)) {
        Tree points = Tree::list();
        for (const auto& vertex : cornersOf(outline))
            points.push(cornerTree(vertex, system));
        tree.set(kCorners, std::move(points));
    }
}

void setLoaded(Tree& tree, std::size_t count, std::size_t station, bool loaded) {
    setEntry(tree, "stations.loaded", count, station, Tree(loaded), Tree(true));
}

void setShare(Tree& tree, std::size_t count, std::size_t station, double share) {
    setEntry(tree, "load.share", count, station, Tree(share), Tree(1.0));
}

void resizeStationLists(Tree& tree, std::size_t count) {
    if (tree.at("stations.loaded"))
        setEntry(tree, "stations.loaded", count, count, Tree(), Tree(true));
    if (tree.at("load.share"))
        setEntry(tree, "load.share", count, count, Tree(), Tree(1.0));
}

void placeAt(Tree& tree, const std::vector<shape::Point>& places, units::System system) {
    Tree list = Tree::list();
    for (const auto& place : places)
        list.push(typedPlace(place, system));
    for (const char* key : {"stations.count", "stations.circle", "stations.start"})
        tree.erase(key);
    tree.set("stations.at", std::move(list));
    resizeStationLists(tree, places.size());
}

void placeOnCircle(Tree& tree, std::size_t count, double diameter, double startDegrees,
                   units::System system) {
    tree.erase("stations.at");
    tree.set("stations.count", static_cast<double>(count));
    tree.set("stations.circle", typedMm(diameter, system));
    if (std::abs(startDegrees) > 0.005)
        tree.set("stations.start", units::writtenNumber(std::round(startDegrees * 100) / 100, 6) + " deg");
    else
        tree.erase("stations.start");
    resizeStationLists(tree, count);
}

void placeEachByItself(Tree& tree, const job::Job& job, units::System system) {
    auto places = job::stationCentres(job.stations);
    if (places.empty())
        places = {{50, 0}, {-50, 0}};
    placeAt(tree, places, system);
}

void placeEvenly(Tree& tree, const job::Job& job, units::System system) {
    const auto places = job::stationCentres(job.stations);
    if (places.empty())
        return;
    // The mean of radius and of turn past an even division, which is what serves all of them best.
    double radius = 0;
    shape::Point turn;
    const double pitch = 2 * std::numbers::pi / static_cast<double>(places.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        radius += shape::norm(places[i]) / static_cast<double>(places.size());
        turn = turn + shape::polar(1, std::atan2(places[i].y, places[i].x) - pitch * static_cast<double>(i));
    }
    const double start = shape::norm(turn) > 1e-9 ? std::atan2(turn.y, turn.x) : 0;
    placeOnCircle(tree, places.size(), 2 * radius, start * 180 / std::numbers::pi, system);
}

bool removeStation(Tree& tree, std::size_t station) {
    const std::size_t count = rowCount(tree, "stations.at");
    if (count <= 1 || station >= count)
        return false;
    tree.erase(rowPath("stations.at", station));
    for (const char* list : {"stations.loaded", "load.share"})
        if (rowCount(tree, list) == count)
            tree.erase(rowPath(list, station));
    return true;
}

} // namespace pw::gui
