#pragma once

#include "app/engine/check.h"
#include "core/jobfile/tree.h"

namespace pw::engine {

/// The same tool in one stock thickness.
struct Rung {
    std::string label;
    units::Length thickness;
    verdict::Grade grade = verdict::Grade::Incomplete;
    std::string weakest, weakestTitle;
    std::string because; ///< title of the worst check where it does not hold; it need not be the weakest link
    Found<double> marginOverWanted; ///< of the weakest link
    Found<double> collapseFactor, firstYieldFactor, setMm, deflectionMm, massKg;
    bool onRack = false;
};

struct Ladder {
    std::vector<Rung> rungs;       ///< thinnest first
    std::string thinnestThatHolds; ///< label, or empty
};

/// Every stock thickness of the job's preferred units, checked whole; two at a time.
Ladder ladder(const job::Job& job, const CheckOptions& options = {});

/// As `ladder --json` prints it.
jobfile::Tree toTree(const Ladder& ladder);

std::string toWords(const Ladder& ladder, units::System system);

} // namespace pw::engine
