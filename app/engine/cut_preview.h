#pragma once

#include "app/engine/report.h"
#include "core/job/assumed.h"
#include "geometry/exchange/cut_path.h"

namespace pw::engine {

/// How the job's plate is cut: process, thickness, kerf, what is drilled. The thickness must be known.
exchange::CutSettings cutSettingsOf(const job::Job& job, const job::Assumed& assumed);

/// The torch's path round the plate of the report, as a cut file would have it at the usual feed; nothing is
/// written and the verdict is not asked. Problems: no whole plate yet, or a process that burns nothing.
util::Result<exchange::CutPath> cutPathOf(const job::Job& job, const Report& report);

} // namespace pw::engine
