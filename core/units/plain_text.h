#pragma once

#include <optional>
#include <string>
#include <string_view>

/// Typed text, before it is read and when it is shown back.
namespace pw::units {

/// Stands for an en or em dash after plainText: always a range, never a joint.
inline constexpr char kDash = '\x01';

/// Typographic forms brought to the ASCII a person would type: "2½″" to "2 1/2\"", "±" to "+-", "°" to "deg",
/// "·" to ".", odd blanks to a blank, none at the ends. Nothing when the text holds control characters.
/// What has no such form stays as it is.
std::optional<std::string> plainText(std::string_view text);

constexpr bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

/// The text in quotes for a message: at most 40 characters, nothing in it that could upset a terminal.
std::string quoted(std::string_view text);

} // namespace pw::units
