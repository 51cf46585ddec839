#include "app/gui/widgets/work_bar.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/plain_tip.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <cmath>
#include <QHBoxLayout>
#include <QPainter>

namespace pw::gui {

WorkBar::WorkBar(QWidget* parent)
    : QWidget(parent), m_button(new WordButton(tr("Stop"), WordButton::Style::Flat, this)) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 0, 8, 3);
    row->addStretch(1);
    row->addWidget(m_button);
    connect(m_button, &QAbstractButton::clicked, this, [this] {
        if (m_busy)
            Q_EMIT stopAsked();
        else
            Q_EMIT againAsked();
    });
    connect(&Look::now(), &Look::changed, this, &WorkBar::settle);
    settle();
    hide();
}

void WorkBar::settle() {
    setFixedHeight(Look::now().px(m_ahead.isEmpty() ? 42 : 82));
    setAccessibleName(m_ahead.isEmpty() ? m_words : m_words + QLatin1Char('\n') + m_ahead);
    setToolTip(plainTip(m_ahead));
}

void WorkBar::setAhead(const QString& words, const QString& what) {
    m_ahead = words;
    if (words.isEmpty())
        settle();
    else
        setBusy(0, what);
}

void WorkBar::setBusy(double done, const QString& what) {
    m_busy = true;
    m_done = done;
    m_words =
        tr("%1, %2 %", "what is being done, how far").arg(what).arg(static_cast<int>(std::floor(done * 100)));
    m_button->setText(tr("Stop"));
    m_button->show();
    m_button->updateGeometry();
    settle();
    show();
    update();
}

void WorkBar::setIdle(const QString& words, const QString& again) {
    m_busy = false;
    m_words = words;
    m_ahead.clear();
    m_button->setText(again);
    m_button->setVisible(!again.isEmpty());
    m_button->updateGeometry();
    settle();
    setVisible(!words.isEmpty());
    update();
}

void WorkBar::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    const double right = m_button->isHidden() ? width() - look.pxF(16) : m_button->x() - look.pxF(8);
    const double left = look.pxF(16), room = right - left, line = look.pxF(38);
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.ink);
    drawLine(painter, QRectF(left, 0, room, line), Qt::AlignLeft, m_words);
    if (!m_ahead.isEmpty()) {
        painter.setPen(c.muted);
        drawWrapped(painter, wrapText(m_ahead, painter.font(), room, 2), {left, line});
    }
    if (!m_busy)
        return;
    const QRectF track(0, height() - look.pxF(3), width(), look.pxF(3));
    painter.fillRect(track, c.rule);
    painter.fillRect(QRectF(track.left(), track.top(), track.width() * m_done, track.height()), c.touch);
}

} // namespace pw::gui
