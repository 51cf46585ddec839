#pragma once

#include "core/job/job.h"
#include "core/rack/read_rack.h"

#include <filesystem>
#include <iosfwd>
#include <string>

namespace pw::cli {

/// The job in a file; BadInput with everything that is wrong in it. Keys nobody knows are noted on `err`.
job::Job readJob(const std::string& file, std::ostream& err);

/// The rack in a file; BadInput when nothing of it can be read. Pieces with wrong figures are left out of it.
rack::RackReading readRackFile(const std::filesystem::path& file, std::ostream& err);

/// The rack file for a job: the one given with the command, else the one that the job names, if it may be
/// followed unasked; BadInput when it may not. Empty when there is none.
std::filesystem::path rackFor(const job::Job& job, const std::string& jobFile, const std::string& given);

} // namespace pw::cli
