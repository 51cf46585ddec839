#pragma once

#include "core/util/result.h"

#include <filesystem>
#include <string_view>

namespace pw::util {

/// Writes a file whole or not at all: aside in the same folder, flushed to the disk, renamed into place.
Status writeFileWhole(const std::filesystem::path& file, std::string_view content);

/// The whole content; refuses folders and files over `limit` bytes.
Result<std::string> readFile(const std::filesystem::path& file, std::size_t limit = std::size_t(16) << 20);

} // namespace pw::util
