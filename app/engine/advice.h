#pragma once

#include "app/engine/report.h"

namespace pw::engine {

/// One or two short sentences: why the verdict is what it is.
std::string reasonFor(const job::Job& job, const Report& report);

/// The usual cautions, those that apply, short.
std::vector<std::string> cautionsFor(const job::Job& job, const Report& report);

/// The order of work with the job's own numbers: squeezing, then letting up.
std::vector<std::string> stepsFor(const job::Job& job, const Report& report);

/// What a missing figure is and how to get it, by its path in the job file.
Missing missingFigure(const std::string& field);

} // namespace pw::engine
