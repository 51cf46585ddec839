#pragma once

#include "core/job/job.h"
#include "core/loadpath/setup.h"

#include <string>
#include <vector>

/// What the screw pushes against or is anchored in, when that is not a plain shaft thread.
namespace pw::loadpath {

/// A backing bar or stop block: `back.bending` (beam on two supports, net of the screw's hole, on yield) and
/// `back.bearing` (the nut's ring or the screw's point on it, 1.8 x yield, of the weaker under a point, AISC
/// 360 J7, from memory; hammering counts on a point). A stop bolt in the shaft's end: `back.bearing` (its pad
/// on the shaft's face) and `back.thread` (strip in the shaft; with a pad that seats it is only a note).
/// Nothing for a shaft or none.
MemberChecks backChecks(const job::Job& job, const Setup& setup, Force load, double s);

/// `point.bearing`: the screw's point on the shaft's end, 1.8 x yield of the weaker of shaft, screw and stop
/// bolt (AISC 360 J7, from memory). Of a hollow shaft only the ring under the point carries; a point no wider
/// than the bore has nothing to push on. Hammering counts kHammerFactor. Nothing when the screw does not
/// push.
MemberChecks pointChecks(const job::Job& job, const Setup& setup, Force load, double s);

} // namespace pw::loadpath
