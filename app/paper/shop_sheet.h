#pragma once

#include "app/paper/ink.h"
#include "app/paper/template_plan.h"

#include <functional>

namespace pw::paper {

/// The page for the bench: drawing with figures to lay out by, what to stamp and prove, checks; then, from a
/// second page on, the plate as a gauge, the order of work, cautions, what is taken for granted and lines to
/// log uses on. `nextPage` turns the page.
void paintShopSheet(Ink& ink, const std::function<void()>& nextPage, const job::Job& job,
                    const engine::Report& report, const TemplatePlan& plan, const Sheet& sheet,
                    const std::string& date);

/// The scale to draw `content` at in this room, as the number after 1:. Metric 1, 2, 2.5, 5 and tens of them
/// (ISO 5455, with the customary 1:2.5), inches 1, 2, 4, 8, ... (common practice, no published source).
double scaleFor(const shape::Box& content, double roomWide, double roomHigh, units::System system);

} // namespace pw::paper
