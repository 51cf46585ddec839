#pragma once

#include "app/engine/report.h"
#include "core/jobfile/tree.h"

namespace pw::engine {

/// The report as `check --json` prints it. What was not computed is null, never 0.
jobfile::Tree toTree(const Report& report);

} // namespace pw::engine
