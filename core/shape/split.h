#pragma once

#include "core/shape/loop.h"

#include <utility>

namespace pw::shape {

/// The two parts of a side before and after a point that lies on it.
std::pair<Side, Side> splitAt(const Side& side, Point p);

/// The same curve with as few vertices as it needs: sides that continue one line or one circle are one side,
/// sides shorter than `within` mm are gone. A full circle keeps two vertices.
Loop merged(const Loop& loop, double within = 1e-9);

} // namespace pw::shape
