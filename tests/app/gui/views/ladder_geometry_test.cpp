#include "app/gui/views/ladder_geometry.h"

#include <gtest/gtest.h>

namespace pw::gui {
namespace {

engine::Ladder ladderOf(std::initializer_list<double> mm) {
    engine::Ladder ladder;
    for (const double t : mm) {
        engine::Rung rung;
        rung.thickness = units::Length::fromMm(t);
        rung.grade = t >= 10 ? verdict::Grade::Holds : verdict::Grade::Sets;
        ladder.rungs.push_back(rung);
    }
    return ladder;
}

TEST(LadderHeight, puts_wanted_on_the_line_and_each_doubling_one_step_further) {
    EXPECT_DOUBLE_EQ(ladderHeight(1), 0);
    EXPECT_DOUBLE_EQ(ladderHeight(2), 1 / kMostDoublings);
    EXPECT_DOUBLE_EQ(ladderHeight(0.5), -1 / kMostDoublings);
    EXPECT_DOUBLE_EQ(ladderHeight(1000), 1);
    EXPECT_DOUBLE_EQ(ladderHeight(0), -1);
    EXPECT_DOUBLE_EQ(ladderHeight(-3), -1);
}

TEST(LadderHeight, lets_only_what_holds_stand_on_the_line) {
    engine::Rung rung;
    rung.grade = verdict::Grade::Thin; // by a member that has no margin of its own
    rung.marginOverWanted = 3;
    EXPECT_DOUBLE_EQ(*markHeight(rung), 0);
    rung.marginOverWanted = 0.5;
    EXPECT_LT(*markHeight(rung), 0);
    rung.grade = verdict::Grade::Holds;
    rung.marginOverWanted = 3;
    EXPECT_GT(*markHeight(rung), 0);
    rung.marginOverWanted.reset();
    EXPECT_FALSE(markHeight(rung));
}

TEST(LadderLayout, shows_all_rungs_where_they_fit) {
    const auto layout = LadderLayout::fit(12, 3, 50, 50 + 12 * 40, 35, 60);
    EXPECT_EQ(layout.first, 0);
    EXPECT_EQ(layout.count, 12);
    EXPECT_DOUBLE_EQ(layout.pitch, 40);
    EXPECT_DOUBLE_EQ(layout.middleOf(0), 70);
    for (int i = 0; i < 12; ++i)
        EXPECT_EQ(layout.at(layout.middleOf(i)), i);
    EXPECT_EQ(layout.at(49), -1);
    EXPECT_EQ(layout.at(50 + 12 * 40 + 1), -1);
}

TEST(LadderLayout, shows_those_around_the_one_that_matters_where_they_do_not) {
    const auto layout = LadderLayout::fit(12, 6, 0, 7 * 35 + 10, 35, 60);
    EXPECT_EQ(layout.count, 7);
    EXPECT_EQ(layout.first, 3);
    EXPECT_TRUE(layout.shows(6));
    EXPECT_EQ(layout.showing(0).first, 0);
    EXPECT_EQ(layout.showing(11).first, 5);
    EXPECT_EQ(layout.showing(6).first, 3); // in sight already: it stays
    EXPECT_EQ(layout.showing(99).first, 3);
}

TEST(LadderLayout, of_nothing_or_no_room_is_nothing_to_pick) {
    EXPECT_EQ(LadderLayout::fit(0, 0, 0, 300, 35, 60).at(10), -1);
    const auto narrow = LadderLayout::fit(12, 4, 0, 10, 35, 60);
    EXPECT_EQ(narrow.count, 1);
    EXPECT_TRUE(narrow.shows(4));
}

TEST(LadderPlaces, find_the_rung_of_a_thickness_or_where_it_lies_between) {
    const auto ladder = ladderOf({6, 8, 10, 12});
    EXPECT_EQ(rungOf(ladder, units::Length::fromMm(10)), 2);
    EXPECT_EQ(rungOf(ladder, units::Length::fromMm(9)), -1);
    EXPECT_DOUBLE_EQ(placeAmong(ladder, units::Length::fromMm(9)), 1.5);
    EXPECT_DOUBLE_EQ(placeAmong(ladder, units::Length::fromMm(3)), 0);
    EXPECT_DOUBLE_EQ(placeAmong(ladder, units::Length::fromMm(99)), 3);
    EXPECT_EQ(focusOf(ladder, units::Length::fromMm(8)), 1);
    EXPECT_EQ(focusOf(ladder, {}), 2); // the thinnest that holds
}

} // namespace
} // namespace pw::gui
