#pragma once

#include "app/engine/report.h"

#include <functional>
#include <string_view>

namespace pw::engine {

struct CheckOptions {
    std::vector<shape::Point> at; ///< places (mm) at which the field is wanted
    /// Called now and then with 0..1 and what is being done; false stops the work (check then throws
    /// Stopped).
    std::function<bool(double, std::string_view)> progress;
    /// Look for a change that mends a verdict that does not hold (costs a few more checks).
    bool mend = true;
    /// Say how far the answer moves with what is taken about the load (costs a few elastic solutions).
    bool spread = true;
};

/// Thrown out of check() when progress said stop. Nothing else is.
struct Stopped {};

/// The whole chain: job -> loads -> shape -> mesh -> solution -> verdict. Never fails: what cannot be worked
/// out makes the verdict incomplete and says why. Safe to call from several threads at once.
Report check(const job::Job& job, const CheckOptions& options = {});

} // namespace pw::engine
