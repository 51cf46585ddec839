#include "core/plate/mesh.h"

#include <cmath>
#include <numbers>

namespace pw::plate {

using std::numbers::pi;

double Sector::opening() const {
    return count <= 1 ? 2 * pi : 2 * pi / count;
}

shape::Point Sector::fold(shape::Point p) const {
    if (count <= 1 || (p.x == 0 && p.y == 0))
        return p;
    const double open = opening();
    const double angle = std::atan2(p.y, p.x) - line0;
    const double pair = 2 * open; // a sector and its mirror image repeat together
    const double turns = std::floor(angle / pair);
    const double within = angle - turns * pair;
    if (within <=
        open) // a copy turned by whole pairs; none when p is already here, and then p stays as it is
        return std::fmod(turns * pair, 2 * pi) == 0 ? p : shape::rotated(p, -turns * pair);
    return shape::polar(shape::norm(p), line0 + pair - within);
}

} // namespace pw::plate
