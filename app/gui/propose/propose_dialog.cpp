#include "app/gui/propose/propose_dialog.h"

#include "app/engine/write.h"
#include "app/gui/models/sentence.h"
#include "app/gui/propose/proposal_delegate.h"
#include "app/gui/propose/proposal_model.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/slim_scroll_area.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/widgets/work_bar.h"

#include <QHBoxLayout>
#include <QItemSelectionModel>
#include <QListView>
#include <QPainter>
#include <QScreen>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace pw::gui {

ProposeDialog::ProposeDialog(Document& document, units::System system, ProposeFunction propose,
                             QWidget* parent)
    : QDialog(parent), m_document(document), m_system(system), m_finder(std::move(propose)),
      m_intro(new TextBlock(Type::Sentence)), m_work(new WorkBar(this)), m_stack(new QStackedWidget(this)),
      m_model(new ProposalModel(this)), m_delegate(new ProposalDelegate(this)), m_view(new QListView),
      m_empty(new QWidget), m_emptyColumn(new QVBoxLayout(m_empty)),
      m_take(new WordButton(tr("Take this one"), WordButton::Style::Boxed, this)),
      m_close(new WordButton(tr("Close"), WordButton::Style::Boxed, this)) {
    setWindowTitle(tr("Propose a plate"));
    dress(*this);
    const Look& look = Look::now();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, look.px(12), 0, look.px(12));
    column->setSpacing(look.px(8));
    const auto padded = [&](QLayout* row) {
        row->setContentsMargins(look.px(16), 0, look.px(16), 0);
        return row;
    };
    auto* top = new QVBoxLayout;
    top->addWidget(m_intro);
    column->addLayout(static_cast<QVBoxLayout*>(padded(top)));
    column->addWidget(m_work);
    column->addWidget(m_stack, 1);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(look.px(8));
    buttons->addStretch(1);
    buttons->addWidget(m_take);
    buttons->addWidget(m_close);
    column->addLayout(static_cast<QHBoxLayout*>(padded(buttons)));

    m_view->setModel(m_model);
    m_view->setItemDelegate(m_delegate);
    m_view->setAccessibleName(tr("Proposed plates, best first"));
    m_view->setFrameShape(QFrame::NoFrame);
    m_view->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    m_view->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_view->setResizeMode(QListView::Adjust);
    m_view->setSelectionMode(QAbstractItemView::SingleSelection);
    m_view->setEditTriggers(QAbstractItemView::NoEditTriggers);
    auto* scroll = new SlimScrollArea;
    m_emptyColumn->setContentsMargins(look.px(16), look.px(8), look.px(16), look.px(8));
    m_emptyColumn->setSpacing(look.px(4));
    scroll->setWidget(m_empty);
    m_empty->setAutoFillBackground(false); // which setWidget() turns on
    scroll->viewport()->setAutoFillBackground(false);
    m_stack->addWidget(m_view);
    m_stack->addWidget(scroll);

    connect(m_view, &QListView::activated, this, &ProposeDialog::take);
    connect(m_take, &QAbstractButton::clicked, this, &ProposeDialog::take);
    connect(m_close, &QAbstractButton::clicked, this, &QDialog::reject);
    connect(m_view->selectionModel(), &QItemSelectionModel::selectionChanged, this, &ProposeDialog::settle);
    connect(m_work, &WorkBar::stopAsked, this, &ProposeDialog::stop);
    connect(m_work, &WorkBar::againAsked, this, &ProposeDialog::ask);
    connect(&m_finder, &ProposalFinder::found, this, &ProposeDialog::show);
    connect(&m_finder, &ProposalFinder::slow, m_work, &WorkBar::setBusy);
    connect(&m_finder, &ProposalFinder::foretold, this,
            [this](const QString& words) { m_work->setAhead(words, tr("Looking for plates")); });
    connect(&m_finder, &ProposalFinder::failed, this, [this](const QString& what) {
        m_work->setIdle();
        showEmpty(tr("It could not be worked out: %1").arg(what));
    });
    connect(&m_document, &Document::changed, this, &ProposeDialog::ask);
    const QSize room = parent && parent->screen() ? parent->screen()->availableSize() : QSize(1024, 700);
    resize(QSize(look.px(720), look.px(640)).boundedTo(room * 0.94));
    ask();
}

ProposeDialog::~ProposeDialog() {
    m_finder.stop();
}

void ProposeDialog::paintEvent(QPaintEvent*) {
    QPainter(this).fillRect(rect(), Look::now().colours().panel);
}

void ProposeDialog::ask() {
    // What stands there stays readable, and cannot be taken for another job than it was found for.
    m_proposals.reset();
    m_delegate->setStale(true);
    m_view->viewport()->update();
    if (m_model->rows().empty())
        showEmpty({});
    m_work->setBusy(0, tr("Looking for plates"));
    m_finder.ask(m_document.tree(), m_system);
    settle();
}

void ProposeDialog::stop() {
    m_finder.stop();
    m_work->setIdle(tr("Stopped before it was done."), tr("Look again"));
    settle();
}

void ProposeDialog::show(std::shared_ptr<const engine::Proposals> proposals) {
    m_proposals = std::move(proposals);
    m_work->setIdle();
    m_delegate->setStale(false);
    m_model->set(proposalRows(*m_proposals, m_system), proposalRules(*m_proposals));
    if (m_model->rows().empty()) {
        if (!m_proposals->missing.empty())
            showEmpty(tr("There is nothing to propose yet."), m_proposals->missing);
        else if (!m_proposals->trouble.empty())
            showEmpty(tr("Nothing can be proposed. %1").arg(asSentence(m_proposals->trouble)));
        else
            showEmpty(tr("No plate of stock thickness can be checked with these figures."));
        return;
    }
    m_stack->setCurrentIndex(0);
    ::QPalette palette = Look::now().colours().forQt();
    palette.setColor(QPalette::Base, Look::now().colours().panel);
    m_view->setPalette(palette);
    m_view->setCurrentIndex(m_model->index(0));
    m_view->setFocus(Qt::OtherFocusReason);
    settle();
}

void ProposeDialog::showEmpty(const QString& words, const std::vector<engine::Missing>& missing) {
    for (TextBlock* text : m_emptyTexts)
        text->deleteLater();
    for (WordButton* want : m_wants)
        want->deleteLater();
    m_emptyTexts.clear();
    m_wants.clear();
    while (QLayoutItem* item = m_emptyColumn->takeAt(0))
        delete item;
    const auto say = [&](const QString& text) {
        auto* block = new TextBlock(Type::Sentence);
        block->setText(text);
        m_emptyColumn->addWidget(block);
        m_emptyTexts.push_back(block);
    };
    if (!words.isEmpty())
        say(words);
    for (const engine::Missing& each : missing) {
        m_emptyColumn->addSpacing(Look::now().px(8));
        say(asSentence(each.how));
        auto* go = new WordButton(tr("Go to the figure"), WordButton::Style::Boxed);
        go->setAccessibleDescription(asSentence(each.how));
        connect(go, &QAbstractButton::clicked, this, [this, path = each.field] {
            reject();
            Q_EMIT fieldAsked(path);
        });
        m_emptyColumn->addWidget(go, 0, Qt::AlignLeft);
        m_wants.push_back(go);
    }
    m_emptyColumn->addStretch(1);
    m_stack->setCurrentIndex(1);
    if (!m_wants.empty())
        m_wants.front()->setFocus(Qt::OtherFocusReason);
    settle();
}

QString ProposeDialog::emptyWords() const {
    QStringList words;
    if (m_stack->currentIndex() == 1)
        for (const TextBlock* text : m_emptyTexts)
            words << text->text();
    return words.join(QLatin1Char('\n'));
}

void ProposeDialog::settle() {
    const bool weak =
        m_proposals && !m_proposals->best.empty() && !engine::mayBeMade(m_proposals->best.front().grade);
    m_intro->setText(
        weak ? tr("None of these may be made as it stands; each says why.")
             : tr("Plates for these stations, this load and this screw, each checked whole. What you "
                  "take can be edited, and undone."));
    m_take->setVisible(m_stack->currentIndex() == 0);
    m_take->setEnabled(m_proposals && !m_view->selectionModel()->selectedIndexes().isEmpty());
}

void ProposeDialog::take() {
    const QModelIndexList picked = m_view->selectionModel()->selectedIndexes();
    const QModelIndex current = m_view->currentIndex();
    // On the rules there is nothing to take, though a plate above them is picked.
    if (!m_proposals || picked.isEmpty() || (m_view->hasFocus() && current != picked.first()))
        return;
    const auto proposals = m_proposals;
    const engine::Proposal& proposal = proposals->best.at(static_cast<std::size_t>(picked.first().row()));
    disconnect(&m_document, &Document::changed, this, &ProposeDialog::ask);
    m_document.replace(engine::withChanges(m_document.tree(), proposal.changes), tr("Take a proposed plate"));
    accept();
}

} // namespace pw::gui
