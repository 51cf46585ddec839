#pragma once

#include "core/job/job.h"
#include "core/shape/loop.h"

#include <vector>

namespace pw::job {

/// Centres of the stations in plate coordinates, mm: `at` as it stands, or `count` points evenly round
/// `circle` counter-clockwise from `start` (0 when left out). Empty while neither is complete.
std::vector<shape::Point> stationCentres(const Stations& stations);

} // namespace pw::job
