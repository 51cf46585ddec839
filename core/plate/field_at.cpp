#include "core/plate/field_at.h"

#include "core/plate/element.h"

#include <algorithm>
#include <cmath>
#include <Eigen/Dense>
#include <limits>

namespace pw::plate {

FieldAt::FieldAt(const Mesh& mesh, const Sector& sector) : m_mesh(mesh), m_sector(sector) {}

std::optional<FieldPlace> FieldAt::find(shape::Point p, double slack) const {
    FieldPlace place;
    const shape::Point folded = m_sector.fold(p);
    if (m_sector.count > 1 && shape::norm(p) > 0) {
        // Which image: sectors alternate between turned and mirrored ones.
        const double opening = m_sector.opening();
        double angle = std::fmod(std::atan2(p.y, p.x) - m_sector.line0, 2 * std::numbers::pi);
        if (angle < 0)
            angle += 2 * std::numbers::pi;
        const double pair = std::floor(angle / (2 * opening));
        place.mirror = angle - pair * 2 * opening > opening;
        place.turn = (place.mirror ? pair + 1 : pair) * 2 * opening;
    }
    const Eigen::Vector2d goal(folded.x, folded.y);
    double best = std::numeric_limits<double>::infinity();
    for (Eigen::Index t = 0; t < m_mesh.triangleCount(); ++t) {
        const ElementNodes nodes = elementNodes(m_mesh, t);
        const Eigen::Vector2d low = nodes.rowwise().minCoeff(), high = nodes.rowwise().maxCoeff();
        const double room = slack + 0.15 * (high - low).maxCoeff();
        if ((goal.array() < low.array() - room).any() || (goal.array() > high.array() + room).any())
            continue;
        double r = 1.0 / 3, s = 1.0 / 3;
        for (int i = 0; i < 12; ++i) {
            const ShapeFunctions n = shapeFunctions(r, s);
            const Eigen::Vector2d gap = goal - nodes * n.value;
            const Eigen::Vector2d step = (nodes * n.slope.transpose()).inverse() * gap;
            r += step.x();
            s += step.y();
            if (step.norm() < 1e-13 || !step.allFinite())
                break;
        }
        if (!std::isfinite(r) || !std::isfinite(s))
            continue;
        const double outside = std::max({0.0, -r, -s, r + s - 1}) * (high - low).maxCoeff();
        if (outside < best) {
            best = outside;
            place.triangle = t;
            place.r = r;
            place.s = s;
        }
        if (best <= 1e-12)
            break;
    }
    if (place.triangle < 0 || best > slack)
        return std::nullopt;
    return place;
}

double FieldAt::value(const FieldPlace& place, const Eigen::Ref<const Eigen::RowVectorXd>& nodal) const {
    const ShapeFunctions n = shapeFunctions(place.r, place.s);
    double sum = 0;
    for (int k = 0; k < 6; ++k)
        sum += n.value(k) * nodal(m_mesh.triangles(k, place.triangle));
    return sum;
}

Eigen::Vector3d FieldAt::moments(const FieldPlace& place, const Eigen::Matrix3Xd& nodal) const {
    const ShapeFunctions n = shapeFunctions(place.r, place.s);
    Eigen::Vector3d m = Eigen::Vector3d::Zero();
    for (int k = 0; k < 6; ++k)
        m += n.value(k) * nodal.col(m_mesh.triangles(k, place.triangle));
    if (place.mirror) {
        m = turnedMoments(m, m_sector.line0); // along the line, mirror, and back
        m(2) = -m(2);
        m = turnedMoments(m, -m_sector.line0);
    }
    return turnedMoments(m, -place.turn);
}

Eigen::Vector3d turnedMoments(const Eigen::Vector3d& m, double angle) {
    const double c = std::cos(angle), s = std::sin(angle);
    return {c * c * m(0) + s * s * m(1) + 2 * c * s * m(2), s * s * m(0) + c * c * m(1) - 2 * c * s * m(2),
            c * s * (m(1) - m(0)) + (c * c - s * s) * m(2)};
}

} // namespace pw::plate
