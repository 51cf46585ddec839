#pragma once

#include "core/job/job.h"
#include "core/loadpath/centre.h"
#include "core/loadpath/judge.h"
#include "core/material/material.h"
#include "core/shape/loop.h"

#include <optional>
#include <string>
#include <vector>

/// Room and layout: does the plate go where it must and leave enough steel?
namespace pw::loadpath {

/// The ring that bears: the job's land, else its retainer, else (a puller) the standard washer of its bolts
/// or legs (ISO 7089, ASME B18.21.1); none when none of these is known.
std::optional<Length> landOf(const job::Job& job);

/// `land.width`: (land - access hole)/2 - layout error - growth; under 1 mm thin, 0 or less breaks.
/// Common practice, no published source.
Check landWidthCheck(const job::Job& job);

/// `land.bearing`: the most loaded station's force on its land against 1.8 x yield of the plate.
/// Source: AISC 360 J7 (from memory).
Check landBearingCheck(const job::Job& job, const std::optional<material::Material>& plate, Force station,
                       double s);

/// `access.keeper`: access hole - keeper; under 3 mm thin, under 0 breaks; the pin must pass; a pick reaches
/// about 1.5 hole diameters deep. Common practice, no published source.
Check accessCheck(const job::Job& job);

/// A piece of steel left between two edges of the plan.
struct Ligament {
    std::string name; ///< "between access hole 1 and the rim"
    double width = 0; ///< mm; 0 or less where the edges meet
    std::vector<shape::Point> where;
};

/// `plate.ligament`: the narrowest; under half the plate thickness or 5 mm thin, 0 breaks.
/// Common practice, no published source.
Check ligamentCheck(const job::Job& job, const std::vector<Ligament>& ligaments);

/// `centre.washer`: the washer (or nut face) must cover the bore, and may not cover access holes; a bore
/// wider than the nut face lets a washer dish. Nothing to check for a tapped bore.
std::optional<Check> washerCheck(const job::Job& job, const CentreBearing& bearing);

/// `cut.holes`: which holes the process cannot burn and must be drilled. A note.
Check cutHolesCheck(const job::Job& job);

} // namespace pw::loadpath
