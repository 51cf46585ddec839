#pragma once

#include "app/gui/widgets/look.h"

#include <QAbstractButton>

namespace pw::gui {

/// A button that is a word (or a short line and a second one): flat in the top bar, boxed for an output,
/// filled for the mend.
class WordButton : public QAbstractButton {
    Q_OBJECT

public:
    enum class Style { Flat, Boxed, Filled, Link };

    WordButton(const QString& words, Style style, QWidget* parent = nullptr);

    /// A small arrow that says something opens below.
    void setOpens(bool opens);
    void setSecondLine(const QString& words);
    /// Room around the button itself, in design pixels: it may then stand in a column without a frame.
    void setMargins(double left, double top, double right, double bottom);

    bool hasHeightForWidth() const override { return m_style == Style::Filled; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void paintEvent(QPaintEvent*) override;
    void enterEvent(QEnterEvent* event) override;
    void leaveEvent(QEvent* event) override;

private:
    Style m_style;
    QRectF face() const;

    bool m_opens = false;
    double m_left = 0, m_top = 0, m_right = 0, m_bottom = 0;
    QString m_second;
};

/// The arrow-like chevron: opens and closes, nothing else. 0 degrees points down, -90 to the right.
void drawChevron(QPainter& painter, QPointF middle, double size, double degrees, const QColor& colour);

/// The ring around what the keyboard is on.
void drawFocusRing(QPainter& painter, const QRectF& box, double radius);

} // namespace pw::gui
