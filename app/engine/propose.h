#pragma once

#include "app/engine/check.h"
#include "core/jobfile/tree.h"

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

/// From stations, load and screw alone to plates worth making.
namespace pw::engine {

/// A change to the job file: path and what goes there; null takes it out.
using JobChange = std::pair<std::string, jobfile::Tree>;

/// One plate that was checked whole as it would be saved.
struct Proposal {
    std::string title;    ///< "Full ring, 160 mm across", "Bar, two stations at a time"
    std::string tradeOff; ///< what speaks for it and against it, one sentence
    std::vector<JobChange> changes;
    verdict::Grade grade = verdict::Grade::Incomplete;
    units::Length thickness;
    std::string thicknessLabel; ///< as stocked: "12 mm", "1/2 in"
    Found<double> margin, massKg, deflectionMm;
    std::string weakest, reason;
    int stationsAtATime = 0;
    std::shared_ptr<const shape::Region> region; ///< the plate as built and checked, for drawing
};

struct Proposals {
    std::vector<Proposal> best; ///< those that hold first, lightest first
    std::vector<Missing> missing;
    std::string trouble;            ///< why there is none, when it is not for want of a figure
    std::vector<std::string> rules; ///< how the sizes were found, with their sources
    units::System preferred = units::System::Metric;
};

/// Sizes by the fit rules of the checks: access holes that pass the keeper with 3 mm to spare and leave a
/// land; bore by ISO 273, medium series; the rim as far out as lands and ligaments ask; the standard washer
/// or a thick one as wide as the access holes allow; of each the thinnest stock plate that holds. Full ring,
/// and for an even number of stations a bar for two opposite ones. `job` is the job file's tree; its plate
/// may be missing or anything; a piece that it was laid on is let go with it. Never fails; throws Stopped
/// when progress, which is called from two threads, says so. Sizes are round in `system` and of its stock; by
/// itself the job's own.
Proposals propose(const jobfile::Tree& job, const CheckOptions& options = {},
                  std::optional<units::System> system = {});

/// The job file with a proposal's changes made in it.
jobfile::Tree withChanges(jobfile::Tree job, const std::vector<JobChange>& changes);

jobfile::Tree toTree(const Proposals& proposals);
std::string toWords(const Proposals& proposals);

} // namespace pw::engine
