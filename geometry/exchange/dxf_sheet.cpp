#include "geometry/exchange/dxf_sheet.h"

#include "geometry/exchange/dxf_text.h"

#include <algorithm>

namespace pw::exchange {

namespace {

/// Bytes; lines of the large warning stay about as wide as a plate.
constexpr std::size_t kLineWidth = 48;
constexpr std::size_t kMostWarningLines = 6;
/// Line pitch over text height, and the usual width of a sign of the stroke font over its height.
constexpr double kLinePitch = 1.7;
constexpr double kSignWidth = 0.9;

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

} // namespace

std::string sized(Length length, units::System system) {
    return system == units::System::Metric ? plainFigure(length.mm(), 2) + " mm"
                                           : plainFigure(length.inch(), 4) + " in";
}

std::vector<std::string> drillLines(const std::vector<DrilledHole>& drilled, units::System system) {
    std::vector<std::pair<std::string, int>> kinds;
    for (const DrilledHole& hole : drilled) {
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

DxfSheet::DxfSheet(const DxfOptions& options, std::vector<DxfLayer> layers)
    : m_scale(options.units == units::System::Metric ? 1 : 1 / units::kMmPerInch),
      m_writer(options.version, options.units, std::move(layers)) {}

void DxfSheet::edge(const char* layer, const shape::Loop& loop) {
    take(bounds(loop));
    if (const auto circle = asCircle(loop))
        m_writer.circle(layer, {circle->centre * m_scale, circle->radius * m_scale});
    else
        m_writer.outline(layer, scaled(loop));
}

void DxfSheet::path(const char* layer, const shape::Loop& loop) {
    take(bounds(loop));
    m_writer.outline(layer, scaled(loop));
}

void DxfSheet::lead(const char* layer, const shape::Side& side) {
    take(side.bounds());
    m_writer.openSide(layer, {side.from * m_scale, side.to * m_scale, side.bulge});
}

void DxfSheet::centre(const char* layer, shape::Point at) {
    m_writer.point(layer, at * m_scale);
}

void DxfSheet::cross(const char* layer, const DrilledHole& hole, bool withCircle) {
    const double radius = hole.diameter.mm() / 2;
    const double arm = std::min(0.6 * radius, 3.0);
    const shape::Point c = hole.centre;
    m_writer.line(layer, (c - shape::Point{arm, 0}) * m_scale, (c + shape::Point{arm, 0}) * m_scale);
    m_writer.line(layer, (c - shape::Point{0, arm}) * m_scale, (c + shape::Point{0, arm}) * m_scale);
    if (withCircle)
        m_writer.circle(layer, {c * m_scale, radius * m_scale});
    take({c - shape::Point{radius, radius}, c + shape::Point{radius, radius}});
}

void DxfSheet::words(const std::vector<std::string>& spelled, const std::string& warning) {
    const shape::Box drawn = *m_extents;
    const double height = std::clamp(std::max(drawn.width(), drawn.height()) / 40, 2.5, 12.0);
    double y = drawn.low.y - 2 * height;
    for (const std::string& line : spelled) {
        y -= kLinePitch * height;
        note({drawn.low.x, y}, height, line);
    }
    const double large = 1.6 * height;
    const std::vector<std::string> lines = warningLines(warning);
    y = drawn.high.y + 2 * height + kLinePitch * large * static_cast<double>(lines.size());
    for (const std::string& line : lines) {
        y -= kLinePitch * large;
        note({drawn.low.x, y}, large, line);
    }
}

std::string DxfSheet::finish() const {
    return m_writer.finish({m_extents->low * m_scale, m_extents->high * m_scale});
}

void DxfSheet::note(shape::Point at, double height, const std::string& spelled) {
    m_writer.text(kLayerNote, at * m_scale, height * m_scale, spelled);
    take({at, at + shape::Point{height * kSignWidth * static_cast<double>(spelled.size()), height}});
}

shape::Loop DxfSheet::scaled(shape::Loop loop) const {
    for (shape::Vertex& vertex : loop.vertices)
        vertex.at = vertex.at * m_scale;
    return loop;
}

void DxfSheet::take(const shape::Box& box) {
    if (!m_extents)
        m_extents = box;
    m_extents->low = {std::min(m_extents->low.x, box.low.x), std::min(m_extents->low.y, box.low.y)};
    m_extents->high = {std::max(m_extents->high.x, box.high.x), std::max(m_extents->high.y, box.high.y)};
}

} // namespace pw::exchange
