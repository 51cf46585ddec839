#include "geometry/exchange/dxf.h"

#include "core/job/assumed.h"
#include "geometry/exchange/dxf_text.h"
#include "geometry/exchange/dxf_writer.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pw::exchange {

namespace {

/// Bytes; lines of the large warning stay about as wide as a plate.
constexpr std::size_t kLineWidth = 48;
constexpr std::size_t kMostWarningLines = 6;
/// Line pitch over text height, and the usual width of a sign of the stroke font over its height.
constexpr double kLinePitch = 1.7;
constexpr double kSignWidth = 0.9;

/// Colours that stand apart on a black and on a white screen.
const std::vector<DxfLayer>& layers() {
    static const std::vector<DxfLayer> all = {
        {kLayerOutside, 5}, {kLayerInside, 3}, {kLayerDrill, 6}, {kLayerNote, 8}};
    return all;
}

/// A figure with its unit, as plain ASCII.
std::string sized(Length length, units::System system) {
    return system == units::System::Metric ? plainFigure(length.mm(), 2) + " mm"
                                           : plainFigure(length.inch(), 4) + " in";
}

/// "Drill 6 x 8 mm round: too small to burn", one line for each size.
std::vector<std::string> drillLines(const CutPlan& plan, units::System system) {
    std::vector<std::pair<std::string, int>> kinds;
    for (const DrilledHole& hole : plan.drilled) {
        // "%%c" is the diameter sign in every version of the format.
        const std::string what =
            "%%c" + sized(hole.diameter, system) + (hole.note.empty() ? "" : ": " + dxfText(hole.note));
        const auto known =
            std::find_if(kinds.begin(), kinds.end(), [&](auto& kind) { return kind.first == what; });
        if (known == kinds.end())
            kinds.emplace_back(what, 1);
        else
            ++known->second;
    }
    std::vector<std::string> lines;
    for (const auto& [what, count] : kinds)
        lines.push_back("Drill " + plainFigure(count, 0) + " x " + what);
    return lines;
}

std::vector<std::string> noteLines(const CutPlan& plan, const DxfOptions& options) {
    const units::System system = options.units;
    std::vector<std::string> lines;
    if (std::string title = dxfText(options.title); !title.empty())
        lines.push_back(std::move(title));
    lines.push_back(std::string("Units: ") + (system == units::System::Metric ? "mm" : "inch") + ". Plate " +
                    sized(plan.settings.thickness, system) +
                    " thick. Cut by: " + std::string(job::nameOf(plan.settings.process)) + ".");
    std::string edge = "Lines are the finished edges.";
    if (plan.settings.kerf.mm() > 0)
        edge += " Kerf " + sized(plan.settings.kerf, system) + " is not taken off.";
    lines.push_back(std::move(edge));
    for (std::string& line : drillLines(plan, system))
        lines.push_back(std::move(line));
    for (const CutEdge& edgeInside : plan.inside) {
        const std::string note = "Shaped hole: " + dxfText(edgeInside.note);
        if (!edgeInside.note.empty() && std::find(lines.begin(), lines.end(), note) == lines.end())
            lines.push_back(note);
    }
    return lines;
}

std::vector<std::string> warningLines(const std::string& warning) {
    // Wrapped before it is spelled, so that no \U+XXXX is torn; a bare line end is a space to `wrapped` as
    // well.
    std::string flat = warning.substr(0, kLineWidth * kMostWarningLines * 4);
    std::replace_if(
        flat.begin(), flat.end(), [](unsigned char c) { return c < 0x20; }, ' ');
    std::vector<std::string> lines;
    for (const std::string& line : wrapped(flat, kLineWidth)) {
        std::string safe = dxfText(line);
        if (!safe.empty())
            lines.push_back(std::move(safe));
        if (lines.size() == kMostWarningLines)
            break;
    }
    return lines;
}

/// Draws in mm into a file in mm or inches.
class Sheet {
public:
    explicit Sheet(const DxfOptions& options)
        : m_scale(options.units == units::System::Metric ? 1 : 1 / units::kMmPerInch),
          m_writer(options.version, options.units, layers()) {}

    void edge(const char* layer, const shape::Loop& loop) {
        take(bounds(loop));
        if (const auto circle = asCircle(loop))
            m_writer.circle(layer, {circle->centre * m_scale, circle->radius * m_scale});
        else
            m_writer.outline(layer, scaled(loop));
    }

    void drilled(const DrilledHole& hole, bool withCircle) {
        const double radius = hole.diameter.mm() / 2;
        const double arm = std::min(0.6 * radius, 3.0);
        const shape::Point c = hole.centre;
        m_writer.point(kLayerDrill, c * m_scale);
        m_writer.line(kLayerDrill, (c - shape::Point{arm, 0}) * m_scale,
                      (c + shape::Point{arm, 0}) * m_scale);
        m_writer.line(kLayerDrill, (c - shape::Point{0, arm}) * m_scale,
                      (c + shape::Point{0, arm}) * m_scale);
        if (withCircle)
            m_writer.circle(kLayerDrill, {c * m_scale, radius * m_scale});
        take({c - shape::Point{radius, radius}, c + shape::Point{radius, radius}});
    }

    void note(shape::Point at, double height, const std::string& spelled) {
        m_writer.text(kLayerNote, at * m_scale, height * m_scale, spelled);
        take({at, at + shape::Point{height * kSignWidth * static_cast<double>(spelled.size()), height}});
    }

    const shape::Box& extents() const { return m_extents; }

    std::string finish() const {
        return m_writer.finish({m_extents.low * m_scale, m_extents.high * m_scale});
    }

private:
    shape::Loop scaled(shape::Loop loop) const {
        for (shape::Vertex& vertex : loop.vertices)
            vertex.at = vertex.at * m_scale;
        return loop;
    }

    void take(const shape::Box& box) {
        if (m_empty)
            m_extents = box;
        m_empty = false;
        m_extents.low = {std::min(m_extents.low.x, box.low.x), std::min(m_extents.low.y, box.low.y)};
        m_extents.high = {std::max(m_extents.high.x, box.high.x), std::max(m_extents.high.y, box.high.y)};
    }

    double m_scale;
    DxfWriter m_writer;
    shape::Box m_extents;
    bool m_empty = true;
};

} // namespace

std::string toDxf(const CutPlan& plan, const DxfOptions& options) {
    Sheet sheet(options);
    for (const DrilledHole& hole : plan.drilled)
        sheet.drilled(hole, options.drillCircles);
    for (const CutEdge& edge : plan.inside)
        sheet.edge(kLayerInside, edge.loop);
    sheet.edge(kLayerOutside, plan.outside.loop);

    // Words go above and below the plate, never on it: a table that cuts them cuts scrap.
    const shape::Box plate = sheet.extents();
    const double height = std::clamp(std::max(plate.width(), plate.height()) / 40, 2.5, 12.0);
    double y = plate.low.y - 2 * height;
    for (const std::string& line : noteLines(plan, options)) {
        y -= kLinePitch * height;
        sheet.note({plate.low.x, y}, height, line);
    }
    const double large = 1.6 * height;
    const std::vector<std::string> warning = warningLines(options.warning);
    y = plate.high.y + 2 * height + kLinePitch * large * static_cast<double>(warning.size());
    for (const std::string& line : warning) {
        y -= kLinePitch * large;
        sheet.note({plate.low.x, y}, large, line);
    }
    return sheet.finish();
}

} // namespace pw::exchange
