// A free-edge disc on points at its edge, after Nadai, Z. Physik 23 (1922) 366 and Timoshenko &
// Woinowsky-Krieger art. 66: every computed row (Fourier series of the thin plate) of
// tests/reference/plates_solid_and_point_supports.csv.
#include "core/plate/elastic.h"
#include "core/plate/pressure.h"
#include "tests/support/csv.h"
#include "tests/support/meshes.h"

#include <Eigen/Dense>
#include <functional>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw::plate;

namespace {

using std::numbers::pi;

struct Dips {
    double centre = 0, midEdge = 0; ///< below the points, times D / (P a^2)
};

/// A grading whose middle nodes stand in the middle of their cells.
double evenInCells(const std::function<double(double)>& grading, double u, int cells) {
    const double cell = std::min(std::floor(u * cells + 1e-9), cells - 1.0), part = u * cells - cell;
    return (1 - part) * grading(cell / cells) + part * grading((cell + 1) / cells);
}

/// The points are forces that balance the load, not supports: deflections between places are the same, and a
/// plate held nowhere is what the tools are. A bore of a/200 stands for none; t/a = 0.002 is thin (shear is
/// of the order (t/a)^2).
Dips dips(int points, bool spread, double nu) {
    const double a = 100, bore = 0.5, t = 0.2, total = 1;
    const Sector sector{2 * points, 0};
    // Growing from the bore, then finer towards the rim; finer towards the point, where moments have no end.
    const int rings = 32, around = points > 3 ? 8 : 20;
    const auto radius = [&](double u) {
        return u < 0.5 ? bore * std::pow(60 / bore, 2 * u) : 60 + (a - 60) * (1 - std::pow(2 - 2 * u, 1.6));
    };
    const auto angle = [&](double v) { return sector.opening() * std::pow(v, 1.6); };
    const Mesh mesh = pw::testing::gridMesh(rings, around, [&](double u, double v) {
        const double r = evenInCells(radius, u, rings), at = evenInCells(angle, v, around);
        return Eigen::Vector2d(r * std::cos(at), r * std::sin(at));
    });
    const PlateModel model(mesh, sector);
    const Section section{t, 200000, nu};
    const double reach = spread ? 2 * a : 2; // a small spot stands for the central point load
    Eigen::VectorXd f = pressureForces(mesh, sector, {{{0, 0}, 0, reach, -total}});
    const int support = pw::testing::nodeNear(mesh, a, 0);
    f(support) += total / sector.count;
    const auto field = solveElastic(model, section, f);
    EXPECT_TRUE(field);
    if (!field)
        return {};
    // Rounding: as thin as this the stiffness of shear is a million times that of bending.
    EXPECT_LT(field->pinReaction, 1e-6);
    const auto w = field->nodes.row(0);
    const double unit = total * a * a / section.bending()(0, 0);
    const double middle = pi / points;
    return {(w(support) - w(pw::testing::nodeNear(mesh, 0, 0))) / unit,
            (w(support) - w(pw::testing::nodeNear(mesh, a * std::cos(middle), a * std::sin(middle)))) / unit};
}

} // namespace

TEST(PointSupports, FreeDiscDipsAsInNadaisSolution) {
    int compared = 0;
    double worst = 0;
    for (const auto& row :
         pw::testing::readCsv(std::string(PW_REFERENCE) + "/plates_solid_and_point_supports.csv")) {
        if (row.at("id").rfind("S-ptC", 0) != 0 || row.at("provenance").rfind("COMPUTED", 0) != 0)
            continue;
        const std::string params = row.at("params");
        const int points = std::stoi(params);
        const double nu = std::stod(params.substr(params.find("nu=") + 3));
        const Dips found = dips(points, params.find("uniform") != std::string::npos, nu);
        const double value = params.find("mid-edge") != std::string::npos ? found.midEdge : found.centre;
        const double expected = std::stod(row.at("recomputed"));
        std::printf("%s: %.6f, %+.2f %%\n", row.at("id").c_str(), value, 100 * (value / expected - 1));
        worst = std::max(worst, std::abs(value / expected - 1));
        // 1 %: what the shear layer at the free edge and the point force leave on this mesh.
        EXPECT_NEAR(value, expected, 0.01 * expected) << params;
        ++compared;
    }
    std::printf("worst of %d: %.2f %%\n", compared, 100 * worst);
    EXPECT_EQ(compared, 23);
}
