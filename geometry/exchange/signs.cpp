#include "geometry/exchange/signs.h"

namespace pw::exchange {

namespace {

constexpr char32_t kNoSign = 0xFFFD;

/// Reads one sign and moves on; a byte that starts no valid sign is passed over alone.
char32_t nextSign(std::string_view utf8, std::size_t& at) {
    const unsigned char first = static_cast<unsigned char>(utf8[at++]);
    if (first < 0x80)
        return first;
    const std::size_t more = first >= 0xF0 && first < 0xF5   ? 3
                             : first >= 0xE0 && first < 0xF0 ? 2
                             : first >= 0xC2 && first < 0xE0 ? 1
                                                             : 0;
    if (more == 0 || at + more > utf8.size())
        return kNoSign;
    char32_t sign = first & (0x3Fu >> more);
    for (std::size_t i = 0; i < more; ++i) {
        const unsigned char next = static_cast<unsigned char>(utf8[at + i]);
        if ((next & 0xC0) != 0x80)
            return kNoSign;
        sign = (sign << 6) | (next & 0x3Fu);
    }
    const bool overlong = (more == 2 && sign < 0x800) || (more == 3 && sign < 0x10000);
    if (overlong || (sign >= 0xD800 && sign < 0xE000) || sign > 0x10FFFF)
        return kNoSign;
    at += more;
    return sign;
}

bool isBlank(char32_t sign) {
    return sign <= 0x20 || (sign >= 0x7F && sign <= 0xA0) || (sign >= 0x200B && sign <= 0x200F) ||
           (sign >= 0x2028 && sign <= 0x202E) || (sign >= 0x2060 && sign <= 0x206F) || sign == 0xFEFF;
}

} // namespace

std::u32string cleanSigns(std::string_view utf8, std::size_t limit) {
    std::u32string signs;
    bool blankDue = false;
    for (std::size_t at = 0; at < utf8.size();) {
        const char32_t sign = nextSign(utf8, at);
        if (isBlank(sign)) {
            blankDue = !signs.empty();
            continue;
        }
        if (signs.size() + (blankDue ? 1 : 0) >= limit)
            return signs + U"...";
        if (blankDue)
            signs += U' ';
        blankDue = false;
        signs += sign;
    }
    return signs;
}

std::string cleanText(std::string_view utf8, std::size_t limit) {
    std::string out;
    for (char32_t sign : cleanSigns(utf8, limit)) {
        if ((sign & 0xFFFE) == 0xFFFE)
            sign = kNoSign;
        if (sign < 0x80) {
            out += static_cast<char>(sign);
            continue;
        }
        const int more = sign < 0x800 ? 1 : sign < 0x10000 ? 2 : 3;
        const unsigned first = more == 1 ? 0xC0 : more == 2 ? 0xE0 : 0xF0;
        out += static_cast<char>(first | (sign >> (6 * more)));
        for (int k = more - 1; k >= 0; --k)
            out += static_cast<char>(0x80 | ((sign >> (6 * k)) & 0x3F));
    }
    return out;
}

std::string hexadecimal(char32_t value, int digits) {
    static constexpr char kDigits[] = "0123456789ABCDEF";
    std::string text;
    for (int shift = 4 * (digits - 1); shift >= 0; shift -= 4)
        text += kDigits[(value >> shift) & 0xF];
    return text;
}

} // namespace pw::exchange
