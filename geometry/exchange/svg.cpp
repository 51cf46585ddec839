#include "geometry/exchange/svg.h"

#include "core/job/process.h"
#include "core/shape/split.h"
#include "geometry/exchange/dxf_text.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <vector>

namespace pw::exchange {

using shape::Point;
using shape::Side;

namespace {

constexpr int kPlaces = 6;
constexpr std::size_t kTitleSigns = 200;
constexpr std::size_t kLineSigns = 72; ///< words wrap here
constexpr double kSignWidth = 0.62;    ///< of the text height, a middling sign
constexpr double kLinePitch = 1.5;     ///< of the text height
constexpr double kStroke = 0.25;       ///< mm
constexpr double kMargin = 5;          ///< mm of page round everything

/// Cleaned (signs.h) and escaped.
std::string xmlText(std::string_view utf8, std::size_t limit) {
    std::string out;
    for (const char c : cleanText(utf8, limit)) {
        if (c == '&')
            out += "&amp;";
        else if (c == '<')
            out += "&lt;";
        else if (c == '>')
            out += "&gt;";
        else if (c == '"')
            out += "&quot;";
        else if (c == '\'')
            out += "&#39;";
        else
            out += c;
    }
    return out;
}

/// Collects shapes in mm, y up, and lays them on a page.
class Page {
public:
    explicit Page(const SvgOptions& options)
        : m_options(options), m_metric(options.units == units::System::Metric) {}

    void loop(const char* layer, const shape::Loop& loop) {
        std::vector<Side> sides;
        for (std::size_t i = 0; i < loop.size(); ++i)
            sides.push_back(loop.side(i));
        m_lines.push_back({layer, sides, true});
        take(bounds(loop));
    }

    void side(const char* layer, const Side& side) {
        m_lines.push_back({layer, {side}, false});
        take(side.bounds());
    }

    void drilled(const DrilledHole& hole) {
        const double radius = hole.diameter.mm() / 2, arm = std::min(0.6 * radius, 3.0);
        side("mark", {hole.centre - Point{arm, 0}, hole.centre + Point{arm, 0}, 0});
        side("mark", {hole.centre - Point{0, arm}, hole.centre + Point{0, arm}, 0});
        loop("drill", shape::circleLoop(hole.centre, radius));
    }

    std::string finish(const std::vector<std::string>& notes) const {
        const shape::Box drawn = *m_extents;
        const double height = std::clamp(std::max(drawn.width(), drawn.height()) / 40, 2.5, 12.0);
        std::vector<std::string> warning, words;
        for (const std::string& line : wrapped(cleanText(m_options.warning, kTitleSigns), kLineSigns / 2))
            if (warning.size() < 6)
                warning.push_back(line);
        for (const std::string& note : notes)
            for (std::string& line : wrapped(cleanText(note, kTitleSigns), kLineSigns))
                words.push_back(std::move(line));
        const double above = kLinePitch * 2 * height * static_cast<double>(warning.size());
        const double below = kLinePitch * height * static_cast<double>(words.size() + 1);
        double widest = drawn.width();
        for (const std::string& line : warning)
            widest = std::max(widest, kSignWidth * 2 * height * static_cast<double>(line.size()));
        for (const std::string& line : words)
            widest = std::max(widest, kSignWidth * height * static_cast<double>(line.size()));
        const Point corner{drawn.low.x - kMargin, drawn.high.y + above + kMargin}; // top left, mm, y up
        const std::string width = figure(widest + 2 * kMargin);
        const std::string tall = figure(drawn.height() + above + below + 2 * kMargin);
        const std::string unit = m_metric ? "mm" : "in";

        std::string out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                          "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"" +
                          width + unit + "\" height=\"" + tall + unit + "\" viewBox=\"0 0 " + width + " " +
                          tall + "\">\n";
        std::string title = m_options.warning.empty() ? "" : m_options.warning + " ";
        title += m_options.title.empty() ? "Plate" : m_options.title;
        out += "<title>" + xmlText(title, kTitleSigns) + "</title>\n<desc>";
        for (const std::string& note : notes)
            out += xmlText(note, kTitleSigns) + "\n";
        out += "</desc>\n";
        for (const Line& line : m_lines)
            out += path(line, corner);
        double y = drawn.high.y + above;
        for (const std::string& line : warning) {
            out += text("warning", {drawn.low.x, y - 2 * height}, 2 * height, line, corner);
            y -= kLinePitch * 2 * height;
        }
        y = drawn.low.y - kLinePitch * height;
        for (const std::string& line : words) {
            y -= kLinePitch * height;
            out += text("note", {drawn.low.x, y + 0.3 * height}, height, line, corner);
        }
        return out + "</svg>\n";
    }

private:
    struct Line {
        std::string layer;
        std::vector<Side> sides;
        bool closed;
    };

    static const char* colourOf(const std::string& layer) {
        return layer == "outside"  ? "#0000ff"
               : layer == "inside" ? "#008000"
               : layer == "lead"   ? "#ff0000"
                                   : "#a000a0";
    }

    double unit(double mm) const { return m_metric ? mm : mm / units::kMmPerInch; }
    std::string figure(double mm) const { return plainFigure(unit(mm), kPlaces); }
    std::string place(Point p, Point corner) const {
        return figure(p.x - corner.x) + " " + figure(corner.y - p.y);
    }

    void take(const shape::Box& box) {
        if (!m_extents)
            m_extents = box;
        m_extents->low = {std::min(m_extents->low.x, box.low.x), std::min(m_extents->low.y, box.low.y)};
        m_extents->high = {std::max(m_extents->high.x, box.high.x), std::max(m_extents->high.y, box.high.y)};
    }

    /// A third of a circle at most. The format gives an arc by its ends and its radius: of half a circle the
    /// last place of the radius would move the middle by a thousand times as much.
    void step(const Side& side, Point corner, std::string& out) const {
        if (side.isArc() && std::abs(side.sweep()) > 2 * std::numbers::pi / 3) {
            const auto [first, second] = splitAt(side, side.pointAt(0.5));
            step(first, corner, out);
            step(second, corner, out);
        } else if (side.isArc()) {
            // With y downwards a turn to the left is one against the format's positive angle.
            const std::string radius = figure(side.circle().radius);
            out += " A " + radius + " " + radius + " 0 0 " + (side.bulge > 0 ? "0 " : "1 ") +
                   place(side.to, corner);
        } else {
            out += " L " + place(side.to, corner);
        }
    }

    std::string path(const Line& line, Point corner) const {
        std::string d = "M " + place(line.sides.front().from, corner);
        for (const Side& side : line.sides)
            step(side, corner, d);
        return "<path class=\"" + line.layer + "\" fill=\"none\" stroke=\"" + colourOf(line.layer) +
               "\" stroke-width=\"" + figure(kStroke) + "\" d=\"" + d + (line.closed ? " Z" : "") + "\"/>\n";
    }

    std::string text(const char* layer, Point at, double height, const std::string& words,
                     Point corner) const {
        return std::string("<text class=\"") + layer + "\" x=\"" + figure(at.x - corner.x) + "\" y=\"" +
               figure(corner.y - at.y) + "\" font-family=\"sans-serif\" font-size=\"" + figure(height) +
               "\" stroke=\"none\" fill=\"" + (std::string(layer) == "warning" ? "#a93c11" : "#515a5f") +
               "\">" + xmlText(words, 400) + "</text>\n";
    }

    const SvgOptions& m_options;
    bool m_metric;
    std::vector<Line> m_lines;
    std::optional<shape::Box> m_extents;
};

std::string sizeOf(Length length, units::System system) {
    return units::plainBlanks(units::written(length, system));
}

std::vector<std::string> heads(const SvgOptions& options, const CutSettings& settings) {
    std::vector<std::string> lines;
    if (std::string title = cleanText(options.title, 100); !title.empty())
        lines.push_back(std::move(title));
    lines.push_back(std::string("Units: ") + (options.units == units::System::Metric ? "mm" : "inch") +
                    ". Plate " + sizeOf(settings.thickness, options.units) +
                    " thick. Cut by: " + std::string(job::nameOf(settings.process)) + ".");
    return lines;
}

void addDrilled(const std::vector<DrilledHole>& drilled, const SvgOptions& options,
                std::vector<std::string>& lines) {
    std::vector<std::pair<std::string, int>> kinds;
    for (const DrilledHole& hole : drilled) {
        const std::string what =
            sizeOf(hole.diameter, options.units) + (hole.note.empty() ? "" : ": " + hole.note);
        const auto known = std::find_if(kinds.begin(), kinds.end(), [&](auto& k) { return k.first == what; });
        if (known == kinds.end())
            kinds.emplace_back(what, 1);
        else
            ++known->second;
    }
    for (const auto& [what, count] : kinds)
        lines.push_back("Drill " + std::to_string(count) + " x " + what);
}

} // namespace

std::string toSvg(const CutPlan& plan, const SvgOptions& options) {
    Page page(options);
    for (const DrilledHole& hole : plan.drilled)
        page.drilled(hole);
    for (const CutEdge& edge : plan.inside)
        page.loop("inside", edge.loop);
    page.loop("outside", plan.outside.loop);
    std::vector<std::string> lines = heads(options, plan.settings);
    lines.push_back("Lines are the finished edges. The kerf is not taken off.");
    addDrilled(plan.drilled, options, lines);
    for (const CutEdge& edge : plan.inside)
        if (!edge.note.empty())
            lines.push_back("Shaped hole: " + edge.note);
    return page.finish(lines);
}

std::string toSvg(const CutPath& path, const SvgOptions& options) {
    Page page(options);
    for (const DrilledHole& hole : path.drilled)
        page.drilled(hole);
    for (const CutEdge& edge : path.sawn)
        page.loop("drill", edge.loop);
    for (const Burn& burn : path.burns) {
        page.side("lead", burn.leadIn);
        page.loop(burn.outside ? "outside" : "inside", burn.loop);
        if (burn.leadOut)
            page.side("lead", *burn.leadOut);
    }
    std::vector<std::string> lines = heads(options, path.settings);
    lines.push_back("Lines are the middle of the cut: half the kerf of " +
                    sizeOf(path.settings.kerf, options.units) + " is taken off, take off no more. " +
                    std::to_string(path.burns.size()) + " pierces.");
    addDrilled(path.drilled, options, lines);
    for (const CutEdge& edge : path.sawn)
        if (!edge.note.empty())
            lines.push_back("Shaped hole: " + edge.note);
    for (const std::string& note : path.notes)
        lines.push_back(note);
    return page.finish(lines);
}

} // namespace pw::exchange
