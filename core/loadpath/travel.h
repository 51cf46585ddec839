#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/spring/pack.h"
#include "core/thread/thread.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::loadpath {

/// How the thread is spent while the pack is let up. All assembled, before squeezing.
struct TravelInputs {
    job::Turns turns = job::Turns::Nut;
    Length diameter, pitch;
    std::optional<Length> standoff;     ///< face the screw enters to the faces the plate bears on
    std::optional<Length> usableLength; ///< thread from that face to the free tip
    std::optional<Length>
        threadLength; ///< from the free tip back to the plain shank; none: threaded all the way
    std::optional<Length> engagement; ///< of a turning screw, in what it enters
    bool through =
        false; ///< a turning screw comes out behind what it enters (bar, nut): usable length counts
    std::optional<Length> hole;  ///< depth of that thread
    std::optional<Length> plate; ///< thickness of all plates together
    Length washer;
    std::optional<Length> nutHeight;
    Length compressFurther;
    std::optional<Length> releaseTravel; ///< from squeezed until the springs are free
    units::System system = units::System::Metric;
};

/// The thread at one moment of the job.
struct ThreadMoment {
    std::string when; ///< "assembled", "squeezed", "free"
    Length engaged;   ///< of nut or hole, as far as thread is there for it
    Length toEnd;     ///< thread still to spare before less than the needed engagement is left
    std::optional<Length>
        toShank; ///< until nut or hole runs onto the plain shank; none: threaded all the way
};

/// Assembled, squeezed and free; empty when a figure is missing.
std::vector<ThreadMoment> threadMoments(const TravelInputs& inputs);

/// Thread left over when the springs are free:
///   nut turns:   usable length - (standoff - further + release travel + plate + washer) - engaged,
///   screw turns: engagement + further - release travel - engaged; in a bar or nut the usable length in place
///   of the engagement, as the tip stands out behind,
/// engaged = one diameter, or the whole nut or bar when that is less. None when a figure is missing.
std::optional<Length> threadLeft(const TravelInputs& inputs);

/// Usable length (nut turns, or a screw through bar or nut) or engagement (screw turns) that lets the springs
/// all the way up with two pitches to spare. Needs neither of these two figures; none when another is
/// missing.
std::optional<Length> threadNeeded(const TravelInputs& inputs);

/// `travel.thread`: under 0 breaks, under two pitches thin (common practice, no published source), at either
/// end of the thread.
Check threadTravelCheck(const TravelInputs& inputs);

/// `travel.pin`: what a station still pushes with when its retainer clears the pin's end, letting up. A note
/// that warns; it judges nothing.
Check pinTravelCheck(const job::Job& job, const spring::PackLoads& pack);

} // namespace pw::loadpath
