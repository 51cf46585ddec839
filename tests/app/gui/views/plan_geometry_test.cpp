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
    EXPECT_TRUE(shape.stations.empty());
    EXPECT_GT(shape.bounds().width(), 0);
}

TEST(PlanShape, takes_the_retainer_for_the_land_until_a_land_is_given) {
    auto job = eightPins();
    EXPECT_DOUBLE_EQ(planShape(job).land, 30);
    job.stations.land = Length::fromMm(28);
    EXPECT_DOUBLE_EQ(planShape(job).land, 28);
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
