#include "core/loadpath/setup.h"

#include "core/units/format.h"

#include <algorithm>

namespace pw::loadpath {

namespace {

/// Mean friction radius of a flat end turning under even pressure is two thirds of its radius.
constexpr double kPointMean = 2.0 / 3.0;
/// Nut face over thread diameter where no table has the nut: 1.5 x 0.95 (from memory).
constexpr double kFaceOfDiameter = 1.4;

TorqueInputs torqueInputs(const job::Job& job, const thread::Thread& thread, const CentreBearing* bearing,
                          std::vector<std::string>& assumptions) {
    TorqueInputs in;
    in.thread = thread;
    in.friction = frictionOf(job.screw.value_or(job::Screw{}));
    if (in.friction.assumed)
        assumptions.push_back("screw taken as " + in.friction.words);
    const bool point = turnsOf(job) == job::Turns::Screw && intoOf(job) != job::Into::Shaft;
    if (point) {
        const Length end = pointDiameterOf(job, thread);
        if (!job.screw || !job.screw->pointDiameter)
            assumptions.push_back("screw point taken as " + units::show(end, job.preferred) +
                                  " across, its root");
        in.collar = end * kPointMean;
    } else {
        const Length face =
            bearing && bearing->nutFace > Length() ? bearing->nutFace : thread.diameter * kFaceOfDiameter;
        const Length hole = bearing ? std::max(bearing->washerInside, thread.diameter) : thread.diameter;
        in.collar = (face + hole) * 0.5;
    }
    return in;
}

} // namespace

Length pointDiameterOf(const job::Job& job, const thread::Thread& thread) {
    return job.screw && job.screw->pointDiameter ? *job.screw->pointDiameter : thread::rootDiameter(thread);
}

double scaleOf(const job::Wanted& wanted) {
    return wanted.margin && *wanted.margin > 0 ? *wanted.margin / 2 : 1.0;
}

double hammerFactorOf(const job::Job& job) {
    return job.screw && job.screw->hammering ? kHammerFactor : 1.0;
}

Setup setUp(const job::Job& job) {
    Setup setup;
    setup.members = membersOf(job);
    setup.assumptions = setup.members.assumptions;
    setup.problems = setup.members.problems;
    const thread::Thread* thread = setup.members.thread ? &*setup.members.thread : nullptr;
    if (auto bearing = centreBearing(job, thread)) {
        setup.bearing = *bearing;
        setup.assumptions.insert(setup.assumptions.end(), bearing->assumptions.begin(),
                                 bearing->assumptions.end());
    } else {
        setup.problems.push_back(bearing.problem());
    }
    if (thread && hasScrew(job))
        setup.torque = torqueInputs(job, *thread, setup.bearingOrNull(), setup.assumptions);
    return setup;
}

} // namespace pw::loadpath
