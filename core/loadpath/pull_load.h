#pragma once

#include "core/job/job.h"
#include "core/loadpath/torque.h"
#include "core/util/result.h"

#include <optional>
#include <string>
#include <vector>

/// A puller is loaded by whoever leans on it.
namespace pw::loadpath {

/// What can load a puller, each only when it is stated.
struct PullSources {
    std::optional<Range<Force>> hub;    ///< what the hub may ask, low and high
    std::optional<Range<Force>> wrench; ///< what wrench and hand make, at high and at low friction
    std::optional<Force> ram;           ///< at its relief pressure
    std::vector<std::string> assumptions;

    bool known() const { return hub || wrench || ram; }
    /// The largest of what there is: the load to design for.
    Force design() const;
    /// The tool's side alone; none when neither wrench nor ram is stated.
    std::optional<Force> most() const;
    /// From the least that may be asked to the design load.
    Range<Force> range() const;
};

/// Hand pull on a stated wrench when nobody says how hard: a strong one-handed pull, 400 N.
/// Common practice, no published source.
inline constexpr double kHandPull = 400;

/// `torque`: of the forcing screw, none without one. `hub`: what the fit asks, none when nobody knows.
PullSources pullSources(const job::Job& job, const std::optional<TorqueInputs>& torque,
                        const std::optional<Range<Force>>& hub);

/// Relief pressure x area; the stated capacity where one of them is missing. None without a ram's figures.
std::optional<Force> ramForce(const job::Ram& ram);

} // namespace pw::loadpath
