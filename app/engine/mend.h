#pragma once

#include "app/engine/check.h"

#include <string>
#include <vector>

namespace pw::engine {

/// For each check that fails or is thin: the smallest changes that mend it, at most two a check, each tried
/// out by checking the changed job. A change that makes the whole worse is not offered. Weakest check first.
std::vector<Change> mends(const job::Job& job, const Report& report, const CheckOptions& options = {});

} // namespace pw::engine
