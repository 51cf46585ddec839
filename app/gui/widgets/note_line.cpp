#include "app/gui/widgets/note_line.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_mark.h"

#include <cmath>
#include <QPainter>

namespace pw::gui {

namespace {

double indent(bool needed) {
    return needed ? Look::now().pxF(28) : 0;
}

} // namespace

NoteLine::NoteLine(QWidget* parent) : QWidget(parent) {}

void NoteLine::set(const QString& text, bool needed) {
    m_text = text;
    m_needed = needed;
    setAccessibleName(text);
    updateGeometry();
    update();
}

int NoteLine::heightForWidth(int width) const {
    const auto text = wrapText(m_text, Look::now().font(Type::Label), width - indent(m_needed));
    return static_cast<int>(std::ceil(text.height()));
}

void NoteLine::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    QPainter painter(this);
    painter.setFont(look.font(Type::Label));
    painter.setPen(m_needed ? look.colours().muted : look.colours().ink);
    const auto text = wrapText(m_text, painter.font(), width() - indent(m_needed));
    drawWrapped(painter, text, {indent(m_needed), 0});
    if (m_needed)
        drawVerdictMark(painter, QRectF(0, text.lead / 2 - 8, look.pxF(20), 16), verdict::Grade::Incomplete,
                        look.colours().incomplete.text);
}

} // namespace pw::gui
