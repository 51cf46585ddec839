#include "core/job/station_places.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace pw;
using units::Length;

TEST(StationPlaces, StandEvenlyRoundTheCircle) {
    job::Stations stations;
    EXPECT_TRUE(job::stationCentres(stations).empty());
    stations.count = 5;
    EXPECT_TRUE(job::stationCentres(stations).empty());
    stations.circle = Length::fromMm(100);
    stations.start = units::Angle::fromDegree(90);
    const auto centres = job::stationCentres(stations);
    ASSERT_EQ(centres.size(), 5u);
    EXPECT_NEAR(centres[0].x, 0, 1e-12);
    EXPECT_NEAR(centres[0].y, 50, 1e-12);
    EXPECT_LT(centres[1].x, 0) << "counter-clockwise";
    // Side of a regular pentagon in a circle of radius R: R sqrt(10 - 2 sqrt 5) / 2 (Euclid, Elements XIII).
    const double side = 50 * std::sqrt(10 - 2 * std::sqrt(5.0)) / 2;
    for (int i = 0; i < 5; ++i)
        EXPECT_NEAR(shape::distance(centres[i], centres[(i + 1) % 5]), side, 1e-11);
}

TEST(StationPlaces, GivenPointsReplaceTheCircle) {
    job::Stations stations;
    stations.count = 5;
    stations.circle = Length::fromMm(100);
    stations.at = {{Length::fromMm(30), Length::fromMm(-4)}};
    ASSERT_EQ(job::stationCentres(stations).size(), 1u);
    EXPECT_EQ(job::stationCentres(stations)[0], (shape::Point{30, -4}));
}
