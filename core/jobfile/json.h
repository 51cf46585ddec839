#pragma once

#include "core/jobfile/tree.h"
#include "core/util/result.h"

#include <string>
#include <string_view>

namespace pw::jobfile {

/// JSON text to a tree. Refuses duplicate keys, over 1,000 keys in a group, NaN, numbers that a double cannot
/// hold, depth over 64, text over 4 MiB, binary files and text that is not UTF-8; the message gives line and column (in characters,
/// from 1).
util::Result<Tree> fromJson(std::string_view text);

/// Two-space indent; a list, or an object in a list, that fits on a line stands on one line; numbers with the
/// fewest digits that read back the same. A number that is not finite becomes null (a figure that was not
/// computed), a byte that is not UTF-8 the replacement character. Ends with a line feed.
std::string toJson(const Tree& tree);

} // namespace pw::jobfile
