#include "app/gui/panels/stage.h"

#include "app/gui/panels/lower_strip.h"
#include "app/gui/settings/settings.h"
#include "app/gui/views/bent_view.h"
#include "app/gui/views/curve_view.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <QResizeEvent>

namespace pw::gui {

namespace {

/// The strip folds by itself in a window lower than this (design px). A bar that comes and goes over the
/// columns does not count.
constexpr double kFoldsUnder = 740;
/// The strip takes more of a tall window, until its pictures are as large as is of use.
constexpr double kStripShare = 236.0 / (768 - 48), kStripMost = 460;
constexpr double kPlanLeast = 0.5; ///< of the height

} // namespace

Stage::Stage(Document& document, LadderFunction ladder, QWidget* parent)
    : QSplitter(Qt::Vertical, parent), m_plan(new PlanView(document, this)),
      m_strip(new LowerStrip(document, std::move(ladder), this)) {
    addWidget(m_plan);
    addWidget(m_strip);
    setHandleWidth(1);
    setChildrenCollapsible(false);
    setStretchFactor(0, 1);
    setStretchFactor(1, 0);
    m_height = settings::stripHeight();
    m_asked = settings::stripFolded();
    connect(m_strip, &LowerStrip::foldAsked, this, [this](bool folded) {
        m_asked = folded;
        fold(folded);
    });
    connect(m_plan, &PlanView::viewChanged, m_strip,
            [this](PlanView::View view) { m_strip->showLoad(view == PlanView::View::Bent); });
    connect(m_strip->curve(), &CurveView::factorChanged, m_plan->bent(), [this](double factor) {
        m_plan->bent()->setLoad(factor, m_strip->curve()->curve().bendShare(factor));
    });
    connect(this, &QSplitter::splitterMoved, this, [this] {
        if (!m_strip->isFolded())
            m_height = static_cast<int>(m_strip->height() / Look::now().scale());
    });
    connect(&Look::now(), &Look::changed, this, &Stage::settle);
    settle();
}

void Stage::setUnits(units::System system) {
    m_plan->setUnits(system);
    m_strip->setUnits(system);
}

void Stage::setReport(std::shared_ptr<const engine::Report> report) {
    m_plan->setReport(report);
    m_strip->setReport(std::move(report));
}

void Stage::remember() const {
    settings::setStrip(m_height, m_asked);
}

void Stage::fold(bool folded) {
    m_strip->setFolded(folded);
    const Look& look = Look::now();
    int wanted = look.px(64);
    if (folded) {
        m_strip->setFixedHeight(wanted);
    } else {
        m_strip->setMinimumHeight(look.px(180));
        m_strip->setMaximumHeight(QWIDGETSIZE_MAX);
        const double share = std::clamp(height() * kStripShare, look.pxF(236), look.pxF(kStripMost));
        wanted = m_height > 0 ? look.px(m_height) : static_cast<int>(share);
        // Opened in a low window it takes what the plan can spare, and the plan keeps what it can be read in.
        wanted = std::clamp(wanted, look.px(180),
                            std::max(look.px(180), static_cast<int>(height() * (1 - kPlanLeast))));
    }
    setSizes({std::max(height() - wanted - 1, 0), wanted});
}

void Stage::settle() {
    const double design = window()->height() / Look::now().scale();
    fold(m_asked.value_or(design < kFoldsUnder));
}

void Stage::resizeEvent(QResizeEvent* event) {
    QSplitter::resizeEvent(event);
    if (event->size().height() != event->oldSize().height())
        settle();
}

} // namespace pw::gui
