#include "core/shape/nearest.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace pw::shape {

namespace {

constexpr double kTouch = 1e-10; ///< of the sides' reach: far above rounding, far below any drawing

double reach(const Side& a, const Side& b) {
    const Box p = a.bounds(), q = b.bounds();
    return std::max({std::abs(p.low.x), std::abs(p.low.y), std::abs(p.high.x), std::abs(p.high.y),
                     std::abs(q.low.x), std::abs(q.low.y), std::abs(q.high.x), std::abs(q.high.y)});
}

void addOnce(std::vector<Point>& points, Point p, double tolerance) {
    for (const Point& q : points)
        if (distance(p, q) <= tolerance)
            return;
    points.push_back(p);
}

/// Points of the endless line through `line` on the circle; one when it only touches.
std::vector<Point> lineOnCircle(const Side& line, const Circle& circle, double tolerance) {
    const Point chord = line.to - line.from;
    const double length = norm(chord);
    if (length == 0)
        return {line.from};
    const Point along = chord * (1 / length);
    const Point foot = line.from + along * dot(circle.centre - line.from, along);
    const double away = distance(foot, circle.centre);
    if (away > circle.radius + tolerance)
        return {};
    if (away >= circle.radius - tolerance)
        return {foot};
    const double half = std::sqrt((circle.radius - away) * (circle.radius + away));
    return {foot - half * along, foot + half * along};
}

std::vector<Point> circleOnCircle(const Circle& a, const Circle& b, double tolerance) {
    const Point between = b.centre - a.centre;
    const double d = norm(between);
    if (d <= tolerance)
        return {};
    if (d > a.radius + b.radius + tolerance || d < std::abs(a.radius - b.radius) - tolerance)
        return {};
    const Point along = between * (1 / d);
    const double x = (d * d + (a.radius - b.radius) * (a.radius + b.radius)) / (2 * d);
    const double square = (a.radius - x) * (a.radius + x);
    const Point foot = a.centre + x * along;
    if (d >= a.radius + b.radius - tolerance || d <= std::abs(a.radius - b.radius) + tolerance || square <= 0)
        return {a.centre + along * std::copysign(a.radius, x)};
    const Point up = Point{-along.y, along.x} * std::sqrt(square);
    return {foot - up, foot + up};
}

/// A point near both sides, moved to where their tangents there meet. The centre of an arc that is all but
/// straight is so far away that the point worked out from it may be off by more than what counts as touching.
Point polished(const Side& a, const Side& b, Point p) {
    for (int round = 0; round < 3; ++round) {
        const Point onA = a.nearestTo(p), onB = b.nearestTo(p);
        const auto direction = [](const Side& side, Point on) {
            if (!side.isCurved())
                return side.tangentAt(0);
            const Point out = on - side.circle().centre;
            return Point{-out.y, out.x} * (1 / std::max(norm(out), 1e-300));
        };
        const Point alongA = direction(a, onA), alongB = direction(b, onB);
        const double turn = cross(alongA, alongB);
        if (std::abs(turn) < 1e-3)
            return p; // all but touching: the tangents meet anywhere
        const Point next = onA + alongA * (cross(onB - onA, alongB) / turn);
        if (distance(next, p) > 1e-3 * (distance(a.from, a.to) + distance(b.from, b.to)))
            return p; // far from both: no crossing to be made exact
        p = next;
    }
    return p;
}

/// Both sides lie on one curve: either they share a stretch, or at most their ends.
Meeting onOneCurve(const Side& a, const Side& b, double tolerance) {
    Meeting out;
    const std::pair<Point, Point> ends[] = {{a.from, b.from}, {a.from, b.to}, {a.to, b.from}, {a.to, b.to}};
    const auto strictlyOn = [&](const Side& s, Point p) {
        return s.distanceTo(p) <= tolerance && distance(p, s.from) > tolerance &&
               distance(p, s.to) > tolerance;
    };
    if (strictlyOn(a, b.from) || strictlyOn(a, b.to) || strictlyOn(b, a.from) || strictlyOn(b, a.to) ||
        strictlyOn(a, b.pointAt(0.5)) || strictlyOn(b, a.pointAt(0.5))) {
        out.overlap = true;
        return out;
    }
    for (const auto& [p, q] : ends)
        if (distance(p, q) <= tolerance)
            addOnce(out.points, p, tolerance);
    return out;
}

} // namespace

Meeting meeting(const Side& a, const Side& b, double within) {
    const double size = reach(a, b);
    const double tolerance = within >= 0 ? within : kTouch * std::max(size, 1e-3);
    const bool arcA = a.isCurved(), arcB = b.isCurved();
    std::vector<Point> found;
    if (!arcA && !arcB) {
        const Point da = a.to - a.from, db = b.to - b.from;
        const double la = norm(da), lb = norm(db);
        if (la <= tolerance || lb <= tolerance)
            found = la <= tolerance ? std::vector{a.from} : std::vector{b.from};
        else if (std::abs(cross(da, db)) <= 1e-12 * la * lb) {
            const double apart = std::abs(cross(da, b.from - a.from)) / la;
            return apart <= tolerance ? onOneCurve(a, b, tolerance) : Meeting{};
        } else
            found = {a.from + da * (cross(b.from - a.from, db) / cross(da, db))};
    } else if (arcA && arcB) {
        const Circle ca = a.circle(), cb = b.circle();
        if (distance(ca.centre, cb.centre) <= tolerance) {
            return std::abs(ca.radius - cb.radius) <= tolerance ? onOneCurve(a, b, tolerance) : Meeting{};
        }
        // From the smaller one: the larger radius multiplies what rounding does.
        found =
            ca.radius <= cb.radius ? circleOnCircle(ca, cb, tolerance) : circleOnCircle(cb, ca, tolerance);
    } else
        found = arcA ? lineOnCircle(b, a.circle(), tolerance) : lineOnCircle(a, b.circle(), tolerance);
    if (arcA || arcB)
        for (Point& p : found)
            if (a.distanceTo(p) > tolerance / 100 || b.distanceTo(p) > tolerance / 100)
                p = polished(a, b, p);

    Meeting out;
    for (const Point& p : found)
        if (a.distanceTo(p) <= tolerance && b.distanceTo(p) <= tolerance)
            addOnce(out.points, p, tolerance);
    // Ends that touch the other side are met exactly, whatever rounding did to the computed point.
    for (const Point& end : {a.from, a.to})
        if (out.points.size() < 2 && b.distanceTo(end) <= tolerance)
            addOnce(out.points, end, 10 * tolerance);
    for (const Point& end : {b.from, b.to})
        if (out.points.size() < 2 && a.distanceTo(end) <= tolerance)
            addOnce(out.points, end, 10 * tolerance);
    return out;
}

std::vector<Point> crossings(const Side& a, const Side& b) {
    return meeting(a, b).points;
}

Nearest nearest(const Side& a, const Side& b) {
    const Meeting meet = meeting(a, b);
    if (!meet.points.empty())
        return {meet.points.front(), meet.points.front(), 0};
    Nearest best{a.from, b.from, std::numeric_limits<double>::infinity()};
    const auto tryFromA = [&](Point p) {
        const Point q = b.nearestTo(p);
        const double d = distance(p, q);
        if (d < best.distance)
            best = {p, q, d};
    };
    const auto tryFromB = [&](Point q) {
        const Point p = a.nearestTo(q);
        const double d = distance(p, q);
        if (d < best.distance)
            best = {p, q, d};
    };
    // The least distance is at an end, or where one common normal stands on both; normals of arcs pass
    // through their centres, so the nearest points to the other's centre, in turn, are the only candidates.
    tryFromA(a.from);
    tryFromA(a.to);
    tryFromB(b.from);
    tryFromB(b.to);
    if (meet.overlap) {
        // One end lies on the other side, so the search above has found it.
        best.distance = 0;
        return best;
    }
    const auto tryAlong = [&](const Circle& c, const Side& arc, Point toward, auto&& attempt) {
        const Point out = toward - c.centre;
        const double length = norm(out);
        if (length == 0) {
            attempt(arc.pointAt(0.5));
            return;
        }
        for (const double sign : {1.0, -1.0}) {
            const Point p = c.centre + out * (sign * c.radius / length);
            if (arc.distanceTo(p) <= 1e-9 * c.radius)
                attempt(p);
        }
    };
    if (a.isCurved())
        tryAlong(a.circle(), a, b.isCurved() ? b.circle().centre : b.nearestTo(a.circle().centre), tryFromA);
    if (b.isCurved())
        tryAlong(b.circle(), b, a.isCurved() ? a.circle().centre : a.nearestTo(b.circle().centre), tryFromB);
    return best;
}

Nearest nearest(const Loop& a, const Loop& b) {
    Nearest best{{}, {}, std::numeric_limits<double>::infinity()};
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < b.size(); ++j) {
            const Nearest here = nearest(a.side(i), b.side(j));
            if (here.distance < best.distance)
                best = here;
        }
    return best;
}

} // namespace pw::shape
