#pragma once

#include "app/engine/report.h"

#include <filesystem>

namespace pw::engine {

/// May this verdict be cut? (holds or thin)
bool mayBeMade(verdict::Grade grade);

/// DXF (R2000) of the plate; `anyway` marks a verdict that may not be made on the file's face. Written whole
/// or not at all. The suffix decides the format; one we do not write is a problem that says which we do.
util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway);

/// STEP of the plate, in the job's preferred unit.
util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway);

} // namespace pw::engine
