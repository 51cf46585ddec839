#pragma once

#include "app/engine/report.h"
#include "geometry/solid/plate_solid.h"

#include <string>
#include <vector>

namespace pw::engine {

/// The tool as it stands when assembled, as solids: the plate (each of a stack), screw, nut, washer, and the
/// retainers it bears on, or for a pull the bolts. The stations press on z = 0. Threads are plain cylinders
/// of their diameter, a tapped bore is its tapping drill. Sizes nobody gave are usual ones (common practice,
/// no published source), and the part's name says so. Members without a known thread are left out.
std::vector<solid::Part> stackOf(const job::Job& job, const Report& report, const std::string& plateName);

} // namespace pw::engine
