#include "core/loadpath/beam.h"

#include <limits>

namespace pw::loadpath {

using units::Force;
using units::Length;
using units::Stress;
using units::Torque;

Torque midMoment(const Beam& beam, Force load) {
    return load * (beam.span / 4.0);
}

bool hasSection(const Beam& beam) {
    return beam.width > beam.hole && beam.thickness > Length();
}

Stress netStress(const Beam& beam, Force load) {
    if (!hasSection(beam))
        return Stress::fromMpa(std::numeric_limits<double>::infinity());
    const double h = beam.thickness.mm(), net = (beam.width - beam.hole).mm();
    return Stress::fromMpa(6 * midMoment(beam, load).newtonMm() / (net * h * h));
}

Length midDeflection(const Beam& beam, Force load, Stress E) {
    const double h = beam.thickness.mm(), inertia = beam.width.mm() * h * h * h / 12, l = beam.span.mm();
    return Length::fromMm(load.newton() * l * l * l / (48 * E.mpa() * inertia));
}

} // namespace pw::loadpath
