#pragma once

#include <QRectF>
#include <QString>
#include <QStringList>

class QPainter;

namespace pw::gui {

/// The scale of an overlay, upright at the plan's right.
struct ScaleLegend {
    QString title;        ///< "Stress, MPa"
    double top = 1;       ///< in the user's unit; the foot is 0
    double mark = -1;     ///< a line across the bar, in the same unit; below 0: none
    QString markWords;    ///< "yields 205"
    bool hatched = false; ///< above the mark
};

/// `area` is what the plan leaves free; the legend takes its right side. Returns the box it took.
QRectF drawLegend(QPainter& painter, const QRectF& area, const ScaleLegend& legend);

/// Fills a shape's box with the 45 degree hatch of steel past yield (6 px pitch, 1.6 px).
void fillHatch(QPainter& painter, const QRectF& box);

} // namespace pw::gui
