#pragma once

#include "geometry/mesh/size_field.h"

#include <optional>
#include <vector>

namespace pw::mesh {

/// A straight piece of the boundary, before meshing: from t0 to t1 along one side of the region.
struct Chord {
    int loop = 0, side = 0;
    double t0 = 0, t1 = 1;
    int start = 0, end = 0; ///< points
};

struct Chords {
    std::vector<shape::Point> points;
    std::vector<Chord> chords; ///< loop after loop, in the direction of travel
    /// A place where the material is too narrow to be any (two sides meet or all but meet), if there is one;
    /// the chords are then not to be used.
    std::optional<shape::Point> neck;
};

/// Material narrower than this share of the piece's size is none.
inline constexpr double kLeastNeck = 1e-5;

/// Splits every side by the local size, at most 30 degrees of arc to a chord, and never longer than the
/// material is wide there, so that a thin ligament is not bridged by chords that would cut through it.
Chords splitBoundary(const outline::TaggedRegion& region, const SizeAt& size);

/// Halves the chords named.
Chords halved(const Chords& chords, const outline::TaggedRegion& region, const std::vector<bool>& which);

} // namespace pw::mesh
