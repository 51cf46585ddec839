#include "core/units/format.h"
#include "core/units/parse.h"
#include "tests/fuzz/fuzz.h"

#include <cmath>

/// Quantities as people type them. First byte: which kind; second: which unit a bare figure gets, if any.

namespace {

using namespace pw;
using units::Kind;
using units::System;

struct Typed {
    Kind kind;
    const char* bare;
};
constexpr Typed kTyped[] = {
    {Kind::Length, "mm"}, {Kind::Length, "in"},     {Kind::Area, "mm2"},   {Kind::Force, "N"},
    {Kind::Force, "lbf"}, {Kind::Rate, "N/mm"},     {Kind::Torque, "N.m"}, {Kind::Stress, "MPa"},
    {Kind::Angle, "deg"}, {Kind::Temperature, "C"},
};

/// What is shown reads back, and shows the same.
template<class Q>
void expectShownReadsBack(double base) {
    for (const System system : {System::Metric, System::Inch}) {
        const std::string shown = units::show(Q::fromBase(base), system);
        // Beyond 1e-4 and 1e7 of a unit figures have exponents (format.h), which nobody types.
        if (shown.find("e-") != std::string::npos || shown.find("e+") != std::string::npos)
            continue;
        const auto again = units::parse<Q>(shown);
        PW_HOLDS(again, shown + ": " + (again ? "" : again.problem().message));
        PW_HOLDS(units::show(*again, system) == shown, shown + " became " + units::show(*again, system));
    }
}

/// Figures this near to nothing or this large are for no drawing; their units run out of figures.
bool isOfAShop(double base) {
    return base == 0 || (std::abs(base) > 1e-2 && std::abs(base) < 1e5);
}

void expectWrittenReadsBack(double mm) {
    for (const System system : {System::Metric, System::Inch}) {
        const std::string written = units::written(units::Length::fromMm(mm), system);
        const auto again = units::parse<units::Length>(written);
        PW_HOLDS(again, written);
        const double slack = system == System::Metric ? 0.006 : 0.0006 * units::kMmPerInch;
        PW_HOLDS(std::abs(again->mm() - mm) <= slack + std::abs(mm) * 0.006, written);
    }
    const std::string fraction = units::writtenInchFraction(units::Length::fromMm(mm));
    const auto again = units::parse<units::Length>(fraction);
    PW_HOLDS(again, fraction);
    PW_HOLDS(std::abs(again->mm() - mm) <= 0.0006 * units::kMmPerInch + std::abs(mm) * 0.006, fraction);
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    if (size < 2)
        return 0;
    const Typed& typed = kTyped[data[0] % std::size(kTyped)];
    const std::string_view bare = data[1] % 2 ? typed.bare : "";
    const std::string_view text = fuzz::textOf(data + 2, size - 2);

    const auto range = units::parseRangeBase(typed.kind, text, bare);
    const auto one = units::parseBase(typed.kind, text, bare);
    if (!range) {
        PW_HOLDS(!one, std::string(text));
        PW_HOLDS(fuzz::isFitToShow(range.problem().message), range.problem().message);
        PW_HOLDS(fuzz::isFitToShow(one.problem().message), one.problem().message);
        (void)units::hasUnit(typed.kind, text);
        return 0;
    }
    PW_HOLDS(std::isfinite(range->low) && std::isfinite(range->high) && range->low <= range->high,
             std::string(text));
    PW_HOLDS(one.ok() == range->isOne(), std::string(text));
    // Without a unit of its own, a figure is read only where a bare one may stand.
    PW_HOLDS(!bare.empty() || units::hasUnit(typed.kind, text), std::string(text));

    for (const double base : {range->low, range->high}) {
        if (!isOfAShop(base))
            continue;
        switch (typed.kind) {
        case Kind::Length:
            expectShownReadsBack<units::Length>(base);
            expectWrittenReadsBack(base);
            break;
        case Kind::Area:
            expectShownReadsBack<units::Area>(base);
            break;
        case Kind::Force:
            expectShownReadsBack<units::Force>(base);
            break;
        case Kind::Rate:
            expectShownReadsBack<units::Rate>(base);
            break;
        case Kind::Torque:
            expectShownReadsBack<units::Torque>(base);
            break;
        case Kind::Stress:
            expectShownReadsBack<units::Stress>(base);
            break;
        case Kind::Temperature:
            expectShownReadsBack<units::Temperature>(base);
            break;
        case Kind::Angle:
            break;
        }
    }
    return 0;
}
