#pragma once

#include "core/units/parse.h"

#include <cstddef>
#include <optional>
#include <string_view>

/// The spellings of units we read, and what each is worth.
namespace pw::units {

struct Unit {
    double scale = 1;      ///< base units in one of this
    double offset = 0;     ///< base value of zero of this (temperature)
    bool isGauge = false;  ///< a sheet gauge number, looked up instead of scaled
    std::size_t chars = 0; ///< how much of the text the spelling took

    double toBase(double value) const { return value * scale + offset; }
};

/// The longest spelling of a unit of this kind at the start of the text; it must end there as a word.
std::optional<Unit> unitAt(Kind kind, std::string_view text);

} // namespace pw::units
