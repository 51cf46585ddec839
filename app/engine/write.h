#pragma once

#include "app/engine/output.h"
#include "geometry/outline/place.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pw::engine {

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

/// A plate and where on the piece it lies.
struct PlacedPlate {
    job::Job job;
    Report report;
    outline::Place place;
};

/// The same of several plates on one piece, in the piece's coordinates: they must be of one thickness, and
/// cut in the same way. `piece`: what it is called in the file, as "300 x 400 mm".
util::Result<std::vector<std::string>> writeCutFile(const std::vector<PlacedPlate>& plates,
                                                    const std::string& piece,
                                                    const std::filesystem::path& file,
                                                    const CutChoices& choices);

/// Room to leave between plates and to the edge of the piece: for kerf, leads and pierces. mm.
double gapBetween(const job::Job& job);

/// The same with nothing chosen but `anyway`.
util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway);

/// STEP of the plate, in the job's preferred unit; or of the whole stack as an assembly.
util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway, bool stack = false);

} // namespace pw::engine
