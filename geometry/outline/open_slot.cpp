#include "geometry/outline/open_slot.h"

#include "core/shape/nearest.h"
#include "core/shape/split.h"

#include <cmath>
#include <limits>

namespace pw::outline {

using shape::Loop;
using shape::Point;
using shape::Side;

namespace {

struct Exit {
    std::size_t side = 0;
    Point at;
    double along = std::numeric_limits<double>::infinity();
};

/// Where the ray first meets the rim.
std::optional<Exit> firstExit(const Loop& rim, Point start, Point direction, double reach) {
    Exit best;
    const Side ray{start, start + direction * reach, 0};
    for (std::size_t i = 0; i < rim.size(); ++i)
        for (const Point& p : shape::crossings(ray, rim.side(i))) {
            const double along = shape::dot(p - start, direction);
            if (along < best.along)
                best = {i, p, along};
        }
    if (!std::isfinite(best.along))
        return std::nullopt;
    return best;
}

/// The sides of a closed curve from one point on it forward to another.
std::vector<Side> forward(const Loop& rim, const Exit& from, const Exit& to) {
    std::vector<Side> out;
    const Side first = shape::splitAt(rim.side(from.side), from.at).second;
    if (from.side == to.side && first.distanceTo(to.at) <= 1e-9 && shape::distance(from.at, to.at) > 1e-9) {
        out.push_back(shape::splitAt(first, to.at).first);
        return out;
    }
    out.push_back(first);
    for (std::size_t i = (from.side + 1) % rim.size(); i != to.side; i = (i + 1) % rim.size())
        out.push_back(rim.side(i));
    out.push_back(shape::splitAt(rim.side(to.side), to.at).first);
    return out;
}

} // namespace

std::optional<Loop> withOpenSlot(const Loop& rim, Point centre, double width, double direction) {
    if (!shape::contains(rim, centre))
        return std::nullopt;
    const Point out = shape::polar(1, direction), left{-out.y, out.x};
    const shape::Box box = shape::bounds(rim);
    const double reach = 2 * (box.width() + box.height());
    const Point startRight = centre - left * (width / 2), startLeft = centre + left * (width / 2);
    const auto right = firstExit(rim, startRight, out, reach),
               leftExit = firstExit(rim, startLeft, out, reach);
    if (!right || !leftExit || right->along <= 0 || leftExit->along <= 0)
        return std::nullopt;

    // What is cut away must lie in the slot's own strip, or its two sides left the plate at different places.
    for (const Side& side : forward(rim, *right, *leftExit))
        for (const double t : {0.0, 0.25, 0.5, 0.75, 1.0})
            if (std::abs(shape::dot(side.pointAt(t) - centre, left)) > width / 2 + 1e-6)
                return std::nullopt;

    Loop loop;
    for (const Side& side : forward(rim, *leftExit, *right))
        loop.vertices.push_back({side.from, side.bulge});
    loop.vertices.push_back({right->at, 0});
    loop.vertices.push_back(
        {startRight, -1}); // round the inner end, clockwise as seen from the material's loop
    loop.vertices.push_back({startLeft, 0});
    loop =
        shape::merged(loop, 1e-4); // a mouth that all but meets a corner of the rim leaves no hair of a side
    if (shape::crossesItself(loop) || shape::signedArea(loop) <= 0)
        return std::nullopt;
    return loop;
}

} // namespace pw::outline
