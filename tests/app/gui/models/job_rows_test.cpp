#include "app/gui/models/job_rows.h"

#include "app/gui/models/part_lists.h"
#include "core/job/station_places.h"
#include "core/jobfile/read.h"
#include "geometry/outline/build.h"
#include "tests/app/gui/support/fake_engine.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::gui {
namespace {

using jobfile::Tree;
using testing::eightPinJob;
using units::System;

// Places are written to 0.01 mm.
constexpr double kWritten = 0.0051;
// Areas of shapes of 100 mm whose corners are that far off.
constexpr double kWrittenArea = 100 * 4 * kWritten;

Tree square() {
    Tree tree = eightPinJob();
    tree.set("plate.outline", Tree::object());
    tree.set("plate.outline.shape", "polygon");
    const double corners[4][2] = {{-90, -90}, {90, -90}, {90, 90}, {-90, 90}};
    for (std::size_t i = 0; i < 4; ++i)
        tree.set(rowPath("plate.outline.points", i),
                 typedPlace({corners[i][0], corners[i][1]}, System::Metric));
    return tree;
}

job::Job jobOf(const Tree& tree) {
    const auto reading = jobfile::readJob(tree);
    EXPECT_TRUE(reading.problems.empty())
        << reading.problems.front().field << reading.problems.front().message;
    EXPECT_TRUE(reading.unknownKeys.empty());
    return reading.job;
}

double areaOf(const Tree& tree) {
    return shape::signedArea(shape::Loop{jobOf(tree).plate.outline->points});
}

TEST(TypedMm, reads_back_on_both_sides_of_nought) {
    for (const double mm : {-12.5, 0.0, 37.25, -0.001}) {
        Tree tree = eightPinJob();
        tree.set("plate.holes[0].at", typedPlace({mm, 10}, System::Metric));
        tree.set("plate.holes[0].diameter", "8 mm");
        EXPECT_NEAR(jobOf(tree).plate.holes.at(0).at.x.mm(), mm, kWritten);
    }
    for (const int sixteenths : {-37, -16, 0, 5}) {
        Tree tree = eightPinJob();
        tree.set("plate.holes[0].at", typedPlace({sixteenths * 25.4 / 16, 10}, System::Inch));
        tree.set("plate.holes[0].diameter", "8 mm");
        EXPECT_NEAR(jobOf(tree).plate.holes.at(0).at.x.inch() * 16, sixteenths, 1e-9);
    }
}

TEST(UnderstoodRows, leave_out_those_the_reader_leaves_out) {
    Tree tree = eightPinJob();
    tree.set("plate.holes[0].diameter", "8 mm"); // nowhere
    tree.set("plate.holes[1].at", typedPlace({20, 30}, System::Metric));
    tree.set("plate.holes[2].at", typedPlace({-20, 30}, System::Metric));
    const auto reading = jobfile::readJob(tree);
    const auto rows = understoodRows(tree, reading.problems, "plate.holes", {"at"});
    ASSERT_EQ(rows.size(), reading.job.plate.holes.size());
    EXPECT_EQ(rows, (std::vector<std::size_t>{1, 2}));
}

TEST(Corners, keep_the_area_when_one_is_added_on_a_side) {
    Tree tree = square();
    addCorner(tree, jobOf(tree).plate.outline->points, 1, {95, 20}, System::Metric);
    const auto corners = jobOf(tree).plate.outline->points;
    ASSERT_EQ(corners.size(), 5u);
    EXPECT_EQ(corners[2].at, (shape::Point{90, 20}));
    EXPECT_NEAR(areaOf(tree), 180.0 * 180, kWrittenArea);
    EXPECT_TRUE(removeCorner(tree, 2));
    EXPECT_EQ(jobOf(tree).plate.outline->points.size(), 4u);
}

TEST(Corners, added_on_an_arc_leave_it_the_same_arc) {
    Tree tree = square();
    // A half circle on the right-hand side: bulge 1.
    tree.set("plate.outline.points[1]", Tree(Tree::List{Tree("90 mm"), Tree("-90 mm"), Tree(1.0)}));
    const double whole = 180.0 * 180 + std::numbers::pi * 90 * 90 / 2;
    EXPECT_NEAR(areaOf(tree), whole, kWrittenArea);
    addCorner(tree, jobOf(tree).plate.outline->points, 1, {90 + 80, 40}, System::Metric);
    ASSERT_EQ(jobOf(tree).plate.outline->points.size(), 5u);
    EXPECT_NEAR(areaOf(tree), whole, kWrittenArea);
    for (const std::size_t side : {std::size_t(1), std::size_t(2)})
        EXPECT_NEAR((shape::Loop{jobOf(tree).plate.outline->points}.side(side).circle().radius), 90,
                    2 * kWritten);
}

TEST(Corners, of_a_triangle_cannot_be_taken_away) {
    Tree tree = square();
    EXPECT_TRUE(removeCorner(tree, 0));
    EXPECT_FALSE(removeCorner(tree, 0));
}

TEST(Corners, rounded_off_lose_what_a_quarter_circle_leaves_of_its_square) {
    Tree tree = square();
    ASSERT_TRUE(roundCorner(tree, jobOf(tree).plate.outline->points, 1, 20, System::Metric));
    EXPECT_NEAR(areaOf(tree), 180.0 * 180 - (1 - std::numbers::pi / 4) * 20 * 20, kWrittenArea);
    Tree other = square();
    EXPECT_FALSE(roundCorner(other, jobOf(other).plate.outline->points, 1, 200, System::Metric));
}

TEST(Corners, keep_the_arc_after_them_when_they_are_moved) {
    Tree tree = square();
    tree.set("plate.outline.points[1]", Tree::object());
    tree.set("plate.outline.points[1].at", typedPlace({90, -90}, System::Metric));
    tree.set("plate.outline.points[1].bulge", 0.5);
    moveCorner(tree, 1, {80, -70}, System::Metric);
    const auto corner = jobOf(tree).plate.outline->points[1];
    EXPECT_EQ(corner.at, (shape::Point{80, -70}));
    EXPECT_DOUBLE_EQ(corner.bulge, 0.5);
}

TEST(SwitchOutline, makes_a_plate_about_as_large_and_keeps_what_was_typed) {
    Tree tree = eightPinJob();
    switchOutline(tree, jobOf(tree), "polygon", System::Metric);
    const shape::Box box = shape::bounds(shape::Loop{jobOf(tree).plate.outline->points});
    EXPECT_NEAR(box.width(), 180, 2 * kWritten); // eight-sided, over flats
    EXPECT_TRUE(outline::buildRegion(jobOf(tree)).ok());
    switchOutline(tree, jobOf(tree), "rectangle", System::Metric);
    EXPECT_NEAR(jobOf(tree).plate.outline->length->mm(), 180, 2 * kWritten);
    switchOutline(tree, jobOf(tree), "disc", System::Metric);
    EXPECT_DOUBLE_EQ(jobOf(tree).plate.outline->diameter->mm(), 180);
}

TEST(StationLists, have_one_entry_for_each_or_none) {
    Tree tree = eightPinJob();
    setLoaded(tree, 8, 2, false);
    setShare(tree, 8, 5, 0.5);
    auto job = jobOf(tree);
    ASSERT_EQ(job.stations.loaded.size(), 8u);
    EXPECT_FALSE(job.stations.loaded[2]);
    EXPECT_DOUBLE_EQ(job.load.share.at(5), 0.5);
    tree.set("stations.count", 6);
    resizeStationLists(tree, 6);
    job = jobOf(tree);
    EXPECT_EQ(job.stations.loaded.size(), 6u);
    EXPECT_EQ(job.load.share.size(), 6u);
    setLoaded(tree, 6, 2, true);
    setShare(tree, 6, 5, 1);
    EXPECT_FALSE(tree.at("stations.loaded"));
    EXPECT_FALSE(tree.at("load"));
}

TEST(StationPlaces, stay_where_they_are_when_they_are_listed_and_put_back_on_their_circle) {
    Tree tree = eightPinJob();
    tree.set("stations.start", "17 deg");
    const auto before = job::stationCentres(jobOf(tree).stations);
    placeEachByItself(tree, jobOf(tree), System::Metric);
    const auto listed = job::stationCentres(jobOf(tree).stations);
    ASSERT_EQ(listed.size(), before.size());
    for (std::size_t i = 0; i < before.size(); ++i)
        EXPECT_LT(shape::distance(listed[i], before[i]), 2 * kWritten);
    placeEvenly(tree, jobOf(tree), System::Metric);
    const auto job = jobOf(tree);
    EXPECT_NEAR(job.stations.circle->mm(), 130, 2 * kWritten);
    EXPECT_NEAR(job.stations.start->degree(), 17, 0.01);
    EXPECT_EQ(job.stations.count, 8);
}

TEST(StationPlaces, take_their_own_entries_with_them_when_one_goes) {
    Tree tree = eightPinJob();
    placeEachByItself(tree, jobOf(tree), System::Metric);
    setLoaded(tree, 8, 3, false);
    EXPECT_TRUE(removeStation(tree, 1));
    const auto job = jobOf(tree);
    EXPECT_EQ(job.stations.at.size(), 7u);
    ASSERT_EQ(job.stations.loaded.size(), 7u);
    EXPECT_FALSE(job.stations.loaded[2]);
}

TEST(PartLists, add_only_what_the_reader_takes_and_the_plate_bears) {
    for (const System system : {System::Metric, System::Inch}) {
        for (const char* group : {"holes", "stations", "steel"}) {
            Tree tree = square();
            for (const auto& list : partLists(tree, group, system))
                for (const auto& action : list.actions) {
                    Tree after = tree;
                    action.make(after);
                    EXPECT_NE(after, tree) << action.words.toStdString();
                    EXPECT_FALSE(action.spoken.isEmpty());
                    const auto job = jobOf(after);
                    for (const auto& problem : outline::buildRegion(job).problems)
                        ADD_FAILURE() << action.words.toStdString() << ": " << problem.message;
                }
        }
    }
}

TEST(PartLists, have_fields_that_all_change_the_job) {
    Tree tree = square();
    tree.set("plate.holes[0].at", typedPlace({0, 40}, System::Metric));
    tree.set("plate.holes[0].diameter", "8 mm");
    tree.set("keep_clear[0].at", typedPlace({120, 0}, System::Metric));
    tree.set("keep_clear[0].diameter", "20 mm");
    placeEachByItself(tree, jobOf(tree), System::Metric);
    std::size_t fields = 0;
    for (const char* group : {"holes", "stations", "steel"})
        for (const auto& list : partLists(tree, group, System::Metric))
            for (const auto& row : list.rows) {
                EXPECT_FALSE(row.words.isEmpty());
                for (const auto& field : row.fields) {
                    Tree value = field.kind == FieldKind::Length   ? Tree("11 mm")
                                 : field.kind == FieldKind::Number ? Tree(0.5)
                                 : field.kind == FieldKind::Flag   ? Tree(false)
                                 : field.kind == FieldKind::Choice
                                     ? Tree(field.choices.back().first.toStdString())
                                     : Tree("stud");
                    EXPECT_NE(jobOf(field.with(tree, value)), jobOf(tree)) << field.path;
                    ++fields;
                }
            }
    EXPECT_GT(fields, 4u * 2 + 8 * 4 + 4 + 4 - 1);
}

} // namespace
} // namespace pw::gui
