#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/spring/pack.h"
#include "core/thread/thread.h"

#include <optional>

namespace pw::loadpath {

/// How the thread is spent while the pack is let up. All assembled, before squeezing.
struct TravelInputs {
    job::Turns turns = job::Turns::Nut;
    Length diameter, pitch;
    std::optional<Length> standoff;     ///< face the screw enters to the faces the plate bears on
    std::optional<Length> usableLength; ///< thread from that face to the free tip
    std::optional<Length> engagement;   ///< of a turning screw, in what it enters
    std::optional<Length> plate;        ///< thickness of all plates together
    Length washer;
    std::optional<Length> nutHeight;
    Length compressFurther;
    std::optional<Length> releaseTravel; ///< from squeezed until the springs are free
    units::System system = units::System::Metric;
};

/// Thread left over when the springs are free:
///   nut turns:   usable length - (standoff - further + release travel + plate + washer) - engaged,
///   screw turns: engagement + further - release travel - engaged,
/// engaged = one diameter, or the whole nut when that is less. None when a figure is missing.
std::optional<Length> threadLeft(const TravelInputs& inputs);

/// `travel.thread`: under 0 breaks, under two pitches thin (common practice, no published source).
Check threadTravelCheck(const TravelInputs& inputs);

/// `travel.pin`: what a station still pushes with when its retainer clears the pin's end, letting up. A note
/// that warns; it judges nothing.
Check pinTravelCheck(const job::Job& job, const spring::PackLoads& pack);

} // namespace pw::loadpath
