#include "app/gui/models/field_text.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/scale_legend.h"
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

namespace {

QPen dashedPen(const QColor& colour, double width, const QList<qreal>& dashes) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    QList<qreal> pattern;
    for (const qreal dash : dashes)
        pattern << dash / width;
    pen.setDashPattern(pattern);
    return pen;
}

} // namespace

QPainterPath PlanView::screenPath(const shape::Loop& loop) const {
    QPainterPath path;
    if (loop.size() < 2)
        return path;
    path.moveTo(m_transform.toScreen(loop.vertices[0].at));
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        if (!side.isArc()) {
            path.lineTo(m_transform.toScreen(side.to));
            continue;
        }
        const shape::Circle circle = side.circle();
        const QPointF c = m_transform.toScreen(circle.centre);
        const double r = circle.radius * m_transform.scale;
        const double from = std::atan2(side.from.y - circle.centre.y, side.from.x - circle.centre.x);
        path.arcTo(QRectF(c.x() - r, c.y() - r, 2 * r, 2 * r), from * 180 / std::numbers::pi,
                   side.sweep() * 180 / std::numbers::pi);
    }
    path.closeSubpath();
    return path;
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
    paintPlate(painter);
    paintEdges(painter);
    if (m_view == View::Fit)
        paintFit(painter);
    if (const PlanPart lit = litPart(); lit != PlanPart::None)
        paintLit(painter, lit);
    paintPlaces(painter);
    paintScaleBar(painter);
    if (m_view == View::Stress || m_view == View::Deflection) {
        const QRectF legend = paintLegend(painter);
        if (m_view == View::Stress && !m_drag)
            paintWorst(painter, legend);
        if (m_drag && m_drag->moved)
            paintNotes(painter);
    } else if (m_view == View::Plain || m_drag || m_selected || m_lit != PlanPart::None) {
        paintNotes(painter);
    }

    // What the plan says about itself, at the end of the row of views.
    const auto step = units::Length::fromMm(stepMm(m_units, false, m_snapMm));
    QString words = tr("Steps of %1")
                        .arg(local(m_units == units::System::Inch ? units::inchFraction(step)
                                                                  : units::show(step, m_units)));
    if ((m_view == View::Stress || m_view == View::Deflection) && m_report && m_report->load.total)
        words = tr("Full load, %1").arg(local(units::show(m_report->load.total->high, m_units)));
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
    const bool quiet = m_view == View::Stress || m_view == View::Deflection;
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
            for (const auto& s : m_shape.stations)
                painter.drawPath(screenPath(shape::circleLoop(s, m_shape.land / 2)));
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
    if (m_shape.bore > 0)
        painter.drawPath(screenPath(shape::circleLoop({}, m_shape.bore / 2)));
    if (m_shape.rim && m_shape.hole.shape != job::HoleShape::Open) {
        painter.setPen(QPen(c.steelEdge, 2.3));
        painter.drawPath(screenPath(*m_shape.rim));
    }
}

PlanPart PlanView::litPart() const {
    if (m_drag)
        return m_drag->grab.part;
    if (m_selected && hasFocus())
        return m_selected.part;
    if (m_lit != PlanPart::None)
        return m_lit;
    return m_hover.part;
}

void PlanView::paintLit(QPainter& painter, PlanPart part) {
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
    switch (part) {
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
                handles.push_back(part == PlanPart::RimLength ? shape::Point{side * m_shape.rimLength / 2, 0}
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
            loops.push_back(shape::circleLoop(m_shape.stations[0], std::max(m_shape.access, 4.0) / 2));
            handles.push_back(m_shape.stations[0]);
        }
        break;
    case PlanPart::None:
    case PlanPart::Extra:
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

QString PlanView::figure(double mm) const {
    if (m_units == units::System::Metric)
        return local(units::number(std::round(mm * 100) / 100, 6));
    QString text = QString::fromStdString(units::inchFraction(units::Length::fromMm(mm)));
    text.replace(QStringLiteral("\u00a0in"), QStringLiteral("″"))
        .replace(QStringLiteral(" in"), QStringLiteral("″"));
    return text;
}

std::optional<DimensionNote> PlanView::noteFor(PlanPart part) const {
    const auto at = [&](double radius, double angle) {
        return m_transform.toScreen(shape::polar(radius, angle));
    };
    DimensionNote note;
    // The leader runs on from the centre, so that it stays between the stations it was aimed between.
    const auto along = [&](double radius, double angle) {
        note.anchor = at(radius, angle);
        const QRectF outline = outlinePx();
        const double x = note.left ? outline.left() - 44 : outline.right() + 44;
        const QPointF o = m_transform.toScreen({});
        if (std::abs(std::cos(angle)) > 0.3 && (std::cos(angle) < 0) == note.left)
            note.shoulder = o.y() - std::tan(angle) * (x - o.x());
        else // steep: round the outside rather than across a station
            note.shoulder = std::sin(angle) < 0 ? outline.bottom() + Look::now().pxF(30)
                                                : outline.top() - Look::now().pxF(10);
    };
    switch (part) {
    case PlanPart::Rim:
        if (m_shape.rimDiameter <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.rimDiameter));
        note.anchor = at(m_shape.rimDiameter / 2, std::numbers::pi * 1.13);
        break;
    case PlanPart::RimLength:
        if (m_shape.rimLength <= 0 || !m_shape.rim)
            return {};
        note.text = tr("%1 long").arg(figure(m_shape.rimLength));
        note.anchor = m_transform.toScreen(
            shape::nearestOn(*m_shape.rim, {m_shape.rimLength, -m_shape.rimWidth * 0.4}));
        note.left = false;
        break;
    case PlanPart::RimWidth:
        if (m_shape.rimWidth <= 0)
            return {};
        note.text = tr("%1 wide").arg(figure(m_shape.rimWidth));
        note.anchor = m_transform.toScreen({-m_shape.rimLength * 0.25, -m_shape.rimWidth / 2});
        note.shoulder = note.anchor.y() + Look::now().pxF(40);
        break;
    case PlanPart::Bore: {
        if (m_shape.bore <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.bore));
        note.left = false;
        along(m_shape.bore / 2, clearRay(m_shape.stations, -0.45));
        break;
    }
    case PlanPart::Circle:
        if (m_shape.circle <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.circle));
        along(m_shape.circle / 2, circleRay(m_shape, std::numbers::pi * 0.87));
        break;
    case PlanPart::Access: {
        if (m_shape.access <= 0 || m_shape.stations.empty())
            return {};
        const auto leftmost = std::ranges::min_element(
            m_shape.stations, {}, [](shape::Point p) { return p.x + 0.05 * std::abs(p.y); });
        note.text = m_shape.stations.size() > 1 ? QStringLiteral("%1\u00a0×\u00a0Ø%2")
                                                      .arg(m_shape.stations.size())
                                                      .arg(figure(m_shape.access))
                                                : QStringLiteral("Ø%1").arg(figure(m_shape.access));
        note.anchor =
            m_transform.toScreen(*leftmost + shape::polar(m_shape.access / 2, std::numbers::pi * 0.92));
        break;
    }
    case PlanPart::Start:
        if (m_shape.stations.empty())
            return {};
        note.text = tr("first at %1°").arg(local(units::number(figureOf(m_shape, PlanPart::Start), 4)));
        note.anchor = m_transform.toScreen(m_shape.stations[0] +
                                           shape::polar(std::max(m_shape.access, 4.0) / 2, m_shape.start));
        note.left = false;
        break;
    default:
        return {};
    }
    return note;
}

void PlanView::paintNotes(QPainter& painter) {
    std::vector<DimensionNote> notes;
    const PlanPart lit = litPart();
    if (m_drag && m_drag->moved) {
        if (auto note = noteFor(m_drag->grab.part)) {
            note->active = true;
            notes.push_back(*note);
        }
    } else if (m_view == View::Fit) {
        // The widths of the steel are the notes here; a size only when it is in hand.
        if (auto note = noteFor(lit)) {
            note->active = true;
            notes.push_back(*note);
        }
    } else {
        for (const PlanPart part : {PlanPart::Circle, PlanPart::Access, PlanPart::Rim, PlanPart::RimWidth,
                                    PlanPart::RimLength, PlanPart::Bore})
            if (auto note = noteFor(part); note && notes.size() < 5) {
                note->active = part == lit;
                notes.push_back(*note);
            }
        if (lit == PlanPart::Start && notes.size() < 5)
            if (auto note = noteFor(lit)) {
                note->active = true;
                notes.push_back(*note);
            }
    }
    const Look& look = Look::now();
    drawNotes(painter, notes, outlinePx(),
              QRectF(rect()).adjusted(look.pxF(10), look.pxF(56), -look.pxF(10), -look.pxF(36)));
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

void PlanView::paintWorst(QPainter& painter, const QRectF& legend) {
    if (m_layer.isEmpty() || !m_report || !m_report->plate.field)
        return;
    const auto& field = *m_report->plate.field;
    drawWorstSpot(painter, m_transform.toScreen(field.peakAt), field, m_units, QRectF(rect()), legend);
}

} // namespace pw::gui
