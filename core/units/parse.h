#pragma once

#include "core/units/quantity.h"
#include "core/util/result.h"

#include <string>
#include <string_view>

/// Reads a quantity as a person types it: "7/8 in", "2 11/32\"", "180-205 lbf", "60 lb-ft". Decimal point always.
/// A problem has no field name (the caller knows it); its message shows the text and gives an example.
namespace pw::units {

enum class Kind { Length, Area, Force, Rate, Torque, Stress, Angle, Temperature };

/// The kind of a quantity type, for generic code.
template<class Q>
constexpr Kind kindOf();
template<> constexpr Kind kindOf<Length>() { return Kind::Length; }
template<> constexpr Kind kindOf<Area>() { return Kind::Area; }
template<> constexpr Kind kindOf<Force>() { return Kind::Force; }
template<> constexpr Kind kindOf<Rate>() { return Kind::Rate; }
template<> constexpr Kind kindOf<Torque>() { return Kind::Torque; }
template<> constexpr Kind kindOf<Stress>() { return Kind::Stress; }
template<> constexpr Kind kindOf<Angle>() { return Kind::Angle; }
template<> constexpr Kind kindOf<Temperature>() { return Kind::Temperature; }

/// In base units. `bareUnit` ("mm", "in", ...) is taken for a figure without a unit; empty: that is a problem.
util::Result<double> parseBase(Kind kind, std::string_view text, std::string_view bareUnit = {});

/// One value or a range ("180-205 lbf", "180 to 205 lbf", "190 ±8 lbf", "190 lbf ±5%"), low <= high, in base units.
util::Result<Range<double>> parseRangeBase(Kind kind, std::string_view text, std::string_view bareUnit = {});

template<class Q>
util::Result<Q> parse(std::string_view text, std::string_view bareUnit = {}) {
    auto base = parseBase(kindOf<Q>(), text, bareUnit);
    if (!base)
        return base.problem();
    return Q::fromBase(*base);
}

template<class Q>
util::Result<Range<Q>> parseRange(std::string_view text, std::string_view bareUnit = {}) {
    auto base = parseRangeBase(kindOf<Q>(), text, bareUnit);
    if (!base)
        return base.problem();
    return Range<Q>{Q::fromBase(base->low), Q::fromBase(base->high)};
}

/// "length", "force", ... as it stands in a sentence.
std::string_view nameOf(Kind kind);

/// What a right answer looks like: "20 mm or 3/4 in".
std::string_view exampleOf(Kind kind);

/// Does the text carry a unit of this kind (so that a bare figure can be told from a full one)?
bool hasUnit(Kind kind, std::string_view text);

} // namespace pw::units
