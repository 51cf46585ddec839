#include "geometry/outline/offset.h"

#include "core/shape/nearest.h"
#include "core/shape/split.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace pw::outline {

using shape::Loop;
using shape::Point;
using shape::Side;
using std::numbers::pi;

namespace {

// Every point of the parallel curve lies on the parallel of a side or on a circle about a corner. So: draw
// all of these, cut them wherever they meet, keep the pieces that nothing of the loop comes nearer to than
// the distance, and string them together. Trimmed corners, closed slots and split necks all fall out of that.

constexpr double kSnap = 2e-9;  ///< of the size: ends closer than this are one
constexpr double kClear = 1e-9; ///< of the size: how much nearer rounding may make a good piece look
constexpr double kHair = 1e-2;  ///< of the distance: a longer piece left over means the strings are torn
constexpr double kProof = 1e-7; ///< of the distance: how true the finished curve must be
constexpr double kFlat = 1e-8;  ///< of the size: an arc that strays less from its chord is the chord
constexpr int kCorner = -1;

struct Piece {
    Side side;
    int source = kCorner; ///< side of the original it runs along, or a corner
    int from = 0, to = 0; ///< numbers of its ends
};

/// Unit vector to the right of the direction of travel.
Point rightOf(Point along) {
    return {along.y, -along.x};
}

std::vector<Piece> rawPieces(const Loop& loop, double distance, double snap) {
    const double d = std::abs(distance), hand = distance > 0 ? 1 : -1;
    const bool inside = (shape::signedArea(loop) > 0) == (distance < 0);
    std::vector<Piece> raw;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Side side = loop.side(i), next = loop.side((i + 1) % loop.size());
        const Point endAlong = side.tangentAt(1), nextAlong = next.tangentAt(0);
        const Point away = rightOf(endAlong) * distance;
        // An arc bent round the offset's hand shrinks, and one tighter than the distance has no parallel.
        const bool shrinks = side.isArc() && side.bulge * hand < 0;
        if (!shrinks || side.circle().radius > d + snap)
            raw.push_back({{side.from + rightOf(side.tangentAt(0)) * distance, side.to + away, side.bulge},
                           static_cast<int>(i)});
        double turn = std::atan2(shape::cross(endAlong, nextAlong), shape::dot(endAlong, nextAlong));
        if (std::abs(turn) > pi - 1e-6) {
            // A cusp turns either way. It is rounded on the hand that its tip points to.
            const bool tipInside = shape::contains(loop, side.to + endAlong * d);
            turn = tipInside == inside ? hand * pi : -hand * pi;
        }
        if (turn * hand > 0 && std::abs(turn) * d > snap)
            raw.push_back(
                {{side.to + away, side.to + rightOf(nextAlong) * distance, std::tan(turn / 4)}, kCorner});
    }
    return raw;
}

/// How far along a side a point on it lies: a length (times another), or the swept angle. About the centre,
/// since a point that rounding put beside the arc, close to its start, would throw off any angle seen from
/// there.
double along(const Side& side, Point p) {
    if (!side.isArc())
        return shape::dot(p - side.from, side.to - side.from);
    const Point centre = side.circle().centre, a = side.from - centre, b = p - centre;
    const double angle = std::copysign(1.0, side.bulge) * std::atan2(shape::cross(a, b), shape::dot(a, b));
    // Up to a quarter turn behind the start is there by rounding; the rest is the far half of a large arc.
    return angle < -pi / 2 || (angle < 0 && std::abs(side.sweep()) > pi) ? angle + 2 * pi : angle;
}

void cutAt(const Piece& piece, const std::vector<Point>& points, double snap, std::vector<Piece>& out) {
    const Side& side = piece.side;
    std::vector<std::pair<double, Point>> stops;
    for (const Point& p : points)
        if (distance(p, side.from) > snap && distance(p, side.to) > snap)
            stops.emplace_back(along(side, p), p);
    std::sort(stops.begin(), stops.end(), [](auto& a, auto& b) { return a.first < b.first; });
    double done = 0;
    Point from = side.from;
    const auto add = [&](double until, Point to) {
        if (distance(from, to) <= snap)
            return;
        const double bulge = side.isArc() ? std::copysign(std::tan((until - done) / 4), side.bulge) : 0;
        out.push_back({{from, to, bulge}, piece.source});
        done = until;
        from = to;
    };
    for (const auto& [at, p] : stops)
        add(at, p);
    if (from == side.from)
        out.push_back(piece);
    else
        add(std::abs(side.sweep()), side.to);
}

/// How close counts as meeting: rounding grows with the radius of an arc that is all but straight.
double meetsWithin(const Side& a, const Side& b, double snap) {
    double radius = 0;
    for (const Side* side : {&a, &b})
        if (side->isArc())
            radius = std::max(radius, side->circle().radius);
    return std::min(snap / 20 + 1e-15 * radius, snap);
}

std::vector<Piece> cutWhereTheyMeet(const std::vector<Piece>& raw, double snap) {
    std::vector<std::vector<Point>> stops(raw.size());
    std::vector<shape::Box> boxes;
    for (const Piece& piece : raw)
        boxes.push_back(piece.side.bounds());
    for (std::size_t i = 0; i < raw.size(); ++i)
        for (std::size_t j = i + 1; j < raw.size(); ++j) {
            if (boxes[i].low.x > boxes[j].high.x + snap || boxes[j].low.x > boxes[i].high.x + snap ||
                boxes[i].low.y > boxes[j].high.y + snap || boxes[j].low.y > boxes[i].high.y + snap)
                continue;
            const Side &a = raw[i].side, &b = raw[j].side;
            const shape::Meeting meet = shape::meeting(a, b, meetsWithin(a, b, snap));
            for (const Point& p : meet.points) {
                stops[i].push_back(p);
                stops[j].push_back(p);
            }
            if (!meet.overlap)
                continue;
            for (const Point& p : {a.from, a.to})
                if (b.distanceTo(p) <= snap)
                    stops[j].push_back(p);
            for (const Point& p : {b.from, b.to})
                if (a.distanceTo(p) <= snap)
                    stops[i].push_back(p);
        }
    std::vector<Piece> pieces;
    for (std::size_t i = 0; i < raw.size(); ++i)
        cutAt(raw[i], stops[i], snap, pieces);
    return pieces;
}

int numberOf(Point p, std::vector<Point>& ends, double snap) {
    for (std::size_t i = 0; i < ends.size(); ++i)
        if (distance(ends[i], p) <= snap)
            return static_cast<int>(i);
    ends.push_back(p);
    return static_cast<int>(ends.size()) - 1;
}

/// Leaves one of two pieces that run the same way on the same curve, none of two that run against each other.
void dropDoubles(std::vector<Piece>& pieces, double snap) {
    std::vector<bool> gone(pieces.size());
    for (std::size_t i = 0; i < pieces.size(); ++i)
        for (std::size_t j = i + 1; j < pieces.size(); ++j) {
            const Piece &a = pieces[i], &b = pieces[j];
            const bool same = a.from == b.from && a.to == b.to, against = a.from == b.to && a.to == b.from;
            if (gone[i] || gone[j] || (!same && !against) ||
                distance(a.side.pointAt(0.5), b.side.pointAt(0.5)) > 4 * snap)
                continue;
            gone[j] = true;
            gone[i] = against;
        }
    std::size_t at = 0;
    std::erase_if(pieces, [&](const Piece&) { return gone[at++]; });
}

/// Takes away pieces that lead nowhere: hairs that rounding let through at a corner. False: not only hairs.
bool dropLooseEnds(std::vector<Piece>& pieces, std::size_t ends, double longest) {
    for (bool again = true; again;) {
        std::vector<int> into(ends), out(ends);
        for (const Piece& piece : pieces) {
            ++out[static_cast<std::size_t>(piece.from)];
            ++into[static_cast<std::size_t>(piece.to)];
        }
        again = false;
        for (std::size_t i = pieces.size(); i-- > 0;) {
            const Piece& piece = pieces[i];
            if (out[static_cast<std::size_t>(piece.to)] > 0 && into[static_cast<std::size_t>(piece.from)] > 0)
                continue;
            if (piece.side.length() > longest)
                return false;
            pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(i));
            again = true;
        }
    }
    return true;
}

/// Strings pieces to closed curves. Where several go on from one point, two regions touch there, and the turn
/// away from the loop keeps them apart.
std::optional<std::vector<std::vector<Piece>>> strung(std::vector<Piece> pieces, double hand) {
    std::vector<std::vector<Piece>> loops;
    while (!pieces.empty()) {
        std::vector<Piece> loop{pieces.back()};
        pieces.pop_back();
        while (loop.back().to != loop.front().from) {
            const Point before = loop.back().side.tangentAt(1);
            std::size_t best = pieces.size();
            double bestTurn = 0;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                if (pieces[i].from != loop.back().to)
                    continue;
                const Point after = pieces[i].side.tangentAt(0);
                const double turn =
                    -hand * std::atan2(shape::cross(before, after), shape::dot(before, after));
                // Away from the loop: to the left on its left hand.
                if (best == pieces.size() || turn > bestTurn) {
                    best = i;
                    bestTurn = turn;
                }
            }
            if (best == pieces.size())
                return std::nullopt;
            loop.push_back(pieces[best]);
            pieces.erase(pieces.begin() + static_cast<std::ptrdiff_t>(best));
        }
        loops.push_back(std::move(loop));
    }
    return loops;
}

bool isTrue(const Loop& offset, const Loop& original, double distance) {
    for (std::size_t i = 0; i < offset.size(); ++i)
        for (const double t : {0.0, 0.3, 0.5, 0.9})
            if (std::abs(shape::distanceTo(original, offset.side(i).pointAt(t)) - distance) >
                kProof * distance)
                return false;
    return true;
}

/// Nothing when two pieces touch so closely that rounding hides how they join.
std::optional<Offset> tried(const Loop& loop, double distance, double size) {
    const double d = std::abs(distance), snap = kSnap * size;
    std::vector<Piece> pieces = cutWhereTheyMeet(rawPieces(loop, distance, snap), snap);
    std::erase_if(pieces, [&](const Piece& piece) {
        return shape::distanceTo(loop, piece.side.pointAt(0.5)) < d - kClear * size;
    });
    std::vector<Point> ends;
    for (Piece& piece : pieces) {
        piece.from = numberOf(piece.side.from, ends, snap);
        piece.to = numberOf(piece.side.to, ends, snap);
    }
    std::erase_if(pieces, [&](const Piece& piece) {
        return piece.from == piece.to && piece.side.length() <= 4 * snap;
    });
    dropDoubles(pieces, snap);
    if (!dropLooseEnds(pieces, ends.size(), std::max(kHair * d, 4 * snap)))
        return std::nullopt;
    const auto loops = strung(std::move(pieces), distance > 0 ? 1 : -1);
    if (!loops)
        return std::nullopt;

    Offset offset;
    std::vector<bool> followed(loop.size());
    for (const std::vector<Piece>& strungLoop : *loops) {
        Loop made;
        for (const Piece& piece : strungLoop)
            made.vertices.push_back({ends[static_cast<std::size_t>(piece.from)], piece.side.bulge});
        if (made.size() < 2 || std::abs(shape::signedArea(made)) <= 8 * snap * shape::perimeter(made))
            continue; // a slot exactly as wide as two distances
        if (!isTrue(made, loop, d))
            return std::nullopt;
        for (const Piece& piece : strungLoop)
            if (piece.source != kCorner)
                followed[static_cast<std::size_t>(piece.source)] = true;
        offset.loops.push_back(shape::merged(made));
    }
    for (std::size_t i = 0; i < loop.size(); ++i)
        if (!followed[i] && loop.side(i).length() > snap)
            offset.lost.push_back(i);
    return offset;
}

Offset offsetCircle(const Loop& loop, const shape::Circle& circle, double distance) {
    const bool counter = loop.vertices.front().bulge > 0;
    const double radius = circle.radius + (counter ? distance : -distance);
    Offset offset;
    if (radius > 0) {
        const Loop made = shape::circleLoop(circle.centre, radius);
        offset.loops.push_back(counter ? made : shape::reversed(made));
    } else {
        for (std::size_t i = 0; i < loop.size(); ++i)
            offset.lost.push_back(i);
    }
    return offset;
}

} // namespace

util::Result<Offset> offsetLoop(const Loop& drawn, double distance) {
    util::require(std::isfinite(distance), "offsetLoop: the distance is not finite");
    util::require(drawn.size() >= 2, "offsetLoop: no loop");
    if (distance == 0)
        return Offset{{drawn}, {}};
    if (const auto circle = shape::asCircle(drawn))
        return offsetCircle(drawn, *circle, distance);
    const shape::Box box = shape::bounds(drawn);
    const double size =
        std::max({std::abs(box.low.x), std::abs(box.low.y), std::abs(box.high.x), std::abs(box.high.y)}) +
        std::abs(distance);
    Loop loop = drawn;
    for (std::size_t i = 0; i < loop.size(); ++i)
        if (std::abs(drawn.vertices[i].bulge) * shape::distance(drawn.side(i).from, drawn.side(i).to) / 2 <
            kFlat * size)
            loop.vertices[i].bulge = 0;
    for (const double nudge : {0.0, 3e-8, -3e-8, 1e-7, -1e-7, 3e-7, -3e-7})
        if (auto offset = tried(loop, distance * (1 + nudge), size))
            return *std::move(offset);
    return util::Problem{"", say("the edge comes too close to itself to work out where the cut runs beside "
                                 "it; move the figures by a little")};
}

} // namespace pw::outline
