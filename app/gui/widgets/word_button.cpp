#include "app/gui/widgets/word_button.h"

#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/text_block.h"

#include <cmath>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPen>

namespace pw::gui {

void drawChevron(QPainter& painter, QPointF middle, double size, double degrees, const QColor& colour) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(middle);
    painter.rotate(degrees);
    QPen pen(colour, std::max(1.6, size / 5));
    pen.setCapStyle(Qt::RoundCap);
    pen.setJoinStyle(Qt::RoundJoin);
    painter.setPen(pen);
    painter.drawPolyline(
        QPolygonF{QPointF(-size / 2, -size / 4), QPointF(0, size / 4), QPointF(size / 2, -size / 4)});
    painter.restore();
}

void drawFocusRing(QPainter& painter, const QRectF& box, double radius) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Look::now().colours().touch, 2));
    painter.drawRoundedRect(box.adjusted(1, 1, -1, -1), radius, radius);
    painter.restore();
}

WordButton::WordButton(const QString& words, Style style, QWidget* parent)
    : QAbstractButton(parent), m_style(style) {
    setText(words);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setSizePolicy(style == Style::Filled || style == Style::Link ? QSizePolicy::Preferred
                                                                 : QSizePolicy::Maximum,
                  QSizePolicy::Fixed);
    if (style == Style::Filled) {
        QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
        policy.setHeightForWidth(true);
        setSizePolicy(policy);
    }
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void WordButton::setOpens(bool opens) {
    m_opens = opens;
    updateGeometry();
}

void WordButton::setSecondLine(const QString& words) {
    m_second = words;
    setAccessibleDescription(words);
    updateGeometry();
    update();
}

void WordButton::setMargins(double left, double top, double right, double bottom) {
    m_left = left;
    m_top = top;
    m_right = right;
    m_bottom = bottom;
    updateGeometry();
}

QRectF WordButton::face() const {
    const Look& look = Look::now();
    return QRectF(rect()).adjusted(look.pxF(m_left), look.pxF(m_top), -look.pxF(m_right),
                                   -look.pxF(m_bottom));
}

int WordButton::heightForWidth(int width) const {
    const Look& look = Look::now();
    const double inner = width - look.pxF(16 + 40 + m_left + m_right);
    const double lines = wrapText(text(), look.font(Type::Title), inner).height() +
                         wrapText(m_second, look.font(Type::Button), inner).height();
    return static_cast<int>(
        std::ceil(std::max(look.pxF(58), lines + look.pxF(14)) + look.pxF(m_top + m_bottom)));
}

QSize WordButton::sizeHint() const {
    const Look& look = Look::now();
    if (m_style == Style::Filled)
        return {look.px(298), heightForWidth(look.px(298))};
    const QFontMetricsF metrics(look.font(Type::Button));
    const double side = m_style == Style::Boxed ? 14 : m_style == Style::Link ? 4 : 10;
    const double width =
        metrics.horizontalAdvance(text()) + look.pxF(2 * side) + (m_opens ? look.pxF(16) : 0);
    return {static_cast<int>(std::ceil(width)),
            look.px((m_style == Style::Link ? 33 : 38) + m_top + m_bottom)};
}

QSize WordButton::minimumSizeHint() const {
    if (m_style == Style::Filled || m_style == Style::Link)
        return {Look::now().px(80), sizeHint().height()};
    return sizeHint();
}

void WordButton::enterEvent(QEnterEvent* event) {
    QAbstractButton::enterEvent(event);
    update();
}

void WordButton::leaveEvent(QEvent* event) {
    QAbstractButton::leaveEvent(event);
    update();
}

void WordButton::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double radius = look.pxF(5);
    const QRectF face = this->face(), box = face.adjusted(0.5, 0.5, -0.5, -0.5);
    const bool hot = isEnabled() && (underMouse() || isDown());
    QColor ink = isEnabled() ? c.ink : mixed(c.panel, c.muted, 0.62);

    if (m_style == Style::Filled) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(hot ? mixed(c.touch, c.ink, 0.12) : c.touch);
        painter.drawRoundedRect(box, radius, radius);
        painter.setPen(c.onTouch);
        const double inner = face.width() - look.pxF(16 + 40);
        painter.setFont(look.font(Type::Title));
        const WrappedText first = wrapText(text(), painter.font(), inner);
        const WrappedText second = wrapText(m_second, look.font(Type::Button), inner);
        const double top = face.top() + (face.height() - first.height() - second.height()) / 2;
        drawWrapped(painter, first, {face.left() + look.pxF(16), top});
        painter.setFont(look.font(Type::Button));
        drawWrapped(painter, second, {face.left() + look.pxF(16), top + first.height()});
        drawChevron(painter, QPointF(face.right() - look.pxF(22), face.center().y()), look.pxF(12), -90,
                    c.onTouch);
    } else {
        if (m_style == Style::Boxed) {
            painter.setPen(QPen(c.strongRule, 1));
            painter.setBrush(hot ? c.touchSoft : c.field);
            painter.drawRoundedRect(box, radius, radius);
        } else if (hot) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(c.touchSoft);
            painter.drawRoundedRect(box, radius, radius);
        }
        if (m_style == Style::Link)
            ink = c.touch;
        painter.setPen(ink);
        painter.setFont(look.font(Type::Button));
        const double side = look.pxF(m_style == Style::Boxed ? 8 : m_style == Style::Link ? 4 : 10);
        QRectF line = face.adjusted(side, 0, -side, 0);
        if (m_opens && m_style != Style::Link)
            line.setRight(line.right() - look.pxF(16));
        drawLine(painter, line, m_style == Style::Boxed && !m_opens ? Qt::AlignHCenter : Qt::AlignLeft,
                 text());
        if (m_opens)
            drawChevron(
                painter,
                QPointF(face.right() - look.pxF(m_style == Style::Link ? 11 : 16), face.center().y() + 1),
                look.pxF(9), isChecked() ? 180 : 0, ink);
    }
    if (hasFocus())
        drawFocusRing(painter, face, radius);
}

} // namespace pw::gui
