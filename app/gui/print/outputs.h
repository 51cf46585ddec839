#pragma once

#include "app/engine/report.h"
#include "app/paper/sheet_data.h"
#include "core/job/job.h"

#include <filesystem>
#include <functional>
#include <QString>
#include <vector>

namespace pw::gui {

/// Everything that can be written of a job.
enum class Output {
    CutSize,  ///< drawing at the finished size
    CutPath,  ///< drawing of the torch's path
    CutR12,   ///< the finished size for old tables
    Program,  ///< RS-274
    Plate,    ///< STEP
    Stack,    ///< STEP assembly
    Sheet,    ///< shop sheet
    Template, ///< paper template
    Text,     ///< report
    Json      ///< report
};

struct OutputKind {
    Output output;
    QString menu, title;    ///< in the menu; of the dialog that asks for the file
    QString suffix, filter; ///< ".dxf"; as file dialogs take it
    bool judged = true;     ///< a verdict that may not be made is asked about first
};
/// In the order of the menu.
std::vector<OutputKind> outputKinds();
OutputKind kindOf(Output output);

struct OutputChoices {
    bool anyway = false;                   ///< write a verdict that may not be made, marked
    std::string file;                      ///< name of the job file, as printed
    std::optional<paper::Offcut> offcut{}; ///< under the plate on the sheet
};

/// Writes one; what there is to say about it, line by line.
using WriteFunction = std::function<util::Result<std::vector<std::string>>(
    Output, const job::Job&, const engine::Report&, const std::filesystem::path&, const OutputChoices&)>;

util::Result<std::vector<std::string>> writeOutput(Output output, const job::Job& job,
                                                   const engine::Report& report,
                                                   const std::filesystem::path& file,
                                                   const OutputChoices& choices);

} // namespace pw::gui
