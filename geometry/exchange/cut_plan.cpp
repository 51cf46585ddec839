#include "geometry/exchange/cut_plan.h"

#include "core/job/process.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::exchange {

namespace {

/// A hole exactly at the limit is burned, whatever the rounding of an inch fraction did to it. mm.
constexpr double kSizeSlack = 1e-6;

bool burns(job::Process process) {
    return process != job::Process::SawAndDrill && process != job::Process::Milled;
}

bool isForTheDrill(const shape::Hole& hole, const CutSettings& settings) {
    return hole.part == shape::Part::Extra && std::ranges::count(settings.drilledExtras, hole.index) > 0;
}

std::string noteForShapedHole(const shape::Loop& loop, const CutSettings& settings) {
    if (settings.process == job::Process::SawAndDrill)
        return PW_SAY("drill the ends, saw and file between");
    const auto least = job::leastBurnedHole(settings.process, settings.thickness);
    if (least && narrowWidth(loop) < least->mm() - kSizeSlack)
        return PW_SAY("too narrow to burn, drill the ends, saw and file between");
    return {};
}

} // namespace

double narrowWidth(const shape::Loop& loop) {
    const double half = perimeter(loop) / 2;
    const double area = std::abs(signedArea(loop));
    // Never negative (isoperimetric inequality) but for rounding on a circle.
    const double rest = std::max(0.0, half * half - std::numbers::pi * area);
    return (half - std::sqrt(rest)) * 2 / std::numbers::pi;
}

CutPlan makeCutPlan(const shape::Region& region, const CutSettings& settings) {
    util::require(settings.thickness.mm() > 0, "makeCutPlan: thickness must be above zero");
    CutPlan plan;
    plan.settings = settings;
    plan.outside = {region.rim, shape::Part::Rim, 0, {}};
    const auto least = job::leastBurnedHole(settings.process, settings.thickness);
    for (const shape::Hole& hole : region.holes) {
        const auto circle = asCircle(hole.loop);
        if (!circle) {
            plan.inside.push_back({hole.loop, hole.part, hole.index, noteForShapedHole(hole.loop, settings)});
            continue;
        }
        const Length diameter = Length::fromMm(2 * circle->radius);
        if (hole.part == shape::Part::Bore && settings.tappedBore) {
            const TappedBore& bore = *settings.tappedBore;
            plan.drilled.push_back(
                {circle->centre, bore.tapDrill, hole.part, hole.index, "tap " + bore.thread});
        } else if (!burns(settings.process) || isForTheDrill(hole, settings)) {
            plan.drilled.push_back({circle->centre, diameter, hole.part, hole.index, {}});
        } else if (diameter.mm() < least->mm() - kSizeSlack) {
            plan.drilled.push_back({circle->centre, diameter, hole.part, hole.index, "too small to burn"});
        } else {
            plan.inside.push_back({hole.loop, hole.part, hole.index, {}});
        }
    }
    return plan;
}

CutPlan makeCutPlan(const std::vector<shape::Region>& plates, const CutSettings& settings) {
    util::require(!plates.empty(), "makeCutPlan: no plate");
    CutPlan all = makeCutPlan(plates.front(), settings);
    for (std::size_t i = 1; i < plates.size(); ++i) {
        CutPlan plan = makeCutPlan(plates[i], settings);
        all.drilled.insert(all.drilled.end(), plan.drilled.begin(), plan.drilled.end());
        all.inside.insert(all.inside.end(), plan.inside.begin(), plan.inside.end());
        all.otherOutsides.push_back(std::move(plan.outside));
    }
    return all;
}

} // namespace pw::exchange
