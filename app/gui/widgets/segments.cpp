#include "app/gui/widgets/segments.h"

#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/word_button.h"

#include <cmath>
#include <QAbstractButton>
#include <QButtonGroup>
#include <QFontMetricsF>
#include <QGridLayout>
#include <QPainter>

namespace pw::gui {

namespace {

class Segment : public QAbstractButton {
public:
    Segment(const QString& words, QWidget* parent) : QAbstractButton(parent) {
        setText(words);
        setCheckable(true);
        setFocusPolicy(Qt::StrongFocus);
        setCursor(Qt::PointingHandCursor);
        setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    }

    void setTight(bool tight) {
        m_tight = tight;
        updateGeometry();
    }

    QSize sizeHint() const override {
        const Look& look = Look::now();
        const QFontMetricsF metrics(look.font(Type::ButtonBold));
        const double side = m_tight ? 8 : 16;
        return {static_cast<int>(std::ceil(metrics.horizontalAdvance(text()) + look.pxF(2 * side))),
                look.px(32)};
    }

protected:
    void paintEvent(QPaintEvent*) override {
        const Look& look = Look::now();
        const Palette& c = look.colours();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        if (isChecked()) {
            painter.setPen(Qt::NoPen);
            painter.setBrush(c.touch);
            painter.drawRoundedRect(rect(), look.pxF(4), look.pxF(4));
        }
        painter.setPen(isChecked() ? c.onTouch : c.ink);
        painter.setFont(look.font(isChecked() ? Type::ButtonBold : Type::Button));
        drawLine(painter, rect(), Qt::AlignHCenter, text());
        if (hasFocus()) {
            painter.setBrush(Qt::NoBrush);
            painter.setPen(QPen(isChecked() ? c.onTouch : c.touch, 1.6));
            painter.drawRoundedRect(QRectF(rect()).adjusted(3, 3, -3, -3), look.pxF(3), look.pxF(3));
        }
    }

private:
    bool m_tight = false;
};

} // namespace

Segments::Segments(const QStringList& words, const QString& name, QWidget* parent)
    : QWidget(parent), m_group(new QButtonGroup(this)) {
    setAccessibleName(name);
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    auto* grid = new QGridLayout(this);
    grid->setSpacing(0);
    m_group->setExclusive(true);
    for (int i = 0; i < words.size(); ++i) {
        auto* segment = new Segment(words[i], this);
        segment->setAccessibleName(words[i]);
        m_group->addButton(segment, i);
        grid->addWidget(segment, 0, i);
    }
    m_group->button(0)->setChecked(true);
    connect(m_group, &QButtonGroup::idClicked, this, &Segments::chosen);
    // Arrow keys move the choice within an exclusive group without a click.
    for (auto* button : m_group->buttons())
        connect(button, &QAbstractButton::toggled, this, [this, button](bool on) {
            if (on && button->hasFocus() && !button->isDown())
                Q_EMIT chosen(m_group->id(button));
        });
    connect(&Look::now(), &Look::changed, this, &Segments::relayout);
    relayout();
}

void Segments::relayout() {
    const int edge = Look::now().px(3);
    layout()->setContentsMargins(edge, edge, edge, edge);
    for (auto* button : m_group->buttons())
        button->updateGeometry();
    updateGeometry();
    update();
}

void Segments::setTight(bool tight, int perRow) {
    if (tight == m_tight && perRow == m_perRow)
        return;
    m_tight = tight;
    m_perRow = perRow;
    auto* grid = static_cast<QGridLayout*>(layout());
    for (int i = 0; i < static_cast<int>(m_group->buttons().size()); ++i) {
        auto* segment = static_cast<Segment*>(m_group->button(i));
        segment->setTight(tight);
        grid->removeWidget(segment);
        grid->addWidget(segment, i / perRow, i % perRow);
    }
    relayout();
}

int Segments::current() const {
    return m_group->checkedId();
}

void Segments::setCurrent(int index) {
    const QSignalBlocker quiet(this);
    if (auto* button = m_group->button(index))
        button->setChecked(true);
}

void Segments::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(c.tone == Tone::Dark ? mixed(c.panel, c.rule, 0.35) : mixed(c.ground, c.rule, 0.5));
    painter.drawRoundedRect(rect(), Look::now().pxF(6), Look::now().pxF(6));
}

} // namespace pw::gui
