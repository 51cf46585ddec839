#include "app/gui/widgets/field_box.h"

#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/word_button.h"

#include <cmath>
#include <QAbstractButton>
#include <QAction>
#include <QEvent>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPainterPath>
#include <QPointer>

namespace pw::gui {

namespace {

constexpr int kPauseMs = 400;

/// Takes clicks and keys; the box around it paints everything.
class BareButton : public QAbstractButton {
public:
    explicit BareButton(QWidget* parent) : QAbstractButton(parent) { setCursor(Qt::PointingHandCursor); }

protected:
    void paintEvent(QPaintEvent*) override {}
    void keyPressEvent(QKeyEvent* event) override {
        if (event->key() == Qt::Key_Down || event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
            click();
        else
            QAbstractButton::keyPressEvent(event);
    }
};

} // namespace

FieldBox::FieldBox(Mode mode, const QString& label, QWidget* parent) : QWidget(parent), m_mode(mode) {
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    if (mode != Mode::Choice) {
        m_edit = new QLineEdit(this);
        m_edit->setFrame(false);
        m_edit->setTextMargins(0, 0, 0, 0);
        m_edit->setAttribute(Qt::WA_MacShowFocusRect, false);
        m_edit->installEventFilter(this);
        setFocusProxy(m_edit);
        m_pause.setSingleShot(true);
        m_pause.setInterval(kPauseMs);
        connect(m_edit, &QLineEdit::textEdited, this, [this] {
            m_dirty = true;
            m_pause.start();
            update();
        });
        connect(&m_pause, &QTimer::timeout, this, [this] { Q_EMIT typed(m_edit->text()); });
        connect(m_edit, &QLineEdit::editingFinished, this, [this] {
            m_pause.stop();
            if (std::exchange(m_dirty, false))
                Q_EMIT left(m_edit->text());
        });
    }
    if (mode != Mode::Edit) {
        m_button = new BareButton(this);
        m_button->setFocusPolicy(mode == Mode::Choice ? Qt::StrongFocus : Qt::NoFocus);
        m_button->installEventFilter(this);
        if (mode == Mode::Choice)
            setFocusProxy(m_button);
        connect(m_button, &QAbstractButton::clicked, this, &FieldBox::openMenu);
    }
    setLabel(label);
    connect(&Look::now(), &Look::changed, this, [this] {
        placeParts();
        updateGeometry();
        update();
    });
    placeParts();
}

void FieldBox::setLabel(const QString& label) {
    m_label = label;
    focusTarget()->setAccessibleName(label);
    if (m_button && m_mode == Mode::OpenChoice)
        m_button->setAccessibleName(tr("%1: choices").arg(label));
    updateGeometry();
    update();
}

void FieldBox::setSpoken(const QString& text) {
    focusTarget()->setAccessibleDescription(text);
}

void FieldBox::setChoices(Choices choices) {
    m_choices = std::move(choices);
    updateGeometry();
}

QWidget* FieldBox::focusTarget() const {
    return m_edit ? static_cast<QWidget*>(m_edit) : m_button;
}

bool FieldBox::isActive() const {
    return focusTarget()->hasFocus();
}

QString FieldBox::shownWords() const {
    for (const auto& [value, words] : m_choices)
        if (value == m_value)
            return words;
    return m_value;
}

void FieldBox::setValue(const QString& value, bool force) {
    m_value = value;
    // What is typed and not yet taken stays, also in the moment in which the keyboard leaves.
    if (m_edit && (force || !m_dirty)) {
        const QString words = shownWords();
        if (m_edit->text() != words) {
            const int cursor = m_edit->cursorPosition();
            m_edit->setText(words);
            m_edit->setCursorPosition(isActive() ? cursor : 0);
        }
        if (force)
            m_dirty = false;
    }
    if (m_mode == Mode::Choice)
        m_button->setText(shownWords());
    update();
}

void FieldBox::keepTyped(const QString& text) {
    if (!m_edit)
        return;
    if (m_edit->text() != text)
        m_edit->setText(text);
    m_dirty = true;
    update();
}

QString FieldBox::value() const {
    return m_edit ? m_edit->text() : m_value;
}

void FieldBox::setEcho(const QString& echo) {
    m_echo = echo;
    placeParts();
    update();
}

void FieldBox::setState(FieldState state) {
    m_state = state;
    placeParts();
    update();
}

void FieldBox::setAssumed(const QString& text) {
    m_assumed = text;
    update();
}

QRectF FieldBox::boxRect() const {
    const Look& look = Look::now();
    return QRectF(0, look.pxF(22), width(), look.pxF(38)).adjusted(0.5, 0.5, -0.5, -0.5);
}

int FieldBox::wantedWidth() const {
    const Look& look = Look::now();
    const QFontMetricsF label(look.font(Type::LabelBold)), value(look.font(Type::Value));
    double width = label.horizontalAdvance(m_label);
    for (const auto& choice : m_choices)
        width = std::max(width, value.horizontalAdvance(choice.second) + look.pxF(38));
    return static_cast<int>(std::ceil(width));
}

QSize FieldBox::sizeHint() const {
    return {Look::now().px(138), Look::now().px(61)};
}

QSize FieldBox::minimumSizeHint() const {
    return {Look::now().px(60), Look::now().px(61)};
}

bool FieldBox::echoFits() const {
    if (m_echo.isEmpty())
        return false;
    const Look& look = Look::now();
    const QString words = m_edit ? m_edit->text() : shownWords();
    const double value = QFontMetricsF(look.font(Type::Value)).horizontalAdvance(words);
    const double echo = QFontMetricsF(look.font(Type::Label)).horizontalAdvance(m_echo);
    return value + echo + look.pxF(10 + 8 + 8) <= width();
}

void FieldBox::placeParts() {
    const Look& look = Look::now();
    const QRect box = boxRect().toRect();
    const int inner = look.px(m_state == FieldState::WorkedOut ? 0 : 9);
    if (m_edit) {
        const bool plain = m_state == FieldState::Assumed || m_state == FieldState::WorkedOut;
        m_edit->setFont(look.font(plain ? Type::ValuePlain : Type::Value));
        QPalette q = look.colours().forQt();
        q.setColor(QPalette::Base, Qt::transparent);
        m_edit->setPalette(q);
        m_edit->setReadOnly(m_state == FieldState::WorkedOut);
        // The line edit centres its font's own tall line; shift it so that the x-height is in the middle.
        const QFontMetricsF metrics(m_edit->font());
        const double middle = metrics.ascent() - metrics.xHeight() / 2, line = metrics.height() / 2;
        const int shift = static_cast<int>(std::lround(middle - line));
        const int right = m_mode == Mode::OpenChoice ? look.px(26) : 2;
        m_edit->setGeometry(box.adjusted(inner - 2, 2 - shift, -right, -2 - shift));
    }
    if (m_button) {
        if (m_mode == Mode::Choice)
            m_button->setGeometry(box);
        else
            m_button->setGeometry(box.adjusted(box.width() - look.px(28), 1, -1, -1));
    }
}

void FieldBox::resizeEvent(QResizeEvent*) {
    placeParts();
}

void FieldBox::openMenu() {
    QMenu menu(this);
    dress(menu);
    for (const auto& [value, words] : m_choices) {
        QAction* action = menu.addAction(words);
        action->setData(value);
        action->setCheckable(true);
        action->setChecked(value == m_value);
    }
    menu.setMinimumWidth(width());
    const QPointer<FieldBox> self(this); // whatever happens while the menu is open
    const QAction* chosen = menu.exec(mapToGlobal(boxRect().bottomLeft().toPoint()));
    if (self && chosen)
        Q_EMIT picked(chosen->data().toString());
}

bool FieldBox::eventFilter(QObject* watched, QEvent* event) {
    if (watched == focusTarget()) {
        if (event->type() == QEvent::FocusIn) {
            update();
            Q_EMIT activated();
        } else if (event->type() == QEvent::FocusOut) {
            update();
            Q_EMIT deactivated();
        } else if (event->type() == QEvent::KeyPress && m_edit) {
            const auto* key = static_cast<QKeyEvent*>(event);
            if (key->key() == Qt::Key_Escape && m_dirty) {
                m_pause.stop();
                setValue(m_value, true);
                Q_EMIT left(m_edit->text());
                return true;
            }
        }
    }
    return QWidget::eventFilter(watched, event);
}

void FieldBox::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool active = isActive();
    const QRectF box = boxRect();
    const double radius = look.pxF(4);

    // Label.
    QString label = m_label;
    bool assumedInside = false;
    if (m_state == FieldState::Assumed) {
        label = tr("%1, assumed").arg(m_label);
        if (QFontMetricsF(look.font(active ? Type::LabelBold : Type::Label)).horizontalAdvance(label) >
            width()) {
            label = m_label;
            assumedInside = true;
        }
    } else if (m_state == FieldState::WorkedOut)
        label = tr("%1, worked out").arg(m_label);
    painter.setFont(look.font(active ? Type::LabelBold : Type::Label));
    painter.setPen(active ? c.touch : c.muted);
    const bool echoInside = echoFits();
    QRectF labelLine(0, 0, width(), look.pxF(20));
    drawLine(painter, labelLine, Qt::AlignLeft, label);

    // Box.
    const bool wrong = m_state == FieldState::NotUnderstood;
    if (m_state != FieldState::WorkedOut) {
        QPen pen(c.strongRule, 1);
        QBrush fill(c.field);
        double inset = 0;
        if (active) {
            pen = QPen(c.touch, 2.4);
            inset = 0.7;
        } else if (wrong) {
            pen = QPen(c.ink, 2.4);
            inset = 0.7;
        } else if (m_state == FieldState::Assumed || m_state == FieldState::Empty) {
            fill = Qt::NoBrush;
        } else if (m_state == FieldState::Needed) {
            pen = QPen(c.muted, 1.6, Qt::CustomDashLine);
            pen.setDashPattern({4, 3});
            pen.setCapStyle(Qt::FlatCap);
            fill = Qt::NoBrush;
            inset = 0.4;
        }
        painter.setPen(pen);
        painter.setBrush(fill);
        painter.drawRoundedRect(box.adjusted(inset, inset, -inset, -inset), radius, radius);
    }

    const QRectF inside = box.adjusted(look.pxF(9), 0, -look.pxF(9), 0);
    const bool empty = m_edit ? m_edit->text().isEmpty() : m_value.isEmpty();
    if (empty) {
        const QString words = m_state == FieldState::Needed ? tr("needed") : m_assumed;
        painter.setFont(look.font(Type::ValuePlain));
        painter.setPen(m_state == FieldState::Assumed && !active ? c.ink : c.muted);
        QRectF line = inside;
        if (m_button)
            line.setRight(line.right() - look.pxF(16));
        if (!(active && m_edit && m_state == FieldState::Needed))
            drawLine(painter, line, Qt::AlignLeft, words);
        if (assumedInside) {
            const double used = QFontMetricsF(painter.font()).horizontalAdvance(words) + look.pxF(6);
            painter.setFont(look.font(Type::Label));
            painter.setPen(c.muted);
            line.setLeft(line.left() + used);
            if (QFontMetricsF(painter.font()).horizontalAdvance(tr("assumed")) <= line.width())
                drawLine(painter, line, Qt::AlignRight, tr("assumed"));
        }
    } else if (m_mode == Mode::Choice) {
        const bool plain = m_state == FieldState::Assumed;
        painter.setFont(look.font(plain ? Type::ValuePlain : Type::Value));
        painter.setPen(c.ink);
        drawLine(painter, inside.adjusted(0, 0, -look.pxF(16), 0), Qt::AlignLeft, shownWords());
    }
    if (m_button)
        drawChevron(painter, QPointF(box.right() - look.pxF(15), box.center().y() + 1), look.pxF(9), 0,
                    c.muted);

    if (echoInside && !empty && !wrong) {
        painter.setFont(look.font(Type::Label));
        painter.setPen(c.muted);
        const double right = m_state == FieldState::WorkedOut ? box.right() : inside.right();
        drawLine(painter, QRectF(inside.left(), inside.top(), right - inside.left(), inside.height()),
                 Qt::AlignRight, m_echo);
    } else if (!m_echo.isEmpty() && !empty && !wrong) {
        // No room beside the value: at the end of the label's line, when that has room.
        painter.setFont(look.font(active ? Type::LabelBold : Type::Label));
        const double used = QFontMetricsF(painter.font()).horizontalAdvance(label) + look.pxF(8);
        painter.setFont(look.font(Type::Label));
        if (used + QFontMetricsF(painter.font()).horizontalAdvance(m_echo) <= width()) {
            painter.setPen(c.muted);
            drawLine(painter, labelLine, Qt::AlignRight, m_echo);
        }
    }

    if (wrong && m_edit && !empty) {
        const QFontMetricsF metrics(m_edit->font());
        const double from = inside.left(), y = box.center().y() + metrics.xHeight() / 2 + look.pxF(6);
        const double to = std::min(from + metrics.horizontalAdvance(m_edit->text()), inside.right());
        QPainterPath wave(QPointF(from, y));
        const double step = look.pxF(3);
        bool up = true;
        for (double x = from + step; x <= to + step / 2; x += step, up = !up)
            wave.quadTo(QPointF(x - step / 2, y + (up ? -step : step) * 0.9), QPointF(x, y));
        painter.setPen(QPen(c.ink, 1.4));
        painter.setBrush(Qt::NoBrush);
        painter.drawPath(wave);
    }
}

} // namespace pw::gui
