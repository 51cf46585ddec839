#pragma once

#include "core/units/format.h"
#include "core/verdict/check.h"

#include <optional>
#include <string>

namespace pw::verdict {

/// `plate.hung_station`: the worst station does not carry (an accident, so less is wanted): collapse factor
/// >= 1.5 holds, 1.1 .. 1.5 thin, under 1.1 breaks. `reached` false: at least that much was carried. Stations
/// count from 0.
Check hungStationCheck(double designLoad, int station, double collapseFactor, bool reached,
                       shape::Point where);

/// `plate.tip`: offset of the resultant with the worst station missing against the bearing radius; up to 0.6
/// holds, else thin, with what to do. Common practice, no published source.
Check tipCheck(double offset, double bearingRadius, int station, shape::Point where, units::System system);

/// `plate.stuck_station`: the extra force at one rusted station that first gives set, against what the wrench
/// can add beyond the design load; thin at worst. Without a wrench: incomplete, with what it would take.
Check stuckStationCheck(double extraForce, std::optional<double> wrenchAdds, int station, shape::Point where,
                        units::System system);

/// `land.tilt`: the plate's slope across a retainer; over 0.2 mm is thin. Common practice, no published
/// source.
Check tiltCheck(double tilt, int station, shape::Point where, units::System system);

} // namespace pw::verdict
