#pragma once

#include "app/gui/print/page_data.h"

class QPrinter;
class QWidget;

namespace pw::gui {

/// Asks for a printer and prints; false when it was called off.
bool printJob(QWidget* parent, const PageData& data);

/// Shows what would be printed, and prints it from there.
void previewJob(QWidget* parent, const PageData& data);

/// The paper of the preferences, margins that every printer can do, the job's name.
void setUp(QPrinter& printer, const PageData& data);
/// Every page; the number of pages, 0 when the printer did not begin.
int paintJob(QPrinter& printer, const PageData& data);

} // namespace pw::gui
