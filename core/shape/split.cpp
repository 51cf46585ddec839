#include "core/shape/split.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::shape {

namespace {

/// Bulge of the part of an arc from its start to p. The angle between tangent and chord is half the part's
/// sweep, which needs no centre and so does not suffer from a large radius.
double bulgeUpTo(const Side& arc, Point p) {
    const Point tangent = arc.tangentAt(0), chord = p - arc.from;
    const double half = std::atan2(cross(tangent, chord), dot(tangent, chord));
    return std::tan(half / 2);
}

/// Do the two, end to start, lie on one line or one circle and go on in the same sense? Then they are one
/// side, unless that would be a full turn.
bool continues(const Side& a, const Side& b, double within) {
    if (a.isArc() != b.isArc() || a.bulge * b.bulge < 0)
        return false;
    if (!a.isArc()) {
        const Point chord = b.to - a.from;
        const double length = norm(chord);
        return length > within && dot(a.to - a.from, chord) > 0 && dot(b.to - b.from, chord) > 0 &&
               std::abs(cross(chord, a.to - a.from)) <= within * length;
    }
    const Circle p = a.circle(), q = b.circle();
    return distance(p.centre, q.centre) <= within && std::abs(p.radius - q.radius) <= within &&
           std::abs(a.sweep() + b.sweep()) < 2 * std::numbers::pi - 1e-6;
}

Side joined(const Side& a, const Side& b) {
    return {a.from, b.to, std::tan((a.sweep() + b.sweep()) / 4)};
}

} // namespace

std::pair<Side, Side> splitAt(const Side& side, Point p) {
    if (!side.isArc())
        return {{side.from, p, 0}, {p, side.to, 0}};
    return {{side.from, p, bulgeUpTo(side, p)}, {p, side.to, -bulgeUpTo(side.reversed(), p)}};
}

Loop merged(const Loop& loop, double within) {
    if (const auto circle = asCircle(loop)) {
        const Loop whole = circleLoop(circle->centre, circle->radius);
        return loop.vertices.front().bulge > 0 ? whole : reversed(whole);
    }
    std::vector<Side> sides;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        Side side = loop.side(i);
        if (side.length() <= within)
            continue;
        if (!sides.empty())
            side.from = sides.back().to; // whatever a dropped hair left open
        if (!sides.empty() && continues(sides.back(), side, within))
            sides.back() = joined(sides.back(), side);
        else
            sides.push_back(side);
    }
    if (sides.size() > 2 && continues(sides.back(), sides.front(), within)) {
        sides.front() = joined(sides.back(), sides.front());
        sides.pop_back();
    }
    Loop out;
    for (const Side& side : sides)
        out.vertices.push_back({side.from, side.bulge});
    return out;
}

} // namespace pw::shape
