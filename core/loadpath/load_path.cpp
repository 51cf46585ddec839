#include "core/loadpath/load_path.h"

#include "core/loadpath/back.h"
#include "core/loadpath/buckling.h"
#include "core/loadpath/pull_load.h"
#include "core/loadpath/ram.h"
#include "core/loadpath/screw.h"
#include "core/loadpath/studs.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr const char* kNoThread = PW_SAY("the forcing screw's thread is not given, M20 or 3/4-10 for one");
constexpr const char* kNoLoad = PW_SAY("no load: give the springs' forces, or the load in all");

struct Context {
    const job::Job& job;
    const spring::PackLoads& pack;
    const Members& members;
    double s;
};

constexpr const char* kNoGrade = PW_SAY("the screw's grade is not known: read the marks on its head or end");

Check screwCheck(const Context& at, const std::optional<TorqueInputs>& torque, const FromPlate& plate) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("screw.stress", "screw", say("Screw"), CheckKind::Force, what);
    };
    if (!at.members.thread || !torque)
        return missing(say(kNoThread));
    if (!at.members.screw)
        return missing(say(kNoGrade));
    if (!at.pack.known())
        return missing(say(kNoLoad));
    ScrewInputs in{*at.members.thread, *at.members.screw, at.pack.design(), torque->friction.thread.high,
                   at.s};
    in.bending = plate.screwMoment;
    in.hammer = hammerFactorOf(at.job);
    in.pushes = screwPushes(at.job);
    in.system = at.job.preferred;
    return screwStressCheck(in);
}

std::optional<Check> columnCheck(const Context& at) {
    if (!screwPushes(at.job) || !at.members.thread || !at.members.screw || !at.pack.known())
        return std::nullopt;
    BucklingInputs in{*at.members.thread, *at.members.screw};
    if (at.job.screw)
        in.freeLength = at.job.screw->freeLength;
    const bool loose = (at.job.hub && at.job.hub->jaws) || at.job.legs;
    in.endFactor = loose ? 2.0 : 1.0;
    in.endWords =
        loose ? say("the tool stands on jaws or legs that can sway") : say("the plate is bolted to the part");
    in.load = at.pack.design() * hammerFactorOf(at.job);
    in.s = at.s;
    in.system = at.job.preferred;
    return bucklingCheck(in);
}

Check nutCheck(const Context& at) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("thread.nut", "nut", say("Nut thread"), CheckKind::Force, what);
    };
    if (!at.members.thread)
        return missing(say(kNoThread));
    if (!at.pack.known())
        return missing(say(kNoLoad));
    if (!at.members.screw || !at.members.nut)
        return missing(say("the grade of screw or nut is not known: read the marks on them"));
    const auto height = nutHeightOf(at.job, at.members);
    if (!height)
        return missing(say("the nut's height is not given: measure it"));
    StripInputs in;
    in.id = "thread.nut";
    in.member = "nut";
    in.title = say("Nut thread");
    in.thread = *at.members.thread;
    in.engagement = *height;
    in.screw = *at.members.screw;
    in.nut = at.members.nut;
    if (const auto hexagon = thread::standardHexagon(in.thread))
        in.standardNutHeight = hexagon->nutHeight;
    else
        in.standardNutHeight = in.thread.diameter;
    in.load = at.pack.design();
    in.s = at.s;
    in.system = at.job.preferred;
    return stripCheck(in);
}

/// The thread the screw enters: shaft, bar or the plate's own bore.
std::optional<Check> intoCheck(const Context& at) {
    const job::Into into = intoOf(at.job);
    StripInputs in;
    switch (into) {
    case job::Into::Shaft:
        in.id = "thread.shaft";
        in.member = "shaft thread";
        in.title = say("Shaft thread");
        break;
    case job::Into::Bar:
        in.id = "thread.bar";
        in.member = "bar thread";
        in.title = say("Bar thread");
        break;
    case job::Into::Plate:
        in.id = "thread.plate";
        in.member = "plate thread";
        in.title = say("Plate thread");
        break;
    case job::Into::Nut:
        return std::nullopt;
    }
    const auto missing = [&](const std::string& what) {
        return incompleteCheck(in.id, in.member, in.title, CheckKind::Force, what);
    };
    if (!at.members.thread)
        return missing(say(kNoThread));
    if (!at.pack.known())
        return missing(say(kNoLoad));
    if (!at.members.screw)
        return missing(say(kNoGrade));
    const bool plate = into == job::Into::Plate;
    const auto& steel = plate ? at.members.plate : at.members.into;
    if (!steel)
        return missing(
            plate ? say("the plate's steel is not known: name a grade, or \"unknown scrap\"")
                  : say("the steel the screw goes into is not known: name a grade, or \"unknown scrap\""));
    std::optional<Length> engagement = at.job.screw ? at.job.screw->engagement : std::nullopt;
    // Loose plates do not share one thread: the first takes it.
    if (plate && at.job.plate.thickness)
        engagement = engagement ? std::min(*engagement, *at.job.plate.thickness) : at.job.plate.thickness;
    if (!engagement)
        return missing(say("how deep the screw sits in its thread is not given: count its turns in and "
                           "multiply by the pitch"));
    in.thread = *at.members.thread;
    in.engagement = *engagement;
    in.screw = *at.members.screw;
    in.inside = *steel;
    in.condition = at.job.screw ? at.job.screw->threadCondition.value_or(job::ThreadCondition::Good)
                                : job::ThreadCondition::Good;
    in.load = at.pack.design();
    in.s = at.s;
    in.system = at.job.preferred;
    return stripCheck(in);
}

TravelInputs travelInputs(const Context& at, const CentreBearing* bearing) {
    const job::Screw screw = at.job.screw.value_or(job::Screw{});
    TravelInputs in;
    in.turns = turnsOf(at.job);
    in.diameter = at.members.thread->diameter;
    in.pitch = at.members.thread->pitch;
    in.standoff = screw.standoff;
    in.usableLength = screw.usableLength;
    in.threadLength = screw.threadLength;
    in.engagement = screw.engagement;
    const job::Into into = intoOf(at.job);
    in.through = in.turns == job::Turns::Screw && (into == job::Into::Bar || into == job::Into::Nut);
    if (in.through)
        in.hole = into == job::Into::Nut ? nutHeightOf(at.job, at.members)
                  : at.job.back          ? at.job.back->thickness
                                         : std::nullopt;
    if (at.job.plate.thickness)
        in.plate = *at.job.plate.thickness * static_cast<double>(at.job.plate.stacked.value_or(1));
    in.washer = screw.washerThickness.value_or(bearing ? bearing->washerThickness : Length());
    in.nutHeight = nutHeightOf(at.job, at.members);
    in.compressFurther = at.job.travel.compressFurther.value_or(Length());
    in.releaseTravel = at.pack.releaseTravel;
    in.system = at.job.preferred;
    return in;
}

void screwChecks(const Context& at, LoadPath& path, const FromPlate& plate) {
    path.checks.push_back(screwCheck(at, path.torque, plate));
    if (hasNut(at.job))
        path.checks.push_back(nutCheck(at));
    if (auto check = intoCheck(at))
        path.checks.push_back(*check);
    if (auto check = columnCheck(at))
        path.checks.push_back(*check);
}

/// Nut face, washer or a ram's foot on the plate.
void bearingChecks(const Context& at, LoadPath& path) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("centre.bearing", "centre bearing", say("Centre bearing"), CheckKind::Force,
                               what);
    };
    if (!path.bearing) {
        path.checks.push_back(missing(
            at.job.ram ? say("measure the ram's foot across: centre.bearing_outside") : say(kNoThread)));
        return;
    }
    // A tapped bore bears on its own thread: thread.plate judges it.
    if (!path.bearing->throughThread) {
        if (at.pack.known() && path.members.plate)
            path.checks.push_back(centreBearingCheck(*path.bearing, *path.members.plate, at.pack.design(),
                                                     at.s, at.job.preferred));
        else
            path.checks.push_back(missing(say(kNoLoad)));
    }
    if (hasScrew(at.job))
        if (auto check = washerCheck(at.job, *path.bearing))
            path.checks.push_back(*check);
}

void travelChecks(const Context& at, LoadPath& path) {
    if (path.members.thread) {
        const TravelInputs travel = travelInputs(at, path.bearingOrNull());
        path.threadLeft = threadLeft(travel);
        path.threadNeeded = threadNeeded(travel);
        path.moments = threadMoments(travel);
        path.checks.push_back(threadTravelCheck(travel));
    } else {
        path.checks.push_back(
            incompleteCheck("travel.thread", "screw", say("Thread left"), CheckKind::Fit, say(kNoThread)));
    }
    path.checks.push_back(pinTravelCheck(at.job, at.pack));
    path.checks.push_back(accessCheck(at.job));
}

/// A ram, a brittle plate and a cast flange must not be hammered on, whatever their margins.
std::optional<Check> hammeringCheck(const job::Job& job, const Members& members) {
    if (hammerFactorOf(job) == 1)
        return std::nullopt;
    Check check;
    check.id = "tool.hammering";
    check.member = "tool";
    check.title = say("Hammering");
    check.kind = CheckKind::Fit;
    check.source = say("common practice, no published source");
    const bool snaps =
        job.plate.tests.file == job::FileTest::Skates || job.plate.tests.bend == job::BendTest::Snapped;
    std::string why;
    if (job.ram)
        why = say("a ram is loaded: its seals and rod do not take blows");
    else if (snaps || (members.plate && members.plate->brittle))
        why = say("the plate is brittle: it cracks under a blow");
    else if (job.hub && job.hub->flange && job.hub->jaws) {
        const auto flange = job.hub->flange->material ? job.hub->flange->material : job.hub->hubMaterial;
        const auto found =
            flange ? material::resolve(*flange) : util::Result<material::Material>(util::Problem{});
        if (!found || found->brittle)
            why = say("the flange the jaws hold is cast: it cracks under a blow");
    }
    check.grade = why.empty() ? Grade::Holds : Grade::Breaks;
    check.basis = why.empty() ? say("blows count 1.5 x the load on screw, point and plate")
                              : say("%1. Do not hammer", {why});
    return check;
}

/// What only a puller has.
void pullChecks(const Context& at, const Setup& setup, MemberChecks& out) {
    const Force design = at.pack.design();
    out.take(boltChecks(at.job, design, at.s, setup.boltStrength));
    if (setup.members.plate)
        out.take(legChecks(at.job, *setup.members.plate, design, at.s, setup.rodStrength));
    out.take(ramChecks(at.job, design, at.s, setup.rodStrength));
    if (auto check = hammeringCheck(at.job, setup.members))
        out.checks.push_back(*check);
}

} // namespace

LoadPath loadPath(const job::Job& job, const Setup& setup, const spring::PackLoads& pack,
                  const std::vector<Ligament>& ligaments, const FromPlate& plate) {
    LoadPath path;
    static_cast<Setup&>(path) = setup;
    const bool compress = job.work.value_or(job::Work::Compress) == job::Work::Compress;
    const Context at{job, pack, path.members, scaleOf(job.wanted)};
    std::vector<Check>& checks = path.checks;
    if (hasScrew(job))
        screwChecks(at, path, plate);
    bearingChecks(at, path);
    MemberChecks members;
    if (pack.known()) {
        members.take(backChecks(job, path, pack.design(), at.s));
        members.take(pointChecks(job, path, pack.design(), at.s));
    }
    if (compress)
        travelChecks(at, path);
    else if (pack.known())
        pullChecks(at, path, members);
    checks.insert(checks.end(), members.checks.begin(), members.checks.end());
    path.assumptions.insert(path.assumptions.end(), members.assumptions.begin(), members.assumptions.end());
    path.problems.insert(path.problems.end(), members.problems.begin(), members.problems.end());
    checks.push_back(landWidthCheck(job));
    if (pack.known())
        checks.push_back(landBearingCheck(job, path.members.plate, pack.station.high, at.s));
    else
        checks.push_back(
            incompleteCheck("land.bearing", "lands", say("Land pressure"), CheckKind::Force, say(kNoLoad)));
    checks.push_back(ligamentCheck(job, ligaments));
    checks.push_back(cutHolesCheck(job));
    return path;
}

LoadPath loadPath(const job::Job& job, const spring::PackLoads& pack,
                  const std::vector<Ligament>& ligaments) {
    return loadPath(job, setUp(job), pack, ligaments);
}

std::optional<Check> hungScrew(const job::Job& job, const Setup& setup, Force left, Torque bending,
                               int station, shape::Point where) {
    if (!hasScrew(job) || !setup.members.thread || !setup.members.screw || !setup.torque)
        return std::nullopt;
    ScrewInputs in{*setup.members.thread, *setup.members.screw, left, setup.torque->friction.thread.high,
                   scaleOf(job.wanted)};
    in.bending = bending;
    in.pushes = screwPushes(job);
    in.system = job.preferred;
    return hungScrewCheck(in, station, where);
}

RatedLoadPath rate(const job::Job& job, const spring::PackLoads& pack,
                   const std::optional<TorqueInputs>& torque, const std::vector<Check>& allChecks) {
    RatingInputs in;
    in.checks = allChecks;
    in.design = pack.known() ? pack.design() : Force();
    in.limitAtBind = pack.limitAtBind();
    in.mustReach = pack.source != spring::LoadSource::Wrench && pack.source != spring::LoadSource::Ram &&
                   pack.source != spring::LoadSource::Rated;
    if (job.work == job::Work::Pull && job.ram)
        if (const auto made = ramForce(*job.ram))
            in.ramLimit = std::min(*made, job.ram->capacity.value_or(*made));
    in.stampWanted = job.wanted.stamp;
    in.torque = torque;
    in.system = job.preferred;
    RatedLoadPath rated;
    rated.rating = ratingOf(in);
    if (!torque)
        return rated;
    if (in.mustReach)
        rated.checks.push_back(torqueWindowCheck(in, rated.rating));
    OverrunInputs overrun;
    if (job.screw) {
        overrun.wrench = job.screw->wrench;
        overrun.pull = job.screw->handPull;
    }
    overrun.compressFurther = job.travel.compressFurther.value_or(Length());
    overrun.lead = torque->thread.lead();
    rated.checks.push_back(overrunCheck(in, overrun));
    return rated;
}

} // namespace pw::loadpath
