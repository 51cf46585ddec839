#include "geometry/outline/place.h"

#include "tests/support/plates.h"

#include <gtest/gtest.h>
#include <numbers>

namespace pw::outline {
namespace {

TEST(Place, APlacedPlateIsTheSamePlateElsewhere) {
    for (const testing::KnownPlate& plate : testing::knownPlates()) {
        SCOPED_TRACE(plate.name);
        const Place place{{120, -35}, 0.7};
        const shape::Region moved = placed(plate.region, place);
        EXPECT_NEAR(area(moved), plate.area, 1e-6 * plate.area);
        ASSERT_EQ(moved.holes.size(), plate.region.holes.size());
        // Any corner of it: turned about the origin, then moved.
        const shape::Point before = plate.region.rim.vertices[0].at, after = moved.rim.vertices[0].at;
        EXPECT_NEAR(after.x, 120 + before.x * std::cos(0.7) - before.y * std::sin(0.7), 1e-9);
        EXPECT_NEAR(after.y, -35 + before.x * std::sin(0.7) + before.y * std::cos(0.7), 1e-9);
    }
}

TEST(SetOut, PlatesKeepTheirGapFromEachOtherAndFromTheEdges) {
    std::vector<shape::Region> plates;
    for (const testing::KnownPlate& plate : testing::knownPlates())
        plates.push_back(plate.region);
    constexpr double kWide = 900, kHigh = 1400, kGap = 7;
    const auto places = setOut(plates, kWide, kHigh, kGap);
    ASSERT_TRUE(places) << toText(places.problem());
    std::vector<shape::Region> laid;
    for (std::size_t i = 0; i < plates.size(); ++i)
        laid.push_back(placed(plates[i], (*places)[i]));
    for (std::size_t i = 0; i < laid.size(); ++i) {
        const shape::Box box = bounds(laid[i].rim);
        EXPECT_GE(box.low.x, kGap - 1e-9);
        EXPECT_GE(box.low.y, kGap - 1e-9);
        EXPECT_LE(box.high.x, kWide - kGap + 1e-9);
        EXPECT_LE(box.high.y, kHigh - kGap + 1e-9);
        for (std::size_t k = i + 1; k < laid.size(); ++k)
            EXPECT_GE(clearance(laid[i].rim, laid[k].rim), kGap - 1e-9) << i << " and " << k;
    }
}

TEST(SetOut, ALongPlateIsLaidDown) {
    shape::Region tall;
    tall.rim = shape::rectangleLoop(20, 100);
    const auto places = setOut({tall}, 130, 40, 5);
    ASSERT_TRUE(places);
    EXPECT_NEAR((*places)[0].turn, std::numbers::pi / 2, 1e-12);
}

TEST(SetOut, WhatHasNoRoomIsNamed) {
    shape::Region disc;
    disc.rim = shape::circleLoop({}, 50);
    // 100 and a gap of 5 on both sides: 110 is just enough, 109.9 is not.
    EXPECT_TRUE(setOut({disc}, 110, 110, 5));
    EXPECT_FALSE(setOut({disc}, 109.9, 110, 5));
    const auto two = setOut({disc, disc}, 214, 110, 5);
    ASSERT_FALSE(two); // two of them take 100 + 100 + 3 x 5 = 215
    EXPECT_NE(two.problem().message.find("plate 2"), std::string::npos);
    EXPECT_TRUE(setOut({disc, disc}, 215, 110, 5));
}

} // namespace
} // namespace pw::outline
