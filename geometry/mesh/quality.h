#pragma once

#include "core/plate/mesh.h"

namespace pw::mesh {

/// What a mesh is like, for tests and for the report.
struct Quality {
    double leastAngle = 0; ///< degrees, between the straight sides
    double leastJacobian =
        0; ///< least over the elements of: lower bound of the Jacobian / that of the straight triangle
    double area = 0; ///< mm2, curved sides counted
};

Quality qualityOf(const plate::Mesh& mesh);

/// A lower bound of the Jacobian anywhere in the element, over twice the straight triangle's area (1 for a
/// straight triangle with its middle nodes in the middle). The Jacobian of a six-node triangle is quadratic
/// in the area coordinates, so its six Bernstein coefficients bound it.
double leastJacobian(const plate::Mesh& mesh, Eigen::Index triangle);

} // namespace pw::mesh
