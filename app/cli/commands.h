#pragma once

#include <filesystem>
#include <functional>
#include <iosfwd>
#include <optional>

namespace pw::cli {

/// Opens the window on a job file, or on none.
using OpenWindow = std::function<int(const std::optional<std::filesystem::path>&)>;

/// Reads the command line and does what it says. Answers go to `out`, messages to `err`.
/// Exit status: 0 holds or thin; 1 sets, breaks or incomplete; 2 bad input or bad command line.
int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err,
        const OpenWindow& openWindow);

} // namespace pw::cli
