#include "app/gui/views/strip_pane.h"

#include "app/gui/widgets/text_block.h"

#include <algorithm>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

StripPane::StripPane(const QString& title, QWidget* parent) : QWidget(parent), m_title(title) {
    setAccessibleName(title);
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        relayout();
        update();
    });
}

void StripPane::setHeadRoom(int left, int right, int top) {
    if (left == m_left && right == m_right && top == m_top)
        return;
    m_left = left;
    m_right = right;
    m_top = top;
    relayout();
    update();
}

void StripPane::setFolded(bool folded) {
    if (folded == m_folded)
        return;
    m_folded = folded;
    updateGeometry();
    relayout();
    update();
}

QSize StripPane::minimumSizeHint() const {
    return {Look::now().px(120), Look::now().px(m_folded ? 60 : 150)};
}

QRectF StripPane::head() const {
    const Look& look = Look::now();
    const double left = m_left > 0 ? m_left + look.pxF(8) : look.pxF(16);
    return QRectF(left, look.pxF(2) + m_top, width() - left - std::max<double>(m_right, look.pxF(14)),
                  look.pxF(m_left > 0 ? 40 : 34));
}

QRectF StripPane::body() const {
    const Look& look = Look::now();
    const double top = m_folded ? look.pxF(2) : head().bottom();
    return QRectF(look.pxF(14), top, width() - look.pxF(28) - (m_folded ? m_right : 0),
                  height() - top - look.pxF(m_folded ? 2 : 8));
}

void StripPane::paintHead(QPainter& painter, const QString& note, const QColor& colour, bool bold) const {
    if (m_folded)
        return;
    const Look& look = Look::now();
    QRectF box = head();
    const QFont title = look.font(Type::LabelBold), said = look.font(bold ? Type::LabelBold : Type::Label);
    const double wide = QFontMetricsF(said).horizontalAdvance(note) - 0.5;
    const double named = QFontMetricsF(title).horizontalAdvance(m_title) + look.pxF(12);
    // A word to choose the pane by says its name as well. A note that has no room beside the name takes its
    // place.
    const bool byWord = m_left > 0 || m_top > 0;
    const bool alone = !note.isEmpty() && !byWord && named + wide > box.width() && wide <= box.width();
    if (!byWord && !alone) {
        painter.setFont(title);
        painter.setPen(look.colours().muted);
        drawLine(painter, box, Qt::AlignLeft, m_title);
        box.setLeft(box.left() + named);
    }
    if (wide > box.width())
        return; // half a sentence says nothing
    painter.setFont(said);
    painter.setPen(colour);
    drawLine(painter, box, alone ? Qt::AlignLeft : Qt::AlignRight, note);
}

void StripPane::paintEmpty(QPainter& painter, const QString& words) const {
    const Look& look = Look::now();
    const QRectF box = body();
    painter.setFont(look.font(Type::Label));
    painter.setPen(look.colours().muted);
    const WrappedText text =
        wrapText(words, painter.font(), std::min(box.width(), look.pxF(420)), m_folded ? 2 : 6);
    drawWrapped(painter, text, {box.left() + look.pxF(2), box.top() + (m_folded ? 0.0 : look.pxF(10))});
}

} // namespace pw::gui
