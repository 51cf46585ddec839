#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/loadpath/torque.h"
#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/thread/thread.h"
#include "core/verdict/check.h"

#include <optional>
#include <string>

namespace pw::loadpath {

struct ScrewInputs {
    thread::Thread thread;
    material::ScrewGrade strength;
    Force load;        ///< design load
    double friction;   ///< in the thread, the high one: it twists most
    double s = 1;      ///< wanted margin / 2
    Torque bending{};  ///< what a lopsided load leaves to the screw
    double hammer = 1; ///< on the load, for hammering
    bool pushes = false;
    units::System system = units::System::Metric;
};

/// Tension (or thrust), torsion and bending on the stress area, together by von Mises:
///   sigma = F/As + 32 M / (pi ds^3), tau = 16 T / (pi ds^3) with pi ds^2/4 = As and T the thread torque,
///   sqrt(sigma^2 + 3 tau^2) <= Sy.
/// Source: ISO 898-1 and ASME B1.1 (stress area); Shigley 9th ed., ch. 3 and 8.
struct ScrewStress {
    Stress tension, bending, torsion, together;
};
ScrewStress screwStress(const ScrewInputs& inputs);

/// `screw.stress`.
Check screwStressCheck(const ScrewInputs& inputs);

/// `screw.hung_station`: an accident, so less is wanted, as for the plate: 1.5 holds, 1.1 .. 1.5 thin,
/// under 1.1 breaks. A round bar in bending carries 16 / (3 pi) = 1.70 x its first yield (Roark 7th ed. Table
/// A.1, shape factor), and a screw that bends a little has not let go: the bending counts by that much less.
/// `inputs` carry the load and the bending with the station missing.
Check hungScrewCheck(const ScrewInputs& inputs, int station, shape::Point where);

/// Capacity of a thread by its condition: good 1.0, worn or rusty 0.75, damaged 0.5.
/// Common practice, no published source.
double conditionFactor(job::ThreadCondition condition);

/// Both sides of a pair of threads, each in its own steel.
struct StripInputs {
    std::string id, member, title; ///< "thread.shaft", "shaft thread", "Shaft thread"
    thread::Thread thread;
    Length engagement;
    material::ScrewGrade screw;
    material::Material inside; ///< steel of the part with the inside thread
    /// A nut by its class: its proof stress on the stress area limits it as well, less where it is lower than
    /// standard.
    std::optional<material::NutGrade> nut;
    Length standardNutHeight; ///< 0 when there is no standard: full height is taken
    job::ThreadCondition condition = job::ThreadCondition::Good;
    Force load;
    double s = 1;
    units::System system = units::System::Metric;
};

/// Load that strips the weaker side: area of FED-STD-H28 (ASME B1.1) x half the ultimate strength x
/// condition.
struct StripLoads {
    Force screw, inside; ///< condition counted
    bool screwGoesFirst() const { return screw < inside; }
    Force least() const { return screwGoesFirst() ? screw : inside; }
};
StripLoads stripLoads(const StripInputs& inputs);

/// `thread.nut`, `thread.shaft`, `thread.plate`, `bolts.thread`, by the id given.
Check stripCheck(const StripInputs& inputs);

} // namespace pw::loadpath
