#pragma once

#include <iosfwd>
#include <string>

namespace pw::cli {

/// `rack JOB`: which pieces serve, best first. 0 when one may be used, 1 when none, BadInput for a file that
/// cannot be read. `rackFile` empty: the one that the job names.
int doRack(const std::string& jobFile, const std::string& rackFile, const std::string& prefer, bool json,
           std::ostream& out, std::ostream& err);

/// `propose JOB`: plates for the job's stations, load and screw.
int doPropose(const std::string& jobFile, bool json, std::ostream& out, std::ostream& err);

} // namespace pw::cli
