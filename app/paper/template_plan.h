#pragma once

#include "app/engine/report.h"
#include "app/paper/tiling.h"

#include <string>
#include <utility>
#include <vector>

/// What a paper template shows and says, as plain data: places in mm of the plate, words in the job's unit.
namespace pw::paper {

/// A hole as it is made, with its centre mark. A slot that runs out to the rim is part of the rim and has no
/// loop.
struct MarkedHole {
    shape::Loop loop;
    shape::Point centre;
    std::string name; ///< "1" at a station, "bore", "hole 1"
    std::string how;  ///< "burn 24 mm", "drill 17.5 mm, tap M20"
    shape::Part part = shape::Part::Extra;
    bool drilled = false;
};

/// Two lines of words beside a hole, the name above how it is made.
struct Label {
    shape::Point centre;
    double halfWidth = 0, halfHeight = 0; ///< mm, room to keep clear
    std::string name, how;
};

struct TemplatePlan {
    shape::Loop rim;
    std::vector<MarkedHole> holes;
    std::vector<double> pinCircles; ///< radii about the origin
    std::vector<std::pair<shape::Point, shape::Point>>
        scribes;                    ///< the axes, and from the bore through a station
    shape::Box content;             ///< all of it and room for the ends of the lines
    std::string title, facts, test; ///< one line, a few lines, a few lines
    std::string warning;            ///< across the face; empty when it may be made
};

/// Sizes of type, mm. Title of a group, words, small print.
inline constexpr double kHeading = 4.2, kWords = 3.7, kSmall = 3.1;

/// Day as people write it: "14 March 2026", of this machine's clock and place.
std::string today();

/// The region must be there and the thickness above zero. `date` is printed as it stands.
TemplatePlan planTemplate(const job::Job& job, const engine::Report& report, const std::string& date);

/// Boxes of the holes, which a join keeps away from.
std::vector<shape::Box> boxesOf(const std::vector<MarkedHole>& holes);

/// The words beside the holes, where they touch no hole, no other words and no join as far as there is room.
std::vector<Label> placeLabels(const TemplatePlan& plan, const Tiling& tiling);

} // namespace pw::paper
