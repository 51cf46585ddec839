#include "core/loadpath/load_path.h"

#include "core/loadpath/screw.h"
#include "core/loadpath/travel.h"
#include "core/units/format.h"

#include <algorithm>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

/// Mean friction radius of a flat end turning under even pressure is two thirds of its radius.
constexpr double kPointMean = 2.0 / 3.0;

constexpr const char* kNoThread = "the forcing screw's thread is not given, M20 or 3/4-10 for one";
constexpr const char* kNoLoad = "no load: give the springs' forces, or the load in all";

job::Into intoOf(const job::Job& job) {
    if (job.screw && job.screw->into)
        return *job.screw->into;
    return job.plate.boreThread.empty() ? job::Into::Shaft : job::Into::Plate;
}

job::Turns turnsOf(const job::Job& job) {
    if (job.screw && job.screw->turns)
        return *job.screw->turns;
    return intoOf(job) == job::Into::Plate ? job::Turns::Screw : job::Turns::Nut;
}

/// A nut on the stud carries the force.
bool hasNut(const job::Job& job) {
    return turnsOf(job) == job::Turns::Nut || intoOf(job) == job::Into::Nut;
}

std::optional<Length> nutHeightOf(const job::Job& job, const Members& members) {
    if (job.screw && job.screw->nutHeight)
        return job.screw->nutHeight;
    if (members.thread)
        if (const auto hexagon = thread::standardHexagon(*members.thread))
            return hexagon->nutHeight;
    return std::nullopt;
}

struct Context {
    const job::Job& job;
    const spring::PackLoads& pack;
    const Members& members;
    double s;
};

Check screwCheck(const Context& at, const std::optional<TorqueInputs>& torque) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("screw.stress", "screw", "Screw", CheckKind::Force, what);
    };
    if (!at.members.thread || !torque)
        return missing(kNoThread);
    if (!at.members.screw)
        return missing("the screw's grade is not known: read the marks on its head or end");
    if (!at.pack.known())
        return missing(kNoLoad);
    return screwStressCheck({*at.members.thread, *at.members.screw, at.pack.design(),
                             torque->friction.thread.high, at.s, at.job.preferred});
}

Check nutCheck(const Context& at) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("thread.nut", "nut", "Nut thread", CheckKind::Force, what);
    };
    if (!at.members.thread)
        return missing(kNoThread);
    if (!at.pack.known())
        return missing(kNoLoad);
    if (!at.members.screw || !at.members.nut)
        return missing("the grade of screw or nut is not known: read the marks on them");
    const auto height = nutHeightOf(at.job, at.members);
    if (!height)
        return missing("the nut's height is not given: measure it");
    StripInputs in;
    in.id = "thread.nut";
    in.member = "nut";
    in.title = "Nut thread";
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
        in.title = "Shaft thread";
        break;
    case job::Into::Bar:
        in.id = "thread.bar";
        in.member = "bar thread";
        in.title = "Bar thread";
        break;
    case job::Into::Plate:
        in.id = "thread.plate";
        in.member = "plate thread";
        in.title = "Plate thread";
        break;
    case job::Into::Nut:
        return std::nullopt;
    }
    const auto missing = [&](const std::string& what) {
        return incompleteCheck(in.id, in.member, in.title, CheckKind::Force, what);
    };
    if (!at.members.thread)
        return missing(kNoThread);
    if (!at.pack.known())
        return missing(kNoLoad);
    if (!at.members.screw)
        return missing("the screw's grade is not known: read the marks on its head or end");
    const bool plate = into == job::Into::Plate;
    const auto& steel = plate ? at.members.plate : at.members.into;
    if (!steel)
        return missing(
            plate ? "the plate's steel is not known: name a grade, or \"unknown scrap\""
                  : "the steel the screw goes into is not known: name a grade, or \"unknown scrap\"");
    std::optional<Length> engagement = at.job.screw ? at.job.screw->engagement : std::nullopt;
    // Loose plates do not share one thread: the first takes it.
    if (plate && at.job.plate.thickness)
        engagement = engagement ? std::min(*engagement, *at.job.plate.thickness) : at.job.plate.thickness;
    if (!engagement)
        return missing(
            "how deep the screw sits in its thread is not given: count its turns in and multiply by the "
            "pitch");
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
    in.engagement = screw.engagement;
    if (at.job.plate.thickness)
        in.plate = *at.job.plate.thickness * static_cast<double>(at.job.plate.stacked.value_or(1));
    in.washer = screw.washerThickness.value_or(bearing ? bearing->washerThickness : Length());
    in.nutHeight = nutHeightOf(at.job, at.members);
    in.compressFurther = at.job.travel.compressFurther.value_or(Length());
    in.releaseTravel = at.pack.releaseTravel;
    in.system = at.job.preferred;
    return in;
}

std::optional<TorqueInputs> torqueInputs(const job::Job& job, const Members& members,
                                         const CentreBearing* bearing,
                                         std::vector<std::string>& assumptions) {
    if (!members.thread)
        return std::nullopt;
    const job::Screw screw = job.screw.value_or(job::Screw{});
    TorqueInputs in;
    in.thread = *members.thread;
    in.friction = frictionOf(screw);
    if (in.friction.assumed)
        assumptions.push_back("screw taken as " + in.friction.words);
    const bool point = turnsOf(job) == job::Turns::Screw && intoOf(job) != job::Into::Shaft;
    if (point) {
        const Length end = screw.pointDiameter.value_or(thread::rootDiameter(in.thread));
        if (!screw.pointDiameter)
            assumptions.push_back("screw point taken as " + units::show(end, job.preferred) +
                                  " across, its root");
        in.collar = end * kPointMean;
    } else {
        const Length face =
            bearing && bearing->nutFace > Length() ? bearing->nutFace : in.thread.diameter * 1.4;
        const Length hole =
            bearing ? std::max(bearing->washerInside, in.thread.diameter) : in.thread.diameter;
        in.collar = (face + hole) * 0.5;
    }
    return in;
}

} // namespace

double scaleOf(const job::Wanted& wanted) {
    return wanted.margin && *wanted.margin > 0 ? *wanted.margin / 2 : 1.0;
}

Members membersOf(const job::Job& job) {
    Members members;
    const job::Screw screw = job.screw.value_or(job::Screw{});
    const auto wrong = [&](const std::string& field, const util::Problem& problem) {
        members.problems.push_back({field, problem.message});
    };
    std::string name = screw.thread;
    std::string field = "screw.thread";
    if (name.empty() && !job.plate.boreThread.empty()) {
        name = job.plate.boreThread;
        field = "plate.bore_thread";
    }
    if (!name.empty()) {
        if (auto thread = thread::parse(name))
            members.thread = *thread;
        else
            wrong(field, thread.problem());
    }
    if (members.thread) {
        if (screw.grade.empty())
            members.assumptions.push_back("screw grade not given: taken as the weakest sold");
        if (auto grade =
                material::findScrewGrade(screw.grade.empty() ? "unknown" : screw.grade, *members.thread))
            members.screw = *grade;
        else
            wrong("screw.grade", grade.problem());
        if (hasNut(job)) {
            if (screw.nutGrade.empty())
                members.assumptions.push_back("nut grade not given: taken as the weakest sold");
            if (auto grade = material::findNutGrade(screw.nutGrade.empty() ? "unknown" : screw.nutGrade,
                                                    *members.thread))
                members.nut = *grade;
            else
                wrong("screw.nut_grade", grade.problem());
        }
    }
    job::Material scrap;
    scrap.name = "unknown scrap";
    if (auto steel =
            material::resolve(job.plate.steel.value_or(scrap), job.plate.thickness.value_or(Length())))
        members.plate = *steel;
    else
        wrong("plate.steel", steel.problem());
    const job::Into into = intoOf(job);
    if (members.thread && (into == job::Into::Shaft || into == job::Into::Bar)) {
        std::optional<job::Material> given = screw.intoMaterial;
        if (!given && into == job::Into::Bar && job.back)
            given = job.back->steel;
        if (!given)
            members.assumptions.push_back("steel the screw goes into not given: taken as unknown scrap");
        if (auto steel = material::resolve(given.value_or(scrap)))
            members.into = *steel;
        else
            wrong("screw.into_material", steel.problem());
    }
    return members;
}

LoadPath loadPath(const job::Job& job, const spring::PackLoads& pack,
                  const std::vector<Ligament>& ligaments) {
    LoadPath path;
    path.members = membersOf(job);
    path.assumptions = path.members.assumptions;
    path.problems = path.members.problems;
    const bool compress = job.work.value_or(job::Work::Compress) == job::Work::Compress;
    const Context at{job, pack, path.members, scaleOf(job.wanted)};
    const thread::Thread* thread = path.members.thread ? &*path.members.thread : nullptr;

    if (auto bearing = centreBearing(job, thread)) {
        path.bearing = *bearing;
        path.assumptions.insert(path.assumptions.end(), bearing->assumptions.begin(),
                                bearing->assumptions.end());
    } else {
        path.problems.push_back(bearing.problem());
    }
    const CentreBearing* bearing = path.bearing ? &*path.bearing : nullptr;
    path.torque = torqueInputs(job, path.members, bearing, path.assumptions);

    std::vector<Check>& checks = path.checks;
    const bool screwThere = job.screw || compress || !job.plate.boreThread.empty();
    if (screwThere) {
        checks.push_back(screwCheck(at, path.torque));
        if (hasNut(job))
            checks.push_back(nutCheck(at));
        if (auto check = intoCheck(at))
            checks.push_back(*check);
        // A tapped bore bears on its own thread: thread.plate judges it.
        if (!bearing)
            checks.push_back(incompleteCheck("centre.bearing", "centre bearing",
                                             "Centre bearing", CheckKind::Force, kNoThread));
        else if (!bearing->throughThread) {
            if (pack.known() && path.members.plate)
                checks.push_back(
                    centreBearingCheck(*bearing, *path.members.plate, pack.design(), at.s, job.preferred));
            else
                checks.push_back(incompleteCheck("centre.bearing", "centre bearing",
                                                 "Centre bearing", CheckKind::Force, kNoLoad));
        }
        if (bearing)
            if (auto check = washerCheck(job, *bearing))
                checks.push_back(*check);
    }
    if (compress) {
        if (thread) {
            const TravelInputs travel = travelInputs(at, bearing);
            path.threadLeft = threadLeft(travel);
            checks.push_back(threadTravelCheck(travel));
        } else {
            checks.push_back(incompleteCheck("travel.thread", "screw", "Thread left",
                                             CheckKind::Fit, kNoThread));
        }
        checks.push_back(pinTravelCheck(job, pack));
        checks.push_back(accessCheck(job));
    }
    checks.push_back(landWidthCheck(job));
    if (pack.known())
        checks.push_back(landBearingCheck(job, path.members.plate, pack.station.high, at.s));
    else
        checks.push_back(
            incompleteCheck("land.bearing", "lands", "Land pressure", CheckKind::Force, kNoLoad));
    checks.push_back(ligamentCheck(job, ligaments));
    checks.push_back(cutHolesCheck(job));
    return path;
}

std::vector<Check> checkLoadPath(const job::Job& job, const spring::PackLoads& pack,
                                 const std::vector<Ligament>& ligaments) {
    return loadPath(job, pack, ligaments).checks;
}

RatedLoadPath rate(const job::Job& job, const spring::PackLoads& pack, const LoadPath& path,
                   const std::vector<Check>& allChecks) {
    RatingInputs in;
    in.checks = allChecks;
    in.design = pack.known() ? pack.design() : Force();
    in.limitAtBind = pack.limitAtBind();
    in.stampWanted = job.wanted.stamp;
    in.torque = path.torque;
    in.system = job.preferred;
    RatedLoadPath rated;
    rated.rating = ratingOf(in);
    if (!path.torque)
        return rated;
    rated.checks.push_back(torqueWindowCheck(in, rated.rating));
    OverrunInputs overrun;
    if (job.screw) {
        overrun.wrench = job.screw->wrench;
        overrun.pull = job.screw->handPull;
    }
    overrun.compressFurther = job.travel.compressFurther.value_or(Length());
    overrun.lead = path.torque->thread.lead();
    rated.checks.push_back(overrunCheck(in, overrun));
    return rated;
}

} // namespace pw::loadpath
