#include "app/gui/panels/lower_strip.h"

#include "app/engine/rack.h"
#include "app/gui/models/field_text.h"
#include "app/gui/views/curve_view.h"
#include "app/gui/views/ladder_view.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <QPainter>

namespace pw::gui {

namespace {

/// The engine's ladder needs every figure but the thickness.
bool canHaveLadder(const engine::Report& report) {
    return report.problems.empty() && std::ranges::all_of(report.missing, [](const engine::Missing& missing) {
               return missing.field == "plate.thickness";
           });
}

} // namespace

LowerStrip::LowerStrip(Document& document, LadderFunction ladder, QWidget* parent)
    : QWidget(parent), m_document(document), m_finder(new LadderFinder(std::move(ladder), this)),
      m_section(new SectionView(this)), m_curve(new CurveView(this)),
      m_ladder(new LadderView(this)), m_panes{m_section, m_curve, m_ladder},
      m_two(new Segments({tr("Section"), tr("Load")}, tr("What stands at the left of the strip"), this)),
      m_three(new Segments({tr("Section"), tr("Load"), tr("Ladder")}, tr("What the strip shows"), this)),
      m_fold(new WordButton(tr("Fold"), WordButton::Style::Flat, this)) {
    m_fold->setOpens(true);
    m_fold->setCheckable(true); // its chevron turns
    m_fold->setAccessibleName(tr("Fold the lower strip"));
    m_two->setTight(true, 3);
    m_three->setTight(true, 3);
    connect(&m_document, &Document::changed, this, &LowerStrip::jobChanged);
    const auto choose = [this](int pane) {
        m_chosen = pane;
        relayout();
    };
    connect(m_two, &Segments::chosen, this, choose);
    connect(m_three, &Segments::chosen, this, choose);
    connect(m_fold, &QAbstractButton::clicked, this, [this] { Q_EMIT foldAsked(!m_folded); });
    connect(m_ladder, &LadderView::picked, this, [this](const QString& label) {
        m_document.edit("plate.thickness", label.toStdString(), tr("Thickness"));
    });
    connect(m_finder, &LadderFinder::found, this, [this](std::shared_ptr<const engine::Ladder> found) {
        m_found = std::move(found);
        showLadder();
    });
    connect(m_finder, &LadderFinder::failed, m_ladder, &LadderView::setTrouble);
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        relayout();
    });
    setTabOrder(m_two, m_three);
    setTabOrder(m_three, m_section->slider());
    setTabOrder(m_section->slider(), m_curve);
    setTabOrder(m_curve, m_ladder);
    setTabOrder(m_ladder, m_fold);
    jobChanged();
}

void LowerStrip::setUnits(units::System system) {
    m_units = system;
    m_section->setUnits(system);
    m_curve->setUnits(system);
    m_ladder->setUnits(system);
}

job::Job LowerStrip::question() const {
    job::Job job = m_document.job();
    job.preferred = m_units; // whose stock is shown
    return job;
}

void LowerStrip::jobChanged() {
    m_section->setJob(m_document.job());
    m_ladder->setThickness(m_document.job().plate.thickness);
    m_finder->overtake(question());
}

void LowerStrip::setReport(std::shared_ptr<const engine::Report> report) {
    m_section->setReport(report);
    m_curve->setReport(report);
    if (!report)
        return;
    if (!canHaveLadder(*report)) {
        m_finder->forget();
        m_ladder->setTrouble(report->reason.empty() ? QString() : local(report->reason));
        return;
    }
    m_finder->ask(question());
    m_ladder->setBusy(m_finder->isBusy());
}

void LowerStrip::setRack(std::shared_ptr<const rack::RackReading> rack) {
    m_rack = std::move(rack);
    if (m_found && m_ladder->ladder()) // one that is not shown has a trouble in its place
        showLadder();
}

void LowerStrip::showLadder() {
    if (!m_found || !m_rack)
        return m_ladder->setLadder(m_found);
    auto marked = std::make_shared<engine::Ladder>(*m_found);
    engine::markOnRack(*marked, *m_rack);
    m_ladder->setLadder(std::move(marked));
}

void LowerStrip::showLoad(bool load) {
    if (m_chosen == Ladder && panesWide() == 1 && !load)
        return;
    m_chosen = load ? Load : Section;
    relayout();
}

void LowerStrip::setFolded(bool folded) {
    m_folded = folded;
    m_fold->setChecked(folded);
    m_fold->setText(folded ? tr("Open") : tr("Fold"));
    m_fold->setAccessibleName(folded ? tr("Open the lower strip") : tr("Fold the lower strip"));
    for (auto* pane : m_panes)
        pane->setFolded(folded);
    updateGeometry();
    relayout();
}

int LowerStrip::panesWide() const {
    const double design = width() / Look::now().scale();
    return design < 560 ? 1 : design < 1120 || m_folded ? 2 : 3;
}

void LowerStrip::place(const std::vector<int>& panes, const QRect& area, int headLeft, int headTop) {
    // The ladder needs its dozen rungs side by side before the others need more.
    std::vector<double> share;
    double sum = 0;
    for (const int pane : panes) {
        share.push_back(panes.size() == 2 ? (pane == Ladder ? 0.48 : 0.52) : pane == Load ? 0.3 : 0.35);
        sum += share.back();
    }
    int x = area.left();
    for (std::size_t i = 0; i < panes.size(); ++i) {
        const bool last = i + 1 == panes.size();
        const int wide = last ? area.right() + 1 - x : static_cast<int>(area.width() * share[i] / sum);
        auto* pane = m_panes[static_cast<std::size_t>(panes[i])];
        const bool foldHere = last && (panes.size() > 1 || m_folded);
        pane->setHeadRoom(i == 0 ? headLeft : 0, foldHere ? m_fold->width() + Look::now().px(8) : 0,
                          i == 0 ? headTop : 0);
        pane->setGeometry(x, area.top(), wide, area.height());
        pane->show();
        x += wide;
        if (!last)
            m_rules.push_back(x);
    }
}

void LowerStrip::relayout() {
    const Look& look = Look::now();
    m_rules.clear();
    const int count = panesWide();
    std::vector<int> panes;
    if (count == 3)
        panes = {Section, Load, Ladder};
    else if (count == 2)
        panes = {m_chosen == Load && !m_folded ? Load : Section, Ladder};
    else // a folded curve shows nothing
        panes = {m_chosen == Load && m_folded ? Section : m_chosen};
    for (int i = 0; i < 3; ++i)
        if (std::ranges::find(panes, i) == panes.end())
            m_panes[static_cast<std::size_t>(i)]->hide();

    m_two->setCurrent(m_chosen == Load ? Load : Section);
    m_three->setCurrent(m_chosen);
    m_two->setVisible(count == 2 && !m_folded);
    m_three->setVisible(count == 1 && !m_folded);
    m_fold->resize(m_fold->sizeHint().width(), look.px(30));
    for (auto* segments : {m_two, m_three}) {
        segments->resize(segments->sizeHint());
        segments->move(look.px(12), look.px(3));
    }
    const bool alone = count == 1 && !m_folded;
    const int beside = m_three->width() + m_fold->width() + look.px(24);
    const int below = alone && beside > width() ? m_three->height() + look.px(2) : 0;
    const int headLeft = m_folded          ? 0
                         : count == 2      ? m_two->geometry().right()
                         : alone && !below ? m_three->geometry().right()
                                           : 0;
    place(panes, rect().adjusted(0, 1, 0, 0), headLeft, below);
    m_fold->move(width() - m_fold->width() - look.px(6),
                 m_folded ? (height() - m_fold->height()) / 2 : below + look.px(4));
    if (alone)
        m_panes[static_cast<std::size_t>(m_chosen)]->setHeadRoom(headLeft, m_fold->width() + look.px(8),
                                                                 below);
    for (QWidget* over :
         {static_cast<QWidget*>(m_two), static_cast<QWidget*>(m_three), static_cast<QWidget*>(m_fold)})
        over->raise();
    update();
}

QSize LowerStrip::sizeHint() const {
    return {Look::now().px(720), Look::now().px(m_folded ? 64 : 236)};
}

QSize LowerStrip::minimumSizeHint() const {
    return {Look::now().px(200), Look::now().px(m_folded ? 64 : 180)};
}

void LowerStrip::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
    painter.setPen(QPen(c.rule, 1));
    painter.drawLine(0, 0, width(), 0);
}

} // namespace pw::gui
