#include "geometry/mesh/quality.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace pw::mesh {

namespace {

using Eigen::Vector2d;

double cross2(const Vector2d& a, const Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// Jacobian of the quadratic map at the area coordinates (1 - r - s, r, s).
double jacobianAt(const std::array<Vector2d, 6>& x, double r, double s) {
    const double q = 1 - r - s;
    const Vector2d dr =
        (4 * r - 1) * x[1] - (4 * q - 1) * x[0] + 4 * (q - r) * x[3] + 4 * s * x[4] - 4 * s * x[5];
    const Vector2d ds =
        (4 * s - 1) * x[2] - (4 * q - 1) * x[0] - 4 * r * x[3] + 4 * r * x[4] + 4 * (q - s) * x[5];
    return cross2(dr, ds);
}

std::array<Vector2d, 6> pointsOf(const plate::Mesh& mesh, Eigen::Index triangle) {
    std::array<Vector2d, 6> x;
    for (int i = 0; i < 6; ++i)
        x[i] = mesh.nodes.col(mesh.triangles(i, triangle));
    return x;
}

} // namespace

double leastJacobian(const plate::Mesh& mesh, Eigen::Index triangle) {
    const auto x = pointsOf(mesh, triangle);
    const double corner[3] = {jacobianAt(x, 0, 0), jacobianAt(x, 1, 0), jacobianAt(x, 0, 1)};
    const double middle[3] = {jacobianAt(x, 0.5, 0), jacobianAt(x, 0.5, 0.5), jacobianAt(x, 0, 0.5)};
    double least = std::min({corner[0], corner[1], corner[2]});
    for (int i = 0; i < 3; ++i)
        least = std::min(least, 2 * middle[i] - 0.5 * (corner[i] + corner[(i + 1) % 3]));
    const double straight = cross2(x[1] - x[0], x[2] - x[0]);
    return straight > 0 ? least / straight : -1;
}

Quality qualityOf(const plate::Mesh& mesh) {
    Quality out{180, std::numeric_limits<double>::infinity(), 0};
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        const auto x = pointsOf(mesh, t);
        for (int i = 0; i < 3; ++i) {
            const Vector2d a = x[(i + 1) % 3] - x[i], b = x[(i + 2) % 3] - x[i];
            out.leastAngle =
                std::min(out.leastAngle, std::atan2(cross2(a, b), a.dot(b)) * 180 / std::numbers::pi);
        }
        out.leastJacobian = std::min(out.leastJacobian, leastJacobian(mesh, t));
        // The Jacobian is quadratic: the middles of the sides, a third of the half square each, integrate it.
        out.area += (jacobianAt(x, 0.5, 0) + jacobianAt(x, 0.5, 0.5) + jacobianAt(x, 0, 0.5)) / 6;
    }
    return out;
}

} // namespace pw::mesh
