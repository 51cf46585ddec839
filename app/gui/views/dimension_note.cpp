#include "app/gui/views/dimension_note.h"

#include "app/gui/views/plan_geometry.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

Type typeOf(const DimensionNote& note) {
    return note.active ? Type::ButtonBold : Type::Button;
}

void drawColumn(QPainter& painter, const std::vector<const DimensionNote*>& notes, double x, bool left,
                const QRectF& view) {
    const Look& look = Look::now();
    std::vector<double> wanted;
    for (const auto* note : notes)
        wanted.push_back(note->shoulder.value_or(note->anchor.y()) - look.pxF(10));
    const double line = look.pxF(28);
    const auto middles = spread(wanted, line, view.top(), view.bottom());
    for (std::size_t i = 0; i < notes.size(); ++i) {
        const DimensionNote& note = *notes[i];
        const QColor colour = note.active ? look.colours().touch : look.colours().ink;
        painter.setFont(look.font(typeOf(note)));
        const double width = QFontMetricsF(painter.font()).horizontalAdvance(note.text);
        const double pad = look.pxF(4), y = middles[i] + look.pxF(10);
        const double outer = left ? x - width - 2 * pad : x + width + 2 * pad;
        painter.setPen(QPen(colour, 1));
        painter.drawLine(QPointF(outer, y), QPointF(x, y));
        painter.drawLine(QPointF(x, y), note.anchor);
        drawArrowHead(painter, note.anchor, QPointF(x, y));
        painter.setPen(colour);
        const QRectF box(std::min(outer, x) + pad, y - look.pxF(21), width + 1, look.pxF(20));
        drawLine(painter, box, Qt::AlignLeft, note.text, false);
    }
}

} // namespace

void drawArrowHead(QPainter& painter, QPointF tip, QPointF from) {
    const QPointF way = from - tip;
    const double length = std::hypot(way.x(), way.y());
    if (length < 1)
        return;
    const QPointF along = way / length, across(-along.y(), along.x());
    painter.save();
    painter.setBrush(painter.pen().color());
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(QPolygonF{tip, tip + along * 9 + across * 3, tip + along * 9 - across * 3});
    painter.restore();
}

void drawNotes(QPainter& painter, const std::vector<DimensionNote>& notes, const QRectF& outline,
               const QRectF& view) {
    const Look& look = Look::now();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    std::vector<const DimensionNote*> left, right;
    double leftWidth = 0, rightWidth = 0;
    for (const auto& note : notes) {
        const double width =
            QFontMetricsF(look.font(typeOf(note))).horizontalAdvance(note.text) + look.pxF(10);
        (note.left ? left : right).push_back(&note);
        (note.left ? leftWidth : rightWidth) = std::max(note.left ? leftWidth : rightWidth, width);
    }
    const double gap = look.pxF(44);
    // A column that would lie over the plate helps nobody.
    const auto crowded = [&](std::vector<const DimensionNote*>& column, double room, double width) {
        if (room < width + look.pxF(4))
            std::erase_if(column, [](const DimensionNote* note) { return !note->active; });
    };
    crowded(left, outline.left() - view.left(), leftWidth);
    crowded(right, view.right() - outline.right(), rightWidth);
    const double leftX = std::max(view.left() + leftWidth, outline.left() - gap);
    const double rightX = std::min(view.right() - rightWidth, outline.right() + gap);
    drawColumn(painter, left, leftX, true, view);
    drawColumn(painter, right, rightX, false, view);
    painter.restore();
}

} // namespace pw::gui
