#include "app/gui/views/dashed_pen.h"
#include "app/gui/views/plan_actions.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/scale_legend.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QFontMetricsF>
#include <QPainter>

// What stands out on the plan: what is in hand, the fit, the places of a check, the worst spot.
namespace pw::gui {

Grab PlanView::lit() const {
    if (m_drag)
        return m_drag->grab;
    if (m_selected && hasFocus())
        return m_selected;
    if (m_lit)
        return grabOfRow(m_document, m_shape, m_lit.part, m_lit.index);
    return m_hover;
}

void PlanView::paintLit(QPainter& painter, const Grab& lit) {
    const Palette& c = Look::now().colours();
    std::vector<shape::Loop> loops;
    std::vector<shape::Point> handles;
    const auto ring = [&](double diameter, int count, double from) {
        if (diameter <= 0)
            return;
        loops.push_back(shape::circleLoop({}, diameter / 2));
        for (int i = 0; i < count; ++i)
            handles.push_back(shape::polar(diameter / 2, from + i * 2 * std::numbers::pi / count));
    };
    const auto rings = [&](double diameter) {
        if (diameter <= 0)
            return;
        for (const auto& s : m_shape.stations)
            loops.push_back(shape::circleLoop(s, diameter / 2));
    };
    const double between = m_shape.stations.empty() ? 0 : clearRay(m_shape.stations, m_shape.start);
    const Setting setting = settingOf(m_shape, lit);
    switch (lit.part) {
    case PlanPart::Rim:
        if (m_shape.rimDiameter > 0)
            ring(m_shape.rimDiameter, 4, std::numbers::pi / 4);
        else if (m_shape.rim)
            loops.push_back(*m_shape.rim);
        break;
    case PlanPart::RimLength:
    case PlanPart::RimWidth:
        if (m_shape.rim) {
            loops.push_back(*m_shape.rim);
            for (const int side : {-1, 1})
                handles.push_back(lit.part == PlanPart::RimLength
                                      ? shape::Point{side * m_shape.rimLength / 2, 0}
                                      : shape::Point{0, side * m_shape.rimWidth / 2});
        }
        break;
    case PlanPart::Bore:
        ring(m_shape.bore, 2, std::numbers::pi / 4);
        break;
    case PlanPart::Circle:
        ring(m_shape.circle, 4, between);
        break;
    case PlanPart::Bearing:
        ring(m_shape.bearing, 0, 0);
        break;
    case PlanPart::Land:
        rings(m_shape.land);
        break;
    case PlanPart::Keeper:
        rings(m_shape.keeper);
        break;
    case PlanPart::Pin:
        rings(m_shape.pin);
        break;
    case PlanPart::Access:
        if (m_shape.hole.shape == job::HoleShape::Round)
            rings(m_shape.access);
        else
            for (std::size_t i = 0; i < m_shape.stations.size(); ++i)
                if (const auto loop = m_shape.accessLoop(i))
                    loops.push_back(*loop);
        if (!m_shape.stations.empty() && m_shape.access > 0)
            handles.push_back(m_shape.stations[0] + shape::polar(m_shape.access / 2, m_shape.start));
        break;
    case PlanPart::Start:
        if (!m_shape.stations.empty()) {
            const shape::Point at = m_shape.stations[std::min(lit.index, m_shape.stations.size() - 1)];
            loops.push_back(shape::circleLoop(at, std::max(m_shape.access, 4.0) / 2));
            handles.push_back(at);
        }
        break;
    case PlanPart::Extra:
    case PlanPart::ExtraSize:
        if (lit.index < m_shape.extra.size()) {
            loops.push_back(m_shape.extra[lit.index].loop);
            handles.push_back(lit.part == PlanPart::Extra
                                  ? setting.place
                                  : setting.place + shape::Point{setting.figure / 2, 0});
        }
        break;
    case PlanPart::Corner:
        if (m_shape.rim)
            loops.push_back(*m_shape.rim);
        handles.push_back(setting.place);
        break;
    case PlanPart::Station:
        if (lit.index < m_shape.stations.size()) {
            const shape::Point at = m_shape.stations[lit.index];
            loops.push_back(shape::circleLoop(at, std::max(m_shape.access, 4.0) / 2));
            if (!m_shape.onCircle)
                handles.push_back(at);
        }
        break;
    case PlanPart::Obstacle:
    case PlanPart::ObstacleSize:
        if (setting.figure > 0) {
            loops.push_back(shape::circleLoop(setting.place, setting.figure / 2));
            handles.push_back(lit.part == PlanPart::Obstacle
                                  ? setting.place
                                  : setting.place + shape::Point{setting.figure / 2, 0});
        }
        break;
    case PlanPart::Piece:
    case PlanPart::PieceTurn:
        if (m_shape.piece) {
            loops.push_back(m_shape.piece->rim);
            handles.push_back(m_shape.piece->knob);
        }
        break;
    case PlanPart::None:
        break;
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.touch, 2.3));
    for (const auto& loop : loops)
        painter.drawPath(screenPath(loop));
    painter.setPen(QPen(c.tone == Tone::Dark ? c.ground : c.field, 2));
    painter.setBrush(c.touch);
    for (const auto& handle : handles)
        painter.drawEllipse(m_transform.toScreen(handle), 7.0, 7.0);
}

void PlanView::paintFit(QPainter& painter) {
    const Palette& c = Look::now().colours();
    // The land that is left: from the hole to where the retainer ends.
    if (m_shape.land > m_shape.access && m_shape.access > 0) {
        QPainterPath lands;
        for (std::size_t i = 0; i < m_shape.stations.size(); ++i) {
            QPainterPath land = screenPath(shape::circleLoop(m_shape.stations[i], m_shape.land / 2));
            if (const auto hole = m_shape.accessLoop(i))
                land = land.subtracted(screenPath(*hole));
            lands.addPath(land);
        }
        painter.setPen(Qt::NoPen);
        QColor soft = c.steelEdge;
        soft.setAlphaF(0.22F);
        painter.setBrush(soft);
        painter.drawPath(lands);
    }
    // How far a hole may be off.
    const auto& error = m_document.job().cutting.layoutError;
    if (error && error->mm() > 0 && m_shape.access > 0) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(dashedPen(c.steelEdge, 1, {3, 3}));
        for (const auto& s : m_shape.stations)
            painter.drawPath(screenPath(shape::circleLoop(s, m_shape.access / 2 + error->mm())));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.4));
    if (m_shape.keeper > 0)
        for (const auto& s : m_shape.stations)
            painter.drawPath(screenPath(shape::circleLoop(s, m_shape.keeper / 2)));
    if (!m_drag)
        paintLigaments(painter);
}

void PlanView::paintLigaments(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setFont(look.font(Type::LabelBold));
    for (const auto& ligament : m_ligaments) {
        const QPointF a = m_transform.toScreen(ligament.onA), b = m_transform.toScreen(ligament.onB);
        painter.setPen(QPen(c.ink, 1.4));
        painter.drawLine(a, b);
        if (std::hypot((a - b).x(), (a - b).y()) > 22) {
            drawArrowHead(painter, a, b);
            drawArrowHead(painter, b, a);
        }
        // Beside the line, on a ground of its own so that it reads over everything.
        const QString words = figure(ligament.width);
        const QFontMetricsF metrics(painter.font());
        const double w = metrics.horizontalAdvance(words) + look.pxF(8), h = look.pxF(19);
        const QPointF middle = (a + b) / 2;
        const bool steep = std::abs((a - b).y()) > std::abs((a - b).x());
        QRectF box(middle.x() - w / 2, middle.y() - h / 2, w, h);
        box.translate(steep ? QPointF(w / 2 + 6, 0) : QPointF(0, -h / 2 - 5));
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.field);
        painter.drawRoundedRect(box, 3, 3);
        painter.setPen(c.ink);
        drawLine(painter, box, Qt::AlignHCenter, words, false);
    }
    painter.setBrush(Qt::NoBrush);
}

void PlanView::paintPlaces(QPainter& painter) {
    if (m_places.empty())
        return;
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setBrush(Qt::NoBrush);
    for (const auto& place : m_places) {
        const QPointF at = m_transform.toScreen(place);
        painter.setPen(QPen(c.field, 5));
        painter.drawEllipse(at, look.pxF(11), look.pxF(11));
        painter.setPen(QPen(c.ink, 2.4));
        painter.drawEllipse(at, look.pxF(11), look.pxF(11));
    }
}

void PlanView::paintWorst(QPainter& painter, const QRectF& legend) {
    if (m_layer.isEmpty() || !m_report || !m_report->plate.field)
        return;
    const auto& field = *m_report->plate.field;
    drawWorstSpot(painter, m_transform.toScreen(field.peakAt), field, m_units, QRectF(rect()), legend);
}

} // namespace pw::gui
