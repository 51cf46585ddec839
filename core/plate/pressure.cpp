#include "core/plate/pressure.h"

#include "core/plate/element.h"
#include "core/util/require.h"

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

/// Adds the ring's integrals over one element, splitting the element where the ring's edges run through it.
class RingOverElement {
public:
    RingOverElement(const ElementNodes& nodes, const PressureRing& ring) : m_nodes(nodes), m_ring(ring) {}

    Eigen::Matrix<double, 6, 3> integrate() {
        m_sum.setZero();
        visit({{0, 0}, {1, 0}, {0, 1}}, 0);
        return m_sum;
    }

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
        if (cover == Cover::Inside || depth == kMaxDepth) {
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
            if (askEachPoint) {
                const double d = fromCentre(xy);
                if (d > m_ring.outside || d < m_ring.inside)
                    continue;
            }
            const double area = q.weight * scale * (n.slope * m_nodes.transpose()).determinant();
            m_sum += area * n.value * Eigen::RowVector3d(1, xy.x(), xy.y());
        }
    }

    const ElementNodes& m_nodes;
    const PressureRing& m_ring;
    Eigen::Matrix<double, 6, 3> m_sum;
};

} // namespace

Eigen::MatrixX3d ringIntegrals(const Mesh& mesh, const PressureRing& ring) {
    Eigen::MatrixX3d sum = Eigen::MatrixX3d::Zero(mesh.nodeCount(), 3);
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const ElementNodes nodes = elementNodes(mesh, t);
        const Eigen::Vector2d low = nodes.rowwise().minCoeff(), high = nodes.rowwise().maxCoeff();
        const Eigen::Vector2d centre(ring.centre.x, ring.centre.y);
        const double slack = 0.2 * (high - low).maxCoeff();
        if ((low.array() - slack > centre.array() + ring.outside).any() ||
            (high.array() + slack < centre.array() - ring.outside).any())
            continue;
        const Eigen::Matrix<double, 6, 3> part = RingOverElement(nodes, ring).integrate();
        for (int i = 0; i < 6; ++i)
            sum.row(mesh.triangles(i, t)) += part.row(i);
    }
    return sum;
}

Eigen::VectorXd pressureForces(const Mesh& mesh, const Sector& sector,
                               const std::vector<PressureRing>& rings) {
    struct Group {
        shape::Point centre;
        double force = 0;
        std::vector<const PressureRing*> members;
    };
    std::vector<Group> groups;
    for (const PressureRing& ring : rings) {
        const shape::Point folded = sector.fold(ring.centre);
        const double near = 1e-6 * (1 + shape::norm(folded));
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
            return shape::distance(g.centre, folded) < near && g.members.front()->outside == ring.outside &&
                   g.members.front()->inside == ring.inside;
        });
        Group& group = same == groups.end() ? groups.emplace_back(Group{folded, 0, {}}) : *same;
        group.force += ring.force;
        group.members.push_back(&ring);
    }
    Eigen::VectorXd forces = Eigen::VectorXd::Zero(mesh.nodeCount());
    for (const Group& group : groups) {
        if (group.force == 0)
            continue;
        Eigen::VectorXd share = Eigen::VectorXd::Zero(mesh.nodeCount());
        for (const PressureRing* ring : group.members)
            share += ringIntegrals(mesh, *ring).col(0);
        const double area = share.sum();
        util::require(area > 0, "a station's land has no steel under it");
        forces += share * (group.force / sector.count / area);
    }
    return forces;
}

namespace {

/// 1, x, y at the nodes.
Eigen::MatrixX3d rigidMotions(const Mesh& mesh) {
    Eigen::MatrixX3d motions(mesh.nodeCount(), 3);
    motions << Eigen::VectorXd::Ones(mesh.nodeCount()), mesh.nodes.transpose();
    return motions;
}

/// Those of them that the symmetry leaves: lift always, tilt along the line in a half plate, any in a whole
/// one.
Eigen::Matrix3Xd allowedMotions(const Sector& sector) {
    if (sector.count == 1)
        return Eigen::Matrix3d::Identity();
    if (sector.count == 2)
        return (Eigen::Matrix3Xd(3, 2) << 1, 0, 0, std::cos(sector.line0), 0, std::sin(sector.line0))
            .finished();
    return Eigen::Vector3d::UnitX();
}

} // namespace

Eigen::VectorXd fromRingPlane(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& w,
                              const PressureRing& ring) {
    const Eigen::MatrixXd over = ringIntegrals(mesh, ring) * allowedMotions(sector);
    const Eigen::MatrixXd motions = rigidMotions(mesh) * allowedMotions(sector);
    const Eigen::VectorXd plane =
        (over.transpose() * motions).fullPivLu().solve(Eigen::VectorXd(over.transpose() * w));
    return w - motions * plane;
}

Reaction balance(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& forces,
                 const PressureRing& bearing) {
    const Eigen::MatrixX3d over = ringIntegrals(mesh, bearing);
    const Eigen::MatrixX3d motions = rigidMotions(mesh);
    const Eigen::Matrix3Xd allowed = allowedMotions(sector);
    const Eigen::MatrixXd push = over * allowed, move = motions * allowed;
    const Eigen::VectorXd pressure =
        (move.transpose() * push).fullPivLu().solve(Eigen::VectorXd(-move.transpose() * forces));
    Reaction reaction;
    reaction.forces = push * pressure;

    const Eigen::Vector3d field = allowed * pressure; // p = field0 + field1 x + field2 y, lifting positive
    const Eigen::Vector2d slant = field.tail<2>();
    reaction.leastPressure = -(field(0) + slant.norm() * bearing.outside) -
                             slant.dot(Eigen::Vector2d(bearing.centre.x, bearing.centre.y));
    const double total = forces.sum();
    if (total != 0 && sector.count <= 2) {
        Eigen::Vector2d moment = mesh.nodes * forces / total;
        if (sector.count == 2) {
            const Eigen::Vector2d line(std::cos(sector.line0), std::sin(sector.line0));
            moment = line * moment.dot(line);
        }
        reaction.offset = (moment - Eigen::Vector2d(bearing.centre.x, bearing.centre.y)).norm();
    }
    return reaction;
}

} // namespace pw::plate
