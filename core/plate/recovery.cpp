#include "core/plate/recovery.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>

namespace pw::plate {

namespace {

constexpr int kTerms = 6; ///< 1 x y xx xy yy

Eigen::Matrix<double, 1, kTerms> terms(const Eigen::Vector2d& p) {
    Eigen::Matrix<double, 1, kTerms> row;
    row << 1, p.x(), p.y(), p.x() * p.x(), p.x() * p.y(), p.y() * p.y();
    return row;
}

/// Moments as a polynomial about a corner, in lengths of the patch's size.
struct Patch {
    Eigen::Vector2d centre;
    double size = 1;
    Eigen::Matrix<double, kTerms, 3> fit;
    Eigen::Vector3d at(const Eigen::Vector2d& p) const {
        return (terms((p - centre) / size) * fit).transpose();
    }
};

} // namespace

RecoveredMoments recoverMoments(const PlateModel& model, const Section& section,
                                const std::vector<std::array<Eigen::Vector3d, kPoints>>& pointMoments) {
    const Mesh& mesh = model.mesh();
    const auto nodeCount = mesh.nodeCount();
    std::vector<std::vector<int>> around(nodeCount); // triangles at each corner
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < 3; ++i)
            around[mesh.triangles(i, t)].push_back(static_cast<int>(t));
    std::vector<char> onEdge(nodeCount, 0);
    for (const MeshEdge& edge : mesh.edges)
        for (int node : edge.nodes)
            onEdge[node] = 1;

    std::vector<std::array<Eigen::Vector2d, kPoints>> places(mesh.triangleCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const ElementNodes nodes = elementNodes(mesh, t);
        for (int i = 0; i < kPoints; ++i)
            places[t][i] = nodes * shapeFunctions(quadrature()[i].r, quadrature()[i].s).value;
    }

    std::vector<Patch> patches(nodeCount);
    std::vector<int> members;
    for (int corner = 0; corner < nodeCount; ++corner) {
        if (around[corner].empty())
            continue;
        members = around[corner];
        if (onEdge[corner] || members.size() < 4) {
            const std::vector<int> inner = members;
            for (int t : inner)
                for (int i = 0; i < 3; ++i)
                    members.insert(members.end(), around[mesh.triangles(i, t)].begin(),
                                   around[mesh.triangles(i, t)].end());
            std::sort(members.begin(), members.end());
            members.erase(std::unique(members.begin(), members.end()), members.end());
        }
        Patch& patch = patches[corner];
        patch.centre = mesh.nodes.col(corner);
        patch.size = 0;
        for (int t : members)
            for (const Eigen::Vector2d& p : places[t])
                patch.size = std::max(patch.size, (p - patch.centre).norm());
        Eigen::Matrix<double, kTerms, kTerms> normal = Eigen::Matrix<double, kTerms, kTerms>::Zero();
        Eigen::Matrix<double, kTerms, 3> right = Eigen::Matrix<double, kTerms, 3>::Zero();
        for (int t : members)
            for (int i = 0; i < kPoints; ++i) {
                const Eigen::Matrix<double, 1, kTerms> row =
                    terms((places[t][i] - patch.centre) / patch.size);
                normal.noalias() += row.transpose() * row;
                right.noalias() += row.transpose() * pointMoments[t][i].transpose();
            }
        patch.fit = normal.ldlt().solve(right);
    }

    RecoveredMoments recovered;
    recovered.nodes = Eigen::Matrix3Xd::Zero(3, nodeCount);
    Eigen::VectorXd weight = Eigen::VectorXd::Zero(nodeCount);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < 3; ++i) {
            const int a = mesh.triangles(i, t), b = mesh.triangles((i + 1) % 3, t),
                      m = mesh.triangles(3 + i, t);
            const auto add = [&](int node, int corner) {
                recovered.nodes.col(node) += patches[corner].at(mesh.nodes.col(node));
                weight(node) += 1;
            };
            add(a, a);
            add(m, a);
            add(m, b);
        }
    for (int i = 0; i < nodeCount; ++i)
        if (weight(i) > 0)
            recovered.nodes.col(i) /= weight(i);

    const Eigen::Matrix3d compliance = section.bending().inverse();
    recovered.triangleError = Eigen::VectorXd::Zero(mesh.triangleCount());
    double energy = 0;
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < kPoints; ++i) {
            const ShapeFunctions n = shapeFunctions(quadrature()[i].r, quadrature()[i].s);
            Eigen::Vector3d smooth = Eigen::Vector3d::Zero();
            for (int k = 0; k < 6; ++k)
                smooth += n.value(k) * recovered.nodes.col(mesh.triangles(k, t));
            const Eigen::Vector3d gap = smooth - pointMoments[t][i];
            const double area = model.element(t).area[i];
            recovered.triangleError(t) += area * gap.dot(compliance * gap);
            energy += area * smooth.dot(compliance * smooth);
        }
    recovered.energyError = energy > 0 ? std::sqrt(recovered.triangleError.sum() / energy) : 0;
    return recovered;
}

double faceVonMises(const Eigen::Vector3d& m, double thickness) {
    const double square = m(0) * m(0) - m(0) * m(1) + m(1) * m(1) + 3 * m(2) * m(2);
    return 6 * std::sqrt(std::max(square, 0.0)) / (thickness * thickness);
}

double faceStressAlong(const Eigen::Vector3d& m, const Eigen::Vector2d& along, double thickness) {
    const double c = along.x(), s = along.y();
    return 6 / (thickness * thickness) * (c * c * m(0) + s * s * m(1) + 2 * c * s * m(2));
}

} // namespace pw::plate
