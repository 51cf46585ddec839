#pragma once

#include "app/engine/work_estimate.h"

#include <iosfwd>

namespace pw::cli {

/// Says on `err`, before it starts, that this will take long or much memory; nothing otherwise.
void sayAhead(const job::Job& job, engine::WorkOn what, std::ostream& err, std::size_t pieces = 0);

} // namespace pw::cli
