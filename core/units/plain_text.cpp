#include "core/units/plain_text.h"

#include <utility>

namespace pw::units {

namespace {

constexpr std::pair<std::string_view, std::string_view> kForms[] = {
    {"\u00a0", " "},    {"\u2007", " "},  {"\u2009", " "},    {"\u202f", " "},    {"\t", " "},
    {"\u2032", "'"},    {"\u2019", "'"},  {"\u2018", "'"},    {"\u2033", "\""},   {"\u201d", "\""},
    {"\u201c", "\""},   {"\u2010", "-"},  {"\u2011", "-"},    {"\u2212", "-"},    {"\u2013", "\x01"},
    {"\u2014", "\x01"}, {"\u00b1", "+-"}, {"+/-", "+-"},      {"\u2044", "/"},    {"\u00b7", "."},
    {"\u22c5", "."},    {"\u2219", "."},  {"\u00b2", "2"},    {"\u00b0", "deg"},  {"\u00ba", "deg"},
    {"\u00b5", "u"},    {"\u03bc", "u"},  {"\u2103", "degC"}, {"\u2109", "degF"},
};

constexpr std::pair<std::string_view, std::string_view> kFractions[] = {
    {"\u00bd", "1/2"}, {"\u00bc", "1/4"}, {"\u00be", "3/4"},  {"\u215b", "1/8"}, {"\u215c", "3/8"},
    {"\u215d", "5/8"}, {"\u215e", "7/8"}, {"\u2153", "1/3"},  {"\u2154", "2/3"}, {"\u2155", "1/5"},
    {"\u2156", "2/5"}, {"\u2157", "3/5"}, {"\u2158", "4/5"},  {"\u2159", "1/6"}, {"\u215a", "5/6"},
    {"\u2150", "1/7"}, {"\u2151", "1/9"}, {"\u2152", "1/10"},
};

bool isControl(char c) {
    return static_cast<unsigned char>(c) < 0x20 || c == 0x7f;
}

/// Bytes of the well-formed UTF-8 character at the start, or 0.
std::size_t characterLength(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byte(0);
    const std::size_t length = first < 0x80                    ? 1
                               : first >= 0xc2 && first < 0xe0 ? 2
                               : first >= 0xe0 && first < 0xf0 ? 3
                               : first >= 0xf0 && first < 0xf5 ? 4
                                                               : 0;
    if (length == 0 || length > text.size())
        return 0;
    for (std::size_t i = 1; i < length; ++i)
        if ((byte(i) & 0xc0) != 0x80)
            return 0;
    return length;
}

} // namespace

std::optional<std::string> plainText(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        bool replaced = false;
        for (const auto& [form, ascii] : kForms)
            if (!replaced && text.starts_with(form)) {
                plain += ascii;
                text.remove_prefix(form.size());
                replaced = true;
            }
        for (const auto& [form, ascii] : kFractions)
            if (!replaced && text.starts_with(form)) {
                if (!plain.empty() && isDigit(plain.back()))
                    plain += ' ';
                plain += ascii;
                text.remove_prefix(form.size());
                replaced = true;
            }
        if (replaced)
            continue;
        if (isControl(text.front()))
            return std::nullopt;
        plain += text.front();
        text.remove_prefix(1);
    }
    const std::size_t first = plain.find_first_not_of(' ');
    if (first == std::string::npos)
        return std::string();
    return plain.substr(first, plain.find_last_not_of(' ') - first + 1);
}

std::string quoted(std::string_view text) {
    constexpr int kMost = 40;
    std::string shown = "\"";
    for (int count = 0; !text.empty(); ++count) {
        if (count == kMost) {
            shown += "...";
            break;
        }
        const std::size_t length = characterLength(text);
        // U+0080 to U+009F are control characters too.
        const bool odd = length == 0 || isControl(text.front()) ||
                         (length == 2 && text[0] == '\xc2' && static_cast<unsigned char>(text[1]) < 0xa0);
        shown += odd ? std::string_view("?") : text.substr(0, length);
        text.remove_prefix(length == 0 ? 1 : length);
    }
    return shown + "\"";
}

} // namespace pw::units
