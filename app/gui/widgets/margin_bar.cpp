#include "app/gui/widgets/margin_bar.h"

#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <QPainter>

namespace pw::gui {

void drawMarginBar(QPainter& painter, const QRectF& track, double margin, verdict::Grade grade) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const VerdictColours& v = c.of(grade);
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.tone == Tone::Dark ? mixed(c.panel, c.rule, 0.5) : mixed(c.panel, c.rule, 0.55));
    painter.drawRoundedRect(track, 2, 2);
    const double share = std::clamp(margin / 2, 0.0, 1.0);
    if (share > 0) {
        // A thin bar in light is too near the panel to stand without an edge.
        if (grade == verdict::Grade::Thin && c.tone == Tone::Light)
            painter.setPen(QPen(v.text, 1));
        painter.setBrush(grade == verdict::Grade::Incomplete ? c.strongRule : v.fill);
        painter.drawRoundedRect(
            QRectF(track.left(), track.top(), std::max(track.width() * share, 3.0), track.height()), 2, 2);
    }
    if (margin > 2) {
        QPen pen(v.onFill, 1.8);
        pen.setCapStyle(Qt::RoundCap);
        painter.setPen(pen);
        const double x = track.right() - look.pxF(7), m = track.center().y(), s = look.pxF(3);
        painter.drawPolyline(QPolygonF{QPointF(x, m - s), QPointF(x + s, m), QPointF(x, m + s)});
    }
    painter.fillRect(QRectF(track.center().x() - 1, track.center().y() - look.pxF(10), 2, look.pxF(20)),
                     c.ink);
}

} // namespace pw::gui
