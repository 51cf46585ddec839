#include "geometry/exchange/lead.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace pw::exchange {

using shape::Loop;
using shape::Point;
using shape::Region;

namespace {

constexpr double kStep = 6;       ///< mm between places looked at
constexpr double kMostSteps = 16; ///< on one side
constexpr double kTouch = 1e-9;   ///< of the radius, for the circle that touches its own loop
const double kQuarter = std::tan(std::numbers::pi / 8), kEighth = std::tan(std::numbers::pi / 16);

Point leftOf(Point along) {
    return {-along.y, along.x};
}

/// Does a circle of scrap lie clear of the plates and of every cut?
bool isScrap(Point centre, double radius, const Loop& own, double otherCutRoom,
             const std::vector<Region>& steel, const std::vector<Loop>& otherCuts) {
    if (distanceTo(own, centre) < radius * (1 - kTouch))
        return false;
    for (const Loop& cut : otherCuts)
        if (distanceTo(cut, centre) < radius + otherCutRoom)
            return false;
    return std::none_of(steel.begin(), steel.end(),
                        [&](const Region& plate) { return containsMaterial(plate, centre); });
}

/// Each circle that touches at one place holds every smaller one, so halving finds the widest.
template<class Fits>
double widest(double most, Fits fits) {
    if (fits(most))
        return most;
    double low = 0, high = most;
    for (int round = 0; round < 40; ++round) {
        const double middle = (low + high) / 2;
        (fits(middle) ? low : high) = middle;
    }
    return low;
}

/// Distance from the line of a quarter circle's pierce: it lies in the widest circle, `radius` beside the
/// start and `radius` back.
double pierceRoomOf(double room, double radius) {
    return room - std::hypot(room - radius, radius);
}

Lead laid(const shape::Side& side, std::size_t index, double t, double radius, double room, bool quarter) {
    const Point start = side.pointAt(t), along = side.tangentAt(t), left = leftOf(along);
    Lead lead{index, t, {}, {}, room};
    if (!quarter) {
        lead.in = {start + left * radius, start, 0};
        return lead;
    }
    const Point centre = start + left * radius;
    lead.in = {centre - along * radius, start, kQuarter};
    const double half = std::sqrt(0.5);
    lead.out = shape::Side{start, centre + (along - left) * (half * radius), kEighth};
    return lead;
}

bool isSharpCorner(const shape::Side& side, double cornerRadius) {
    return side.bulge < 0 && side.circle().radius <= cornerRadius * (1 + 1e-6);
}

std::optional<Lead> bestLead(const Loop& loop, const LeadRules& rules, const std::vector<Region>& steel,
                             const std::vector<Loop>& otherCuts, const std::vector<Loop>& behind,
                             bool corners) {
    std::optional<Lead> best;
    double bestRadius = 0, mostSteel = 0;
    bool bestQuarter = false;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        if (isSharpCorner(side, rules.cornerRadius) != corners)
            continue;
        const double steps = std::clamp(std::ceil(side.length() / kStep), 1.0, kMostSteps);
        for (int k = 0; k < static_cast<int>(steps); ++k) {
            const double t = (k + 0.5) / steps;
            const Point start = side.pointAt(t), left = leftOf(side.tangentAt(t));
            const double room = widest(2 * rules.radius, [&](double radius) {
                return isScrap(start + left * radius, radius, loop, rules.otherCutRoom, steel, otherCuts);
            });
            double radius = std::min(rules.radius, room / 2);
            const bool quarter = pierceRoomOf(room, radius) >= rules.pierceRoom;
            if (!quarter)
                radius = std::min(room, std::max(rules.radius, rules.pierceRoom));
            if (!quarter && radius < rules.pierceRoom)
                continue;
            double steelBehind = std::numeric_limits<double>::infinity();
            for (const Loop& edge : behind)
                steelBehind = std::min(steelBehind, distanceTo(edge, start));
            // A quarter circle before a line, then the wider lead, then the steel; of equals the first.
            const bool wider = radius > bestRadius * 1.001, asWide = radius > bestRadius * 0.999;
            if (best && (quarter < bestQuarter ||
                         (quarter == bestQuarter && !wider && (!asWide || steelBehind <= mostSteel + 1e-6))))
                continue;
            best = laid(side, i, t, radius, room, quarter);
            bestRadius = radius;
            bestQuarter = quarter;
            mostSteel = steelBehind;
        }
    }
    return best;
}

} // namespace

std::optional<Lead> findLead(const Loop& loop, const LeadRules& rules, const std::vector<Region>& steel,
                             const std::vector<Loop>& otherCuts, const std::vector<Loop>& behind) {
    util::require(rules.radius > 0, "findLead: the lead must have a radius");
    if (auto lead = bestLead(loop, rules, steel, otherCuts, behind, false))
        return lead;
    return bestLead(loop, rules, steel, otherCuts, behind, true);
}

} // namespace pw::exchange
