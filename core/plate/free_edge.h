#pragma once

#include "core/plate/elastic.h"

#include <vector>

namespace pw::plate {

/// The tangential moment at one node of a free edge (rim or hole), where it is the only moment there is.
struct EdgeMoment {
    int node = 0;
    Eigen::Vector2d along; ///< unit, material on the left
    double moment = 0;     ///< N.mm per mm, tension on the lower face positive
    MeshEdge::Kind kind = MeshEdge::Kind::Rim;
    int index = 0;
};

/// At a free edge Mn = Mnt = 0, so Mt = E t^3 / 12 times the curvature along the edge, which the rotations of
/// the edge's own nodes give: they are the most exact figures a solution has (Reissner, J. Appl. Mech. 12
/// (1945) A-69, for the edge conditions). The derivative is taken through five nodes in a row; rows end at
/// kinks of the edge (a sharp corner gets no figure) and go on through a symmetry line by mirror images.
std::vector<EdgeMoment> freeEdgeMoments(const PlateModel& model, const Section& section,
                                        const ElasticSolution& solution);

/// Puts them into nodal moments (3 x nodes, rows Mx, My, Mxy) in place of what stands there.
void putIn(Eigen::Matrix3Xd& moments, const std::vector<EdgeMoment>& edges);

} // namespace pw::plate
