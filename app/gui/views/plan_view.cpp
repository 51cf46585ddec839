#include "app/gui/views/plan_view.h"

#include "app/gui/views/bent_view.h"
#include "app/gui/views/plan_piece.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/stop_slider.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace pw::gui {

PlanView::PlanView(Document& document, QWidget* parent) : QWidget(parent), m_document(document) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Plan of the plate"));
    setAccessibleDescription(tr(
        "Tab goes from part to part, the arrow keys change or move it by one step, Delete takes it out, the "
        "menu key adds. F shows it all."));
    m_views =
        new Segments({tr("Plain"), tr("Stress"), tr("Deflection"), tr("Fit"), tr("Cut path"), tr("Bent")},
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

void PlanView::setPiece(std::shared_ptr<const placement::Stock> stock) {
    m_stock = std::move(stock);
    jobChanged();
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

void PlanView::light(PlanPart part, std::size_t row) {
    m_lit = {part, row};
    update();
}

void PlanView::showPlaces(std::vector<shape::Point> places) {
    m_places = std::move(places);
    update();
}

PlanShape PlanView::shapeOf(const job::Job& job) const {
    std::optional<double> tapped;
    if (m_report && m_report->region)
        for (const auto& hole : m_report->region->holes)
            if (hole.part == shape::Part::Bore)
                if (const auto circle = shape::asCircle(hole.loop))
                    tapped = 2 * circle->radius;
    PlanShape shape = planShape(job, job.plate.boreThread.empty() ? std::nullopt : tapped);
    if (m_stock && job.piece)
        shape.piece = pieceUnderPlate(*m_stock, *job.piece);
    return shape;
}

void PlanView::jobChanged() {
    m_shape = shapeOf(m_document.job());
    if (m_drag && m_drag->pending)
        m_shape = shapeOf(withSetting(m_document.job(), m_shape, m_drag->grab, *m_drag->pending));
    if (!m_drag)
        keepInView();
    update();
}

void PlanView::takePending() {
    if (!m_drag || !m_drag->pending)
        return;
    const Setting setting = *std::exchange(m_drag->pending, std::nullopt);
    change(m_drag->grab, setting, m_drag->gesture);
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
    m_views->setTight(false, 6);
    if (m_views->sizeHint().width() > room)
        m_views->setTight(true, 6);
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
    settleCut();
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

} // namespace pw::gui
