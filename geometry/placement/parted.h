#pragma once

#include "geometry/placement/rest.h"
#include "geometry/placement/stock.h"

#include <cstddef>
#include <vector>

namespace pw::placement {

/// What is left of a piece once plates are cut from it, in true lines and arcs: the areas of parts, cuts and
/// what is dropped add up to the piece.
struct Parted {
    /// Largest first. A part that the cuts did not touch at its edge keeps the piece's rim. What was cut is
    /// among the obstacles as a hole of index `kCut`.
    std::vector<Stock> parts;
    double dropped = 0;  ///< mm2 of webs and crumbs
    int webs = 0;        ///< too thin to count, between a cut and an edge, a hole or another cut
    double thinnest = 0; ///< mm, of the webs
    int crumbs = 0;      ///< parts that no disc of the usable width goes into
};
inline constexpr std::size_t kCut = static_cast<std::size_t>(-1);

/// `cuts`: what is taken out (plates with their kerf), apart from each other and from all edges. Steel beside
/// a cut that is thinner than `web` (mm) is dropped from where it gets so thin; where that opens a way from
/// edge to edge the piece falls into parts. A piece whose holes run over its edge or into each other is left
/// whole, with the cuts as holes.
Parted partedBy(const Stock& piece, const std::vector<shape::Loop>& cuts, double web,
                double usableWidth = kUsableWidth);

} // namespace pw::placement
