#pragma once

#include "core/plate/mesh.h"
#include "core/shape/region.h"

#include <vector>

namespace pw::outline {

/// A side of a piece of plate and what it is part of. Material on the left.
struct TaggedSide {
    shape::Side side;
    plate::MeshEdge::Kind kind = plate::MeshEdge::Kind::Rim;
    int index = 0; ///< as in plate::MeshEdge
};

/// Sides joined end to start, the last to the first.
using TaggedLoop = std::vector<TaggedSide>;

/// A piece of plate ready to be meshed: the whole plate or one sector of it. Outer loops run
/// counter-clockwise, holes clockwise.
struct TaggedRegion {
    std::vector<TaggedLoop> loops;
};

/// The whole plate, no symmetry used.
TaggedRegion tagged(const shape::Region& region);

double area(const TaggedRegion& region); ///< mm2

shape::Loop untagged(const TaggedLoop& loop);

} // namespace pw::outline
