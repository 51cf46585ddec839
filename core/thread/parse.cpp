#include "core/thread/series.h"
#include "core/thread/thread.h"
#include "core/units/format.h"
#include "core/units/plain_text.h"
#include "core/util/say.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <vector>

namespace pw::thread {

namespace {

using util::Problem;

constexpr std::size_t kLongestText = 60;

/// Thrown inside this file only.
struct Unreadable {
    std::string reason;
};

using units::isDigit;

bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

bool oneOf(std::string_view word, std::initializer_list<std::string_view> words) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

/// To the figures that a thread's name has, so that the name means the thread and nothing near it.
double asNamed(double value, int digits = 6) {
    const std::string text = units::writtenNumber(value, digits);
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

/// Walks over the text, lower case.
class Reader {
public:
    explicit Reader(std::string_view text) : m_text(text) {}

    bool atEnd() const { return m_at >= m_text.size(); }
    char peek(std::size_t ahead = 0) const {
        return m_at + ahead < m_text.size() ? m_text[m_at + ahead] : '\0';
    }
    std::size_t place() const { return m_at; }
    void goTo(std::size_t place) { m_at = place; }

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

    /// "20", "1.5", ".25"; nothing where no number stands.
    std::optional<double> takeDecimal() {
        const std::size_t start = m_at;
        while (isDigit(peek()))
            ++m_at;
        if (peek() == '.' && isDigit(peek(1))) {
            ++m_at;
            while (isDigit(peek()))
                ++m_at;
        }
        if (m_at == start)
            return std::nullopt;
        double value = 0;
        const auto [stop, error] = std::from_chars(m_text.data() + start, m_text.data() + m_at, value);
        if (error != std::errc() || stop != m_text.data() + m_at || value > 1e6)
            throw Unreadable{say("a number is too large")};
        return asNamed(value);
    }

    /// "5/8", "1-1/4", "1 1/4", "0.625", "4-1/2".
    std::optional<double> takeMixed() {
        if (const auto fraction = takeFraction())
            return fraction;
        auto value = takeDecimal();
        if (!value || *value != std::floor(*value))
            return value;
        const std::size_t start = m_at;
        if (peek() == '-' || peek() == ' ') {
            ++m_at;
            const auto fraction = takeFraction();
            if (fraction && *fraction < 1)
                return *value + *fraction;
        }
        m_at = start;
        return value;
    }

    std::string takeWord() {
        std::string word;
        while (isLetter(peek()) || isDigit(peek()))
            word += m_text[m_at++];
        return word;
    }

private:
    /// Whole numbers above and below.
    std::optional<double> takeFraction() {
        const std::size_t start = m_at;
        const auto over = isDigit(peek()) ? takeDecimal() : std::nullopt;
        const bool isWhole = over && *over == std::floor(*over);
        if (isWhole && take("/") && isDigit(peek())) {
            const auto under = takeDecimal();
            if (under && *under > 0 && *under == std::floor(*under) && peek() != '/')
                return *over / *under;
        }
        m_at = start;
        return std::nullopt;
    }

    std::string_view m_text;
    std::size_t m_at = 0;
};

/// What follows the size: series, tolerance class, hand.
struct Tail {
    std::string series; ///< as typed, lower case
    bool leftHand = false;
};

bool isToleranceClass(std::string_view word) {
    if (oneOf(word, {"1a", "2a", "3a", "1b", "2b", "3b", "2g", "3g", "4g", "2c", "3c"}))
        return true;
    // "6g", "6h", "4h5h", "8e"
    if (word.size() != 2 && word.size() != 4)
        return false;
    for (std::size_t i = 0; i < word.size(); ++i)
        if (i % 2 == 0 ? !isDigit(word[i]) : std::string_view("efgh").find(word[i]) == std::string_view::npos)
            return false;
    return true;
}

Tail readTail(Reader& in) {
    Tail tail;
    while (true) {
        while (in.peek() == ' ' || in.peek() == '-' || in.peek() == ',' || in.peek() == '/')
            in.goTo(in.place() + 1);
        if (in.atEnd())
            return tail;
        const std::string word = in.takeWord();
        if (word.empty())
            throw Unreadable{};
        if (oneOf(word, {"lh", "left"}))
            tail.leftHand = true;
        else if (oneOf(word, {"npt", "npft", "nptf", "bsp", "bspp", "bspt", "g", "r", "rc"}))
            throw Unreadable{say("a pipe thread has no strength table here")};
        else if (!oneOf(word, {"rh", "right", "hand", "tpi", "thread"}) && !isToleranceClass(word)) {
            if (!tail.series.empty())
                throw Unreadable{};
            tail.series = word;
        }
    }
}

/// "1-1/4", "5/8", "0.6": as the size stands in a thread's name.
std::string sizeText(double inches) {
    const std::string text =
        units::plainBlanks(units::writtenInchFraction(Length::fromInch(inches), Length::fromInch(1e-6)));
    if (text.find('.') != std::string::npos)
        return units::writtenNumber(inches, 5);
    std::string size = text.substr(0, text.size() - 3); // without " in"
    std::replace(size.begin(), size.end(), ' ', '-');
    return size;
}

void checkShape(const Thread& t, double leastMm, double mostMm) {
    if (t.diameter.mm() < leastMm || t.diameter.mm() > mostMm)
        throw Unreadable{t.diameter.mm() < leastMm ? say("no thread is that small")
                                                   : say("no thread is that large")};
    // M300x4 and #4-40 are about the extremes of what is cut.
    if (!(t.pitch.mm() >= 0.1999) || t.pitch > t.diameter * 0.35 || t.pitch < t.diameter * 0.0099)
        throw Unreadable{say("the pitch does not go with the diameter")};
}

Unreadable noSuch(const std::string& series, const std::string& size, std::optional<Length> standard) {
    if (!standard)
        return {say("there is no %1 thread of that size; give its pitch and leave the series out", {series})};
    return {say("%1 %2 has %3 threads per inch; leave the series out if yours is another",
                {size, series, units::writtenNumber(1 / standard->inch(), 6)})};
}

/// One of the series with a pitch for every size.
void resolveTabulated(Thread& t, const std::string& series, const std::string& size,
                      std::optional<Length> pitch) {
    const auto standard = standardPitch(series, t.diameter);
    if (!standard || (pitch && !same(*pitch, *standard)))
        throw noSuch(series, size, standard);
    t.series = series;
    t.pitch = *standard;
}

bool isConstantPitch(Length diameter, double perInch) {
    // ASME B1.1: the 4-, 6-, 8-, 12-, 16-, 20-, 28- and 32-thread series, sizes in sixteenths.
    const double sixteenths = diameter.inch() * 16;
    for (const double n : {4.0, 6.0, 8.0, 12.0, 16.0, 20.0, 28.0, 32.0})
        if (std::abs(perInch - n) < 1e-9)
            return std::abs(sixteenths - std::round(sixteenths)) < 1e-6;
    return false;
}

void resolveUnified(Thread& t, const std::string& typed, const std::string& size,
                    std::optional<Length> pitch) {
    t.form = Form::Unified;
    if (oneOf(typed, {"unc", "nc", "unrc"}))
        resolveTabulated(t, "UNC", size, pitch);
    else if (oneOf(typed, {"unf", "nf", "unrf"}))
        resolveTabulated(t, "UNF", size, pitch);
    else if (oneOf(typed, {"unef", "nef", "unref"}))
        resolveTabulated(t, "UNEF", size, pitch);
    else if (oneOf(typed, {"", "un", "uns", "n", "ns", "unr"})) {
        if (!pitch)
            throw Unreadable{say("an inch size needs its threads per inch or its series")};
        t.pitch = *pitch;
        const std::string series = standardSeries({"UNC", "UNF", "UNEF"}, t.diameter, *pitch);
        t.series = !series.empty() ? series : isConstantPitch(t.diameter, 1 / pitch->inch()) ? "UN" : "UNS";
    } else {
        throw Unreadable{say("%1 is no series we know", {units::quoted(typed)})};
    }
    checkShape(t, 1, 160);
    t.name = size + "-" + units::writtenNumber(1 / t.pitch.inch(), 6) + " " + t.series;
}

Thread readInch(Reader& in) {
    Thread t;
    std::string size;
    const bool numbered = in.take("#") || in.take("no.") || in.take("no ");
    in.skipBlanks();
    const auto diameter = in.takeMixed();
    if (!diameter)
        throw Unreadable{};
    size = sizeText(*diameter);
    t.diameter = Length::fromInch(size.find('.') == std::string::npos ? *diameter : asNamed(*diameter, 5));
    in.skipBlanks();
    if (!in.take("\"") && in.peek() == 'i')
        in.take("inch") || in.take("in.") || in.take("in");
    in.skipBlanks();
    // A pitch follows a hyphen, an x or a blank; "-2A" after a series is left for the tail.
    std::optional<Length> pitch;
    const std::size_t start = in.place();
    if (in.take("-") || in.take("x") || in.peek() == ' ' || isDigit(in.peek())) {
        in.skipBlanks();
        const auto perInch = in.takeMixed();
        if (perInch && *perInch > 0 && (!isLetter(in.peek()) || isLetter(in.peek(1))))
            pitch = Length::fromInch(1 / asNamed(*perInch));
        else
            in.goTo(start);
    }
    const Tail tail = readTail(in);
    t.leftHand = tail.leftHand;

    // "#10-24", and "10-24" too: nobody cuts 24 threads on 10 inches.
    const std::string number = std::string("#").append(size);
    for (const StandardSize& standard : standardSizes())
        if (standard.size == number && (numbered || (pitch && same(*pitch, standard.pitch)))) {
            t.diameter = standard.diameter;
            size = number;
        }
    if (numbered && size != number)
        throw Unreadable{say("the numbered sizes run from #4 to #12")};

    if (oneOf(tail.series, {"bsw", "whit", "whitworth", "w"})) {
        t.form = Form::Whitworth;
        resolveTabulated(t, "BSW", size, pitch);
        t.name = size + " BSW";
    } else if (tail.series == "bsf") {
        t.form = Form::Whitworth;
        resolveTabulated(t, "BSF", size, pitch);
        t.name = size + " BSF";
    } else if (tail.series == "acme") {
        t.form = Form::Acme;
        t.series = "ACME";
        const auto standard = standardPitch("ACME", t.diameter);
        if (!pitch && !standard)
            throw Unreadable{say("an ACME thread of that size needs its threads per inch")};
        t.pitch = pitch ? *pitch : *standard;
        checkShape(t, 5, 160);
        if (t.pitch.inch() < 1.0 / 16.01)
            throw Unreadable{say("an ACME thread has 16 threads per inch at the most")};
        t.name = size + "-" + units::writtenNumber(1 / t.pitch.inch(), 6) + " ACME";
    } else {
        resolveUnified(t, tail.series, size, pitch);
    }
    return t;
}

/// "x1.5" or "-1.5" after a metric diameter; "-6g" is a class and stays.
std::optional<double> takeMetricPitch(Reader& in) {
    const std::size_t start = in.place();
    in.skipBlanks();
    const bool times = in.take("x") || in.take("*");
    if (times || in.take("-")) {
        in.skipBlanks();
        const auto value = in.takeDecimal();
        if (value && !isLetter(in.peek()) && in.peek() != '/')
            return value;
        if (times)
            throw Unreadable{say("a pitch in mm follows the x")};
    }
    in.goTo(start);
    return std::nullopt;
}

Thread readMetric(Reader& in) {
    Thread t;
    t.form = Form::Metric;
    t.series = "M";
    const auto diameter = in.takeDecimal();
    if (!diameter)
        throw Unreadable{};
    t.diameter = Length::fromMm(*diameter);
    const auto coarse = standardPitch("M", t.diameter);
    const auto pitch = takeMetricPitch(in);
    if (!pitch && !coarse)
        throw Unreadable{say("there is no coarse pitch for that size; give it")};
    t.pitch = pitch ? Length::fromMm(*pitch) : *coarse;
    const Tail tail = readTail(in);
    if (!tail.series.empty())
        throw Unreadable{say("give the pitch in mm after an x")};
    t.leftHand = tail.leftHand;
    checkShape(t, 1, 300);
    t.name = std::string("M").append(units::writtenNumber(*diameter, 6));
    if (!coarse || !same(t.pitch, *coarse))
        t.name.append("x").append(units::writtenNumber(t.pitch.mm(), 6));
    return t;
}

Thread readTrapezoidal(Reader& in) {
    Thread t;
    t.form = Form::Trapezoidal;
    t.series = "Tr";
    in.skipBlanks();
    const auto diameter = in.takeDecimal();
    if (!diameter)
        throw Unreadable{};
    t.diameter = Length::fromMm(*diameter);
    const auto standard = standardPitch("Tr", t.diameter);
    const auto lead = takeMetricPitch(in);
    if (!lead && !standard)
        throw Unreadable{say("there is no usual pitch for that size; give it")};
    t.pitch = lead ? Length::fromMm(*lead) : *standard;
    // "Tr 40x14 P7", "Tr 40x14(P7)": the lead first, then the pitch of one of its starts.
    in.skipBlanks();
    const bool bracket = in.take("(");
    if (in.take("p")) {
        const auto pitch = in.takeDecimal();
        const double starts = pitch && *pitch > 0 ? t.pitch.mm() / *pitch : 0;
        t.starts = static_cast<int>(std::lround(std::min(starts, 99.0)));
        if (!lead || t.starts < 1 || t.starts > 8 || std::abs(starts - t.starts) > 1e-4)
            throw Unreadable{say("the lead is a whole number of pitches")};
        t.pitch = Length::fromMm(*pitch);
    }
    if (bracket && !in.take(")"))
        throw Unreadable{};
    const Tail tail = readTail(in);
    if (!tail.series.empty())
        throw Unreadable{};
    t.leftHand = tail.leftHand;
    checkShape(t, 7, 300);
    if (t.pitch.mm() < 1.4999)
        throw Unreadable{say("a trapezoidal thread has a pitch of 1.5 mm or more")};
    t.name = "Tr " + units::writtenNumber(*diameter, 6) + "x" + units::writtenNumber(t.lead().mm(), 6);
    if (t.starts > 1)
        t.name += " P" + units::writtenNumber(t.pitch.mm(), 6);
    return t;
}

std::optional<std::string> readable(std::string_view text) {
    auto plain = units::plainText(text);
    if (!plain)
        return std::nullopt;
    std::string lower;
    for (std::size_t i = 0; i < plain->size(); ++i) {
        const char c = (*plain)[i];
        if (plain->compare(i, 2, "\u00d7") == 0) { // the multiplication sign
            lower += 'x';
            ++i;
        } else if (c == units::kDash) {
            lower += '-';
        } else {
            lower += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return lower;
}

Problem notOne(std::string_view text, const std::string& reason) {
    std::string message = say("Not a thread: %1", {units::quoted(text)});
    if (!reason.empty())
        message += " (" + reason + ")";
    return {"", say("%1. Type it like %2.", {message, say(example().data())})};
}

} // namespace

std::string_view example() {
    return PW_SAY("5/8-11 UNC or M20");
}

util::Result<Thread> parse(std::string_view text) {
    if (text.size() > kLongestText)
        return notOne(text, say("too long"));
    const auto plain = readable(text);
    if (!plain)
        return notOne(text, say("it holds odd characters"));
    if (plain->empty())
        return Problem{
            "", say("Nothing typed where a thread is wanted. Type it like %1.", {say(example().data())})};
    try {
        Reader in(*plain);
        Thread thread = in.take("tr") ? readTrapezoidal(in) : in.take("m") ? readMetric(in) : readInch(in);
        if (thread.leftHand)
            thread.name += " LH";
        return thread;
    } catch (const Unreadable& unreadable) {
        return notOne(text, unreadable.reason);
    }
}

} // namespace pw::thread
