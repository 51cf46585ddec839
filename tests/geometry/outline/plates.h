#pragma once

#include "core/job/job.h"
#include "core/shape/region.h"
#include "geometry/outline/build.h"

#include <cmath>
#include <numbers>
#include <random>

/// Invented plates to try the geometry on.
namespace pw::testing {

using units::Angle;
using units::Length;

inline Length mm(double value) {
    return Length::fromMm(value);
}

/// A disc of 140 mm with a bore of 20 mm and `count` access holes of `hole` mm on a circle of 100 mm.
inline job::Job discJob(int count = 6, double hole = 24) {
    job::Job job;
    job.plate.outline = job::Outline{};
    job.plate.outline->diameter = mm(140);
    job.plate.bore = mm(20);
    job.stations.count = count;
    job.stations.circle = mm(100);
    job.stations.accessHole = mm(hole);
    return job;
}

inline job::Job barJob(bool roundEnds = false) {
    job::Job job = discJob(2, 20);
    job.plate.outline = job::Outline{};
    job.plate.outline->shape = job::OutlineShape::Bar;
    job.plate.outline->length = mm(160);
    job.plate.outline->width = mm(50);
    job.plate.outline->roundEnds = roundEnds;
    return job;
}

inline job::Job polygonJob(int corners, double radius, double bulge = 0, double turn = 0) {
    job::Job job = discJob(3, 16);
    job.stations.circle = mm(radius);
    job.plate.outline = job::Outline{};
    job.plate.outline->shape = job::OutlineShape::Polygon;
    for (int i = 0; i < corners; ++i)
        job.plate.outline->points.push_back(
            {shape::polar(radius, turn + 2 * std::numbers::pi * i / corners), bulge});
    return job;
}

/// Any plate: outlines, holes and places drawn at random. Most are sound, some are not.
inline job::Job randomJob(std::mt19937& random) {
    const auto between = [&](double low, double high) {
        return low + (high - low) * (double(random()) / double(std::mt19937::max()));
    };
    job::Job job;
    job::Outline outline;
    outline.shape = static_cast<job::OutlineShape>(random() % 4);
    outline.diameter = mm(between(120, 160));
    outline.length = mm(between(120, 200));
    outline.width = mm(between(90, 120));
    outline.roundEnds = random() % 2;
    outline.corner = mm(random() % 2 ? between(0, 45) : 0);
    const int corners = 3 + int(random() % 8);
    const double turn = random() % 2 ? 0 : between(0, 6);
    const bool regular = random() % 2;
    const double bulge = random() % 2 ? between(-0.1, 0.3) : 0;
    for (int i = 0; i < corners; ++i)
        outline.points.push_back(
            {shape::polar(regular ? 90 : between(75, 120), turn + 2 * std::numbers::pi * i / corners),
             bulge});
    job.plate.outline = outline;
    job.plate.bore = mm(random() % 4 ? between(8, 35) : 0);
    job::Stations& stations = job.stations;
    stations.count = 1 + int(random() % 8);
    stations.circle = mm(between(60, 100));
    stations.start = Angle::fromDegree(random() % 3 == 0 ? between(0, 360) : 90.0 * double(random() % 4));
    stations.accessHole = mm(between(6, 26));
    stations.hole.shape = static_cast<job::HoleShape>(random() % 3);
    stations.hole.length = mm(between(12, 30));
    stations.hole.width = mm(between(6, 12));
    if (random() % 3 == 0)
        stations.hole.turn = Angle::fromDegree(random() % 2 ? 90 : between(-30, 30));
    for (int i = int(random() % 3); i > 0; --i) {
        job::ExtraHole hole;
        hole.at = {mm(between(-60, 60)), mm(between(-60, 60))};
        hole.diameter = mm(between(3, 15));
        job.plate.holes.push_back(hole);
    }
    return job;
}

/// So many random plates that are sound, always the same.
inline std::vector<job::Job> soundRandomJobs(int count, unsigned seed) {
    std::mt19937 random(seed);
    std::vector<job::Job> jobs;
    while (int(jobs.size()) < count) {
        job::Job job = randomJob(random);
        if (outline::buildRegion(job).ok())
            jobs.push_back(std::move(job));
    }
    return jobs;
}

} // namespace pw::testing
