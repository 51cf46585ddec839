#pragma once

#include <QWidget>
#include <vector>

namespace pw::gui {

/// Words in a row that goes on in the next line where the place is narrow or the type large.
class ButtonRow : public QWidget {
    Q_OBJECT

public:
    explicit ButtonRow(QWidget* parent = nullptr);

    void add(QWidget* button);

    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return arrange(width, false); }
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    void resizeEvent(QResizeEvent*) override { arrange(width(), true); }
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    int arrange(int width, bool place) const;

    std::vector<QWidget*> m_buttons;
};

} // namespace pw::gui
