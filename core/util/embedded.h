#pragma once

#include <string_view>

namespace pw::util {

/// The content of a file of resources/ ("materials.csv"), built into the program. A name that is not there is
/// a bug.
std::string_view embedded(std::string_view fileName);

} // namespace pw::util
