#pragma once

#include "core/jobfile/tree.h"
#include "core/util/result.h"

#include <string>
#include <string_view>

namespace pw::jobfile {

/// JSON text to a tree. Refuses duplicate keys, NaN, numbers out of range, depth over 64, text over 4 MiB; the
/// message gives line and column.
util::Result<Tree> fromJson(std::string_view text);

/// Two-space indent, short lists on one line, numbers with the fewest digits that read back the same.
std::string toJson(const Tree& tree);

} // namespace pw::jobfile
