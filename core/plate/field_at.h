#pragma once

#include "core/plate/mesh.h"

#include <optional>

namespace pw::plate {

/// A place in a meshed sector: which triangle, where in it, and how the sector's axes lie there.
struct FieldPlace {
    Eigen::Index triangle = -1;
    double r = 0, s = 0; ///< reference coordinates
    double turn = 0;     ///< plate axes = sector axes turned by this angle ...
    bool mirror = false; ///< ... after mirroring in the sector's first line
};

/// Finds places in a mesh that stands for a whole plate by mirror images.
class FieldAt {
public:
    FieldAt(const Mesh& mesh, const Sector& sector);

    /// None when there is no steel. A place up to `slack` mm outside (an edge, rounded) takes the nearest
    /// triangle.
    std::optional<FieldPlace> find(shape::Point p, double slack = 1e-3) const;

    /// A nodal value interpolated (1 x nodes).
    double value(const FieldPlace& place, const Eigen::Ref<const Eigen::RowVectorXd>& nodal) const;
    /// Moments (3 x nodes) interpolated and turned into plate axes.
    Eigen::Vector3d moments(const FieldPlace& place, const Eigen::Matrix3Xd& nodal) const;

private:
    const Mesh& m_mesh;
    Sector m_sector;
};

/// Mx, My, Mxy in axes that lie turned by `angle` from those given.
Eigen::Vector3d turnedMoments(const Eigen::Vector3d& m, double angle);

} // namespace pw::plate
