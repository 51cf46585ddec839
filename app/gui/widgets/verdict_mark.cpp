#include "app/gui/widgets/verdict_mark.h"

#include <algorithm>
#include <QPainter>
#include <QPainterPath>
#include <QPen>

namespace pw::gui {

namespace {

// All proportions are of the mark's width.
void drawSlab(QPainter& painter, QPointF c, double w) {
    const double h = std::max(0.40 * w, 6.0);
    const double corner = w * 0.05;
    painter.drawRoundedRect(QRectF(c.x() - w / 2, c.y() - h / 2, w, h), corner, corner);
}

void drawThin(QPainter& painter, QPointF c, double w) {
    const double bar = std::max(w * 0.09, 1.8), h = 0.36 * w;
    QPainterPath path;
    path.addRect(QRectF(c.x() - w / 2, c.y() - h / 2, w, bar));
    path.addRect(QRectF(c.x() - w / 2, c.y() - h / 2, bar, h));
    path.addRect(QRectF(c.x() + w / 2 - bar, c.y() - h / 2, bar, h));
    path.setFillRule(Qt::WindingFill);
    painter.drawPath(path);
}

void drawBow(QPainter& painter, QPointF c, double w, const QColor& colour) {
    // A ring's piece of 124 degrees whose outer corners are the mark's width apart.
    const double outer = 0.566 * w, thick = 0.27 * w, r = outer - thick / 2;
    const double high = outer - (outer - thick) * 0.469;
    const QRectF circle(c.x() - r, c.y() - high / 2 + thick / 2, 2 * r, 2 * r);
    QPen pen(colour, thick, Qt::SolidLine, Qt::FlatCap);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawArc(circle, 28 * 16, 124 * 16);
}

void drawHalves(QPainter& painter, QPointF c, double w) {
    const double length = 0.54 * w, thick = 0.22 * w;
    for (const int side : {-1, 1}) {
        painter.save();
        painter.translate(c.x() + side * 0.27 * w, c.y());
        painter.rotate(side < 0 ? 58 : -58);
        painter.drawRect(QRectF(-length / 2, -thick / 2, length, thick));
        painter.restore();
    }
}

void drawDashes(QPainter& painter, QPointF c, double w, const QColor& colour) {
    const double h = std::max(0.34 * w, 6.0), line = std::clamp(w / 22, 1.3, 2.6);
    QPen pen(colour, line);
    pen.setCapStyle(Qt::FlatCap);
    const double dash = std::max(w / 12, 1.8) / line;
    pen.setDashPattern({dash, dash * 0.8});
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(
        QRectF(c.x() - w / 2, c.y() - h / 2, w, h).adjusted(line / 2, line / 2, -line / 2, -line / 2));
}

} // namespace

void drawVerdictMark(QPainter& painter, const QRectF& box, verdict::Grade grade, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const QPointF c = box.center();
    const double w = box.width();
    switch (grade) {
    case verdict::Grade::Holds:
        drawSlab(painter, c, w);
        break;
    case verdict::Grade::Thin:
        drawThin(painter, c, w);
        break;
    case verdict::Grade::Sets:
        drawBow(painter, c, w, colour);
        break;
    case verdict::Grade::Breaks:
        drawHalves(painter, c, w);
        break;
    case verdict::Grade::Incomplete:
        drawDashes(painter, c, w, colour);
        break;
    }
    painter.restore();
}

} // namespace pw::gui
