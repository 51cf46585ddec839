#pragma once

#include "app/engine/rack.h"
#include "app/gui/models/rack_rows.h"

/// Laying the plate on a piece, and cutting it out of it: what becomes of job and rack.
namespace pw::gui {

/// The job with its plate from this piece where the ranking put it; one that was not ranked, or does not fit,
/// is laid where it comes nearest.
jobfile::Tree laidOn(jobfile::Tree job, const rack::RackReading& rack, const RackRow& row);

struct PieceCut {
    jobfile::Tree rack;  ///< as it is afterwards
    bool isLast = false; ///< no other piece of its kind is left under its name
    QString words;       ///< what is on the rack now
};

/// Cuts the plate out of the piece that the job names, where the job says it lies. `ranked` (may be null):
/// where the other plates of a stack lie. A problem when the plate does not lie on it.
util::Result<PieceCut> cutPiece(const job::Job& job, const jobfile::Tree& rack,
                                const rack::RackReading& reading, const engine::PieceAnswer* ranked);

} // namespace pw::gui
