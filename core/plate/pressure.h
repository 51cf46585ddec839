#pragma once

#include "core/plate/mesh.h"

#include <Eigen/Core>
#include <vector>

namespace pw::plate {

/// A force spread evenly over a ring of the plate, as far as there is steel under it. Positive lifts (the way
/// w counts). A stated slant adds p = slant . (x - centre) on top, for lopsided reactions.
struct PressureRing {
    shape::Point centre;
    double inside = 0, outside = 0; ///< radii, mm
    double force = 0;               ///< N, on the whole plate
    bool operator==(const PressureRing&) const = default;
};

/// Integrals over the part of the ring that lies on the mesh: of N, x N and y N for every node's shape
/// function N. Columns 1, x, y; rows nodes. Their sums are area and first moments.
Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const PressureRing& ring);

/// Nodal forces on w (one a node of the sector's mesh) of all rings of the whole plate. Rings that mirror
/// onto one another in the sector share their force; each force comes out exactly. Errors: a loaded ring with
/// no steel under it throws util::Bug (the caller checks lands first).
Eigen::VectorXd pressureForces(const Mesh& mesh, const Sector& sector,
                               const std::vector<PressureRing>& rings);

/// The centre bearing's reaction to the forces given: spread over the ring as an even pressure plus, in a
/// whole or half plate, a slant that balances their moments. Nodal forces; added to `forces` they balance to
/// rounding.
struct Reaction {
    Eigen::VectorXd forces;
    double leastPressure = 0; ///< MPa, pressing positive; below zero the ring would have to pull
    double offset = 0;        ///< mm from the ring's centre to the line of the resultant
};
Reaction balance(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& forces,
                 const PressureRing& bearing);

/// Deflections counted from the plane that fits them best over a ring (the centre bearing): the plate's own
/// bending without the tilt and lift that nothing decides. `w`: one a node; the plane respects the sector's
/// symmetry.
Eigen::VectorXd fromRingPlane(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& w,
                              const PressureRing& ring);

} // namespace pw::plate
