#pragma once

#include "core/units/quantity.h"

#include <optional>

namespace pw::units {

/// Thickness of uncoated sheet steel by its gauge number (10 is 0.1345 in), for gauges 3 to 30.
/// Source: Manufacturers' Standard Gauge, resources/sheet_gauges.csv.
std::optional<Length> sheetGauge(double number);

} // namespace pw::units
