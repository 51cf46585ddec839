#include "core/plate/elastic.h"

#include <cmath>

namespace pw::plate {

util::Result<ElasticSolution> solveElastic(const PlateModel& model, const Section& section,
                                           const Eigen::VectorXd& nodalForces) {
    const Mesh& mesh = model.mesh();
    const Eigen::VectorXd right = model.rightSide(nodalForces);

    Stiffness stiffness(mesh, model.unknowns());
    std::vector<Eigen::Matrix<double, 2, kNodal>> bubbles(mesh.triangleCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const Condensed c = condense(elasticStiffness(model.element(t), section),
                                     Eigen::Matrix<double, kElementUnknowns, 1>::Zero());
        bubbles[t] = c.bubbleNodal;
        stiffness.add(t, c.stiffness);
    }
    SparseSolver solver;
    const util::Problem loose{"plate",
                              "the plate's stiffness has no solution: nothing holds it together. Look for "
                              "holes that cut it in two"};
    if (!solver.factor(stiffness.lower()))
        return loose;

    ElasticSolution s;
    s.unknowns = solver.solve(right);
    const auto lower = stiffness.lower().selfadjointView<Eigen::Lower>();
    Eigen::VectorXd rest = right - lower * s.unknowns;
    s.unknowns += solver.solve(rest); // one step of refinement: thin plates are badly conditioned
    rest = right - lower * s.unknowns;
    const double scale = right.cwiseAbs().maxCoeff();
    s.residual = scale > 0 ? rest.cwiseAbs().maxCoeff() / scale : 0;
    if (!s.unknowns.allFinite() || s.residual > 1e-6)
        return loose;

    s.nodes = model.unknowns().toNodes(s.unknowns);
    s.pointMoments.resize(mesh.triangleCount());
    const Eigen::Matrix3d d = section.bending();
    Eigen::VectorXd atPins = Eigen::VectorXd::Zero(mesh.nodeCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        Eigen::Matrix<double, kElementUnknowns, 1> u;
        u.head<kNodal>() = model.gather(t, s.unknowns);
        u.tail<2>() = -bubbles[t] * u.head<kNodal>();
        for (int i = 0; i < kPoints; ++i)
            s.pointMoments[t][i] = d * (model.element(t).curvature[i] * u);
        bool pinned = false;
        for (int i = 0; i < 6; ++i)
            for (int node : model.unknowns().pinned())
                pinned = pinned || mesh.triangles(i, t) == node;
        if (pinned) {
            const Eigen::Matrix<double, kElementUnknowns, 1> f =
                elasticStiffness(model.element(t), section) * u;
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

} // namespace pw::plate
