#pragma once

#include "core/plate/layers.h"
#include "core/plate/model.h"

#include <functional>

namespace pw::plate {

struct PlasticOptions {
    /// Load factors at which the load is taken off again to see the set; ascending.
    std::vector<double> unloadFrom{1.0, 1.25};
    /// Collapse: the tangent stiffness has fallen to this part of the elastic one ...
    double collapseTangent = 0.01;
    /// ... or the deflection is this many times that at first yield, whichever is first.
    double collapseDeflection = 15;
    /// Stop once this factor is carried: enough is known.
    double enough = 1e30;
    /// Called now and then with 0..1; false stops the work.
    std::function<bool(double)> progress;
};

/// What happens to a plate as its load grows past yield. Loads grow in proportion; yielding by bending
/// moments only, through the thickness (shear force is outside the yield rule, bending alone decides); no
/// hardening; small deflections (no membrane action, which is on the safe side).
struct PlasticPath {
    struct Point {
        double factor = 0; ///< load over the given load
        double deflection =
            0; ///< mm, mean lift of the loaded places against the bearing, weighted by their load
    };
    std::vector<Point> curve; ///< from nothing to the last step
    double collapseFactor = 0;
    bool collapsed =
        false; ///< false: stopped before collapse; collapseFactor is then the last load that was carried
    /// Residual w at every node after unloading from options.unloadFrom; empty where that load was not
    /// reached.
    std::vector<Eigen::VectorXd> residual;
    /// A load that was carried could not be taken off again: its set is not known.
    bool unloadingFailed = false;
    int factorisations = 0;
    /// Largest force left out of balance at any step that counts, over the largest force of the load there.
    double residualLeft = 0;
};

/// Source of the method: load stepped by the deflection it works through (a form of arc length after
/// Crisfield, Computers & Structures 13 (1981) 55-62), Newton with the consistent tangent. Errors: no steps
/// could be found; stopped by progress.
util::Result<PlasticPath> solvePlastic(const PlateModel& model, double thickness, const YieldingSteel& steel,
                                       const Eigen::VectorXd& nodalForces,
                                       const PlasticOptions& options = {});

} // namespace pw::plate
