#pragma once

#include "core/job/job.h"
#include "core/shape/region.h"
#include "core/util/result.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::outline {

/// A plate as far as the figures describe one.
struct Built {
    shape::Region region;             ///< what could be made, for drawing; to be trusted only when ok()
    util::Problems problems;          ///< every wrong figure: its field and how to mend it
    std::vector<std::string> missing; ///< paths of the figures still needed

    bool ok() const { return problems.empty() && missing.empty(); }
};

/// The plate of a job: rim, bore, access holes, extra holes. `tappedBore` is the diameter at the thread's
/// tips when plate.bore_thread is given. A bore of 0 is a plate without one. Holes come in the order bore,
/// stations, extra holes; `open` ones are part of the rim.
Built buildRegion(const job::Job& job, std::optional<units::Length> tappedBore = std::nullopt);

/// An outline alone (an offcut's, too), counter-clockwise. Nothing when figures are missing or wrong; they
/// are then added to the lists under `field` ("plate.outline").
std::optional<shape::Loop> buildOutline(const job::Outline& outline, const std::string& field,
                                        util::Problems& problems, std::vector<std::string>& missing);

} // namespace pw::outline
