#pragma once

#include "core/shape/loop.h"

namespace pw::shape {

/// The two points where two curves come closest, and how close that is (0: they meet).
struct Nearest {
    Point onA, onB;
    double distance = 0;
};

Nearest nearest(const Side& a, const Side& b);
Nearest nearest(const Loop& a, const Loop& b);

/// How two sides meet. `overlap`: they share a stretch, not only points; then `points` is empty.
struct Meeting {
    std::vector<Point> points;
    bool overlap = false;
};

/// `within`: how close counts as touching; negative takes 1e-10 of the larger side's reach.
Meeting meeting(const Side& a, const Side& b, double within = -1);

} // namespace pw::shape
