#pragma once

#include "core/shape/loop.h"

#include <array>
#include <vector>

namespace pw::mesh {

/// Moves each point that is not `fixed` towards the mean of its neighbours, only when the worst triangle
/// about it gets better by that. In the order of the points, so the same input gives the same output.
void smooth(std::vector<shape::Point>& points, const std::vector<std::array<int, 3>>& triangles,
            const std::vector<bool>& fixed, int sweeps);

} // namespace pw::mesh
