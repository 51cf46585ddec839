#include "app/gui/propose/proposal_delegate.h"

#include "app/gui/models/rack_rows.h"
#include "app/gui/views/stock_picture.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/margin_bar.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/verdict_mark.h"
#include "app/gui/widgets/word_button.h"

#include <algorithm>
#include <cmath>
#include <QAbstractItemView>
#include <QPainter>
#include <QScrollBar>

namespace pw::gui {

namespace {

constexpr double kPicture = 112, kPictureNarrow = 84, kVerdictWide = 118, kNarrow = 520; // design px
constexpr double kPad = 10;

/// Where things stand on a card of this width.
struct Places {
    double picture, wordsLeft, wordsWide;

    explicit Places(double cardWide) {
        const Look& look = Look::now();
        picture = look.pxF(cardWide < look.pxF(kNarrow) ? kPictureNarrow : kPicture);
        wordsLeft = look.pxF(kPad) + picture + look.pxF(14);
        wordsWide = cardWide - wordsLeft - look.pxF(kVerdictWide + 2 * kPad);
    }
};

QRectF cardIn(const QRectF& all) {
    const Look& look = Look::now();
    return all.adjusted(look.pxF(8), look.pxF(2), -look.pxF(12), -look.pxF(2));
}

/// The words beside the picture, top down; draws them when there is a painter. Answers their height.
double paintWords(QPainter* painter, const ProposalRow& row, QPointF at, double wide) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    double y = 0;
    const auto text = [&](const QString& words, Type type, const QColor& colour) {
        if (words.isEmpty())
            return;
        const WrappedText wrapped = wrapText(words, look.font(type), wide);
        if (painter) {
            painter->setFont(look.font(type));
            painter->setPen(colour);
            drawWrapped(*painter, wrapped, at + QPointF(0, y));
        }
        y += wrapped.height() + look.pxF(2);
    };
    text(row.title, Type::RowBold, c.ink);
    text(row.figures, Type::Label, c.ink);
    text(row.reason, Type::Label, c.ink);
    text(row.tradeOff, Type::Label, c.muted);
    return y;
}

double paintRules(QPainter* painter, const QStringList& rules, QPointF at, double wide) {
    const Look& look = Look::now();
    double y = 0;
    const auto text = [&](const QString& words, Type type, const QColor& colour) {
        const WrappedText wrapped = wrapText(words, look.font(type), wide);
        if (painter) {
            painter->setFont(look.font(type));
            painter->setPen(colour);
            drawWrapped(*painter, wrapped, at + QPointF(0, y));
        }
        y += wrapped.height() + look.pxF(2);
    };
    text(ProposalModel::tr("How the sizes were found"), Type::LabelBold, look.colours().ink);
    for (const QString& rule : rules)
        text(rule, Type::Label, look.colours().muted);
    return y;
}

void paintPlate(QPainter& painter, const shape::Region& region, const QRectF& box, double scale) {
    const shape::Box all = shape::bounds(region.rim);
    const shape::Point middle = (all.low + all.high) * 0.5;
    PlanTransform transform;
    transform.scale = scale;
    transform.origin = box.center() - QPointF(middle.x * scale, -middle.y * scale);
    paintStock(painter, {{}, {region}}, transform);
}

void paintVerdict(QPainter& painter, const ProposalRow& row, const QRectF& box) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const double mid = box.center().y(), high = look.pxF(26);
    const double top = row.margin ? mid - look.pxF(30) : mid - high / 2;
    drawVerdictMark(painter, QRectF(box.left(), top, look.pxF(22), high), row.grade, c.of(row.grade).text);
    painter.setFont(look.font(Type::RowBold));
    painter.setPen(c.ink);
    drawLine(painter, QRectF(box.left() + look.pxF(30), top, box.width() - look.pxF(30), high), Qt::AlignLeft,
             verdictWord(row.grade));
    if (!row.margin)
        return;
    const QRectF track(box.left(), mid + look.pxF(10), look.pxF(62), look.pxF(10));
    drawMarginBar(painter, track, *row.margin, row.grade);
    painter.setFont(look.font(Type::RowBold));
    painter.setPen(c.ink);
    drawLine(painter,
             QRectF(track.right() + look.pxF(6), track.center().y() - high / 2,
                    box.right() - track.right() - look.pxF(6), high),
             Qt::AlignLeft, timesWanted(*row.margin), false);
}

} // namespace

QSize ProposalDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto* model = qobject_cast<const ProposalModel*>(index.model());
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    if (!model || !view)
        return {};
    const Look& look = Look::now();
    // As if the scroll bar stood there: it comes once the rows are laid out, and they would be too low.
    const double width = view->width() - view->verticalScrollBar()->sizeHint().width();
    const QRectF card = cardIn(QRectF(0, 0, width, 0));
    const Places places(card.width());
    const ProposalRow* row = model->rowAt(index);
    const double words = row ? std::max(paintWords(nullptr, *row, {}, places.wordsWide), places.picture)
                             : paintRules(nullptr, model->rules(), {}, card.width() - look.pxF(2 * kPad));
    return {view->viewport()->width(), static_cast<int>(std::ceil(words + look.pxF(2 * kPad + 4)))};
}

void ProposalDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                             const QModelIndex& index) const {
    const auto* model = qobject_cast<const ProposalModel*>(index.model());
    if (!model)
        return;
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const QRectF card = cardIn(QRectF(option.rect));
    const double pad = look.pxF(kPad);
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);
    painter->setClipRect(option.rect);
    const ProposalRow* row = model->rowAt(index);
    if (!row) {
        paintRules(painter, model->rules(), card.topLeft() + QPointF(pad, pad), card.width() - 2 * pad);
        if (option.state & QStyle::State_HasFocus)
            drawFocusRing(*painter, card, look.pxF(5));
        painter->restore();
        return;
    }
    const bool picked = option.state & QStyle::State_Selected;
    painter->setPen(picked ? QPen(c.touch, 2) : QPen(c.rule, 1));
    painter->setBrush(picked ? c.touchSoft : c.panel);
    painter->drawRoundedRect(card.adjusted(1, 1, -1, -1), look.pxF(5), look.pxF(5));
    if (m_stale)
        painter->setOpacity(0.6);
    const Places places(card.width());
    const QRectF picture(card.left() + pad, card.top() + pad, places.picture, places.picture);
    painter->fillRect(picture, c.ground);
    if (row->region) {
        const double room = places.picture - look.pxF(12);
        paintPlate(*painter, *row->region, picture, proposalScale(model->rows(), room, room));
    }
    const double words = paintWords(nullptr, *row, {}, places.wordsWide);
    const double top = std::max(card.top() + pad, card.center().y() - words / 2);
    paintWords(painter, *row, {card.left() + places.wordsLeft, top}, places.wordsWide);
    const double verdict = look.pxF(kVerdictWide);
    paintVerdict(*painter, *row, QRectF(card.right() - pad - verdict, card.top(), verdict, card.height()));
    painter->restore();
}

} // namespace pw::gui
