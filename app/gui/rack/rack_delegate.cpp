#include "app/gui/rack/rack_delegate.h"

#include "app/gui/views/stock_picture.h"
#include "app/gui/widgets/colour.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/verdict_mark.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

constexpr double kPictureWide = 150, kPictureHigh = 90, kRowHigh = 110, kMendHigh = 62, kHeadHigh = 38;
constexpr double kNarrowHigh = 138, kVerdictWide = 118, kSide = 16, kLead = 19.5;

} // namespace

QSizeF RackDelegate::pictureSize() {
    return {Look::now().pxF(kPictureWide), Look::now().pxF(kPictureHigh)};
}

QSize RackDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    const auto* model = qobject_cast<const RackModel*>(index.model());
    const RackRow* row = model ? model->rowAt(index) : nullptr;
    const double high = !row ? 0
                        : row->kind == RackRow::Kind::Piece
                            ? (m_narrow && row->ranked && row->fits ? kNarrowHigh : kRowHigh)
                        : row->kind == RackRow::Kind::Mend ? kMendHigh
                                                           : kHeadHigh;
    return {Look::now().px(300), Look::now().px(high)};
}

void RackDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const {
    const auto* model = qobject_cast<const RackModel*>(index.model());
    const RackRow* row = model ? model->rowAt(index) : nullptr;
    if (!row)
        return;
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const QRectF all(option.rect);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setClipRect(all);
    const double side = look.pxF(kSide);
    if (row->kind == RackRow::Kind::Heading) {
        painter->setFont(look.font(Type::Title));
        painter->setPen(c.ink);
        drawLine(*painter, all.adjusted(side, look.pxF(8), -side, 0), Qt::AlignLeft, row->title);
        painter->restore();
        return;
    }
    const bool picked = option.state & QStyle::State_Selected;
    const QRectF card = all.adjusted(look.pxF(8), look.pxF(2), -look.pxF(12), -look.pxF(2));
    painter->setPen(picked ? QPen(c.touch, 2) : QPen(c.rule, 1));
    painter->setBrush(picked ? c.touchSoft : c.panel);
    painter->drawRoundedRect(card.adjusted(1, 1, -1, -1), look.pxF(5), look.pxF(5));
    if (row->row == m_under) // it lies under the plan
        painter->fillRect(
            QRectF(card.left() + 1, card.top() + look.pxF(6), look.pxF(4), card.height() - look.pxF(12)),
            c.touch);

    if (m_stale && row->ranked)
        painter->setOpacity(0.6);
    const double wide = m_narrow ? kPictureWide * 0.72 : kPictureWide;
    const QRectF picture(card.left() + look.pxF(10), card.top() + look.pxF(8),
                         std::min(look.pxF(wide), card.width() * 0.3), card.height() - look.pxF(16));
    const bool isMend = row->kind == RackRow::Kind::Mend;
    if (!isMend) {
        painter->fillRect(picture, c.ground);
        paintStockIn(*painter, row->picture, picture.adjusted(2, 2, -2, -2), m_scale);
    }
    QRectF words = card.adjusted(0, look.pxF(6), -look.pxF(12), -look.pxF(4));
    words.setLeft(isMend ? card.left() + look.pxF(12) : picture.right() + look.pxF(14));
    if (row->ranked && row->fits && !m_narrow) {
        const double left = words.right() - look.pxF(kVerdictWide), mid = card.center().y();
        paintVerdict(*painter, *row, QRectF(left, mid - look.pxF(30), look.pxF(kVerdictWide), look.pxF(26)),
                     QRectF(left, mid + look.pxF(2), look.pxF(kVerdictWide), look.pxF(26)));
        words.setRight(left - look.pxF(12));
    } else if (row->ranked && row->fits) {
        const double top = words.top() + look.pxF(kLead + 2), half = words.width() * 0.45;
        paintVerdict(*painter, *row, QRectF(words.left(), top, half, look.pxF(26)),
                     QRectF(words.left() + half, top, words.width() - half, look.pxF(26)));
    }
    paintWords(*painter, *row, words);
    painter->restore();
}

void RackDelegate::paintWords(QPainter& painter, const RackRow& row, const QRectF& box) const {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    double y = box.top();
    const auto line = [&](Type type, const QColor& colour, const QString& words) {
        if (words.isEmpty() || y + look.pxF(kLead) > box.bottom() + 2)
            return;
        painter.setFont(look.font(type));
        painter.setPen(colour);
        drawLine(painter, QRectF(box.left(), y, box.width(), look.pxF(kLead)), Qt::AlignLeft, words);
        y += look.pxF(kLead);
    };
    QString title = row.title;
    if (row.row == m_under)
        title = tr("%1, under the plan", "a piece of the rack").arg(title);
    line(Type::RowBold, c.ink, title);
    y += look.pxF(m_narrow && row.ranked && row.fits ? 28 : 2);
    // Where it lies stands with what it is when both fit, else on a line of its own.
    const QString both = row.measured.isEmpty() || row.where.isEmpty()
                             ? row.measured + row.where
                             : tr("%1; %2", "what a piece is; where it lies").arg(row.measured, row.where);
    if (QFontMetricsF(look.font(Type::Label)).horizontalAdvance(both) <= box.width()) {
        line(Type::Label, c.ink, both);
    } else {
        line(Type::Label, c.ink, row.measured);
        line(Type::Label, c.ink, row.where);
    }
    const auto wrapped = [&](const QColor& colour, const QString& words) {
        const int lines = static_cast<int>((box.bottom() + 2 - y) / look.pxF(kLead));
        if (lines <= 0 || words.isEmpty())
            return;
        if (lines == 1)
            return line(Type::Label, colour, words);
        painter.setFont(look.font(Type::Label));
        painter.setPen(colour);
        const WrappedText text = wrapText(words, painter.font(), box.width(), std::min(lines, 2));
        drawWrapped(painter, text, {box.left(), y});
        y += text.height();
    };
    wrapped(c.ink, row.figures);
    QStringList more = row.remarks;
    if (!row.said.isEmpty())
        more.prepend(row.said);
    wrapped(row.said.isEmpty() ? c.muted : c.ink, more.join(QLatin1Char(' ')));
}

void RackDelegate::paintVerdict(QPainter& painter, const RackRow& row, const QRectF& mark,
                                const QRectF& bar) const {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const VerdictColours& v = c.of(row.grade);
    drawVerdictMark(painter, QRectF(mark.left(), mark.top(), look.pxF(22), mark.height()), row.grade, v.text);
    painter.setFont(look.font(Type::RowBold));
    painter.setPen(c.ink);
    drawLine(painter, mark.adjusted(look.pxF(30), 0, 0, 0), Qt::AlignLeft, verdictWord(row.grade));
    if (!row.margin)
        return;
    const double wide = std::min(look.pxF(62), bar.width() * 0.4), high = look.pxF(10);
    const QRectF track(bar.left(), bar.center().y() - high / 2, wide, high);
    painter.setPen(Qt::NoPen);
    painter.setBrush(mixed(c.panel, c.rule, 0.55));
    painter.drawRoundedRect(track, 2, 2);
    const double share = std::clamp(*row.margin / 2, 0.0, 1.0);
    if (share > 0) {
        // A thin bar in light is too near the panel to stand without an edge.
        if (row.grade == verdict::Grade::Thin && c.tone == Tone::Light)
            painter.setPen(QPen(v.text, 1));
        painter.setBrush(row.grade == verdict::Grade::Incomplete ? c.strongRule : v.fill);
        painter.drawRoundedRect(QRectF(track.left(), track.top(), std::max(wide * share, 3.0), high), 2, 2);
    }
    if (*row.margin > 2) {
        QPen pen(v.onFill, 1.8);
        pen.setCapStyle(Qt::RoundCap);
        painter.setPen(pen);
        const double x = track.right() - look.pxF(7), m = track.center().y(), s = look.pxF(3);
        painter.drawPolyline(QPolygonF{QPointF(x, m - s), QPointF(x + s, m), QPointF(x, m + s)});
    }
    painter.fillRect(QRectF(track.center().x() - 1, track.center().y() - look.pxF(10), 2, look.pxF(20)),
                     c.ink);
    painter.setFont(look.font(Type::RowBold));
    painter.setPen(c.ink);
    drawLine(painter,
             QRectF(track.right() + look.pxF(6), bar.top(), bar.right() - track.right() - look.pxF(6),
                    bar.height()),
             Qt::AlignLeft, timesWanted(*row.margin), false);
}

} // namespace pw::gui
