#pragma once

#include "core/plate/elastic.h"

namespace pw::plate {

/// Moments at the nodes, smoothed from the quadrature points by fitting a polynomial to the patch of
/// triangles round each corner. Source: Zienkiewicz & Zhu, Int. J. Numer. Meth. Eng. 33 (1992) 1331-1364
/// (superconvergent patch recovery); patches on an edge take in the next row of triangles.
struct RecoveredMoments {
    Eigen::Matrix3Xd nodes; ///< 3 x nodes, rows Mx, My, Mxy, N.mm per mm
    /// Relative error of the solution in the energy norm (moments only), and each triangle's share of its
    /// square.
    double energyError = 0;
    Eigen::VectorXd triangleError;
};
RecoveredMoments recoverMoments(const PlateModel& model, const Section& section,
                                const std::vector<std::array<Eigen::Vector3d, kPoints>>& pointMoments);

/// von Mises equivalent of a bending stress state from moments (Mx, My, Mxy), on the face: 6 M / t^2.
double faceVonMises(const Eigen::Vector3d& moments, double thickness);

/// The tangential bending stress on the lower face at an edge whose direction there is `along`.
double faceStressAlong(const Eigen::Vector3d& moments, const Eigen::Vector2d& along, double thickness);

} // namespace pw::plate
