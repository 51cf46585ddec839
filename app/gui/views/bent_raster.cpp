#include "app/gui/views/bent_raster.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace pw::gui {

void BentRaster::draw(const BentShape& shape, const Camera& camera, double thickness, double times,
                      QSize size) {
    m_size = size.expandedTo({1, 1});
    const auto count = static_cast<std::size_t>(m_size.width()) * static_cast<std::size_t>(m_size.height());
    m_depth.assign(count, -std::numeric_limits<float>::max());
    m_value.resize(count);
    m_surface.assign(count, Nothing);
    const double half = thickness / 2;
    const auto see = [&](const BentShape::Point& p, double side) {
        const auto seen = camera.see(p.x, p.y, p.w * times + side * half);
        return Vertex{static_cast<float>(seen.x), static_cast<float>(seen.y), static_cast<float>(seen.depth),
                      p.value};
    };
    std::vector<Vertex> top, under;
    top.reserve(shape.points.size());
    under.reserve(shape.points.size());
    for (const auto& p : shape.points) {
        top.push_back(see(p, 1));
        under.push_back(see(p, -1));
    }
    // Pixels run downwards: what turns counter-clockwise towards the eye turns clockwise on the screen.
    const auto turns = [](const Vertex& a, const Vertex& b, const Vertex& c) {
        return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    };
    for (const auto& t : shape.triangles) {
        if (turns(top[t.a], top[t.b], top[t.c]) < 0)
            fill(top[t.a], top[t.b], top[t.c], Top);
        else if (thickness > 0)
            fill(under[t.a], under[t.b], under[t.c], Under);
        else
            fill(top[t.a], top[t.b], top[t.c], Under);
    }
    for (const auto& e : shape.edges) {
        const Surface wall = e.hole ? HoleWall : RimWall;
        const Vertex a = see(shape.rim[e.a], 1), b = see(shape.rim[e.b], 1);
        const Vertex c = see(shape.rim[e.a], -1), d = see(shape.rim[e.b], -1);
        fill(a, b, c, wall);
        fill(b, d, c, wall);
    }
}

void BentRaster::fill(const Vertex& a, const Vertex& b, const Vertex& c, Surface surface) {
    const float area = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
    if (std::abs(area) < 1e-6F)
        return;
    const int x0 = std::max(0, static_cast<int>(std::ceil(std::min({a.x, b.x, c.x}) - 0.5F)));
    const int x1 =
        std::min(m_size.width() - 1, static_cast<int>(std::floor(std::max({a.x, b.x, c.x}) - 0.5F)));
    const int y0 = std::max(0, static_cast<int>(std::ceil(std::min({a.y, b.y, c.y}) - 0.5F)));
    const int y1 =
        std::min(m_size.height() - 1, static_cast<int>(std::floor(std::max({a.y, b.y, c.y}) - 0.5F)));
    if (x0 > x1 || y0 > y1)
        return;
    // Area coordinates are linear in x and y: one step across adds the same each time.
    const float inv = 1 / area;
    const float stepB = (c.y - a.y) * inv, stepC = -(b.y - a.y) * inv;
    // A hair outside counts as inside, so that neighbours leave no gap between them.
    constexpr float kHair = -1e-4F;
    for (int y = y0; y <= y1; ++y) {
        const float px = static_cast<float>(x0) + 0.5F - a.x, py = static_cast<float>(y) + 0.5F - a.y;
        float sb = (px * (c.y - a.y) - py * (c.x - a.x)) * inv;
        float sc = (py * (b.x - a.x) - px * (b.y - a.y)) * inv;
        std::size_t at = index(x0, y);
        for (int x = x0; x <= x1; ++x, ++at, sb += stepB, sc += stepC) {
            const float sa = 1 - sb - sc;
            if (sa < kHair || sb < kHair || sc < kHair)
                continue;
            const float depth = sa * a.depth + sb * b.depth + sc * c.depth;
            if (depth <= m_depth[at])
                continue;
            m_depth[at] = depth;
            m_value[at] = sa * a.value + sb * b.value + sc * c.value;
            m_surface[at] = surface;
        }
    }
}

QRgb BentRaster::colourAt(const Paint& paint, int x, int y, int over, int reach) const {
    const std::size_t at = index(x, y);
    const std::uint8_t surface = m_surface[at];
    // A line where one surface ends and another begins.
    const int w = m_size.width(), h = m_size.height();
    if (x >= reach && y >= reach && x + reach < w && y + reach < h) {
        const auto down = static_cast<std::size_t>(reach) * static_cast<std::size_t>(w);
        const auto across = static_cast<std::size_t>(reach);
        if (m_surface[at - across] != surface || m_surface[at + across] != surface ||
            m_surface[at - down] != surface || m_surface[at + down] != surface)
            return paint.line;
    }
    switch (surface) {
    case Nothing:
        return 0;
    case RimWall:
        return paint.rimWall;
    case HoleWall:
        return paint.holeWall;
    default:
        break;
    }
    const float value = m_value[at];
    const auto bands = static_cast<int>(paint.bands.size());
    const int band = std::clamp(
        static_cast<int>(value * static_cast<float>(bands) / static_cast<float>(paint.top)), 0, bands - 1);
    if (paint.yield > 0 && value > static_cast<float>(paint.yield)) {
        // Across lines at 45 degrees, from one of them to the next: 0 to 1.
        const float pitch = static_cast<float>(paint.hatchPitch * over * std::numbers::sqrt2);
        const float lines = static_cast<float>(x + y) / pitch;
        if (lines - std::floor(lines) < static_cast<float>(paint.hatchWidth / paint.hatchPitch))
            return paint.hatch;
    }
    return paint.bands[static_cast<std::size_t>(band)];
}

QImage BentRaster::image(const Paint& paint, int over) const {
    const QSize small = m_size / over;
    QImage image(small, QImage::Format_ARGB32_Premultiplied);
    if (paint.bands.empty() || image.isNull())
        return image;
    const int reach = std::max(1, static_cast<int>(std::lround(paint.lineWidth * over / 2)));
    const int all = over * over;
    for (int y = 0; y < small.height(); ++y) {
        auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
        for (int x = 0; x < small.width(); ++x) {
            if (over == 1) {
                line[x] = colourAt(paint, x, y, 1, reach);
                continue;
            }
            int r = 0, g = 0, b = 0, a = 0;
            for (int j = 0; j < over; ++j)
                for (int i = 0; i < over; ++i) {
                    const QRgb c = colourAt(paint, x * over + i, y * over + j, over, reach);
                    r += qRed(c);
                    g += qGreen(c);
                    b += qBlue(c);
                    a += qAlpha(c);
                }
            line[x] = qRgba(r / all, g / all, b / all, a / all);
        }
    }
    return image;
}

} // namespace pw::gui
