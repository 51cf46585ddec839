// From thinner than sheet to a block: no locking, no nonsense. Source of the expected values: the exact
// thin-plate solution (annular.h, held against Roark's printed table) plus the deflection by shear strain,
// which is exact in Mindlin's theory where the shear follows from balance alone.
#include "core/plate/annular.h"
#include "core/plate/bearing.h"
#include "core/plate/elastic.h"
#include "core/plate/field_at.h"
#include "core/plate/free_edge.h"
#include "core/plate/pressure.h"
#include "tests/support/meshes.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw::plate;

namespace {

constexpr double kOuter = 70, kInner = 10, kLoad = 1000;
constexpr double kLandInside = 45, kLandOutside = 57, kBearing = 22;

struct Bent {
    double deflection = 0, boreStress = 0;
};

Section sectionOf(double t) {
    return {t, 200000, 0.3};
}

/// A free plate lifted by a ring and held down by the centre bearing, as the tools are.
Bent computed(double t) {
    const Sector sector{12, 0};
    const Mesh mesh = pw::testing::annulusMesh(kInner, kOuter, sector.opening(), 16, 4);
    const PlateModel model(mesh, sector);
    Eigen::VectorXd f = pressureForces(mesh, sector, {{{0, 0}, kLandInside, kLandOutside, kLoad}});
    f += balance(mesh, sector, f, {{0, 0}, kInner, kBearing, 0}).forces;
    const auto field = solveElastic(model, sectionOf(t), f);
    EXPECT_TRUE(field);
    if (!field)
        return {};
    EXPECT_TRUE(field->nodes.allFinite());
    const FieldAt at(mesh, sector);
    const auto lift = [&](double r) { return at.value(*at.find({r, 0}, 0.1), field->nodes.row(0)); };
    Bent bent{lift(kOuter) - lift(kInner), 0};
    for (const EdgeMoment& e : freeEdgeMoments(model, sectionOf(t), *field))
        if (e.kind == MeshEdge::Kind::Bore)
            bent.boreStress = std::max(bent.boreStress, std::abs(6 * e.moment / (t * t)));
    return bent;
}

struct Exact {
    double bending = 0, shear = 0, boreStress = 0;
};

Exact exact(double t) {
    const Section section = sectionOf(t);
    AnnularPlate plate{
        .outer = kOuter, .inner = kInner, .rigidity = section.bending()(0, 0), .poisson = section.nu};
    const auto ringArea = [](double in, double out) { return std::numbers::pi * (out * out - in * in); };
    plate.rings = {{kLandInside, kLandOutside, -kLoad / ringArea(kLandInside, kLandOutside)},
                   {kInner, kBearing, kLoad / ringArea(kInner, kBearing)}};
    const auto solution = solveAnnular(plate);
    EXPECT_TRUE(solution) << solution.problem().message;
    return {solution->outer().deflection - solution->inner().deflection,
            -solution->shearIntegral(kInner, kOuter) / section.shear(),
            std::abs(6 * solution->inner().tangentialMoment / (t * t))};
}

} // namespace

TEST(ThinToThick, DeflectionIsTheExactOneWithShearFromFoilToBlock) {
    double last = 1e300;
    for (double ratio : {0.4, 0.3, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002}) { // t/a
        const double t = ratio * kOuter;
        const Bent bent = computed(t);
        const Exact expected = exact(t);
        const double whole = expected.bending + expected.shear;
        std::printf("t/a %.3f: deflection %+.3f %%, bore stress %+.3f %%, shear's part %.2f %%\n", ratio,
                    100 * (bent.deflection / whole - 1), 100 * (bent.boreStress / expected.boreStress - 1),
                    100 * expected.shear / whole);
        // 0.3 %: the mesh sees the edges of the loaded rings to a thirtieth of a triangle's side.
        EXPECT_NEAR(bent.deflection, whole, 0.003 * std::abs(whole)) << "t/a " << ratio;
        EXPECT_NEAR(bent.boreStress, expected.boreStress, 0.01 * expected.boreStress) << "t/a " << ratio;
        // Times t^3 it goes down to the thin limit and never below it.
        const double scaled = bent.deflection * t * t * t;
        EXPECT_LT(scaled, last) << "t/a " << ratio;
        EXPECT_GT(scaled, 0.997 * expected.bending * t * t * t) << "t/a " << ratio;
        last = scaled;
    }
}
