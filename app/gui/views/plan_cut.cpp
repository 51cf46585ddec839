#include "app/engine/cut_preview.h"
#include "app/gui/views/dashed_pen.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/text_block.h"

#include <cmath>
#include <numbers>
#include <QFontMetricsF>
#include <QPainter>

// The torch's path over the plate. Cut, lead and travel differ by their dashes as well as by colour.
namespace pw::gui {

namespace {

QPen penOf(CutPicture::Kind kind, const Palette& c) {
    switch (kind) {
    case CutPicture::Kind::Cut:
        return QPen(c.ink, 2);
    case CutPicture::Kind::Lead:
        return dashedPen(c.ink, 2, {4, 3});
    case CutPicture::Kind::Travel:
        break;
    }
    return dashedPen(c.muted, 1.2, {12, 6});
}

/// A number on a ground of its own, so that it reads over everything.
void drawNumber(QPainter& painter, QPointF at, int number) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setFont(look.font(Type::LabelBold));
    const QString words = QString::number(number);
    const double w = QFontMetricsF(painter.font()).horizontalAdvance(words) + look.pxF(8), h = look.pxF(18);
    const QRectF box(at.x() + look.pxF(6), at.y() - h - look.pxF(3), w, h);
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.field);
    painter.drawRoundedRect(box, 3, 3);
    painter.setPen(c.ink);
    drawLine(painter, box, Qt::AlignHCenter, words, false);
}

} // namespace

void PlanView::settleCut() {
    m_cut = {};
    if (m_view == View::Cut && m_report)
        m_cut = cutPictureOf(engine::cutPathOf(m_document.job(), *m_report), m_units);
}

void PlanView::paintCut(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const bool none = !m_cut.trouble.isEmpty();
    painter.setFont(look.font(none ? Type::Sentence : Type::Label));
    painter.setPen(c.muted);
    drawWrapped(painter, wrapText(none ? m_cut.trouble : m_cut.words, painter.font(), width() - look.pxF(32)),
                {look.pxF(16), m_views->geometry().bottom() + look.pxF(4)});
    if (none)
        return;
    painter.setBrush(Qt::NoBrush);
    for (const auto& line : m_cut.lines) {
        QPainterPath path(m_transform.toScreen(line.sides.front().from));
        for (const auto& side : line.sides) {
            if (!side.isArc()) {
                path.lineTo(m_transform.toScreen(side.to));
                continue;
            }
            const shape::Circle circle = side.circle();
            const QPointF o = m_transform.toScreen(circle.centre);
            const double r = circle.radius * m_transform.scale;
            const double from = std::atan2(side.from.y - circle.centre.y, side.from.x - circle.centre.x);
            path.arcTo(QRectF(o.x() - r, o.y() - r, 2 * r, 2 * r), from * 180 / std::numbers::pi,
                       side.sweep() * 180 / std::numbers::pi);
        }
        painter.setPen(penOf(line.kind, c));
        painter.drawPath(path);
    }
    for (const auto& arrow : m_cut.arrows) {
        const QPointF at = m_transform.toScreen(arrow.at);
        const QPointF way(arrow.way.x, -arrow.way.y);
        painter.setPen(QPen(c.ink, 1));
        painter.setBrush(c.ink);
        drawArrowHead(painter, at + way * look.pxF(5), at - way * look.pxF(5));
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.ink, 1.3));
    for (const auto& drill : m_cut.drills) {
        const QPointF at = m_transform.toScreen(drill.at);
        const double reach = look.pxF(8);
        painter.drawLine(at - QPointF(reach, 0), at + QPointF(reach, 0));
        painter.drawLine(at - QPointF(0, reach), at + QPointF(0, reach));
    }
    for (const auto& pierce : m_cut.pierces) {
        const QPointF at = m_transform.toScreen(pierce.at);
        painter.setPen(QPen(c.field, 1.5));
        painter.setBrush(c.ink);
        painter.drawEllipse(at, look.pxF(4), look.pxF(4));
    }
    for (const auto& pierce : m_cut.pierces)
        drawNumber(painter, m_transform.toScreen(pierce.at), pierce.order);
    painter.setBrush(Qt::NoBrush);
    paintCutLegend(painter);
}

void PlanView::paintCutLegend(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const std::pair<CutPicture::Kind, QString> rows[] = {{CutPicture::Kind::Cut, tr("cut")},
                                                         {CutPicture::Kind::Lead, tr("on to it and off it")},
                                                         {CutPicture::Kind::Travel, tr("torch off")}};
    const double high = look.pxF(20);
    painter.setFont(look.font(Type::Label));
    double x = width() - look.pxF(14), y = height() - look.pxF(14) - high;
    for (int i = 2; i >= 0; --i) {
        const double wide = QFontMetricsF(painter.font()).horizontalAdvance(rows[i].second) + 2;
        x -= wide;
        painter.setPen(c.muted);
        drawLine(painter, QRectF(x, y, wide, high), Qt::AlignLeft, rows[i].second, false);
        x -= look.pxF(44);
        painter.setPen(penOf(rows[i].first, c));
        painter.drawLine(QPointF(x, y + high / 2), QPointF(x + look.pxF(38), y + high / 2));
        x -= look.pxF(14);
        // Beside the scale bar there may be room for one row only: then one above the other.
        if (x < look.pxF(260)) {
            x = width() - look.pxF(14);
            y -= high;
        }
    }
}

} // namespace pw::gui
