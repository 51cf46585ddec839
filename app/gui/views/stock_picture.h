#pragma once

#include "app/gui/models/rack_rows.h"
#include "app/gui/views/plan_geometry.h"

#include <QPainterPath>

class QPainter;

namespace pw::gui {

/// A closed curve on the screen; empty for one that has no sides.
QPainterPath loopPath(const shape::Loop& loop, const PlanTransform& transform);

/// A piece: its steel without the holes, bad areas hatched, plates on it.
void paintStock(QPainter& painter, const StockPicture& picture, const PlanTransform& transform);

/// The same in the middle of a box at this scale, px per mm; what is larger is cut off at the edge, and what
/// is shown then is about the plate.
void paintStockIn(QPainter& painter, const StockPicture& picture, const QRectF& box, double scale);

} // namespace pw::gui
