#include "app/gui/views/plan_actions.h"
#include "app/gui/views/plan_piece.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QWheelEvent>

// What mouse and keyboard do on the plan.
namespace pw::gui {

namespace {

constexpr double kReachPx = 9; ///< how near the cursor must come to an edge to grab it

} // namespace

double PlanView::reachMm() const {
    return Look::now().pxF(kReachPx) / m_transform.scale;
}

void PlanView::change(const Grab& grab, const Setting& setting, int gesture) {
    const std::string key =
        isOneOfMany(grab.part) ? rowOf(grab.part, rowOfGrab(m_document, m_shape, grab)) : pathOf(grab.part);
    m_document.replace(treeWith(m_document, m_shape, grab, setting, m_units),
                       nameOfGrab(m_document, m_shape, grab), key, gesture);
}

void PlanView::drag(QPointF to, bool fine) {
    if (!m_drag->moved && (to - m_drag->pressedAt).manhattanLength() < 3)
        return;
    m_drag->moved = true;
    const Grab& grab = m_drag->grab;
    const shape::Point p = m_transform.toPlate(to);
    Setting setting = settingOf(m_shape, grab);
    if (grab.part == PlanPart::Piece)
        setting.place = draggedPiece(m_drag->from, p, m_drag->before, m_units, fine, m_snapMm);
    else if (isPlace(grab.part))
        setting.place = draggedPlace(m_drag->from, p, m_drag->before.place, m_units, fine, m_snapMm);
    else // against the shape as it was when it was grabbed: stations move with the ring
        setting.figure =
            dragged(m_shape, grab, m_drag->from, p, m_drag->before.figure, m_units, fine, m_snapMm);
    const Setting now = settingOf(m_shape, grab);
    if (std::abs(setting.figure - now.figure) > 1e-9 || shape::distance(setting.place, now.place) > 1e-9) {
        m_drag->pending = setting;
        m_shape = shapeOf(withSetting(m_document.job(), m_shape, grab, setting));
        if (!m_isBusy || !m_isBusy())
            takePending();
    }
    update();
}

void PlanView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton)
        return;
    setFocus(Qt::MouseFocusReason);
    const QPointF at = event->position();
    const shape::Point p = m_transform.toPlate(at);
    const Grab grab = event->button() == Qt::LeftButton ? grabAt(m_shape, p, reachMm()) : Grab{};
    if (grab) {
        m_drag = Drag{grab, p, settingOf(m_shape, grab), m_document.newGesture(), false, at};
        m_selected = grab;
    } else {
        m_pan = at;
        m_selected = {};
        setCursor(Qt::ClosedHandCursor);
    }
    update();
}

void PlanView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (m_drag) {
        drag(at, event->modifiers() & Qt::ShiftModifier);
    } else if (m_pan) {
        m_transform.pan(at - *m_pan);
        m_pan = at;
        m_moved = true;
        update();
    } else {
        const Grab hover = grabAt(m_shape, m_transform.toPlate(at), reachMm());
        if (!(hover == m_hover)) {
            m_hover = hover;
            setCursor(hover ? Qt::PointingHandCursor : Qt::ArrowCursor);
            update();
        }
    }
}

void PlanView::mouseReleaseEvent(QMouseEvent*) {
    if (m_drag) {
        const Grab grab = m_drag->grab;
        const bool moved = m_drag->moved;
        takePending();
        m_drag.reset();
        if (moved)
            keepInView();
        else
            Q_EMIT picked(grab.part, rowOfGrab(m_document, m_shape, grab));
    }
    m_pan.reset();
    setCursor(m_hover ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (grabAt(m_shape, m_transform.toPlate(event->position()), reachMm()))
        mousePressEvent(event);
    else
        fit();
}

void PlanView::wheelEvent(QWheelEvent* event) {
    const double turned = event->angleDelta().y() / 120.0;
    if (turned == 0)
        return;
    m_transform.zoom(event->position(), std::pow(1.2, turned));
    m_moved = true;
    event->accept();
    update();
}

void PlanView::select(Grab grab) {
    m_selected = grab;
    m_keyGesture = 0;
    const QString name = nameOfGrab(m_document, m_shape, grab);
    setAccessibleDescription(!grab                ? QString()
                             : isPlace(grab.part) ? tr("%1: arrow keys move it").arg(name)
                                                  : tr("%1: arrow keys change it").arg(name));
    if (grab)
        Q_EMIT picked(grab.part, rowOfGrab(m_document, m_shape, grab));
    update();
}

bool PlanView::focusNextPrevChild(bool next) {
    // Tab goes through the parts of the plate before it leaves the plan.
    if (!hasFocus())
        return QWidget::focusNextPrevChild(next);
    const auto all = grabs(m_shape);
    std::ptrdiff_t at = -1;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (m_selected && all[i].part == m_selected.part &&
            (!isOneOfMany(m_selected.part) || all[i].index == m_selected.index))
            at = static_cast<std::ptrdiff_t>(i);
    const std::ptrdiff_t to = next ? at + 1 : at - 1;
    if (!all.empty() && to >= 0 && to < static_cast<std::ptrdiff_t>(all.size())) {
        select(all[static_cast<std::size_t>(to)]);
        return true;
    }
    select({});
    return QWidget::focusNextPrevChild(next);
}

void PlanView::keyPressEvent(QKeyEvent* event) {
    const bool fine = event->modifiers() & Qt::ShiftModifier;
    switch (event->key()) {
    case Qt::Key_F:
        fit();
        return;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
    case Qt::Key_Minus:
        m_transform.zoom(QRectF(rect()).center(), event->key() == Qt::Key_Minus ? 1 / 1.2 : 1.2);
        m_moved = true;
        update();
        return;
    case Qt::Key_Escape:
        select({});
        return;
    case Qt::Key_Delete:
    case Qt::Key_Backspace:
        if (const auto action = m_selected ? removal(m_document, m_shape, m_selected) : std::nullopt) {
            m_selected = {};
            make(*action);
        }
        return;
    case Qt::Key_Up:
        step(0, 1, fine);
        return;
    case Qt::Key_Down:
        step(0, -1, fine);
        return;
    case Qt::Key_Right:
        step(1, 0, fine);
        return;
    case Qt::Key_Left:
        step(-1, 0, fine);
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void PlanView::step(int right, int up, bool fine) {
    if (!m_selected) {
        const auto all = grabs(m_shape);
        if (!all.empty())
            select(right + up > 0 ? all.front() : all.back());
        return;
    }
    // Presses in a row on one part are one step of undo.
    if (m_keyGesture == 0)
        m_keyGesture = m_document.newGesture();
    Setting setting = settingOf(m_shape, m_selected);
    if (m_selected.part == PlanPart::Piece)
        setting.place = steppedPiece(setting, right, up, m_units, fine, m_snapMm);
    else if (isPlace(m_selected.part))
        setting.place = steppedPlace(setting.place, right, up, m_units, fine, m_snapMm);
    else
        setting.figure = stepped(m_selected.part, setting.figure, right + up, m_units, fine, m_snapMm);
    change(m_selected, setting, m_keyGesture);
}

void PlanView::make(const RowAction& action) {
    jobfile::Tree after = m_document.tree();
    action.make(after);
    m_document.replace(std::move(after), action.spoken);
    if (!action.opens.empty())
        Q_EMIT added(action.opens);
}

QMenu* PlanView::menuAt(QPointF at) {
    if (m_view == View::Bent)
        return nullptr;
    const shape::Point p = m_transform.toPlate(at);
    const Grab grab = grabAt(m_shape, p, reachMm());
    auto* menu = new QMenu(this);
    menu->setAttribute(Qt::WA_DeleteOnClose);
    if (const auto action = removal(m_document, m_shape, grab))
        connect(menu->addAction(action->words), &QAction::triggered, this,
                [this, action = *action] { make(action); });
    for (const auto& action : additions(m_document, m_shape, p, reachMm(), m_units, m_snapMm))
        connect(menu->addAction(action.words), &QAction::triggered, this, [this, action] { make(action); });
    return menu;
}

void PlanView::contextMenuEvent(QContextMenuEvent* event) {
    QPointF at = event->pos();
    // By the menu key: at what is selected, or in the middle of what is seen.
    if (event->reason() == QContextMenuEvent::Keyboard)
        at = m_selected && isPlace(m_selected.part) && isOneOfMany(m_selected.part)
                 ? m_transform.toScreen(settingOf(m_shape, m_selected).place)
                 : QRectF(rect()).center();
    if (QMenu* menu = menuAt(at))
        menu->popup(mapToGlobal(at.toPoint()));
}

void PlanView::focusInEvent(QFocusEvent* event) {
    m_byKeyboard = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    update();
}

void PlanView::focusOutEvent(QFocusEvent*) {
    m_keyGesture = 0;
    m_selected = {};
    update();
}

void PlanView::leaveEvent(QEvent*) {
    m_hover = {};
    update();
}

bool PlanView::event(QEvent* event) {
    // F and the arrows are the plan's own while it has the keyboard.
    if (event->type() == QEvent::ShortcutOverride) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_F && key->modifiers() == Qt::NoModifier) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

} // namespace pw::gui
