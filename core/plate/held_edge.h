#pragma once

#include "core/plate/elastic.h"

#include <vector>

namespace pw::plate {

/// What a clamp does to the plate at one node of a held edge.
struct HeldMoment {
    int node = 0;
    Eigen::Vector2d along; ///< unit, material on the left
    double across = 0;     ///< Mn, N.mm per mm: bends about the edge
    double twist = 0;      ///< Mnt
};

struct HeldEdge {
    std::vector<HeldMoment> moments;
    double force = 0; ///< N by which the clamp holds back the sector's loads
};

/// Moments along a clamped edge from the forces the clamp itself must make to keep its nodes' rotations at
/// zero: those are in balance with the load to the last digit, where moments smoothed from within are
/// extrapolated. They are spread along the edge as a quadratic on each side that does the same work at every
/// node. Source: Carey, Chow & Seager, Comput. Methods Appl. Mech. Eng. 50 (1985) 107-120 (consistent
/// boundary flux; from memory). `nodalForces` is the load the solution stands under.
HeldEdge heldEdgeMoments(const PlateModel& model, const Section& section, const ElasticSolution& solution,
                         const Eigen::VectorXd& nodalForces, const EdgeSupport& edge);

/// Puts them into nodal moments (3 x nodes, rows Mx, My, Mxy) in place of what stands there. Nothing turns
/// along a clamped edge, so Mt = nu Mn.
void putIn(Eigen::Matrix3Xd& moments, const HeldEdge& edge, double nu);

} // namespace pw::plate
