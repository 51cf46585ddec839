#pragma once

#include "app/engine/report.h"

#include <string>

namespace pw::engine {

/// The report in words for a terminal, UTF-8, lines up to 100 characters. `reasons`: every check with demand,
/// capacity, basis and source, those that hold too.
std::string toWords(const job::Job& job, const Report& report, bool reasons = false);

} // namespace pw::engine
