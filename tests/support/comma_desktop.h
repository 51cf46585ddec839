#pragma once

#include "tests/support/run.h"

#include <clocale>
#include <cstdlib>
#include <locale>
#include <stdexcept>
#include <string>

namespace pw::testing {

/// A desktop whose decimal mark is a comma, for as long as this lives: the C and C++ settings of this
/// process, as a window toolkit sets them. The locale is made on the spot, so no language needs to be
/// installed.
class CommaDesktop {
public:
    CommaDesktop()
        : m_source(".src", kSource), m_folder(m_source.path() + ".locales"), m_before(std::locale()) {
        std::filesystem::create_directory(m_folder);
        run("localedef -c -i '" + m_source.path() + "' '" + m_folder + "/comma' >/dev/null 2>&1");
        setenv("LOCPATH", m_folder.c_str(), 1);
        std::locale::global(std::locale(std::locale::classic(), new Comma));
        if (!std::setlocale(LC_NUMERIC, "comma"))
            throw std::runtime_error("cannot make a locale with a decimal comma");
        char text[16];
        std::snprintf(text, sizeof text, "%.1f", 1.5);
        if (std::string(text) != "1,5")
            throw std::runtime_error("the locale with a decimal comma has no effect");
    }
    ~CommaDesktop() {
        std::locale::global(m_before);
        std::setlocale(LC_NUMERIC, "C");
        unsetenv("LOCPATH");
        std::filesystem::remove_all(m_folder);
    }
    CommaDesktop(const CommaDesktop&) = delete;
    CommaDesktop& operator=(const CommaDesktop&) = delete;

private:
    struct Comma : std::numpunct<char> {
        char do_decimal_point() const override { return ','; }
        char do_thousands_sep() const override { return '.'; }
        std::string do_grouping() const override { return "\3"; }
    };
    static constexpr const char* kSource =
        "comment_char %\nescape_char /\nLC_NUMERIC\ndecimal_point \"<U002C>\"\n"
        "thousands_sep \"<U002E>\"\ngrouping 3;3\nEND LC_NUMERIC\n";
    FileForTest m_source;
    std::string m_folder;
    std::locale m_before;
};

} // namespace pw::testing
