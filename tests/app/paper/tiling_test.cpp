#include "app/paper/tiling.h"

#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace pw;
using namespace pw::paper;

namespace {

constexpr double kRounding = 1e-6; ///< mm

} // namespace

TEST(Tiling, SheetsHaveTheSizesOfTheirStandards) {
    // ISO 216: A4 is 210 x 297 mm. ANSI/ASME Y14.1: size A is 8.5 x 11 in.
    EXPECT_EQ(sheetOf(PaperSize::A4).width, 210);
    EXPECT_EQ(sheetOf(PaperSize::A4).height, 297);
    EXPECT_NEAR(sheetOf(PaperSize::Letter).width, 215.9, kRounding);
    EXPECT_NEAR(sheetOf(PaperSize::Letter).height, 279.4, kRounding);
}

TEST(Tiling, WhatFitsIsOnOneSheetInTheMiddle) {
    const auto starts = windowStarts({-40, 60}, 190, 10, {});
    ASSERT_EQ(starts.size(), 1u);
    EXPECT_NEAR(starts[0] + 190.0 / 2, 10, kRounding);
}

TEST(Tiling, AsManySheetsAsTheOverlapLeaves) {
    // n windows of 190 that overlap by 10 show 180 n + 10: by hand.
    EXPECT_EQ(windowStarts({0, 190}, 190, 10, {}).size(), 1u);
    EXPECT_EQ(windowStarts({0, 190.1}, 190, 10, {}).size(), 2u);
    EXPECT_EQ(windowStarts({0, 370}, 190, 10, {}).size(), 2u);
    EXPECT_EQ(windowStarts({0, 370.1}, 190, 10, {}).size(), 3u);
    EXPECT_EQ(windowStarts({0, 600}, 190, 10, {}).size(), 4u);
}

TEST(Tiling, SheetsCoverEverythingAndOverlapEnoughWhereverTheHolesAre) {
    std::mt19937 chance(20240611); // NOLINT: the same plates every time
    std::uniform_real_distribution<double> unit(0, 1);
    for (int round = 0; round < 500; ++round) {
        const Span content{-1000 * unit(chance), 1000 * unit(chance)};
        std::vector<Span> holes;
        for (int i = static_cast<int>(unit(chance) * 20); i > 0; --i) {
            const double at = content.low + unit(chance) * (content.high - content.low);
            const double half = 2 + 30 * unit(chance);
            holes.push_back({at - half, at + half});
        }
        const auto starts = windowStarts(content, 190, 10, holes);
        SCOPED_TRACE(round);
        EXPECT_LE(starts.front(), content.low + kRounding);
        EXPECT_GE(starts.back() + 190, content.high - kRounding);
        for (std::size_t i = 1; i < starts.size(); ++i) {
            EXPECT_GT(starts[i], starts[i - 1]);
            EXPECT_LE(starts[i], starts[i - 1] + 180 + kRounding);
        }
    }
}

TEST(Tiling, AJoinGoesBesideAHoleNotThroughIt) {
    // Two sheets for 300: the join may be from 110 to 180. A hole takes 150 to 190.
    const auto starts = windowStarts({0, 300}, 190, 10, {{150, 190}});
    ASSERT_EQ(starts.size(), 2u);
    EXPECT_LT(starts[1], 150);
}

TEST(Tiling, AJoinNeverTakesACentreMarkEvenWhereASheetMoreIsNeeded) {
    // Exactly two windows long: the join could only be at 180, where a hole has its middle.
    const auto starts = windowStarts({0, 370}, 190, 10, {{170, 190}});
    ASSERT_EQ(starts.size(), 3u);
    for (std::size_t i = 1; i < starts.size(); ++i)
        EXPECT_GT(std::abs(starts[i] - 180), 2) << starts[i];
}

TEST(Tiling, APlaceInTheOverlapIsTheSamePlaceOnBothSheets) {
    const Tiling tiling = tile({{-304, -304}, {304, 304}}, {}, PaperSize::A4);
    EXPECT_EQ(tiling.columns(), 4);
    EXPECT_EQ(tiling.rows(), 3); // windows of 190 x 220: 180 n + 10 >= 608, 210 n + 10 >= 608
    EXPECT_EQ(tiling.pages(), 12);
    EXPECT_EQ(tiling.number(2, 3), 12);
    const shape::Point place{tiling.left[1] + 4, tiling.top[1] - 6};
    const shape::Point here = tiling.onPage(0, 0, place), there = tiling.onPage(1, 1, place);
    EXPECT_NEAR(here.x - there.x, tiling.left[1] - tiling.left[0], kRounding);
    EXPECT_NEAR(here.y - there.y, tiling.top[0] - tiling.top[1], kRounding);
    EXPECT_LT(here.x, tiling.window.high.x);
    EXPECT_LT(here.y, tiling.window.high.y);
    EXPECT_NEAR(there.x, tiling.window.low.x + 4, kRounding);
    EXPECT_NEAR(there.y, tiling.window.low.y + 6, kRounding);
}

TEST(Tiling, EveryPlaceIsOnOneSheetsOwn) {
    const Tiling tiling = tile({{-304, -150}, {304, 500}}, {}, PaperSize::Letter);
    for (double x = -303; x < 304; x += 7.3)
        for (double y = -149; y < 500; y += 7.3) {
            int owners = 0;
            for (int row = 0; row < tiling.rows(); ++row)
                for (int column = 0; column < tiling.columns(); ++column) {
                    const shape::Box own = tiling.own(row, column);
                    owners += x >= own.low.x && x < own.high.x && y >= own.low.y && y < own.high.y;
                }
            EXPECT_EQ(owners, 1) << x << ", " << y;
        }
}
