#pragma once

#include "app/engine/report.h"
#include "core/jobfile/tree.h"

namespace pw::gui {

/// Puts what is missing into the order of the figures column, and says in the reason the one that comes first
/// there; only when missing figures are the reason.
void orderMissing(engine::Report& report, const jobfile::Tree& tree);

/// Is it the plate's own figures that are asked for next? Then plates can be proposed as well.
bool asksForPlate(const engine::Report& report);

} // namespace pw::gui
