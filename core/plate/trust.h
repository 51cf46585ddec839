#pragma once

#include "core/plate/elastic.h"

#include <optional>
#include <string>

/// How far a solution of the plate may be believed.
namespace pw::plate {

/// What was measured on a solution. All are parts of the load (or of load times size), 0 when perfect.
struct Trust {
    double residual = 0;  ///< largest |K u - f| over largest |f|
    double imbalance = 0; ///< sum of all forces on the plate over the load
    double tipping = 0;   ///< moment of all forces on the plate over load times size
    double held = 0;      ///< largest reaction where a deflection is pinned to stop it floating away
    /// Work of the load on the first mesh against that on the finest, per cent; empty: there was one mesh.
    std::optional<double> meshPercent;
};

/// How much is allowed. Rounding leaves 1e-12 to 1e-9 of the first four in a plate that is well held
/// together; a thousandth of a per cent is far below what matters and far above rounding. A mesh on which the
/// work is wrong by more than 5 % bends past yield wrongly by as much, which is what the factors of the
/// verdict may not lose (both: common practice, no published source).
struct TrustBounds {
    double residual = 1e-6, imbalance = 1e-5, tipping = 1e-5, held = 1e-5;
    double meshPercent = 5;
};

/// Of an elastic solution under `forces` on w (a value a node).
Trust trustOf(const PlateModel& model, const Eigen::VectorXd& forces, const ElasticSolution& solution);

/// Why the solution may not be believed; nothing when it may. A figure that is not a number is out of bounds.
std::optional<std::string> doubtOf(const Trust& trust, const TrustBounds& bounds = {});

} // namespace pw::plate
