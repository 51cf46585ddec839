#pragma once

#include "core/units/format.h"
#include "geometry/exchange/cut_path.h"
#include "geometry/exchange/cut_plan.h"

#include <string>

namespace pw::exchange {

/// Layers of the drawing, in plain words of the trade.
inline constexpr const char* kLayerOutside = "CUT_OUTSIDE";
inline constexpr const char* kLayerInside = "CUT_INSIDE";
inline constexpr const char* kLayerLead = "LEAD"; ///< of a path: from the pierce on to the cut, and off it
inline constexpr const char* kLayerMark = "MARK"; ///< of a path: pilot centres
inline constexpr const char* kLayerDrill = "DRILL";
inline constexpr const char* kLayerNote = "NOTE";

enum class DxfVersion {
    R12,  ///< for old tables. Carries no units: they stand in the notes only
    R2000 ///< carries its units
};

struct DxfOptions {
    DxfVersion version = DxfVersion::R2000;
    units::System units = units::System::Metric; ///< drawing unit: mm or inch
    std::string title;        ///< any UTF-8 text; control characters become spaces, cut when long
    std::string warning;      ///< written large above the plate; empty for none
    bool drillCircles = true; ///< draw the size of a drilled hole round its mark
};

/// The plan as an ASCII DXF drawing, the same bytes for the same input. Circles are CIRCLE, other loops
/// closed polylines with bulges; a drilled hole is a POINT, a small cross and its circle, on a layer of their
/// own. Cuts stand in the order of the plan. All figures must be finite.
std::string toDxf(const CutPlan& plan, const DxfOptions& options = {});

/// The line of the torch's middle, in the order of cutting: lead-in, cut, lead-out. Every cut is a closed
/// polyline that begins at its start and runs in the direction of travel (a circle too: CIRCLE has neither),
/// a lead an open one. Pilot centres are POINTs on a layer of their own; what the drill and the saw make is
/// drawn finished.
std::string toDxf(const CutPath& path, const DxfOptions& options = {});

} // namespace pw::exchange
