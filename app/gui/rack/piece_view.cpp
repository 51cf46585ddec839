#include "app/gui/rack/piece_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/models/job_rows.h"
#include "app/gui/models/piece_tree.h"
#include "app/gui/models/sentence.h"
#include "app/gui/views/plan_handles.h"
#include "app/gui/views/stock_picture.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

namespace pw::gui {

namespace {

constexpr double kReachPx = 14;

} // namespace

PieceView::PieceView(QWidget* parent) : QWidget(parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleName(tr("The piece, to scale"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&Look::now(), &Look::changed, this, [this] {
        fit();
        update();
    });
}

QSize PieceView::sizeHint() const {
    return {Look::now().px(360), Look::now().px(300)};
}

QSize PieceView::minimumSizeHint() const {
    return {Look::now().px(160), Look::now().px(140)};
}

void PieceView::setPiece(RackDocument* rack, std::size_t row) {
    if (m_rack)
        disconnect(m_rack, nullptr, this, nullptr);
    m_rack = rack;
    m_row = row;
    m_picked = m_dragged = -1;
    m_litPart = PlanPart::None;
    m_trouble.clear();
    if (m_rack)
        connect(m_rack, &RackDocument::changed, this, &PieceView::refresh);
    refresh();
    fit();
}

void PieceView::setUnits(units::System system) {
    m_units = system;
    say();
    update();
}

void PieceView::light(PlanPart part, std::size_t index) {
    m_litPart = part;
    m_litIndex = index;
    update();
}

void PieceView::refresh() {
    m_handles.clear();
    if (!m_rack || !m_rack->piece(m_row)) {
        m_picture = {};
        return update();
    }
    const std::string at = RackDocument::pathOf(m_row);
    const jobfile::Tree& tree = m_rack->tree();
    const auto& offcuts = m_rack->reading()->rack.offcuts;
    const auto offcut = std::ranges::find(offcuts, m_row, &rack::Offcut::row);
    rack::Offcut shown;
    if (offcut != offcuts.end())
        shown = *offcut;
    else
        shown.outline =
            outlineAt(tree, at); // some figure of it is wrong or missing yet: its shape all the same
    placement::BuiltStock built = placement::buildStock(shown);
    if (built.problems.empty())
        m_picture.stock = std::move(built.stock);
    const std::string corners = at + ".outline.points";
    if (textAt(tree, at + ".outline.shape") == "polygon")
        for (std::size_t i = 0; i < std::min(shown.outline.points.size(), rowCount(tree, corners)); ++i) {
            const jobfile::Tree* typed = tree.at(rowPath(corners, i));
            m_handles.push_back({PlanPart::Corner, i, shown.outline.points[i].at,
                                 rowPath(corners, i) + (typed->members() ? ".at" : "")});
        }
    for (std::size_t i = 0; i < rowCount(tree, at + ".holes"); ++i) {
        const std::string path = rowPath(at + ".holes", i) + ".at";
        const auto x = mmOf(tree.at(path + "[0]")), y = mmOf(tree.at(path + "[1]"));
        if (x && y)
            m_handles.push_back({PlanPart::Extra, i, {*x, *y}, path});
    }
    if (m_picked >= static_cast<int>(m_handles.size()))
        m_picked = -1;
    if (m_dragged < 0)
        fit();
    say();
    update();
}

void PieceView::fit() {
    if (m_picture.stock.rim.size() < 2)
        return;
    const double edge = Look::now().pxF(34);
    m_transform = PlanTransform::fit(shape::bounds(m_picture.stock.rim),
                                     QRectF(rect()).adjusted(edge, edge, -edge, -edge - Look::now().pxF(24)));
}

void PieceView::say() {
    if (m_picture.stock.rim.size() < 2)
        return setAccessibleDescription({});
    const shape::Box box = shape::bounds(m_picture.stock.rim);
    QString words = tr("%1 × %2").arg(local(units::show(units::Length::fromMm(box.width()), m_units)),
                                      local(units::show(units::Length::fromMm(box.height()), m_units)));
    if (m_picked >= 0) {
        const Handle& handle = m_handles[static_cast<std::size_t>(m_picked)];
        const QString name = handle.part == PlanPart::Corner ? tr("Corner %1").arg(handle.index + 1)
                                                             : tr("Hole %1").arg(handle.index + 1);
        const shape::Point zero =
            m_rack ? zeroOf(m_rack->tree(), RackDocument::pathOf(m_row)) : shape::Point{};
        words = tr("%1 at %2, %3")
                    .arg(name, shortLength(handle.at.x - zero.x, m_units),
                         shortLength(handle.at.y - zero.y, m_units));
    }
    setAccessibleDescription(words);
}

void PieceView::resizeEvent(QResizeEvent*) {
    fit();
}

int PieceView::handleAt(QPointF at) const {
    int best = -1;
    double nearest = Look::now().pxF(kReachPx);
    for (std::size_t i = 0; i < m_handles.size(); ++i) {
        const QPointF by = m_transform.toScreen(m_handles[i].at) - at;
        const double away = std::hypot(by.x(), by.y());
        if (away < nearest) {
            nearest = away;
            best = static_cast<int>(i);
        }
    }
    return best;
}

void PieceView::pick(int handle) {
    m_picked = handle;
    m_gesture = 0;
    say();
    update();
    if (handle >= 0)
        Q_EMIT picked(m_handles[static_cast<std::size_t>(handle)].part,
                      m_handles[static_cast<std::size_t>(handle)].index);
}

void PieceView::move(int handle, shape::Point to, int gesture) {
    if (!m_rack || handle < 0 || handle >= static_cast<int>(m_handles.size()))
        return;
    const Handle& moved = m_handles[static_cast<std::size_t>(handle)];
    jobfile::Tree after = m_rack->tree();
    after.set(moved.path + "[0]", typedMm(to.x, m_units));
    after.set(moved.path + "[1]", typedMm(to.y, m_units));
    // A corner goes no further than the piece stays one: the last good place counts.
    const auto objection = m_rack->objectionTo(after, RackDocument::pathOf(m_row) + ".outline");
    m_trouble = objection ? asSentence(objection->toStdString()) : QString();
    if (objection)
        return update();
    m_rack->replace(std::move(after),
                    moved.part == PlanPart::Corner ? tr("Move corner %1").arg(moved.index + 1)
                                                   : tr("Move hole %1").arg(moved.index + 1),
                    moved.path, gesture);
}

void PieceView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    const int handle = handleAt(event->position());
    pick(handle);
    if (handle < 0 || !m_rack)
        return;
    m_dragged = handle;
    m_gesture = m_rack->newGesture();
    m_grabbedAt = m_transform.toPlate(event->position());
    m_before = m_handles[static_cast<std::size_t>(handle)].at;
}

void PieceView::mouseMoveEvent(QMouseEvent* event) {
    if (m_dragged < 0)
        return setCursor(handleAt(event->position()) >= 0 ? Qt::SizeAllCursor : Qt::ArrowCursor);
    const bool fine = event->modifiers() & Qt::ShiftModifier;
    move(m_dragged,
         draggedPlace(m_grabbedAt, m_transform.toPlate(event->position()), m_before, m_units, fine, m_snapMm),
         m_gesture);
}

void PieceView::mouseReleaseEvent(QMouseEvent*) {
    if (m_dragged < 0)
        return;
    m_dragged = -1;
    m_gesture = 0;
    m_trouble.clear();
    fit();
    if (m_rack)
        m_rack->write(); // the drag is done
    update();
}

void PieceView::keyPressEvent(QKeyEvent* event) {
    int right = 0, up = 0;
    switch (event->key()) {
    case Qt::Key_Left:
        right = -1;
        break;
    case Qt::Key_Right:
        right = 1;
        break;
    case Qt::Key_Up:
        up = 1;
        break;
    case Qt::Key_Down:
        up = -1;
        break;
    default:
        return QWidget::keyPressEvent(event);
    }
    if (m_picked < 0)
        return pick(m_handles.empty() ? -1 : 0);
    if (m_gesture == 0 && m_rack)
        m_gesture = m_rack->newGesture(); // presses in a row on one handle are one step of undo
    const bool fine = event->modifiers() & Qt::ShiftModifier;
    move(m_picked,
         steppedPlace(m_handles[static_cast<std::size_t>(m_picked)].at, right, up, m_units, fine, m_snapMm),
         m_gesture);
}

void PieceView::focusInEvent(QFocusEvent* event) {
    if (event->reason() == Qt::TabFocusReason && !m_handles.empty())
        pick(0);
    else if (event->reason() == Qt::BacktabFocusReason && !m_handles.empty())
        pick(static_cast<int>(m_handles.size()) - 1);
    update();
}

void PieceView::focusOutEvent(QFocusEvent*) {
    m_picked = -1;
    m_gesture = 0;
    m_trouble.clear();
    update();
}

bool PieceView::focusNextPrevChild(bool next) {
    const int to = m_picked + (next ? 1 : -1);
    if (m_picked >= 0 && to >= 0 && to < static_cast<int>(m_handles.size())) {
        pick(to);
        return true;
    }
    return QWidget::focusNextPrevChild(next);
}

void PieceView::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), c.ground);
    painter.setFont(look.font(Type::Label));
    if (m_picture.stock.rim.size() < 2) {
        painter.setPen(c.muted);
        drawWrapped(painter,
                    wrapText(tr("The piece is drawn here when its size is known."), painter.font(),
                             width() - look.pxF(32)),
                    {look.pxF(16), look.pxF(16)});
        return;
    }
    paintStock(painter, m_picture, m_transform);
    // What is being typed in, in touch blue.
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.touch, 2.4));
    if (m_litPart == PlanPart::Rim)
        painter.drawPath(loopPath(m_picture.stock.rim, m_transform));
    for (const placement::Obstacle& thing : m_picture.stock.obstacles)
        if (thing.index == m_litIndex && ((thing.isHole && m_litPart == PlanPart::Extra) ||
                                          (!thing.isHole && m_litPart == PlanPart::Obstacle)))
            painter.drawPath(loopPath(thing.loop, m_transform));
    for (std::size_t i = 0; i < m_handles.size(); ++i) {
        const Handle& handle = m_handles[i];
        const QPointF at = m_transform.toScreen(handle.at);
        const bool hot =
            static_cast<int>(i) == m_picked ||
            (handle.part == m_litPart && handle.index == m_litIndex && handle.part == PlanPart::Corner);
        const double r = look.pxF(hot ? 7 : 5);
        painter.setPen(QPen(c.touch, 2));
        painter.setBrush(hot ? c.touch : c.field);
        painter.drawEllipse(at, r, r);
    }
    const shape::Box box = shape::bounds(m_picture.stock.rim);
    QString words = m_picked >= 0 || m_dragged >= 0
                        ? accessibleDescription()
                        : tr("%1 × %2").arg(local(units::show(units::Length::fromMm(box.width()), m_units)),
                                            local(units::show(units::Length::fromMm(box.height()), m_units)));
    if (!m_trouble.isEmpty())
        words = m_trouble;
    painter.setPen(m_picked >= 0 ? c.touch : c.ink);
    painter.setFont(look.font(m_picked >= 0 ? Type::LabelBold : Type::Label));
    drawLine(painter, QRectF(look.pxF(12), height() - look.pxF(30), width() - look.pxF(24), look.pxF(24)),
             Qt::AlignHCenter, words);
    if (hasFocus() && m_picked < 0)
        drawFocusRing(painter, rect(), look.pxF(3));
}

} // namespace pw::gui
