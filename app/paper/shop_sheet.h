#pragma once

#include "app/paper/ink.h"
#include "app/paper/sheet_data.h"

#include <functional>

namespace pw::paper {

/// The sheet for the bench: the plate with figures to lay out by, what to stamp and prove, every check; the
/// order of work, cautions, the plate as a gauge, turns and torque, what is taken for granted, and lines to
/// log uses on. As few pages as it fits on. `nextPage` turns the page. Answers how many there are.
int paintShopSheet(Ink& ink, const std::function<void()>& nextPage, const SheetData& data);

} // namespace pw::paper
