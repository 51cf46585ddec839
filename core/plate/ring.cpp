#include "core/plate/ring.h"

#include "core/plate/element.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>
#include <span>

namespace pw::plate {

namespace {

enum class Cover { Inside, Outside, Partly };

struct ReferenceTriangle {
    Eigen::Vector2d a, b, c;
};

/// Collects the ring's points over one element, splitting the element where the ring's edges run through it.
class RingOverElement {
public:
    RingOverElement(Eigen::Index triangle, const ElementNodes& nodes, const PressureRing& ring,
                    std::vector<RingPoint>& points)
        : m_triangle(triangle), m_nodes(nodes), m_ring(ring), m_points(points) {}

    void collect() { visit({{0, 0}, {1, 0}, {0, 1}}, 0); }

private:
    static constexpr int kMaxDepth = 4; ///< edge of the ring known to about 1/30 of the element's side

    Eigen::Vector2d place(const Eigen::Vector2d& p) const {
        return m_nodes * shapeFunctions(p.x(), p.y()).value;
    }

    double fromCentre(const Eigen::Vector2d& p) const {
        return std::hypot(p.x() - m_ring.centre.x, p.y() - m_ring.centre.y);
    }

    Cover coverOf(const ReferenceTriangle& t) const {
        const Eigen::Vector2d middle = place((t.a + t.b + t.c) / 3);
        double reach = 0;
        for (const Eigen::Vector2d* corner : {&t.a, &t.b, &t.c})
            reach = std::max(reach, (place(*corner) - middle).norm());
        reach *= 1.15; // room for a curved side
        const double d = fromCentre(middle);
        if (d - reach > m_ring.outside || d + reach < m_ring.inside)
            return Cover::Outside;
        if (d + reach < m_ring.outside && (d - reach > m_ring.inside || m_ring.inside <= 0))
            return Cover::Inside;
        return Cover::Partly;
    }

    void visit(const ReferenceTriangle& t, int depth) {
        const Cover cover = coverOf(t);
        if (cover == Cover::Outside)
            return;
        const bool halved = m_ring.half != RingHalf::Both;
        if ((cover == Cover::Inside && !halved) || depth == kMaxDepth) {
            add(t, cover == Cover::Partly || halved, depth == 0);
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
            if (askEachPoint && !m_ring.covers(xy.x(), xy.y()))
                continue;
            const double area = q.weight * scale * (n.slope * m_nodes.transpose()).determinant();
            m_points.push_back({m_triangle, n.value, area, xy});
        }
    }

    Eigen::Index m_triangle;
    const ElementNodes& m_nodes;
    const PressureRing& m_ring;
    std::vector<RingPoint>& m_points;
};

} // namespace

bool PressureRing::covers(double x, double y) const {
    const double dx = x - centre.x, dy = y - centre.y, square = dx * dx + dy * dy;
    if (square > outside * outside || square < inside * inside)
        return false;
    if (half == RingHalf::Both)
        return true;
    const bool isOuter = dx * centre.x + dy * centre.y > 0;
    return isOuter == (half == RingHalf::Outer);
}

std::vector<RingPoint> ringPoints(const Mesh& mesh, const PressureRing& ring) {
    std::vector<RingPoint> points;
    const Eigen::Array2d centre(ring.centre.x, ring.centre.y);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const ElementNodes nodes = elementNodes(mesh, t);
        const Eigen::Array2d low = nodes.rowwise().minCoeff(), high = nodes.rowwise().maxCoeff();
        const double slack = 0.2 * (high - low).maxCoeff();
        if ((low - slack > centre + ring.outside).any() || (high + slack < centre - ring.outside).any())
            continue;
        RingOverElement(t, nodes, ring, points).collect();
    }
    return points;
}

Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const std::vector<RingPoint>& points) {
    Eigen::MatrixX3d sum = Eigen::MatrixX3d::Zero(mesh.nodeCount(), 3);
    for (const RingPoint& p : points)
        for (int i = 0; i < 6; ++i)
            sum.row(mesh.triangles(i, p.triangle)) +=
                p.area * p.shape(i) * Eigen::RowVector3d(1, p.at.x(), p.at.y());
    return sum;
}

Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const PressureRing& ring) {
    return ringIntegrals(mesh, ringPoints(mesh, ring));
}

Eigen::MatrixX3d rigidMotions(const Mesh& mesh) {
    Eigen::MatrixX3d motions(mesh.nodeCount(), 3);
    motions << Eigen::VectorXd::Ones(mesh.nodeCount()), mesh.nodes.transpose();
    return motions;
}

Eigen::Matrix3Xd allowedMotions(const Sector& sector) {
    if (sector.count == 1)
        return Eigen::Matrix3d::Identity();
    if (sector.count == 2)
        return (Eigen::Matrix3Xd(3, 2) << 1, 0, 0, std::cos(sector.line0), 0, std::sin(sector.line0))
            .finished();
    return Eigen::Vector3d::UnitX();
}

Eigen::VectorXd fromRingPlane(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& w,
                              const PressureRing& ring) {
    const Eigen::MatrixXd over = ringIntegrals(mesh, ring) * allowedMotions(sector);
    const Eigen::MatrixXd motions = rigidMotions(mesh) * allowedMotions(sector);
    const Eigen::VectorXd plane =
        (over.transpose() * motions).fullPivLu().solve(Eigen::VectorXd(over.transpose() * w));
    return w - motions * plane;
}

} // namespace pw::plate
