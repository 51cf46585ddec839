#pragma once

#include <QColor>
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

/// The hatch of steel past yield: 45 degrees, px.
inline constexpr double kHatchPitch = 6, kHatchWidth = 1.6;
QColor hatchColour();

/// Fills a box with it.
void fillHatch(QPainter& painter, const QRectF& box);

} // namespace pw::gui
