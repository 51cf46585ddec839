#include "core/units/parse.h"

#include "core/units/plain_text.h"
#include "core/units/sheet_gauge.h"
#include "core/units/unit_table.h"
#include "core/util/require.h"
#include "core/util/say.h"

#include <charconv>
#include <cmath>
#include <optional>

namespace pw::units {

namespace {

using util::Problem;

constexpr std::size_t kLongestText = 80;

/// What a shop could mean; beyond is a slip of the keyboard. Base units. Zero is always allowed.
struct Limits {
    double least, most;
};

Limits limitsOf(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return {1e-6, 1e6};
    case Kind::Area:
        return {1e-6, 1e10};
    case Kind::Force:
        return {1e-6, 1e9};
    case Kind::Rate:
        return {1e-9, 1e9};
    case Kind::Torque:
        return {1e-6, 1e12};
    case Kind::Stress:
        return {1e-9, 1e7};
    case Kind::Angle:
        return {1e-9, 100};
    case Kind::Temperature:
        return {1e-9, 5000};
    }
    return {0, 0};
}

/// A number as typed, before its unit.
struct Figure {
    double value = 0;
    bool isWhole = false; ///< digits only
    bool isNegative = false;
};

/// A figure with its unit, if it had one. Kept apart, since "180-205 lbf" gets the first unit from the
/// second.
struct Typed {
    Figure figure;
    std::optional<Unit> unit;
    double extra = 0; ///< base units: the inches after the feet
};

/// Thrown inside this file only: the reader gives up at the first thing it cannot read.
struct Unreadable {
    std::string reason; ///< may be empty: nothing to say but "not a length"
};

class Reader {
public:
    Reader(Kind kind, std::string_view text, std::string_view bareUnit) : m_kind(kind), m_text(text) {
        if (bareUnit.empty())
            return;
        m_bare = unitAt(kind, bareUnit);
        util::require(m_bare && m_bare->chars == bareUnit.size(),
                      "parse: no such unit for a bare figure: " + std::string(bareUnit));
    }

    /// [figure unit] or a range of them, to the end of the text.
    Range<double> read() {
        Typed first = readTyped();
        skipBlanks();
        if (atEnd())
            return Range<double>::exactly(toBase(first));
        if (take("+-"))
            return readTolerance(first);
        const bool worded = takeWord("to");
        if (!worded && !take("-") && !take(std::string_view(&kDash, 1)))
            throw Unreadable{};
        const bool hyphen = !worded && m_text[m_at - 1] == '-';
        skipBlanks();
        if (hyphen && !atEnd() && (m_text[m_at] == '-' || m_text[m_at] == '+'))
            throw Unreadable{say("write a range with \"to\" where a figure has a sign")};
        Typed second = readTyped();
        skipBlanks();
        if (!atEnd())
            throw Unreadable{};
        if (first.unit && !second.unit)
            throw Unreadable{say("the second figure has no unit")};
        if (!first.unit)
            first.unit = second.unit;
        const Range<double> range{toBase(first), toBase(second)};
        if (range.low > range.high)
            throw Unreadable{say("a range starts with the smaller figure")};
        return range;
    }

    bool sawUnit() const { return m_sawUnit; }

private:
    bool atEnd() const { return m_at >= m_text.size(); }
    char peek(std::size_t ahead = 0) const {
        return m_at + ahead < m_text.size() ? m_text[m_at + ahead] : '\0';
    }

    void skipBlanks() {
        while (peek() == ' ')
            ++m_at;
    }

    bool take(std::string_view what) {
        if (!m_text.substr(m_at).starts_with(what))
            return false;
        m_at += what.size();
        return true;
    }

    bool takeWord(std::string_view word) {
        const std::size_t start = m_at;
        if (take(word) && (peek() == ' ' || isDigit(peek())))
            return true;
        m_at = start;
        return false;
    }

    std::string_view takeDigits() {
        const std::size_t start = m_at;
        while (isDigit(peek()))
            ++m_at;
        return m_text.substr(start, m_at - start);
    }

    /// Digits, "1,250.5", ".030".
    Figure readPlainNumber() {
        std::string digits(takeDigits());
        Figure figure;
        figure.isWhole = true;
        const std::size_t firstGroup = digits.size();
        while (peek() == ',') {
            ++m_at;
            const std::string_view group = takeDigits();
            if (group.size() != 3 || firstGroup == 0 || firstGroup > 3 || digits.front() == '0')
                throw Unreadable{say("a comma only groups thousands, the decimal mark is a point")};
            digits += group;
            figure.isWhole = false;
        }
        if (peek() == '.' && (isDigit(peek(1)) || !digits.empty())) {
            ++m_at;
            digits += '.';
            digits += takeDigits();
            figure.isWhole = false;
        }
        if (digits.empty())
            throw Unreadable{};
        if (peek() == '.' && isDigit(peek(1)))
            throw Unreadable{say("a number has one decimal point")};
        if (peek() == ',')
            throw Unreadable{say("a comma only groups thousands, the decimal mark is a point")};
        const auto [stop, error] =
            std::from_chars(digits.data(), digits.data() + digits.size(), figure.value);
        if (error != std::errc() || !std::isfinite(figure.value))
            throw Unreadable{say("the number is too long")};
        return figure;
    }

    /// "11/32" at this place, or nothing and the place is kept.
    std::optional<Figure> takeFraction() {
        const std::size_t start = m_at;
        const std::string_view top = takeDigits();
        skipBlanks();
        if (top.empty() || !take("/")) {
            m_at = start;
            return std::nullopt;
        }
        skipBlanks();
        const std::string_view bottom = takeDigits();
        if (bottom.empty()) { // "2 /in" and the like: the slash belongs to a unit
            m_at = start;
            return std::nullopt;
        }
        constexpr std::size_t kMostDigits = 5;
        if (top.size() > kMostDigits || bottom.size() > kMostDigits || peek() == '.' || peek() == ',' ||
            peek() == '/')
            throw Unreadable{say("a fraction has whole numbers above and below")};
        const double over = toNumber(top), under = toNumber(bottom);
        if (under == 0)
            throw Unreadable{say("a fraction cannot have 0 below")};
        return Figure{over / under, false, false};
    }

    static double toNumber(std::string_view digits) {
        double value = 0;
        std::from_chars(digits.data(), digits.data() + digits.size(), value);
        return value;
    }

    /// "7/8", "2 11/32", "2-11/32", "12.7", with a sign where one may stand.
    Figure readFigure(bool signAllowed) {
        bool negative = false;
        if (signAllowed && (peek() == '-' || peek() == '+')) {
            negative = peek() == '-';
            ++m_at;
        }
        Figure figure;
        if (const auto fraction = takeFraction()) {
            figure = *fraction;
        } else {
            figure = readPlainNumber();
            if (figure.isWhole)
                joinFraction(figure);
        }
        figure.isNegative = negative;
        if (negative)
            figure.value = -figure.value;
        return figure;
    }

    /// A whole number takes the proper fraction that follows a blank, or a hyphen with no blank about it.
    void joinFraction(Figure& whole) {
        const std::size_t start = m_at;
        const bool hyphen = peek() == '-';
        if (hyphen)
            ++m_at;
        else
            skipBlanks();
        const auto fraction = m_at > start ? takeFraction() : std::nullopt;
        if (!fraction) {
            m_at = start;
            return;
        }
        if (fraction->value >= 1)
            throw Unreadable{say("the fraction after a whole number is less than one")};
        whole.value += fraction->value;
        whole.isWhole = false;
    }

    std::optional<Unit> takeUnit() {
        const std::size_t start = m_at;
        skipBlanks();
        const auto unit = unitAt(m_kind, m_text.substr(m_at));
        if (!unit) {
            m_at = start;
            return std::nullopt;
        }
        m_at += unit->chars;
        m_sawUnit = true;
        return unit;
    }

    Typed readTyped() {
        Typed typed;
        typed.figure = readFigure(true);
        typed.unit = takeUnit();
        if (m_kind == Kind::Length && typed.unit && typed.figure.isWhole &&
            typed.unit->scale == 12 * kMmPerInch)
            takeInches(typed);
        return typed;
    }

    /// "1 ft 2 in", "1'-2 1/2\"": the inches belong to the feet when they carry their unit and are under 12.
    void takeInches(Typed& feet) {
        const std::size_t start = m_at;
        skipBlanks();
        if (take("-"))
            skipBlanks();
        if (isDigit(peek()) || peek() == '.') {
            const Figure inches = readFigure(false);
            const auto unit = takeUnit();
            if (unit && unit->scale == kMmPerInch && inches.value < 12) {
                feet.extra = (feet.figure.isNegative ? -1 : 1) * inches.value * kMmPerInch;
                return;
            }
        }
        m_at = start;
    }

    Range<double> readTolerance(Typed middle) {
        skipBlanks();
        const Figure tolerance = readFigure(false);
        skipBlanks();
        if (take("%")) {
            skipBlanks();
            if (!middle.unit)
                middle.unit = takeUnit(); // "190 ±5% lbf"
            skipBlanks();
            if (!atEnd())
                throw Unreadable{};
            if (m_kind == Kind::Temperature)
                throw Unreadable{say("a temperature has no percentage; give degrees")};
            if (tolerance.value >= 100)
                throw Unreadable{say("the tolerance is as large as the figure")};
            const double value = toBase(middle);
            const double half = std::abs(value) * tolerance.value / 100;
            return {checked(value - half), checked(value + half)};
        }
        std::optional<Unit> unit = takeUnit();
        skipBlanks();
        if (!atEnd())
            throw Unreadable{};
        if (!unit)
            unit = middle.unit ? middle.unit : m_bare;
        if (!middle.unit)
            middle.unit = unit;
        const double value = toBase(middle);
        if (unit->isGauge)
            throw Unreadable{say("a gauge number has no tolerance")};
        const double half = tolerance.value * unit->scale; // a difference: no offset
        return {checked(value - half), checked(value + half)};
    }

    double toBase(const Typed& typed) const {
        const std::optional<Unit>& unit = typed.unit ? typed.unit : m_bare;
        if (!unit)
            throw Unreadable{say("no unit")};
        if (!unit->isGauge)
            return checked(unit->toBase(typed.figure.value) + typed.extra);
        const auto thickness = typed.figure.isWhole ? sheetGauge(typed.figure.value) : std::nullopt;
        if (!thickness)
            throw Unreadable{say("the sheet gauges run from 3 to 30")};
        return thickness->mm();
    }

    double checked(double base) const {
        const Limits limits = limitsOf(m_kind);
        if (m_kind == Kind::Temperature && base < -273.15)
            throw Unreadable{say("below absolute zero")};
        if (!std::isfinite(base) || std::abs(base) > limits.most)
            throw Unreadable{say("far too large")};
        if (base != 0 && std::abs(base) < limits.least)
            // What is left of a subtraction may be a rounding error; nobody types so small a temperature.
            return m_kind == Kind::Temperature ? 0 : throw Unreadable{say("far too small")};
        return base;
    }

    Kind m_kind;
    std::string_view m_text;
    std::size_t m_at = 0;
    std::optional<Unit> m_bare;
    bool m_sawUnit = false;
};

const char* notOneWords(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return PW_SAY("Not a length: %1");
    case Kind::Area:
        return PW_SAY("Not an area: %1");
    case Kind::Force:
        return PW_SAY("Not a force: %1");
    case Kind::Rate:
        return PW_SAY("Not a spring rate: %1");
    case Kind::Torque:
        return PW_SAY("Not a torque: %1");
    case Kind::Stress:
        return PW_SAY("Not a stress or pressure: %1");
    case Kind::Angle:
        return PW_SAY("Not an angle: %1");
    case Kind::Temperature:
        break;
    }
    return PW_SAY("Not a temperature: %1");
}

const char* nothingWords(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return PW_SAY("Nothing typed where a length is wanted. Type it like %1.");
    case Kind::Area:
        return PW_SAY("Nothing typed where an area is wanted. Type it like %1.");
    case Kind::Force:
        return PW_SAY("Nothing typed where a force is wanted. Type it like %1.");
    case Kind::Rate:
        return PW_SAY("Nothing typed where a spring rate is wanted. Type it like %1.");
    case Kind::Torque:
        return PW_SAY("Nothing typed where a torque is wanted. Type it like %1.");
    case Kind::Stress:
        return PW_SAY("Nothing typed where a stress or pressure is wanted. Type it like %1.");
    case Kind::Angle:
        return PW_SAY("Nothing typed where an angle is wanted. Type it like %1.");
    case Kind::Temperature:
        break;
    }
    return PW_SAY("Nothing typed where a temperature is wanted. Type it like %1.");
}

Problem notOne(Kind kind, std::string_view text, const std::string& reason) {
    const std::string example = say(exampleOf(kind).data());
    const std::string message = say(notOneWords(kind), {quoted(text)});
    return {"", reason.empty() ? say("%1. Type it like %2.", {message, example})
                               : say("%1 (%2). Type it like %3.", {message, reason, example})};
}

} // namespace

std::string_view nameOf(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return PW_SAY("length");
    case Kind::Area:
        return PW_SAY("area");
    case Kind::Force:
        return PW_SAY("force");
    case Kind::Rate:
        return PW_SAY("spring rate");
    case Kind::Torque:
        return PW_SAY("torque");
    case Kind::Stress:
        return PW_SAY("stress or pressure");
    case Kind::Angle:
        return PW_SAY("angle");
    case Kind::Temperature:
        return PW_SAY("temperature");
    }
    return PW_SAY("quantity");
}

std::string_view exampleOf(Kind kind) {
    switch (kind) {
    case Kind::Length:
        return PW_SAY("20 mm or 3/4 in");
    case Kind::Area:
        return PW_SAY("1600 mm2 or 2.5 in2");
    case Kind::Force:
        return PW_SAY("7500 N or 1690 lbf");
    case Kind::Rate:
        return PW_SAY("12 N/mm or 68 lb/in");
    case Kind::Torque:
        return PW_SAY("60 N.m or 45 lb-ft");
    case Kind::Stress:
        return PW_SAY("250 MPa or 36 ksi");
    case Kind::Angle:
        return PW_SAY("30 deg");
    case Kind::Temperature:
        return PW_SAY("20 C or 68 F");
    }
    return PW_SAY("20 mm");
}

util::Result<Range<double>> parseRangeBase(Kind kind, std::string_view text, std::string_view bareUnit) {
    if (text.size() > kLongestText)
        return notOne(kind, text, say("too long"));
    const auto plain = plainText(text);
    if (!plain)
        return notOne(kind, text, say("it holds odd characters"));
    if (plain->empty())
        return Problem{"", say(nothingWords(kind), {say(exampleOf(kind).data())})};
    try {
        return Reader(kind, *plain, bareUnit).read();
    } catch (const Unreadable& unreadable) {
        return notOne(kind, text, unreadable.reason);
    }
}

util::Result<double> parseBase(Kind kind, std::string_view text, std::string_view bareUnit) {
    const auto range = parseRangeBase(kind, text, bareUnit);
    if (!range)
        return range.problem();
    if (!range->isOne())
        return notOne(kind, text, say("one figure is wanted here, not a range"));
    return range->low;
}

bool hasUnit(Kind kind, std::string_view text) {
    const auto plain = plainText(text);
    if (!plain || text.size() > kLongestText)
        return false;
    Reader reader(kind, *plain, {});
    try {
        reader.read();
    } catch (const Unreadable&) {
        // Only whether a unit was met counts here.
    }
    return reader.sawUnit();
}

} // namespace pw::units
