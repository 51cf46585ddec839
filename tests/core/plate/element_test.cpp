#include "core/plate/element.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <random>

using namespace pw::plate;

namespace {

/// A triangle with curved sides, nothing special about it.
ElementNodes curvedTriangle() {
    ElementNodes nodes;
    nodes.col(0) << 1, 2;
    nodes.col(1) << 9, 3;
    nodes.col(2) << 4, 10;
    nodes.col(3) << 5.2, 2.1;
    nodes.col(4) << 6.7, 6.9;
    nodes.col(5) << 2.2, 6.3;
    return nodes;
}

ElementNodes straightTriangle() {
    ElementNodes nodes = curvedTriangle();
    for (int i = 0; i < 3; ++i)
        nodes.col(3 + i) = (nodes.col(i) + nodes.col((i + 1) % 3)) / 2;
    return nodes;
}

using Unknowns20 = Eigen::Matrix<double, kElementUnknowns, 1>;

/// w and its slopes at the nodes; the bubble at rest.
template<class W, class Slope>
Unknowns20 nodal(const ElementNodes& nodes, W w, Slope slope) {
    Unknowns20 u = Unknowns20::Zero();
    for (int i = 0; i < 6; ++i) {
        u(3 * i) = w(nodes.col(i));
        u.segment<2>(3 * i + 1) = slope(nodes.col(i));
    }
    return u;
}

constexpr Section kSection{6, 200000, 0.3};

} // namespace

TEST(PlateElement, QuadratureIsExactForEveryMonomialUpToDegreeFour) {
    const auto factorial = [](int n) { return std::tgamma(n + 1.0); };
    for (int i = 0; i <= 4; ++i)
        for (int j = 0; i + j <= 4; ++j) {
            double sum = 0;
            for (const QuadraturePoint& q : quadrature())
                sum += q.weight * std::pow(q.r, i) * std::pow(q.s, j);
            // Integral of r^i s^j over the unit triangle: i! j! / (i + j + 2)!.
            EXPECT_NEAR(sum, factorial(i) * factorial(j) / factorial(i + j + 2), 1e-14) << i << " " << j;
        }
}

TEST(PlateElement, RigidMotionsStoreNoEnergyEvenWithCurvedSides) {
    const ElementNodes nodes = curvedTriangle();
    const ElementMatrix k = elasticStiffness(elementGeometry(nodes), kSection);
    const double scale = k.cwiseAbs().maxCoeff();
    const Unknowns20 lift = nodal(
        nodes, [](const Eigen::Vector2d&) { return 1.0; },
        [](const Eigen::Vector2d&) { return Eigen::Vector2d(0, 0); });
    const Unknowns20 tilt = nodal(
        nodes, [](const Eigen::Vector2d& p) { return 0.3 * p.x() - 0.7 * p.y(); },
        [](const Eigen::Vector2d&) { return Eigen::Vector2d(0.3, -0.7); });
    EXPECT_LT((k * lift).cwiseAbs().maxCoeff(), 1e-10 * scale);
    EXPECT_LT((k * tilt).cwiseAbs().maxCoeff(), 1e-9 * scale);
}

TEST(PlateElement, HasNoMotionWithoutEnergyBesidesTheRigidOnes) {
    const ElementMatrix k = elasticStiffness(elementGeometry(curvedTriangle()), kSection);
    const Eigen::VectorXd values = Eigen::SelfAdjointEigenSolver<ElementMatrix>(k).eigenvalues();
    EXPECT_LT(values(2), 1e-9 * values(19));
    EXPECT_GT(values(3), 1e-7 * values(19));
}

TEST(PlateElement, ConstantCurvatureIsMetExactlyWithStraightSides) {
    const ElementNodes nodes = straightTriangle();
    const double a = 2e-4, b = -1e-4, c = 3e-4;
    const Unknowns20 u = nodal(
        nodes,
        [&](const Eigen::Vector2d& p) {
            return a / 2 * p.x() * p.x() + b / 2 * p.y() * p.y() + c * p.x() * p.y();
        },
        [&](const Eigen::Vector2d& p) {
            return Eigen::Vector2d(a * p.x() + c * p.y(), b * p.y() + c * p.x());
        });
    const ElementGeometry g = elementGeometry(nodes);
    for (int i = 0; i < kPoints; ++i)
        EXPECT_LT((g.curvature[i] * u - Eigen::Vector3d(a, b, 2 * c)).norm(), 1e-15);
    // No shear: the whole energy is that of bending.
    const double energy = 0.5 * u.dot(elasticStiffness(g, kSection) * u);
    double area = 0;
    for (double part : g.area)
        area += part;
    const Eigen::Vector3d kappa(a, b, 2 * c);
    EXPECT_NEAR(energy, 0.5 * area * kappa.dot(kSection.bending() * kappa), 1e-12 * energy);
}

TEST(PlateElement, CondensingLeavesTheSameAnswerAsTheWholeElement) {
    const ElementMatrix k = elasticStiffness(elementGeometry(curvedTriangle()), kSection);
    std::mt19937 random(20261125); // fixed seed
    std::normal_distribution<double> normal;
    Unknowns20 f;
    for (int i = 0; i < kElementUnknowns; ++i)
        f(i) = normal(random);
    const Condensed c = condense(k, f);
    // Hold three deflections to make both systems solvable.
    ElementMatrix whole = k;
    NodalMatrix nodalOnly = c.stiffness;
    for (int i : {0, 3, 6}) {
        whole(i, i) += 1e9;
        nodalOnly(i, i) += 1e9;
    }
    const Unknowns20 u = whole.fullPivLu().solve(f);
    const Eigen::Matrix<double, kNodal, 1> v = nodalOnly.fullPivLu().solve(c.force);
    EXPECT_LT((u.head<kNodal>() - v).norm(), 1e-8 * u.norm());
    EXPECT_LT((u.tail<2>() - (c.bubbleForce - c.bubbleNodal * v)).norm(), 1e-8 * u.norm());
}

TEST(PlateElement, SaysWhenItIsTurnedInsideOut) {
    ElementNodes nodes = straightTriangle();
    EXPECT_TRUE(elementGeometry(nodes).valid);
    nodes.col(1).swap(nodes.col(2));
    nodes.col(3).swap(nodes.col(5));
    EXPECT_FALSE(elementGeometry(nodes).valid);
}
