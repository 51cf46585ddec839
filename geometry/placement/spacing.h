#pragma once

#include "core/job/assumed.h"
#include "geometry/placement/slack.h"

namespace pw::placement {

/// What a job's way of cutting asks for between the plate and the edges of a piece this thick. Kerf as stated
/// or as the process has it. The margin as stated (`cutting.edge_margin`), else
///   the larger of 2 mm, and layout error + squareness of the cut face,
/// so that a face that leans, cut where the layout was off, still has sound steel behind it. Squareness of
/// thermal cuts: perpendicularity tolerance u by ISO 9013:2017 Table 4 (from memory), range 4 (0.8 mm + 0.02
/// t) on a table, range 5 (1.2 mm + 0.035 t) by hand; a saw leans by 0.01 t, a mill by nothing. The 2 mm, and
/// the saw: common practice, no published source.
Spacing spacingFor(const job::Job& job, units::Length thickness);

} // namespace pw::placement
