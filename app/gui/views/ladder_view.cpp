#include "app/gui/views/ladder_view.h"

#include "app/gui/models/field_text.h"
#include "app/gui/widgets/plain_tip.h"
#include "app/gui/widgets/verdict_head.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

// What the ladder does; how it is drawn is in ladder_paint.cpp.
namespace pw::gui {

LadderView::LadderView(QWidget* parent) : StripPane(tr("Thickness ladder"), parent) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setAccessibleDescription(tr("Left and right go from thickness to thickness, Enter takes one."));
}

void LadderView::setUnits(units::System system) {
    m_units = system;
    update();
}

void LadderView::setThickness(std::optional<units::Length> thickness) {
    if (thickness == m_thickness)
        return;
    m_thickness = thickness;
    if (m_ladder && m_looked < 0)
        m_layout = m_layout.showing(focusOf(*m_ladder, m_thickness));
    update();
}

void LadderView::setLadder(std::shared_ptr<const engine::Ladder> ladder) {
    const bool alike = ladder && m_ladder && ladder->rungs.size() == m_ladder->rungs.size();
    m_ladder = std::move(ladder);
    m_busy = false;
    m_trouble.clear();
    if (!alike) {
        m_looked = -1;
        fitRungs();
    }
    update();
}

void LadderView::setBusy(bool busy) {
    m_busy = busy;
    update();
}

void LadderView::setTrouble(const QString& words) {
    m_ladder.reset();
    m_busy = false;
    m_trouble = words;
    m_looked = -1;
    update();
}

int LadderView::lookedAt() const {
    if (m_looked >= 0)
        return m_looked;
    return m_ladder && m_thickness ? rungOf(*m_ladder, *m_thickness) : -1;
}

QString LadderView::shortLabel(const engine::Rung& rung) const {
    QString label = local(units::shownText(rung.label));
    for (const char* unit : {" mm", " in", "\u00a0mm", "\u00a0in"})
        if (label.endsWith(QString::fromUtf8(unit)))
            label.chop(QString::fromUtf8(unit).size());
    return label;
}

QString LadderView::wordsOf(int index) const {
    if (!m_ladder || index < 0 || index >= static_cast<int>(m_ladder->rungs.size()))
        return {};
    QString words = gradeOf(index) + QStringLiteral(". ") + reasonOf(index);
    if (m_ladder->rungs[static_cast<std::size_t>(index)].onRack)
        words += QLatin1Char(' ') + tr("A piece this thick is on the rack.");
    return words;
}

QString LadderView::gradeOf(int index) const {
    const auto& rung = m_ladder->rungs[static_cast<std::size_t>(index)];
    const QString words = tr("%1: %2").arg(local(units::shownText(rung.label)), verdictWord(rung.grade));
    // Where something that has no margin spoils it, the weakest link's margin would mislead.
    if (!rung.marginOverWanted || (rung.grade != verdict::Grade::Holds && *rung.marginOverWanted >= 1))
        return words;
    return tr("%1, %2 × wanted").arg(words, local(units::number(*rung.marginOverWanted, 2)));
}

QString LadderView::reasonOf(int index) const {
    const auto& rung = m_ladder->rungs[static_cast<std::size_t>(index)];
    if (rung.grade != verdict::Grade::Holds && rung.marginOverWanted.value_or(0) >= 1)
        return tr("Not for want of strength, but for: %1.").arg(QString::fromStdString(rung.because));
    return rung.weakestTitle.empty()
               ? QString()
               : tr("First to give: %1.").arg(QString::fromStdString(rung.weakestTitle));
}

QString LadderView::headWords() const {
    if (!m_ladder)
        return {};
    if (m_busy)
        return tr("working it out");
    if (m_looked >= 0 && m_looked != (m_thickness ? rungOf(*m_ladder, *m_thickness) : -1))
        return gradeOf(m_looked);
    if (m_ladder->thinnestThatHolds.empty())
        return tr("none holds");
    const QString from = local(units::shownText(m_ladder->thinnestThatHolds));
    return width() > Look::now().pxF(460) ? tr("Thinnest that holds: %1").arg(from)
                                          : tr("holds from %1").arg(from);
}

void LadderView::relayout() {
    fitRungs();
}

void LadderView::fitRungs() {
    const int rungs = m_ladder ? static_cast<int>(m_ladder->rungs.size()) : 0;
    const Look& look = Look::now();
    const QRectF box = body();
    const int focus = m_looked >= 0 ? m_looked : m_ladder ? focusOf(*m_ladder, m_thickness) : 0;
    double least = look.pxF(35); // a mark and its air; fractions are wider
    const QFontMetricsF metrics(look.font(Type::LabelBold));
    for (int i = 0; i < rungs; ++i)
        least = std::max(least, look.pxF(8) + metrics.horizontalAdvance(
                                                  shortLabel(m_ladder->rungs[static_cast<std::size_t>(i)])));
    m_layout = LadderLayout::fit(rungs, focus, box.left() + look.pxF(isFolded() ? 34 : 50), box.right(),
                                 least, look.pxF(80));
}

void LadderView::lookAt(int rung) {
    if (!m_ladder)
        return;
    m_looked = std::clamp(rung, 0, static_cast<int>(m_ladder->rungs.size()) - 1);
    m_layout = m_layout.showing(m_looked);
    setAccessibleDescription(wordsOf(m_looked) + QLatin1Char(' ') + tr("Enter takes it."));
    setToolTip(plainTip(wordsOf(m_looked)));
    update();
}

void LadderView::take(int rung) {
    if (!m_ladder || rung < 0 || rung >= static_cast<int>(m_ladder->rungs.size()))
        return;
    Q_EMIT picked(QString::fromStdString(m_ladder->rungs[static_cast<std::size_t>(rung)].label));
}

void LadderView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    m_byKeyboard = false;
    const double x = event->position().x();
    for (const auto& [box, rung] :
         {std::pair(m_thinner, m_layout.first - 1), std::pair(m_thicker, m_layout.first + m_layout.count)})
        if (box.contains(event->position())) {
            m_layout = m_layout.showing(rung);
            m_layout =
                m_layout.showing(box == m_thinner ? std::max(0, rung - m_layout.count / 2)
                                                  : std::min(m_layout.all - 1, rung + m_layout.count / 2));
            update();
            return;
        }
    if (const int rung = m_layout.at(x); rung >= 0)
        take(rung);
}

void LadderView::mouseMoveEvent(QMouseEvent* event) {
    const bool scrolls = m_thinner.contains(event->position()) || m_thicker.contains(event->position());
    const int rung = scrolls ? -1 : m_layout.at(event->position().x());
    if (rung == m_looked && !scrolls)
        return;
    m_looked = rung;
    setCursor(rung >= 0 || scrolls ? Qt::PointingHandCursor : Qt::ArrowCursor);
    update();
}

void LadderView::leaveEvent(QEvent*) {
    if (!m_byKeyboard)
        m_looked = -1;
    update();
}

void LadderView::wheelEvent(QWheelEvent* event) {
    if (!m_ladder || m_layout.count >= m_layout.all)
        return;
    const auto turned = event->angleDelta();
    const int by = turned.x() + turned.y() > 0 ? -1 : 1;
    m_layout = m_layout.showing(by < 0 ? m_layout.first - 1 : m_layout.first + m_layout.count);
    event->accept();
    update();
}

void LadderView::keyPressEvent(QKeyEvent* event) {
    if (!m_ladder) {
        QWidget::keyPressEvent(event);
        return;
    }
    const int now = m_looked >= 0 ? m_looked : focusOf(*m_ladder, m_thickness);
    m_byKeyboard = true;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        lookAt(now - 1);
        break;
    case Qt::Key_Right:
    case Qt::Key_Up:
        lookAt(now + 1);
        break;
    case Qt::Key_Home:
        lookAt(0);
        break;
    case Qt::Key_End:
        lookAt(m_layout.all - 1);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
    case Qt::Key_Space:
        take(now);
        break;
    default:
        QWidget::keyPressEvent(event);
    }
}

void LadderView::focusInEvent(QFocusEvent* event) {
    m_byKeyboard = event->reason() == Qt::TabFocusReason || event->reason() == Qt::BacktabFocusReason;
    if (m_byKeyboard && m_ladder && m_looked < 0)
        lookAt(focusOf(*m_ladder, m_thickness));
    update();
}

void LadderView::focusOutEvent(QFocusEvent*) {
    m_byKeyboard = false;
    m_looked = -1;
    update();
}

} // namespace pw::gui
