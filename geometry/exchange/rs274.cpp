#include "geometry/exchange/rs274.h"

#include "core/job/process.h"
#include "core/shape/split.h"
#include "geometry/exchange/dxf_text.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::exchange {

using shape::Point;
using shape::Side;

namespace {

constexpr std::size_t kCommentSigns = 200; ///< a line may have 256
constexpr int kMetricPlaces = 4, kInchPlaces = 5;
constexpr double kShortest = 20; ///< last places; rounding could turn a shorter arc round

/// Printable, and nothing in it ends the comment, opens another, or is acted on by a control that listens
/// while it reads ("!", "~", "?", "%" and the like).
std::string commentText(std::string_view utf8) {
    std::string text;
    for (const char32_t sign : cleanSigns(utf8, kCommentSigns)) {
        if (sign == U'(')
            text += '[';
        else if (sign == U')')
            text += ']';
        else if (sign < 0x80 && (std::isalnum(static_cast<int>(sign)) ||
                                 std::string_view(" .,:+-*/='\"<>[]").find(static_cast<char>(sign)) !=
                                     std::string_view::npos))
            text += static_cast<char>(sign);
        else
            text += '_';
    }
    return text;
}

class Program {
public:
    Program(const CutPath& path, const Rs274Options& options)
        : m_path(path), m_options(options), m_metric(options.units == units::System::Metric),
          m_places(m_metric ? kMetricPlaces : kInchPlaces), m_last(std::pow(10.0, -m_places)) {
        if (options.datum == Datum::LowLeft) {
            const double margin = options.margin.mm();
            m_shift = Point{margin, margin} - path.extents.low;
        }
    }

    std::string text() {
        head();
        line(m_options.torchOff);
        line(std::string(m_metric ? "G21" : "G20") + " G17 G40 G90 G94");
        if (m_options.sayArcMode)
            line("G91.1");
        if (!m_options.warning.empty())
            line("M0");
        for (std::size_t i = 0; i < m_path.burns.size(); ++i)
            burn(m_path.burns[i], i);
        lift();
        line(m_options.torchOff);
        line("M2");
        return std::move(m_text);
    }

private:
    double unit(double mm) const { return m_metric ? mm : mm / units::kMmPerInch; }
    double rounded(double value) const { return std::round(value / m_last) * m_last; }
    std::string figure(double value) const { return dxfReal(rounded(value), m_places); }
    std::string plain(double mm, int metricPlaces, int inchPlaces) const {
        return plainFigure(unit(mm), m_metric ? metricPlaces : inchPlaces) + (m_metric ? " mm" : " in");
    }
    Point placed(Point p) const { return {rounded(unit(p.x + m_shift.x)), rounded(unit(p.y + m_shift.y))}; }

    void line(const std::string& words) { m_text += words + "\n"; }
    void comment(std::string_view words) { line("(" + commentText(words) + ")"); }

    void head() {
        if (!m_options.warning.empty()) {
            line("(MSG, " + commentText(m_options.warning) + ")");
            comment(m_options.warning);
        }
        comment("job: " + m_options.title);
        comment("plate: " + m_options.material + ", " + plain(m_path.settings.thickness.mm(), 2, 4) +
                " thick");
        comment("cut by: " + std::string(job::nameOf(m_path.settings.process)) + ", kerf " +
                plain(m_path.settings.kerf.mm(), 2, 4) + ", half of it taken off here");
        const shape::Box& box = m_path.extents;
        comment("units: " + std::string(m_metric ? "mm" : "inch") +
                ". All of it: " + plain(box.width(), 1, 2) + " x " + plain(box.height(), 1, 2) +
                ", low left corner at X" + figure(placed(box.low).x) + " Y" + figure(placed(box.low).y));
        comment("pierces: " + std::to_string(m_path.burns.size()) + ". Cut " + plain(m_path.cutLength, 0, 1) +
                ", travel " + plain(m_path.travelLength, 0, 1) + ", about " +
                plainFigure(m_path.seconds / 60, 1) + " min");
        if (m_path.rates.guessed)
            comment("feed and pierce time are guesses: set them from the chart of the torch");
        comment("arcs: I and J are offsets from the start of the arc");
        for (const std::string& note : m_path.notes)
            comment("note: " + note);
        for (const CutEdge& edge : m_path.sawn)
            if (!edge.note.empty())
                comment("not burned: " + nameOf(edge.part, edge.index) + ": " + edge.note);
        for (const DrilledHole& hole : m_path.drilled) {
            const Point at = placed(hole.centre);
            comment("drill " + plain(hole.diameter.mm(), 2, 4) + " at X" + figure(at.x) + " Y" +
                    figure(at.y) + (hole.note.empty() ? "" : ": " + hole.note));
        }
    }

    void height(Length z, const char* word) {
        line(std::string(word) + " Z" + figure(unit(z.mm())) +
             (*word == 'G' && word[1] == '1' ? feed() : ""));
    }

    void lift() {
        if (m_options.heights)
            height(m_options.heights->travel, "G0");
    }

    std::string feed() const { return " F" + dxfReal(unit(m_path.rates.feed), m_metric ? 0 : 1); }

    void burn(const Burn& burn, std::size_t number) {
        comment(std::to_string(number + 1) + " of " + std::to_string(m_path.burns.size()) + ": " +
                nameOf(burn.part, burn.index) + (burn.outside ? "" : ", inside"));
        lift();
        m_at = placed(burn.pierce());
        line("G0 X" + figure(m_at.x) + " Y" + figure(m_at.y));
        if (m_options.heights)
            height(m_options.heights->pierce, "G0");
        line(m_options.torchOn);
        line("G4 P" + dxfReal(m_path.rates.pierceSeconds, 2));
        if (m_options.heights)
            height(m_options.heights->cut, "G1");
        m_feedDue = true;
        side(burn.leadIn);
        for (std::size_t i = 0; i < burn.loop.size(); ++i)
            side(burn.loop.side(i));
        if (burn.leadOut)
            side(*burn.leadOut);
        line(m_options.torchOff);
    }

    void side(const Side& s) {
        if (s.isArc() && std::abs(s.sweep()) > std::numbers::pi * (1 + 1e-9)) {
            const auto [first, second] = splitAt(s, s.pointAt(0.5));
            side(first);
            side(second);
            return;
        }
        const Point to = placed(s.to);
        const double chord = distance(m_at, to);
        if (chord < m_last / 2)
            return;
        const bool straight =
            !s.isArc() || chord < kShortest * m_last || std::abs(s.bulge) * chord / 2 < m_last;
        std::string words = straight ? "G1" : s.bulge > 0 ? "G3" : "G2";
        words += " X" + figure(to.x) + " Y" + figure(to.y);
        if (!straight) {
            const Point c = s.circle().centre;
            words +=
                " I" + figure(unit(c.x + m_shift.x) - m_at.x) + " J" + figure(unit(c.y + m_shift.y) - m_at.y);
        }
        if (m_feedDue)
            words += feed();
        m_feedDue = false;
        line(words);
        m_at = to;
    }

    const CutPath& m_path;
    const Rs274Options& m_options;
    bool m_metric;
    int m_places;
    double m_last; ///< one in the last place written
    Point m_shift; ///< mm
    Point m_at;    ///< where the torch is, as written
    bool m_feedDue = true;
    std::string m_text;
};

bool isWordOfAControl(const std::string& words) {
    return !words.empty() && words.size() <= 60 &&
           std::all_of(words.begin(), words.end(), [](unsigned char c) {
               return std::isupper(c) || std::isdigit(c) || c == '.' || c == ' ' || c == '$';
           });
}

} // namespace

util::Result<std::string> toRs274(const CutPath& path, const Rs274Options& options) {
    for (const std::string& words : {options.torchOn, options.torchOff})
        if (!isWordOfAControl(words))
            return util::Problem{"",
                                 "not words a control could take for torch on or off; write them like M3"};
    return Program(path, options).text();
}

} // namespace pw::exchange
