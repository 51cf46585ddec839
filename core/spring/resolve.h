#pragma once

#include "core/job/job.h"
#include "core/spring/coil.h"
#include "core/util/result.h"

#include <string>
#include <vector>

namespace pw::spring {

using job::Given;
using units::Range;

/// One spring as far as its figures fix it. The force rises in a straight line as the spring gets shorter.
///
/// Ranges stay ranges: the stiff spring runs through the upper ends, the soft one through the lower. A spring
/// known only by nominal figures is taken +-10 % (typical commercial tolerance of EN 15800, from memory).
struct Resolved {
    std::string name;  ///< "outer", or "spring 2" when it has none
    std::string field; ///< "springs[1]"
    int perStation = 1;
    bool known = false; ///< has a length when assembled and a force at any length

    Length assembled;   ///< length in the pack, swell not counted
    Length reference;   ///< where `force` stands
    Range<Force> force; ///< at `reference`
    Range<Rate> steep;  ///< for lengths under the reference
    Range<Rate> gentle; ///< for lengths over it
    bool rateAssumed = false;
    Length freeForTravel; ///< the longest it can be when let go

    Given<Length> solid;
    Given<Length> leastGaps; ///< sum of gaps between coils to be kept
    std::string gapsBasis;
    Given<Length> wire, meanCoil;
    std::string wireMaterial;

    std::vector<std::string> assumptions;
    util::Problems missing;  ///< field, what it is for and how to measure it
    util::Problems problems; ///< figures that contradict each other or make no sense

    /// Never below 0: a spring that is let go does not pull.
    Range<Force> forceAt(Length length) const;
    /// F^2 / (2 k) of the stiff spring, on the long side where the rate was assumed.
    units::Energy energyAt(Length length) const;
};

/// `index` counts from 0, for the field names. `system` is how figures are written in texts.
Resolved resolve(const job::Spring& spring, int index, units::System system);

} // namespace pw::spring
