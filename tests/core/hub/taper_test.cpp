#include "core/hub/taper.h"

#include "core/hub/press_fit.h"
#include "tests/support/chance.h"
#include "tests/support/csv.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw::hub;

namespace {

const Length kMean = Length::fromMm(60), kLong = Length::fromMm(70);
const Stress kPressure = Stress::fromMpa(40);

Angle slope(double tangent) {
    return Angle::fromRadian(std::atan(tangent));
}

// tests/reference/press_fits.csv, PF-taper: 1:10 on the diameter, mu 0.12, release over press.
TEST(Taper, ReleasesEasierThanItWasPressedByTheTextbooksRatio) {
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/press_fits.csv")) {
        if (row.at("id") != "PF-taper")
            continue;
        const Force off = releaseForce(kMean, kLong, kPressure, 0.12, slope(0.05)),
                    on = releaseForce(kMean, kLong, kPressure, 0.12, slope(-0.05));
        EXPECT_NEAR(off / on, std::stod(row.at("recomputed")), 1e-7); // printed to seven figures
        ++rows;
    }
    EXPECT_EQ(rows, 1);
}

/// The face cut into rings, each with its slant area, its push square to the face and its friction along it.
double summedOverRings(double mean, double length, double p, double mu, double b) {
    constexpr int kRings = 1000;
    double force = 0;
    for (int i = 0; i < kRings; ++i) {
        const double along = ((i + 0.5) / kRings - 0.5) * length, diameter = mean + 2 * along * std::tan(b);
        const double area = std::numbers::pi * diameter * (length / kRings) / std::cos(b);
        const double holds = mu * p * area * std::cos(b), pushes = p * area * std::sin(b);
        force += holds - pushes;
    }
    return force;
}

TEST(Taper, ForceIsTheSumOverItsSlantFace) {
    pw::testing::Chance chance(20240614);
    for (int i = 0; i < 100; ++i) {
        const double b = chance.between(0.001, 0.3), mu = std::tan(b) + chance.between(0.01, 0.3),
                     mean = chance.between(20, 120),
                     length = chance.between(10, 0.9 * mean / std::tan(b) / 2), p = chance.between(1, 100);
        const double summed = summedOverRings(mean, length, p, mu, b);
        const Force ours = releaseForce(Length::fromMm(mean), Length::fromMm(length), Stress::fromMpa(p), mu,
                                        Angle::fromRadian(b));
        EXPECT_NEAR(ours.newton(), summed, 1e-9 * p * mean * length) << i;
    }
}

TEST(Taper, WithoutTaperIsAStraightFit) {
    const Force straight = slipForce(kMean, kLong, kPressure, 0.2);
    EXPECT_DOUBLE_EQ(releaseForce(kMean, kLong, kPressure, 0.2, Angle()).newton(), straight.newton());
    // And comes to it in proportion to the slope: what is missing is tan b over mu.
    for (const double tangent : {0.01, 0.001, 0.0001}) {
        const Force taper = releaseForce(kMean, kLong, kPressure, 0.2, slope(tangent));
        EXPECT_NEAR((1 - taper / straight) / tangent, 1 / 0.2, 1e-8) << tangent;
    }
}

TEST(Taper, SteeperThanFrictionLetsGoByItself) {
    EXPECT_FALSE(letsGoByItself(0.1, slope(0.0999)));
    EXPECT_TRUE(letsGoByItself(0.1, slope(0.1001)));
    EXPECT_EQ(releaseForce(kMean, kLong, kPressure, 0.1, slope(0.2)), Force());
    EXPECT_GT(releaseForce(kMean, kLong, kPressure, 0.1, slope(0.0999)), Force());
}

TEST(Taper, PushedUpByItsLengthIsTighterByItsTaper) {
    // 1:10 on the diameter: 1 mm up is 0.1 mm tighter, by what "1:10" means.
    EXPECT_NEAR(interferenceFromDraw(Length::fromMm(1), slope(0.05)).mm(), 0.1, 1e-12);
    EXPECT_NEAR(interferenceFromDraw(Length::fromMm(3), slope(0.05)).mm(), 0.3, 1e-12);
}

} // namespace
