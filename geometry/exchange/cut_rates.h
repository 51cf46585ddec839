#pragma once

#include "core/job/job.h"

namespace pw::exchange {

/// How fast a table cuts and how long it stands while the torch goes through.
struct CutRates {
    double feed = 0;          ///< along the cut, mm/min
    double pierceSeconds = 0; ///< from torch on to moving off; with a flame the heating up is in it
    double travel = 5000;     ///< between cuts, torch off, mm/min
    bool guessed = true;      ///< nobody stated feed and pierce time
    bool operator==(const CutRates&) const = default;
};

/// A middling guess where the torch's own chart is not at hand:
///   plasma  feed = 7000 / t mm/min, between 150 and 5000; pierce t / 12 s, at least 0.3
///   flame   feed = 800 / t^(1/4) mm/min; pierce 5 + t / 2 s, heating up counted in
/// with t in mm. Common practice, no published source: about a 60 A air plasma and a middle nozzle on mild
/// steel. The chart of the torch at hand goes first.
CutRates usualRates(job::Process process, units::Length thickness);

} // namespace pw::exchange
