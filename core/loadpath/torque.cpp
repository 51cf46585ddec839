#include "core/loadpath/torque.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <cmath>
#include <numbers>

namespace pw::loadpath {

using std::numbers::pi;

Friction frictionOf(const job::Screw& screw) {
    Friction result;
    Range<double> range{0.08, 0.16};
    std::string name = say("oiled");
    switch (screw.lubrication.value_or(job::Lubrication::Oiled)) {
    case job::Lubrication::Dry:
        range = {0.14, 0.24};
        name = say("dry");
        break;
    case job::Lubrication::Oiled:
        break;
    case job::Lubrication::Moly:
        range = {0.04, 0.10};
        name = say("moly");
        break;
    }
    const auto text = [](const Range<double>& r) {
        return r.isOne() ? units::number(r.low)
                         : say("%1 to %2", {units::number(r.low), units::number(r.high)});
    };
    result.thread = screw.threadFriction.value_or(range);
    result.collar = screw.collarFriction.value_or(range);
    if (screw.threadFriction || screw.collarFriction) {
        result.words =
            say("friction %1 in the thread, %2 under what turns", {text(result.thread), text(result.collar)});
        result.assumed = !screw.lubrication && !(screw.threadFriction && screw.collarFriction);
    } else {
        result.assumed = !screw.lubrication;
        result.words = say("%1, friction %2", {name, text(range)});
    }
    return result;
}

Torque raisingTorque(Force load, Length meanDiameter, Length lead, Angle flank, double friction) {
    const double dm = meanDiameter.mm(), l = lead.mm(), sec = 1 / std::cos(flank.radian());
    return Torque::fromNmm(load.newton() * dm / 2 * (l + pi * friction * dm * sec) /
                           (pi * dm - friction * l * sec));
}

Torque loweringTorque(Force load, Length meanDiameter, Length lead, Angle flank, double friction) {
    const double dm = meanDiameter.mm(), l = lead.mm(), sec = 1 / std::cos(flank.radian());
    return Torque::fromNmm(load.newton() * dm / 2 * (pi * friction * dm * sec - l) /
                           (pi * dm + friction * l * sec));
}

bool holdsByItself(Length meanDiameter, Length lead, Angle flank, double friction) {
    return pi * friction * meanDiameter.mm() / std::cos(flank.radian()) > lead.mm();
}

Torque collarTorque(Force load, double friction, Length collarMeanDiameter) {
    return Torque::fromNmm(load.newton() * friction * collarMeanDiameter.mm() / 2);
}

Stress torsionStress(Torque torque, Length diameter) {
    const double d = diameter.mm();
    return Stress::fromMpa(16 * torque.newtonMm() / (pi * d * d * d));
}

Torque threadTorque(const TorqueInputs& inputs, Force load, double friction) {
    return raisingTorque(load, thread::pitchDiameter(inputs.thread), inputs.thread.lead(),
                         thread::flankAngle(inputs.thread), friction);
}

Range<Torque> torqueFor(const TorqueInputs& inputs, Force load) {
    const auto at = [&](double inThread, double underCollar) {
        return threadTorque(inputs, load, inThread) + collarTorque(load, underCollar, inputs.collar);
    };
    return {at(inputs.friction.thread.low, inputs.friction.collar.low),
            at(inputs.friction.thread.high, inputs.friction.collar.high)};
}

Range<double> kFactor(const TorqueInputs& inputs) {
    const Range<Torque> unit = torqueFor(inputs, Force::fromN(1));
    const double d = inputs.thread.diameter.mm();
    return {unit.low.newtonMm() / d, unit.high.newtonMm() / d};
}

Force mostLoadOf(const TorqueInputs& inputs, Torque torque) {
    const Force unit = Force::fromN(1);
    return unit * (torque / torqueFor(inputs, unit).low);
}

} // namespace pw::loadpath
