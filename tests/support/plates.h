#pragma once

#include "core/shape/region.h"

#include <cmath>
#include <numbers>
#include <string>
#include <vector>

namespace pw::testing {

/// A plate whose area is known by a formula of its own, written out beside it.
struct KnownPlate {
    std::string name;
    shape::Region region;
    double thickness = 0; ///< mm
    double area = 0;      ///< mm2, by hand
    int cylinders = 0;    ///< round faces a solid of it has
    int planes = 0;       ///< flat faces, top and bottom among them
    shape::Box box;
};

inline double discArea(double radius) {
    return std::numbers::pi * radius * radius;
}

/// Straight slot with round ends, end to end `length`.
inline double slotArea(double length, double width) {
    return (length - width) * width + discArea(width / 2);
}

/// A disc of 140 mm with bore, six access holes, a bolt hole and a slot.
inline KnownPlate ringOfSix() {
    KnownPlate plate{"ring of six", {}, 12, 0, 11, 4, {{-70, -70}, {70, 70}}};
    plate.region.rim = shape::circleLoop({0, 0}, 70);
    plate.region.holes.push_back({shape::circleLoop({0, 0}, 10), shape::Part::Bore, 0});
    for (int i = 0; i < 6; ++i)
        plate.region.holes.push_back(
            {shape::circleLoop(shape::polar(50, i * std::numbers::pi / 3), 12), shape::Part::Access, i});
    plate.region.holes.push_back({shape::circleLoop({25, 14}, 3), shape::Part::Extra, 0});
    plate.region.holes.push_back({shape::slotLoop({-25, -15}, 20, 6, 0.3), shape::Part::Extra, 1});
    plate.area = discArea(70) - discArea(10) - 6 * discArea(12) - discArea(3) - slotArea(20, 6);
    // Round: rim, bore, six, bolt hole, two slot ends = 11. Flat: top, bottom, two slot sides.
    return plate;
}

/// A bar with round ends and two slots that run out of its ends: one rim of lines and arcs that turn both
/// ways.
inline KnownPlate barWithOpenSlots() {
    const double r = 30, a = 70; // half width; the end arcs' centres at +-a
    const double w = 11;         // half width of the slots, whose bottoms are half circles round +-a
    const double x = a + std::sqrt(r * r - w * w); // where the slot's side leaves the end arc
    const double end = std::acos(w / r);           // from the end of the long side to there
    const double bulge = std::tan(end / 4);
    KnownPlate plate{"bar with open slots", {}, 9.525, 0, 7, 8, {{-x, -r}, {x, r}}};
    plate.region.rim.vertices = {
        {{-a, -r}, 0}, {{a, -r}, bulge}, {{x, -w}, 0}, {{a, -w}, -1}, {{a, w}, 0},   {{x, w}, bulge},
        {{a, r}, 0},   {{-a, r}, bulge}, {{-x, w}, 0}, {{-a, w}, -1}, {{-a, -w}, 0}, {{-x, -w}, bulge},
    };
    plate.region.holes.push_back({shape::circleLoop({0, 0}, 8), shape::Part::Bore, 0});
    // Each end: a half disc, less a half disc of the slot's bottom, less the strip between the slot's sides
    // out to the arc: 2 * integral over y in 0..w of sqrt(r^2 - y^2).
    const double strip = w * std::sqrt(r * r - w * w) + r * r * std::asin(w / r);
    plate.area = 2 * a * 2 * r + discArea(r) - discArea(w) - 2 * strip - discArea(8);
    // Round: four end arcs, two slot bottoms, bore. Flat: top, bottom, two long sides, four slot sides.
    return plate;
}

/// A three-quarter pie with its corner at the origin, turned so that nothing lies along an axis.
inline KnownPlate threeQuarterPie() {
    const double r = 40, sweep = 1.5 * std::numbers::pi, start = 0.2;
    KnownPlate plate{"three-quarter pie", {}, 6, 0, 1, 4, {}};
    plate.region.rim.vertices = {
        {{0, 0}, 0}, {shape::polar(r, start), std::tan(sweep / 4)}, {shape::polar(r, start + sweep), 0}};
    plate.area = r * r * sweep / 2;
    // The arc passes the top, the left and the bottom; to the right it begins at angle 0.2.
    plate.box = {{-r, -r}, {r * std::cos(start), r}};
    return plate;
}

inline std::vector<KnownPlate> knownPlates() {
    return {ringOfSix(), barWithOpenSlots(), threeQuarterPie()};
}

} // namespace pw::testing
