#include "core/loadpath/pull_load.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::loadpath {

Force PullSources::design() const {
    return std::max(hub ? hub->high : Force(), most().value_or(Force()));
}

std::optional<Force> PullSources::most() const {
    if (!wrench && !ram)
        return std::nullopt;
    return std::max(wrench ? wrench->high : Force(), ram.value_or(Force()));
}

Range<Force> PullSources::range() const {
    Force low = design();
    if (hub)
        low = std::min(low, hub->low);
    else if (wrench && !ram)
        low = wrench->low;
    return {low, design()};
}

std::optional<Force> ramForce(const job::Ram& ram) {
    if (ram.area && ram.maxPressure)
        return *ram.maxPressure * *ram.area;
    return ram.capacity;
}

PullSources pullSources(const job::Job& job, const std::optional<TorqueInputs>& torque,
                        const std::optional<Range<Force>>& hub) {
    PullSources sources;
    sources.hub = hub;
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    if (torque && job.screw && job.screw->wrench) {
        Force pull = Force::fromN(kHandPull);
        if (job.screw->handPull)
            pull = *job.screw->handPull;
        else
            sources.assumptions.push_back(
                say("the hand pulls the wrench with %1, a strong one-handed pull (common practice)",
                    {show(pull)}));
        const Torque made = pull * *job.screw->wrench;
        const Range<Torque> unit = torqueFor(*torque, Force::fromN(1));
        sources.wrench = {Force::fromN(made / unit.high), Force::fromN(made / unit.low)};
    }
    if (job.ram) {
        sources.ram = ramForce(*job.ram);
        if (sources.ram && !(job.ram->area && job.ram->maxPressure))
            sources.assumptions.push_back(
                say("the ram makes its capacity of %1; its relief pressure and area were not both given",
                    {show(*sources.ram)}));
    }
    return sources;
}

} // namespace pw::loadpath
