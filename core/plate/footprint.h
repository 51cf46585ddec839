#pragma once

#include "core/plate/element.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>
#include <span>
#include <vector>

namespace pw::plate {

/// A small piece of a loaded area in one triangle.
struct RingPoint {
    Eigen::Index triangle = 0;
    Eigen::Matrix<double, 6, 1> shape; ///< the triangle's shape functions there
    double area = 0;                   ///< mm2
    Eigen::Vector2d at;
};

/// How a small circle lies to a loaded area.
enum class Cover { Inside, Outside, Partly };

/// Collects the points of a loaded area over one element, splitting the element where the area's edge runs
/// through it. `Area` has covers(x, y) and coverOf(middle, reach), which may say Partly when in doubt.
template<class Area>
class FootprintOverElement {
public:
    /// `depth`: how often a triangle is halved at most; 4 knows the area's edge to about 1/30 of its side.
    FootprintOverElement(Eigen::Index triangle, const ElementNodes& nodes, const Area& area,
                         std::vector<RingPoint>& points, int depth = 4)
        : m_triangle(triangle), m_nodes(nodes), m_area(area), m_points(points), m_depth(depth) {}

    void collect() { visit({{0, 0}, {1, 0}, {0, 1}}, 0); }

private:
    struct ReferenceTriangle {
        Eigen::Vector2d a, b, c;
    };

    Eigen::Vector2d place(const Eigen::Vector2d& p) const {
        return m_nodes * shapeFunctions(p.x(), p.y()).value;
    }

    Cover coverOf(const ReferenceTriangle& t) const {
        const Eigen::Vector2d middle = place((t.a + t.b + t.c) / 3);
        double reach = 0;
        for (const Eigen::Vector2d* corner : {&t.a, &t.b, &t.c})
            reach = std::max(reach, (place(*corner) - middle).norm());
        return m_area.coverOf(middle, reach * 1.15); // room for a curved side
    }

    void visit(const ReferenceTriangle& t, int depth) {
        const Cover cover = coverOf(t);
        if (cover == Cover::Outside)
            return;
        if (cover == Cover::Inside || depth >= m_depth) {
            add(t, cover == Cover::Partly, depth == 0);
            return;
        }
        const Eigen::Vector2d ab = (t.a + t.b) / 2, bc = (t.b + t.c) / 2, ca = (t.c + t.a) / 2;
        visit({t.a, ab, ca}, depth + 1);
        visit({ab, t.b, bc}, depth + 1);
        visit({ca, bc, t.c}, depth + 1);
        visit({ab, bc, ca}, depth + 1);
    }

    void add(const ReferenceTriangle& t, bool askEachPoint, bool whole) {
        const Eigen::Vector2d u = t.b - t.a, v = t.c - t.a;
        const double scale = std::abs(u.x() * v.y() - u.y() * v.x());
        // Parts are small enough for the 3-point rule of degree 2.
        static constexpr std::array<QuadraturePoint, 3> kSmall{
            {{1.0 / 6, 1.0 / 6, 1.0 / 6}, {2.0 / 3, 1.0 / 6, 1.0 / 6}, {1.0 / 6, 2.0 / 3, 1.0 / 6}}};
        const std::span<const QuadraturePoint> points =
            whole ? std::span<const QuadraturePoint>(quadrature()) : std::span<const QuadraturePoint>(kSmall);
        for (const QuadraturePoint& q : points) {
            const Eigen::Vector2d p = t.a + q.r * u + q.s * v;
            const ShapeFunctions n = shapeFunctions(p.x(), p.y());
            const Eigen::Vector2d xy = m_nodes * n.value;
            if (askEachPoint && !m_area.covers(xy.x(), xy.y()))
                continue;
            const double area = q.weight * scale * (n.slope * m_nodes.transpose()).determinant();
            m_points.push_back({m_triangle, n.value, area, xy});
        }
    }

    Eigen::Index m_triangle;
    const ElementNodes& m_nodes;
    const Area& m_area;
    std::vector<RingPoint>& m_points;
    int m_depth;
};

} // namespace pw::plate
