#pragma once

#include "geometry/outline/tagged_region.h"

namespace pw::outline {

/// The part of the plate within one sector, cut exactly: pieces of the plate's own lines and arcs, joined by
/// the stretches of the sector's two lines that lie in material (kind Symmetry, index 0 and 1). Without a
/// bore the two lines meet at the origin. Count 1 gives the whole plate.
TaggedRegion cutSector(const shape::Region& region, const plate::Sector& sector);

} // namespace pw::outline
