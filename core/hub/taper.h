#pragma once

#include "core/units/quantity.h"

namespace pw::hub {

using units::Angle;
using units::Force;
using units::Length;
using units::Stress;

/// Interference on the diameter from pushing a taper on by a, from where it just touches:
///   delta = 2 a tan b,  b the half angle (side to axis), a along the axis.
/// Both sides of the taper move apart by a tan b.
Length interferenceFromDraw(Length draw, Angle halfAngle);

/// Axial force that releases a taper of half angle b, as it was pushed on:
///   F = pi dm L p (mu - tan b),
/// dm the diameter halfway along the fit, L the length along the axis, p the pressure square to the face.
///
/// Why there is no cosine: a ring of the face dx long (along the axis) has the area pi d dx / cos b. The
/// pressure on it pushes the hub off with p sin b of that, friction holds with mu p cos b: pi d p (mu - tan
/// b) dx. And d rises evenly, so its mean over the fit is dm, exactly. The pressure of `contactPressure` is
/// the radial one; sliding off makes it p (1 + mu tan b), which is left out: F comes out too high by that
/// factor (1 % at b = 3 deg and mu = 0.2), on the safe side for what must carry it.
///
/// Under 0 there is nothing to pull: 0. A half angle under 0 gives the force that pushes the hub on.
/// Source: common textbook formula (from memory), derived above.
Force releaseForce(Length meanDiameter, Length length, Stress pressure, double friction, Angle halfAngle);

/// tan b >= mu: the pressure alone throws the hub off, as soon as its nut is undone.
bool letsGoByItself(double friction, Angle halfAngle);

} // namespace pw::hub
