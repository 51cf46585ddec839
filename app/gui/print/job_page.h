#pragma once

#include "app/gui/print/page_data.h"
#include "core/shape/loop.h"

#include <functional>
#include <QRectF>

class QPainter;

namespace pw::gui {

/// A plain sheet with all there is to a job: verdict, stop torque and rated load, the plan to scale, the
/// figures, the checks, the cautions and the order of work. One page where it fits; the order of work goes on
/// to a second. Black on white. `sheet`: the printable part in mm; the painter's unit is 0.1 mm, with its
/// origin at the corner of that part. `newPage` is called before anything of a further page is drawn. The
/// number of pages.
int drawJobPage(QPainter& painter, const QSizeF& sheet, const PageData& data,
                const std::function<void()>& newPage);

/// The largest scale of ISO 5455 (1:1, 1:2, 1:5, 1:10, ...) at which `box` fits into the room, mm of paper
/// for mm of plate.
double drawingScale(const shape::Box& box, const QSizeF& room);

} // namespace pw::gui
