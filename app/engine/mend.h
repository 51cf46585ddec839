#pragma once

#include "app/engine/check.h"
#include "core/jobfile/tree.h"

#include <string>
#include <vector>

namespace pw::engine {

/// For each check that fails or is thin: the smallest changes that mend it, at most two a check, each tried
/// out by checking the changed job. A change that makes the whole worse is not offered. Weakest check first.
std::vector<Change> mends(const job::Job& job, const Report& report, const CheckOptions& options = {});

/// A change's value as the job file keeps it: counts are numbers, yes and no are true and false, a list is a
/// list; all else, grades of figures too, is text.
jobfile::Tree valueOf(const Change& change);

} // namespace pw::engine
