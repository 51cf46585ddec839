#pragma once

#include "core/units/quantity.h"

/// Quantities for tests, in the units figures are given in.
namespace pw::testing {

inline units::Length mm(double value) {
    return units::Length::fromMm(value);
}

inline units::Force newton(double value) {
    return units::Force::fromN(value);
}

} // namespace pw::testing
