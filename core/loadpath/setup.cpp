#include "core/loadpath/setup.h"

#include "core/loadpath/factors.h"
#include "core/material/hot.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::loadpath {

namespace {

/// Mean friction radius of a flat end turning under even pressure is two thirds of its radius.
constexpr double kPointMean = 2.0 / 3.0;

TorqueInputs torqueInputs(const job::Job& job, const thread::Thread& thread, const CentreBearing* bearing,
                          std::vector<std::string>& assumptions) {
    TorqueInputs in;
    in.thread = thread;
    in.friction = frictionOf(job.screw.value_or(job::Screw{}));
    if (in.friction.assumed)
        assumptions.push_back(say("screw taken as %1", {in.friction.words}));
    // A turning screw rubs with its point where it pushes, with its head where it is drawn.
    const bool point =
        turnsOf(job) == job::Turns::Screw && (intoOf(job) == job::Into::Plate || screwPushes(job));
    if (point) {
        const Length end = pointDiameterOf(job, thread);
        if (!job.screw || !job.screw->pointDiameter)
            assumptions.push_back(
                say("screw point taken as %1 across, its root", {units::show(end, job.preferred)}));
        in.collar = end * kPointMean;
    } else {
        const Length face = bearing && bearing->nutFace > Length()
                                ? bearing->nutFace
                                : thread.diameter * kFlatsOfDiameter * kFaceOfFlats;
        const Length hole = bearing ? std::max(bearing->washerInside, thread.diameter) : thread.diameter;
        in.collar = (face + hole) * 0.5;
    }
    return in;
}

void weaken(material::ScrewGrade& grade, double strength) {
    grade.proof = grade.proof * strength;
    grade.yield = grade.yield * strength;
    grade.ultimate = grade.ultimate * strength;
}

/// Members at the temperatures of heat.tool and heat.part; nothing up to 100 C, as for the steel they hold.
void heatMembers(const job::Job& job, Setup& setup) {
    const units::Temperature room = units::Temperature::fromCelsius(20), tool = job.heat.tool.value_or(room),
                             part = std::max(tool, job.heat.part.value_or(room));
    if (setup.members.plate)
        setup.yieldForCollapse = setup.members.plate->yield;
    setup.boltStrength = material::hotBoltFactor(part);
    setup.rodStrength = material::hotBoltFactor(tool);
    if (setup.rodStrength < 1) {
        if (setup.members.screw)
            weaken(*setup.members.screw, setup.rodStrength);
        if (setup.members.nut)
            setup.members.nut->proof = setup.members.nut->proof * setup.rodStrength;
    }
    if (tool <= room || !setup.members.plate)
        return;
    const auto hot = material::atTemperature(*setup.members.plate, tool);
    if (!hot) {
        setup.problems.push_back({"heat.tool", hot.problem().message});
        return;
    }
    if (hot->factors == material::HotFactors{})
        return;
    setup.yieldForCollapse = hot->yieldForCollapse;
    setup.members.plate->yield = hot->yieldForSet;
    setup.members.plate->ultimate = setup.members.plate->ultimate * hot->factors.ky;
    setup.members.plate->E = hot->E;
    setup.assumptions.push_back(say(
        "a tool at %1 keeps %2 of its yield before it sets, %3 before it folds and %4 of its stiffness (%5)",
        {units::show(tool, job.preferred), units::number(hot->factors.kp), units::number(hot->factors.ky),
         units::number(hot->factors.kE), hot->source}));
    if (hot->beyondStandard)
        setup.assumptions.push_back(say(
            "quenched or work-hardened steel loses more than that, and for good: do not heat this plate"));
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
    heatMembers(job, setup);
    const thread::Thread* thread = setup.members.thread ? &*setup.members.thread : nullptr;
    if (auto bearing = centreBearing(job, thread)) {
        setup.bearing = *bearing;
        setup.assumptions.insert(setup.assumptions.end(), bearing->assumptions.begin(),
                                 bearing->assumptions.end());
    }
    if (thread && hasScrew(job))
        setup.torque = torqueInputs(job, *thread, setup.bearingOrNull(), setup.assumptions);
    return setup;
}

} // namespace pw::loadpath
