#include "core/shape/region.h"

namespace pw::shape {

double area(const Region& region) {
    double sum = signedArea(region.rim);
    for (const Hole& hole : region.holes)
        sum -= signedArea(hole.loop);
    return sum;
}

bool containsMaterial(const Region& region, Point p) {
    if (!contains(region.rim, p))
        return false;
    for (const Hole& hole : region.holes)
        if (contains(hole.loop, p))
            return false;
    return true;
}

} // namespace pw::shape
