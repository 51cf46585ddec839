#pragma once

#include "app/engine/report.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pw::engine {

/// May this verdict be cut? (holds or thin)
bool mayBeMade(verdict::Grade grade);

/// How a cut file is wanted. Its name decides the format: .dxf, .svg, or .ngc.
struct CutChoices {
    bool path = false; ///< the torch's own line with leads instead of the finished size; .ngc always is that
    bool r12 = false;  ///< DXF of release 12, for old tables
    bool anyway = false;                 ///< write a verdict that may not be made, marked on the file's face
    std::optional<double> feed;          ///< of the torch, mm/min; a guess when not stated
    std::optional<double> pierceSeconds; ///< likewise
};

/// Writes the cut file, whole or not at all; says what the cutter must know, line by line: pierces, length,
/// time, what is drilled, what does not come out as drawn. Nothing of a kind that the choices ask for and the
/// format cannot carry is passed over: that is a problem, and so is a suffix we do not write.
util::Result<std::vector<std::string>> writeCutFile(const job::Job& job, const Report& report,
                                                    const std::filesystem::path& file,
                                                    const CutChoices& choices);

/// The same with nothing chosen but `anyway`.
util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway);

/// STEP of the plate, in the job's preferred unit.
util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway);

} // namespace pw::engine
