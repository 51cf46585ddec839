#include "core/plate/model.h"

#include "core/util/require.h"

namespace pw::plate {

PlateModel::PlateModel(Mesh mesh, const Sector& sector, const std::vector<EdgeSupport>& supports, Pins pins)
    : m_mesh(std::move(mesh)), m_sector(sector), m_unknowns(m_mesh, sector, supports, pins) {
    m_elements.reserve(m_mesh.triangleCount());
    for (Eigen::Index t = 0; t < m_mesh.triangleCount(); ++t) {
        m_elements.push_back(elementGeometry(elementNodes(m_mesh, t), m_unknowns.frames(m_mesh, t)));
        util::require(m_elements.back().valid, "a plate element is turned inside out");
    }
}

Eigen::Matrix<double, kNodal, 1> PlateModel::gather(Eigen::Index triangle,
                                                    const Eigen::VectorXd& unknowns) const {
    Eigen::Matrix<double, kNodal, 1> part;
    for (int i = 0; i < 6; ++i)
        for (int k = 0; k < 3; ++k) {
            const int number = m_unknowns.of(m_mesh.triangles(i, triangle), k);
            part(3 * i + k) = number < 0 ? 0.0 : unknowns(number);
        }
    return part;
}

void PlateModel::scatter(Eigen::Index triangle, const Eigen::Matrix<double, kNodal, 1>& part,
                         Eigen::VectorXd& sum) const {
    for (int i = 0; i < 6; ++i)
        for (int k = 0; k < 3; ++k)
            if (const int number = m_unknowns.of(m_mesh.triangles(i, triangle), k); number >= 0)
                sum(number) += part(3 * i + k);
}

Eigen::VectorXd PlateModel::rightSide(const Eigen::VectorXd& nodalForces) const {
    Eigen::VectorXd right = Eigen::VectorXd::Zero(m_unknowns.count());
    for (int i = 0; i < m_mesh.nodeCount(); ++i)
        if (const int number = m_unknowns.of(i, 0); number >= 0)
            right(number) = nodalForces(i);
    return right;
}

} // namespace pw::plate
