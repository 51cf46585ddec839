#pragma once

#include "core/loadpath/judge.h"
#include "core/loadpath/torque.h"
#include "core/verdict/check.h"

#include <optional>
#include <string>
#include <vector>

/// What the tool may be loaded to, and where to stop.
namespace pw::loadpath {

struct RatingInputs {
    std::vector<Check> checks; ///< all of them, the plate's too
    Force design;
    std::optional<Force> limitAtBind; ///< PackLoads::limitAtBind
    std::optional<Force> ramLimit;    ///< what a ram may and can make; the tool is not rated past it
    bool mustReach =
        true; ///< false: the design load is only what the tool could make; no torque has to reach it
    std::optional<Force> stampWanted;
    std::optional<TorqueInputs> torque;
    units::System system = units::System::Metric;
};

struct Rating {
    bool known = false;  ///< a strength check and a load were there
    Force rated;         ///< load at which the weakest link reaches its wanted margin, or the springs bind
    std::string ratedBy; ///< id of that check, or "load.coil_bind"
    std::optional<Force> stamp;  ///< none when the rated load is under the design load
    std::optional<Force> proof;  ///< 1.25 x stamp
    bool proofOnPacking = false; ///< 1.25 x stamp would drive the springs solid: prove it on solid packing
    std::optional<Torque> stop;  ///< at rated load, low friction
    std::optional<Range<Torque>> atDesign, atProof;
    std::vector<std::string> notes; ///< what could not be had as wished, one sentence each
};

/// Loads scale with the margins: rated = design x least(margin / wanted) over the force checks, limited by
/// coil bind. Permanent set and the accident of a hung station do not scale and are left out.
Rating ratingOf(const RatingInputs& inputs);

/// The least figure of two digits (in N or lbf) that is not under `load`; of more digits where that passes
/// `most`.
Force roundUp(Force load, Force most, units::System system);

/// `screw.torque_window`: does the design load at high friction need more than the stop torque? Thin then:
/// stop by turns and dial. A note.
Check torqueWindowCheck(const RatingInputs& inputs, const Rating& rating);

struct OverrunInputs {
    std::optional<Length> wrench;
    std::optional<Force> pull;
    Length compressFurther, lead;
};

/// `screw.overrun`: what wrench and pull can make at low friction against the first thing to set or strip;
/// thin at worst. A note.
Check overrunCheck(const RatingInputs& inputs, const OverrunInputs& overrun);

} // namespace pw::loadpath
