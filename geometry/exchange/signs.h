#pragma once

#include <cstddef>
#include <string>
#include <string_view>

/// Titles and names come from anywhere and go into files that other programs read.
namespace pw::exchange {

/// The signs of a UTF-8 text, fit for one line: control characters, line ends, zero-width and direction marks
/// become a space, several one, none at the ends; bytes that are not UTF-8 become U+FFFD. Reads no further
/// than `limit` signs; a text that is longer ends in "...".
std::u32string cleanSigns(std::string_view utf8, std::size_t limit);

/// The same as UTF-8 again; what is no character to XML 1.0 becomes U+FFFD as well.
std::string cleanText(std::string_view utf8, std::size_t limit);

/// `digits` hexadecimal digits, capitals.
std::string hexadecimal(char32_t value, int digits);

} // namespace pw::exchange
