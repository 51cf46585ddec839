#pragma once

#include "app/gui/document/document.h"
#include "app/gui/models/part_lists.h"
#include "app/gui/views/plan_handles.h"

/// What the plan can add and take out, beside pulling at what is there.
namespace pw::gui {

/// In words, with its number: "Hole 2", "Corner 3", "Bore".
QString nameOfGrab(const Document& document, const PlanShape& shape, const Grab& grab);

/// Where the grabbed thing stands in its list in the job file; rows that could not be read count there and
/// not on the plan.
std::size_t rowOfGrab(const Document& document, const PlanShape& shape, const Grab& grab);
/// The other way: what of the plan a row is. Part None when it is not drawn.
Grab grabOfRow(const Document& document, const PlanShape& shape, PlanPart part, std::size_t row);

/// The tree with what a handle stands at changed.
jobfile::Tree treeWith(const Document& document, const PlanShape& shape, const Grab& grab,
                       const Setting& setting, units::System system);

/// Takes it out; nothing for what cannot be taken out (the bore, the third corner from last).
std::optional<RowAction> removal(const Document& document, const PlanShape& shape, const Grab& grab);

/// What can be added at `at` (mm): a hole on the steel, a corner on a side of a polygon within `reach`, what
/// stands in the way anywhere, a station where they are placed one by one. A corner stands first.
std::vector<RowAction> additions(const Document& document, const PlanShape& shape, shape::Point at,
                                 double reach, units::System system, double coarse);

} // namespace pw::gui
