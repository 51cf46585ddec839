#include "core/plate/ring.h"

#include <cmath>
#include <Eigen/Dense>

namespace pw::plate {

bool PressureRing::covers(double x, double y) const {
    const double dx = x - centre.x, dy = y - centre.y, square = dx * dx + dy * dy;
    if (square > outside * outside || square < inside * inside)
        return false;
    if (half == RingHalf::Both)
        return true;
    const bool isOuter = dx * centre.x + dy * centre.y > 0;
    return isOuter == (half == RingHalf::Outer);
}

Cover PressureRing::coverOf(const Eigen::Vector2d& middle, double reach) const {
    const double d = std::hypot(middle.x() - centre.x, middle.y() - centre.y);
    if (d - reach > outside || d + reach < inside)
        return Cover::Outside;
    const bool within = d + reach < outside && (d - reach > inside || inside <= 0);
    return within && half == RingHalf::Both ? Cover::Inside : Cover::Partly;
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
        FootprintOverElement(t, nodes, ring, points).collect();
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
