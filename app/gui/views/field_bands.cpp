#include "app/gui/views/field_bands.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace pw::gui {

namespace {

struct Corner {
    double x = 0, y = 0, value = 0;
};

Corner between(const Corner& a, const Corner& b, double level) {
    const double t = (level - a.value) / (b.value - a.value);
    return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, level};
}

/// Keeps the side of a convex polygon where sign * (value - level) >= 0.
std::vector<Corner> cut(const std::vector<Corner>& polygon, double level, double sign) {
    std::vector<Corner> kept;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Corner& a = polygon[i];
        const Corner& b = polygon[(i + 1) % polygon.size()];
        const double da = sign * (a.value - level), db = sign * (b.value - level);
        if (da >= 0)
            kept.push_back(a);
        if ((da > 0 && db < 0) || (da < 0 && db > 0))
            kept.push_back(between(a, b, level));
    }
    return kept;
}

/// Each side of an element is cut into so many: bands then follow the curved edges and the quadratic field. A
/// fine mesh does not need it and would only be slow to paint.
int cutsFor(Eigen::Index triangles) {
    return triangles < 2500 ? 4 : triangles < 8000 ? 3 : 2;
}

/// Number of the point with local coordinates i/cuts, j/cuts.
std::size_t pointAt(int cuts, int i, int j) {
    return static_cast<std::size_t>(j * (cuts + 1) - j * (j - 1) / 2 + i);
}

std::vector<std::array<std::size_t, 3>> subTriangles(int cuts) {
    std::vector<std::array<std::size_t, 3>> parts;
    for (int j = 0; j < cuts; ++j)
        for (int i = 0; i + j < cuts; ++i) {
            parts.push_back({pointAt(cuts, i, j), pointAt(cuts, i + 1, j), pointAt(cuts, i, j + 1)});
            if (i + j + 1 < cuts)
                parts.push_back(
                    {pointAt(cuts, i + 1, j), pointAt(cuts, i + 1, j + 1), pointAt(cuts, i, j + 1)});
        }
    return parts;
}

/// Place and value at every point of the sub-grid of a triangle, by the element's own quadratic shape
/// functions.
void spreadPoints(const plate::Mesh& mesh, Eigen::Index triangle, const Eigen::VectorXd& values, int cuts,
                  std::vector<Corner>& points) {
    points.clear();
    for (int j = 0; j <= cuts; ++j)
        for (int i = 0; i + j <= cuts; ++i) {
            const double b = static_cast<double>(i) / cuts, c = static_cast<double>(j) / cuts, a = 1 - b - c;
            const double shape[6] = {a * (2 * a - 1), b * (2 * b - 1), c * (2 * c - 1),
                                     4 * a * b,       4 * b * c,       4 * c * a};
            Corner corner;
            for (int k = 0; k < 6; ++k) {
                const int node = mesh.triangles(k, triangle);
                corner.x += shape[k] * mesh.nodes(0, node);
                corner.y += shape[k] * mesh.nodes(1, node);
                corner.value += shape[k] * values[node];
            }
            points.push_back(corner);
        }
}

} // namespace

QPointF SectorImage::of(double x, double y) const {
    if (mirror) {
        const double c = std::cos(2 * axis), s = std::sin(2 * axis);
        const double mx = c * x + s * y, my = s * x - c * y;
        x = mx;
        y = my;
    }
    const double c = std::cos(turn), s = std::sin(turn);
    return {c * x - s * y, s * x + c * y};
}

std::vector<SectorImage> sectorImages(const plate::Sector& sector) {
    if (sector.count <= 1)
        return {SectorImage{}};
    std::vector<SectorImage> images;
    const double opening = 2 * std::numbers::pi / sector.count;
    for (int i = 0; i < sector.count / 2; ++i) {
        images.push_back({false, 0, 2 * i * opening});
        images.push_back({true, sector.line0, 2 * i * opening});
    }
    return images;
}

std::vector<Band> fieldBands(const plate::Mesh& mesh, const plate::Sector& sector,
                             const Eigen::VectorXd& values, const std::vector<double>& levels) {
    const std::size_t count = levels.size() < 2 ? 0 : levels.size() - 1;
    std::vector<Band> bands(count);
    if (count == 0 || values.size() != mesh.nodeCount())
        return bands;
    const auto images = sectorImages(sector);
    const int cuts = cutsFor(mesh.triangleCount() * static_cast<Eigen::Index>(images.size()));
    const auto parts = subTriangles(cuts);
    std::vector<Corner> points;
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        spreadPoints(mesh, t, values, cuts, points);
        for (const auto& part : parts) {
            const std::vector<Corner> triangle{points[part[0]], points[part[1]], points[part[2]]};
            const auto [low, high] = std::minmax({triangle[0].value, triangle[1].value, triangle[2].value});
            for (std::size_t b = 0; b < count; ++b) {
                const bool first = b == 0, last = b + 1 == count;
                if ((!first && high < levels[b]) || (!last && low >= levels[b + 1]))
                    continue;
                std::vector<Corner> piece = triangle;
                if (!first && low < levels[b])
                    piece = cut(piece, levels[b], 1);
                if (!last && high >= levels[b + 1])
                    piece = cut(piece, levels[b + 1], -1);
                if (piece.size() < 3)
                    continue;
                for (const SectorImage& image : images) {
                    QPolygonF polygon;
                    polygon.reserve(static_cast<qsizetype>(piece.size()));
                    for (const Corner& c : piece)
                        polygon << image.of(c.x, c.y);
                    bands[b].polygons.push_back(std::move(polygon));
                }
            }
        }
    }
    return bands;
}

std::vector<shape::Point> imagesOf(shape::Point p, const plate::Sector& sector) {
    std::vector<shape::Point> all;
    for (const SectorImage& image : sectorImages(sector)) {
        const QPointF q = image.of(p.x, p.y);
        bool known = false;
        for (const auto& other : all)
            known = known || shape::distance(other, {q.x(), q.y()}) < 1e-6;
        if (!known)
            all.push_back({q.x(), q.y()});
    }
    return all;
}

} // namespace pw::gui
