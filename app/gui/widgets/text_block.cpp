#include "app/gui/widgets/text_block.h"

#include <cmath>
#include <QFontMetricsF>
#include <QPainter>
#include <QTextLayout>

namespace pw::gui {

WrappedText wrapText(const QString& text, const QFont& font, double width, int maxLines, double lead) {
    WrappedText wrapped;
    wrapped.lead = std::round(font.pixelSize() * lead);
    if (text.isEmpty())
        return wrapped;
    const QFontMetricsF metrics(font);
    const QStringList paragraphs = text.split(QLatin1Char('\n'));
    for (const QString& paragraph : paragraphs) {
        QTextLayout layout(paragraph, font);
        QTextOption option;
        option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
        layout.setTextOption(option);
        layout.beginLayout();
        while (true) {
            QTextLine line = layout.createLine();
            if (!line.isValid())
                break;
            line.setLineWidth(std::max(width, 1.0));
            if (maxLines > 0 && wrapped.lines.size() == maxLines - 1) {
                const QString rest = paragraph.mid(line.textStart());
                wrapped.lines << metrics.elidedText(rest, Qt::ElideRight, width);
                layout.endLayout();
                return wrapped;
            }
            wrapped.lines << paragraph.mid(line.textStart(), line.textLength()).trimmed();
        }
        layout.endLayout();
    }
    return wrapped;
}

void drawWrapped(QPainter& painter, const WrappedText& text, QPointF topLeft) {
    QRectF box(topLeft, QSizeF(100000, text.lead));
    for (const QString& line : text.lines) {
        drawLine(painter, box, Qt::AlignLeft, line, false);
        box.translate(0, text.lead);
    }
}

TextBlock::TextBlock(Type type, Colour colour, QWidget* parent) : QWidget(parent), m_type(type) {
    setColour(colour);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void TextBlock::setText(const QString& text) {
    if (text == m_text)
        return;
    m_text = text;
    setAccessibleName(text);
    updateGeometry();
    update();
}

void TextBlock::setType(Type type) {
    m_type = type;
    updateGeometry();
    update();
}

void TextBlock::setColour(Colour colour) {
    m_colour = [colour] { return Look::now().colours().*colour; };
    update();
}

void TextBlock::setColour(std::function<QColor()> colour) {
    m_colour = std::move(colour);
    update();
}

void TextBlock::setMaxLines(int lines) {
    m_maxLines = lines;
    updateGeometry();
}

int TextBlock::heightForWidth(int width) const {
    const auto wrapped = wrapText(m_text, Look::now().font(m_type), width, m_maxLines);
    return static_cast<int>(std::ceil(wrapped.height()));
}

QSize TextBlock::sizeHint() const {
    const QFont font = Look::now().font(m_type);
    const int wide = static_cast<int>(std::ceil(QFontMetricsF(font).horizontalAdvance(m_text))) + 1;
    const int width = std::min(wide, Look::now().px(260));
    return {width, heightForWidth(width)};
}

QSize TextBlock::minimumSizeHint() const {
    return {Look::now().px(40), m_text.isEmpty() ? 0 : Look::now().px(19)};
}

void TextBlock::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setFont(Look::now().font(m_type));
    painter.setPen(m_colour());
    drawWrapped(painter, wrapText(m_text, painter.font(), width(), m_maxLines), {0, 0});
}

} // namespace pw::gui
