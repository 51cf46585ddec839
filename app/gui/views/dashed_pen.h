#pragma once

#include <QPen>

namespace pw::gui {

/// Dashes and gaps in px, whatever the width of the line.
inline QPen dashedPen(const QColor& colour, double width, const QList<qreal>& dashes) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    QList<qreal> pattern;
    for (const qreal dash : dashes)
        pattern << dash / width;
    pen.setDashPattern(pattern);
    return pen;
}

} // namespace pw::gui
