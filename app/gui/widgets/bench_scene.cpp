#include "app/gui/widgets/bench_scene.h"

#include "app/gui/widgets/look.h"

#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

BenchScene::BenchScene(QPainter& painter) : m_painter(painter), m_colours(Look::now().colours()) {}

void BenchScene::steel(const QPainterPath& path) {
    filled(path, m_colours.steel);
}

void BenchScene::steel(const QRectF& rect) {
    QPainterPath path;
    path.addRect(rect);
    steel(path);
}

void BenchScene::disc(QPointF c, double r) {
    QPainterPath path;
    path.addEllipse(c, r, r);
    steel(path);
}

void BenchScene::hole(QPointF c, double r) {
    QPainterPath path;
    path.addEllipse(c, r, r);
    filled(path, m_colours.ground);
}

void BenchScene::tool(const QPolygonF& polygon) {
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(m_colours.steelEdge);
    m_painter.drawPolygon(polygon);
}

void BenchScene::line(QPointF a, QPointF b) {
    m_painter.setPen(QPen(m_colours.steelEdge, 1.3));
    m_painter.drawLine(a, b);
}

void BenchScene::dashed(const QPainterPath& path) {
    QPen pen(m_colours.muted, 1);
    pen.setDashPattern({6, 4});
    m_painter.setPen(pen);
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPath(path);
}

void BenchScene::axis(QPointF a, QPointF b) {
    QPen pen(m_colours.muted, 1);
    pen.setDashPattern({14, 4, 3, 4});
    m_painter.setPen(pen);
    m_painter.drawLine(a, b);
}

void BenchScene::size(QPointF a, QPointF b) {
    m_painter.setPen(QPen(m_colours.touch, 1.5));
    m_painter.drawLine(a, b);
    arrow(a, b, m_colours.touch, 7);
    arrow(b, a, m_colours.touch, 7);
}

void BenchScene::coil(double x, double top, double bottom, double width, int turns, double wire) {
    const double pitch = turns > 0 ? (bottom - top) / turns : 0;
    m_painter.setPen(QPen(m_colours.steelEdge, wire + 1.6, Qt::SolidLine, Qt::RoundCap));
    coilLines(x, top, width, turns, pitch);
    m_painter.setPen(QPen(m_colours.steel, wire - 0.4, Qt::SolidLine, Qt::RoundCap));
    coilLines(x, top, width, turns, pitch);
}

void BenchScene::thread(const QRectF& r, double pitch) {
    steel(r);
    m_painter.setPen(QPen(m_colours.steelEdge, 1));
    for (double x = r.left() + pitch; x < r.right() - 1; x += pitch)
        m_painter.drawLine(QPointF(x, r.top()), QPointF(x - pitch * 0.6, r.bottom()));
}

void BenchScene::stud(const QRectF& r, double pitch) {
    steel(r);
    m_painter.setPen(QPen(m_colours.steelEdge, 1));
    for (double y = r.top() + pitch; y < r.bottom() - 1; y += pitch)
        m_painter.drawLine(QPointF(r.left(), y), QPointF(r.right(), y - pitch * 0.6));
}

void BenchScene::push(QPointF from, QPointF to) {
    m_painter.setPen(QPen(m_colours.ink, 2.2));
    m_painter.drawLine(from, to);
    arrow(to, from, m_colours.ink, 12);
}

void BenchScene::name(QPointF at, QPointF text, const QString& words, bool right) {
    m_painter.setPen(QPen(m_colours.ink, 1));
    m_painter.drawLine(at, text);
    m_painter.setBrush(m_colours.ink);
    m_painter.drawEllipse(at, 1.8, 1.8);
    const QFontMetricsF metrics(m_painter.font());
    const double width = metrics.horizontalAdvance(words) + 1;
    drawLine(m_painter, QRectF(right ? text.x() + 5 : text.x() - 5 - width, text.y() - 12, width, 24),
             Qt::AlignLeft, words, false);
}

void BenchScene::filled(const QPainterPath& path, const QColor& fill) {
    m_painter.setPen(QPen(m_colours.steelEdge, 1.3));
    m_painter.setBrush(fill);
    m_painter.drawPath(path);
}

void BenchScene::arrow(QPointF tip, QPointF from, const QColor& colour, double length) {
    const double angle = std::atan2(tip.y() - from.y(), tip.x() - from.x());
    QPolygonF head{tip};
    for (const double side : {-0.32, 0.32})
        head << tip - QPointF(std::cos(angle + side), std::sin(angle + side)) * length;
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colour);
    m_painter.drawPolygon(head);
}

void BenchScene::coilLines(double x, double top, double width, int turns, double pitch) {
    for (int i = 0; i <= turns; ++i) {
        const double y = top + pitch * i;
        m_painter.drawLine(QPointF(x - width / 2, y + pitch * 0.25),
                           QPointF(x + width / 2, y - pitch * 0.25));
    }
}

} // namespace pw::gui
