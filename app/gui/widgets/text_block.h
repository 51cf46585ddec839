#pragma once

#include "app/gui/widgets/look.h"

#include <functional>
#include <QWidget>

namespace pw::gui {

/// Wrapped text with the lead of the look (1.36 of the type size; the font's own is far wider).
class TextBlock : public QWidget {
    Q_OBJECT

public:
    using Colour = QColor Palette::*;

    explicit TextBlock(Type type, Colour colour = &Palette::ink, QWidget* parent = nullptr);

    void setText(const QString& text);
    QString text() const { return m_text; }
    void setType(Type type);
    void setColour(Colour colour);
    /// A colour that is not one of the plain parts (a verdict's).
    void setColour(std::function<QColor()> colour);
    void setMaxLines(int lines);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    Type m_type;
    std::function<QColor()> m_colour;
    QString m_text;
    int m_maxLines = 0;
};

/// The lines of a text wrapped to a width, and drawing them; for widgets that paint text of their own.
struct WrappedText {
    QStringList lines;
    double lead = 0;
    double height() const { return lead * static_cast<double>(lines.size()); }
};

WrappedText wrapText(const QString& text, const QFont& font, double width, int maxLines = 0,
                     double lead = 1.36);
void drawWrapped(QPainter& painter, const WrappedText& text, QPointF topLeft);

} // namespace pw::gui
