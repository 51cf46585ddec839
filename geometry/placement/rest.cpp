#include "geometry/placement/rest.h"

#include "geometry/placement/curve.h"

#include <algorithm>
#include <cmath>
#include <polyclipping/clipper.hpp>

namespace pw::placement {

namespace {

namespace cl = ClipperLib;

constexpr double kGrid = 1000; ///< steps a mm
constexpr double kBroader[] = {2, 4, 6};

cl::Path pathOf(const std::vector<shape::Point>& points) {
    cl::Path path;
    path.reserve(points.size());
    for (const shape::Point& p : points)
        path.emplace_back(static_cast<cl::cInt>(std::llround(p.x * kGrid)),
                          static_cast<cl::cInt>(std::llround(p.y * kGrid)));
    return path;
}

cl::Paths parallel(const cl::Paths& paths, double by, double within) {
    cl::ClipperOffset offset(2.0, within * kGrid);
    offset.AddPaths(paths, cl::jtRound, cl::etClosedPolygon);
    cl::Paths out;
    offset.Execute(out, by * kGrid);
    return out;
}

double partArea(const cl::PolyNode& outer) {
    double area = std::abs(cl::Area(outer.Contour));
    for (const cl::PolyNode* hole : outer.Childs)
        area -= std::abs(cl::Area(hole->Contour));
    return area / (kGrid * kGrid);
}

} // namespace

Rest restOf(const Stock& stock, const std::vector<std::vector<shape::Point>>& cut, double within,
            double usableWidth) {
    cl::Clipper clipper;
    clipper.AddPath(pathOf(polygonOf(stock.rim, Side::Within, within)), cl::ptSubject, true);
    for (const Obstacle& thing : stock.obstacles)
        clipper.AddPath(pathOf(polygonOf(thing.loop, Side::Around, within)), cl::ptClip, true);
    for (const auto& points : cut)
        clipper.AddPath(pathOf(points), cl::ptClip, true);
    cl::Paths left;
    clipper.Execute(cl::ctDifference, left, cl::pftNonZero, cl::pftNonZero);
    const double half = usableWidth / 2;
    const cl::Paths wide = parallel(parallel(left, -half, within), half - within, within);
    cl::Clipper sorter;
    sorter.AddPaths(wide, cl::ptSubject, true);
    cl::PolyTree tree;
    sorter.Execute(cl::ctUnion, tree, cl::pftNonZero, cl::pftNonZero);
    Rest rest;
    for (const cl::PolyNode* node = tree.GetFirst(); node; node = node->GetNext()) {
        std::vector<shape::Point> outline;
        for (const cl::IntPoint& p : node->Contour)
            outline.push_back({static_cast<double>(p.X) / kGrid, static_cast<double>(p.Y) / kGrid});
        rest.outlines.push_back(std::move(outline));
        if (node->IsHole())
            continue;
        const double area = partArea(*node);
        rest.usable += area;
        rest.biggest = std::max(rest.biggest, area);
    }
    double sum = rest.usable;
    for (const double times : kBroader) {
        cl::Paths broad = parallel(left, -half * times, within);
        if (broad.empty())
            break;
        for (const cl::Path& path : parallel(broad, half * times - within, within))
            sum += cl::Area(path) / (kGrid * kGrid);
    }
    rest.worth = sum / (1 + std::size(kBroader));
    return rest;
}

double area(const Stock& stock) {
    cl::Paths things;
    for (const Obstacle& thing : stock.obstacles)
        if (thing.isHole)
            things.push_back(pathOf(polygonOf(thing.loop, Side::Within, 0.01)));
    const double whole = shape::signedArea(stock.rim);
    if (things.empty())
        return whole;
    // Alone and inside, a hole's own area is exact; holes that meet, or run over the edge, are counted by
    // polygons.
    double exact = 0;
    bool apart = true;
    for (std::size_t i = 0; i < stock.obstacles.size() && apart; ++i) {
        if (!stock.obstacles[i].isHole)
            continue;
        const shape::Loop& loop = stock.obstacles[i].loop;
        exact += shape::signedArea(loop);
        apart = liesOn(stock.rim, loop) == Lies::Inside;
        for (std::size_t j = 0; j < i && apart; ++j)
            apart = !stock.obstacles[j].isHole || liesOn(stock.obstacles[j].loop, loop) == Lies::Outside;
    }
    if (apart)
        return whole - exact;
    cl::Clipper clipper;
    clipper.AddPath(pathOf(polygonOf(stock.rim, Side::Within, 0.01)), cl::ptSubject, true);
    clipper.AddPaths(things, cl::ptClip, true);
    cl::Paths left;
    clipper.Execute(cl::ctDifference, left, cl::pftNonZero, cl::pftNonZero);
    double sum = 0;
    for (const cl::Path& path : left)
        sum += cl::Area(path);
    return sum / (kGrid * kGrid);
}

} // namespace pw::placement
