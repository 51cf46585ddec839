#pragma once

#include "core/verdict/check.h"

#include <QColor>
#include <QRectF>

class QPainter;

namespace pw::gui {

/// The plate seen from its edge: a solid slab (holds), a slim plate on two feet (thin), a plate that stays
/// bowed (sets), two halves fallen inwards (breaks), a dashed outline (incomplete). Drawn in the middle of
/// `box`; the mark is as wide as the box (72, 44, 22 or 14 px in the look) and takes what height it needs.
void drawVerdictMark(QPainter& painter, const QRectF& box, verdict::Grade grade, const QColor& colour);

} // namespace pw::gui
