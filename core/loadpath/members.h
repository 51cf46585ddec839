#pragma once

#include "core/job/job.h"
#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/thread/thread.h"
#include "core/util/result.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::loadpath {

using units::Length;

/// The members, found by name in the tables. What is not given is taken as the weakest of its kind, and said.
struct Members {
    std::optional<thread::Thread> thread;
    std::optional<material::ScrewGrade> screw;
    std::optional<material::NutGrade> nut;
    std::optional<material::Material> plate, into;
    std::vector<std::string> assumptions;
    util::Problems problems; ///< names the tables do not know, with the job field
};
Members membersOf(const job::Job& job);

/// What the screw enters and which part turns, as given or as the rest of the job implies.
job::Into intoOf(const job::Job& job);
job::Turns turnsOf(const job::Job& job);
/// A nut on the stud carries the force.
bool hasNut(const job::Job& job);
/// A forcing screw is part of the tool: stated, or a tapped bore for one, or a squeeze, which is done with
/// one. A pull may be done with a ram alone.
bool hasScrew(const job::Job& job);
/// The screw pushes with its point (a puller's forcing screw); else it is drawn in tension.
bool screwPushes(const job::Job& job);

std::optional<Length> nutHeightOf(const job::Job& job, const Members& members);

/// A material by the job's figure, else scrap nobody knows.
util::Result<material::Material> orScrap(const job::Given<job::Material>& given, Length thickness = {});

} // namespace pw::loadpath
