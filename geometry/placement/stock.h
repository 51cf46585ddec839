#pragma once

#include "core/rack/rack.h"
#include "core/shape/region.h"
#include "core/util/result.h"

#include <string>
#include <vector>

namespace pw::placement {

/// What a plate on a piece must stay clear of, or swallow whole in one of its own holes.
struct Obstacle {
    shape::Loop loop;      ///< counter-clockwise
    bool isHole = true;    ///< false: a bad area
    std::size_t index = 0; ///< of `holes` or `bad_areas`
};

/// A piece as a shape: mm, its own coordinates.
struct Stock {
    shape::Loop rim; ///< counter-clockwise
    std::vector<Obstacle> obstacles;
};

/// mm2, holes taken off (each only as far as it lies on the piece); bad areas count as steel.
double area(const Stock& stock);

/// A piece as far as its figures describe one.
struct BuiltStock {
    Stock stock;                    ///< to be trusted only when there are no problems
    util::Problems problems;        ///< why the piece cannot be used
    std::vector<std::string> words; ///< what was mended or passed over
};

BuiltStock buildStock(const rack::Offcut& offcut);

/// Does the curve have material of the piece on both sides of it, none, or all of it inside?
enum class Lies { Inside, Across, Outside };
Lies liesOn(const shape::Loop& rim, const shape::Loop& loop);

} // namespace pw::placement
