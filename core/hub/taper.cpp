#include "core/hub/taper.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::hub {

Length interferenceFromDraw(Length draw, Angle halfAngle) {
    return draw * (2 * std::tan(halfAngle.radian()));
}

Force releaseForce(Length meanDiameter, Length length, Stress pressure, double friction, Angle halfAngle) {
    const double grip = std::max(0.0, friction - std::tan(halfAngle.radian()));
    return grip * (pressure * (std::numbers::pi * (meanDiameter * length)));
}

bool letsGoByItself(double friction, Angle halfAngle) {
    return std::tan(halfAngle.radian()) >= friction;
}

} // namespace pw::hub
