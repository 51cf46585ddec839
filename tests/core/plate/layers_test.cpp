#include "core/plate/layers.h"

#include <cmath>
#include <Eigen/Dense>
#include <gtest/gtest.h>
#include <random>

using namespace pw::plate;

namespace {

constexpr YieldingSteel kSteel{200000, 0.3, 250};

double vonMises(const Eigen::Vector3d& s) {
    return std::sqrt(s(0) * s(0) - s(0) * s(1) + s(1) * s(1) + 3 * s(2) * s(2));
}

LayerStress unstressed() {
    LayerStress layers;
    layers.fill(Eigen::Vector3d::Zero());
    return layers;
}

} // namespace

TEST(Layers, StressNeverLeavesTheYieldEllipse) {
    std::mt19937 random(7); // fixed seed
    std::uniform_real_distribution<double> strain(-0.02, 0.02);
    for (int i = 0; i < 2000; ++i) {
        const StressUpdate u =
            updateStress(kSteel, Eigen::Vector3d::Zero(), {strain(random), strain(random), strain(random)});
        EXPECT_LE(vonMises(u.stress), kSteel.yield * (1 + 1e-9));
        if (u.yielding) {
            EXPECT_NEAR(vonMises(u.stress), kSteel.yield, kSteel.yield * 1e-9);
        }
    }
}

TEST(Layers, TangentIsTheDerivativeOfTheStress) {
    std::mt19937 random(11); // fixed seed
    std::uniform_real_distribution<double> strain(-0.004, 0.004);
    for (int i = 0; i < 200; ++i) {
        const Eigen::Vector3d e(strain(random), strain(random), strain(random));
        const StressUpdate u = updateStress(kSteel, Eigen::Vector3d::Zero(), e);
        Eigen::Matrix3d numeric;
        const double h = 1e-8;
        for (int k = 0; k < 3; ++k) {
            const Eigen::Vector3d step = h * Eigen::Vector3d::Unit(k);
            numeric.col(k) = (updateStress(kSteel, Eigen::Vector3d::Zero(), e + step).stress -
                              updateStress(kSteel, Eigen::Vector3d::Zero(), e - step).stress) /
                             (2 * h);
        }
        EXPECT_LT((u.tangent - numeric).norm(), 1e-4 * kSteel.E) << e.transpose();
    }
}

TEST(Layers, FullyPlasticMomentIsYieldTimesQuarterThicknessSquared) {
    // Cylindrical bending (ky = 0) ends at (2 / sqrt 3) M0, M0 = Fy t^2 / 4 (von Mises, plane strain across).
    const double t = 10, m0 = kSteel.yield * t * t / 4;
    LayerStress after;
    const SectionUpdate u = updateSection(kSteel, t, unstressed(), {2.0, 0, 0}, after);
    EXPECT_NEAR(u.moments(0), 2 / std::sqrt(3.0) * m0, 1e-3 * m0);
    // Both ways alike: the corner of the ellipse at M0.
    const SectionUpdate both = updateSection(kSteel, t, unstressed(), {2.0, 2.0, 0}, after);
    EXPECT_NEAR(both.moments(0), m0, 1e-6 * m0);
}

TEST(Layers, ShapeFactorOfASolidSectionIsOnePointFive) {
    // PL-Z in tests/reference/plastic_limit_loads.csv (AISC): plastic over elastic section modulus is 1.5.
    const double t = 8;
    LayerStress after;
    const double plastic = updateSection(kSteel, t, unstressed(), {5.0, 5.0, 0}, after).moments(0);
    const double firstYield = kSteel.yield * t * t / 6; // elastic, on the face
    EXPECT_NEAR(plastic / firstYield, 1.5, 1e-6);
}

TEST(Layers, UnloadingIsElastic) {
    const double t = 6;
    LayerStress loaded, unloaded;
    const Eigen::Vector3d bend(2e-3, 1e-3, 5e-4);
    const SectionUpdate first = updateSection(kSteel, t, unstressed(), bend, loaded);
    const Eigen::Vector3d back(-1e-5, -1e-5, 0);
    const SectionUpdate second = updateSection(kSteel, t, loaded, back, unloaded);
    const double d = kSteel.E * t * t * t / (12 * (1 - kSteel.nu * kSteel.nu));
    EXPECT_FALSE(second.yielding);
    // Gauss points integrate z^2 exactly.
    EXPECT_NEAR(second.moments(0) - first.moments(0), d * (1 + kSteel.nu) * -1e-5, 1e-9 * d);
}
