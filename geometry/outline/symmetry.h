#pragma once

#include "core/plate/mesh.h"
#include "core/shape/region.h"

#include <vector>

namespace pw::outline {

/// A load on the plate, spread over a ring about its centre.
struct LoadedPlace {
    shape::Point centre;
    double outside = 0; ///< radius of the ring, mm
    double force = 0;   ///< N; a place with 0 loads nothing
};

/// The smallest sector that its mirror images complete to the whole plate and the whole load: 1/(2n) of a
/// plate that n turns and a mirror line map onto itself, half of one with a mirror line only, the plate
/// itself (count 1) else. All mirror lines pass through the origin. Line 0 passes through the first place
/// when a mirror line does. Shapes match when they differ by less than 3e-8 of the plate's size, forces by
/// 1e-9.
plate::Sector findSector(const shape::Region& region, const std::vector<LoadedPlace>& places);

} // namespace pw::outline
