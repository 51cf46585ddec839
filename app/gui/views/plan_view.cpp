#include "app/gui/views/plan_view.h"

#include "app/gui/views/bent_view.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/stop_slider.h"

#include <algorithm>
#include <cmath>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>
#include <utility>

namespace pw::gui {

namespace {

constexpr double kReachPx = 9; ///< how near the cursor must come to an edge to grab it

QString labelOf(PlanPart part) {
    switch (part) {
    case PlanPart::Rim:
        return PlanView::tr("Plate across");
    case PlanPart::RimLength:
        return PlanView::tr("Plate length");
    case PlanPart::RimWidth:
        return PlanView::tr("Plate width");
    case PlanPart::Bore:
        return PlanView::tr("Bore");
    case PlanPart::Circle:
        return PlanView::tr("Pin circle");
    case PlanPart::Access:
        return PlanView::tr("Access holes");
    case PlanPart::Start:
        return PlanView::tr("First station's angle");
    default:
        return {};
    }
}

} // namespace

PlanView::PlanView(Document& document, QWidget* parent) : QWidget(parent), m_document(document) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Plan of the plate"));
    setAccessibleDescription(
        tr("Tab goes from part to part, the arrow keys change it by one step, F shows it all."));
    m_views = new Segments({tr("Plain"), tr("Stress"), tr("Deflection"), tr("Fit"), tr("Bent")},
                           tr("What the plan shows"), this);
    m_bent = new BentView(this);
    m_bent->hide();
    setTabOrder(m_views, m_bent);
    setTabOrder(m_bent, m_bent->slider());
    connect(m_views, &Segments::chosen, this, [this](int index) { setView(static_cast<View>(index)); });
    connect(&m_document, &Document::changed, this, &PlanView::jobChanged);
    connect(&Look::now(), &Look::changed, this, [this] {
        settleViews();
        if (!m_moved)
            fit();
        update();
    });
    jobChanged();
}

void PlanView::setUnits(units::System system) {
    m_units = system;
    settleField();
    showBent();
    update();
}

void PlanView::setReport(std::shared_ptr<const engine::Report> report) {
    m_report = std::move(report);
    jobChanged(); // a tapped bore's size comes with the report
    settleField();
    showBent();
    update();
}

void PlanView::setView(View view) {
    m_view = view;
    m_views->setCurrent(static_cast<int>(view));
    const bool bent = view == View::Bent;
    // Whoever had the keyboard on the plate keeps it there.
    const bool toBent = bent && hasFocus(), toPlan = !bent && m_bent->hasFocus();
    m_bent->setVisible(bent);
    m_views->raise();
    // What lies under the bent plate cannot be reached.
    setFocusPolicy(bent ? Qt::NoFocus : Qt::StrongFocus);
    if (toBent)
        m_bent->setFocus();
    else if (toPlan)
        setFocus();
    if (bent)
        showBent();
    settleField();
    if (!m_moved)
        fit();
    update();
    Q_EMIT viewChanged(view);
}

void PlanView::showBent() {
    // Only while it is seen: its shape costs more than a drag leaves time for.
    if (m_view != View::Bent)
        return;
    m_bent->setUnits(m_units);
    m_bent->setReport(m_report, m_document.job());
}

void PlanView::light(PlanPart part) {
    m_lit = part;
    update();
}

void PlanView::showPlaces(std::vector<shape::Point> places) {
    m_places = std::move(places);
    update();
}

void PlanView::jobChanged() {
    std::optional<double> tapped;
    if (m_report && m_report->region)
        for (const auto& hole : m_report->region->holes)
            if (hole.part == shape::Part::Bore)
                if (const auto circle = shape::asCircle(hole.loop))
                    tapped = 2 * circle->radius;
    m_shape = planShape(m_document.job(), m_document.job().plate.boreThread.empty() ? std::nullopt : tapped);
    if (m_drag && m_drag->pending)
        m_shape = planShape(withFigure(m_document.job(), m_drag->grab.part, *m_drag->pending));
    if (!m_drag)
        keepInView();
    update();
}

void PlanView::takePending() {
    if (!m_drag || !m_drag->pending)
        return;
    const double value = *std::exchange(m_drag->pending, std::nullopt);
    change(m_drag->grab.part, value, m_drag->gesture);
}

void PlanView::keepInView() {
    if (m_moved)
        return;
    const PlanTransform fitted = PlanTransform::fit(m_shape.bounds(), sheet());
    if (fitted.scale < m_transform.scale * 0.98 || fitted.scale > m_transform.scale * 1.3)
        m_transform = fitted;
}

QRectF PlanView::sheet() const {
    const Look& look = Look::now();
    const bool overlay = m_view == View::Stress || m_view == View::Deflection;
    const double side = std::min(look.pxF(112), width() * 0.26);
    QRectF sheet =
        QRectF(rect()).adjusted(overlay ? look.pxF(20) : side, m_views->geometry().bottom() + look.pxF(28),
                                -(overlay ? std::min(look.pxF(176), width() * 0.3) : side), -look.pxF(44));
    if (sheet.width() < 60 || sheet.height() < 60)
        sheet = QRectF(rect()).adjusted(10, 10, -10, -10);
    return sheet;
}

void PlanView::fit() {
    m_transform = PlanTransform::fit(m_shape.bounds(), sheet());
    m_moved = false;
    update();
}

void PlanView::resizeEvent(QResizeEvent*) {
    settleViews();
    if (!m_moved)
        fit();
}

void PlanView::settleViews() {
    // The row of words gets tight, then two rows, before it is cut.
    const int room = width() - Look::now().px(20);
    m_views->setTight(false, 5);
    if (m_views->sizeHint().width() > room)
        m_views->setTight(true, 5);
    for (const int row : {3, 2})
        if (m_views->sizeHint().width() > room)
            m_views->setTight(true, row);
    m_views->resize(m_views->sizeHint());
    m_views->move(Look::now().px(12), Look::now().px(8));
    m_bent->setGeometry(rect());
    m_bent->setHead(m_views->geometry());
}

void PlanView::settleField() {
    const auto picture = m_report ? m_report->picture : nullptr;
    m_ligaments.clear();
    if (m_view == View::Fit && m_report && m_report->region) {
        m_ligaments = outline::ligaments(*m_report->region);
        // One of each kind: by symmetry the others are the same.
        std::vector<outline::Ligament> kinds;
        for (const auto& ligament : m_ligaments) {
            // Between two edges with a hole in between there is no ligament to speak of.
            bool inSteel = true;
            for (const double t : {0.2, 0.35, 0.5, 0.65, 0.8})
                inSteel = inSteel && shape::containsMaterial(
                                         *m_report->region, ligament.onA + t * (ligament.onB - ligament.onA));
            if (!inSteel)
                continue;
            const bool known = std::ranges::any_of(kinds, [&](const outline::Ligament& k) {
                return (k.a == ligament.a && k.b == ligament.b) || (k.a == ligament.b && k.b == ligament.a);
            });
            if (!known && kinds.size() < 4)
                kinds.push_back(ligament);
        }
        m_ligaments = std::move(kinds);
    }
    m_scale = {};
    if (m_view == View::Stress && picture && picture->vonMises.size() > 0) {
        m_scale = stressScale(*m_report, m_document.job(), m_units);
        m_layer.set(picture, FieldLayer::What::Stress, m_scale.top, m_scale.yield);
    } else if (m_view == View::Deflection && picture && picture->deflection.size() > 0) {
        m_scale = deflectionScale(*m_report, m_units);
        m_layer.set(picture, FieldLayer::What::Deflection, m_scale.top, 0);
    } else {
        m_layer.set(nullptr, FieldLayer::What::Stress, 0, 0);
    }
}

void PlanView::change(PlanPart part, double value, int gesture) {
    m_document.edit(pathOf(part), typedFigure(part, value, m_units), labelOf(part), gesture);
}

void PlanView::drag(QPointF to, bool fine) {
    if (!m_drag->moved && (to - m_drag->pressedAt).manhattanLength() < 3)
        return;
    m_drag->moved = true;
    // Against the shape as it was when it was grabbed: stations move with the ring.
    const double value = dragged(m_shape, m_drag->grab, m_drag->from, m_transform.toPlate(to), m_drag->before,
                                 m_units, fine, m_snapMm);
    if (std::abs(value - figureOf(m_shape, m_drag->grab.part)) > 1e-9) {
        m_drag->pending = value;
        m_shape = planShape(withFigure(m_document.job(), m_drag->grab.part, value));
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
    const Grab grab = event->button() == Qt::LeftButton
                          ? grabAt(m_shape, p, Look::now().pxF(kReachPx) / m_transform.scale)
                          : Grab{};
    if (grab) {
        m_drag = Drag{grab, p, figureOf(m_shape, grab.part), m_document.newGesture(), false, at};
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
        const Grab hover =
            grabAt(m_shape, m_transform.toPlate(at), Look::now().pxF(kReachPx) / m_transform.scale);
        if (!(hover == m_hover)) {
            m_hover = hover;
            setCursor(hover ? Qt::PointingHandCursor : Qt::ArrowCursor);
            update();
        }
    }
}

void PlanView::mouseReleaseEvent(QMouseEvent*) {
    if (m_drag) {
        const PlanPart part = m_drag->grab.part;
        const bool moved = m_drag->moved;
        takePending();
        m_drag.reset();
        if (moved)
            keepInView();
        else
            Q_EMIT picked(part);
    }
    m_pan.reset();
    setCursor(m_hover ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void PlanView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (grabAt(m_shape, m_transform.toPlate(event->position()),
               Look::now().pxF(kReachPx) / m_transform.scale))
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
    setAccessibleDescription(grab ? tr("%1: arrow keys change it").arg(labelOf(grab.part)) : QString());
    if (grab)
        Q_EMIT picked(grab.part);
    update();
}

bool PlanView::focusNextPrevChild(bool next) {
    // Tab goes through the parts of the plate before it leaves the plan.
    if (!hasFocus())
        return QWidget::focusNextPrevChild(next);
    const auto all = grabs(m_shape);
    std::ptrdiff_t at = -1;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (m_selected && all[i].part == m_selected.part)
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
    int direction = 0;
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
    case Qt::Key_Up:
    case Qt::Key_Right:
        direction = 1;
        break;
    case Qt::Key_Down:
    case Qt::Key_Left:
        direction = -1;
        break;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    if (!m_selected) {
        const auto all = grabs(m_shape);
        if (!all.empty())
            select(direction > 0 ? all.front() : all.back());
        return;
    }
    // Presses in a row on one part are one step of undo.
    if (m_keyGesture == 0)
        m_keyGesture = m_document.newGesture();
    change(m_selected.part,
           stepped(m_selected.part, figureOf(m_shape, m_selected.part), direction, m_units, fine, m_snapMm),
           m_keyGesture);
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
