#pragma once

#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

/// What every fuzz target needs. A target is one function over bytes; libFuzzer calls it until something that
/// must hold does not.
namespace pw::fuzz {

/// Ends the run with what was broken; libFuzzer keeps the bytes that did it.
[[noreturn]] inline void broken(const char* what, const std::string& about, const char* file, int line) {
    std::fprintf(stderr, "%s:%d: does not hold: %s\n  %s\n", file, line, what, about.c_str());
    std::abort();
}

inline std::string_view textOf(const std::uint8_t* data, std::size_t size) {
    return {reinterpret_cast<const char*>(data), size};
}

/// A message that may be shown: says something, on one line or more, and cannot garble a terminal.
inline bool isFitToShow(std::string_view message) {
    if (message.size() < 5 || message.size() > 2000)
        return false;
    for (const char c : message)
        if ((static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7f)
            return false;
    return true;
}

} // namespace pw::fuzz

/// `about` is text put together only when the condition fails.
#define PW_HOLDS(condition, about)                                                                           \
    do {                                                                                                     \
        if (!(condition))                                                                                    \
            pw::fuzz::broken(#condition, about, __FILE__, __LINE__);                                         \
    } while (false)
