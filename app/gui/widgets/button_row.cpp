#include "app/gui/widgets/button_row.h"

#include "app/gui/widgets/look.h"

#include <algorithm>
#include <QEvent>

namespace pw::gui {

ButtonRow::ButtonRow(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    connect(&Look::now(), &Look::changed, this, [this] { updateGeometry(); });
}

void ButtonRow::add(QWidget* button) {
    button->setParent(this);
    button->installEventFilter(this);
    m_buttons.push_back(button);
    updateGeometry();
}

int ButtonRow::arrange(int width, bool place) const {
    const int gap = Look::now().px(8);
    int x = 0, y = 0, high = 0;
    for (QWidget* button : m_buttons) {
        if (button->isHidden())
            continue;
        const QSize size = button->sizeHint();
        if (x > 0 && x + size.width() > width) {
            x = 0;
            y += high + gap;
            high = 0;
        }
        if (place)
            button->setGeometry(x, y, std::min(size.width(), width), size.height());
        x += size.width() + gap;
        high = std::max(high, size.height());
    }
    return y + high;
}

QSize ButtonRow::sizeHint() const {
    int wide = 0;
    for (const QWidget* button : m_buttons)
        if (!button->isHidden())
            wide += button->sizeHint().width() + Look::now().px(8);
    wide = std::max(wide - Look::now().px(8), 0);
    return {wide, arrange(wide, false)};
}

QSize ButtonRow::minimumSizeHint() const {
    return {Look::now().px(80), Look::now().px(38)};
}

bool ButtonRow::eventFilter(QObject* watched, QEvent* event) {
    // One that comes or goes changes what room is wanted.
    if (event->type() == QEvent::ShowToParent || event->type() == QEvent::HideToParent) {
        updateGeometry();
        arrange(width(), true);
    }
    return QWidget::eventFilter(watched, event);
}

bool ButtonRow::event(QEvent* event) {
    if (event->type() == QEvent::LayoutRequest) { // one was hidden, or says something else
        updateGeometry();
        arrange(width(), true);
    }
    return QWidget::event(event);
}

} // namespace pw::gui
