#include "app/cli/terminal.h"

namespace pw::cli {

namespace {

/// Bytes of the order that the text starts with; 0 when it starts with none.
std::size_t orderLength(std::string_view text) {
    const auto byte = [&](std::size_t i) {
        return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u;
    };
    if ((byte(0) < 0x20 && byte(0) != '\n' && byte(0) != '\t') || byte(0) == 0x7f)
        return 1;
    if (byte(0) == 0xc2 && byte(1) >= 0x80 && byte(1) < 0xa0) // U+0080 to U+009F
        return 2;
    // U+200E, U+200F, U+202A to U+202E, U+2066 to U+2069
    if (byte(0) == 0xe2 &&
        ((byte(1) == 0x80 && (byte(2) == 0x8e || byte(2) == 0x8f || (byte(2) >= 0xaa && byte(2) <= 0xae))) ||
         (byte(1) == 0x81 && byte(2) >= 0xa6 && byte(2) <= 0xa9)))
        return 3;
    return 0;
}

} // namespace

std::string forTerminal(std::string_view utf8) {
    std::string plain;
    plain.reserve(utf8.size());
    while (!utf8.empty()) {
        const std::size_t order = orderLength(utf8);
        plain += order ? '?' : utf8.front();
        utf8.remove_prefix(order ? order : 1);
    }
    return plain;
}

} // namespace pw::cli
