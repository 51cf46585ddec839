#pragma once

#include "core/plate/footprint.h"
#include "core/plate/mesh.h"

#include <Eigen/Core>
#include <vector>

namespace pw::plate {

/// Which part of a ring carries: all of it, or the half nearer to or farther from the origin (a dished plate
/// bears on the inner half of its lands).
enum class RingHalf { Both, Inner, Outer };

/// A force spread evenly over a ring of the plate, as far as there is steel under it. Positive lifts (the way
/// w counts).
struct PressureRing {
    shape::Point centre;
    double inside = 0, outside = 0; ///< radii, mm
    double force = 0;               ///< N, on the whole plate
    RingHalf half = RingHalf::Both;
    bool operator==(const PressureRing&) const = default;

    bool covers(double x, double y) const;
    Cover coverOf(const Eigen::Vector2d& middle, double reach) const;
};

/// The part of the ring that lies on the mesh, as points; triangles are split where the ring's edges run
/// through them.
std::vector<RingPoint> ringPoints(const Mesh& mesh, const PressureRing& ring);

/// Integrals over the part of the ring that lies on the mesh: of N, x N and y N for every node's shape
/// function N. Columns 1, x, y; rows nodes. Their sums are area and first moments.
Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const std::vector<RingPoint>& points);
Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const PressureRing& ring);

/// The rigid motions that a sector's symmetry leaves, as columns of coefficients of (1, x, y): lift always,
/// tilt along the line in a half plate, any tilt in a whole one.
Eigen::Matrix3Xd allowedMotions(const Sector& sector);
/// 1, x, y at every node.
Eigen::MatrixX3d rigidMotions(const Mesh& mesh);

/// Deflections counted from the plane that fits them best over a ring (the centre bearing): the plate's own
/// bending without the tilt and lift that nothing decides. `w`: one a node; the plane respects the sector's
/// symmetry.
Eigen::VectorXd fromRingPlane(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& w,
                              const PressureRing& ring);

} // namespace pw::plate
