#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"

#include <string>
#include <vector>

namespace pw::loadpath {

/// `ram.capacity`: the load against the ram's stated capacity (a fit check: the maker's own margin is in that
/// figure; over it breaks); `ram.rod`: the rod's stress area against its yield; `ram.stroke`: is one stroke
/// enough to draw the hub off? Nothing without a ram. `strength`: what heat leaves of the rod.
MemberChecks ramChecks(const job::Job& job, Force load, double s, double strength = 1);

} // namespace pw::loadpath
