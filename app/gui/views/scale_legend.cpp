#include "app/gui/views/scale_legend.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/stress_scale.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>

namespace pw::gui {

QColor hatchColour() {
    const Look& look = Look::now();
    return look.tone() == Tone::Dark ? look.colours().ground : look.colours().field;
}

void fillHatch(QPainter& painter, const QRectF& box) {
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(hatchColour(), kHatchWidth));
    // 6 px between the lines, measured across them; started from a fixed grid so that neighbours meet.
    const double step = kHatchPitch * std::sqrt(2.0), h = box.height();
    for (double x = std::floor((box.left() - h) / step) * step; x < box.right(); x += step)
        painter.drawLine(QPointF(x, box.bottom()), QPointF(x + h, box.top()));
    painter.restore();
}

QRectF drawLegend(QPainter& painter, const QRectF& area, const ScaleLegend& legend) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font(Type::Label));
    const QFontMetricsF metrics(painter.font());
    const QLocale locale;
    double figures = 0;
    QStringList words;
    for (int i = 0; i <= kScaleBands; i += 2) {
        words << locale.toString(legend.top * i / kScaleBands, 'g', 4);
        figures = std::max(figures, metrics.horizontalAdvance(words.last()));
    }
    const double titleWidth = metrics.horizontalAdvance(legend.title);
    const double wide = look.pxF(22);
    const double bar = std::clamp(area.height() - look.pxF(60), look.pxF(96), look.pxF(216));
    const double right = std::max(figures + look.pxF(10), titleWidth - wide);
    const QRectF box(area.right() - right - wide, area.bottom() - bar - look.pxF(10), wide, bar);

    painter.setPen(c.muted);
    drawLine(painter, QRectF(box.left(), box.top() - look.pxF(32), titleWidth + 1, look.pxF(20)),
             Qt::AlignLeft, legend.title, false);
    const double band = bar / kScaleBands;
    painter.setPen(Qt::NoPen);
    for (int i = 0; i < kScaleBands; ++i) {
        painter.setBrush(bandColour(look.tone(), i));
        painter.drawRect(QRectF(box.left(), box.bottom() - (i + 1) * band, wide, band));
    }
    const double markY = box.bottom() - bar * legend.mark / legend.top;
    const bool marked = legend.mark >= 0 && legend.mark <= legend.top;
    if (marked && legend.hatched)
        fillHatch(painter, QRectF(box.left(), box.top(), wide, markY - box.top()));
    painter.setPen(c.ink);
    for (int i = 0; i < words.size(); ++i) {
        const double y = box.bottom() - 2 * i * band; // a figure at every second band
        drawLine(painter, QRectF(box.right() + look.pxF(8), y - look.pxF(10), figures + 1, look.pxF(20)),
                 Qt::AlignLeft, words[i], false);
    }
    QRectF taken(box.left(), box.top() - look.pxF(34), wide + right, bar + look.pxF(44));
    if (marked) {
        painter.setPen(QPen(c.ink, 2));
        painter.drawLine(QPointF(box.left() - look.pxF(8), markY), QPointF(box.right() + look.pxF(3), markY));
        painter.setFont(look.font(Type::LabelBold));
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(legend.markWords);
        painter.setPen(c.ink);
        drawLine(painter,
                 QRectF(box.left() - look.pxF(12) - width, markY - look.pxF(10), width + 1, look.pxF(20)),
                 Qt::AlignLeft, legend.markWords, false);
        taken.setLeft(box.left() - look.pxF(16) - width);
    }
    painter.restore();
    return taken;
}

} // namespace pw::gui
