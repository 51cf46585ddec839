#pragma once

#include "core/job/job.h"
#include "core/util/result.h"

#include <filesystem>

namespace pw::engine {

/// The rack file that a job names, if it may be followed unasked; empty when it names none.
/// A job may come from a stranger, and `rack` is the one path in it. It is followed within the job's own
/// folder and below; with an absolute path, with "..", or by a symbolic link it may lead out of there, to any
/// file of whoever opens the job. Such a one is a Problem, to be followed only where the person names that
/// file or says so: `--rack` on the command line, a button in the window. A job that is not saved lies in no
/// folder, so every absolute path is outside.
util::Result<std::filesystem::path> rackToRead(const job::Job& job, const std::filesystem::path& jobFile);

} // namespace pw::engine
