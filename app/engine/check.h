#pragma once

#include "app/engine/report.h"

#include <functional>
#include <memory>
#include <string_view>

namespace pw::engine {

class ModelCache;

struct CheckOptions {
    std::vector<shape::Point> at; ///< places (mm) at which the field is wanted
    /// Called now and then with 0..1 and what is being done; false stops the work (check then throws
    /// Stopped).
    std::function<bool(double, std::string_view)> progress;
    /// Look for a change that mends a verdict that does not hold (costs a few more checks).
    bool mend = true;
    /// False: everything but the plate's bending, a quick look at the other members.
    bool bend = true;
    /// Say how far the answer moves with what is taken about the load (costs a few elastic solutions).
    bool spread = true;
    /// Meshes shared with other checks of the same plate (a ladder's rungs); none: shared within this check
    /// only.
    std::shared_ptr<ModelCache> models;
    /// What a solution may be out by before no verdict is given from it.
    plate::TrustBounds trust;
};

/// Thrown out of check() when progress said stop. Nothing else is.
struct Stopped {};

/// The whole chain: job -> loads -> shape -> mesh -> solution -> verdict. Never fails: what cannot be worked
/// out makes the verdict incomplete and says why. Safe to call from several threads at once.
Report check(const job::Job& job, const CheckOptions& options = {});

} // namespace pw::engine
