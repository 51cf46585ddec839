#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The standard pitches, from resources/threads.csv.
namespace pw::thread {

struct StandardSize {
    std::string series; ///< "UNC", "UNF", "UNEF", "M", "BSW", "BSF", "ACME", "Tr"
    std::string size;   ///< "5/8", "1-1/4", "#10", "20"
    units::Length diameter, pitch;
};

const std::vector<StandardSize>& standardSizes();

/// The standard pitch of a size in its series.
std::optional<units::Length> standardPitch(std::string_view series, units::Length diameter);

/// The series in which this size has this pitch, out of those given; empty when there is none.
std::string standardSeries(const std::vector<std::string_view>& series, units::Length diameter,
                           units::Length pitch);

/// The same size as typed or tabulated, apart from rounding.
bool same(units::Length a, units::Length b);

} // namespace pw::thread
