#pragma once

#include "core/plate/element.h"
#include "core/plate/stiffness.h"
#include "core/plate/unknowns.h"
#include "core/util/result.h"

#include <vector>

namespace pw::plate {

/// A meshed plate with all that does not depend on thickness, steel or load: shared by every thickness of a
/// ladder and by every step of a plastic solution.
class PlateModel {
public:
    /// Throws util::Bug when an element is turned inside out (the mesher's promise).
    PlateModel(Mesh mesh, const Sector& sector, const std::vector<EdgeSupport>& supports = {},
               Pins pins = Pins::Needed);

    const Mesh& mesh() const { return m_mesh; }
    const Sector& sector() const { return m_sector; }
    const Unknowns& unknowns() const { return m_unknowns; }
    const ElementGeometry& element(Eigen::Index triangle) const { return m_elements[triangle]; }

    /// The 18 nodal unknowns of a triangle in their nodes' frames, held ones 0.
    Eigen::Matrix<double, kNodal, 1> gather(Eigen::Index triangle, const Eigen::VectorXd& unknowns) const;
    void scatter(Eigen::Index triangle, const Eigen::Matrix<double, kNodal, 1>& part,
                 Eigen::VectorXd& sum) const;

    /// Nodal forces on w to a right-hand side over the unknowns.
    Eigen::VectorXd rightSide(const Eigen::VectorXd& nodalForces) const;

private:
    Mesh m_mesh;
    Sector m_sector;
    Unknowns m_unknowns;
    std::vector<ElementGeometry> m_elements;
};

} // namespace pw::plate
