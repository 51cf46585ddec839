#include "app/engine/find_loads.h"

#include "app/engine/advice.h"
#include "core/hub/heat.h"
#include "core/hub/hub.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::engine {

namespace {

using spring::LoadSource;
using units::Force;

void add(std::vector<std::string>& to, const std::vector<std::string>& from) {
    to.insert(to.end(), from.begin(), from.end());
}

void findPull(const job::Job& job, const loadpath::Setup& setup, const Found<Force>& tried,
              FoundLoads& found) {
    const hub::HubForces hub = hub::hubForces(job);
    add(found.assumptions, hub.assumptions);
    found.hub = {hub.pressure, hub.pull, hub.heatToFree, std::nullopt, hub.remarks};
    if (job.heat.part)
        for (const hub::HeatEffect& effect : hub::heatAdvice(*job.heat.part, hub.hubMetal, job.preferred))
            found.hub.remarks.push_back(effect.says);
    found.problems.insert(found.problems.end(), hub.problems.begin(), hub.problems.end());
    if (found.pack.known())
        return; // a stated total stands
    // A shaft that does not stay cold grips again: the load to design for is that one.
    Found<units::Range<Force>> asked = hub.pull;
    if (asked && hub.pullShaftWarm)
        asked->high = std::max(asked->high, hub.pullShaftWarm->high);
    const loadpath::PullSources sources = loadpath::pullSources(job, setup.torque, asked);
    add(found.assumptions, sources.assumptions);
    found.stated = hub.known;
    if (!sources.known()) {
        if (hub.told)
            for (const util::Problem& p : hub.missing)
                found.assumptions.push_back(
                    say("the hub's pull is not worked out for want of %1: %2", {p.field, p.message}));
        found.nobodys = true;
        if (tried)
            spring::shareOut(job, found.pack, {*tried, *tried}, LoadSource::Rated);
        return;
    }
    const Force design = sources.design();
    const LoadSource source = sources.hub && sources.hub->high >= design         ? LoadSource::Hub
                              : sources.wrench && sources.wrench->high >= design ? LoadSource::Wrench
                                                                                 : LoadSource::Ram;
    spring::shareOut(job, found.pack, sources.range(), source);
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    if (sources.hub && sources.most()) {
        if (*sources.most() < sources.hub->high)
            found.assumptions.push_back(say("the hub may ask for %1 and the tool makes %2 at most: it may "
                                            "not come without heat or soaking",
                                            {show(sources.hub->high), show(*sources.most())}));
        else
            found.assumptions.push_back(
                say("the hub may ask for %1, but the tool can make %2: it is checked for that",
                    {show(*sources.hub), show(*sources.most())}));
    }
}

} // namespace

std::string nameOf(LoadSource source) {
    switch (source) {
    case LoadSource::None:
        break;
    case LoadSource::Springs:
        return "springs";
    case LoadSource::Given:
        return "given";
    case LoadSource::Hub:
        return "hub";
    case LoadSource::Wrench:
        return "wrench";
    case LoadSource::Ram:
        return "ram";
    case LoadSource::Rated:
        return "rated";
    }
    return {};
}

FoundLoads findLoads(const job::Job& job, const loadpath::Setup& setup, const Found<Force>& tried) {
    FoundLoads found;
    found.pack = spring::packLoads(job);
    add(found.assumptions, found.pack.assumptions);
    if (job.work == job::Work::Pull)
        findPull(job, setup, tried, found);
    const spring::PackLoads& pack = found.pack;
    found.problems.insert(found.problems.end(), pack.problems.begin(), pack.problems.end());
    // With a load to be had, what else is missing only leaves its own check open.
    for (const util::Problem& p : pack.missing) {
        if (pack.known())
            found.assumptions.push_back(say("not worked out for want of %1: %2", {p.field, p.message}));
        else
            found.missing.push_back({p.field, say("Needed: %1.", {p.message})});
    }
    if (!pack.known()) {
        if (pack.missing.empty() && found.problems.empty() && !found.nobodys)
            found.missing.push_back(missingFigure("load"));
        return found;
    }
    found.load = {pack.total, pack.station, pack.energy, nameOf(pack.source)};
    return found;
}

} // namespace pw::engine
