#include "core/plate/annular.h"
#include "core/plate/held_edge.h"
#include "core/plate/patch.h"
#include "core/plate/recovery.h"
#include "core/util/require.h"
#include "tests/support/meshes.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace pw::plate;
using pw::testing::annulusMesh;
using std::numbers::pi;

namespace {

const std::vector<EdgeSupport> kClampedBore{{MeshEdge::Kind::Bore, 0, true, true, true}};

/// First moment over the load of one patch on a mesh of the whole ring: its centre of pressure.
Eigen::Vector2d centreOfPressure(const Mesh& mesh, const Eigen::VectorXd& forces) {
    return mesh.nodes * forces / forces.sum();
}

} // namespace

TEST(PressurePatch, ResultantIsExactAndStandsAtTheCentreOfTheSector) {
    const Mesh mesh = annulusMesh(40, 80, 2 * pi, 6, 30);
    const PressurePatch patch{61.3, 80, 0.4, 0.21, 1234};
    const Eigen::VectorXd forces = patchForces(mesh, {}, {patch});
    EXPECT_NEAR(forces.sum(), 1234, 1e-9);
    // Centroid of an annular sector: 2/3 (R^3 - r^3) / (R^2 - r^2) sin(half) / half. Source: any table of
    // centroids, here by integration of r cos(a) r dr da.
    const double radius =
        2.0 / 3 * (std::pow(80, 3) - std::pow(61.3, 3)) / (80 * 80 - 61.3 * 61.3) * std::sin(0.21) / 0.21;
    const Eigen::Vector2d at = centreOfPressure(mesh, forces);
    // The patch's edge is known to 1/30 of a triangle's side (footprint.h), its middle to half of that.
    EXPECT_NEAR(at.norm(), radius, 0.5 * 6.7 / 30);
    EXPECT_NEAR(std::atan2(at.y(), at.x()), 0.4, 1e-3);
}

TEST(PressurePatch, AWholeRingIsTheRing) {
    const Mesh mesh = annulusMesh(40, 80, 2 * pi, 6, 30);
    const Eigen::VectorXd patch = patchForces(mesh, {}, {{65, 80, 1.0, pi, 1000}});
    const Eigen::VectorXd ring = ringIntegrals(mesh, PressureRing{{0, 0}, 65, 80, 0}).col(0);
    EXPECT_NEAR((patch - ring * (1000 / ring.sum())).cwiseAbs().maxCoeff(), 0, 1e-9);
}

TEST(PressurePatch, ASectorCarriesItsShareOfAllPatches) {
    const Sector sector{6, 0};
    const Mesh mesh = annulusMesh(40, 80, sector.opening(), 6, 6);
    std::vector<PressurePatch> patches;
    for (int i = 0; i < 3; ++i)
        patches.push_back({65, 80, i * 2 * pi / 3, 0.15, 900});
    EXPECT_NEAR(patchForces(mesh, sector, patches).sum(), 3 * 900 / 6.0, 1e-9);
}

TEST(PressurePatch, OneBesideThePlateIsOurOwnMistake) {
    const Mesh mesh = annulusMesh(40, 80, 2 * pi, 4, 20);
    EXPECT_THROW((void)patchForces(mesh, {}, {{90, 100, 0, 0.1, 1}}), pw::util::Bug);
}

/// Expected: the exact thin-plate solution of an annulus fixed inside (Roark, 7th ed., Table 11.2 case 2l:
/// outer edge free, inner edge fixed, pressure from a radius outwards), held against the printed table in
/// annular_test.
TEST(HeldEdge, ClampMomentsMeetTheExactAnnulus) {
    const double a = 80, b = 45, t = 0.8, p = 0.01;
    AnnularPlate exact{.outer = a, .inner = b, .rigidity = 200000 * t * t * t / (12 * 0.91), .poisson = 0.3};
    exact.innerEdge = Edge::Fixed;
    exact.rings.push_back({65, a, p});
    const auto solution = solveAnnular(exact);
    ASSERT_TRUE(solution);
    const double expected = solution->inner().radialMoment, total = p * pi * (a * a - 65 * 65);

    const Sector sector{6, 0};
    const Section section{t, 200000, 0.3};
    double previous = 1;
    for (const int n : {3, 6}) {
        const PlateModel model(annulusMesh(b, a, sector.opening(), n, n), sector, kClampedBore);
        const Eigen::VectorXd forces = patchForces(model.mesh(), sector, {{65, a, 0, pi, -total}});
        const auto field = solveElastic(model, section, forces);
        ASSERT_TRUE(field);
        const HeldEdge edge = heldEdgeMoments(model, section, *field, forces, kClampedBore[0]);
        EXPECT_NEAR(edge.force, -total / 6, 1e-6 * total);
        double worst = 0;
        for (const HeldMoment& m : edge.moments)
            worst = std::max(worst, std::abs(m.across / expected - 1));
        EXPECT_LT(worst, previous);
        previous = worst;
        RecoveredMoments moments = recoverMoments(model, section, field->pointMoments);
        putIn(moments.nodes, edge, 0.3);
        for (const HeldMoment& m : edge.moments)
            EXPECT_NEAR(moments.nodes(0, m.node) + moments.nodes(1, m.node), 1.3 * m.across,
                        1e-9 * std::abs(m.across)); // the trace, whichever way the edge runs
    }
    EXPECT_LT(previous, 0.01);
}

/// Why a slack jaw must be left out of the sum and not just given its share: on a small root one jaw bends
/// the far side the other way, so a jaw that does not pull no longer relieves the one across from it.
TEST(HeldEdge, AJawBendsTheFarSideOfASmallRootTheOtherWay) {
    const PlateModel model(annulusMesh(30, 150, 2 * pi, 12, 48), {}, kClampedBore);
    const Section section{3, 100000, 0.26};
    const Eigen::VectorXd forces = patchForces(model.mesh(), {}, {{140, 150, 0, 0.1, 1000}});
    const auto field = solveElastic(model, section, forces);
    ASSERT_TRUE(field);
    const HeldEdge edge = heldEdgeMoments(model, section, *field, forces, kClampedBore[0]);
    double near = 0, far = 0;
    for (const HeldMoment& m : edge.moments) {
        if (model.mesh().nodes.col(m.node).isApprox(Eigen::Vector2d(30, 0)))
            near = m.across;
        if (model.mesh().nodes.col(m.node).isApprox(Eigen::Vector2d(-30, 0)))
            far = m.across;
    }
    EXPECT_LT(near * far, 0);
}
