#pragma once

#include "app/engine/report.h"
#include "app/paper/sheet_data.h"
#include "core/job/job.h"
#include "core/util/result.h"

#include <memory>
#include <QString>

class QPrinter;
class QWidget;

namespace pw::gui {

/// What is brought to paper: the shop sheet of a job, or its template at full size.
struct PrintJob {
    job::Job job;                                 ///< its preferred unit is the one that is printed
    std::shared_ptr<const engine::Report> report; ///< never null
    QString title, file;                          ///< file: its name, or nothing
    bool asTemplate = false;
    bool anyway = false;                   ///< print a verdict that may not be made, marked across every page
    std::optional<paper::Offcut> offcut{}; ///< under the plate on the sheet
};

/// Asks for a printer and prints; false when it was called off, a problem when there is no plate to draw.
util::Result<bool> printJob(QWidget* parent, const PrintJob& print);

/// Shows what would be printed, and prints it from there.
util::Status previewJob(QWidget* parent, const PrintJob& print);

/// The paper of the preferences and the job's name. Pages are laid out to the paper's edge: their own border
/// is more than a printer keeps, and a template would else not be in its true place.
void setUp(QPrinter& printer, const PrintJob& print);
/// Every page; the number of pages.
util::Result<int> paintJob(QPrinter& printer, const PrintJob& print);

} // namespace pw::gui
