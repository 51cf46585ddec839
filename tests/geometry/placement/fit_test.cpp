#include "geometry/placement/fit.h"

#include "tests/geometry/placement/pieces.h"
#include "tests/support/sanitized.h"

#include <gtest/gtest.h>

#include <iostream>

namespace pw::placement {
namespace {

using testing::BruteForce;
using testing::Chance;

constexpr Spacing kSpacing{1.5, 2};

shape::Region disc(double radius, double bore = 10) {
    shape::Region plate{shape::circleLoop({}, radius), {}};
    plate.holes.push_back({shape::circleLoop({}, bore), shape::Part::Bore, 0});
    return plate;
}

Stock rectangle(double length, double width) {
    return {shape::rectangleLoop(length, width), {}};
}

Obstacle roundHole(double x, double y, double radius) {
    return {shape::circleLoop({x, y}, radius), true, 0};
}

constexpr int kPieces = testing::kSanitized ? 60 : 500;

// Each piece against a grid of places refined from its best: nothing that is put down overlaps, nothing
// that goes in with half a millimetre to spare is missed.
TEST(FitPlate, AgreesWithBruteForceOnRandomPieces) {
    Chance chance(20260711);
    int fitted = 0, tight = 0, reused = 0;
    for (int i = 0; i < kPieces; ++i) {
        const shape::Region plate = testing::randomPlate(chance);
        const Stock stock = testing::randomStock(chance, chance.between(60, 130));
        FitOptions options;
        options.thorough = i % 10 == 0;
        const FitAnswer answer = fitPlate(plate, stock, kSpacing, options);
        ASSERT_TRUE(answer.settled) << "piece " << i;
        if (answer.place && !answer.place->bore) {
            ++fitted;
            const double slack = BruteForce(plate, stock, kSpacing, 1).slack(answer.place->pose);
            // Runs of points a millimetre apart cut across an arc by less than this.
            ASSERT_GE(slack, -0.02) << "piece " << i << " overlaps";
        } else if (answer.place) {
            ++reused;
        } else {
            const bool isDisc = shape::asCircle(plate.rim).has_value();
            const double most = BruteForce(plate, stock, kSpacing).most(isDisc ? 6 : 14, 12, isDisc);
            tight += most > -2;
            ASSERT_LT(most, 0.5) << "piece " << i << " was missed";
            EXPECT_GT(answer.missing, 0) << "piece " << i;
        }
    }
    std::cout << fitted << " fit, " << reused << " on a hole of the piece, " << tight
              << " missed by under 2 mm\n";
    EXPECT_GT(fitted, kPieces / 4);
    EXPECT_LT(fitted, kPieces * 5 / 6);
    EXPECT_GT(tight, kPieces / 150);
}

TEST(FitPlate, ADiscIsPlacedExactly) {
    // 100 mm disc, 3.5 mm all round: 107 mm of piece, to the last thousandth.
    EXPECT_TRUE(fitPlate(disc(50), rectangle(200, 107), kSpacing).place);
    EXPECT_TRUE(fitPlate(disc(50), rectangle(107, 107), kSpacing).place);
    EXPECT_FALSE(fitPlate(disc(50), rectangle(200, 106.999), kSpacing).place);
    EXPECT_TRUE(fitPlate(disc(50), {shape::circleLoop({7, 9}, 53.5), {}}, kSpacing).place);
    EXPECT_FALSE(fitPlate(disc(50), {shape::circleLoop({7, 9}, 53.499), {}}, kSpacing).place);
    // The inscribed circle of a 3-4-5 triangle has the radius (a + b - c) / 2.
    const double scale = 53.5;
    const Stock corner{{{{{0, 0}}, {{4 * scale, 0}}, {{0, 3 * scale}}}}, {}};
    EXPECT_TRUE(fitPlate(disc(49.999), corner, kSpacing).place);
    EXPECT_FALSE(fitPlate(disc(50.001), corner, kSpacing).place);
}

TEST(FitPlate, ABarGoesInDiagonally) {
    const shape::Region bar{shape::rectangleLoop(200, 20), {}};
    // Longest along the diagonal of a square: (side - 2 clear) sqrt 2 = length + width.
    const double side = 220 / std::numbers::sqrt2 + 7;
    EXPECT_TRUE(fitPlate(bar, rectangle(side + 0.3, side + 0.3), kSpacing).place);
    const FitAnswer short1 = fitPlate(bar, rectangle(side - 0.1, side - 0.1), kSpacing);
    EXPECT_FALSE(short1.place);
    EXPECT_LT(short1.missing, 0.5);
}

TEST(FitPlate, SaysHowMuchIsMissingAndWhy) {
    const FitAnswer narrow = fitPlate(disc(50), rectangle(300, 103), kSpacing);
    EXPECT_EQ(narrow.shortOf, ShortOf::Size);
    EXPECT_NEAR(narrow.missing, 4, 0.05);

    Stock holed = rectangle(120, 120);
    holed.obstacles.push_back(roundHole(20, 0, 5));
    EXPECT_EQ(fitPlate(disc(50, 3), holed, kSpacing).shortOf, ShortOf::Holes);
    holed.obstacles[0].isHole = false;
    EXPECT_EQ(fitPlate(disc(50, 3), holed, kSpacing).shortOf, ShortOf::BadAreas);
}

TEST(FitPlate, AHoleUnderThePlateMustLieInOneOfItsHoles) {
    Stock stock = rectangle(110, 110); // 3 mm of play
    stock.obstacles.push_back(roundHole(0, 0, 8));
    EXPECT_TRUE(fitPlate(disc(50, 10), stock, kSpacing).place);
    EXPECT_FALSE(fitPlate(disc(50, 6), stock, kSpacing).place) << "the hole is larger than the bore";
    // Off to the side it can only be swallowed by an access hole, which needs the right turn.
    stock.obstacles = {roundHole(21, 21, 5)};
    EXPECT_FALSE(fitPlate(disc(50, 10), stock, kSpacing).place);
    shape::Region plate = disc(50, 10);
    plate.holes.push_back({shape::circleLoop({30, 0}, 9), shape::Part::Access, 0});
    const FitAnswer answer = fitPlate(plate, stock, kSpacing);
    ASSERT_TRUE(answer.place);
    const shape::Point hole = answer.place->pose.at + shape::rotated({30, 0}, answer.place->pose.turn);
    EXPECT_LE(shape::distance(hole, {21, 21}), 9 - 5 - kSpacing.kerf + 1e-6);
}

TEST(FitPlate, AHoleOfTheSizeOfTheBoreIsTheBore) {
    Stock stock = rectangle(130, 130);
    stock.obstacles.push_back(roundHole(4, -3, 10.5));
    const FitAnswer answer = fitPlate(disc(50, 10), stock, kSpacing);
    ASSERT_TRUE(answer.place);
    ASSERT_TRUE(answer.place->bore);
    EXPECT_NEAR(answer.place->boreDiameter, 21, 1e-9);
    EXPECT_NEAR(shape::distance(answer.place->pose.at, {4, -3}), 0, 1e-9);
    stock.obstacles[0] = roundHole(4, -3, 9);
    EXPECT_FALSE(fitPlate(disc(50, 10), stock, kSpacing).place)
        << "too small for the bore, too large to be cut away";
}

TEST(FitPlate, KeepsTheRemainderWhole) {
    // In the middle of a long strip a disc leaves two stubs; at its end one long one.
    const FitAnswer answer = fitPlate(disc(50), rectangle(400, 115), kSpacing);
    ASSERT_TRUE(answer.place);
    EXPECT_GT(std::abs(answer.place->pose.at.x), 145 - 1);
    EXPECT_NEAR(answer.place->waste + answer.place->usable + std::numbers::pi * 2500, 400 * 115, 1e-6);
}

TEST(FitSeveral, TwoDiscsLieApart) {
    const auto places = fitSeveral(disc(50), rectangle(215, 110), kSpacing, 5);
    ASSERT_EQ(places.size(), 2u);
    // Kerf of the one and kerf with margin of the other lie between them.
    EXPECT_GE(shape::distance(places[0].pose.at, places[1].pose.at), 100 + 1.5 + 3.5 - 1e-6);
}

} // namespace
} // namespace pw::placement
