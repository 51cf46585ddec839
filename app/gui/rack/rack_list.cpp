#include "app/gui/rack/rack_list.h"

#include "app/gui/rack/rack_delegate.h"
#include "app/gui/widgets/button_row.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <QItemSelectionModel>
#include <QListView>
#include <QPainter>
#include <QScrollBar>
#include <QVBoxLayout>
#include <utility>

namespace pw::gui {

RackList::RackList(QWidget* parent)
    : QWidget(parent), m_model(new RackModel(this)), m_delegate(new RackDelegate(this)),
      m_view(new QListView(this)), m_words(new TextBlock(Type::Label, &Palette::ink, this)),
      m_lay(new WordButton(tr("Lay it under the plan"), WordButton::Style::Boxed, this)),
      m_change(new WordButton(tr("Change"), WordButton::Style::Boxed, this)),
      m_copy(new WordButton(tr("Copy"), WordButton::Style::Boxed, this)),
      m_takeOff(new WordButton(tr("Take off the rack"), WordButton::Style::Boxed, this)),
      m_cut(new WordButton(tr("Cut it, leave the rest"), WordButton::Style::Boxed, this)) {
    m_view->setModel(m_model);
    m_view->setItemDelegate(m_delegate);
    m_view->setAccessibleName(tr("Pieces, best first"));
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setResizeMode(QListView::Adjust);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    m_words->setMaxLines(3);
    m_cut->setAccessibleDescription(
        tr("The plate is cut: the rack has one piece fewer of its kind, and its rest"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(m_view, 1);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 8, 16, 8);
    foot->setSpacing(8);
    foot->addWidget(m_words);
    auto* buttons = new ButtonRow(this);
    for (WordButton* button : {m_lay, m_cut, m_change, m_copy, m_takeOff})
        buttons->add(button);
    foot->addWidget(buttons);
    column->addLayout(foot);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, [this] {
        m_byHand = m_byHand || !m_setting;
        refresh();
    });
    connect(m_view, &QListView::activated, this, [this](const QModelIndex& index) {
        const RackRow* row = m_model->rowAt(index);
        if (row && row->kind == RackRow::Kind::Piece)
            Q_EMIT layAsked(row->row);
        else if (row && row->kind == RackRow::Kind::Mend)
            Q_EMIT changeAsked(row->row);
    });
    const auto ask = [this](WordButton* button, void (RackList::*signal)(std::size_t)) {
        connect(button, &QAbstractButton::clicked, this, [this, signal] {
            if (picked() != kNone)
                Q_EMIT(this->*signal)(picked());
        });
    };
    ask(m_lay, &RackList::layAsked);
    ask(m_change, &RackList::changeAsked);
    ask(m_copy, &RackList::copyAsked);
    ask(m_takeOff, &RackList::takeOffAsked);
    ask(m_cut, &RackList::cutAsked);
    connect(&Look::now(), &Look::changed, this, &RackList::settle);
    settle();
    refresh();
}

void RackList::settle() {
    ::QPalette palette = Look::now().colours().forQt();
    palette.setColor(QPalette::Base, Look::now().colours().panel);
    m_view->setPalette(palette);
    // As slim as the other columns' thumbs.
    const Palette& c = Look::now().colours();
    m_view->verticalScrollBar()->setStyleSheet(
        QStringLiteral(
            "QScrollBar:vertical{background:%1;width:11px;margin:0}"
            "QScrollBar::handle:vertical{background:%2;border-radius:3px;margin:2px;min-height:28px}"
            "QScrollBar::add-line,QScrollBar::sub-line{height:0}"
            "QScrollBar::add-page,QScrollBar::sub-page{background:%1}")
            .arg(c.panel.name(), c.strongRule.name()));
    const QSizeF picture = RackDelegate::pictureSize();
    m_delegate->setNarrow(width() < Look::now().pxF(RackDelegate::kNarrowUnder));
    m_delegate->setScale(pictureScale(m_model->rows(), picture.width() - 6, picture.height() - 6));
    m_view->doItemsLayout();
    m_view->viewport()->update();
    update();
}

void RackList::setRows(std::vector<RackRow> rows) {
    const std::size_t kept = m_byHand ? picked() : kNone;
    m_setting = true;
    const int place = m_view->verticalScrollBar()->value();
    m_model->setRows(std::move(rows));
    settle();
    m_view->verticalScrollBar()->setValue(place);
    if (const QModelIndex index = m_model->indexOf(kept); kept != kNone && index.isValid())
        m_view->setCurrentIndex(index);
    if (picked() == kNone) {
        m_byHand = false;
        // The best one, until somebody picks another.
        for (const RackRow& row : m_model->rows())
            if (row.kind != RackRow::Kind::Heading) {
                m_view->setCurrentIndex(m_model->indexOf(row.row));
                break;
            }
    }
    m_setting = false;
    refresh();
}

void RackList::setLow(bool low) {
    if (std::exchange(m_low, low) != low)
        refresh();
}

void RackList::forgetPick() {
    m_byHand = false;
    m_view->scrollToTop();
}

void RackList::setUnder(std::size_t row) {
    m_under = row;
    m_delegate->setUnder(row);
    m_view->viewport()->update();
    refresh();
}

void RackList::setStale(bool stale) {
    m_delegate->setStale(stale);
    m_view->viewport()->update();
}

void RackList::pick(std::size_t row) {
    const QModelIndex index = m_model->indexOf(row);
    if (!index.isValid())
        return;
    m_view->setCurrentIndex(index);
    m_view->scrollTo(index);
    m_byHand = true;
}

const RackRow* RackList::pickedRow() const {
    const QModelIndexList selected = m_view->selectionModel()->selectedIndexes();
    return selected.isEmpty() ? nullptr : m_model->rowAt(selected.first());
}

std::size_t RackList::picked() const {
    const RackRow* row = pickedRow();
    return row ? row->row : kNone;
}

void RackList::refresh() {
    const RackRow* row = pickedRow();
    const bool piece = row && row->kind == RackRow::Kind::Piece;
    m_lay->setEnabled(piece && row->row != m_under);
    m_cut->setVisible(piece && row->row == m_under);
    m_lay->setVisible(m_cut->isHidden());
    for (WordButton* button : {m_change, m_copy, m_takeOff})
        button->setEnabled(row != nullptr);
    QStringList words;
    if (row) {
        if (!row->reason.isEmpty())
            words << row->reason;
        if (!row->said.isEmpty())
            words << row->said;
        words << row->remarks;
    }
    m_words->setText(words.join(QLatin1Char(' ')));
    m_words->setVisible(!words.isEmpty() && !m_low);
}

void RackList::resizeEvent(QResizeEvent*) {
    m_delegate->setNarrow(width() < Look::now().pxF(RackDelegate::kNarrowUnder));
    m_view->doItemsLayout();
}

void RackList::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.panel);
    painter.setPen(c.rule);
    painter.drawLine(0, m_view->geometry().bottom() + 1, width(), m_view->geometry().bottom() + 1);
}

} // namespace pw::gui
