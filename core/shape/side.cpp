#include "core/shape/loop.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::shape {

namespace {

/// Below this an arc strays from its chord by less than 1e-9 of the chord, and its circle is too large to
/// compute with; it is taken as the line it looks like.
constexpr double kStraightBulge = 2e-9;

/// Below this the centre is so far off that rounding spoils what is worked out from it, and the arc so nearly
/// straight that a few steps along it find any foot.
constexpr double kFarCentre = 1e-4;

/// The nearest point by steps along the arc, from the foot on the chord; no centre is used.
Point nearestByStepping(const Side& arc, Point p) {
    const Point chord = arc.to - arc.from;
    const double square = dot(chord, chord);
    if (square == 0)
        return arc.from;
    double t = std::clamp(dot(p - arc.from, chord) / square, 0.0, 1.0);
    const double length = arc.length(), bend = arc.sweep(); // turn over the whole length
    for (int round = 0; round < 4; ++round) {
        const Point along = arc.tangentAt(t), off = p - arc.pointAt(t);
        // The foot moves slower or faster than the point as that lies outside or inside the bend.
        const double pace = std::max(0.1, 1 - bend / length * cross(along, off));
        t = std::clamp(t + dot(off, along) / (length * pace), 0.0, 1.0);
    }
    return arc.pointAt(t);
}

/// Is the direction from the centre to p within the arc?
bool arcSpans(const Side& arc, const Circle& circle, Point p) {
    // The arc lies on one side of its chord, and a ray from the centre meets the circle once.
    const Point out = p - circle.centre;
    const double length = norm(out);
    if (length == 0)
        return true;
    const Point onCircle = circle.centre + out * (circle.radius / length);
    const double side = cross(arc.to - arc.from, onCircle - arc.from);
    return arc.bulge > 0 ? side <= 0 : side >= 0;
}

} // namespace

double dot(Point a, Point b) {
    return a.x * b.x + a.y * b.y;
}

double cross(Point a, Point b) {
    return a.x * b.y - a.y * b.x;
}

double norm(Point a) {
    return std::hypot(a.x, a.y);
}

double distance(Point a, Point b) {
    return norm(b - a);
}

Point polar(double radius, double angle) {
    return {radius * std::cos(angle), radius * std::sin(angle)};
}

Point rotated(Point p, double angle) {
    const double c = std::cos(angle), s = std::sin(angle);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

bool Side::isCurved() const {
    return std::abs(bulge) > kStraightBulge;
}

double Side::sweep() const {
    return 4 * std::atan(bulge);
}

Circle Side::circle() const {
    // With the included angle q and b = tan(q/4): chord = 2 r sin(q/2), centre to chord = r cos(q/2).
    const Point chord = to - from;
    const Point left{-chord.y, chord.x};
    const double b = bulge;
    const Point centre = 0.5 * (from + to) + left * ((1 - b * b) / (4 * b));
    return {centre, norm(chord) * (1 + b * b) / (4 * std::abs(b))};
}

double Side::length() const {
    const double chord = distance(from, to);
    if (!isCurved())
        return chord;
    return chord * (1 + bulge * bulge) / (4 * std::abs(bulge)) * std::abs(sweep());
}

Point Side::pointAt(double t) const {
    if (t <= 0)
        return from;
    if (t >= 1)
        return to;
    if (!isCurved())
        return from + t * (to - from);
    // Chords of the same circle, from the start: no large radius is subtracted from another.
    const double half = sweep() / 2;
    const Point chord = to - from;
    return from + rotated(chord, half * (t - 1)) * (std::sin(half * t) / std::sin(half));
}

Point Side::tangentAt(double t) const {
    const Point chord = to - from;
    const double length = norm(chord);
    if (length == 0)
        return {1, 0};
    const Point along = chord * (1 / length);
    if (!isCurved())
        return along;
    return rotated(along, sweep() * (t - 0.5));
}

Point Side::nearestTo(Point p) const {
    if (!isCurved()) {
        const Point chord = to - from;
        const double square = dot(chord, chord);
        const double t = square > 0 ? dot(p - from, chord) / square : 0;
        return pointAt(t);
    }
    if (std::abs(bulge) < kFarCentre)
        return nearestByStepping(*this, p);
    const Circle c = circle();
    const Point out = p - c.centre;
    const double length = norm(out);
    if (length == 0)
        return pointAt(0.5);
    if (arcSpans(*this, c, p))
        return c.centre + out * (c.radius / length);
    return distance(p, from) <= distance(p, to) ? from : to;
}

double Side::distanceTo(Point p) const {
    return distance(p, nearestTo(p));
}

Box Side::bounds() const {
    Box box{{std::min(from.x, to.x), std::min(from.y, to.y)},
            {std::max(from.x, to.x), std::max(from.y, to.y)}};
    if (!isCurved())
        return box;
    const Circle c = circle();
    const Point reach[] = {{c.radius, 0}, {0, c.radius}, {-c.radius, 0}, {0, -c.radius}};
    for (const Point& r : reach) {
        const Point p = c.centre + r;
        if (!arcSpans(*this, c, p))
            continue;
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    return box;
}

} // namespace pw::shape
