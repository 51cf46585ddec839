#pragma once

#include "core/job/job.h"
#include "core/jobfile/tree.h"
#include "core/util/result.h"

#include <filesystem>
#include <string>
#include <vector>

namespace pw::jobfile {

inline constexpr int kVersion = 1;

/// A job as far as it could be understood. Every wrong figure is listed, not only the first; a figure that is
/// listed is left empty in `job`.
struct Reading {
    job::Job job;
    util::Problems problems;
    std::vector<std::string> unknownKeys; ///< paths; kept in the tree and saved again
    std::vector<std::string> suggestions; ///< one an unknown key: the path that was probably meant, or empty
};

/// Never fails: what is wrong stands in `problems`. A figure that is missing is no problem (the verdict says
/// what it needs), except half of a pair that makes no sense alone (a spring reading without its force). Null
/// counts as left out. A plain number has the base unit: mm, N, N/mm, MPa, mm2, degrees, degrees C.
Reading readJob(const Tree& tree);

/// The file's tree: text, syntax and version checked, older versions migrated. Nothing else.
util::Result<Tree> loadTree(const std::filesystem::path& file);

/// Written whole or not at all: write aside, flush, rename; the old file stays until then.
util::Status saveTree(const Tree& tree, const std::filesystem::path& file);

} // namespace pw::jobfile
