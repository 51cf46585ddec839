#pragma once

#include "core/shape/region.h"

#include <array>
#include <Eigen/Core>
#include <vector>

namespace pw::plate {

/// A side of a triangle that lies on the edge of the meshed piece.
struct MeshEdge {
    std::array<int, 3> nodes{}; ///< start, middle, end; the material is on the left
    enum class Kind { Rim, Bore, Access, Extra, Symmetry } kind = Kind::Rim;
    int index = 0; ///< as in shape::Hole; for Symmetry: which line, 0 or 1
};

/// Six-node triangles. Plain data: making one is geometry's work.
struct Mesh {
    /// 2 x nodes, mm.
    Eigen::Matrix2Xd nodes;
    /// 6 x triangles: corners 0 1 2 counter-clockwise, then the middle nodes of sides 01, 12, 20. Middle
    /// nodes of edges lie on the true arcs.
    Eigen::Matrix<int, 6, Eigen::Dynamic> triangles;
    std::vector<MeshEdge> edges;

    Eigen::Index nodeCount() const { return nodes.cols(); }
    Eigen::Index triangleCount() const { return triangles.cols(); }
};

/// Which part of the plate is meshed: all of it, or one sector that its own mirror images complete. A sector
/// of 1/count lies between the lines through the origin at angles `line0` and `line0` + 2 pi / count (count
/// 2: one line, half the plate).
struct Sector {
    int count = 1; ///< how many such pieces make the plate: 1 = no symmetry used, else even
    double line0 = 0;
    double opening() const;                  ///< radians
    shape::Point fold(shape::Point p) const; ///< the mirror image of p that lies in the sector
    bool operator==(const Sector&) const = default;
};

} // namespace pw::plate
