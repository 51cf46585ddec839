#pragma once

#include "core/shape/region.h"

#include <vector>

namespace pw::outline {

/// The least material between two edges of the plate.
struct Ligament {
    shape::Part a = shape::Part::Rim;
    int ia = 0; ///< as in shape::Hole; 0 for the rim
    shape::Part b = shape::Part::Rim;
    int ib = 0;
    double width = 0; ///< mm; 0 when the edges meet
    shape::Point at;  ///< middle of the narrowest place
    shape::Point onA, onB;
};

/// One for each pair of holes and for each hole and the rim, narrowest first.
std::vector<Ligament> ligaments(const shape::Region& region);

} // namespace pw::outline
