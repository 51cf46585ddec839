#pragma once

#include <string> // first: moc of Qt 6.4 stumbles over <compare> alone

#include "core/units/format.h"
#include "core/verdict/check.h"

#include <QWidget>

class QAbstractButton;

namespace pw::gui {

class TextBlock;

/// One check: mark, title, margin as a bar against the one upright "wanted" line, and the figure. Opened it
/// shows how the figure came about and where the rule is from.
class CheckRow : public QWidget {
    Q_OBJECT

public:
    explicit CheckRow(QWidget* parent = nullptr);

    void set(const verdict::Check& check, units::System system);
    const verdict::Check& check() const { return m_check; }
    bool isOpen() const { return m_open; }
    void setOpen(bool open);

    /// Where the bar begins from the row's right end, and how wide it is: the head of the list marks the same
    /// line.
    static double barWidth(double rowWidth);
    static double valueWidth();

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void picked();

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;

private:
    friend class CheckRowButton;
    void paintLine(QPainter& painter, const QRectF& line, bool focus);
    double paintDetails(QPainter* painter, int width) const;

    verdict::Check m_check;
    units::System m_system = units::System::Metric;
    bool m_open = false;
    QAbstractButton* m_button;
};

} // namespace pw::gui
