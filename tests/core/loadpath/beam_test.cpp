#include "core/loadpath/beam.h"

#include <cmath>
#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
using pw::units::Force;
using pw::units::Length;
using pw::units::Stress;

Beam bar(double span, double width, double thickness, double hole = 0) {
    return {Length::fromMm(span), Length::fromMm(width), Length::fromMm(thickness), Length::fromMm(hole)};
}

/// Roark 7th ed. Table 8.1 case 1e, W in the middle: M = W l/4, y = W l^3/(48 E I); Shigley 9th ed. Table A-9
/// case 5 says the same. By hand for 10 kN on 200 mm of 50 x 20: 500 N.m; 6 M/(b h^2) = 150 MPa; I = 33333
/// mm4; 10000 x 200^3 / (48 x 210000 x 33333) = 0.2381 mm.
TEST(Beam, MeetsTheHandbookInTheMiddleOfTheSpan) {
    const Force load = Force::fromN(10000);
    EXPECT_NEAR(midMoment(bar(200, 50, 20), load).newtonM(), 500, 1e-9);
    EXPECT_NEAR(netStress(bar(200, 50, 20), load).mpa(), 150, 1e-9);
    EXPECT_NEAR(midDeflection(bar(200, 50, 20), load, Stress::fromMpa(210000)).mm(), 0.23810, 1e-5);
}

TEST(Beam, AHoleTakesItsWidthOutOfTheSectionAndNothingElse) {
    const Force load = Force::fromN(10000);
    EXPECT_NEAR(netStress(bar(200, 50, 20, 22), load).mpa(), 6 * 500000.0 / (28 * 400), 1e-9);
    EXPECT_NEAR(netStress(bar(200, 72, 20, 22), load).mpa(), netStress(bar(200, 50, 20), load).mpa(), 1e-9);
    EXPECT_FALSE(hasSection(bar(200, 50, 20, 50)));
    EXPECT_FALSE(hasSection(bar(200, 50, 0)));
    EXPECT_TRUE(std::isinf(netStress(bar(200, 50, 20, 50), load).mpa()));
}

TEST(Beam, TwiceAsThickCarriesFourTimesAndBendsAnEighth) {
    const Force load = Force::fromN(1000);
    const Stress E = Stress::fromMpa(200000);
    EXPECT_NEAR(netStress(bar(200, 50, 10), load) / netStress(bar(200, 50, 20), load), 4, 1e-12);
    EXPECT_NEAR(midDeflection(bar(200, 50, 10), load, E) / midDeflection(bar(200, 50, 20), load, E), 8,
                1e-12);
}

} // namespace
