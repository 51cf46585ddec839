#pragma once

#include "app/engine/check.h"
#include "tests/support/jobs.h"

namespace pw::testing {

/// The check alone: no search for changes, no spread of the springs.
inline engine::Report quickCheck(const jobfile::Tree& tree) {
    engine::CheckOptions options;
    options.mend = options.spread = false;
    return engine::check(jobOf(tree), options);
}

} // namespace pw::testing
