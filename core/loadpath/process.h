#pragma once

#include "core/job/job.h"

#include <optional>
#include <string_view>

namespace pw::loadpath {

/// What a way of cutting brings with it, each replaced by the job's own figure.
struct ProcessFigures {
    job::Process process = job::Process::PlasmaTable;
    units::Length kerf;        ///< width of the cut
    units::Length layoutError; ///< radius of position of a hole
    units::Length growth;      ///< of a hole, on the radius
    bool assumed = false;      ///< the job names no process
};

/// Plasma table 1.5 / 0.5 / 0.3 mm (kerf / layout error / growth), torch table 2.0 / 1.0 / 0.5, hand
/// torch 3.0 / 2.0 / 1.5, saw and drill 0 / 0.5 / 0.1, milled 0 / 0.05 / 0.02. Common practice, no published
/// source. No process named: saw and drill.
ProcessFigures processFigures(const job::Cutting& cutting);

/// Diameter of the smallest hole the process can burn: the thickness on a plasma table, 1.5 x on a torch
/// table, 2 x by hand torch; none where everything is drilled. Common practice, no published source.
std::optional<units::Length> leastBurnedHole(job::Process process, units::Length thickness);

std::string_view wordOf(job::Process process); ///< as in the job file

} // namespace pw::loadpath
