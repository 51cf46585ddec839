#include "app/gui/models/field_text.h"
#include "app/gui/views/ladder_view.h"
#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_mark.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

// How the ladder is drawn; what it does is in ladder_view.cpp.
namespace pw::gui {

struct LadderView::Rows {
    QRectF plot;            ///< marks stand on or hang from its middle
    QRectF label;           ///< the thicknesses
    QRectF rack;            ///< empty when nothing is on the rack
    QRectF set, mass;       ///< figures
    QRectF setBar, massBar; ///< empty where there is no room for bars
};

LadderView::Rows LadderView::rows() const {
    const Look& look = Look::now();
    QRectF box = body();
    Rows rows;
    const auto fromBottom = [&](double high) {
        QRectF row(box.left(), box.bottom() - high, box.width(), high);
        box.setBottom(row.top());
        return row;
    };
    if (isFolded()) {
        rows.label = fromBottom(look.pxF(24));
        rows.plot = box;
        return rows;
    }
    const bool bars = height() >= look.pxF(330);
    rows.mass = fromBottom(look.pxF(20));
    if (bars)
        rows.massBar = fromBottom(look.pxF(38));
    rows.set = fromBottom(look.pxF(20));
    if (bars)
        rows.setBar = fromBottom(look.pxF(38));
    const bool rack = m_ladder && std::ranges::any_of(m_ladder->rungs, &engine::Rung::onRack);
    if (rack)
        rows.rack = fromBottom(look.pxF(20));
    rows.label = fromBottom(look.pxF(26));
    rows.plot = box;
    return rows;
}

void LadderView::paintEvent(QPaintEvent*) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), c.panel);
    paintHead(painter, headWords(), c.ink);
    if (!m_ladder) {
        paintEmpty(painter, !m_trouble.isEmpty() ? m_trouble
                            : m_busy             ? tr("Working out every stock thickness…")
                                                 : tr("Comes when the figures it needs are there."));
    } else {
        const Rows rows = this->rows();
        paintColumns(painter, rows);
        if (m_busy)
            painter.setOpacity(0.6);
        paintPlot(painter, rows);
        paintRows(painter, rows);
        painter.setOpacity(1);
        if (!isFolded())
            paintMore(painter, rows);
    }
    if (hasFocus() && m_byKeyboard && !m_ladder)
        drawFocusRing(painter, rect(), look.pxF(3));
}

/// Where a word fits between two marks: over those that hang, under the line where they stand, at the foot
/// where one does this and the other that.
double LadderView::roomBeside(double place, const Rows& rows) const {
    const Look& look = Look::now();
    const int last = static_cast<int>(m_ladder->rungs.size()) - 1;
    bool stands = false, hangs = false;
    for (const double step :
         {std::floor(place) - 1, std::floor(place), std::ceil(place), std::ceil(place) + 1})
        if (const auto height = step < 0 || step > last
                                    ? std::nullopt
                                    : markHeight(m_ladder->rungs[static_cast<std::size_t>(step)]))
            (*height >= 0 ? stands : hangs) = true;
    if (!stands)
        return rows.plot.top();
    return hangs ? rows.plot.bottom() - look.pxF(18) : rows.plot.center().y() + look.pxF(3);
}

void LadderView::paintColumns(QPainter& painter, const Rows& rows) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double bottom = std::max(rows.label.bottom(), rows.mass.bottom());
    const auto column = [&](int rung) {
        return QRectF(m_layout.middleOf(rung) - m_layout.pitch / 2, rows.plot.top(), m_layout.pitch,
                      bottom - rows.plot.top());
    };
    const int now = m_thickness ? rungOf(*m_ladder, *m_thickness) : -1;
    if (now >= 0 && m_layout.shows(now)) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(c.touchSoft);
        painter.drawRoundedRect(column(now), look.pxF(5), look.pxF(5));
    } else if (m_thickness && now < 0) {
        // Between two rungs, or beyond them.
        const double at = placeAmong(*m_ladder, *m_thickness);
        const double x = m_layout.middleOf(0) + at * m_layout.pitch;
        if (x >= m_layout.left && x <= m_layout.left + m_layout.count * m_layout.pitch) {
            QPen pen(c.touch, look.pxF(1.6));
            pen.setDashPattern({4, 3});
            painter.setPen(pen);
            painter.drawLine(QPointF(x, rows.plot.top() + look.pxF(18)), QPointF(x, rows.plot.bottom()));
            painter.setFont(look.font(Type::LabelBold));
            const QString words = tr("now %1").arg(local(units::show(*m_thickness, m_units)));
            const double wide = QFontMetricsF(painter.font()).horizontalAdvance(words);
            const double left = std::clamp(x - wide / 2, m_layout.left, body().right() - wide);
            painter.setPen(c.touch);
            drawLine(painter, QRectF(left, roomBeside(at, rows), wide + 1, look.pxF(18)), Qt::AlignLeft,
                     words, false);
        }
    }
    if (m_looked >= 0 && m_layout.shows(m_looked)) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(c.touch, hasFocus() && m_byKeyboard ? 2 : 1));
        painter.drawRoundedRect(column(m_looked).adjusted(1, 1, -1, -1), look.pxF(5), look.pxF(5));
    }
}

double LadderView::markWidth() const {
    return std::min(Look::now().pxF(24), m_layout.pitch * 0.62);
}

void LadderView::paintPlot(QPainter& painter, const Rows& rows) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double mark = markWidth();
    const double line = rows.plot.center().y();
    const double reach = rows.plot.height() / 2 - mark * 0.42;
    const double right = m_layout.left + m_layout.count * m_layout.pitch;
    if (!isFolded()) {
        painter.setFont(look.font(Type::Label));
        const bool named = rows.plot.height() > look.pxF(150);
        for (const auto& [times, words] :
             {std::pair(4.0, QStringLiteral("4 ×")), std::pair(2.0, QStringLiteral("2 ×")),
              std::pair(0.5, QStringLiteral("½ ×")), std::pair(0.25, QStringLiteral("¼ ×"))}) {
            const double y = line - reach * ladderHeight(times);
            painter.setPen(QPen(c.rule, 1));
            painter.drawLine(QPointF(m_layout.left, y), QPointF(right, y));
            painter.setPen(c.muted);
            if (named)
                drawLine(painter, QRectF(rows.plot.left(), y - look.pxF(10), look.pxF(44), look.pxF(20)),
                         Qt::AlignRight, words, false);
        }
        painter.setPen(QPen(c.ink, look.pxF(1.6)));
        painter.drawLine(QPointF(m_layout.left, line), QPointF(right, line));
        painter.setPen(c.ink);
        painter.setFont(look.font(named ? Type::LabelBold : Type::Label));
        drawLine(painter,
                 QRectF(rows.plot.left() - look.pxF(6), line - look.pxF(10), look.pxF(54), look.pxF(20)),
                 Qt::AlignLeft, tr("wanted"), false);
    }
    for (int i = m_layout.first; i < m_layout.first + m_layout.count; ++i) {
        const auto& rung = m_ladder->rungs[static_cast<std::size_t>(i)];
        const QColor colour = c.of(rung.grade).text;
        const double x = m_layout.middleOf(i);
        if (isFolded()) {
            drawVerdictMark(painter, QRectF(x - mark / 2, rows.plot.top(), mark, rows.plot.height()),
                            rung.grade, colour);
            continue;
        }
        const auto height = markHeight(rung);
        if (!height) {
            drawVerdictMark(painter, QRectF(x - mark / 2, line + look.pxF(6), mark, mark), rung.grade,
                            colour);
            continue;
        }
        // The mark stands on the end of its stem, or hangs from it: it never lies across the line.
        const double half = mark * 0.21, up = reach * *height;
        const double side = rung.grade == verdict::Grade::Holds ? 1 : -1;
        const double y = line - side * std::max(std::abs(up), half + look.pxF(4));
        painter.setPen(QPen(colour, look.pxF(2.4), Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(x, line - side), QPointF(x, y + side * half));
        drawVerdictMark(painter, QRectF(x - mark / 2, y - mark / 2, mark, mark), rung.grade, colour);
    }
}

void LadderView::paintRows(QPainter& painter, const Rows& rows) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const bool inch = m_units == units::System::Inch;
    const int now = m_thickness ? rungOf(*m_ladder, *m_thickness) : -1;
    // The rungs' own unit: a ladder found before the preference changed stays in the one it was found in.
    const bool inchRungs = !m_ladder->rungs.empty() && m_ladder->rungs.front().label.ends_with("in");
    const auto title = [&](const QRectF& row, const QString& words) {
        painter.setFont(look.font(Type::Label));
        painter.setPen(c.muted);
        drawLine(painter,
                 QRectF(row.left() - look.pxF(6), row.top(), m_layout.left - row.left(), row.height()),
                 Qt::AlignLeft, words, false);
    };
    title(rows.label, inchRungs ? tr("in") : tr("mm"));
    if (!rows.rack.isEmpty())
        title(rows.rack, tr("rack"));
    if (!rows.set.isEmpty()) {
        title(rows.set, inch ? tr("set, in") : tr("set, mm"));
        title(rows.mass, inch ? tr("lb") : tr("kg"));
    }
    const auto figure = [&](const engine::Found<double>& value, double unit, double step) {
        if (!value)
            return QStringLiteral("?");
        return local(units::number(std::round(*value / unit / step) * step, 3));
    };
    // As large as every shown label allows.
    Type type = Type::Label;
    for (const Type larger : {Type::Value, Type::Title}) {
        const QFontMetricsF metrics(look.font(larger));
        bool fits = true;
        for (int i = m_layout.first; i < m_layout.first + m_layout.count; ++i)
            fits =
                fits && metrics.horizontalAdvance(shortLabel(m_ladder->rungs[static_cast<std::size_t>(i)])) <=
                            m_layout.pitch - look.pxF(8);
        if (fits) {
            type = larger;
            break;
        }
    }
    for (int i = m_layout.first; i < m_layout.first + m_layout.count; ++i) {
        const auto& rung = m_ladder->rungs[static_cast<std::size_t>(i)];
        const auto cell = [&](const QRectF& row) {
            return QRectF(m_layout.middleOf(i) - m_layout.pitch / 2, row.top(), m_layout.pitch, row.height());
        };
        painter.setPen(c.ink);
        QFont font = look.font(type);
        font.setBold(i == now);
        painter.setFont(font);
        drawLine(painter, cell(rows.label), Qt::AlignHCenter, shortLabel(rung), false);
        painter.setFont(look.font(Type::Label));
        painter.setPen(c.muted);
        if (!rows.rack.isEmpty())
            drawLine(painter, cell(rows.rack), Qt::AlignHCenter, rung.onRack ? tr("have") : tr("buy"), false);
        if (rows.set.isEmpty())
            continue;
        const double lengthUnit = inch ? units::kMmPerInch : 1;
        const bool sets = rung.setMm && *rung.setMm / lengthUnit >= (inch ? 0.0005 : 0.005);
        painter.setPen(sets ? c.ink : c.muted);
        drawLine(painter, cell(rows.set), Qt::AlignHCenter,
                 figure(rung.setMm, lengthUnit, inch ? 0.001 : 0.01), false);
        painter.setPen(c.muted);
        drawLine(painter, cell(rows.mass), Qt::AlignHCenter,
                 figure(rung.massKg, inch ? units::kKgPerPound : 1, 0.1), false);
    }
    if (!rows.setBar.isEmpty()) {
        paintBars(painter, rows.setBar.top(), rows.setBar.bottom(), true);
        paintBars(painter, rows.massBar.top(), rows.massBar.bottom(), false);
    }
}

void LadderView::paintBars(QPainter& painter, double top, double bottom, bool set) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    double most = 0;
    for (const auto& rung : m_ladder->rungs)
        // A plate that folds has no set worth drawing: it would press all others flat.
        if (const auto& value = set ? rung.setMm : rung.massKg; value && rung.grade != verdict::Grade::Breaks)
            most = std::max(most, *value);
    painter.setPen(QPen(c.strongRule, 1));
    painter.drawLine(QPointF(m_layout.left, bottom),
                     QPointF(m_layout.left + m_layout.count * m_layout.pitch, bottom));
    if (most <= (set ? 0.005 : 0))
        return;
    const double wide = m_layout.pitch * 0.5, high = bottom - top - look.pxF(8);
    painter.setPen(Qt::NoPen);
    for (int i = m_layout.first; i < m_layout.first + m_layout.count; ++i) {
        const auto& rung = m_ladder->rungs[static_cast<std::size_t>(i)];
        const auto& value = set ? rung.setMm : rung.massKg;
        if (!value)
            continue;
        const double share = std::min(*value / most, 1.0);
        painter.setBrush(set ? c.sets.text : mixed(c.panel, c.strongRule, 0.6));
        painter.drawRect(QRectF(m_layout.middleOf(i) - wide / 2, bottom - share * high, wide, share * high));
    }
}

bool LadderView::isClear(const QRectF& box, const Rows& rows) const {
    const double line = rows.plot.center().y(), mark = markWidth();
    for (int i = m_layout.first; i < m_layout.first + m_layout.count; ++i) {
        const auto& rung = m_ladder->rungs[static_cast<std::size_t>(i)];
        const double x = m_layout.middleOf(i);
        if (x + mark / 2 < box.left() || x - mark / 2 > box.right())
            continue;
        const double end = line - markHeight(rung).value_or(-0.3) * rows.plot.height() / 2;
        if (std::min(line, end) - mark / 2 < box.bottom() && std::max(line, end) + mark / 2 > box.top())
            return false;
    }
    return true;
}

void LadderView::paintMore(QPainter& painter, const Rows& rows) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const int now = m_thickness ? rungOf(*m_ladder, *m_thickness) : -1;
    const QRectF plot = rows.plot;
    const double left = m_layout.left, right = m_layout.left + m_layout.count * m_layout.pitch;
    painter.setFont(look.font(Type::Label));
    const QFontMetricsF metrics(painter.font());
    // Over marks that hang and under those that stand there is room for words.
    const auto say = [&](const QString& words, bool leftFirst, const QColor& colour) {
        const WrappedText text = wrapText(words, painter.font(), right - left - look.pxF(8), 2, 1.25);
        double wide = 0;
        for (const auto& line : text.lines)
            wide = std::max(wide, metrics.horizontalAdvance(line));
        QRectF best;
        for (const bool atLeft : {leftFirst, !leftFirst})
            for (const bool atTop : {true, false}) {
                const QRectF box(atLeft ? left + look.pxF(2) : right - wide - look.pxF(4),
                                 atTop ? plot.top() : plot.bottom() - text.height() - look.pxF(2), wide,
                                 text.height());
                if (best.isNull() || (!isClear(best, rows) && isClear(box, rows)))
                    best = box;
            }
        painter.setPen(Qt::NoPen);
        QColor ground = c.panel;
        ground.setAlphaF(0.85F);
        painter.setBrush(ground);
        painter.drawRect(best.adjusted(-2, 0, 2, 0));
        painter.setPen(colour);
        drawWrapped(painter, text, best.topLeft());
        return best;
    };
    m_thinner = m_thicker = QRectF();
    if (m_looked >= 0 && m_looked != now) {
        say(reasonOf(m_looked), true, c.ink);
        return;
    }
    const int thinner = m_layout.first, thicker = m_layout.all - m_layout.first - m_layout.count;
    if (thinner > 0 && !(m_thickness && now < 0))
        m_thinner = say(tr("%1 thinner").arg(thinner), true, c.touch);
    if (thicker > 0)
        m_thicker = say(tr("%1 thicker").arg(thicker), false, c.touch);
}

} // namespace pw::gui
