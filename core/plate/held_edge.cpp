#include "core/plate/held_edge.h"

#include "core/util/require.h"

#include <cmath>
#include <map>

namespace pw::plate {

namespace {

/// One node of the edge: its direction, and the forces the plate's elements put on it.
struct EdgeNode {
    Eigen::Vector2d along = Eigen::Vector2d::Zero();
    Eigen::Vector2d turning = Eigen::Vector2d::Zero(); ///< on bx, by
    double lift = 0;                                   ///< on w
    bool onSymmetry = false;
    int number = -1; ///< of its Mn among the unknowns; Mnt follows, but not on a symmetry line

    Eigen::Vector2d outward() const { return {along.y(), -along.x()}; }
};

} // namespace

HeldEdge heldEdgeMoments(const PlateModel& model, const Section& section, const ElasticSolution& solution,
                         const Eigen::VectorXd& nodalForces, const EdgeSupport& support) {
    const Mesh& mesh = model.mesh();
    std::map<int, EdgeNode> nodes;
    std::vector<const MeshEdge*> edges;
    for (const MeshEdge& edge : mesh.edges) {
        if (edge.kind != support.kind || edge.index != support.index)
            continue;
        edges.push_back(&edge);
        const Eigen::Vector2d a = mesh.nodes.col(edge.nodes[0]), m = mesh.nodes.col(edge.nodes[1]),
                              b = mesh.nodes.col(edge.nodes[2]);
        nodes[edge.nodes[0]].along += (-3 * a + 4 * m - b).normalized();
        nodes[edge.nodes[1]].along += (b - a).normalized();
        nodes[edge.nodes[2]].along += (a - 4 * m + 3 * b).normalized();
    }
    for (const MeshEdge& edge : mesh.edges)
        if (edge.kind == MeshEdge::Kind::Symmetry)
            for (int node : edge.nodes)
                if (const auto found = nodes.find(node); found != nodes.end())
                    found->second.onSymmetry = true;

    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        bool touches = false;
        for (int i = 0; i < 6; ++i)
            touches = touches || nodes.contains(mesh.triangles(i, t));
        if (!touches)
            continue;
        const Condensed element = condense(elasticStiffness(model.element(t), section),
                                           Eigen::Matrix<double, kElementUnknowns, 1>::Zero());
        const Eigen::Matrix<double, kNodal, 1> f = element.stiffness * model.gather(t, solution.unknowns);
        for (int i = 0; i < 6; ++i) {
            const int node = mesh.triangles(i, t);
            const auto found = nodes.find(node);
            if (found == nodes.end())
                continue;
            const double c = std::cos(model.unknowns().frame(node)),
                         s = std::sin(model.unknowns().frame(node));
            found->second.turning +=
                Eigen::Vector2d(c * f(3 * i + 1) - s * f(3 * i + 2), s * f(3 * i + 1) + c * f(3 * i + 2));
            found->second.lift += f(3 * i);
        }
    }

    HeldEdge held;
    int count = 0;
    for (auto& [node, edge] : nodes) {
        edge.along.normalize();
        edge.number = count;
        count += edge.onSymmetry ? 1 : 2; // a symmetry line has no twist, and its own hold on that rotation
        held.force += nodalForces(node) - edge.lift;
    }
    if (count == 0)
        return held;

    // Work of the clamp's moments at each node = what the elements ask for there.
    std::vector<Eigen::Triplet<double>> entries;
    for (const MeshEdge* edge : edges) {
        std::array<const EdgeNode*, 3> at;
        for (int i = 0; i < 3; ++i)
            at[i] = &nodes.at(edge->nodes[i]);
        for (const auto& [s, weight] : {std::pair{0.5 - std::sqrt(0.15), 5.0 / 18}, std::pair{0.5, 8.0 / 18},
                                        std::pair{0.5 + std::sqrt(0.15), 5.0 / 18}}) {
            const Eigen::Vector3d n{(1 - s) * (1 - 2 * s), 4 * s * (1 - s), s * (2 * s - 1)};
            const Eigen::Vector3d slope{4 * s - 3, 4 - 8 * s, 4 * s - 1};
            Eigen::Vector2d stretch = Eigen::Vector2d::Zero();
            for (int i = 0; i < 3; ++i)
                stretch += slope(i) * mesh.nodes.col(edge->nodes[i]);
            for (int i = 0; i < 3; ++i)
                for (int j = 0; j < 3; ++j)
                    for (int k = 0; k < (at[i]->onSymmetry ? 1 : 2); ++k)
                        for (int l = 0; l < (at[j]->onSymmetry ? 1 : 2); ++l) {
                            const int row = at[i]->number + k, column = at[j]->number + l;
                            if (row < column)
                                continue;
                            const Eigen::Vector2d one = k == 0 ? at[i]->outward() : at[i]->along;
                            const Eigen::Vector2d other = l == 0 ? at[j]->outward() : at[j]->along;
                            entries.emplace_back(row, column,
                                                 weight * stretch.norm() * n(i) * n(j) * one.dot(other));
                        }
        }
    }
    Eigen::SparseMatrix<double> work(count, count);
    work.setFromTriplets(entries.begin(), entries.end());
    Eigen::VectorXd asked(count);
    for (const auto& [node, edge] : nodes) {
        asked(edge.number) = edge.turning.dot(edge.outward());
        if (!edge.onSymmetry)
            asked(edge.number + 1) = edge.turning.dot(edge.along);
    }
    SparseSolver solver;
    util::require(solver.factor(work), "the sides of a held edge have no length");
    const Eigen::VectorXd moments = solver.solve(asked);
    for (const auto& [node, edge] : nodes)
        held.moments.push_back(
            {node, edge.along, moments(edge.number), edge.onSymmetry ? 0.0 : moments(edge.number + 1)});
    return held;
}

void putIn(Eigen::Matrix3Xd& moments, const HeldEdge& edge, double nu) {
    for (const HeldMoment& m : edge.moments) {
        const Eigen::Vector2d t = m.along, n(t.y(), -t.x());
        const Eigen::Matrix2d tensor = m.across * (n * n.transpose() + nu * t * t.transpose()) +
                                       m.twist * (n * t.transpose() + t * n.transpose());
        moments.col(m.node) << tensor(0, 0), tensor(1, 1), tensor(0, 1);
    }
}

} // namespace pw::plate
