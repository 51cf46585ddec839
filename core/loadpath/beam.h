#pragma once

#include "core/units/quantity.h"

namespace pw::loadpath {

/// A flat bar on two supports with the force in the middle of the span and a hole there.
struct Beam {
    units::Length span, width, thickness, hole;
};

/// Largest bending moment, F L / 4. Source: Roark 7th ed. Table 8.1 case 1e (load in the middle).
units::Torque midMoment(const Beam& beam, units::Force load);

/// Bending stress on the net section through the hole: 6 M / ((b - d) h^2).
/// Infinite (no section) when the hole is as wide as the bar: the caller asks first with hasSection().
units::Stress netStress(const Beam& beam, units::Force load);
bool hasSection(const Beam& beam);

/// In the middle, of the bar without its hole: F L^3 / (48 E I). Source: Roark 7th ed. Table 8.1 case 1e.
units::Length midDeflection(const Beam& beam, units::Force load, units::Stress E);

} // namespace pw::loadpath
