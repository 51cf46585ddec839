#pragma once

#include "app/engine/report.h"
#include "app/paper/sheet_data.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace pw::paper {

struct PaperChoices {
    std::optional<PaperSize> size; ///< Letter when the job is in inches, else A4
    bool anyway = false;           ///< write a verdict that may not be made, marked across every page
    std::string date;              ///< as printed; today when empty
    std::string file;              ///< name of the job file, as printed on the sheet
    std::optional<Offcut> offcut;  ///< drawn round the plate on the sheet
};

/// PDF of the plate at full size on as many sheets as it takes, whole or not at all; says how to print it,
/// line by line. Call from the main thread: type needs a QGuiApplication, and one without a screen is made
/// when there is none yet.
util::Result<std::vector<std::string>> writeTemplate(const job::Job& job, const engine::Report& report,
                                                     const std::filesystem::path& file,
                                                     const PaperChoices& choices);

/// PDF of the shop sheet: drawing, figures, checks, order of work. Else as above.
util::Result<std::vector<std::string>> writeShopSheet(const job::Job& job, const engine::Report& report,
                                                      const std::filesystem::path& file,
                                                      const PaperChoices& choices);

} // namespace pw::paper
