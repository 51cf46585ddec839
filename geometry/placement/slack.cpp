#include "geometry/placement/slack.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::placement {

namespace {

/// Distances this near to what is wanted are enough, mm: rounding.
constexpr double kExact = 1e-6;

/// Points along the plate's straight sides lie no further apart than this part of its reach.
constexpr double kSampled = 0.25;

Point inPlate(Point p, Point pivot, double c, double s) {
    const Point off = p - pivot;
    return {c * off.x + s * off.y, c * off.y - s * off.x};
}

Point inPiece(Point q, Point pivot, double c, double s) {
    return {pivot.x + c * q.x - s * q.y, pivot.y + s * q.x + c * q.y};
}

Point middleOf(const shape::Region& plate) {
    if (const auto circle = shape::asCircle(plate.rim))
        return circle->centre;
    return circleRound(polygonOf(plate.rim, Side::Around, Slack::kRough)).centre;
}

bool swallows(const shape::Loop& hole, const shape::Loop& thing, double kerf) {
    return !shape::crosses(hole, thing) && shape::contains(hole, thing.vertices.front().at) &&
           shape::clearance(hole, thing) >= kerf - kExact;
}

} // namespace

shape::Loop placed(const shape::Loop& loop, const Pose& pose) {
    return shape::moved(shape::turned(loop, pose.turn), pose.at);
}

bool fits(const shape::Region& plate, const Stock& stock, const Spacing& spacing, const Pose& pose,
          std::optional<std::size_t> asBore) {
    const shape::Loop rim = placed(plate.rim, pose);
    const double clear = spacing.clear() - kExact;
    if (shape::crosses(stock.rim, rim) || !shape::contains(stock.rim, rim.vertices.front().at) ||
        shape::clearance(stock.rim, rim) < clear)
        return false;
    for (std::size_t i = 0; i < stock.obstacles.size(); ++i) {
        if (i == asBore)
            continue;
        const shape::Loop& thing = stock.obstacles[i].loop;
        const bool apart = !shape::crosses(rim, thing) && !shape::contains(rim, thing.vertices.front().at) &&
                           !shape::contains(thing, rim.vertices.front().at);
        if (apart && shape::clearance(rim, thing) >= clear)
            continue;
        const bool swallowed = std::ranges::any_of(plate.holes, [&](const shape::Hole& hole) {
            return swallows(placed(hole.loop, pose), thing, spacing.kerf);
        });
        if (!swallowed)
            return false;
    }
    return true;
}

Slack::Slack(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
             std::optional<std::size_t> asBore)
    : m_rim(stock.rim), m_plate(shape::moved(plate.rim, Point{} - middleOf(plate))), m_pivot(middleOf(plate)),
      m_clear(spacing.clear()), m_kerf(spacing.kerf) {
    m_points = polygonOf(m_plate.loop(), Side::Around, kRough);
    for (const Point& p : m_points)
        m_reach = std::max(m_reach, shape::norm(p));
    m_points = polygonOf(m_plate.loop(), Side::Around, kRough, m_reach * kSampled);
    m_inner = std::max(0.0, m_plate.depth({}));
    if (m_plate.circle())
        m_reach = m_inner;
    m_reflex =
        m_rim.circle() ? std::vector<Point>{} : reflexCorners(polygonOf(stock.rim, Side::Within, kRough / 2));
    for (const shape::Hole& hole : plate.holes)
        m_holes.emplace_back(shape::moved(hole.loop, Point{} - m_pivot));
    for (std::size_t i = 0; i < stock.obstacles.size(); ++i) {
        if (i == asBore)
            continue;
        const shape::Loop& loop = stock.obstacles[i].loop;
        Thing thing{Curve(loop), polygonOf(loop, Side::Around, kRough / 2), {}};
        const shape::Circle round = circleRound(thing.points);
        for (std::size_t h = 0; h < m_holes.size(); ++h) {
            const shape::Box& box = m_holes[h].box();
            // A long thin thing may go into a slot, whatever its round; a round hole takes no more than its
            // own.
            const double room =
                m_holes[h].circle() ? m_holes[h].circle()->radius : std::hypot(box.width(), box.height()) / 2;
            const double need = thing.curve.circle() ? thing.curve.circle()->radius : round.radius * 0.99;
            if (need + m_kerf <= room)
                thing.swallowers.push_back(h);
        }
        m_things.push_back(std::move(thing));
    }
    m_period = findPeriod();
}

double Slack::findPeriod() const {
    const bool holesMatter = std::ranges::any_of(m_things, [&](const Thing& thing) {
        return std::ranges::any_of(thing.swallowers, [&](std::size_t h) {
            const auto& circle = m_holes[h].circle();
            return !circle || shape::norm(circle->centre) > 1e-9;
        });
    });
    if (m_plate.circle() && !holesMatter)
        return 0;
    const auto same = [&](const Curve& a, const Curve& b, double turn) {
        for (std::size_t i = 0; i < a.loop().size(); ++i)
            for (const double t : {0.0, 0.3, 0.5})
                if (std::abs(b.depth(shape::rotated(a.loop().side(i).pointAt(t), turn))) > 1e-3)
                    return false;
        return true;
    };
    for (int n = 24; n >= 2; --n) {
        const double turn = 2 * std::numbers::pi / n;
        if (!m_plate.circle() && !same(m_plate, m_plate, turn))
            continue;
        if (!holesMatter || std::ranges::all_of(m_holes, [&](const Curve& hole) {
                return std::ranges::any_of(m_holes,
                                           [&](const Curve& other) { return same(hole, other, turn); });
            }))
            return turn;
    }
    return 2 * std::numbers::pi;
}

double Slack::rimSlack(Point pivot, double c, double s, double floor) const {
    const double middle = m_rim.depth(pivot) - m_inner - m_clear;
    if (m_plate.circle() || middle < floor)
        return middle;
    double least = middle;
    for (const Point& p : m_points) {
        least = std::min(least, m_rim.depth(inPiece(p, pivot, c, s)) - m_clear);
        if (least < floor)
            return least;
    }
    for (const Point& corner : m_reflex)
        least = std::min(least, -m_plate.depth(inPlate(corner, pivot, c, s)) - m_clear);
    return least;
}

double Slack::outside(const Thing& thing, Point pivot, double c, double s) const {
    if (m_plate.circle())
        return -thing.curve.depth(pivot) - m_inner - m_clear;
    if (const auto& circle = thing.curve.circle())
        return -m_plate.depth(inPlate(circle->centre, pivot, c, s)) - circle->radius - m_clear;
    double least = std::numeric_limits<double>::infinity();
    for (const Point& p : thing.points)
        least = std::min(least, -m_plate.depth(inPlate(p, pivot, c, s)) - m_clear);
    for (const Point& p : m_points)
        least = std::min(least, -thing.curve.depth(inPiece(p, pivot, c, s)) - m_clear);
    return least;
}

double Slack::inside(const Thing& thing, const Curve& hole, Point pivot, double c, double s) const {
    if (thing.curve.circle() && hole.circle()) {
        const Point centre = inPlate(thing.curve.circle()->centre, pivot, c, s);
        return hole.circle()->radius - shape::distance(centre, hole.circle()->centre) -
               thing.curve.circle()->radius - m_kerf;
    }
    double least = std::numeric_limits<double>::infinity();
    for (const Point& p : thing.points) // the plate's holes are convex, so its corners tell
        least = std::min(least, hole.depth(inPlate(p, pivot, c, s)) - m_kerf);
    return least;
}

double Slack::at(Point pivot, double turn, double floor) const {
    const double c = std::cos(turn), s = std::sin(turn);
    double least = rimSlack(pivot, c, s, floor);
    for (const Thing& thing : m_things) {
        if (least < floor)
            return least;
        // Too far off to count for more than what is nearer.
        if (-thing.curve.depth(pivot) - m_reach - m_clear >= least)
            continue;
        double best = outside(thing, pivot, c, s);
        if (best < 0)
            for (const std::size_t h : thing.swallowers)
                best = std::max(best, inside(thing, m_holes[h], pivot, c, s));
        least = std::min(least, best);
    }
    return least;
}

Pose Slack::poseOf(Point pivot, double turn) const {
    return {pivot - shape::rotated(m_pivot, turn), turn};
}

Point Slack::pivotOf(const Pose& pose) const {
    return pose.at + shape::rotated(m_pivot, pose.turn);
}

} // namespace pw::placement
