#pragma once

#include "core/job/job.h"
#include "core/spring/resolve.h"
#include "core/util/result.h"
#include "core/verdict/check.h"

#include <string>
#include <vector>

namespace pw::spring {

using units::Energy;

/// Hub, Wrench, Ram: what decides a pull. Rated: nobody states a load; the tool is checked at the load it may
/// be stamped with.
enum class LoadSource { None, Springs, Given, Hub, Wrench, Ram, Rated };

/// Clear: gaps left between the coils. Tight: less than the least gaps. Solid: coils touch before the keepers
/// are free.
enum class Coils { Unknown, Clear, Tight, Solid };

/// What the pack pushes back with, from the springs (or the stated total) and the squeeze.
///
/// Release length = assembled - swell - further compression, the same travel for every spring. Pack load =
/// loaded stations x sum over springs at release length; a stated total is taken as it stands and shared out.
/// The design load is the high end.
struct PackLoads {
    LoadSource source = LoadSource::None;
    int stations = 0, loaded = 0;
    std::vector<bool> carries;                    ///< one for each station
    std::vector<Range<Force>> perStation;         ///< one for each station, 0 where it does not carry
    Range<Force> station;                         ///< the most loaded station
    Range<Force> total;                           ///< at release length
    Given<Range<Force>> assembledTotal;           ///< before squeezing; none for a stated total
    Given<Energy> energy;                         ///< stored at release length, high springs
    Length squeeze;                               ///< swell and further compression
    Given<Length> assembledLength, releaseLength; ///< of the first spring
    Given<Length> releaseTravel;                  ///< from squeezed until the last spring is free
    Given<Length> clearanceToSolid; ///< at release length, least of all springs; under 0 when it binds before
    Coils coils = Coils::Unknown;
    Given<Range<Force>> loadAtBind; ///< of the whole pack when the first spring goes solid
    std::vector<Resolved> springs;

    std::vector<std::string> assumptions;
    util::Problems missing;  ///< what is not given, with how to measure it
    util::Problems problems; ///< what contradicts itself

    bool known() const { return source != LoadSource::None; }
    Force design() const { return total.high; }
    /// What no stamp, stop torque or rated load may pass: the low springs' load at coil bind, but never less
    /// than the design load; none when the solid lengths are unknown.
    Given<Force> limitAtBind() const;
};

/// Never fails: what is wrong or missing is listed.
PackLoads packLoads(const job::Job& job);

/// Load of the whole pack (all loaded stations) squeezed by this much from assembled length; springs whose
/// figures are known.
Range<Force> totalAt(const PackLoads& pack, Length squeeze);

/// A load found elsewhere (a pull) shared out over the loaded stations as a stated total is. No station that
/// carries: unchanged.
void shareOut(const job::Job& job, PackLoads& pack, Range<Force> total, LoadSource source);

/// `load.coil_bind` and `springs.stress`. Empty when the job has no springs.
std::vector<verdict::Check> checkSprings(const job::Job& job, const PackLoads& pack);

} // namespace pw::spring
