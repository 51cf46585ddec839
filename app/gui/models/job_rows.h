#pragma once

#include "core/job/job.h"
#include "core/jobfile/tree.h"
#include "core/shape/loop.h"
#include "core/units/format.h"
#include "core/util/result.h"

#include <string>
#include <vector>

/// Edits of the lists in a job as typed: holes, corners, stations, what stands in the way. All plain: a tree
/// in, a tree changed. Lengths in mm; they are written in the unit of `system`.
namespace pw::gui {

std::size_t rowCount(const jobfile::Tree& tree, const std::string& path);
/// "plate.holes[2]"
std::string rowPath(const std::string& list, std::size_t row);

/// As a person would type it: "-12.5 mm", "-1 1/16 in"; in steps of 0.01 mm, or 1/64 in where it is one.
std::string typedMm(double mm, units::System system);
jobfile::Tree typedPlace(shape::Point at, units::System system);

/// Rows of a list that the reader kept, in order: those without a problem at one of `keys`. Their places in
/// the list are places in the job's own, which leaves the others out.
std::vector<std::size_t> understoodRows(const jobfile::Tree& tree, const util::Problems& problems,
                                        const std::string& list, const std::vector<std::string>& keys);

/// Corners keep what else is typed with them (the arc of the side after them).
std::string cornerPlacePath(const jobfile::Tree& tree, std::size_t corner); ///< of its [x, y]
void moveCorner(jobfile::Tree& tree, std::size_t corner, shape::Point to, units::System system);
/// A corner on side `side` (from corner `side` to the next), nearest to `near`; an arc stays the same arc.
void addCorner(jobfile::Tree& tree, const std::vector<shape::Vertex>& corners, std::size_t side,
               shape::Point near, units::System system);
/// False when only three are left.
bool removeCorner(jobfile::Tree& tree, std::size_t corner);
/// The corner replaced by an arc of `radius` that runs on into both sides. False where a side is an arc or
/// too short for it.
bool roundCorner(jobfile::Tree& tree, const std::vector<shape::Vertex>& corners, std::size_t corner,
                 double radius, units::System system);

/// Another kind of outline about as large as the one there was; figures that are typed already stay.
void switchOutline(jobfile::Tree& tree, const job::Job& job, const std::string& shape, units::System system);

/// One entry for each station in `stations.loaded` and `load.share`, or none at all where all are alike.
void setLoaded(jobfile::Tree& tree, std::size_t count, std::size_t station, bool loaded);
void setShare(jobfile::Tree& tree, std::size_t count, std::size_t station, double share);
/// Makes both lists so long, where they are there.
void resizeStationLists(jobfile::Tree& tree, std::size_t count);

/// The same stations, listed one by one.
void placeEachByItself(jobfile::Tree& tree, const job::Job& job, units::System system);
/// Evenly on the circle that serves the listed ones best.
void placeEvenly(jobfile::Tree& tree, const job::Job& job, units::System system);
void placeAt(jobfile::Tree& tree, const std::vector<shape::Point>& places, units::System system);
void placeOnCircle(jobfile::Tree& tree, std::size_t count, double diameter, double startDegrees,
                   units::System system);
/// A listed station taken out, with its entries in the other lists. False when it is the last.
bool removeStation(jobfile::Tree& tree, std::size_t station);

} // namespace pw::gui
