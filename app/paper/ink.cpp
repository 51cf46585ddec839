#include "app/paper/ink.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QFont>
#include <QFontMetricsF>

namespace pw::paper {

namespace {

/// Type is laid out at this many units to its size, then scaled, so that widths do not depend on the device.
constexpr int kFontUnits = 200;

QFont fontOf(bool bold) {
    QFont font(QStringList{QStringLiteral("Andika"), QStringLiteral("DejaVu Sans")});
    font.setPixelSize(kFontUnits);
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    // Any spacing at all keeps letters apart: a joined "fi" is lost to who copies or searches the page.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

/// Made once and never taken down: a sheet is measured thousands of times before it is painted.
const QFontMetricsF& metricsOf(bool bold) {
    static const auto* const regular = new QFontMetricsF(fontOf(false));
    static const auto* const strong = new QFontMetricsF(fontOf(true));
    return bold ? *strong : *regular;
}

QPen penOf(const Stroke& stroke) {
    QPen pen(stroke.colour, stroke.width);
    pen.setCapStyle(Qt::FlatCap);
    pen.setJoinStyle(Qt::MiterJoin);
    if (!stroke.dashes.empty()) {
        QList<qreal> pattern; // in widths of the line
        for (const double length : stroke.dashes)
            pattern.push_back(length / stroke.width);
        pen.setDashPattern(pattern);
    }
    return pen;
}

} // namespace

Ink::Ink(QPainter& painter, double perMm) : m_painter(painter) {
    m_painter.setRenderHint(QPainter::Antialiasing);
    m_painter.scale(perMm, perMm);
}

void Ink::line(shape::Point a, shape::Point b, const Stroke& stroke) {
    m_painter.setPen(penOf(stroke));
    m_painter.drawLine(QPointF(a.x, a.y), QPointF(b.x, b.y));
}

void Ink::rectangle(const shape::Box& box, const Stroke& stroke, const QColor& fill) {
    polygon({box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}}, stroke, fill);
}

void Ink::polygon(const std::vector<shape::Point>& corners, const Stroke& stroke, const QColor& fill) {
    QPolygonF shape;
    for (const shape::Point& corner : corners)
        shape.push_back(QPointF(corner.x, corner.y));
    m_painter.setPen(penOf(stroke));
    m_painter.setBrush(fill == Qt::transparent ? QBrush(Qt::NoBrush) : QBrush(fill));
    m_painter.drawPolygon(shape);
    m_painter.setBrush(Qt::NoBrush);
}

void Ink::dot(shape::Point centre, double diameter, const QColor& colour) {
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(colour);
    m_painter.drawEllipse(QPointF(centre.x, centre.y), diameter / 2, diameter / 2);
    m_painter.setBrush(Qt::NoBrush);
}

void Ink::draw(const QPainterPath& path, const Stroke& stroke) {
    m_painter.setPen(penOf(stroke));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawPath(path);
}

int Ink::piecesOf(const shape::Side& side) {
    return 1 + static_cast<int>(std::abs(side.sweep()) / (std::numbers::pi / 4));
}

double Ink::reachOf(const shape::Side& side, int pieces) {
    return 4.0 / 3 * std::tan(std::abs(side.sweep()) / pieces / 4) * side.circle().radius;
}

void Ink::text(shape::Point at, const QString& words, double size, bool bold, Side side, const QColor& colour,
               double turn) {
    const double width = widthOf(words, size, bold);
    m_painter.save();
    m_painter.translate(at.x, at.y);
    m_painter.rotate(-turn);
    m_painter.translate(side == Side::Left ? 0 : side == Side::Middle ? -width / 2 : -width, 0);
    m_painter.scale(size / kFontUnits, size / kFontUnits);
    m_painter.setFont(fontOf(bold));
    m_painter.setPen(colour);
    m_painter.drawText(QPointF(0, 0), words);
    m_painter.restore();
    if (m_log && !words.trimmed().isEmpty()) {
        const shape::Box box = boxOf(words, size, bold, side, turn);
        m_log->push_back({m_page, {at + box.low, at + box.high}, words, m_across});
    }
}

void Ink::textAcross(shape::Point middle, const QString& words, double size, double turn) {
    m_across = true;
    text(middle, words, size, true, Side::Middle, QColor(0xd2, 0xd2, 0xd2), turn);
    m_across = false;
}

shape::Box Ink::boxOf(const QString& words, double size, bool bold, Side side, double turn) {
    const QRectF ink = metricsOf(bold).tightBoundingRect(words);
    const double scale = size / kFontUnits, width = widthOf(words, size, bold);
    const double shift = side == Side::Left ? 0 : side == Side::Middle ? -width / 2 : -width;
    const double angle = -turn * std::numbers::pi / 180; // y runs down
    shape::Box box{{1e9, 1e9}, {-1e9, -1e9}};
    for (const double x : {ink.left(), ink.right()})
        for (const double y : {ink.top(), ink.bottom()}) {
            const shape::Point p = rotated(shape::Point{shift + x * scale, y * scale}, angle);
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
        }
    return box;
}

double Ink::widthOf(const QString& words, double size, bool bold) {
    return metricsOf(bold).horizontalAdvance(words) * size / kFontUnits;
}

QString Ink::cut(const QString& words, double width, double size, bool bold) {
    return metricsOf(bold).elidedText(words, Qt::ElideRight, width * kFontUnits / size);
}

std::vector<QString> Ink::wrapped(const QString& words, double width, double size, int most, bool bold) {
    std::vector<QString> lines{QString()};
    for (const QString& word : words.split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        const QString longer = lines.back().isEmpty() ? word : lines.back() + QLatin1Char(' ') + word;
        const bool last = static_cast<int>(lines.size()) >= most;
        if (last || lines.back().isEmpty() || widthOf(longer, size, bold) <= width)
            lines.back() = longer;
        else
            lines.push_back(word);
    }
    for (QString& line : lines)
        line = cut(line, width, size, bold);
    return lines;
}

void Ink::keepWithin(const shape::Box& box) {
    m_painter.save();
    m_painter.setClipRect(QRectF(box.low.x, box.low.y, box.width(), box.height()));
}

void Ink::keepWithinNoMore() {
    m_painter.restore();
}

} // namespace pw::paper
