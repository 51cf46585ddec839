#include "app/gui/views/plan_geometry.h"

#include "core/units/parse.h"

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

TEST(PlanTransform, takes_a_place_to_the_screen_and_back) {
    const auto t = PlanTransform::fit({{-90, -90}, {90, 90}}, QRectF(100, 50, 500, 400));
    const shape::Point p{12.5, -70};
    EXPECT_NEAR(t.toPlate(t.toScreen(p)).x, p.x, kRoundTrip);
    EXPECT_NEAR(t.toPlate(t.toScreen(p)).y, p.y, kRoundTrip);
}

TEST(PlanTransform, has_y_up_on_the_plate_and_down_on_the_screen) {
    const auto t = PlanTransform::fit({{-90, -90}, {90, 90}}, QRectF(0, 0, 400, 400));
    EXPECT_LT(t.toScreen({0, 10}).y(), t.toScreen({0, -10}).y());
}

TEST(PlanTransform, fits_the_whole_box_into_the_view) {
    const QRectF view(20, 30, 600, 200);
    const auto t = PlanTransform::fit({{-90, -40}, {90, 40}}, view);
    EXPECT_TRUE(view.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(t.toScreen({-90, -40})));
    EXPECT_TRUE(view.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(t.toScreen({90, 40})));
    EXPECT_NEAR(t.scale, 200.0 / 80, kRoundTrip); // the height is what binds
}

TEST(PlanTransform, keeps_the_place_under_the_cursor_when_it_zooms) {
    auto t = PlanTransform::fit({{-90, -90}, {90, 90}}, QRectF(0, 0, 400, 400));
    const QPointF cursor(310, 120);
    const auto before = t.toPlate(cursor);
    t.zoom(cursor, 1.7);
    EXPECT_NEAR(t.toPlate(cursor).x, before.x, kRoundTrip);
    EXPECT_NEAR(t.toPlate(cursor).y, before.y, kRoundTrip);
    for (int i = 0; i < 200; ++i)
        t.zoom(cursor, 2);
    EXPECT_LE(t.scale, PlanTransform::kMostScale);
}

TEST(PlanShape, leaves_out_what_the_job_does_not_say) {
    const auto shape = planShape(job::Job());
    EXPECT_FALSE(shape.rim);
    EXPECT_TRUE(grabs(shape).empty());
    EXPECT_GT(shape.bounds().width(), 0);
}

TEST(PlanShape, takes_the_retainer_for_the_land_until_a_land_is_given) {
    auto job = eightPins();
    EXPECT_DOUBLE_EQ(planShape(job).land, 30);
    job.stations.land = Length::fromMm(28);
    EXPECT_DOUBLE_EQ(planShape(job).land, 28);
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

TEST(ScaleBar, is_a_round_length_that_fits) {
    const double mm = scaleBarMm(2.0, 130, System::Metric);
    EXPECT_DOUBLE_EQ(mm, 50);
    EXPECT_DOUBLE_EQ(scaleBarMm(2.0, 130, System::Inch), 2 * 25.4);
}

TEST(ClearRay, runs_midway_between_two_stations) {
    const auto shape = planShape(eightPins());
    const double ray = clearRay(shape.stations, -0.45);
    // Eight stations from 0 degrees: 22.5 degrees from the nearest is the best there is; the search steps
    // by 5.
    double nearest = 10;
    for (const auto& s : shape.stations)
        nearest =
            std::min(nearest, std::abs(std::remainder(std::atan2(s.y, s.x) - ray, 2 * std::numbers::pi)));
    EXPECT_GT(nearest, 17.5 * std::numbers::pi / 180);
}

TEST(Spread, keeps_labels_apart_and_inside) {
    const auto places = spread({100, 104, 90, 300}, 28, 60, 320);
    EXPECT_GE(places[0] - places[2], 28 - 1e-9);
    EXPECT_GE(places[1] - places[0], 28 - 1e-9);
    EXPECT_LE(places[3], 320 - 14 + 1e-9);
    for (const double y : places)
        EXPECT_GE(y, 60 + 14 - 1e-9);
}

} // namespace
} // namespace pw::gui
