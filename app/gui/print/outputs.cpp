#include "app/gui/print/outputs.h"

#include "app/engine/report_json.h"
#include "app/engine/report_text.h"
#include "app/engine/write.h"
#include "app/gui/settings/settings.h"
#include "app/paper/write_paper.h"
#include "core/jobfile/json.h"
#include "core/util/write_file.h"

#include <algorithm>
#include <QCoreApplication>

namespace pw::gui {

namespace {

using Lines = util::Result<std::vector<std::string>>;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(pw::gui::Outputs)
};

Lines linesOf(const util::Status& status) {
    if (!status)
        return status.problem();
    return std::vector<std::string>();
}

} // namespace

std::vector<OutputKind> outputKinds() {
    return {
        {Output::CutSize, Words::tr("Cut file, finished size…"), Words::tr("Cut file"),
         QStringLiteral(".dxf"), Words::tr("Drawing or program for the table (*.dxf *.svg *.ngc)")},
        {Output::CutPath, Words::tr("Cut file, path of the torch…"), Words::tr("Path of the torch"),
         QStringLiteral(".dxf"), Words::tr("Drawing of the path (*.dxf *.svg)")},
        {Output::CutR12, Words::tr("Cut file for old tables…"), Words::tr("Cut file for old tables"),
         QStringLiteral(".dxf"), Words::tr("DXF release 12 (*.dxf)")},
        {Output::Program, Words::tr("Program for the table…"), Words::tr("Program for the table"),
         QStringLiteral(".ngc"), Words::tr("RS-274 program (*.ngc)")},
        {Output::Plate, Words::tr("Solid of the plate…"), Words::tr("Solid"), QStringLiteral(".step"),
         Words::tr("Solid (*.step *.stp)")},
        {Output::Stack, Words::tr("Solid of the whole stack…"), Words::tr("Solid of the stack"),
         QStringLiteral(".step"), Words::tr("Solid (*.step *.stp)")},
        {Output::Sheet, Words::tr("Shop sheet…"), Words::tr("Shop sheet"), QStringLiteral(".pdf"),
         Words::tr("Paper (*.pdf)")},
        {Output::Template, Words::tr("Paper template…"), Words::tr("Paper template"), QStringLiteral(".pdf"),
         Words::tr("Paper (*.pdf)")},
        {Output::Text, Words::tr("Report as text…"), Words::tr("Report"), QStringLiteral(".txt"),
         Words::tr("Text (*.txt)"), false},
        {Output::Json, Words::tr("Report as JSON…"), Words::tr("Report"), QStringLiteral(".json"),
         Words::tr("JSON (*.json)"), false},
    };
}

OutputKind kindOf(Output output) {
    const std::vector<OutputKind> kinds = outputKinds();
    return *std::ranges::find(kinds, output, &OutputKind::output);
}

Lines writeOutput(Output output, const job::Job& job, const engine::Report& report,
                  const std::filesystem::path& file, const OutputChoices& choices) {
    engine::CutChoices cut;
    cut.anyway = choices.anyway;
    paper::PaperChoices paper;
    paper.anyway = choices.anyway;
    paper.file = choices.file;
    paper.offcut = choices.offcut;
    paper.size =
        settings::paper() == settings::Paper::Letter ? paper::PaperSize::Letter : paper::PaperSize::A4;
    switch (output) {
    case Output::CutPath:
    case Output::Program:
        cut.path = true;
        return engine::writeCutFile(job, report, file, cut);
    case Output::CutR12:
        cut.r12 = true;
        return engine::writeCutFile(job, report, file, cut);
    case Output::CutSize:
        return engine::writeCutFile(job, report, file, cut);
    case Output::Plate:
        return linesOf(engine::writeSolid(job, report, file, choices.anyway));
    case Output::Stack:
        return linesOf(engine::writeSolid(job, report, file, choices.anyway, true));
    case Output::Sheet:
        return paper::writeShopSheet(job, report, file, paper);
    case Output::Template:
        return paper::writeTemplate(job, report, file, paper);
    case Output::Text:
        return linesOf(util::writeFileWhole(file, engine::toText(report)));
    case Output::Json:
        return linesOf(util::writeFileWhole(file, jobfile::toJson(engine::toTree(report))));
    }
    return util::Problem{file.string(), "not a kind of output"};
}

} // namespace pw::gui
