#pragma once

#include "core/plate/ring.h"

namespace pw::plate {

/// Nodal forces on w (one a node of the sector's mesh) of all rings of the whole plate. Rings that mirror
/// onto one another in the sector share their force; each force comes out exactly. Errors: a loaded ring with
/// no steel under it throws util::Bug (the caller checks lands first).
Eigen::VectorXd pressureForces(const Mesh& mesh, const Sector& sector,
                               const std::vector<PressureRing>& rings);

} // namespace pw::plate
