#include "core/plate/layers.h"

#include <cmath>
#include <Eigen/Dense>

namespace pw::plate {

namespace {

Eigen::Matrix3d planeStress(const YieldingSteel& steel) {
    const double c = steel.E / (1 - steel.nu * steel.nu);
    Eigen::Matrix3d m;
    m << c, c * steel.nu, 0, c * steel.nu, c, 0, 0, 0, c * (1 - steel.nu) / 2;
    return m;
}

/// Gauss-Legendre, 5 points, moved to [0, 1].
constexpr std::array<double, kLayers> kDepth{0.046910077030668, 0.230765344947158, 0.5, 0.769234655052842,
                                             0.953089922969332};
constexpr std::array<double, kLayers> kWeight{0.118463442528095, 0.239314335249683, 0.284444444444444,
                                              0.239314335249683, 0.118463442528095};

} // namespace

StressUpdate updateStress(const YieldingSteel& steel, const Eigen::Vector3d& before,
                          const Eigen::Vector3d& strainStep) {
    StressUpdate u;
    u.tangent = planeStress(steel);
    u.stress = before + u.tangent * strainStep;
    const double mean = u.stress(0) + u.stress(1), gap = u.stress(0) - u.stress(1), shear = u.stress(2);
    const double a = mean * mean / 6, b = gap * gap / 2 + 2 * shear * shear;
    const double limit = 2 * steel.yield * steel.yield / 3;
    if (a + b <= limit)
        return u;
    u.yielding = true;

    // Find the plastic multiplier g with a / (1 + p g)^2 + b / (1 + q g)^2 = limit. The left side is convex
    // and falling in g, so Newton from g = 0 comes up on the root from below and cannot overshoot.
    const double p = steel.E / (3 * (1 - steel.nu)), q = steel.E / (1 + steel.nu);
    double g = 0;
    for (int i = 0; i < 50; ++i) {
        const double sp = 1 / (1 + p * g), sq = 1 / (1 + q * g);
        const double value = a * sp * sp + b * sq * sq - limit;
        const double slope = -2 * (a * p * sp * sp * sp + b * q * sq * sq * sq);
        g -= value / slope;
        if (std::abs(value) < 1e-12 * limit)
            break;
    }
    const double sp = 1 / (1 + p * g), sq = 1 / (1 + q * g);
    u.stress << (mean * sp + gap * sq) / 2, (mean * sp - gap * sq) / 2, shear * sq;

    // Xi = (C^-1 + g P)^-1; it and P share the axes (1,1), (1,-1), shear.
    const double xiMean = steel.E / (1 - steel.nu) * sp, xiGap = q * sq, xiShear = q / 2 * sq;
    Eigen::Matrix3d xi;
    xi << (xiMean + xiGap) / 2, (xiMean - xiGap) / 2, 0, (xiMean - xiGap) / 2, (xiMean + xiGap) / 2, 0, 0, 0,
        xiShear;
    const Eigen::Vector3d flow((2 * u.stress(0) - u.stress(1)) / 3, (2 * u.stress(1) - u.stress(0)) / 3,
                               2 * u.stress(2)); // P sigma
    const Eigen::Vector3d xf = xi * flow;
    u.tangent = xi - xf * xf.transpose() / flow.dot(xf);
    return u;
}

SectionUpdate updateSection(const YieldingSteel& steel, double thickness, const LayerStress& before,
                            const Eigen::Vector3d& curvatureStep, LayerStress& after) {
    SectionUpdate s;
    s.moments.setZero();
    s.tangent.setZero();
    const double half = thickness / 2;
    for (int i = 0; i < kLayers; ++i) {
        const double z = half * kDepth[i], area = 2 * half * kWeight[i]; // both halves
        const StressUpdate u = updateStress(steel, before[i], z * curvatureStep);
        after[i] = u.stress;
        s.moments += area * z * u.stress;
        s.tangent += area * z * z * u.tangent;
        s.yielding = s.yielding || u.yielding;
    }
    return s;
}

} // namespace pw::plate
