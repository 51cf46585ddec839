#pragma once

#include "core/verdict/check.h"

#include <QRectF>

class QPainter;

namespace pw::gui {

/// A margin over what is wanted as a bar: the track's middle is what is wanted, and the one upright line
/// through all rows stands there. Past twice that an arrow says that it goes on.
void drawMarginBar(QPainter& painter, const QRectF& track, double margin, verdict::Grade grade);

} // namespace pw::gui
