#pragma once

#include "core/job/job.h"
#include "core/loadpath/centre.h"
#include "core/loadpath/fit.h"
#include "core/loadpath/rating.h"
#include "core/loadpath/torque.h"
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

/// The members, found by name in the tables. What is not given is taken as the weakest of its kind, and said.
struct Members {
    std::optional<thread::Thread> thread;
    std::optional<material::ScrewGrade> screw;
    std::optional<material::NutGrade> nut;
    std::optional<material::Material> plate, into;
    std::vector<std::string> assumptions;
    util::Problems problems; ///< names the tables do not know, with the job field
};
Members membersOf(const job::Job& job);

/// Wanted margin / 2; 1 when none is wanted.
double scaleOf(const job::Wanted& wanted);

struct LoadPath {
    Members members;
    std::optional<CentreBearing> bearing;
    std::optional<TorqueInputs> torque;
    std::optional<Length> threadLeft; ///< when the springs are free
    std::vector<Check> checks; ///< strength and fit, the plate's bending and the springs not among them
    std::vector<std::string> assumptions;
    util::Problems problems; ///< what the tables could not read, or what is missing for the centre bearing
};

/// The compress half, and what a pull job shares with it. Missing figures become incomplete checks.
LoadPath loadPath(const job::Job& job, const spring::PackLoads& pack, const std::vector<Ligament>& ligaments);

/// Only the checks of loadPath.
std::vector<Check> checkLoadPath(const job::Job& job, const spring::PackLoads& pack,
                                 const std::vector<Ligament>& ligaments);

/// Rated load, stamp, proof and stop torque from all checks (the plate's too), with `screw.torque_window` and
/// `screw.overrun`, which hang on all the others.
struct RatedLoadPath {
    Rating rating;
    std::vector<Check> checks;
};
RatedLoadPath rate(const job::Job& job, const spring::PackLoads& pack, const LoadPath& path,
                   const std::vector<Check>& allChecks);

} // namespace pw::loadpath
