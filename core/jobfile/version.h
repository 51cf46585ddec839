#pragma once

#include "core/jobfile/tree.h"
#include "core/util/result.h"

#include <optional>

namespace pw::jobfile {

/// What is wrong with a job file as a whole: no group of figures, no version, a newer version, another kind
/// of file.
std::optional<util::Problem> versionTrouble(const Tree& tree);

} // namespace pw::jobfile
