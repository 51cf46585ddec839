#pragma once

#include "core/shape/loop.h"
#include "core/util/result.h"

#include <cstddef>
#include <vector>

namespace pw::outline {

/// The parallel curve of a closed curve.
struct Offset {
    /// Each with the sense of the original, but for a pocket that a growing curve closes off: that one turns
    /// the other way. Empty when nothing is as far inside as asked; several where a neck is too narrow.
    std::vector<shape::Loop> loops;
    /// Sides of the original that no loop follows: too narrow a slot, an arc too tight.
    std::vector<std::size_t> lost;
};

/// All points at `distance` (mm) from the loop on its right hand, on its left when negative: a
/// counter-clockwise loop grows by a positive distance. Lines stay lines and arcs arcs; a corner that sticks
/// out towards the offset is rounded by an arc about it, one that turns in is trimmed. The edge of the
/// region whose points are further away than `distance`, exact to rounding, but for two things: an arc that
/// strays from its chord by less than 1e-8 of the loop's size is taken as the chord, and should two pieces
/// touch so that rounding hides how they join, the distance is moved by up to 3e-7 of itself. The loop may
/// not cross itself.
util::Result<Offset> offsetLoop(const shape::Loop& loop, double distance);

} // namespace pw::outline
