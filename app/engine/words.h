#pragma once

#include "app/engine/report.h"

#include <string>

namespace pw::engine {

/// The report in words for a terminal, UTF-8, lines up to 100 characters.
std::string toWords(const job::Job& job, const Report& report);

} // namespace pw::engine
