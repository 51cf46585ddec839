#include "app/engine/several.h"
#include "app/gui/document/rack_shelf.h"
#include "app/gui/models/field_text.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/print/print_job.h"
#include "app/gui/propose/propose_dialog.h"
#include "app/gui/settings/settings.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/window.h"
#include "app/paper/offcut.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"

// What the window writes and prints of a job, and what it asks beside it; how it shows one is in window.cpp.
namespace pw::gui {

namespace {

QString fileName(const std::filesystem::path& file) {
    return QString::fromStdString(file.filename().string());
}

} // namespace

bool Window::isAnswered() {
    if (m_report && !m_checker->isBusy() && m_reportRevision == m_document->revision())
        return true;
    m_notice->say(tr("The verdict is still being worked out. Try again in a moment."));
    return false;
}

std::optional<bool> Window::anyway(const QString& title) {
    if (engine::mayBeMade(m_report->grade))
        return false;
    const bool go = m_questions.really(this, title,
                                       tr("The verdict is “%1”. %2\n\nThe file will say so on its face.")
                                           .arg(verdictWord(m_report->grade), local(m_report->reason)),
                                       tr("Write it all the same"));
    return go ? std::optional<bool>(true) : std::nullopt;
}

std::filesystem::path Window::askFile(const OutputKind& kind) {
    QString name = m_document->path().empty() ? m_document->name() : fileName(m_document->path());
    if (name.endsWith(QLatin1String(".plate.json")))
        name.chop(11);
    std::filesystem::path file = m_questions.savePath(
        this, kind.title, settings::lastFolder() + QLatin1Char('/') + name + kind.suffix, kind.filter);
    if (!file.empty() && !file.has_extension())
        file += kind.suffix.toStdString();
    return file;
}

void Window::tellWritten(const std::filesystem::path& file,
                         const util::Result<std::vector<std::string>>& written) {
    if (!written) {
        m_notice->say(tr("%1 was not written: %2")
                          .arg(fileName(file), QString::fromStdString(written.problem().message)));
        return;
    }
    QStringList words{tr("Written: %1").arg(fileName(file))};
    for (const std::string& line : *written)
        words << local(line);
    m_notice->say(words.join(QStringLiteral(". ")).replace(QStringLiteral(".."), QStringLiteral(".")));
}

void Window::write(Output output) {
    if (!isAnswered())
        return;
    const OutputKind kind = kindOf(output);
    OutputChoices choices;
    if (kind.judged) {
        const auto go = anyway(kind.title);
        if (!go)
            return;
        choices.anyway = *go;
    }
    const std::filesystem::path file = askFile(kind);
    if (file.empty())
        return;
    job::Job job = m_document->job();
    job.preferred = m_units;
    choices.file = m_document->path().filename().string();
    choices.offcut = offcut();
    tellWritten(file, m_engine.write(output, job, *m_report, file, choices));
}

void Window::writeSeveral() {
    if (!isAnswered())
        return;
    const auto go = anyway(tr("Several plates from one piece"));
    if (!go)
        return;
    const auto count = m_questions.text(this, tr("Several plates from one piece"),
                                        tr("How many of this plate?"), QStringLiteral("2"));
    bool number = false;
    const int wanted = count.toInt(&number);
    if (count.isEmpty())
        return;
    const auto size = m_questions.text(
        this, tr("Several plates from one piece"),
        tr("How large is the piece? Type it like 300 x 400 mm or 12 in x 20 in."),
        m_units == units::System::Inch ? QStringLiteral("12 in x 20 in") : QStringLiteral("300 x 400 mm"));
    if (size.isEmpty())
        return;
    const auto piece = engine::pieceOf(size.toStdString());
    if (!number || wanted < 1 || wanted > 100 || !piece) {
        m_notice->say(!piece ? local(piece.problem().message)
                             : tr("Not a number of plates. Type it like 2."));
        return;
    }
    job::Job job = m_document->job();
    job.preferred = m_units;
    std::vector<engine::PlacedPlate> plates(static_cast<std::size_t>(wanted), {job, *m_report, {}});
    // Other jobs beside it: none is as good an answer.
    for (const std::filesystem::path& other : m_questions.openPaths(this)) {
        const auto tree = jobfile::loadTree(other);
        jobfile::Reading reading = tree ? jobfile::readJob(*tree) : jobfile::Reading{};
        if (!tree || !reading.problems.empty()) {
            m_notice->say(tr("%1 has figures to mend; open it first.").arg(fileName(other)));
            return;
        }
        reading.job.preferred = m_units;
        engine::PlacedPlate plate{reading.job, m_engine.check(reading.job, {}), {}};
        if (const auto problem = engine::refusalOf(plate.job, plate.report, *go)) {
            m_notice->say(tr("%1: %2").arg(fileName(other), local(problem->message)));
            return;
        }
        plates.push_back(std::move(plate));
    }
    const OutputKind kind = kindOf(Output::CutSize);
    const std::filesystem::path file = askFile(kind);
    if (file.empty())
        return;
    if (const auto problem = engine::refusalOf(job, *m_report, *go)) {
        tellWritten(file, *problem);
        return;
    }
    if (const auto status = engine::setOutOn(plates, *piece); !status) {
        tellWritten(file, status.problem());
        return;
    }
    engine::CutChoices choices;
    choices.anyway = *go;
    choices.path = true; // set out with room for the leads
    tellWritten(file, engine::writeCutFile(plates, piece->words, file, choices));
}

std::optional<PrintJob> Window::printed(bool asTemplate) {
    if (!isAnswered())
        return std::nullopt;
    const auto go = anyway(tr("Print"));
    if (!go)
        return std::nullopt;
    QString file = m_document->path().empty() ? QString() : fileName(m_document->path());
    job::Job job = m_document->job();
    job.preferred = m_units;
    return PrintJob{job, m_report, m_document->name(), file, asTemplate, *go, offcut()};
}

std::optional<paper::Offcut> Window::offcut() const {
    const auto rack = m_shelf->reading();
    return rack ? paper::offcutOf(m_document->job(), *rack) : std::nullopt;
}

ToolDialog* Window::tryTool() {
    auto* dialog = new ToolDialog(*m_document, m_units, m_engine.tryTool, m_questions, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    return dialog;
}

ProposeDialog* Window::propose() {
    auto* dialog = new ProposeDialog(*m_document, m_units, m_engine.propose, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, m_plan, &PlanView::fit);
    connect(dialog, &ProposeDialog::fieldAsked, this,
            [this](const std::string& path) { m_figures->openField(path, true); });
    dialog->open();
    return dialog;
}

void Window::print(bool asTemplate) {
    const auto job = printed(asTemplate);
    if (!job)
        return;
    if (const auto done = printJob(this, *job); !done)
        m_notice->say(tr("Not printed: %1").arg(local(done.problem().message)));
}

void Window::printPreview(bool asTemplate) {
    const auto job = printed(asTemplate);
    if (!job)
        return;
    if (const auto shown = previewJob(this, *job); !shown)
        m_notice->say(tr("Not printed: %1").arg(local(shown.problem().message)));
}

} // namespace pw::gui
