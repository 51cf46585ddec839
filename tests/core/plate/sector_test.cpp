#include "core/plate/mesh.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using std::numbers::pi;

namespace {

double angleFrom(double line, shape::Point p) {
    const double a = std::fmod(std::atan2(p.y, p.x) - line, 2 * pi);
    return a < -1e-9 ? a + 2 * pi : a;
}

} // namespace

TEST(Sector, TheWholePlateFoldsNothing) {
    const plate::Sector whole;
    EXPECT_NEAR(whole.opening(), 2 * pi, 1e-15);
    EXPECT_EQ(whole.fold({-3, -4}), (shape::Point{-3, -4}));
}

TEST(Sector, FoldingLandsInTheSectorAndKeepsTheRadius) {
    for (const int count : {2, 4, 6, 12, 16})
        for (const double line : {0.0, 0.3, -2.0}) {
            const plate::Sector sector{count, line};
            for (int k = 0; k < 100; ++k) {
                const shape::Point p = shape::polar(10 + k, 0.37 * k);
                const shape::Point q = sector.fold(p);
                EXPECT_NEAR(shape::norm(q), shape::norm(p), 1e-10);
                EXPECT_LE(angleFrom(line, q), sector.opening() + 1e-9);
                EXPECT_EQ(sector.fold(q), q) << "a point already in the sector stays as it is";
            }
        }
}

TEST(Sector, MirrorImagesFoldToOnePoint) {
    const plate::Sector sector{12, 0.3};
    const shape::Point p = shape::polar(50, 0.3 + 0.2);
    for (int turn = 0; turn < 6; ++turn)
        for (const double sign : {1.0, -1.0}) {
            const shape::Point image = shape::polar(50, 0.3 + turn * pi / 3 + sign * 0.2);
            EXPECT_NEAR(shape::distance(sector.fold(image), p), 0, 1e-12);
        }
}
