#include "core/plate/pressure.h"

#include "core/util/require.h"

#include <algorithm>

namespace pw::plate {

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
                   g.members.front()->inside == ring.inside && g.members.front()->half == ring.half;
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

} // namespace pw::plate
