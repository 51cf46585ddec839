#include "core/plate/bearing.h"

#include "core/plate/elastic.h"
#include "core/plate/pressure.h"
#include "tests/support/meshes.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw::plate;
using pw::testing::annulusMesh;

namespace {

using std::numbers::pi;
constexpr Section kSixThick{6, 200000, 0.3};

struct Balanced {
    Mesh mesh;
    Eigen::VectorXd forces;
    Reaction reaction;
};

/// Two patches at +-45 mm whose resultant, 1000 N, stands at x = offset.
Eigen::VectorXd loadAt(const Mesh& mesh, double offset) {
    const double share = (45 + offset) / 90;
    return pressureForces(mesh, {}, {{{45, 0}, 0, 9, 1000 * share}, {{-45, 0}, 0, 9, 1000 * (1 - share)}});
}

Balanced withOffset(double offset, bool hard) {
    Balanced b;
    b.mesh = annulusMesh(10, 60, 2 * pi, 8, 20);
    b.forces = loadAt(b.mesh, offset);
    const PressureRing ring{{0, 0}, 10, 25, 0};
    b.reaction =
        hard ? *hardReaction(b.mesh, {}, kSixThick, b.forces, ring) : balance(b.mesh, {}, b.forces, ring);
    return b;
}

double momentX(const Balanced& b, const Eigen::VectorXd& forces) {
    return b.mesh.nodes.row(0) * forces;
}

} // namespace

TEST(CentreBearing, BalancesForceAndMomentsToRounding) {
    for (bool hard : {false, true})
        for (double x : {0.0, 5.0, 15.0}) {
            const Balanced b = withOffset(x, hard);
            const Eigen::VectorXd all = b.forces + b.reaction.forces;
            EXPECT_NEAR(all.sum(), 0, 1e-8) << hard << " " << x;
            EXPECT_NEAR(momentX(b, all), 0, 1e-6) << hard << " " << x;
        }
}

TEST(CentreBearing, AnEvenLoadIsAnsweredEvenlyAndLiftsNothing) {
    const Balanced b = withOffset(0, false);
    EXPECT_EQ(b.reaction.lifted, 0);
    EXPECT_EQ(b.reaction.screwMoment, 0);
    EXPECT_NEAR(b.reaction.offset, 0, 0.05);
}

TEST(CentreBearing, KernOfARingIsWhereItBeginsToLift) {
    // Linear pressure over a ring pushes everywhere while the resultant is within (Ro^2 + Ri^2) / (4 Ro) of
    // the middle: the kern of an annulus (any strength of materials text; e.g. Timoshenko, Strength of
    // Materials part 1, art. 52).
    const double kern = (25.0 * 25 + 10 * 10) / (4 * 25);
    const Mesh mesh = annulusMesh(10, 60, 2 * pi, 8, 20);
    const auto lifted = [&](double offset) {
        return balance(mesh, {}, loadAt(mesh, offset), {{0, 0}, 10, 25, 0}).lifted;
    };
    EXPECT_EQ(lifted(kern * 0.93), 0);
    EXPECT_GT(lifted(kern * 1.07), 0);
}

TEST(CentreBearing, BeyondItsReachTheScrewBends) {
    const Mesh mesh = annulusMesh(10, 60, 2 * pi, 8, 20);
    const Eigen::VectorXd f = pressureForces(mesh, {}, {{{45, 0}, 0, 9, 1000}});
    const Reaction r = balance(mesh, {}, f, {{0, 0}, 10, 25, 0});
    const double offset = mesh.nodes.row(0).dot(f) / 1000;
    EXPECT_NEAR(r.offset, offset, 1e-9 * offset);
    EXPECT_NEAR(r.screwMoment, 1000 * (offset - kFarthestPush * 25), 1e-6 * r.screwMoment);
    // A hard washer has nothing but pushing: this load tips the plate off it, and that is said.
    const auto hard = hardReaction(mesh, {}, kSixThick, f, {{0, 0}, 10, 25, 0});
    ASSERT_FALSE(hard);
    EXPECT_NE(hard.problem().message.find("tips"), std::string::npos);
}

TEST(CentreBearing, AHardWasherBearsAtItsRimUnderABendingPlateAndTheLoadStillBalances) {
    const Sector sector{12, 0};
    const Mesh mesh = annulusMesh(10, 70, sector.opening(), 20, 4);
    const Eigen::VectorXd f = pressureForces(mesh, sector, {{{0, 0}, 45, 55, 7500}});
    const auto hard = hardReaction(mesh, sector, kSixThick, f, {{0, 0}, 10, 22, 0});
    ASSERT_TRUE(hard);
    EXPECT_GT(hard->lifted, 0.3); // the plate bends away from the middle of the washer
    EXPECT_LE(hard->forces.sum(), 0);
    EXPECT_NEAR((f + hard->forces).sum(), 0, 1e-9 * 7500);
    // Bearing farther out shortens the lever: less bend than under an even pressure.
    const PlateModel model(mesh, sector);
    const auto bend = [&](const Eigen::VectorXd& reaction) {
        const auto s = solveElastic(model, kSixThick, f + reaction);
        EXPECT_TRUE(s);
        return s->nodes.row(0).maxCoeff() - s->nodes.row(0).minCoeff();
    };
    EXPECT_LT(bend(hard->forces), bend(balance(mesh, sector, f, {{0, 0}, 10, 22, 0}).forces));
}
