#include "app/engine/refined_sizes.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

std::shared_ptr<const mesh::BackgroundSizes> refinedSizes(const plate::Mesh& mesh,
                                                          const Eigen::VectorXd& error, double reduce) {
    std::vector<double> sizes(mesh.nodeCount(), 1e300);
    const double share = error.sum() / static_cast<double>(mesh.triangleCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        double side = 0;
        for (int i = 0; i < 3; ++i)
            side += (mesh.nodes.col(mesh.triangles(i, t)) - mesh.nodes.col(mesh.triangles((i + 1) % 3, t)))
                        .norm() /
                    3;
        // Error squared goes with about h^4 times area, so h with the sixth root; damped.
        const double ratio = share > 0 && error(t) > 0 ? std::pow(share / error(t), 1.0 / 5) : 1.0;
        const double wanted = side * reduce * std::clamp(ratio, 0.6, 1.8);
        for (int i = 0; i < 6; ++i)
            sizes[mesh.triangles(i, t)] = std::min(sizes[mesh.triangles(i, t)], wanted);
    }
    return std::make_shared<mesh::BackgroundSizes>(mesh, std::move(sizes));
}

} // namespace pw::engine
