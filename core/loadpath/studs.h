#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/material/material.h"

#include <string>
#include <vector>

/// Puller bolts into the hub, and the legs or studs of a strongback: several rods that share the pull, never
/// evenly.
namespace pw::loadpath {

/// Part of the pull that the worst of `count` rods takes: two never share evenly, 0.6; of three or more one
/// is slack, 1/(count - 1). Common practice, no published source.
double worstShare(int count);
/// "0.6 of the pull, two bolts never share evenly"
std::string shareWords(int count, const std::string& rods);

/// `access.bolt`: bolts or legs must pass the plate's holes, by 0.4 mm (ISO 273 fine, from memory); too small
/// a hole breaks.
std::optional<Check> passCheck(const job::Job& job, const std::string& thread, const std::string& rods);

/// `bolts.proof` (the worst bolt against its proof load), `bolts.thread` (strip in the hub's own material;
/// grey iron where nobody says), `bolts.edge` (centre of a bolt to the hub's rim at least 1.25 x its
/// diameter, AISC 360 Table J3.4, from memory; under half the diameter breaks). Nothing when the job has no
/// bolts. `strength`: what heat leaves of the bolts' strength, 1 when cold.
MemberChecks boltChecks(const job::Job& job, Force load, double s, double strength = 1);

/// `legs.tension` (the worst leg against its yield), `legs.feet` (its nut's face on the strongback), and
/// `legs.bending` (the strongback as a beam on two legs, weakened by its bore; the field solution beside it
/// sees the holes too). Nothing when the job has no legs.
MemberChecks legChecks(const job::Job& job, const material::Material& plate, Force load, double s,
                       double strength = 1);

} // namespace pw::loadpath
