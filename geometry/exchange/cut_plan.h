#pragma once

#include "core/job/job.h"
#include "core/shape/region.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

/// What is cut, drilled and written down to make a plate, and the file formats that carry it.
namespace pw::exchange {

using units::Length;

/// A bore that gets a thread: it is drilled to the tapping size, never burned to it (a flame-cut edge is hard
/// and rough).
struct TappedBore {
    std::string thread; ///< as it is called: "M20", "3/4-10"
    Length tapDrill;    ///< diameter to drill before tapping
    bool operator==(const TappedBore&) const = default;
};

/// How the plate is going to be cut. Kerf and growth usual for a process: job::habitsOf.
struct CutSettings {
    job::Process process = job::Process::PlasmaTable;
    Length thickness;
    Length kerf;   ///< width of the cut; carried along, no line is moved for it yet
    Length growth; ///< what a hole grows on the radius; carried along as well
    std::optional<TappedBore> tappedBore;
    std::vector<int> drilledExtras; ///< of plate.holes, those drilled even where they could be burned
    bool operator==(const CutSettings&) const = default;
};

/// A closed line that is cut out, at the size of the finished edge.
struct CutEdge {
    shape::Loop loop; ///< counter-clockwise
    shape::Part part = shape::Part::Rim;
    int index = 0;    ///< as in shape::Hole
    std::string note; ///< what the person at the bench must know besides; may be empty
    bool operator==(const CutEdge&) const = default;
};

/// A round hole that is marked here and drilled.
struct DrilledHole {
    shape::Point centre; ///< mm
    Length diameter;     ///< of the drill; the tapping drill where `note` says to tap
    shape::Part part = shape::Part::Extra;
    int index = 0; ///< as in shape::Hole
    std::string note;
    bool operator==(const DrilledHole&) const = default;
};

/// Everything to be done to the plate, in this order: marks for the drill, cuts inside the plate, and the
/// outside last, since the plate moves once it is free.
struct CutPlan {
    CutSettings settings;
    std::vector<DrilledHole> drilled;
    std::vector<CutEdge> inside;
    CutEdge outside;
    bool operator==(const CutPlan&) const = default;
};

/// Width of a round hole or slot, from its area A and perimeter P: the width of the straight slot with round
/// ends that has both,
///   w = (P/2 - sqrt(P^2/4 - pi A)) / (pi/2).
/// Exact for circles and slots, less than the true width for other convex loops. mm.
double narrowWidth(const shape::Loop& loop);

/// Sorts the edges of `region` into cuts and drilled holes. The thickness must be above zero. No line is
/// moved: kerf and growth stand in the settings for whoever makes the path.
CutPlan makeCutPlan(const shape::Region& region, const CutSettings& settings);

} // namespace pw::exchange
