#pragma once

#include "app/engine/report.h"

namespace pw::engine {

/// One or two short sentences: why the verdict is what it is.
std::string reasonFor(const job::Job& job, const Report& report);

/// The usual cautions, those that apply, short.
std::vector<std::string> cautionsFor(const job::Job& job, const Report& report);

/// The order of work with the job's own numbers: squeezing, then letting up.
/// `second` is told which is the first of letting up, or of the pull.
std::vector<std::string> stepsFor(const job::Job& job, const Report& report, std::size_t* second = nullptr);

/// What a missing figure is and how to get it, by its path in the job file.
Missing missingFigure(const std::string& field);

} // namespace pw::engine
