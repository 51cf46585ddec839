#pragma once

#include "core/job/job.h"
#include "core/job/process.h"

/// Sound defaults where the user left a figure out. What follows from other figures by formula (set limit,
/// spring tolerance, washer) is not here but with the formula.
namespace pw::job {

/// Every default put in beside what was given: figures to work with, and how to say what was assumed.
struct Assumed {
    Process process = Process::PlasmaTable;
    ProcessHabits habits;
    double margin = 2;           ///< wanted; ASME BTH-1 category A has 2.0 (MODEL 3)
    Material steel;              ///< of the plate; "unknown scrap" when nobody said
    int stacked = 1;             ///< plates
    Given<Length> land;          ///< the retainer's diameter when not given
    Given<Length> bearingInside; ///< the bore when not given
    Turns turns = Turns::Nut;    ///< of the screw, when there is one
    Into into = Into::Shaft;
    Lubrication lubrication = Lubrication::Oiled;
    ThreadCondition threadCondition = ThreadCondition::Good;

    std::vector<std::string> sentences; ///< one for each default that may change the answer, ready to show
};

Assumed assume(const Job& job);

} // namespace pw::job
