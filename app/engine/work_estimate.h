#pragma once

#include "core/job/job.h"
#include "core/rack/rack.h"

#include <cstddef>
#include <string>

/// How long a job will take, and how much memory, before it is started: from its first mesh, which costs
/// hundredths of a second.
namespace pw::engine {

enum class WorkOn { Check, Ladder, Rack, Propose };

struct WorkEstimate {
    double seconds = 0; ///< of an ordinary machine with two free cores
    /// Where the tool does not hold, changes that would mend it are looked for as well: so long at most.
    double mostSeconds = 0;
    double megabytes = 0;
    int unknowns = 0; ///< of the first mesh; 0 where nothing is bent
    int holes = 0;    ///< bore counted in
    int sectorOf = 1; ///< 1: no symmetry
};

/// From this on it is said before it starts.
inline constexpr double kLongSeconds = 10, kMuchMegabytes = 1000;

/// `pieces`: for a rack, kindsOf(). Never fails: a job whose plate has no shape yet is no
/// work. Right to within a factor of 3 (tests/bench/work holds it against the clock).
WorkEstimate estimateWork(const job::Job& job, WorkOn what = WorkOn::Check, std::size_t pieces = 0);

/// Kinds of thickness and steel on a rack: each is checked once.
std::size_t kindsOf(const rack::Rack& rack);

/// "The plate has no symmetry and 31 holes: this takes about 2 minutes." Empty where it is neither long nor
/// much.
std::string foretold(const WorkEstimate& work);

} // namespace pw::engine
