#pragma once

#include "core/shape/loop.h"

#include <vector>

namespace pw::shape {

/// What a hole, or an edge of the plate, is there for.
enum class Part { Rim, Bore, Access, Extra };

struct Hole {
    Loop loop; ///< counter-clockwise
    Part part = Part::Extra;
    int index = 0; ///< station number for Access, position in plate.holes for Extra, both from 0
    bool operator==(const Hole&) const = default;
};

/// A flat piece of plate: the rim (counter-clockwise; slots that run out of it are already part of it) and
/// its holes. The origin is the bore centre.
struct Region {
    Loop rim;
    std::vector<Hole> holes;
    bool operator==(const Region&) const = default;
};

double area(const Region& region);                    ///< mm2, holes taken off
bool containsMaterial(const Region& region, Point p); ///< inside the rim and in no hole

} // namespace pw::shape
