#include "geometry/placement/curve.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pw::placement {

namespace {

/// An arc flatter than this strays from its chord by less than 1e-9 of it.
constexpr double kStraightBulge = 2e-9;

} // namespace

Curve::Curve(const Loop& loop) : m_loop(loop), m_circle(shape::asCircle(loop)), m_box(shape::bounds(loop)) {
    m_pieces.reserve(loop.size());
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        Piece piece{side.from, side.to - side.from};
        const double square = shape::dot(piece.along, piece.along);
        piece.perSquare = square > 0 ? 1 / square : 0;
        if (std::abs(side.bulge) > kStraightBulge) {
            const shape::Circle circle = side.circle();
            piece.isArc = true;
            piece.centre = circle.centre;
            piece.radius = circle.radius;
            piece.outward = side.bulge > 0 ? 1 : -1;
        }
        m_pieces.push_back(piece);
    }
}

double Curve::depth(Point p) const {
    if (m_circle)
        return m_circle->radius - shape::distance(p, m_circle->centre);
    double least = std::numeric_limits<double>::infinity(); // squared
    bool inside = false;
    for (const Piece& piece : m_pieces) {
        const Point to = piece.from + piece.along, off = p - piece.from;
        if ((piece.from.y > p.y) != (to.y > p.y)) {
            const double x = piece.from.x + (p.y - piece.from.y) / piece.along.y * piece.along.x;
            inside ^= p.x < x;
        }
        // On which side of the chord: positive on the left.
        const double left = piece.along.x * off.y - piece.along.y * off.x;
        if (!piece.isArc) {
            const double t = std::clamp(shape::dot(off, piece.along) * piece.perSquare, 0.0, 1.0);
            const Point away = off - piece.along * t;
            least = std::min(least, shape::dot(away, away));
            continue;
        }
        const Point out = p - piece.centre;
        const double radial = std::sqrt(shape::dot(out, out));
        // The cap between chord and arc is added to, or taken off, what the chords enclose.
        if (radial < piece.radius && left * piece.outward < 0)
            inside ^= true;
        // The ray from the centre through p meets the circle on the arc's side of the chord?
        const Point onCircle =
            radial > 0 ? piece.centre + out * (piece.radius / radial) : piece.centre + Point{piece.radius, 0};
        const Point there = onCircle - piece.from;
        const double side = piece.along.x * there.y - piece.along.y * there.x;
        if (side * piece.outward <= 0 || radial == 0) {
            const double away = radial - piece.radius;
            least = std::min(least, away * away);
        } else {
            const Point end = p - to;
            least = std::min({least, shape::dot(off, off), shape::dot(end, end)});
        }
    }
    const double distance = std::sqrt(least);
    return inside ? distance : -distance;
}

std::vector<Point> polygonOf(const Loop& loop, Side side, double within, double longest) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side piece = loop.side(i);
        points.push_back(piece.from);
        if (std::abs(piece.bulge) <= kStraightBulge) {
            const int parts =
                std::max(1, static_cast<int>(std::ceil(shape::distance(piece.from, piece.to) / longest)));
            for (int k = 1; k < parts; ++k)
                points.push_back(piece.from + (piece.to - piece.from) * (static_cast<double>(k) / parts));
            continue;
        }
        const shape::Circle circle = piece.circle();
        const double sweep = piece.sweep();
        // Half the angle of a step whose chord, or tangent corner, strays by `within`.
        const double half = std::acos(std::clamp(circle.radius / (circle.radius + within), 0.0, 1.0));
        const int steps = std::clamp(static_cast<int>(std::ceil(std::abs(sweep) / 2 / std::max(half, 1e-4))),
                                     std::abs(sweep) > 2 ? 4 : 1, 2000);
        const double step = sweep / steps;
        const bool bulgesOut = piece.bulge > 0;
        const double start = std::atan2(piece.from.y - circle.centre.y, piece.from.x - circle.centre.x);
        if (bulgesOut == (side == Side::Around)) {
            const double reach = circle.radius / std::cos(step / 2);
            for (int k = 0; k < steps; ++k)
                points.push_back(circle.centre + shape::polar(reach, start + (k + 0.5) * step));
        } else {
            for (int k = 1; k < steps; ++k)
                points.push_back(circle.centre + shape::polar(circle.radius, start + k * step));
        }
    }
    return points;
}

std::vector<Point> reflexCorners(const std::vector<Point>& polygon) {
    std::vector<Point> corners;
    const std::size_t n = polygon.size();
    for (std::size_t i = 0; i < n; ++i) {
        const Point in = polygon[i] - polygon[(i + n - 1) % n], out = polygon[(i + 1) % n] - polygon[i];
        if (shape::cross(in, out) < 0)
            corners.push_back(polygon[i]);
    }
    return corners;
}

shape::Circle circleRound(const std::vector<Point>& points) {
    shape::Box box{points.front(), points.front()};
    for (const Point& p : points) {
        box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
        box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
    }
    Point centre = (box.low + box.high) * 0.5;
    shape::Circle best{centre, std::numeric_limits<double>::infinity()};
    // Moves towards whatever is furthest, less each time (Badoiu and Clarkson, 2003).
    for (int i = 1; i <= 100; ++i) {
        Point far = points.front();
        for (const Point& p : points)
            if (shape::distance(p, centre) > shape::distance(far, centre))
                far = p;
        if (const double radius = shape::distance(far, centre); radius < best.radius * (1 - 1e-9))
            best = {centre, radius};
        centre = centre + (far - centre) * (1.0 / (i + 1));
    }
    return best;
}

} // namespace pw::placement
