#pragma once

#include "app/engine/report.h"
#include "app/paper/template_plan.h"

#include <optional>

namespace pw::paper {

/// The piece the plate is cut from, and where on it the plate lies.
struct Offcut {
    std::string name;
    shape::Loop outline;            ///< mm, the piece's own coordinates
    std::vector<shape::Loop> holes; ///< holes and bad areas in it
    shape::Point at;                ///< of the plate's origin, in the piece's coordinates
    double turn = 0;                ///< of the plate's x axis from the piece's, radians
};

/// All that a shop sheet is made from.
struct SheetData {
    const job::Job& job;
    const engine::Report& report;
    const TemplatePlan& plan;
    Sheet sheet;
    std::string date, file; ///< as printed; the job file's name, or nothing
    std::optional<Offcut> offcut;
};

} // namespace pw::paper
