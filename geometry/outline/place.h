#pragma once

#include "core/shape/region.h"
#include "core/util/result.h"

#include <vector>

namespace pw::outline {

/// Where a plate lies on a sheet: its origin, and its x axis turned counter-clockwise from the sheet's.
struct Place {
    shape::Point at; ///< mm
    double turn = 0; ///< radians
    bool operator==(const Place&) const = default;
};

shape::Region placed(const shape::Region& plate, const Place& place);

/// Plates set out in rows on a rectangle whose low left corner is 0, 0: by their boxes, the highest first,
/// each turned by a quarter when that makes its row lower; `gap` mm between them and to the edges. A simple
/// way: it wastes more steel than it must. The problem says which plate has no room.
util::Result<std::vector<Place>> setOut(const std::vector<shape::Region>& plates, double wide, double high,
                                        double gap);

} // namespace pw::outline
