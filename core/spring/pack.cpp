#include "core/spring/pack.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pw::spring {

namespace {

using verdict::Check;
using verdict::CheckKind;
using verdict::Grade;

Range<Force> sumOf(const PackLoads& pack, Length further) {
    Range<Force> sum;
    for (const Resolved& spring : pack.springs)
        if (spring.known)
            sum = sum + spring.forceAt(spring.assembled - further) * static_cast<double>(spring.perStation);
    return sum;
}

void readStations(const job::Job& job, PackLoads& pack) {
    const job::Stations& stations = job.stations;
    if (!stations.at.empty())
        pack.stations = static_cast<int>(stations.at.size());
    else if (stations.count && *stations.count > 0)
        pack.stations = *stations.count;
    else
        pack.missing.push_back({"stations.count", say("how many stations carry the load: count the pins")});
    const auto count = static_cast<std::size_t>(std::max(0, pack.stations));
    pack.carries = stations.loaded;
    if (!pack.carries.empty() && pack.carries.size() != count && count > 0)
        pack.problems.push_back(
            {"stations.loaded", say("give one true or false for each of the %1 stations", {count})});
    pack.carries.resize(count, true);
    pack.loaded = static_cast<int>(std::count(pack.carries.begin(), pack.carries.end(), true));
    if (count > 0 && pack.loaded == 0)
        pack.problems.push_back(
            {"stations.loaded", say("no station carries load; set at least one to true")});
    pack.perStation.assign(count, {});
}

/// Shares for the loaded stations, summing to 1.
std::vector<double> sharesOf(const job::Job& job, PackLoads& pack) {
    std::vector<double> share = job.load.share;
    const std::size_t count = pack.perStation.size();
    const bool usable = share.size() == count && std::all_of(share.begin(), share.end(), [](double s) {
                            return std::isfinite(s) && s >= 0;
                        });
    if (!share.empty() && !usable)
        pack.problems.push_back(
            {"load.share", say("give one share, 0 or more, for each of the %1 stations", {count})});
    if (!usable)
        share.assign(count, 1);
    for (std::size_t i = 0; i < count; ++i)
        if (!pack.carries[i])
            share[i] = 0;
    const double sum = std::accumulate(share.begin(), share.end(), 0.0);
    for (double& s : share)
        s = sum > 0 ? s / sum : 0;
    return share;
}

void findMostLoaded(PackLoads& pack) {
    pack.station = {};
    for (const Range<Force>& force : pack.perStation)
        if (force.high > pack.station.high)
            pack.station = force;
}

void findTravel(PackLoads& pack) {
    for (const Resolved& spring : pack.springs) {
        if (!spring.known)
            continue;
        const Length release = spring.assembled - pack.squeeze;
        const Length travel = std::max(Length(), spring.freeForTravel - release);
        pack.releaseTravel = std::max(pack.releaseTravel.value_or(Length()), travel);
        if (spring.solid) {
            const Length left = release - *spring.solid;
            pack.clearanceToSolid = std::min(pack.clearanceToSolid.value_or(left), left);
        }
    }
    const bool allSolidsKnown = std::all_of(pack.springs.begin(), pack.springs.end(),
                                            [](const Resolved& s) { return s.known && s.solid.has_value(); });
    for (const Resolved& spring : pack.springs) {
        if (!spring.known || !spring.solid)
            continue;
        const Length left = spring.assembled - pack.squeeze - *spring.solid;
        const Coils coils = left <= Length()           ? Coils::Solid
                            : left < *spring.leastGaps ? Coils::Tight
                                                       : Coils::Clear;
        if (coils != Coils::Clear || allSolidsKnown)
            pack.coils = std::max(pack.coils, coils);
    }
}

void collect(PackLoads& pack) {
    for (const Resolved& spring : pack.springs) {
        pack.assumptions.insert(pack.assumptions.end(), spring.assumptions.begin(), spring.assumptions.end());
        pack.missing.insert(pack.missing.end(), spring.missing.begin(), spring.missing.end());
        pack.problems.insert(pack.problems.end(), spring.problems.begin(), spring.problems.end());
    }
}

/// What is left of a spring's travel at release, and what to do when it is nothing.
std::string solidWords(Length left, const Resolved& spring, const job::Job& job) {
    const auto show = [&](Length l) { return units::show(l, job.preferred); };
    if (left > Length())
        return say("%1 left, least gaps %2 (%3)", {show(left), show(*spring.leastGaps), spring.gapsBasis});
    const std::string solid =
        left < Length() ? say("goes solid %1 too early", {show(-left)}) : say("just solid");
    const Length swell = job.travel.swell.value_or(Length());
    if (swell <= Length())
        return say(
            "%1; the coils themselves are the end of it: squeeze less, or measure the solid length again",
            {solid});
    if (left + swell > Length())
        return say(
            "%1; it is the %2 of swell: without it %3 would be left; cut the swollen pack apart, do not "
            "squeeze it",
            {solid, show(swell), show(left + swell)});
    return say("%1; even without the swell; cut the swollen pack apart, do not squeeze it", {solid});
}

Check coilBindCheck(const job::Job& job, const PackLoads& pack) {
    Check check;
    check.id = "load.coil_bind";
    check.member = "springs";
    check.title = say("Coils apart");
    check.kind = CheckKind::Fit;
    check.unit = "mm";
    check.source = say("EN 13906-1, least sum of gaps (from memory)");
    // The spring that is worst off: least clearance over its own gaps.
    const Resolved* worst = nullptr;
    const Resolved* unknown = nullptr;
    double worstRatio = 0;
    for (const Resolved& spring : pack.springs) {
        if (!spring.known || !spring.solid) {
            unknown = &spring;
            continue;
        }
        const Length left = spring.assembled - pack.squeeze - *spring.solid;
        const double ratio = left / *spring.leastGaps;
        if (!worst || ratio < worstRatio) {
            worst = &spring;
            worstRatio = ratio;
        }
    }
    if (worst && (!unknown || worstRatio < 1)) {
        const auto show = [&](Length l) { return units::show(l, job.preferred); };
        const Length release = worst->assembled - pack.squeeze, left = release - *worst->solid;
        check.demand = pack.squeeze.mm();
        check.capacity = (worst->assembled - *worst->solid).mm();
        check.margin = left.mm();
        check.wanted = worst->leastGaps->mm();
        check.basis = say("%1: %2 at release (%3 less %4), solid at %5: %6",
                          {worst->name, show(release), show(worst->assembled), show(pack.squeeze),
                           show(*worst->solid), solidWords(left, *worst, job)});
        check.grade = left <= Length()           ? Grade::Breaks
                      : left < *worst->leastGaps ? Grade::Thin
                                                 : Grade::Holds;
        return check;
    }
    check.grade = Grade::Incomplete;
    check.basis = say("solid length of %1 not given: squeeze one in a vice until the coils touch and measure "
                      "it, or count the coils and measure the wire",
                      {unknown ? unknown->name : say("the springs")});
    return check;
}

std::optional<Check> stressCheck(const job::Job& job, const PackLoads& pack) {
    std::optional<Check> worst;
    for (const Resolved& spring : pack.springs) {
        if (!spring.known || !spring.wire || !spring.meanCoil)
            continue;
        const Force force = spring.forceAt(spring.assembled - pack.squeeze).high;
        const Stress stress = shearStress(force, *spring.wire, *spring.meanCoil);
        const auto named = wireNamed(spring.wireMaterial);
        const Wire wire = named.value_or(*wireNamed("hard-drawn"));
        const Stress allowed = wire.strength(*spring.wire) * wire.allowable;
        Check check;
        check.id = "springs.stress";
        check.member = "springs";
        check.title = say("Spring stress");
        check.kind = CheckKind::Note;
        check.unit = "MPa";
        check.demand = stress.mpa();
        check.capacity = allowed.mpa();
        check.margin = stress.mpa() > 0 ? allowed / stress : 99.0;
        check.wanted = 1.0;
        const bool over = *check.margin < 1;
        check.grade = over && named ? Grade::Thin : Grade::Holds;
        const auto show = [&](Stress s) { return units::show(s, job.preferred); };
        check.basis = say("%1: %2 in wire %3 against %4, %5 of %6 strength",
                          {spring.name, show(stress), units::show(*spring.wire, job.preferred), show(allowed),
                           units::number(wire.allowable), say(wire.name.data())});
        if (!named)
            check.basis = say("%1 (wire not known: for information)", {check.basis});
        else if (over)
            check.basis = say("%1: the spring itself may take a set", {check.basis});
        check.source = say("Shigley 9th ed. eq. (10-7), Tables 10-4 and 10-6; EN 13906-1 curvature factor");
        if (!worst || *check.margin < *worst->margin)
            worst = check;
    }
    return worst;
}

} // namespace

Given<Force> PackLoads::limitAtBind() const {
    if (!loadAtBind)
        return std::nullopt;
    return std::max(loadAtBind->low, total.high);
}

Range<Force> totalAt(const PackLoads& pack, Length squeeze) {
    return sumOf(pack, squeeze) * static_cast<double>(pack.loaded);
}

void shareOut(const job::Job& job, PackLoads& pack, Range<Force> total, LoadSource source) {
    if (pack.loaded == 0)
        return;
    pack.source = source;
    pack.total = total;
    const std::vector<double> shares = sharesOf(job, pack);
    for (std::size_t i = 0; i < shares.size(); ++i)
        pack.perStation[i] = pack.total * shares[i];
    findMostLoaded(pack);
}

PackLoads packLoads(const job::Job& job) {
    PackLoads pack;
    readStations(job, pack);
    pack.squeeze = job.travel.compressFurther.value_or(Length()) + job.travel.swell.value_or(Length());
    for (std::size_t i = 0; i < job.springs.size(); ++i)
        pack.springs.push_back(resolve(job.springs[i], static_cast<int>(i), job.preferred));
    collect(pack);
    findTravel(pack);
    if (!pack.springs.empty() && pack.springs.front().known) {
        pack.assembledLength = pack.springs.front().assembled;
        pack.releaseLength = pack.springs.front().assembled - pack.squeeze;
    }

    const bool allKnown = !pack.springs.empty() && std::all_of(pack.springs.begin(), pack.springs.end(),
                                                               [](const Resolved& s) { return s.known; });
    const double loaded = pack.loaded;
    if (pack.loaded == 0)
        return pack;
    if (job.load.total) {
        shareOut(job, pack, *job.load.total, LoadSource::Given);
        if (pack.springs.empty() && job.work.value_or(job::Work::Compress) == job::Work::Compress)
            pack.missing.push_back(
                {"springs", say("length assembled and free, of one spring: how far the screw must back off "
                                "until the pack is loose, and the energy stored, hang on it")});
    } else if (allKnown) {
        pack.source = LoadSource::Springs;
        const Range<Force> station = sumOf(pack, pack.squeeze);
        pack.total = station * loaded;
        // Shares, when given for springs too, spread the same total.
        const std::vector<double> shares = sharesOf(job, pack);
        for (std::size_t i = 0; i < shares.size(); ++i)
            pack.perStation[i] = pack.total * shares[i];
        pack.assembledTotal = sumOf(pack, Length()) * loaded;
        if (pack.total.high <= Force()) {
            pack.problems.push_back(
                {"springs", say("the springs carry nothing at release length: they are as long as when free; "
                                "check assembled and free length")});
            pack.source = LoadSource::None;
        }
    } else if (pack.springs.empty() && job.work.value_or(job::Work::Compress) == job::Work::Compress) {
        pack.missing.push_back(
            {"springs", say("what pushes back: a spring's force at a length, or the load in all")});
    }
    findMostLoaded(pack);
    if (allKnown) {
        Energy energy;
        for (const Resolved& spring : pack.springs)
            energy += spring.energyAt(spring.assembled - pack.squeeze) * (spring.perStation * loaded);
        pack.energy = energy;
        const bool solidsKnown = std::all_of(pack.springs.begin(), pack.springs.end(),
                                             [](const Resolved& s) { return s.solid.has_value(); });
        if (solidsKnown && pack.clearanceToSolid && pack.source == LoadSource::Springs)
            pack.loadAtBind = sumOf(pack, pack.squeeze + *pack.clearanceToSolid) * loaded;
    }
    return pack;
}

std::vector<Check> checkSprings(const job::Job& job, const PackLoads& pack) {
    std::vector<Check> checks;
    if (pack.springs.empty())
        return checks;
    checks.push_back(coilBindCheck(job, pack));
    if (auto stress = stressCheck(job, pack))
        checks.push_back(*stress);
    return checks;
}

} // namespace pw::spring
