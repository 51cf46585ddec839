#pragma once

#include "core/shape/region.h"
#include "core/util/result.h"

#include <string>
#include <vector>

namespace pw::outline {

/// Holes that are not wholly inside the rim, or run into one another. `boreField` is the field that gives the
/// bore.
util::Problems checkHoles(const shape::Region& region, const std::string& boreField);

/// "1", "1 and 2", "1, 2 and 5".
std::string listed(const std::vector<std::string>& items);

} // namespace pw::outline
