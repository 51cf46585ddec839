#include "core/hub/press_fit.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <numbers>

// Inside: mm, N, MPa.
namespace pw::hub {

namespace {

double square(double x) {
    return x * x;
}

/// (1 + q^2)/(1 - q^2) of a ring, q its inner diameter over its outer: hoop stress over pressure.
double ringFactor(Length inner, Length outer) {
    const double q2 = square(inner / outer);
    return (1 + q2) / (1 - q2);
}

} // namespace

bool PressFit::isSound() const {
    return shaftBore >= Length() && shaft > shaftBore && outside > shaft && hubE > Stress() &&
           shaftE > Stress();
}

Stress contactPressure(const PressFit& fit, Length interference) {
    util::require(fit.isSound(), "contactPressure: a hub must be larger than its shaft");
    const double hub = (ringFactor(fit.shaft, fit.outside) + fit.hubNu) / fit.hubE.mpa();
    const double shaft = (ringFactor(fit.shaftBore, fit.shaft) - fit.shaftNu) / fit.shaftE.mpa();
    return Stress::fromMpa(std::max(0.0, interference / fit.shaft) / (hub + shaft));
}

Stress hubHoopStress(const PressFit& fit, Stress pressure) {
    return pressure * ringFactor(fit.shaft, fit.outside);
}

Stress shaftHoopStress(const PressFit& fit, Stress pressure) {
    return -pressure * ringFactor(fit.shaftBore, fit.shaft);
}

Stress hubMisesStress(const PressFit& fit, Stress pressure) {
    const double q2 = square(fit.shaft / fit.outside);
    return pressure * (std::sqrt(3 + q2 * q2) / (1 - q2));
}

Stress shaftMisesStress(const PressFit& fit, Stress pressure) {
    if (fit.shaftBore <= Length())
        return pressure;
    return pressure * (2 / (1 - square(fit.shaftBore / fit.shaft)));
}

Force slipForce(Length shaft, Length length, Stress pressure, double friction) {
    return friction * (pressure * (std::numbers::pi * (shaft * length)));
}

} // namespace pw::hub
