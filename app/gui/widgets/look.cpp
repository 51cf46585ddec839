#include "app/gui/widgets/look.h"

#include <cmath>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetricsF>
#include <QPainter>
#include <QWidget>

namespace pw::gui {

Look& Look::now() {
    static Look look;
    return look;
}

Look::Look() {
    const bool hasAndika = QFontDatabase::families().contains(QStringLiteral("Andika"));
    m_family = hasAndika ? QStringLiteral("Andika") : QStringLiteral("DejaVu Sans");
}

QFont Look::font(Type type) const {
    double size = 14;
    bool bold = false;
    switch (type) {
    case Type::Verdict:
        size = 44, bold = true;
        break;
    case Type::Figure:
        size = 26, bold = true;
        break;
    case Type::Value:
        size = 18, bold = true;
        break;
    case Type::ValuePlain:
        size = 18;
        break;
    case Type::Title:
        size = 16, bold = true;
        break;
    case Type::Sentence:
        size = 16;
        break;
    case Type::Row:
        size = 15.5;
        break;
    case Type::RowBold:
        size = 15.5, bold = true;
        break;
    case Type::Button:
        size = 15;
        break;
    case Type::ButtonBold:
        size = 15, bold = true;
        break;
    case Type::Label:
        break;
    case Type::LabelBold:
        bold = true;
        break;
    }
    QFont font(QStringList{m_family, QStringLiteral("DejaVu Sans")});
    font.setPixelSize(std::max(1, px(size)));
    font.setBold(bold);
    return font;
}

int Look::px(double design) const {
    return static_cast<int>(std::lround(design * m_scale));
}

void Look::set(Tone tone, double scale) {
    if (tone == m_tone && scale == m_scale)
        return;
    m_tone = tone;
    m_scale = scale;
    Q_EMIT changed();
}

double Look::scaleOfUserFont(const QFont& font) {
    constexpr double kOrdinary = 11.0 * 96.0 / 72.0;
    return std::max(1.0, QFontInfo(font).pixelSize() / kOrdinary);
}

void dress(QWidget& window) {
    window.setPalette(Look::now().colours().forQt());
    window.setFont(Look::now().font(Type::Button));
}

double baselineIn(const QRectF& box, const QFont& font) {
    return box.center().y() + QFontMetricsF(font).xHeight() / 2;
}

void drawLine(QPainter& painter, const QRectF& box, Qt::Alignment horizontal, const QString& text, bool cut) {
    const QFontMetricsF metrics(painter.font());
    const QString shown = cut ? metrics.elidedText(text, Qt::ElideRight, box.width() + 0.5) : text;
    double x = box.left();
    if (horizontal & Qt::AlignRight)
        x = box.right() - metrics.horizontalAdvance(shown);
    else if (horizontal & Qt::AlignHCenter)
        x = box.center().x() - metrics.horizontalAdvance(shown) / 2;
    painter.drawText(QPointF(x, baselineIn(box, painter.font())), shown);
}

} // namespace pw::gui
