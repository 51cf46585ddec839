#include "app/gui/widgets/slim_scroll_area.h"

#include "app/gui/widgets/look.h"

#include <algorithm>
#include <optional>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>

namespace pw::gui {

class SlimScrollArea::Thumb : public QWidget {
public:
    explicit Thumb(SlimScrollArea* area) : QWidget(area), m_bar(area->verticalScrollBar()) {
        connect(m_bar, &QScrollBar::valueChanged, this, qOverload<>(&QWidget::update));
        connect(m_bar, &QScrollBar::rangeChanged, this, [this](int low, int high) {
            setVisible(high > low);
            raise();
            update();
        });
        setVisible(m_bar->maximum() > m_bar->minimum());
    }

protected:
    void paintEvent(QPaintEvent*) override {
        const Palette& c = Look::now().colours();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(Qt::NoPen);
        painter.setBrush(m_grip || underMouse() ? c.muted : c.strongRule);
        const QRectF thumb = thumbRect();
        painter.drawRoundedRect(thumb, thumb.width() / 2, thumb.width() / 2);
    }
    void enterEvent(QEnterEvent*) override { update(); }
    void leaveEvent(QEvent*) override { update(); }
    void mousePressEvent(QMouseEvent* event) override {
        const QRectF thumb = thumbRect();
        // Beside the thumb: bring its middle here first.
        if (event->position().y() < thumb.top() || event->position().y() > thumb.bottom())
            scrollTo(event->position().y() - thumb.height() / 2);
        m_grip = event->position().y() - thumbRect().top();
        update();
    }
    void mouseMoveEvent(QMouseEvent* event) override {
        if (m_grip)
            scrollTo(event->position().y() - *m_grip);
    }
    void mouseReleaseEvent(QMouseEvent*) override {
        m_grip.reset();
        update();
    }

private:
    double range() const { return std::max(m_bar->maximum() - m_bar->minimum(), 1); }
    QRectF thumbRect() const {
        const double share = m_bar->pageStep() / (range() + m_bar->pageStep());
        const double high = std::max(height() * share, 28.0);
        const double top = (height() - high) * (m_bar->value() - m_bar->minimum()) / range();
        return QRectF(2, top + 2, width() - 4, high - 4);
    }
    void scrollTo(double top) {
        const double free = std::max(height() - thumbRect().height() - 4, 1.0);
        m_bar->setValue(m_bar->minimum() + static_cast<int>(range() * top / free));
    }

    QScrollBar* m_bar;
    std::optional<double> m_grip;
};

SlimScrollArea::SlimScrollArea(QWidget* parent) : QScrollArea(parent), m_thumb(nullptr) {
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setFocusPolicy(Qt::NoFocus);
    viewport()->setAutoFillBackground(false);
    m_thumb = new Thumb(this);
}

void SlimScrollArea::place() {
    const int wide = 10;
    m_thumb->setGeometry(width() - wide - 1, 0, wide, height());
    m_thumb->raise();
}

void SlimScrollArea::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    place();
}

} // namespace pw::gui
