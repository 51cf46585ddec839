#include "geometry/mesh/size_field.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace pw::mesh {

using shape::Point;
using Kind = plate::MeshEdge::Kind;

BackgroundSizes::BackgroundSizes(const plate::Mesh& mesh, std::vector<double> sizes)
    : m_sizes(std::move(sizes)) {
    util::require(Eigen::Index(m_sizes.size()) == mesh.nodeCount() && mesh.triangleCount() > 0,
                  "background sizes: one for each node of a mesh that is not empty");
    m_points.reserve(m_sizes.size());
    for (Eigen::Index i = 0; i < mesh.nodeCount(); ++i)
        m_points.push_back({mesh.nodes(0, i), mesh.nodes(1, i)});
    const Eigen::Vector2d low = mesh.nodes.rowwise().minCoeff(), high = mesh.nodes.rowwise().maxCoeff();
    m_low = {low.x(), low.y()};
    const double width = high.x() - low.x(), height = high.y() - low.y();
    m_cell = std::max(std::sqrt(width * height / double(mesh.triangleCount())), 1e-9 * (width + height));
    m_columns = std::max(1, int(std::ceil(width / m_cell)));
    m_rows = std::max(1, int(std::ceil(height / m_cell)));

    const auto cellsOf = [&](const Corner3& t, auto&& use) {
        const Point a = m_points[t.node[0]], b = m_points[t.node[1]], c = m_points[t.node[2]];
        const auto column = [&](double x) {
            return std::clamp(int((x - m_low.x) / m_cell), 0, m_columns - 1);
        };
        const auto row = [&](double y) { return std::clamp(int((y - m_low.y) / m_cell), 0, m_rows - 1); };
        for (int r = row(std::min({a.y, b.y, c.y})); r <= row(std::max({a.y, b.y, c.y})); ++r)
            for (int k = column(std::min({a.x, b.x, c.x})); k <= column(std::max({a.x, b.x, c.x})); ++k)
                use(r * m_columns + k);
    };
    for (Eigen::Index i = 0; i < mesh.triangleCount(); ++i)
        m_triangles.push_back({{mesh.triangles(0, i), mesh.triangles(1, i), mesh.triangles(2, i)}});
    m_cellStart.assign(std::size_t(m_columns) * m_rows + 1, 0);
    for (const Corner3& t : m_triangles)
        cellsOf(t, [&](int cell) { ++m_cellStart[cell + 1]; });
    for (std::size_t i = 1; i < m_cellStart.size(); ++i)
        m_cellStart[i] += m_cellStart[i - 1];
    m_cellItems.resize(m_cellStart.back());
    std::vector<int> fill(m_cellStart.begin(), m_cellStart.end() - 1);
    for (std::size_t i = 0; i < m_triangles.size(); ++i)
        cellsOf(m_triangles[i], [&](int cell) { m_cellItems[fill[cell]++] = int(i); });
}

double BackgroundSizes::at(Point p) const {
    const int column = std::clamp(int((p.x - m_low.x) / m_cell), 0, m_columns - 1);
    const int row = std::clamp(int((p.y - m_low.y) / m_cell), 0, m_rows - 1);
    double leastOutside = std::numeric_limits<double>::infinity();
    double value = 0;
    const auto look = [&](int cell) {
        for (int i = m_cellStart[cell]; i < m_cellStart[cell + 1]; ++i) {
            const Corner3& t = m_triangles[m_cellItems[i]];
            const Point a = m_points[t.node[0]], b = m_points[t.node[1]], c = m_points[t.node[2]];
            const double twice = shape::cross(b - a, c - a);
            double f[3] = {shape::cross(b - p, c - p) / twice, shape::cross(c - p, a - p) / twice, 0};
            f[2] = 1 - f[0] - f[1];
            const double outside = std::max({0.0, -f[0], -f[1], -f[2]});
            if (outside >= leastOutside)
                continue;
            leastOutside = outside;
            double sum = 0;
            for (double& w : f)
                sum += w = std::max(0.0, w);
            value = (f[0] * m_sizes[t.node[0]] + f[1] * m_sizes[t.node[1]] + f[2] * m_sizes[t.node[2]]) / sum;
            if (outside == 0)
                return;
        }
    };
    // Outside the mesh (in the sliver between a chord and its arc) look in ever wider rings for the nearest.
    for (int ring = 0; ring <= std::max(m_columns, m_rows); ++ring) {
        for (int r = row - ring; r <= row + ring; ++r)
            for (int k = column - ring; k <= column + ring; ++k) {
                const bool onRing = std::max(std::abs(r - row), std::abs(k - column)) == ring;
                if (onRing && r >= 0 && r < m_rows && k >= 0 && k < m_columns)
                    look(r * m_columns + k);
            }
        if (leastOutside < std::numeric_limits<double>::infinity())
            break;
    }
    return value;
}

double SizeField::nearOf(Kind kind) const {
    double near = 0;
    switch (kind) {
    case Kind::Rim:
        near = nearRim;
        break;
    case Kind::Bore:
        near = nearBore;
        break;
    case Kind::Access:
        near = nearAccess;
        break;
    case Kind::Extra:
        near = nearExtra;
        break;
    case Kind::Symmetry:
        break;
    }
    return near > 0 && near < far ? near : far;
}

SizeAt::SizeAt(const SizeField& field, const outline::TaggedRegion& region)
    : m_far(field.far), m_grade(std::max(field.grade, 0.05)), m_background(field.background) {
    for (const outline::TaggedLoop& loop : region.loops)
        for (const outline::TaggedSide& s : loop) {
            const double near = field.nearOf(s.kind);
            if (near >= m_far)
                continue;
            Edge edge{s.side, s.side.isArc(), {}, near};
            if (edge.arc)
                edge.circle = s.side.circle();
            m_edges.push_back(edge);
        }
    // The finest first: most others are then ruled out by their circle or their chord alone.
    std::stable_sort(m_edges.begin(), m_edges.end(),
                     [](const Edge& a, const Edge& b) { return a.near < b.near; });
}

double SizeAt::operator()(Point p) const {
    double size = m_far;
    for (const Edge& e : m_edges) {
        if (e.near >= size)
            break;
        const double reach = (size - e.near) / m_grade;
        double away = 0;
        if (e.arc) {
            const Point out = p - e.circle.centre;
            const double radius = std::sqrt(shape::dot(out, out));
            away = std::abs(radius - e.circle.radius);
            if (away >= reach)
                continue;
            if (radius > 0) {
                const Point on = e.circle.centre + out * (e.circle.radius / radius);
                const double side = shape::cross(e.side.to - e.side.from, on - e.side.from);
                if (e.side.bulge > 0 ? side > 0 : side < 0) {
                    const Point a = p - e.side.from, b = p - e.side.to;
                    away = std::sqrt(std::min(shape::dot(a, a), shape::dot(b, b)));
                }
            }
        } else {
            const Point chord = e.side.to - e.side.from;
            const double square = shape::dot(chord, chord);
            const double t =
                square > 0 ? std::clamp(shape::dot(p - e.side.from, chord) / square, 0.0, 1.0) : 0;
            const Point d = p - e.side.from - t * chord;
            away = std::sqrt(shape::dot(d, d));
        }
        size = std::min(size, e.near + m_grade * away);
    }
    return m_background ? std::min(size, m_background->at(p)) : size;
}

} // namespace pw::mesh
