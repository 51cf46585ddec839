#pragma once

#include "core/job/job.h"

#include <string>
#include <vector>

/// The pile: what pieces of plate there are to make tools from.
namespace pw::rack {

using job::Given;
using units::Length;
using units::Range;

/// How far a piece's steel may be believed.
enum class SteelIs { Known, Guessed, Unknown };

/// Rust, old weld, a torch edge: no plate may lie there.
struct BadArea {
    std::vector<shape::Vertex> points; ///< mm, the piece's own coordinates
    std::string note;
    bool operator==(const BadArea&) const = default;
};

/// A hole in a piece: round or a slot as in a plate, or traced.
struct StockHole {
    job::ExtraHole form;
    std::vector<shape::Vertex> points; ///< traced; replaces the form when not empty
    bool operator==(const StockHole&) const = default;
};

/// One kind of piece. Lengths are in the piece's own coordinates: a disc, bar or rectangle has its origin in
/// the middle, x along its length.
struct Offcut {
    std::string name;
    Range<Length> thickness; ///< as measured; a taper or wear is a range
    Given<Length> pitting;   ///< deepest pit, taken off the thinnest place
    Given<job::Material> steel;
    SteelIs steelIs = SteelIs::Unknown;
    job::ShopTests tests;
    job::Outline outline;
    std::vector<StockHole> holes;
    std::vector<BadArea> badAreas;
    std::string note, where; ///< `where` it lies
    int count = 1;
    bool owned = true;   ///< false: a standard size to buy
    std::size_t row = 0; ///< of `offcuts` in the file, from 0
    bool operator==(const Offcut&) const = default;
};

/// The thickness to count on: the thinnest place less the pits.
Length soundThickness(const Offcut& offcut);

struct Rack {
    std::vector<Offcut> offcuts;
    units::System preferred = units::System::Metric;
    bool operator==(const Rack&) const = default;
};

} // namespace pw::rack
