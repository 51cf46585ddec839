#pragma once

#include "app/paper/sheet_data.h"
#include "core/rack/read_rack.h"

namespace pw::paper {

/// The piece that the job names, with the plate where the job puts it; none when it names none, says no
/// place, or the rack has no such piece.
std::optional<Offcut> offcutOf(const job::Job& job, const rack::RackReading& rack);

} // namespace pw::paper
