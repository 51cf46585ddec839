#pragma once

#include "core/units/format.h"
#include "core/units/quantity.h"

#include <string>
#include <vector>

namespace pw::material {

/// A thickness in which plate is rolled (resources/stock_thicknesses.csv).
struct StockThickness {
    units::Length thickness;
    std::string label; ///< "3/8 in", "10 mm"
};

/// Inch fractions or round millimetres, thinnest first.
const std::vector<StockThickness>& stockThicknesses(units::System system);

} // namespace pw::material
