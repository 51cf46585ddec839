#pragma once

#include "core/stations/pin_layout.h"

#include <Eigen/Core>

/// The least squares behind pin_layout: one model, one fit.
namespace pw::stations {

/// A figure as an equation: read = |p_first - p_second| + sign * pin. mm; pins from 0.
struct PinEquation {
    int first = 0, second = 1;
    double sign = 1, read = 0;
};

struct PinFit {
    std::vector<shape::Point> pins; ///< mm
    double pin = 0;
    Eigen::VectorXd off; ///< read less fitted, one an equation
    double worst = 0;    ///< largest of `off`, without its sign
    int unknowns = 0;    ///< that the equations have to fix
    /// Largest error of an unknown for an error of one in the readings; infinite where something is left
    /// open.
    double magnified = 0;
    bool converged = false;
};

/// `pin` empty: an unknown as well. Levenberg-Marquardt from an evenly divided circle whose size is the
/// median of what each equation says.
PinFit fitPins(PinFreedom freedom, const std::vector<PinEquation>& equations, int count,
               std::optional<double> pin);

/// Centre and radius of the circle nearest to the points (geometric distance); three or more.
shape::Circle nearestCircle(const std::vector<shape::Point>& points);

/// The evenly divided circle nearest to the points in their order: c + z w_i with w_i the n-th roots of one,
/// which is linear in c and z.
struct EvenCircle {
    shape::Point centre;
    double radius = 0, start = 0; ///< start: angle of the first, radians
    std::vector<double> off;      ///< distance of each point from its place
};
EvenCircle nearestEvenCircle(const std::vector<shape::Point>& points);

} // namespace pw::stations
