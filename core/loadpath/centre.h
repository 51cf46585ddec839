#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/material/material.h"
#include "core/thread/thread.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::loadpath {

/// The ring on which the centre's force comes into the plate. Diameters.
struct CentreBearing {
    Length inside, outside;
    Length nutFace; ///< outer diameter of the bearing face of nut or head
    Length washerInside, washerOutside, washerThickness; ///< 0 where there is none
    bool throughThread = false;                          ///< tapped bore: no washer, the thread carries
    std::string basis;                                   ///< one line: which rule gave the outside
    std::vector<std::string> assumptions;
};

/// A thin washer does not spread load to a wide rim:
///   outside = least of washer outside and nut face + 2 x washer thickness,  nut face = 0.95 x across flats.
/// Washer as given, else ISO 7089 / ASME B18.21.1 type A narrow; the nut face where the table has none. A
/// stated `centre.bearing_outside` is taken as it is. Inside: the larger of bore and washer hole, unless
/// stated. A tapped bore takes the force through its thread: from the thread's diameter to 1.25 x (common
/// practice, no published source). Across flats of a nut that is in no table: 1.5 x diameter (from memory).
/// `thread` may be absent when the bearing is stated; nothing when both are.
std::optional<CentreBearing> centreBearing(const job::Job& job, const thread::Thread* thread);

/// `centre.bearing`: force on that ring against 1.8 x the yield of the plate.
/// Source: AISC 360 J7 (from memory).
Check centreBearingCheck(const CentreBearing& bearing, const material::Material& plate, Force load, double s,
                         units::System system);

} // namespace pw::loadpath
