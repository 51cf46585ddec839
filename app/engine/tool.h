#pragma once

#include "app/engine/check.h"
#include "core/jobfile/tree.h"

#include <filesystem>
#include <string>
#include <vector>

/// A tool that is already on the wall: what may it be used for, and on which other parts?
namespace pw::engine {

/// What a finished tool may be loaded to, from its own job.
struct ToolLimits {
    units::System preferred = units::System::Metric;
    std::string title;
    verdict::Grade grade = verdict::Grade::Incomplete; ///< on its own job
    std::string reason;
    Found<units::Force> rated, perStation; ///< in all, and at each station that carries
    std::string ratedBy;                   ///< title of the check that gives first
    Found<units::Torque> stop;
};
ToolLimits limitsOf(const job::Job& tool, const CheckOptions& options = {});

/// One saved job, tried with the tool in place of its own plate.
struct OtherUse {
    std::string name;                 ///< file or title
    bool fits = false;                ///< it can be put on the part at all
    std::vector<std::string> reasons; ///< why not, or what to mind
    Found<double> turnDegrees;        ///< how far the tool is turned to bring its holes over the stations
    verdict::Grade grade = verdict::Grade::Incomplete; ///< once it fits
    std::string reason;
};

/// The part's load, stations and threads with the tool's plate, washer and wrench. Stations must come to lie
/// in the tool's access holes (turned as best it goes; holes without a station stay empty), what they are off
/// is counted as layout error; the shaft's stud must pass the bore, bolts their holes.
OtherUse tryTool(const job::Job& tool, const job::Job& part, const std::string& name,
                 const CheckOptions& options = {});

jobfile::Tree toTree(const ToolLimits& limits, const std::vector<OtherUse>& uses);
std::string toWords(const ToolLimits& limits, const std::vector<OtherUse>& uses);

} // namespace pw::engine
