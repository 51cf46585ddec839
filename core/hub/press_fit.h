#pragma once

#include "core/units/quantity.h"

/// What holds a hub on its shaft, and what it takes to get it off.
namespace pw::hub {

using units::Force;
using units::Length;
using units::Stress;

/// A hub pressed on a shaft: two thick cylinders, each of one elastic material. A bore of 0 is a solid shaft.
struct PressFit {
    Length shaft, shaftBore, outside; ///< diameters; outside is the hub's
    Stress hubE, shaftE;
    double hubNu = 0.3, shaftNu = 0.3;

    /// 0 <= bore < shaft < outside, with moduli. What follows asks for it.
    bool isSound() const;
};

/// Pressure between the two from the interference on the diameter, delta:
///   p = delta / (d [ (1/Eh) ((D^2 + d^2)/(D^2 - d^2) + nuh) + (1/Es) ((d^2 + di^2)/(d^2 - di^2) - nus) ]).
/// d the shaft, di its bore, D the hub outside. Elastic, hub and shaft equally long (a shaft that sticks out
/// is stiffer at the ends: the true pressure is higher there). No interference, no pressure: never under 0.
/// Source: Lame; Shigley 9th ed., eq. (3-56), written on the diameter; DIN 7190-1.
Stress contactPressure(const PressFit&, Length interference);

/// Hoop stress in the hub at its bore, tension positive: p (D^2 + d^2)/(D^2 - d^2).
/// Source: Shigley 9th ed., eq. (3-59).
Stress hubHoopStress(const PressFit&, Stress pressure);

/// Hoop stress in the shaft at the fit, tension positive: -p (d^2 + di^2)/(d^2 - di^2).
/// Source: Shigley 9th ed., eq. (3-58).
Stress shaftHoopStress(const PressFit&, Stress pressure);

/// Von Mises stress in the hub at its bore, no force along it: p sqrt(3 + Q^4)/(1 - Q^2), Q = d/D. The hub
/// yields first there. From the hoop stress above and -p across.
Stress hubMisesStress(const PressFit&, Stress pressure);

/// Von Mises stress in the shaft where it is worst: p when solid; at the bore of a hollow one 2 p/(1 - Q^2),
/// Q = di/d. A pinhole counts as a bore.
Stress shaftMisesStress(const PressFit&, Stress pressure);

/// Axial force that makes a straight fit slip all over: mu p pi d L. Source: DIN 7190-1.
Force slipForce(Length shaft, Length length, Stress pressure, double friction);

} // namespace pw::hub
