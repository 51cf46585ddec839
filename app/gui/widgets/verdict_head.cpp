#include "app/gui/widgets/verdict_head.h"

#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/plain_tip.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_mark.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

// Two lines are the rule; more beat losing the end of a reason, where there is room for them.
constexpr int kReasonLines = 4, kCompactLines = 2, kAheadLines = 5;

} // namespace

QString verdictWord(verdict::Grade grade) {
    switch (grade) {
    case verdict::Grade::Holds:
        return VerdictHead::tr("holds");
    case verdict::Grade::Thin:
        return VerdictHead::tr("thin");
    case verdict::Grade::Sets:
        return VerdictHead::tr("sets");
    case verdict::Grade::Breaks:
        return VerdictHead::tr("breaks");
    case verdict::Grade::Incomplete:
        break;
    }
    return VerdictHead::tr("incomplete");
}

VerdictHead::VerdictHead(QWidget* parent) : QWidget(parent) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    m_fade.setStartValue(0.0);
    m_fade.setEndValue(1.0);
    m_fade.setDuration(150);
    connect(&m_fade, &QVariantAnimation::valueChanged, this, qOverload<>(&QWidget::update));
    connect(&Look::now(), &Look::changed, this, [this] {
        updateGeometry();
        update();
    });
}

void VerdictHead::setVerdict(verdict::Grade grade, const QString& reason) {
    if (grade != m_grade) {
        m_from = Look::now().colours().of(m_grade).fill;
        m_grade = grade;
        if (!Look::now().lessMotion() && isVisible())
            m_fade.start();
    }
    m_reason = reason;
    setAccessibleName(tr("Verdict: %1. %2").arg(verdictWord(grade), reason));
    setToolTip(plainTip(reason));
    updateGeometry();
    update();
}

void VerdictHead::setBusy(double done, const QString& what) {
    m_done = done;
    m_what = what;
    if (!isBusy() && !m_ahead.isEmpty()) {
        m_ahead.clear();
        updateGeometry();
    }
    update();
}

void VerdictHead::setAhead(const QString& words) {
    if (m_ahead == words)
        return;
    m_ahead = words;
    if (!words.isEmpty() && !isBusy())
        m_done = 0;
    updateGeometry();
    update();
}

QString VerdictHead::busyWords() const {
    const QString what = tr("%1, %2\u00a0%")
                             .arg(m_what.isEmpty() ? tr("Working it out") : m_what)
                             .arg(std::lround(m_done * 100));
    return m_ahead.isEmpty() ? what : m_ahead + QLatin1Char('\n') + what;
}

void VerdictHead::setCompact(bool compact) {
    if (compact == m_compact)
        return;
    m_compact = compact;
    updateGeometry();
    update();
}

double VerdictHead::topHeight() const {
    return Look::now().pxF(m_compact ? 46 : 68);
}

int VerdictHead::heightForWidth(int width) const {
    const Look& look = Look::now();
    const bool ahead = !m_ahead.isEmpty();
    const auto text =
        wrapText(ahead ? busyWords() : m_reason, look.font(Type::Sentence), width - look.pxF(32),
                 ahead       ? kAheadLines
                 : m_compact ? kCompactLines
                             : kReasonLines);
    return static_cast<int>(
        std::ceil(topHeight() + std::max(text.height(), m_compact ? 0 : 2 * text.lead) + look.pxF(12)));
}

QSize VerdictHead::sizeHint() const {
    return {Look::now().px(330), heightForWidth(Look::now().px(330))};
}

QSize VerdictHead::minimumSizeHint() const {
    return {Look::now().px(180), Look::now().px(100)};
}

void VerdictHead::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const VerdictColours& v = c.of(m_grade);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool fading = m_fade.state() == QAbstractAnimation::Running;
    painter.fillRect(rect(), c.panel);
    if (isBusy())
        painter.setOpacity(0.6);
    if (m_grade == verdict::Grade::Incomplete) {
        QPen pen(v.text, 1.6, Qt::CustomDashLine);
        pen.setDashPattern({6, 4});
        pen.setCapStyle(Qt::FlatCap);
        painter.setPen(pen);
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(6, 6, -6, -6));
    } else {
        painter.fillRect(rect(), fading ? mixed(m_from, v.fill, m_fade.currentValue().toDouble()) : v.fill);
    }

    const double left = look.pxF(16), mark = look.pxF(m_compact ? 44 : 72);
    const QRectF line(left, look.pxF(m_compact ? 4 : 8), width() - 2 * left,
                      topHeight() - look.pxF(m_compact ? 4 : 8));
    drawVerdictMark(painter, QRectF(left, line.top() + look.pxF(2), mark, line.height()), m_grade, v.onFill);
    QFont word = look.font(Type::Verdict);
    if (m_compact)
        word.setPixelSize(look.px(30));
    const double room = width() - left - mark - look.pxF(18 + 16);
    const double wants = QFontMetricsF(word).horizontalAdvance(verdictWord(m_grade));
    if (wants > room) // a long word in a narrow column gets smaller rather than cut
        word.setPixelSize(std::max(look.px(20), static_cast<int>(word.pixelSize() * room / wants)));
    painter.setFont(word);
    painter.setPen(v.onFill);
    drawLine(painter, QRectF(left + mark + look.pxF(18), line.top(), room, line.height()), Qt::AlignLeft,
             verdictWord(m_grade));

    const QColor ink = m_grade == verdict::Grade::Incomplete ? c.ink : v.onFill;
    painter.setPen(ink);
    painter.setFont(look.font(Type::Sentence));
    const double inner = width() - 2 * left;
    if (!isBusy()) {
        drawWrapped(painter,
                    wrapText(m_reason, painter.font(), inner, m_compact ? kCompactLines : kReasonLines),
                    {left, topHeight()});
        return;
    }
    painter.setOpacity(1);
    drawWrapped(painter, wrapText(busyWords(), painter.font(), inner, m_ahead.isEmpty() ? 2 : kAheadLines),
                {left, topHeight()});
    const QRectF foot(0, height() - look.pxF(4), width(), look.pxF(4));
    painter.fillRect(foot, mixed(m_grade == verdict::Grade::Incomplete ? c.panel : v.fill, ink, 0.25));
    painter.fillRect(
        QRectF(foot.left(), foot.top(), foot.width() * std::clamp(m_done, 0.0, 1.0), foot.height()), ink);
}

} // namespace pw::gui
