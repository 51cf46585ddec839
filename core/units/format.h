#pragma once

#include "core/units/quantity.h"
#include "core/util/say.h"

#include <string>
#include <string_view>

/// Quantities as text: few figures, a no-break space before the unit. What is shown has the decimal mark of
/// the reader's language (core/util/say.h); what is written into a file always has a point.
namespace pw::units {

enum class System { Metric, Inch };

/// A number with `digits` significant figures, never in exponent form between 1e-4 and 1e7, no trailing
/// zeros.
std::string number(double value, int digits = 3);

/// "12 mm", "0.472 in". Lengths keep 0.01 mm or 0.001 in; small ones keep three figures.
std::string show(Length value, System system);
std::string show(Area value, System system);
std::string show(Force value, System system);  ///< "7.5 kN", "840 N"; "1,690 lbf"
std::string show(Rate value, System system);   ///< "12 N/mm"; "68.5 lb/in"
std::string show(Torque value, System system); ///< "44 N·m"; "33 lb-ft"
std::string show(Energy value, System system); ///< "170 J"; "125 ft-lb"
std::string show(Stress value, System system); ///< "205 MPa"; "29.7 ksi"
/// Of a fluid, as a gauge shows it: "800 bar"; "11,600 psi".
std::string showPressure(Stress value, System system);
std::string show(Temperature value, System system);
std::string show(Mass value, System system);

/// The nearest inch fraction to 1/64 as a mechanic writes it ("2 11/32 in"), or decimals when it is further
/// off than `within`.
std::string inchFraction(Length value, Length within = Length::fromInch(0.0005));

/// For files, and for values that are put into a job: the same figures with a point, whatever the language.
std::string writtenNumber(double value, int digits = 3);
std::string written(Length value, System system);
std::string writtenInchFraction(Length value, Length within = Length::fromInch(0.0005));

/// A text with figures in it as a file has them ("M10x1.5", "3/4 in", "12.5 mm"), for the reader: its points
/// between digits become the language's mark.
std::string shownText(std::string_view text);

/// No-break spaces turned into plain ones, for files and terminals.
std::string plainBlanks(std::string_view text);

/// "1.15 to 1.25 kN"; one figure when both ends print alike.
template<class Q>
std::string show(const Range<Q>& range, System system) {
    const std::string low = show(range.low, system), high = show(range.high, system);
    if (low == high)
        return low;
    const auto lowSplit = low.rfind("\u00a0"), highSplit = high.rfind("\u00a0");
    const bool sameUnit = lowSplit != std::string::npos && highSplit != std::string::npos &&
                          low.substr(lowSplit) == high.substr(highSplit);
    return say("%1 to %2", {sameUnit ? low.substr(0, lowSplit) : low, high});
}

} // namespace pw::units
