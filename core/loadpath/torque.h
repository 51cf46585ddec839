#pragma once

#include "core/job/job.h"
#include "core/thread/thread.h"
#include "core/units/quantity.h"

#include <string>

namespace pw::loadpath {

using units::Angle;
using units::Force;
using units::Length;
using units::Range;
using units::Stress;
using units::Torque;

/// Friction in the thread and under what turns.
struct Friction {
    Range<double> thread, collar;
    std::string words; ///< "oiled: 0.08 to 0.16"
    bool assumed = false;
};

/// Dry 0.14-0.24, oiled 0.08-0.16, moly 0.04-0.10 (classes of VDI 2230-1, from memory); stated figures
/// replace them; oiled when nothing is said.
Friction frictionOf(const job::Screw& screw);

/// Thread torque to raise a load:
///   T = F dm/2 (l + pi f dm sec a) / (pi dm - f l sec a),  a the flank angle.
/// Source: Shigley 9th ed., eq. (8-1), (8-5).
Torque raisingTorque(Force load, Length meanDiameter, Length lead, Angle flank, double friction);
/// To lower it; under 0 the screw runs back by itself. Source: Shigley 9th ed., eq. (8-2).
Torque loweringTorque(Force load, Length meanDiameter, Length lead, Angle flank, double friction);
/// pi f dm sec a > l. Source: Shigley 9th ed., eq. (8-3), with the flank angle.
bool holdsByItself(Length meanDiameter, Length lead, Angle flank, double friction);
/// T = F fc dc/2. Source: Shigley 9th ed., eq. (8-6).
Torque collarTorque(Force load, double friction, Length collarMeanDiameter);
/// tau = 16 T / (pi d^3). Source: Shigley 9th ed., eq. (8-7).
Stress torsionStress(Torque torque, Length diameter);

/// What turns and rubs.
struct TorqueInputs {
    thread::Thread thread;
    Length collar; ///< mean diameter of what rubs: nut face, bolt head or screw point
    Friction friction;
};

Torque threadTorque(const TorqueInputs& inputs, Force load, double friction);
/// Thread and collar together, at the low and at the high friction.
Range<Torque> torqueFor(const TorqueInputs& inputs, Force load);
/// K of T = K F d, d the nominal diameter, at the low and at the high friction: beside the equation for those
/// who know the short form. Source: Shigley 9th ed. eq. (8-27).
Range<double> kFactor(const TorqueInputs& inputs);
/// The load a torque makes at the low friction: the most it can.
Force mostLoadOf(const TorqueInputs& inputs, Torque torque);

} // namespace pw::loadpath
