#pragma once

#include "core/plate/ring.h"

namespace pw::plate {

/// A force spread evenly over a piece of a ring about the origin: between two radii, to either side of a ray.
/// Its area is half * (to^2 - from^2) = (2 half x mean radius) x (to - from). Positive goes the way w counts.
struct PressurePatch {
    double from = 0, to = 0;    ///< radii, mm
    double angle = 0, half = 0; ///< the ray, and how far to either side, radians; half = pi is a whole ring
    double force = 0;           ///< N, on the whole plate
    bool operator==(const PressurePatch&) const = default;

    bool covers(double x, double y) const;
    Cover coverOf(const Eigen::Vector2d& middle, double reach) const;
};

/// Nodal forces on w (one a node of the sector's mesh) of all patches of the whole plate, which must repeat
/// with the sector. Each force comes out exactly. A loaded patch with no plate under it throws util::Bug.
Eigen::VectorXd patchForces(const Mesh& mesh, const Sector& sector,
                            const std::vector<PressurePatch>& patches);

} // namespace pw::plate
