#pragma once

#include <array>
#include <Eigen/Core>

/// One point of a plate, cut into layers: elastic-perfectly-plastic by von Mises in each. mm, N, MPa.
namespace pw::plate {

/// Plane-stress steel that yields and does not harden.
struct YieldingSteel {
    double E = 0, nu = 0, yield = 0;
};

/// Stress after a strain increment from `before` (sx, sy, txy), and the consistent tangent.
/// Backward Euler onto the von Mises ellipse. Source: Simo & Hughes, Computational Inelasticity (1998), 3.4,
/// box 3.3, without hardening.
struct StressUpdate {
    Eigen::Vector3d stress;
    Eigen::Matrix3d tangent;
    bool yielding = false;
};
StressUpdate updateStress(const YieldingSteel& steel, const Eigen::Vector3d& before,
                          const Eigen::Vector3d& strainStep);

/// Gauss points over half the thickness; bending only, so the other half mirrors it.
inline constexpr int kLayers = 5;

/// Stress in each layer of the stretched half, from the middle outwards.
using LayerStress = std::array<Eigen::Vector3d, kLayers>;

/// Moments and tangent of the section after a curvature increment from `before`; `after` takes the new
/// stresses.
struct SectionUpdate {
    Eigen::Vector3d moments;
    Eigen::Matrix3d tangent; ///< dM / dkappa
    bool yielding = false;
};
SectionUpdate updateSection(const YieldingSteel& steel, double thickness, const LayerStress& before,
                            const Eigen::Vector3d& curvatureStep, LayerStress& after);

} // namespace pw::plate
