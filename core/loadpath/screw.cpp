#include "core/loadpath/screw.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::loadpath {

namespace {

/// Shear strength over ultimate, FED-STD-H28 (from memory); von Mises would say 0.577.
constexpr double kShearOfUltimate = 0.5;

std::string conditionWords(job::ThreadCondition condition) {
    switch (condition) {
    case job::ThreadCondition::Good:
        return {};
    case job::ThreadCondition::Worn:
        return say(", 0.75 of it for a worn thread");
    case job::ThreadCondition::Rusty:
        return say(", 0.75 of it for a rusty thread");
    case job::ThreadCondition::Damaged:
        return say(", half of it for a damaged thread");
    }
    return {};
}

Stress together(Stress direct, Stress shear) {
    return Stress::fromMpa(std::hypot(direct.mpa(), std::sqrt(3.0) * shear.mpa()));
}

/// Full plastic moment of a round bar over its moment at first yield.
constexpr double kRoundShapeFactor = 16 / (3 * std::numbers::pi);

/// What may go wrong by accident has to hold by less (MODEL, hung station).
constexpr double kAccidentHolds = 1.5, kAccidentLimit = 1.1;

/// "M20: 12 kN on 245 mm2 = 49 MPa", as far as load and hammer ask.
std::string tensionWords(const ScrewInputs& in, const ScrewStress& stress) {
    const auto show = [&](auto q) { return units::show(q, in.system); };
    const std::string load = show(in.load), area = show(thread::tensileStressArea(in.thread)),
                      tension = show(stress.tension);
    if (in.hammer > 1)
        return in.pushes
                   ? say("%1: %2 x 1.5 for hammering on %3 = %4 of thrust",
                         {in.thread.name, load, area, tension})
                   : say("%1: %2 x 1.5 for hammering on %3 = %4", {in.thread.name, load, area, tension});
    return in.pushes ? say("%1: %2 on %3 = %4 of thrust", {in.thread.name, load, area, tension})
                     : say("%1: %2 on %3 = %4", {in.thread.name, load, area, tension});
}

std::string stressWords(const ScrewInputs& in, const ScrewStress& stress) {
    const auto show = [&](auto q) { return units::show(q, in.system); };
    std::string words = tensionWords(in, stress);
    if (stress.bending > Stress())
        words = say("%1, bending %2 = %3", {words, show(in.bending), show(stress.bending)});
    return say("%1, twist %2 at friction %3", {words, show(stress.torsion), units::number(in.friction)});
}

/// A nut's proof load falls with its height, and does not rise above its class.
double heightFactor(const StripInputs& in) {
    return in.standardNutHeight > Length() ? std::min(1.0, in.engagement / in.standardNutHeight) : 1.0;
}

} // namespace

ScrewStress screwStress(const ScrewInputs& in) {
    const Force load = in.load * in.hammer;
    const units::Area area = thread::tensileStressArea(in.thread);
    const Length diameter = Length::fromMm(std::sqrt(4 * area.mm2() / std::numbers::pi));
    const Torque twist = raisingTorque(load, thread::pitchDiameter(in.thread), in.thread.lead(),
                                       thread::flankAngle(in.thread), in.friction);
    ScrewStress stress;
    stress.tension = load / area;
    stress.bending = torsionStress(in.bending, diameter) * 2.0; // 32 M / (pi d^3)
    stress.torsion = torsionStress(twist, diameter);
    stress.together = together(stress.tension + stress.bending, stress.torsion);
    return stress;
}

Check screwStressCheck(const ScrewInputs& in) {
    const ScrewStress stress = screwStress(in);
    Check check = strengthCheck("screw.stress", "screw", say("Screw"), Rule::Sudden, stress.together.mpa(),
                                in.strength.yield.mpa(), "MPa", in.s);
    const auto show = [&](auto q) { return units::show(q, in.system); };
    check.basis =
        say("%1, together %2 against yield %3 (%4)",
            {stressWords(in, stress), show(stress.together), show(in.strength.yield), in.strength.name});
    check.source =
        say("stress area ASME B1.1 / ISO 898-1, von Mises, Shigley 9th ed. ch. 8; %1", {in.strength.source});
    return check;
}

Check hungScrewCheck(const ScrewInputs& in, int station, shape::Point where) {
    const ScrewStress stress = screwStress(in);
    const Stress demand = together(stress.tension + stress.bending / kRoundShapeFactor, stress.torsion);
    Check check;
    check.id = "screw.hung_station";
    check.member = "screw";
    check.title = say("Screw, one station hung");
    check.kind = verdict::CheckKind::Note; // an accident: it does not rate the tool
    check.unit = "MPa";
    check.demand = demand.mpa();
    check.capacity = in.strength.yield.mpa();
    check.margin = demand > Stress() ? in.strength.yield / demand : 1000.0;
    check.wanted = kAccidentHolds;
    check.grade = *check.margin >= kAccidentHolds   ? Grade::Holds
                  : *check.margin >= kAccidentLimit ? Grade::Thin
                                                    : Grade::Breaks;
    const auto show = [&](auto q) { return units::show(q, in.system); };
    check.basis = say("station %1 hangs: %2", {station + 1, stressWords(in, stress)});
    if (stress.bending > Stress())
        check.basis = say("%1, bending counted / 1.7 (a round bar's full plastic moment)", {check.basis});
    check.basis = say("%1, together %2 against yield %3 (%4)",
                      {check.basis, show(demand), show(in.strength.yield), in.strength.name});
    check.source = say("von Mises, Shigley 9th ed. ch. 8; shape factor Roark 7th ed. Table A.1; %1",
                       {in.strength.source});
    check.where = {where};
    return check;
}

double conditionFactor(job::ThreadCondition condition) {
    switch (condition) {
    case job::ThreadCondition::Good:
        return 1.0;
    case job::ThreadCondition::Worn:
    case job::ThreadCondition::Rusty:
        return 0.75;
    case job::ThreadCondition::Damaged:
        break;
    }
    return 0.5;
}

StripLoads stripLoads(const StripInputs& in) {
    const double factor = conditionFactor(in.condition);
    StripLoads loads;
    loads.screw =
        in.screw.ultimate * kShearOfUltimate * thread::screwShearArea(in.thread, in.engagement) * factor;
    if (in.nut)
        loads.inside = in.nut->proof * thread::tensileStressArea(in.thread) * (heightFactor(in) * factor);
    else
        loads.inside =
            in.inside.ultimate * kShearOfUltimate * thread::nutShearArea(in.thread, in.engagement) * factor;
    return loads;
}

Check stripCheck(const StripInputs& in) {
    const StripLoads loads = stripLoads(in);
    Check check = strengthCheck(in.id, in.member, in.title, Rule::Sudden, in.load.newton(),
                                loads.least().newton(), "N", in.s);
    const auto show = [&](auto q) { return units::show(q, in.system); };
    std::string sum;
    if (loads.screwGoesFirst())
        sum = say(
            "the screw's threads strip first, %1 x half of %2 (%3)",
            {show(thread::screwShearArea(in.thread, in.engagement)), show(in.screw.ultimate), in.screw.name});
    else if (in.nut && heightFactor(in) < 1)
        sum = say("nut %1, proof %2 x %3 x %4 / %5 of height",
                  {in.nut->name, show(in.nut->proof), show(thread::tensileStressArea(in.thread)),
                   show(in.engagement), show(in.standardNutHeight)});
    else if (in.nut)
        sum = say("nut %1, proof %2 x %3",
                  {in.nut->name, show(in.nut->proof), show(thread::tensileStressArea(in.thread))});
    else
        sum = say(
            "the inside threads strip first, %1 x half of %2 (%3)",
            {show(thread::nutShearArea(in.thread, in.engagement)), show(in.inside.ultimate), in.inside.name});
    check.basis = say("%1, %2 engaged: %3%4 = %5 against %6",
                      {in.thread.name, show(in.engagement), sum, conditionWords(in.condition),
                       show(loads.least()), show(in.load)});
    check.source = say("ASME B1.1, FED-STD-H28 shear areas, half the ultimate in shear (from memory); %1",
                       {(loads.screwGoesFirst() ? in.screw.source
                         : in.nut               ? in.nut->source
                                                : in.inside.source)});
    return check;
}

} // namespace pw::loadpath
