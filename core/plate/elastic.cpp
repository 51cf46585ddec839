#include "core/plate/elastic.h"

#include <cmath>

namespace pw::plate {

ElasticSolver::ElasticSolver(const PlateModel& model, const Section& section)
    : m_model(model), m_section(section), m_stiffness(model.mesh(), model.unknowns()) {
    const Mesh& mesh = model.mesh();
    m_bubbles.resize(mesh.triangleCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const Condensed c = condense(elasticStiffness(model.element(t), section),
                                     Eigen::Matrix<double, kElementUnknowns, 1>::Zero());
        m_bubbles[t] = c.bubbleNodal;
        m_stiffness.add(t, c.stiffness);
    }
    m_factored = m_solver.factor(m_stiffness.lower());
}

util::Result<ElasticSolution> ElasticSolver::solve(const Eigen::VectorXd& nodalForces) const {
    const PlateModel& model = m_model;
    const Mesh& mesh = model.mesh();
    const util::Problem loose{"plate",
                              "the plate's stiffness has no solution: nothing holds it together. Look for "
                              "holes that cut it in two"};
    if (!m_factored)
        return loose;
    const Eigen::VectorXd right = model.rightSide(nodalForces);
    ElasticSolution s;
    s.unknowns = m_solver.solve(right);
    const auto lower = m_stiffness.lower().selfadjointView<Eigen::Lower>();
    Eigen::VectorXd rest = right - lower * s.unknowns;
    s.unknowns += m_solver.solve(rest); // one step of refinement: thin plates are badly conditioned
    rest = right - lower * s.unknowns;
    const double scale = right.cwiseAbs().maxCoeff();
    s.residual = scale > 0 ? rest.cwiseAbs().maxCoeff() / scale : 0;
    if (!s.unknowns.allFinite() || s.residual > 1e-6)
        return loose;

    s.nodes = model.unknowns().toNodes(s.unknowns);
    s.pointMoments.resize(mesh.triangleCount());
    const Eigen::Matrix3d d = m_section.bending();
    Eigen::VectorXd atPins = Eigen::VectorXd::Zero(mesh.nodeCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        Eigen::Matrix<double, kElementUnknowns, 1> u;
        u.head<kNodal>() = model.gather(t, s.unknowns);
        u.tail<2>() = -m_bubbles[t] * u.head<kNodal>();
        for (int i = 0; i < kPoints; ++i)
            s.pointMoments[t][i] = d * (model.element(t).curvature[i] * u);
        bool pinned = false;
        for (int i = 0; i < 6; ++i)
            for (int node : model.unknowns().pinned())
                pinned = pinned || mesh.triangles(i, t) == node;
        if (pinned) {
            const Eigen::Matrix<double, kElementUnknowns, 1> f =
                elasticStiffness(model.element(t), m_section) * u;
            for (int i = 0; i < 6; ++i)
                atPins(mesh.triangles(i, t)) += f(3 * i);
        }
    }
    s.strainEnergy = 0.5 * right.dot(s.unknowns);
    for (int node : model.unknowns().pinned())
        s.pinReaction = std::max(s.pinReaction, std::abs(atPins(node) - nodalForces(node)));
    const double total = nodalForces.cwiseAbs().sum();
    s.pinReaction = total > 0 ? s.pinReaction / total : 0;
    return s;
}

util::Result<ElasticSolution> solveElastic(const PlateModel& model, const Section& section,
                                           const Eigen::VectorXd& nodalForces) {
    return ElasticSolver(model, section).solve(nodalForces);
}

} // namespace pw::plate
