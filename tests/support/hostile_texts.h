#pragma once

#include <string>
#include <vector>

namespace pw::testing {

/// Titles and names that have broken a file somewhere: quotes, line ends, controls, other scripts, torn
/// UTF-8, direction marks, the control codes of the formats themselves, and sheer length.
inline std::vector<std::string> hostileTexts() {
    return {
        "",
        "   ",
        "It's a \"plate\"",
        "two\nlines\r\nand\ttab",
        "  0\nENDSEC\n  0\nEOF\n",
        std::string("nul\0inside", 10),
        "bell\a escape\x1b[31m delete\x7f",
        "Диск № 5, ½ дюйма, Ø 140 ⌀",
        "円板 ディスク",
        "\xF0\x9F\x94\xA9 nut and bolt",
        "torn \xC3",
        "torn \xE2\x82 and \xFF\xFE, overlong \xC0\xAF, surrogate \xED\xA0\x80",
        "left \xE2\x80\xAE right",
        "\\U+0041 \\P \\S1/2; {\\fArial;x} ^J ^ %%u %%% %%c",
        "\\X2\\0041\\X0\\ ');ENDSEC;END-ISO-10303-21; /* ' */ ''",
        "$(reboot) `x` ; | & <b> &amp;",
        std::string(10000, 'x'),
        [] {
            std::string text;
            for (int i = 0; i < 3000; ++i)
                text += "Ж\\";
            return text;
        }(),
    };
}

} // namespace pw::testing
