#pragma once

#include "app/paper/ink.h"
#include "app/paper/template_plan.h"

namespace pw::paper {

/// Where the check ruler's zero is on every page, and how far it reaches below its line. mm on the sheet.
inline constexpr shape::Point kRulerZero{kBorder, kBorder + 13.5};
inline constexpr double kRulerTick = 5;

/// One page of a template: ruler, the plate's part in true size, joins, words.
void paintTemplatePage(Ink& ink, const TemplatePlan& plan, const std::vector<Label>& labels,
                       const Tiling& tiling, int row, int column);

/// Pale across the box, so that what is drawn over it can be read as well.
void paintWarning(Ink& ink, const shape::Box& box, const std::string& words);

} // namespace pw::paper
