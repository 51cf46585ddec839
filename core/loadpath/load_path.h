#pragma once

#include "core/job/job.h"
#include "core/loadpath/centre.h"
#include "core/loadpath/fit.h"
#include "core/loadpath/rating.h"
#include "core/loadpath/setup.h"
#include "core/loadpath/travel.h"
#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/spring/pack.h"
#include "core/thread/thread.h"
#include "core/util/result.h"

#include <optional>
#include <string>
#include <vector>

/// Everything the force passes through but the plate's bending: screw, threads, washer, lands; and the fit.
namespace pw::loadpath {

/// What the solved plate has to say to the rest; nothing before it is solved.
struct FromPlate {
    Torque screwMoment{}; ///< bending left to the screw by a lopsided load, all stacked plates together
};

struct LoadPath : Setup {
    std::optional<Length> threadLeft;   ///< when the springs are free
    std::optional<Length> threadNeeded; ///< usable length, or engagement of a turning screw
    std::vector<ThreadMoment> moments;  ///< assembled, squeezed, free
    std::vector<Check> checks; ///< strength and fit, the plate's bending and the springs not among them
};

/// Every member but plate and springs, for squeezing and for pulling. Missing figures become incomplete
/// checks.
LoadPath loadPath(const job::Job& job, const Setup& setup, const spring::PackLoads& pack,
                  const std::vector<Ligament>& ligaments, const FromPlate& plate = {});
LoadPath loadPath(const job::Job& job, const spring::PackLoads& pack, const std::vector<Ligament>& ligaments);

/// The screw with a station hung: what is left of the load, and the bending it leaves to the screw.
std::optional<Check> hungScrew(const job::Job& job, const Setup& setup, Force left, Torque bending,
                               int station, shape::Point where);

/// Rated load, stamp, proof and stop torque from all checks (the plate's too), with `screw.torque_window` and
/// `screw.overrun`, which hang on all the others.
struct RatedLoadPath {
    Rating rating;
    std::vector<Check> checks;
};
RatedLoadPath rate(const job::Job& job, const spring::PackLoads& pack,
                   const std::optional<TorqueInputs>& torque, const std::vector<Check>& allChecks);

} // namespace pw::loadpath
