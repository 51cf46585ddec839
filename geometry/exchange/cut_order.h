#pragma once

#include "core/shape/loop.h"

#include <vector>

namespace pw::exchange {

/// One cut, as far as its turn depends on it.
struct CutPlace {
    shape::Point pierce;
    shape::Point end; ///< where the torch goes off
    const shape::Loop* loop = nullptr;
};

/// In which order to cut: always on to the nearest pierce (of equals the first given), but not to a cut
/// within `heatReach` mm of the one just made while another costs little: a detour of 100 mm, about a second
/// on most tables, or one and a half times the nearest one's distance. On a ring of holes the next but one
/// is 1.4 to 2 times as far as the next. Common practice, no published source.
std::vector<std::size_t> cutOrder(const std::vector<CutPlace>& cuts, shape::Point from, double heatReach);

} // namespace pw::exchange
