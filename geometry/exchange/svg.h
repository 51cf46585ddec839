#pragma once

#include "core/units/format.h"
#include "geometry/exchange/cut_path.h"
#include "geometry/exchange/cut_plan.h"

#include <string>

namespace pw::exchange {

struct SvgOptions {
    units::System units = units::System::Metric; ///< page and figures in mm or in
    std::string title;                           ///< any UTF-8 text
    std::string warning;                         ///< written large above the plate; empty for none
};

/// A drawing at true size: the page is given in mm or in and the figures inside are the same unit (y
/// downwards, as the format has it). Arcs are arcs. Every line has its layer as its class: "outside",
/// "inside", "lead", "mark", "drill", "note", "warning". Nothing but cuts and leads in their classes is to be
/// cut; words stand above and below the plate, never on it. The finished size: see toDxf(CutPlan).
std::string toSvg(const CutPlan& plan, const SvgOptions& options = {});

/// The line of the torch's middle in the order of cutting: see toDxf(CutPath).
std::string toSvg(const CutPath& path, const SvgOptions& options = {});

} // namespace pw::exchange
