#pragma once

#include <filesystem>
#include <optional>

namespace pw::gui {

/// Opens the window, with this job when one is given, and stays until it is closed. The program's exit
/// status. `argc` and `argv` are the program's own; Qt takes its options out of them.
int run(int argc, char** argv, std::optional<std::filesystem::path> job);

} // namespace pw::gui
