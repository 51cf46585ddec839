#pragma once

#include "core/shape/region.h"

#include <optional>
#include <vector>

namespace pw::exchange {

/// Where a cut starts and how the torch gets on to it and off it.
struct Lead {
    std::size_t side = 0; ///< of the loop
    double at = 0;        ///< along that side, 0 to 1
    shape::Side in;       ///< from the pierce to the start; an arc that joins without a corner, or a line
    std::optional<shape::Side> out;
    double room = 0; ///< radius of the widest circle of scrap that touches the loop at the start, mm
};

/// What a lead has to keep to. Lengths in mm.
struct LeadRules {
    double radius = 0;       ///< of the lead-in wanted; a tighter place gets a smaller one
    double pierceRoom = 0;   ///< from the middle of the pierce to the torch's own line: the crater is wide
    double otherCutRoom = 0; ///< from a lead to any other cut
    double cornerRadius =
        0; ///< an arc round the plate of no more than this is a sharp corner, which would burn away
};

/// Lead of a closed cut whose scrap lies on the left hand of travel. A quarter circle that joins without a
/// corner, and an eighth to leave by; where no quarter circle leaves room for the pierce, a straight line
/// from the middle of the widest circle of scrap, with nothing to leave by; nothing where that has no room
/// either. Everything stays inside a circle of scrap that touches the loop at the start and holds no other
/// cut. Starts as near as it can to the place with the most steel behind it.
///   steel      the plates, finished; no lead enters their material
///   otherCuts  torch lines already laid
///   behind     finished edges of this plate other than the one cut here
std::optional<Lead> findLead(const shape::Loop& loop, const LeadRules& rules,
                             const std::vector<shape::Region>& steel,
                             const std::vector<shape::Loop>& otherCuts,
                             const std::vector<shape::Loop>& behind);

} // namespace pw::exchange
