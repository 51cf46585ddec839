#include "app/gui/print/print_job.h"

#include "app/gui/print/job_page.h"
#include "app/gui/settings/settings.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPrintDialog>
#include <QPrinter>
#include <QPrintPreviewDialog>

namespace pw::gui {

void setUp(QPrinter& printer, const PageData& data) {
    constexpr double kMarginMm = 12;
    const auto size = settings::paper() == settings::Paper::Letter ? QPageSize::Letter : QPageSize::A4;
    printer.setPageLayout(QPageLayout(QPageSize(size), QPageLayout::Portrait,
                                      QMarginsF(kMarginMm, kMarginMm, kMarginMm, kMarginMm),
                                      QPageLayout::Millimeter));
    printer.setDocName(data.title);
}

int paintJob(QPrinter& printer, const PageData& data) {
    QPainter painter;
    if (!painter.begin(&printer))
        return 0;
    constexpr double kTenthsInInch = 254;
    const double scale = printer.resolution() / kTenthsInInch;
    painter.scale(scale, scale);
    const QRectF sheet = printer.pageRect(QPrinter::Millimeter);
    return drawJobPage(painter, sheet.size(), data, [&printer] { printer.newPage(); });
}

bool printJob(QWidget* parent, const PageData& data) {
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, data);
    QPrintDialog dialog(&printer, parent);
    if (dialog.exec() != QDialog::Accepted)
        return false;
    return paintJob(printer, data) > 0;
}

void previewJob(QWidget* parent, const PageData& data) {
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, data);
    QPrintPreviewDialog dialog(&printer, parent);
    dialog.setWindowTitle(QCoreApplication::translate("pw::gui::Window", "Print preview"));
    dialog.resize(parent->size().boundedTo(QSize(1100, 900)));
    QObject::connect(&dialog, &QPrintPreviewDialog::paintRequested, &dialog,
                     [&data](QPrinter* target) { paintJob(*target, data); });
    dialog.exec();
}

} // namespace pw::gui
