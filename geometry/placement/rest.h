#pragma once

#include "geometry/placement/stock.h"

#include <vector>

namespace pw::placement {

/// A strip narrower than this is scrap: neither worth racking nor safe to hold while it is cut. mm. Common
/// practice, no published source.
inline constexpr double kUsableWidth = 40;

/// What cuts leave of a piece: the parts a disc of the usable width can get to.
struct Rest {
    double usable = 0;  ///< mm2, all parts
    double biggest = 0; ///< mm2, the largest one
    /// Mean over the usable width and 2, 4 and 6 times it of what such a disc gets to, mm2: more where the
    /// rest is in one broad piece than where it is a frame round a hole.
    double worth = 0;
    std::vector<std::vector<shape::Point>> outlines; ///< of the parts, holes clockwise
};

/// `cut`: what is taken out (plates with their kerf), counter-clockwise. Arcs are polygons to `within` mm.
Rest restOf(const Stock& stock, const std::vector<std::vector<shape::Point>>& cut, double within = 0.2,
            double usableWidth = kUsableWidth);

} // namespace pw::placement
