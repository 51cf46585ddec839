#include "core/units/format.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <numeric>
#include <string_view>

namespace pw::units {

namespace {

constexpr const char* kBlank = "\u00a0";

/// "12.50" to "12.5", "12.00" to "12", "-0" to "0".
std::string trimmed(std::string text) {
    if (text.find('.') != std::string::npos) {
        text.erase(text.find_last_not_of('0') + 1);
        if (text.back() == '.')
            text.pop_back();
    }
    return text == "-0" ? "0" : text;
}

/// With so many decimals at most.
std::string fixed(double value, int decimals) {
    if (!std::isfinite(value))
        return "?";
    char buffer[400];
    const auto end =
        std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::fixed, decimals).ptr;
    return trimmed(std::string(buffer, end));
}

/// "1690" to "1,690". Inch readers write it so; metric ones would take the comma for a decimal mark.
std::string grouped(const std::string& text) {
    const std::size_t point = std::min(text.find('.'), text.size());
    const std::size_t first = text.front() == '-' ? 1 : 0;
    std::string result;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i > first && i < point && (point - i) % 3 == 0)
            result += ',';
        result += text[i];
    }
    return result;
}

std::string joined(const std::string& figure, const char* unit) {
    return figure + kBlank + unit;
}

/// "1,690.5 lbf" in the reader's way: "1 690,5 lbf" with a no-break space where the mark is a comma.
std::string spoken(std::string text) {
    if (tongue().decimalMark == '.')
        return text;
    std::string result;
    for (const char c : text)
        if (c == ',')
            result += kBlank;
        else
            result += c == '.' ? tongue().decimalMark : c;
    return result;
}

std::string spokenJoined(const std::string& figure, const char* unit) {
    return spoken(joined(figure, unit));
}

/// Rounded to three figures, would it read as `limit` or more?
bool reads(double value, double limit) {
    return std::abs(value) >= limit * (1 - 0.0005);
}

} // namespace

std::string writtenNumber(double value, int digits) {
    if (!std::isfinite(value))
        return "?";
    if (value == 0)
        return "0";
    char buffer[64];
    const auto end =
        std::to_chars(buffer, buffer + sizeof buffer, value, std::chars_format::scientific, digits - 1).ptr;
    double rounded = 0;
    std::from_chars(buffer, end, rounded);
    const double size = std::abs(rounded);
    if (size < 1e-4 || size >= 1e7) {
        const std::string text(buffer, end);
        const std::size_t e = text.find('e');
        return trimmed(text.substr(0, e)) + text.substr(e);
    }
    const int exponent = static_cast<int>(std::floor(std::log10(size) + 1e-12));
    return fixed(rounded, std::max(0, digits - 1 - exponent));
}

std::string number(double value, int digits) {
    return spoken(writtenNumber(value, digits));
}

std::string written(Length value, System system) {
    if (system == System::Metric)
        return joined(std::abs(value.mm()) < 1 ? writtenNumber(value.mm()) : fixed(value.mm(), 2), "mm");
    return joined(std::abs(value.inch()) < 0.1 ? writtenNumber(value.inch()) : fixed(value.inch(), 3), "in");
}

std::string show(Length value, System system) {
    return spoken(written(value, system));
}

std::string show(Area value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.mm2(), 4), "mm\u00b2")
                                    : spokenJoined(writtenNumber(value.squareInch()), "in\u00b2");
}

std::string show(Force value, System system) {
    if (system == System::Inch)
        return spokenJoined(grouped(writtenNumber(value.lbf())), "lbf");
    return reads(value.newton(), 1000) ? spokenJoined(writtenNumber(value.newton() / 1000), "kN")
                                       : spokenJoined(writtenNumber(value.newton()), "N");
}

std::string show(Rate value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.newtonPerMm()), "N/mm")
                                    : spokenJoined(grouped(writtenNumber(value.lbfPerInch())), "lb/in");
}

std::string show(Torque value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.newtonM()), "N\u00b7m")
                                    : spokenJoined(grouped(writtenNumber(value.footPound())), "lb-ft");
}

std::string show(Energy value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.joule()), "J")
                                    : spokenJoined(grouped(writtenNumber(value.footPound())), "ft-lb");
}

std::string show(Stress value, System system) {
    if (system == System::Inch)
        return reads(value.ksi(), 1) || value.ksi() == 0
                   ? spokenJoined(grouped(writtenNumber(value.ksi())), "ksi")
                   : spokenJoined(writtenNumber(value.ksi() * 1000), "psi");
    return reads(value.mpa(), 10000) ? spokenJoined(writtenNumber(value.mpa() / 1000), "GPa")
                                     : spokenJoined(writtenNumber(value.mpa()), "MPa");
}

std::string showPressure(Stress value, System system) {
    return system == System::Inch ? spokenJoined(grouped(writtenNumber(value.ksi() * 1000)), "psi")
                                  : spokenJoined(writtenNumber(value.mpa() * 10), "bar");
}

std::string show(Temperature value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.celsius()), "\u00b0C")
                                    : spokenJoined(writtenNumber(value.fahrenheit()), "\u00b0F");
}

std::string show(Mass value, System system) {
    return system == System::Metric ? spokenJoined(writtenNumber(value.kg()), "kg")
                                    : spokenJoined(grouped(writtenNumber(value.pound())), "lb");
}

std::string writtenInchFraction(Length value, Length within) {
    const double inches = std::abs(value.inch());
    const double parts = std::round(inches * 64);
    if (!(parts < 1e9) || std::abs(inches - parts / 64) > within.inch())
        return written(value, System::Inch);
    const long long whole = static_cast<long long>(parts) / 64;
    const long long rest = static_cast<long long>(parts) % 64;
    std::string text = value.inch() < 0 && parts > 0 ? "-" : "";
    if (whole > 0 || rest == 0)
        text += std::to_string(whole);
    if (rest > 0) {
        const long long common = std::gcd(rest, 64LL);
        if (whole > 0)
            text += kBlank;
        text += std::to_string(rest / common) + "/" + std::to_string(64 / common);
    }
    return joined(text, "in");
}

std::string inchFraction(Length value, Length within) {
    return spoken(writtenInchFraction(value, within));
}

std::string shownText(std::string_view text) {
    std::string result(text);
    const auto isDigit = [&](std::size_t at) {
        return at < result.size() && result[at] >= '0' && result[at] <= '9';
    };
    if (tongue().decimalMark != '.')
        for (std::size_t i = 1; i < result.size(); ++i)
            if (result[i] == '.' && isDigit(i - 1) && isDigit(i + 1))
                result[i] = tongue().decimalMark;
    return result;
}

std::string plainBlanks(std::string_view text) {
    const std::string_view blank = kBlank;
    std::string result;
    while (!text.empty()) {
        const bool isBlank = text.starts_with(blank);
        result += isBlank ? ' ' : text.front();
        text.remove_prefix(isBlank ? blank.size() : 1);
    }
    return result;
}

} // namespace pw::units
