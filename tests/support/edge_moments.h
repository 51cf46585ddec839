#pragma once

#include "core/plate/elastic.h"

#include <cmath>
#include <Eigen/Dense>
#include <gtest/gtest.h>

namespace pw::testing {

/// A plate bent by moments on its rim alone, which the tools never are: M . n along the rim for one moment
/// tensor (Mx, My, Mxy), so that a plate without holes takes that moment everywhere. Deflections and
/// rotations at the nodes.
inline plate::ElasticSolution solveUnderRimMoments(const plate::PlateModel& model,
                                                   const plate::Section& section,
                                                   const Eigen::Vector3d& moment) {
    using namespace plate;
    const Mesh& mesh = model.mesh();
    const Unknowns& unknowns = model.unknowns();
    Stiffness stiffness(mesh, unknowns);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        stiffness.add(t, condense(elasticStiffness(model.element(t), section),
                                  Eigen::Matrix<double, kElementUnknowns, 1>::Zero())
                             .stiffness);
    const Eigen::Matrix2d tensor{{moment(0), moment(2)}, {moment(2), moment(1)}};
    Eigen::VectorXd right = Eigen::VectorXd::Zero(unknowns.count());
    for (const MeshEdge& edge : mesh.edges) {
        if (edge.kind != MeshEdge::Kind::Rim)
            continue;
        for (const auto& [s, weight] : {std::pair{0.5 - std::sqrt(0.15), 5.0 / 18}, std::pair{0.5, 8.0 / 18},
                                        std::pair{0.5 + std::sqrt(0.15), 5.0 / 18}}) {
            const Eigen::Vector3d n{(1 - s) * (1 - 2 * s), 4 * s * (1 - s), s * (2 * s - 1)};
            const Eigen::Vector3d slope{4 * s - 3, 4 - 8 * s, 4 * s - 1};
            Eigen::Vector2d along = Eigen::Vector2d::Zero();
            for (int i = 0; i < 3; ++i)
                along += slope(i) * mesh.nodes.col(edge.nodes[i]);
            // Material on the left: outwards is to the right; its length is the arc's stretch.
            const Eigen::Vector2d pull = tensor * Eigen::Vector2d(along.y(), -along.x());
            for (int i = 0; i < 3; ++i) {
                const double frame = unknowns.frame(edge.nodes[i]);
                const Eigen::Vector2d own = Eigen::Rotation2Dd(-frame) * pull;
                for (int k = 0; k < 2; ++k)
                    if (const int number = unknowns.of(edge.nodes[i], 1 + k); number >= 0)
                        right(number) += weight * n(i) * own(k);
            }
        }
    }
    SparseSolver solver;
    EXPECT_TRUE(solver.factor(stiffness.lower()));
    ElasticSolution solution;
    solution.unknowns = solver.solve(right);
    solution.nodes = unknowns.toNodes(solution.unknowns);
    return solution;
}

} // namespace pw::testing
