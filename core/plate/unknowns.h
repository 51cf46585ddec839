#pragma once

#include "core/plate/mesh.h"

#include <array>
#include <Eigen/Core>
#include <vector>

namespace pw::plate {

/// An edge of the mesh that is held: the deflection, the rotation across the edge (slope of w along its
/// normal) and the rotation along it, each free or held. Symmetry lines hold the rotation across themselves
/// by their own.
struct EdgeSupport {
    MeshEdge::Kind kind = MeshEdge::Kind::Rim;
    int index = 0;
    bool deflection = false, across = false, along = false;
};

/// What stops the rigid motions of a plate that no edge holds: pins, or something of the caller's (a
/// contact).
enum class Pins { Needed, None };

/// Which number each unknown of a node has, and the frame its rotations are counted in.
///
/// A plate whose loads balance is held nowhere; then as many deflections are pinned as it takes to stop the
/// rigid motions that symmetry leaves (1, 2 or 3). Their reactions come out as nothing.
class Unknowns {
public:
    Unknowns(const Mesh& mesh, const Sector& sector, const std::vector<EdgeSupport>& supports = {},
             Pins pins = Pins::Needed);

    int count() const { return m_count; }
    /// Number of unknown k (0 w, 1 and 2 rotations) of a node; -1 when it is held at zero.
    int of(int node, int k) const { return m_number[3 * node + k]; }
    double frame(int node) const { return m_frame[node]; }
    std::array<double, 6> frames(const Mesh& mesh, Eigen::Index triangle) const;
    const std::vector<int>& pinned() const { return m_pinned; } ///< nodes

    /// Unknowns to w, bx, by at every node, 3 x nodes, in plate axes.
    Eigen::Matrix3Xd toNodes(const Eigen::VectorXd& unknowns) const;

    /// Nodes in the order in which their unknowns are numbered (little fill in a factorisation).
    const std::vector<int>& order() const { return m_order; }

private:
    void holdEdges(const Mesh& mesh, const Sector& sector, const std::vector<EdgeSupport>& supports);
    void pin(const Mesh& mesh, const Sector& sector);
    void number(const Mesh& mesh);

    std::vector<int> m_number;   ///< 3 a node
    std::vector<double> m_frame; ///< angle, 0 for plate axes
    std::vector<int> m_pinned, m_order;
    int m_count = 0;
};

} // namespace pw::plate
