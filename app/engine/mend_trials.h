#pragma once

#include "app/engine/report.h"

#include <functional>
#include <string>
#include <vector>

namespace pw::engine {

/// One figure that could be changed, with the values to try, the smallest change first.
struct Trial {
    std::string field;               ///< path in the job file
    std::string words;               ///< "Use %1 plate"
    std::vector<std::string> values; ///< as a person would type them
    std::function<void(job::Job&, const std::string&)> put;
};

/// What might mend this check, the cheapest for a person first. May be empty: some things only the part
/// decides.
std::vector<Trial> trialsFor(const verdict::Check& check, const job::Job& job, const Report& report);

} // namespace pw::engine
