#include "core/shape/loop.h"

#include "core/shape/nearest.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace pw::shape {

namespace {

using std::numbers::pi;

const double kQuarterTurn = std::tan(pi / 8); ///< bulge of a quarter circle

/// Area between an arc and its chord, signed like the bulge: c^2 (q - sin q) / (8 sin^2(q/2)).
double segmentArea(const Side& side) {
    const double q = side.sweep();
    const double chord = distance(side.from, side.to);
    if (std::abs(q) < 1e-3)
        return chord * chord * q / 12 * (1 + q * q / 30);
    const double s = std::sin(q / 2);
    return chord * chord * (q - std::sin(q)) / (8 * s * s);
}

/// How often the ray from p to the right crosses an arc. The arc is cut at its highest and lowest points, and
/// a piece counts when it holds the ray's height half open, so neighbours never count a shared corner twice.
int rayCrossings(const Side& side, Point p) {
    const auto straddles = [&](double y0, double y1) { return (y0 <= p.y) != (y1 <= p.y); };
    if (std::abs(side.bulge) < 2e-9) {
        if (!straddles(side.from.y, side.to.y))
            return 0;
        const double t = (p.y - side.from.y) / (side.to.y - side.from.y);
        return side.from.x + t * (side.to.x - side.from.x) > p.x ? 1 : 0;
    }
    const Circle c = side.circle();
    if (p.y > c.centre.y + c.radius || p.y < c.centre.y - c.radius)
        // Rounding may lift an end over the top by a hair; even then the ends decide for both neighbours
        // alike.
        return straddles(side.from.y, side.to.y) && std::max(side.from.x, side.to.x) > p.x ? 1 : 0;
    const double halfWidth =
        std::sqrt(std::max(0.0, c.radius * c.radius - (p.y - c.centre.y) * (p.y - c.centre.y)));
    const auto crossesHalf = [&](bool right) { return c.centre.x + (right ? halfWidth : -halfWidth) > p.x; };
    const double start = std::atan2(side.from.y - c.centre.y, side.from.x - c.centre.x);
    const double sweep = side.sweep();
    // Tops and bottoms (angles pi/2 + k pi) passed on the way, in order.
    int crossed = 0;
    double y = side.from.y;
    double at = start;
    const double way = sweep > 0 ? 1 : -1;
    double next = (std::floor((start - pi / 2) / pi) + (sweep > 0 ? 1 : 0)) * pi + pi / 2;
    if (sweep < 0 && next == start)
        next -= pi;
    while (way * (next - start) < std::abs(sweep)) {
        const double nextY = c.centre.y + c.radius * (std::sin(next) > 0 ? 1 : -1);
        if (straddles(y, nextY))
            crossed += crossesHalf(std::cos(0.5 * (at + next)) > 0);
        y = nextY;
        at = next;
        next += way * pi;
    }
    if (straddles(y, side.to.y))
        crossed += crossesHalf(std::cos(0.5 * (at + start + sweep)) > 0);
    return crossed;
}

} // namespace

Loop circleLoop(Point centre, double radius) {
    return {{{centre + Point{radius, 0}, 1}, {centre - Point{radius, 0}, 1}}};
}

Loop rectangleLoop(double length, double width, double cornerRadius) {
    const double x = length / 2, y = width / 2;
    const double r = std::min({cornerRadius, x, y});
    if (r <= 0)
        return {{{{-x, -y}, 0}, {{x, -y}, 0}, {{x, y}, 0}, {{-x, y}, 0}}};
    if (r == x && r == y)
        return circleLoop({0, 0}, r);
    Loop loop;
    const auto corner = [&](Point before, Point after) {
        // A side fully eaten by its corners leaves none of its own.
        if (!loop.vertices.empty() && loop.vertices.back().at == before)
            loop.vertices.back().bulge = kQuarterTurn;
        else
            loop.vertices.push_back({before, kQuarterTurn});
        loop.vertices.push_back({after, 0});
    };
    corner({x - r, -y}, {x, -y + r});
    corner({x, y - r}, {x - r, y});
    corner({-x + r, y}, {-x, y - r});
    corner({-x, -y + r}, {-x + r, -y});
    if (loop.vertices.back().at == loop.vertices.front().at)
        loop.vertices.pop_back();
    return loop;
}

Loop barLoop(double length, double width, bool roundEnds) {
    if (!roundEnds)
        return rectangleLoop(length, width);
    return slotLoop({0, 0}, length, width, 0);
}

Loop slotLoop(Point centre, double length, double width, double turn) {
    const double r = width / 2, x = length / 2 - r;
    if (x <= 0)
        return circleLoop(centre, r);
    const Loop loop{{{{-x, -r}, 0}, {{x, -r}, 1}, {{x, r}, 0}, {{-x, r}, 1}}};
    return moved(turned(loop, turn), centre);
}

std::optional<Circle> asCircle(const Loop& loop) {
    if (loop.size() < 2)
        return std::nullopt;
    const Side first = loop.side(0);
    if (!first.isArc())
        return std::nullopt;
    const Circle circle = first.circle();
    double sweep = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Side side = loop.side(i);
        if (side.bulge * first.bulge <= 0)
            return std::nullopt;
        const Circle here = side.circle();
        const double tolerance = 1e-9 * (circle.radius + norm(circle.centre));
        if (distance(here.centre, circle.centre) > tolerance ||
            std::abs(here.radius - circle.radius) > tolerance)
            return std::nullopt;
        sweep += side.sweep();
    }
    if (std::abs(std::abs(sweep) - 2 * pi) > 1e-9)
        return std::nullopt;
    return circle;
}

double signedArea(const Loop& loop) {
    if (loop.vertices.empty())
        return 0;
    const Point origin = loop.vertices.front().at;
    double twice = 0, segments = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Side side = loop.side(i);
        twice += cross(side.from - origin, side.to - origin);
        if (side.isArc())
            segments += segmentArea(side);
    }
    return twice / 2 + segments;
}

double perimeter(const Loop& loop) {
    double sum = 0;
    for (std::size_t i = 0; i < loop.size(); ++i)
        sum += loop.side(i).length();
    return sum;
}

Point centroid(const Loop& loop) {
    if (loop.vertices.empty())
        return {};
    const Point origin = loop.vertices.front().at;
    Point moment;
    double area = 0;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Side side = loop.side(i);
        const Point a = side.from - origin, b = side.to - origin;
        const double half = cross(a, b) / 2;
        moment = moment + (a + b) * (half / 3);
        area += half;
        if (!side.isArc())
            continue;
        // A segment of a circle: its moment about the centre is c^3 / 12, away from the centre across the
        // chord.
        const double segment = segmentArea(side);
        area += segment;
        const Point chord = b - a;
        const double c = norm(chord);
        if (std::abs(side.sweep()) < 1e-3) {
            const Point sag = Point{chord.y, -chord.x} * (side.bulge / 2);
            moment = moment + (0.5 * (a + b) + 0.6 * sag) * segment;
        } else if (c > 0) {
            const Point outward = Point{chord.y, -chord.x} * (1 / c);
            moment = moment + (side.circle().centre - origin) * segment + outward * (c * c * c / 12);
        }
    }
    if (area == 0)
        return 0.5 * (bounds(loop).low + bounds(loop).high);
    return origin + moment * (1 / area);
}

Box bounds(const Loop& loop) {
    if (loop.vertices.empty())
        return {};
    const double inf = std::numeric_limits<double>::infinity();
    Box box{{inf, inf}, {-inf, -inf}};
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Box b = loop.side(i).bounds();
        box.low = {std::min(box.low.x, b.low.x), std::min(box.low.y, b.low.y)};
        box.high = {std::max(box.high.x, b.high.x), std::max(box.high.y, b.high.y)};
    }
    return box;
}

bool contains(const Loop& loop, Point p) {
    int crossed = 0;
    for (std::size_t i = 0; i < loop.size(); ++i)
        crossed += rayCrossings(loop.side(i), p);
    return crossed % 2 == 1;
}

Point nearestOn(const Loop& loop, Point p) {
    Point best = p;
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point q = loop.side(i).nearestTo(p);
        const double d = distance(p, q);
        if (d < least) {
            least = d;
            best = q;
        }
    }
    return best;
}

double distanceTo(const Loop& loop, Point p) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < loop.size(); ++i)
        least = std::min(least, loop.side(i).distanceTo(p));
    return least;
}

Loop reversed(const Loop& loop) {
    Loop out;
    for (std::size_t i = loop.size(); i-- > 0;) {
        const std::size_t before = (i + loop.size() - 1) % loop.size();
        out.vertices.push_back({loop.vertices[i].at, -loop.vertices[before].bulge});
    }
    return out;
}

Loop moved(const Loop& loop, Point by) {
    Loop out = loop;
    for (Vertex& v : out.vertices)
        v.at = v.at + by;
    return out;
}

Loop turned(const Loop& loop, double angle) {
    Loop out = loop;
    for (Vertex& v : out.vertices)
        v.at = rotated(v.at, angle);
    return out;
}

Loop mirrored(const Loop& loop, double axis) {
    const double c = std::cos(2 * axis), s = std::sin(2 * axis);
    Loop out = loop;
    for (Vertex& v : out.vertices)
        v = {{c * v.at.x + s * v.at.y, s * v.at.x - c * v.at.y}, -v.bulge};
    return reversed(out);
}

bool crossesItself(const Loop& loop) {
    const std::size_t n = loop.size();
    const Box box = bounds(loop);
    const double size = std::max(box.width(), box.height());
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 1; j < n; ++j) {
            const Side a = loop.side(i), b = loop.side(j);
            const Meeting meet = meeting(a, b);
            if (meet.overlap)
                return true;
            for (const Point& p : meet.points) {
                // Neighbours meet at their corner. Where a drawn arc is tangent to its neighbour but for the
                // last digits they cross once more within a hair of it, and that is no fault of the outline.
                const bool atEnd = j == i + 1 && distance(p, a.to) <= 1e-4 * size;
                const bool atStart = i == 0 && j == n - 1 && distance(p, a.from) <= 1e-4 * size;
                if (!atEnd && !atStart)
                    return true;
            }
        }
    return false;
}

bool crosses(const Loop& a, const Loop& b) {
    for (std::size_t i = 0; i < a.size(); ++i)
        for (std::size_t j = 0; j < b.size(); ++j) {
            const Meeting meet = meeting(a.side(i), b.side(j));
            if (meet.overlap || !meet.points.empty())
                return true;
        }
    return false;
}

double clearance(const Loop& a, const Loop& b) {
    return nearest(a, b).distance;
}

} // namespace pw::shape
