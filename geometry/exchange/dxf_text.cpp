#include "geometry/exchange/dxf_text.h"

#include "core/util/require.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace pw::exchange {

namespace {

/// A group value may have 255 bytes in R12.
constexpr std::size_t kMostBytes = 250;
std::string spelled(char32_t sign) {
    if (sign > 0xFFFF)
        return "?";
    if (sign >= 0x80 || sign == '\\' || sign == '^')
        return "\\U+" + hexadecimal(sign, 4);
    return std::string(1, static_cast<char>(sign));
}

std::string trimmedFixed(double value, int decimals) {
    util::require(std::isfinite(value), "a figure for the drawing is not finite");
    char buffer[400]; // the longest double in fixed notation has 309 digits before the point
    const auto [end, error] =
        std::to_chars(std::begin(buffer), std::end(buffer), value, std::chars_format::fixed, decimals);
    util::require(error == std::errc{}, "a figure for the drawing is too long");
    std::string text(std::begin(buffer), end);
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

} // namespace

std::string dxfReal(double value, int decimals) {
    std::string text = trimmedFixed(value, decimals);
    return text.find('.') == std::string::npos ? text + ".0" : text;
}

std::string plainFigure(double value, int decimals) {
    return trimmedFixed(value, decimals);
}

std::string dxfText(std::string_view utf8, std::size_t limit) {
    std::string text;
    char32_t last = 0;
    for (const char32_t sign : cleanSigns(utf8, limit)) {
        const bool controlCode = sign == '%' && last == '%';
        last = sign;
        if (controlCode)
            continue;
        const std::string next = spelled(sign);
        if (text.size() + next.size() > kMostBytes - 3)
            return text + "...";
        text += next;
    }
    return text;
}

std::vector<std::string> wrapped(std::string_view utf8, std::size_t width) {
    util::require(width >= 8, "wrapped: lines too short");
    std::vector<std::string> lines;
    while (!utf8.empty()) {
        if (utf8.size() <= width) {
            lines.emplace_back(utf8);
            break;
        }
        std::size_t cut = utf8.rfind(' ', width);
        if (cut == std::string_view::npos || cut == 0) {
            cut = width;
            while (cut > 1 && (static_cast<unsigned char>(utf8[cut]) & 0xC0) == 0x80)
                --cut;
        }
        lines.emplace_back(utf8.substr(0, cut));
        utf8.remove_prefix(cut);
        utf8.remove_prefix(std::min(utf8.find_first_not_of(' '), utf8.size()));
    }
    return lines;
}

} // namespace pw::exchange
