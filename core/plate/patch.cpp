#include "core/plate/patch.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::plate {

namespace {

/// From -pi to pi.
double wrapped(double angle) {
    return std::remainder(angle, 2 * std::numbers::pi);
}

/// Halvings that leave about eight parts of a triangle across the patch, or more.
int depthFor(const ElementNodes& nodes, const PressurePatch& patch) {
    const double least = std::min(patch.to - patch.from, 2 * patch.half * patch.to);
    const double side = (nodes.col(1) - nodes.col(0)).norm();
    return std::clamp(static_cast<int>(std::ceil(std::log2(8 * side / least))), 4, 10);
}

} // namespace

bool PressurePatch::covers(double x, double y) const {
    const double r = std::hypot(x, y);
    return r >= from && r <= to && std::abs(wrapped(std::atan2(y, x) - angle)) <= half;
}

Cover PressurePatch::coverOf(const Eigen::Vector2d& middle, double reach) const {
    const double r = middle.norm();
    double beyond = std::max(r - to, from - r); // distance to the edge, negative within
    if (half < std::numbers::pi) {
        const double past = std::abs(wrapped(std::atan2(middle.y(), middle.x()) - angle)) - half;
        const double fromRay = r * std::sin(std::min(std::abs(past), std::numbers::pi / 2));
        beyond = std::max(beyond, past < 0 ? -fromRay : fromRay);
    }
    return beyond > reach ? Cover::Outside : beyond < -reach ? Cover::Inside : Cover::Partly;
}

Eigen::VectorXd patchForces(const Mesh& mesh, const Sector& sector,
                            const std::vector<PressurePatch>& patches) {
    struct Group {
        const PressurePatch* first;
        shape::Point folded;
        double force = 0;
        Eigen::VectorXd share;
    };
    std::vector<Group> groups;
    for (const PressurePatch& patch : patches) {
        if (patch.force == 0)
            continue;
        const shape::Point folded = sector.fold(shape::polar(patch.to, patch.angle));
        auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& g) {
            return shape::distance(g.folded, folded) < 1e-6 * patch.to && g.first->from == patch.from &&
                   g.first->to == patch.to && g.first->half == patch.half;
        });
        if (group == groups.end())
            group = groups.insert(groups.end(), {&patch, folded, 0, Eigen::VectorXd::Zero(mesh.nodeCount())});
        group->force += patch.force;
        std::vector<RingPoint> points;
        for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
            const ElementNodes nodes = elementNodes(mesh, t);
            FootprintOverElement(t, nodes, patch, points, depthFor(nodes, patch)).collect();
        }
        group->share += ringIntegrals(mesh, points).col(0);
    }
    Eigen::VectorXd forces = Eigen::VectorXd::Zero(mesh.nodeCount());
    for (const Group& group : groups) {
        const double area = group.share.sum();
        util::require(area > 0, "a loaded patch has no plate under it");
        forces += group.share * (group.force / sector.count / area);
    }
    return forces;
}

} // namespace pw::plate
