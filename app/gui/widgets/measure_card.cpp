#include "app/gui/widgets/measure_card.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"

#include <cmath>
#include <QPainter>

namespace pw::gui {

MeasureCard::MeasureCard(Sketch sketch, const QString& how, QWidget* parent)
    : QWidget(parent), m_sketch(sketch), m_how(how) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(how);
}

void MeasureCard::set(Sketch sketch, const QString& how) {
    m_sketch = sketch;
    m_how = how;
    setAccessibleName(how);
    updateGeometry();
    update();
}

int MeasureCard::heightForWidth(int width) const {
    const Look& look = Look::now();
    const bool picture = m_sketch != Sketch::None;
    const double left = picture ? 108 : 10;
    const auto text = wrapText(m_how, look.font(Type::Label), width - look.pxF(left + 8));
    return static_cast<int>(std::ceil(std::max(text.height() + look.pxF(14), picture ? look.pxF(86) : 0.0)));
}

void MeasureCard::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.touchSoft);
    painter.drawRoundedRect(rect(), look.pxF(4), look.pxF(4));
    const bool picture = m_sketch != Sketch::None;
    if (picture) {
        const QRectF box(look.pxF(6), look.pxF(6), look.pxF(92), look.pxF(74));
        painter.setBrush(c.ground);
        painter.drawRoundedRect(box, look.pxF(3), look.pxF(3));
        painter.save();
        painter.setClipRect(box);
        drawSketch(painter, box, m_sketch);
        painter.restore();
    }
    const double left = look.pxF(picture ? 108 : 10);
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.ink);
    const auto text = wrapText(m_how, painter.font(), width() - left - look.pxF(8));
    const double top = std::max(look.pxF(6), (height() - text.height()) / 2);
    drawWrapped(painter, text, {left, top});
}

} // namespace pw::gui
