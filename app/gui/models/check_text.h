#pragma once

#include "core/units/format.h"
#include "core/verdict/check.h"

#include <QString>

namespace pw::gui {

/// A figure of a check in its unit ("N", "mm", "MPa", "N.m", ...), shown in the user's system.
QString checkFigure(double value, const std::string& unit, units::System system);

/// The margin at the end of a row: a bare ratio for strength ("1.5"), a figure for room ("6 mm"), "?" when it
/// is not known.
QString marginText(const verdict::Check& check, units::System system);

} // namespace pw::gui
