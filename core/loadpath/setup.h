#pragma once

#include "core/loadpath/centre.h"
#include "core/loadpath/members.h"
#include "core/loadpath/torque.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::loadpath {

/// What is known of the load path before there is a load: members, centre bearing, what turns and rubs.
struct Setup {
    Members members;
    std::optional<CentreBearing> bearing;
    std::optional<TorqueInputs> torque; ///< none without a forcing screw
    /// What heat leaves: of screw, nut, legs and rods at heat.tool, of bolts in the hub at the hotter of part
    /// and tool (already in members.screw and members.nut). 1 when cold.
    double rodStrength = 1, boltStrength = 1;
    /// The plate's yield when it folds, as members.plate.yield is that for first yield and set; they fall at
    /// different rates when hot. Empty without a plate.
    std::optional<units::Stress> yieldForCollapse;
    std::vector<std::string> assumptions;
    util::Problems problems; ///< what the tables could not read

    const CentreBearing* bearingOrNull() const { return bearing ? &*bearing : nullptr; }
};
Setup setUp(const job::Job& job);

/// Across the screw's point: as given, else its root.
Length pointDiameterOf(const job::Job& job, const thread::Thread& thread);

/// Wanted margin / 2; 1 when none is wanted.
double scaleOf(const job::Wanted& wanted);

/// Hammering on the loaded tool: 1.5 on screw, point and plate. Common practice, no published source.
inline constexpr double kHammerFactor = 1.5;
/// 1.5 when the user means to hammer, else 1.
double hammerFactorOf(const job::Job& job);

} // namespace pw::loadpath
