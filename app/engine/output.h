#pragma once

#include "app/engine/report.h"
#include "core/job/assumed.h"
#include "geometry/exchange/cut_plan.h"

#include <filesystem>
#include <optional>
#include <string>

/// What all outputs of a job share: whether they may be written, what they say of a plate that does not hold,
/// how it is cut.
namespace pw::engine {

/// May this verdict be cut? (holds or thin)
bool mayBeMade(verdict::Grade grade);

/// What every output of a plate that may not be made says on its face, in English everywhere, as all of a
/// file: machines and other shops read it. "DO NOT USE: SETS"; empty when it may be made.
std::string warningOf(const Report& report);

/// Why nothing is written of this job: its verdict, and nobody said `anyway`; or there is no whole plate.
std::optional<util::Problem> refusalOf(const job::Job& job, const Report& report, bool anyway);

/// How the plate is cut. Needs its thickness.
exchange::CutSettings cutSettingsOf(const job::Job& job, const job::Assumed& assumed);

/// ".dxf" of "PLATE.DXF".
std::string suffixOf(const std::filesystem::path& file);

} // namespace pw::engine
