#pragma once

#include "core/shape/loop.h"
#include "geometry/exchange/dxf_text.h"

#include <charconv>
#include <string>
#include <string_view>

/// The lowest level of the format: a group code on one line, its value on the next.
namespace pw::exchange::tags {

inline std::string inBase(int value, int base) {
    char buffer[16];
    std::string text(buffer, std::to_chars(std::begin(buffer), std::end(buffer), value, base).ptr);
    for (char& c : text)
        if (c >= 'a' && c <= 'f')
            c = static_cast<char>(c - 'a' + 'A');
    return text;
}

inline void text(std::string& out, int code, std::string_view value) {
    const std::string number = inBase(code, 10);
    out.append(number.size() < 3 ? 3 - number.size() : 0, ' ')
        .append(number)
        .append("\n")
        .append(value)
        .append("\n");
}

inline void whole(std::string& out, int code, int value) {
    text(out, code, inBase(value, 10));
}

inline void handle(std::string& out, int code, int value) {
    text(out, code, inBase(value, 16));
}

inline void real(std::string& out, int code, double value, int decimals = 10) {
    text(out, code, dxfReal(value, decimals));
}

/// Groups code, code + 10: x and y.
inline void flatPoint(std::string& out, int code, shape::Point p) {
    real(out, code, p.x);
    real(out, code + 10, p.y);
}

/// Groups code, code + 10, code + 20: x, y and a z of 0.
inline void point(std::string& out, int code, shape::Point p) {
    flatPoint(out, code, p);
    real(out, code + 20, 0);
}

} // namespace pw::exchange::tags
