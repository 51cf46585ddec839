#pragma once

#include "core/job/job.h"

#include <optional>
#include <string_view>
#include <vector>

/// What a way of cutting brings with it.
namespace pw::job {

/// How true a process is and what it takes away.
struct ProcessHabits {
    Length kerf;        ///< width of the cut
    Length layoutError; ///< radius within which a hole's centre may lie
    Length growth;      ///< of a hole, on the radius
};

/// Common practice, no published source; meant for work done with ordinary care.
ProcessHabits habitsOf(Process process);
std::string_view nameOf(Process process); ///< as in the file: "plasma table"

/// Diameter of the smallest round hole worth burning: the thickness on a plasma table, 1.5 x on a torch
/// table, 2 x by hand torch; none where everything is drilled. Common practice, no published source.
std::optional<Length> leastBurnedHole(Process process, Length thickness);

/// Positions in plate.holes of those that are drilled whatever burns the rest.
std::vector<int> holesForTheDrill(const Plate& plate);

} // namespace pw::job
