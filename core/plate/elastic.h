#pragma once

#include "core/plate/model.h"

#include <array>

namespace pw::plate {

struct ElasticSolution {
    Eigen::VectorXd unknowns; ///< in the nodes' frames, for going on from
    Eigen::Matrix3Xd nodes;   ///< w (mm), bx, by at every node, plate axes
    /// kPoints per triangle: Mx, My, Mxy at the quadrature points, N.mm per mm.
    std::vector<std::array<Eigen::Vector3d, kPoints>> pointMoments;
    double strainEnergy = 0; ///< N.mm, of the sector
    double residual = 0;     ///< largest |K u - f| over largest |f|, held unknowns left out
    double pinReaction =
        0; ///< largest reaction at a pinned deflection over the sum of |f|; nothing when balanced
};

/// Linear elastic bending under nodal forces on w: factored once, solved for as many loads as wanted.
class ElasticSolver {
public:
    /// The model must outlive the solver.
    ElasticSolver(const PlateModel& model, const Section& section);

    /// Errors: a plate that nothing holds together (or that is held nowhere although its loads do not
    /// balance).
    util::Result<ElasticSolution> solve(const Eigen::VectorXd& nodalForces) const;

private:
    const PlateModel& m_model;
    Section m_section;
    Stiffness m_stiffness;
    SparseSolver m_solver;
    std::vector<Eigen::Matrix<double, 2, kNodal>> m_bubbles;
    bool m_factored = false;
};

/// One load.
util::Result<ElasticSolution> solveElastic(const PlateModel& model, const Section& section,
                                           const Eigen::VectorXd& nodalForces);

} // namespace pw::plate
