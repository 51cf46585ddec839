#include "app/gui/widgets/group_header.h"

#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_mark.h"
#include "app/gui/widgets/word_button.h"

#include <cmath>
#include <QEvent>
#include <QPainter>

namespace pw::gui {

namespace {

double sentenceRoom(int width, bool needs) {
    return width - Look::now().pxF(needs ? 16 + 66 : 16 + 36);
}

} // namespace

GroupHeader::GroupHeader(const QString& title, QWidget* parent) : QAbstractButton(parent) {
    setCheckable(true);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setTitle(title);
    connect(this, &QAbstractButton::toggled, this, [this] {
        updateGeometry();
        update();
    });
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void GroupHeader::speak() {
    setAccessibleName(text());
    setAccessibleDescription(m_needs ? tr("%1. Something is needed here.").arg(m_sentence) : m_sentence);
}

void GroupHeader::setTitle(const QString& title) {
    setText(title);
    speak();
}

void GroupHeader::setSentence(const QString& sentence) {
    if (sentence == m_sentence)
        return;
    m_sentence = sentence;
    speak();
    updateGeometry();
    update();
}

void GroupHeader::setNeeds(bool needs) {
    if (needs == m_needs)
        return;
    m_needs = needs;
    speak();
    updateGeometry();
    update();
}

void GroupHeader::setOpen(bool open) {
    setChecked(open);
}

int GroupHeader::heightForWidth(int width) const {
    const Look& look = Look::now();
    if (isOpen())
        return look.px(38);
    // Two lines at most; a longer sentence is cut, its group is one click away.
    const auto lines = wrapText(m_sentence, look.font(Type::Sentence), sentenceRoom(width, m_needs), 2);
    return std::max(look.px(51), static_cast<int>(std::ceil(look.pxF(29) + lines.height())));
}

QSize GroupHeader::sizeHint() const {
    return {Look::now().px(284), heightForWidth(Look::now().px(284))};
}

QSize GroupHeader::minimumSizeHint() const {
    return {Look::now().px(120), Look::now().px(38)};
}

bool GroupHeader::event(QEvent* event) {
    if (event->type() == QEvent::HoverEnter || event->type() == QEvent::HoverLeave)
        update();
    return QAbstractButton::event(event);
}

void GroupHeader::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    const double left = look.pxF(16), room = sentenceRoom(width(), m_needs);
    const double middle = height() / 2.0;
    if (isOpen()) {
        painter.setFont(look.font(Type::Title));
        painter.setPen(c.ink);
        drawLine(painter, QRectF(left, 0, room, height()), Qt::AlignLeft, text());
    } else {
        painter.setFont(look.font(Type::LabelBold));
        painter.setPen(c.muted);
        drawLine(painter, QRectF(left, look.pxF(5), room, look.pxF(20)), Qt::AlignLeft, text());
        painter.setFont(look.font(Type::Sentence));
        painter.setPen(c.ink);
        drawWrapped(painter, wrapText(m_sentence, painter.font(), room, 2), {left, look.pxF(25)});
    }
    if (m_needs && !isOpen())
        drawVerdictMark(painter, QRectF(width() - look.pxF(58), middle - 8, look.pxF(22), 16),
                        verdict::Grade::Incomplete, c.incomplete.text);
    drawChevron(painter, QPointF(width() - look.pxF(22), middle), look.pxF(9), isOpen() ? 0 : -90, c.muted);
    if (!isOpen()) {
        painter.setPen(QPen(c.rule, 1));
        painter.drawLine(QPointF(left, height() - 0.5), QPointF(width() - left, height() - 0.5));
    }
    if (hasFocus())
        drawFocusRing(painter, QRectF(rect()).adjusted(4, 1, -4, -2), look.pxF(4));
}

} // namespace pw::gui
