#include "app/gui/print/print_job.h"

#include "app/engine/output.h"
#include "app/gui/settings/settings.h"
#include "app/paper/paint_paper.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>

namespace pw::gui {

void setUp(QPrinter& printer, const PrintJob& print) {
    const auto size = settings::paper() == settings::Paper::Letter ? QPageSize::Letter : QPageSize::A4;
    printer.setFullPage(true);
    printer.setPageLayout(
        QPageLayout(QPageSize(size), QPageLayout::Portrait, QMarginsF(), QPageLayout::Millimeter));
    printer.setDocName(print.title);
}

util::Result<int> paintJob(QPrinter& printer, const PrintJob& print) {
    QPainter painter;
    if (!painter.begin(&printer))
        return util::Problem{
            "", QCoreApplication::translate("pw::gui::Window", "the printer does not take it").toStdString()};
    paper::PaperChoices choices;
    choices.anyway = print.anyway;
    choices.file = print.file.toStdString();
    choices.offcut = print.offcut;
    choices.size = printer.pageLayout().pageSize().id() == QPageSize::Letter ? paper::PaperSize::Letter
                                                                             : paper::PaperSize::A4;
    const paper::Target target{painter, printer.resolution() / units::kMmPerInch,
                               [&printer] { printer.newPage(); }};
    return print.asTemplate ? paper::paintTemplate(target, print.job, *print.report, choices)
                            : paper::paintShopSheet(target, print.job, *print.report, choices);
}

util::Result<bool> printJob(QWidget* parent, const PrintJob& print) {
    if (auto problem = engine::refusalOf(print.job, *print.report, print.anyway))
        return *std::move(problem);
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, print);
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted)
        return false;
    printer.setFullPage(true);
    if (const auto painted = paintJob(printer, print); !painted)
        return painted.problem();
    return true;
}

util::Status previewJob(QWidget* parent, const PrintJob& print) {
    if (auto problem = engine::refusalOf(print.job, *print.report, print.anyway))
        return *std::move(problem);
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, print);
    QPrintPreviewDialog dialog(&printer, parent);
    dialog.setWindowTitle(QCoreApplication::translate("pw::gui::Window", "Print preview"));
    dialog.resize(parent->size().boundedTo(QSize(1100, 900)));
    util::Status status = util::Done{};
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog, [&](QPrinter* target) {
        target->setFullPage(true);
        if (const auto painted = paintJob(*target, print); !painted)
            status = painted.problem();
    });
    dialog.exec();
    return status;
}

} // namespace pw::gui
