#pragma once

#include "app/engine/check.h"
#include "app/engine/ladder.h"
#include "core/jobfile/tree.h"

/// An engine that answers at once with plausible figures of its own, so that the window can be tried without
/// the mechanics. Its numbers mean nothing.
namespace pw::testing {

engine::Report fakeCheck(const job::Job& job, const engine::CheckOptions& options = {});

engine::Ladder fakeLadder(const job::Job& job, const engine::CheckOptions& options = {});

/// A whole job in mm: eight pins on a disc, everything given.
jobfile::Tree eightPinJob();

} // namespace pw::testing
