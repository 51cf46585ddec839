#pragma once

#include <string>
#include <string_view>
#include <vector>

/// How numbers and words are spelled in a DXF file.
namespace pw::exchange {

/// Fixed notation with a point, at most `decimals` places, at least one. The value must be finite.
std::string dxfReal(double value, int decimals = 10);

/// A figure for people: at most `decimals` places, no trailing zeros: "12.7", "8".
std::string plainFigure(double value, int decimals);

/// UTF-8 text made safe for a group value: cleaned (see signs.h), printable ASCII as it is, other signs as
/// \U+XXXX, beyond \U+FFFF "?"; nothing in it can act as a control code of the format (backslash, caret,
/// double percent). Cut after `limit` signs or 250 bytes, then it ends in "...".
std::string dxfText(std::string_view utf8, std::size_t limit = 100);

/// Breaks at spaces into lines of at most `width` bytes; a longer word is broken at a sign.
std::vector<std::string> wrapped(std::string_view utf8, std::size_t width);

} // namespace pw::exchange
