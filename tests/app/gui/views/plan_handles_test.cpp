#include "app/gui/views/plan_handles.h"

#include "core/units/parse.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::gui {
namespace {

using units::Length;
using units::System;

// A figure that goes through a screen pixel and back keeps nine digits.
constexpr double kRoundTrip = 1e-9;

job::Job eightPins() {
    job::Job job;
    job.plate.outline.emplace();
    job.plate.outline->diameter = Length::fromMm(180);
    job.plate.bore = Length::fromMm(26);
    job.stations.count = 8;
    job.stations.circle = Length::fromMm(130);
    job.stations.accessHole = Length::fromMm(20);
    job.stations.retainer = Length::fromMm(30);
    return job;
}

job::Job withHole(double x, double y, double diameter) {
    auto job = eightPins();
    job::ExtraHole hole;
    hole.at = {Length::fromMm(x), Length::fromMm(y)};
    hole.diameter = Length::fromMm(diameter);
    job.plate.holes.push_back(hole);
    return job;
}

job::Job polygon() {
    auto job = eightPins();
    job.plate.outline->shape = job::OutlineShape::Polygon;
    job.plate.outline->points = {{{-90, -90}, 0}, {{90, -90}, 0}, {{90, 90}, 0}, {{-90, 90}, 0}};
    return job;
}

TEST(Grab, finds_the_nearest_edge_within_reach) {
    const auto shape = planShape(eightPins());
    EXPECT_EQ(grabAt(shape, {0, 88.5}, 3).part, PlanPart::Rim);
    EXPECT_EQ(grabAt(shape, {-14, 0}, 3).part, PlanPart::Bore);
    EXPECT_EQ(grabAt(shape, shape::polar(66, 0.39), 3).part, PlanPart::Circle); // between two stations
    EXPECT_EQ(grabAt(shape, {40, 0}, 3).part, PlanPart::None);
    EXPECT_EQ(grabAt(shape, {400, 0}, 3).part, PlanPart::None);
}

TEST(Grab, takes_an_access_hole_by_its_edge_and_the_ring_by_its_inside) {
    const auto shape = planShape(eightPins());
    const Grab edge = grabAt(shape, {75.5, 0}, 2);
    EXPECT_EQ(edge.part, PlanPart::Access);
    EXPECT_EQ(edge.index, 0u);
    EXPECT_EQ(grabAt(shape, {65, 1}, 2).part, PlanPart::Start);
}

TEST(Drag, snaps_sizes_across_to_whole_millimetres) {
    const auto shape = planShape(eightPins());
    const Grab rim{PlanPart::Rim, 0};
    // 4.3 mm further out on the radius is 8.6 mm on the diameter.
    EXPECT_DOUBLE_EQ(dragged(shape, rim, {90, 0}, {94.3, 0}, 180, System::Metric, false), 189);
    EXPECT_NEAR(dragged(shape, rim, {90, 0}, {94.3, 0}, 180, System::Metric, true), 188.6, kRoundTrip);
}

TEST(Drag, snaps_to_sixteenths_and_finer_to_sixty_fourths_of_an_inch) {
    const auto shape = planShape(eightPins());
    const Grab bore{PlanPart::Bore, 0};
    const double coarse = dragged(shape, bore, {13, 0}, {14, 0}, 26, System::Inch, false);
    EXPECT_NEAR(coarse / 25.4 * 16, std::round(coarse / 25.4 * 16), kRoundTrip);
    const double fine = dragged(shape, bore, {13, 0}, {14, 0}, 26, System::Inch, true);
    EXPECT_NEAR(fine / 25.4 * 64, std::round(fine / 25.4 * 64), kRoundTrip);
    EXPECT_NEAR(fine, 28, 25.4 / 128);
}

TEST(Drag, never_makes_a_size_less_than_one_step) {
    const auto shape = planShape(eightPins());
    EXPECT_DOUBLE_EQ(dragged(shape, {PlanPart::Bore, 0}, {13, 0}, {0, 0}, 26, System::Metric, false), 1);
}

TEST(Drag, of_an_access_hole_measures_from_its_own_centre) {
    const auto shape = planShape(eightPins());
    const shape::Point centre = shape.stations[2];
    EXPECT_DOUBLE_EQ(dragged(shape, {PlanPart::Access, 2}, centre + shape::Point{10, 0},
                             centre + shape::Point{12, 0}, 20, System::Metric, false),
                     24);
}

TEST(Drag, turns_the_ring_by_whole_degrees_and_stays_within_half_a_turn) {
    const auto shape = planShape(eightPins());
    const Grab start{PlanPart::Start, 0};
    const double degree = std::numbers::pi / 180;
    EXPECT_DOUBLE_EQ(
        dragged(shape, start, {65, 0}, shape::polar(65, 22.3 * degree), 0, System::Metric, false), 22);
    EXPECT_DOUBLE_EQ(
        dragged(shape, start, {65, 0}, shape::polar(65, 20 * degree), 170, System::Metric, false), -170);
}

TEST(Step, goes_to_the_next_multiple_and_not_by_a_step_from_where_it_is) {
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Bore, 26.4, 1, System::Metric, false), 27);
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Bore, 26.4, -1, System::Metric, false), 26);
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Bore, 26, 1, System::Metric, false), 27);
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Bore, 1, -1, System::Metric, false), 1);
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Bore, 26, 1, System::Metric, false, 5), 30); // a step of one's own
    EXPECT_NEAR(stepped(PlanPart::Bore, 26, 1, System::Metric, true, 5), 26.1, kRoundTrip);
    EXPECT_DOUBLE_EQ(stepped(PlanPart::Start, 180, 1, System::Metric, false), -179);
}

TEST(TypedFigure, can_be_read_back_by_the_job_file) {
    for (const double mm : {26.0, 130.5, 188.6}) {
        const auto text = typedFigure(PlanPart::Rim, mm, System::Metric);
        EXPECT_NEAR(units::parse<Length>(text)->mm(), mm, 0.005) << text;
    }
    for (const int sixteenths : {3, 16, 85, 113}) {
        const auto text = typedFigure(PlanPart::Rim, sixteenths * 25.4 / 16, System::Inch);
        EXPECT_NEAR(units::parse<Length>(text)->inch() * 16, sixteenths, 1e-9) << text;
        EXPECT_EQ(text.find("\u00a0"), std::string::npos);
    }
    EXPECT_NEAR(units::parse<units::Angle>(typedFigure(PlanPart::Start, -22.5, System::Metric))->degree(),
                -22.5, 1e-9);
}

TEST(Grab, of_an_extra_hole_is_its_size_at_the_edge_and_its_place_inside) {
    const auto shape = planShape(withHole(30, 20, 16));
    EXPECT_EQ(grabAt(shape, {38, 20}, 2), (Grab{PlanPart::ExtraSize, 0}));
    EXPECT_EQ(grabAt(shape, {33, 20}, 2), (Grab{PlanPart::Extra, 0}));
    // So small that every place in it is near the edge: its middle moves it all the same.
    EXPECT_EQ(grabAt(planShape(withHole(30, 20, 3)), {30.2, 20}, 5), (Grab{PlanPart::Extra, 0}));
}

TEST(Grab, of_a_polygon_takes_a_corner_before_the_sides_that_meet_there) {
    const auto shape = planShape(polygon());
    EXPECT_EQ(grabAt(shape, {89, -88.5}, 3), (Grab{PlanPart::Corner, 1}));
    EXPECT_EQ(grabAt(shape, {89, 0}, 3).part, PlanPart::None);
    EXPECT_EQ(sideAt(shape, {89, 0}, 3), std::optional<std::size_t>(1));
    EXPECT_FALSE(sideAt(shape, {80, 0}, 3));
}

TEST(Grab, of_stations_placed_one_by_one_moves_that_one) {
    auto job = eightPins();
    job.stations.count.reset();
    job.stations.circle.reset();
    for (const auto& [x, y] : {std::pair{60.0, 0.0}, {0.0, 62.0}, {-58.0, 3.0}})
        job.stations.at.push_back({Length::fromMm(x), Length::fromMm(y)});
    const auto shape = planShape(job);
    EXPECT_EQ(grabAt(shape, {1, 63}, 3), (Grab{PlanPart::Station, 1}));
}

TEST(Grab, finds_what_stands_in_the_way_by_edge_and_inside) {
    auto job = eightPins();
    job.keepClear.push_back({{Length::fromMm(120), Length::fromMm(0)}, Length::fromMm(20), "stud"});
    const auto shape = planShape(job);
    EXPECT_EQ(grabAt(shape, {130, 0}, 2).part, PlanPart::ObstacleSize);
    EXPECT_EQ(grabAt(shape, {121, 3}, 2).part, PlanPart::Obstacle);
}

TEST(Grabs, are_none_where_nothing_is_known) {
    EXPECT_TRUE(grabs(planShape(job::Job())).empty());
}

TEST(Grabs, reach_everything_once) {
    auto job = polygon();
    job.plate.holes = withHole(10, 50, 8).plate.holes;
    job.keepClear.push_back({{Length::fromMm(120), Length::fromMm(0)}, Length::fromMm(20), ""});
    const auto all = grabs(planShape(job));
    const auto count = [&](PlanPart part) {
        return std::ranges::count_if(all, [&](const Grab& grab) { return grab.part == part; });
    };
    EXPECT_EQ(count(PlanPart::Corner), 4);
    for (const PlanPart part :
         {PlanPart::Extra, PlanPart::ExtraSize, PlanPart::Obstacle, PlanPart::ObstacleSize, PlanPart::Bore})
        EXPECT_EQ(count(part), 1);
}

TEST(DragOfAPlace, goes_to_whole_steps_in_both_directions) {
    const auto to = draggedPlace({30, 20}, {34.4, 17.2}, {30.3, 20}, System::Metric, false);
    EXPECT_DOUBLE_EQ(to.x, 35); // 30.3 + 4.4 = 34.7
    EXPECT_DOUBLE_EQ(to.y, 17);
    const auto inch = draggedPlace({30, 20}, {34.4, 17.2}, {30.3, 20}, System::Inch, true);
    EXPECT_NEAR(inch.x / 25.4 * 64, std::round(inch.x / 25.4 * 64), kRoundTrip);
    EXPECT_NEAR(inch.x, 34.7, 25.4 / 128);
}

TEST(DragOfAPlace, may_go_left_of_the_bore_and_below_it) {
    const auto to = draggedPlace({0, 0}, {-12.2, -7.7}, {0, 0}, System::Metric, false);
    EXPECT_DOUBLE_EQ(to.x, -12);
    EXPECT_DOUBLE_EQ(to.y, -8);
}

TEST(StepOfAPlace, moves_one_way_only_and_through_nought) {
    auto place = steppedPlace({0.4, 7.3}, -1, 0, System::Metric, false);
    EXPECT_DOUBLE_EQ(place.x, 0);
    EXPECT_DOUBLE_EQ(place.y, 7.3);
    place = steppedPlace(place, -1, 0, System::Metric, false);
    EXPECT_DOUBLE_EQ(place.x, -1);
    place = steppedPlace(place, 0, 1, System::Metric, true);
    EXPECT_NEAR(place.y, 7.4, kRoundTrip);
}

TEST(Drag, of_an_extra_hole_measures_from_its_own_centre) {
    const auto shape = planShape(withHole(30, 20, 16));
    EXPECT_DOUBLE_EQ(
        dragged(shape, {PlanPart::ExtraSize, 0}, {38, 20}, {39.6, 20}, 16, System::Metric, false), 19);
}

TEST(WithSetting, changes_the_thing_in_hand_and_nothing_else) {
    const auto job = withHole(30, 20, 16);
    const auto shape = planShape(job);
    const auto moved = withSetting(job, shape, {PlanPart::Extra, 0}, {0, {-5, 6}});
    EXPECT_EQ(settingOf(planShape(moved), {PlanPart::Extra, 0}).place, (shape::Point{-5, 6}));
    EXPECT_DOUBLE_EQ(planShape(moved).extra[0].diameter, 16);
    EXPECT_EQ(moved.stations, job.stations);
    const auto corner = withSetting(polygon(), planShape(polygon()), {PlanPart::Corner, 2}, {0, {70, 95}});
    EXPECT_EQ(planShape(corner).corners[2].at, (shape::Point{70, 95}));
    EXPECT_EQ(planShape(corner).corners[1].at, (shape::Point{90, -90}));
}

} // namespace
} // namespace pw::gui
