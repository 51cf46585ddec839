// A round hole in a wide plate under bending, over its size against the thickness: Reissner, J. Appl. Mech.
// 12 (1945) A-69, the curve that the handbooks print. Rows of
// tests/reference/kt_holes_bending_and_ligaments.csv; the values are those of Reissner's closed form (the
// handbooks' fitted formula lies up to 2.5 % off it).
#include "core/plate/free_edge.h"
#include "tests/support/csv.h"
#include "tests/support/edge_moments.h"
#include "tests/support/meshes.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace pw::plate;

namespace {

/// Largest moment along the hole's edge over the moment far away, which bends about y alone, with `across`
/// times as much about x.
double peakOverNominal(double holeOverThickness, double across) {
    const double radius = 1, t = 2 * radius / holeOverThickness;
    // What the hole does dies away with the larger of hole and thickness; 40 times that is far away (the rest
    // is of the order of one over its square).
    const double far = 40 * std::max(radius, t);
    const Sector sector{4, 0};
    const Mesh mesh = pw::testing::annulusMesh(radius, far, sector.opening(), 60, 12);
    const PlateModel model(mesh, sector);
    const Section section{t, 200000, 0.3};
    const ElasticSolution solution = pw::testing::solveUnderRimMoments(model, section, {1.0, across, 0.0});
    double most = 0;
    for (const EdgeMoment& e : freeEdgeMoments(model, section, solution))
        if (e.kind == MeshEdge::Kind::Bore)
            most = std::max(most, std::abs(e.moment));
    return most;
}

double ratioOf(const std::string& params) {
    return std::stod(params.substr(params.find("d/t=") + 4));
}

} // namespace

TEST(ReissnerHole, PeakFollowsTheCurveFromTinyToWideHoles) {
    int compared = 0;
    for (const auto& row :
         pw::testing::readCsv(std::string(PW_REFERENCE) + "/kt_holes_bending_and_ligaments.csv")) {
        const bool simple = row.at("id").rfind("KT-fit-", 0) == 0;
        if (!simple && row.at("id").rfind("KT-cyl-", 0) != 0)
            continue;
        const double expected = std::stod(row.at("recomputed"));
        const double found = peakOverNominal(ratioOf(row.at("params")), simple ? 0 : 0.3);
        std::printf("%s: %.4f, %+.2f %%\n", row.at("id").c_str(), found, 100 * (found / expected - 1));
        // 1 %: a finite plate (0.2 %) and the edge's layer, a third of the thickness deep, on this mesh.
        EXPECT_NEAR(found, expected, 0.01 * expected) << row.at("id");
        ++compared;
    }
    EXPECT_EQ(compared, 15);
}

TEST(ReissnerHole, EvenBendingAllRoundGivesTwoWhateverTheThickness) {
    // Row KT-iso: M1 = M2, exactly 2 in thin and in thick plates, in a plate without end.
    for (double ratio : {0.01, 0.5, 2.0, 20.0})
        EXPECT_NEAR(peakOverNominal(ratio, 1), 2, 0.01 * 2) << "d/t " << ratio;
}

TEST(ReissnerHole, APlateWithoutNoticeableHoleTakesItsRimMomentEverywhere) {
    // The loading itself: far from a tiny hole the moment is what the rim was given (patch test).
    const Sector sector{4, 0};
    const Mesh mesh = pw::testing::annulusMesh(0.001, 50, sector.opening(), 30, 6);
    const PlateModel model(mesh, sector);
    const Section section{3, 200000, 0.3};
    const ElasticSolution solution = pw::testing::solveUnderRimMoments(model, section, {1.0, 0.3, 0.0});
    // Cylindrical bending: d2w/dx2 = Mx / D, straight along y. Deflections from the middle.
    Eigen::Index onX = 0, onY = 0, middle = 0;
    (mesh.nodes.colwise() - Eigen::Vector2d(50, 0)).colwise().norm().minCoeff(&onX);
    (mesh.nodes.colwise() - Eigen::Vector2d(0, 50)).colwise().norm().minCoeff(&onY);
    mesh.nodes.colwise().norm().minCoeff(&middle);
    const double rise = 50.0 * 50.0 / (2 * section.bending()(0, 0));
    EXPECT_NEAR(solution.nodes(0, onX) - solution.nodes(0, middle), rise, 1e-3 * rise);
    EXPECT_NEAR(solution.nodes(0, onY) - solution.nodes(0, middle), 0, 1e-3 * rise);
}
