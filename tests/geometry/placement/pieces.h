#pragma once

#include "core/shape/region.h"
#include "geometry/placement/slack.h"
#include "tests/support/chance.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>
#include <string>
#include <vector>

/// Pieces and plates by chance, and a slow second opinion on where one goes on the other: everything is a run
/// of points here, and nothing is shared with the code under test but the shapes.
namespace pw::testing {

using placement::Obstacle;
using placement::Pose;
using placement::Spacing;
using placement::Stock;
using shape::Loop;
using shape::Point;
using shape::Region;

inline int pick(Chance& chance, int count) {
    return static_cast<int>(chance.between(0, count));
}

/// A star-shaped piece: convex or with bays, some sides bowed.
inline Loop randomRim(Chance& chance, double size) {
    const int corners = 3 + pick(chance, 8);
    const bool isConvex = pick(chance, 2) == 0;
    const double stretch = chance.between(0.5, 1);
    Loop loop;
    for (int i = 0; i < corners; ++i) {
        const double angle = 2 * std::numbers::pi * (i + chance.between(-0.3, 0.3)) / corners;
        const Point p = shape::polar(size * (isConvex ? 1.0 : chance.between(0.45, 1)), angle);
        loop.vertices.push_back({{p.x, p.y * stretch}, 0});
    }
    if (isConvex && pick(chance, 3) == 0)
        loop.vertices[0].bulge = chance.between(0.05, 0.4);
    return loop;
}

inline Stock randomStock(Chance& chance, double size) {
    Stock stock;
    switch (pick(chance, 5)) {
    case 0:
        stock.rim = shape::circleLoop({chance.between(-20, 20), 5}, size);
        break;
    case 1:
        stock.rim = shape::rectangleLoop(2 * size, size * chance.between(0.8, 2));
        break;
    default:
        do
            stock.rim = randomRim(chance, size * 1.3);
        while (shape::crossesItself(stock.rim));
    }
    const int things = pick(chance, 4);
    for (int i = 0; i < things; ++i) {
        const Point at{chance.between(-size, size), chance.between(-size, size)};
        Loop loop =
            pick(chance, 3) == 0 ? shape::slotLoop(at, chance.between(20, 40), 10, chance.between(0, 3))
            : pick(chance, 4) == 0
                ? shape::moved(shape::turned(shape::rectangleLoop(chance.between(10, 40), 15), 0.4), at)
                : shape::circleLoop(at, chance.between(2, 14));
        if (!shape::crosses(stock.rim, loop) && shape::contains(stock.rim, at))
            stock.obstacles.push_back({loop, true, static_cast<std::size_t>(i)});
    }
    return stock;
}

inline Region randomPlate(Chance& chance) {
    Region plate;
    switch (pick(chance, 5)) {
    case 0:
        plate.rim = shape::circleLoop({}, chance.between(40, 75));
        break;
    case 1:
        plate.rim = shape::barLoop(chance.between(110, 190), chance.between(40, 70), true);
        break;
    case 2:
        plate.rim = shape::rectangleLoop(chance.between(80, 160), chance.between(50, 110), 8);
        break;
    case 3: // an L
        plate.rim.vertices = {{{-50, -40}}, {{60, -40}}, {{60, 10}}, {{15, 10}}, {{15, 60}}, {{-50, 60}}};
        break;
    default:
        plate.rim = randomRim(chance, chance.between(50, 80));
    }
    plate.holes.push_back({shape::circleLoop({}, 11), shape::Part::Bore, 0});
    const double circle = 28;
    if (pick(chance, 2) == 0)
        for (int i = 0; i < 3; ++i)
            plate.holes.push_back(
                {shape::circleLoop(shape::polar(circle, 2.1 * i), 9), shape::Part::Access, i});
    return plate;
}

/// The second opinion.
class BruteForce {
public:
    BruteForce(const Region& plate, const Stock& stock, const Spacing& spacing, double step = 3)
        : m_plate(points(plate.rim, step)), m_rim(points(stock.rim, 0, 2.5)), m_clear(spacing.clear()),
          m_kerf(spacing.kerf) {
        for (const shape::Hole& hole : plate.holes)
            m_holes.push_back(points(hole.loop, 0, 1));
        for (const Obstacle& thing : stock.obstacles)
            m_things.push_back(points(thing.loop, 2));
    }

    /// Least clearance over what is wanted; as soon as it is under `floor` that will do.
    double slack(const Pose& pose, double floor = -1e9) const {
        double least = 1e9;
        std::vector<Point> ours;
        for (const Point& p : m_plate)
            ours.push_back(pose.at + shape::rotated(p, pose.turn));
        for (const Point& p : ours) {
            const double away = toPolygon(m_rim, p);
            least = std::min(least, (isInside(m_rim, p) ? away : -away) - m_clear);
            if (least < floor)
                return least;
        }
        for (const auto& thing : m_things) {
            double apart = 1e9;
            for (const Point& p : thing) {
                const double away = toPolygon(ours, p);
                apart = std::min(apart, (isInside(ours, p) ? -away : away) - m_clear);
            }
            for (const Point& p : ours)
                if (isInside(thing, p))
                    apart = std::min(apart, -toPolygon(thing, p) - m_clear);
            double best = apart;
            for (const auto& hole : m_holes) {
                double in = 1e9;
                for (const Point& p : thing) {
                    const Point q = shape::rotated(p - pose.at, -pose.turn);
                    const double away = toPolygon(hole, q);
                    in = std::min(in, (isInside(hole, q) ? away : -away) - m_kerf);
                }
                best = std::max(best, in);
            }
            least = std::min(least, best);
            if (least < floor)
                return least;
        }
        return least;
    }

    /// The best pose of a grid, then by small steps from its best few.
    double most(double cell, int turns, bool isDisc) const {
        struct At {
            Pose pose;
            double slack;
        };
        std::vector<At> best;
        shape::Box box{m_rim[0], m_rim[0]};
        for (const Point& p : m_rim) {
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
        }
        for (double x = box.low.x; x <= box.high.x; x += cell)
            for (double y = box.low.y; y <= box.high.y; y += cell) {
                if (!isInside(m_rim, {x, y}))
                    continue;
                for (int k = 0; k < (isDisc ? 1 : turns); ++k) {
                    const Pose pose{{x, y}, 2 * std::numbers::pi * k / turns};
                    const double floor = best.size() < 4 ? -1e9 : best.back().slack;
                    const double s = slack(pose, floor);
                    if (s <= floor)
                        continue;
                    best.push_back({pose, s});
                    std::ranges::sort(best, [](const At& a, const At& b) { return a.slack > b.slack; });
                    if (best.size() > 4)
                        best.pop_back();
                }
            }
        double most = -1e9;
        for (At at : best) {
            double step = cell;
            while (step > 0.05) {
                bool better = false;
                for (int k = 0; k < 14 && !better; ++k) {
                    Pose to = at.pose;
                    if (k < 12)
                        to.at = to.at + shape::polar(step, k * std::numbers::pi / 6);
                    else
                        to.turn += (k == 12 ? step : -step) / 60;
                    if (const double s = slack(to, at.slack); s > at.slack) {
                        at = {to, s};
                        better = true;
                    }
                }
                if (!better)
                    step /= 2;
            }
            most = std::max(most, at.slack);
        }
        return most;
    }

private:
    /// `arcStep`: along arcs only, straight sides are their ends.
    static std::vector<Point> points(const Loop& loop, double step, double arcStep = 0) {
        std::vector<Point> out;
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const shape::Side side = loop.side(i);
            const double apart = step > 0 ? step : side.isArc() ? arcStep : 1e9;
            const int parts = std::max(1, static_cast<int>(std::ceil(side.length() / apart)));
            for (int k = 0; k < parts; ++k)
                out.push_back(side.pointAt(static_cast<double>(k) / parts));
        }
        return out;
    }
    static bool isInside(const std::vector<Point>& polygon, Point p) {
        bool in = false;
        for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            const Point a = polygon[i], b = polygon[j];
            if ((a.y > p.y) != (b.y > p.y) && p.x < (b.x - a.x) * (p.y - a.y) / (b.y - a.y) + a.x)
                in = !in;
        }
        return in;
    }
    static double toPolygon(const std::vector<Point>& polygon, Point p) {
        double least = 1e18;
        for (std::size_t i = 0, j = polygon.size() - 1; i < polygon.size(); j = i++) {
            const Point a = polygon[j], d = polygon[i] - a, off = p - a;
            const double square = shape::dot(d, d);
            const double t = square > 0 ? std::clamp(shape::dot(off, d) / square, 0.0, 1.0) : 0;
            const Point away = off - d * t;
            least = std::min(least, shape::dot(away, away));
        }
        return std::sqrt(least);
    }

    std::vector<Point> m_plate, m_rim;
    std::vector<std::vector<Point>> m_holes, m_things;
    double m_clear, m_kerf;
};

} // namespace pw::testing
