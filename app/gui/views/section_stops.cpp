#include "app/gui/models/field_text.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/text_block.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

// What stands under the slider of the section: its stops, what runs out at each, the turns between them.
namespace pw::gui {

struct SectionView::Stop {
    double place = 0;
    QString name, figure, below;
    QColor belowColour;
    bool isHere = false;
};

std::vector<SectionView::Stop> SectionView::stops() const {
    const Palette& c = Look::now().colours();
    const double at = m_travel.squeezedPlace();
    std::vector<Stop> stops;
    const auto add = [&](double place, const QString& name) {
        const StackState s = stateAt(m_travel, place);
        Stop stop{place, name, {}, {}, c.ink, std::abs(place - m_slider->place()) < 0.002};
        stop.figure = length(m_travel.isPull ? units::Length::fromMm(m_travel.squeeze - s.towardsHub)
                                             : s.springLength.value_or(units::Length()));
        if (place == at && s.shortOfSolid && !m_travel.isPull) {
            const bool solid = s.coils == spring::Coils::Solid, tight = s.coils == spring::Coils::Tight;
            stop.below = solid   ? tr("solid before that")
                         : tight ? tr("tight, %1 to solid").arg(length(*s.shortOfSolid))
                                 : tr("%1 short of solid").arg(length(*s.shortOfSolid));
            stop.belowColour = solid ? c.breaks.text : tight ? c.thin.text : c.ink;
        } else if (place == 1 && s.threadLeft) {
            const bool ends = s.threadLeft->mm() < 0;
            stop.below = ends ? tr("thread ends %1 too soon").arg(length(-*s.threadLeft))
                              : tr("%1 of thread left").arg(length(*s.threadLeft));
            stop.belowColour = ends ? c.breaks.text : c.ink;
        }
        stops.push_back(stop);
    };
    if (m_travel.isPull)
        add(0, tr("seated"));
    else if (at > 0)
        add(0, tr("assembled"));
    if (!m_travel.isPull)
        add(at, tr("squeezed"));
    if (m_travel.release)
        add(1, m_travel.isPull ? tr("off") : tr("free"));
    return stops;
}

void SectionView::paintStops(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const QRectF box = body();
    if (!m_travel.moves()) {
        painter.setFont(look.font(Type::Label));
        painter.setPen(c.muted);
        drawWrapped(painter, wrapText(sentence(), painter.font(), box.width(), isTall() ? 4 : 2),
                    {box.left(), m_slider->y() + look.pxF(4)});
        return;
    }
    const double y = m_slider->geometry().bottom() + 1;
    const auto stops = this->stops();
    const auto fontOf = [&](const Stop& stop) {
        return look.font(stop.isHere ? Type::LabelBold : Type::Label);
    };
    const auto boxFor = [&](const Stop& stop, double wide, double top) {
        const double x = m_slider->x() + m_slider->xOf(stop.place);
        const double left = std::clamp(x - wide / 2, box.left(), std::max(box.left(), box.right() - wide));
        return QRectF(left, top, wide + 1, look.pxF(20));
    };
    // Name and figure where they have room beside one another; else without the unit; else the figures.
    const auto texts = [&](int brief) {
        QStringList all;
        for (const Stop& stop : stops)
            all << (brief == 2   ? stop.figure
                    : brief == 1 ? stop.name + QLatin1Char(' ') + stop.figure.section(QChar(0xA0), 0, 0)
                                 : stop.name + QLatin1Char(' ') + stop.figure);
        return all;
    };
    const auto fit = [&](const QStringList& all) {
        double last = box.left() - look.pxF(8);
        for (std::size_t i = 0; i < stops.size(); ++i) {
            const double wide =
                QFontMetricsF(fontOf(stops[i])).horizontalAdvance(all[static_cast<qsizetype>(i)]);
            const QRectF place = boxFor(stops[i], wide, y);
            if (place.left() < last + look.pxF(8))
                return false;
            last = place.right();
        }
        return true;
    };
    int brief = 0;
    while (brief < 3 && !fit(texts(brief)))
        ++brief;
    if (brief == 3) {
        // Not even those: only where it stands now.
        Stop now;
        now.place = m_slider->place();
        const QString words = m_state.springLength ? length(*m_state.springLength) : QString();
        painter.setFont(look.font(Type::LabelBold));
        painter.setPen(c.touch);
        drawLine(painter, boxFor(now, QFontMetricsF(painter.font()).horizontalAdvance(words), y),
                 Qt::AlignLeft, words, false);
        return;
    }
    const QStringList all = texts(brief);
    double last = box.left();
    for (std::size_t i = 0; i < stops.size(); ++i) {
        const Stop& stop = stops[i];
        const QString& words = all[static_cast<qsizetype>(i)];
        painter.setFont(fontOf(stop));
        painter.setPen(stop.isHere ? c.touch : isTall() ? c.ink : c.muted);
        drawLine(painter, boxFor(stop, QFontMetricsF(painter.font()).horizontalAdvance(words), y),
                 Qt::AlignLeft, words, false);
        if (!isTall() || stop.below.isEmpty())
            continue;
        painter.setFont(look.font(Type::Label));
        painter.setPen(stop.belowColour);
        const double wide = QFontMetricsF(painter.font()).horizontalAdvance(stop.below);
        const QRectF place = boxFor(stop, wide, y + look.pxF(20));
        if (place.left() >= last)
            drawLine(painter, place, Qt::AlignLeft, stop.below, false);
        last = place.right() + look.pxF(8);
    }
    if (isTall())
        paintTurns(painter);
}

void SectionView::paintTurns(QPainter& painter) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setFont(look.font(Type::Label));
    painter.setPen(c.muted);
    const double at = m_travel.squeezedPlace();
    const auto between = [&](double from, double to, const QString& words) {
        const StackState s = stateAt(m_travel, to);
        if (!s.turns || *s.turns < 0.05 || to - from < 0.2)
            return;
        const double a = m_slider->x() + m_slider->xOf(from), b = m_slider->x() + m_slider->xOf(to);
        drawLine(painter, QRectF(a, m_slider->y() - look.pxF(18), b - a, look.pxF(18)), Qt::AlignHCenter,
                 words.arg(turnWords(*s.turns)));
    };
    between(0, at, QStringLiteral("%1"));
    if (m_travel.release)
        between(at, 1, tr("%1 back"));
    painter.setPen(c.ink);
    drawLine(
        painter,
        QRectF(body().left(), m_slider->geometry().bottom() + look.pxF(42), body().width(), look.pxF(20)),
        Qt::AlignLeft, sentence());
}

} // namespace pw::gui
