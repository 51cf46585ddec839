#include "app/gui/models/field_text.h"
#include "app/gui/views/dashed_pen.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/scale_legend.h"
#include "app/gui/views/stock_picture.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QFontMetricsF>
#include <QLocale>
#include <QPainter>
#include <QPaintEvent>

// How the plan is drawn; what it does is in plan_view.cpp.
namespace pw::gui {

QPainterPath PlanView::screenPath(const shape::Loop& loop) const {
    return loopPath(loop, m_transform);
}

QPainterPath PlanView::steelPath() const {
    if (!m_shape.rim)
        return {};
    QPainterPath steel = screenPath(*m_shape.rim);
    QPainterPath holes;
    holes.setFillRule(Qt::WindingFill);
    for (std::size_t i = 0; i < m_shape.stations.size(); ++i)
        if (const auto loop = m_shape.accessLoop(i))
            holes.addPath(screenPath(*loop));
    for (const auto& extra : m_shape.extra)
        holes.addPath(screenPath(extra.loop));
    if (m_shape.bore > 0)
        holes.addPath(screenPath(shape::circleLoop({}, m_shape.bore / 2)));
    return steel.subtracted(holes);
}

QRectF PlanView::outlinePx() const {
    const shape::Box box = m_shape.plateBounds();
    return QRectF(m_transform.toScreen({box.low.x, box.high.y}),
                  m_transform.toScreen({box.high.x, box.low.y}));
}

void PlanView::paintEvent(QPaintEvent*) {
    if (m_view == View::Bent)
        return; // all of it is covered
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), c.ground);
    paintPiece(painter);
    paintPlate(painter);
    paintPieceThrough(painter);
    paintEdges(painter);
    if (m_view == View::Fit)
        paintFit(painter);
    if (m_view == View::Cut && !m_drag)
        paintCut(painter);
    if (const Grab inHand = lit())
        paintLit(painter, inHand);
    paintPlaces(painter);
    paintScaleBar(painter);
    if (m_view == View::Stress || m_view == View::Deflection) {
        const QRectF legend = paintLegend(painter);
        if (m_view == View::Stress && !m_drag)
            paintWorst(painter, legend);
        if (m_drag && m_drag->moved)
            paintNotes(painter);
    } else if (m_view == View::Plain || m_drag || m_selected || m_lit) {
        paintNotes(painter);
    }

    // What the plan says about itself, at the end of the row of views.
    const auto step = units::Length::fromMm(stepMm(m_units, false, m_snapMm));
    QString words = tr("Steps of %1")
                        .arg(local(m_units == units::System::Inch ? units::inchFraction(step)
                                                                  : units::show(step, m_units)));
    if ((m_view == View::Stress || m_view == View::Deflection) && m_report && m_report->load.total)
        words = tr("Full load, %1").arg(local(units::show(m_report->load.total->high, m_units)));
    if (m_view == View::Cut)
        words.clear(); // it has more to say, under the row
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.muted);
    const QRectF line(m_views->geometry().right() + look.pxF(12), m_views->y(),
                      width() - m_views->geometry().right() - look.pxF(26), m_views->height());
    if (QFontMetricsF(painter.font()).horizontalAdvance(words) <= line.width())
        drawLine(painter, line, Qt::AlignRight, words);
    if (hasFocus() && m_byKeyboard && !m_selected) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(c.touch, 2));
        painter.drawRect(QRectF(rect()).adjusted(1, 1, -1, -1));
    }
}

void PlanView::paintPiece(QPainter& painter) {
    if (!m_shape.piece)
        return;
    const Palette& c = Look::now().colours();
    QPainterPath holes, bad;
    holes.setFillRule(Qt::WindingFill);
    bad.setFillRule(Qt::WindingFill);
    for (const auto& hole : m_shape.piece->holes)
        holes.addPath(screenPath(hole));
    for (const auto& area : m_shape.piece->badAreas)
        bad.addPath(screenPath(area));
    const QPainterPath rim = screenPath(m_shape.piece->rim);
    const QPainterPath steel = rim.subtracted(holes);
    painter.setPen(QPen(c.scrapEdge, 1.3));
    painter.setBrush(c.scrap);
    painter.drawPath(steel);
    painter.setBrush(QBrush(c.scrapEdge, Qt::BDiagPattern));
    painter.drawPath(bad.intersected(steel));
    painter.setBrush(Qt::NoBrush);
}

void PlanView::paintPieceThrough(QPainter& painter) {
    if (!m_shape.piece || !m_shape.rim)
        return;
    // What of the piece ends under the plate is what the plate has to be moved away from.
    painter.save();
    painter.setClipPath(steelPath(), Qt::IntersectClip);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(dashedPen(Look::now().colours().muted, 1, {6, 4}));
    painter.drawPath(screenPath(m_shape.piece->rim));
    for (const auto* loops : {&m_shape.piece->holes, &m_shape.piece->badAreas})
        for (const auto& loop : *loops)
            painter.drawPath(screenPath(loop));
    painter.restore();
}

void PlanView::paintPlate(QPainter& painter) {
    const Palette& c = Look::now().colours();
    painter.setPen(Qt::NoPen);
    if (!m_shape.rim) {
        // The default size, so that a new job shows something to fill in.
        const shape::Box box = m_shape.plateBounds();
        painter.setPen(dashedPen(c.muted, 1.4, {6, 4}));
        painter.setBrush(Qt::NoBrush);
        const double r = std::max(box.width(), box.height()) / 2;
        painter.drawPath(screenPath(shape::circleLoop({}, r)));
        return;
    }
    const QPainterPath steel = steelPath();
    const bool overlay = (m_view == View::Stress || m_view == View::Deflection) && !m_layer.isEmpty();
    if (overlay) {
        const QImage& image = m_layer.image(m_transform, size(), devicePixelRatioF(), Look::now().tone());
        QBrush brush(image);
        QTransform down;
        down.scale(1 / devicePixelRatioF(), 1 / devicePixelRatioF());
        if (devicePixelRatioF() != 1.0)
            brush.setTransform(down);
        painter.setBrush(brush);
    } else {
        painter.setBrush(c.steel);
    }
    painter.drawPath(steel);
}

void PlanView::paintEdges(QPainter& painter) {
    const Palette& c = Look::now().colours();
    const bool quiet = m_view == View::Stress || m_view == View::Deflection || m_view == View::Cut;
    painter.setBrush(Qt::NoBrush);
    for (const auto& obstacle : m_shape.keepClear) {
        painter.setPen(QPen(c.scrapEdge, 1.3));
        painter.setBrush(c.scrap);
        painter.drawPath(screenPath(shape::circleLoop(obstacle.circle.centre, obstacle.circle.radius)));
        painter.setBrush(Qt::NoBrush);
    }
    if (!quiet) {
        painter.setPen(dashedPen(c.steelEdge, 1, {6, 4}));
        if (m_shape.land > 0)
            for (std::size_t i = 0; i < m_shape.stations.size();
                 ++i) // nothing bears where nothing is carried
                if (i >= m_shape.idle.size() || !m_shape.idle[i])
                    painter.drawPath(screenPath(shape::circleLoop(m_shape.stations[i], m_shape.land / 2)));
        if (m_shape.bearing > 0)
            painter.drawPath(screenPath(shape::circleLoop({}, m_shape.bearing / 2)));
        painter.setPen(dashedPen(c.steelEdge, 1, {14, 4, 3, 4}));
        if (m_shape.circle > 0) {
            // On the steel only: a bar's pin circle runs far outside it and means nothing there.
            painter.save();
            if (m_shape.rim)
                painter.setClipPath(screenPath(*m_shape.rim), Qt::IntersectClip);
            painter.drawPath(screenPath(shape::circleLoop({}, m_shape.circle / 2)));
            painter.restore();
        }
        const QRectF outline = outlinePx();
        const QPointF o = m_transform.toScreen({});
        painter.drawLine(QPointF(outline.left() - 10, o.y()), QPointF(outline.right() + 10, o.y()));
        painter.drawLine(QPointF(o.x(), outline.top() - 10), QPointF(o.x(), outline.bottom() + 10));
        // Each station's own centre lines: along its ray and across it.
        painter.setPen(QPen(c.steelEdge, 1));
        for (const auto& s : m_shape.stations) {
            const double r = std::max(m_shape.access, 4.0) * 0.5 * 0.8, ray = std::atan2(s.y, s.x);
            for (const double turn : {0.0, std::numbers::pi / 2}) {
                const shape::Point d = shape::polar(r, ray + turn);
                painter.drawLine(m_transform.toScreen(s - d), m_transform.toScreen(s + d));
            }
        }
    }
    painter.setPen(QPen(c.steelEdge, 1.8));
    if (m_shape.hole.shape == job::HoleShape::Round)
        for (std::size_t i = 0; i < m_shape.stations.size(); ++i)
            if (const auto loop = m_shape.accessLoop(i))
                painter.drawPath(screenPath(*loop));
    if (m_shape.hole.shape != job::HoleShape::Round) {
        // Slots may run out of the rim: the edge of what is left of the steel is all that is cut.
        painter.drawPath(steelPath());
    }
    for (const auto& extra : m_shape.extra)
        painter.drawPath(screenPath(extra.loop));
    painter.setPen(QPen(c.steelEdge, 1));
    for (const auto& extra : m_shape.extra) { // drilled: a punch mark that runs out of the hole
        const double reach = extra.diameter / 2 + 8 / m_transform.scale;
        if (extra.drilled)
            for (const shape::Point d : {shape::Point{reach, 0}, shape::Point{0, reach}})
                painter.drawLine(m_transform.toScreen(extra.at - d), m_transform.toScreen(extra.at + d));
    }
    painter.setPen(QPen(c.steelEdge, 1.8));
    if (m_shape.bore > 0)
        painter.drawPath(screenPath(shape::circleLoop({}, m_shape.bore / 2)));
    if (m_shape.rim && m_shape.hole.shape != job::HoleShape::Open) {
        painter.setPen(QPen(c.steelEdge, 2.3));
        painter.drawPath(screenPath(*m_shape.rim));
    }
}

void PlanView::paintScaleBar(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double mm = scaleBarMm(m_transform.scale, look.pxF(130), m_units);
    const double length = mm * m_transform.scale;
    const double x = look.pxF(16), y = height() - look.pxF(14);
    painter.setPen(QPen(c.ink, 1.3));
    painter.drawLine(QPointF(x, y), QPointF(x + length, y));
    for (int i = 0; i <= 5; ++i) {
        const double tick = i == 0 || i == 5 ? look.pxF(7) : look.pxF(4);
        painter.drawLine(QPointF(x + length * i / 5, y), QPointF(x + length * i / 5, y - tick));
    }
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.muted);
    const QString words = m_units == units::System::Inch
                              ? tr("%1 in").arg(QLocale().toString(mm / units::kMmPerInch, 'g', 4))
                              : tr("%1 mm").arg(QLocale().toString(mm, 'g', 4));
    drawLine(painter, QRectF(x + length + look.pxF(8), y - look.pxF(14), look.pxF(120), look.pxF(20)),
             Qt::AlignLeft, words);
}

QRectF PlanView::paintLegend(QPainter& painter) {
    const Look& look = Look::now();
    const QRectF area = QRectF(rect()).adjusted(0, look.pxF(56), -look.pxF(12), -look.pxF(24));
    if (m_layer.isEmpty()) {
        painter.setFont(look.font(Type::Sentence));
        painter.setPen(look.colours().muted);
        drawLine(painter, QRectF(look.pxF(16), look.pxF(50), width() - look.pxF(32), look.pxF(24)),
                 Qt::AlignLeft, tr("Not worked out yet. The verdict says what is needed first."));
        return {};
    }
    return drawLegend(painter, area,
                      m_view == View::Stress ? stressLegend(m_scale, m_units)
                                             : deflectionLegend(m_scale, m_units));
}

} // namespace pw::gui
