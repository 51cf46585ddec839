#include "app/gui/rack/rack_page.h"

#include "app/gui/panels/notice_bar.h"
#include "app/gui/rack/piece_editor.h"
#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/rack_list.h"
#include "app/gui/widgets/button_row.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/widgets/work_bar.h"

#include <algorithm>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QMenu>
#include <QPainter>
#include <QPointer>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace pw::gui {

namespace {

constexpr std::size_t kMostWays = 3;

} // namespace

RackPage::RackPage(QWidget* parent)
    : QWidget(parent), m_title(new TextBlock(Type::Title, &Palette::ink, this)),
      m_file(new TextBlock(Type::Label, &Palette::muted, this)),
      m_add(new WordButton(tr("Add an offcut"), WordButton::Style::Boxed, this)),
      m_close(new WordButton(tr("Back to the plan"), WordButton::Style::Boxed, this)),
      m_preferTitle(new TextBlock(Type::Label, &Palette::muted, this)),
      m_prefer(new Segments(preferWords(), tr("What counts where the verdict is the same"), this)),
      m_preferMenu(new WordButton({}, WordButton::Style::Flat, this)), m_progress(new WorkBar(this)),
      m_notice(new NoticeBar(this)), m_stack(new QStackedWidget(this)), m_list(new RackList),
      m_editor(new PieceEditor), m_empty(new QWidget), m_emptyWords(new TextBlock(Type::Sentence)) {
    setAccessibleName(tr("Rack"));
    setObjectName(QStringLiteral("rack page"));
    m_title->setText(tr("Rack"));
    m_file->setMaxLines(1);
    m_file->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
    m_preferTitle->setText(tr("First of equals:"));
    m_preferTitle->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    m_prefer->setTight(true, 4);
    m_preferMenu->setOpens(true);
    m_preferMenu->setAccessibleDescription(tr("What counts where the verdict is the same"));
    connect(m_preferMenu, &QAbstractButton::clicked, this, &RackPage::openPreferMenu);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    m_head = new QBoxLayout(QBoxLayout::LeftToRight);
    m_head->setContentsMargins(16, 5, 12, 5);
    m_head->setSpacing(8);
    auto* names = new QHBoxLayout;
    names->setSpacing(8);
    m_title->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Fixed);
    names->addWidget(m_title, 0, Qt::AlignVCenter);
    names->addWidget(m_file, 1, Qt::AlignVCenter);
    m_head->addLayout(names, 1);
    auto* buttons = new ButtonRow(this);
    buttons->add(m_add);
    buttons->add(m_preferMenu);
    buttons->add(m_close);
    m_head->addWidget(buttons);
    column->addLayout(m_head);
    auto* second = new QHBoxLayout;
    second->setContentsMargins(16, 0, 12, 6);
    second->setSpacing(8);
    second->addWidget(m_preferTitle, 0, Qt::AlignVCenter);
    second->addWidget(m_prefer, 0);
    second->addStretch(1);
    column->addLayout(second);
    column->addWidget(m_notice);
    column->addWidget(m_progress);
    column->addWidget(m_stack, 1);
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_editor);
    m_stack->addWidget(m_empty);

    auto* empty = new QVBoxLayout(m_empty);
    empty->setContentsMargins(24, 24, 24, 24);
    empty->setSpacing(12);
    empty->addWidget(m_emptyWords);
    for (std::size_t i = 0; i < kMostWays; ++i) {
        auto* button = new WordButton({}, i == 0 ? WordButton::Style::Filled : WordButton::Style::Boxed);
        empty->addWidget(button, 0, i == 0 ? Qt::Alignment() : Qt::AlignLeft);
        connect(button, &QAbstractButton::clicked, this, [this, i] {
            if (i < m_ways.size()) {
                const auto act = m_ways[i].act;
                act();
            }
        });
        m_wayButtons.push_back(button);
    }
    empty->addStretch(1);
    connect(m_add, &QAbstractButton::clicked, this, &RackPage::addAsked);
    connect(m_close, &QAbstractButton::clicked, this, &RackPage::closeAsked);
    connect(m_prefer, &Segments::chosen, this, [this](int index) {
        setPrefer(static_cast<engine::Prefer>(index));
        Q_EMIT preferChosen(static_cast<engine::Prefer>(index));
    });
    connect(&Look::now(), &Look::changed, this, &RackPage::settle);
    settle();
}

void RackPage::settle() {
    // In a narrow place the choice becomes one word that opens.
    const double wide = width() / Look::now().scale();
    const bool narrow = wide < 520;
    const bool chosen = m_stack->currentWidget() == m_list;
    m_prefer->setVisible(chosen && !narrow);
    m_preferTitle->setVisible(chosen && !narrow);
    m_preferMenu->setVisible(chosen && narrow);
    m_close->setVisible(!narrow); // the word in the top bar leads back as well
    m_head->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    // The words make room for themselves: no large type may push the plan's window open.
    setMinimumSize(Look::now().px(200), Look::now().px(160));
    m_list->setLow(height() / Look::now().scale() < 420);
    update();
}

QStringList RackPage::preferWords() {
    return {tr("Least waste"), tr("Lightest"), tr("Most margin"), tr("Quickest cut")};
}

void RackPage::openPreferMenu() {
    QMenu menu(this);
    dress(menu);
    const QStringList words = preferWords();
    for (int i = 0; i < words.size(); ++i) {
        QAction* action = menu.addAction(words[i]);
        action->setData(i);
        action->setCheckable(true);
        action->setChecked(i == m_prefer->current());
    }
    const QPointer<RackPage> self(this); // whatever happens while the menu is open
    const QAction* chosen = menu.exec(m_preferMenu->mapToGlobal(QPoint(0, m_preferMenu->height())));
    if (self && chosen)
        Q_EMIT m_prefer->chosen(chosen->data().toInt());
}

void RackPage::resizeEvent(QResizeEvent*) {
    settle();
}

void RackPage::setFileWords(const QString& words) {
    m_file->setText(words);
}

void RackPage::setPrefer(engine::Prefer prefer) {
    m_prefer->setCurrent(static_cast<int>(prefer));
    m_preferMenu->setText(preferWords().at(static_cast<int>(prefer)));
    m_preferMenu->updateGeometry();
}

bool RackPage::isEditing() const {
    return m_stack->currentWidget() == m_editor;
}

void RackPage::showList() {
    m_stack->setCurrentWidget(m_list);
    m_add->show();
    settle();
}

void RackPage::showEditor() {
    m_stack->setCurrentWidget(m_editor);
    m_add->hide();
    settle();
}

void RackPage::showEmpty(const QString& words, std::vector<Way> ways) {
    ways.resize(std::min(ways.size(), kMostWays));
    m_ways = std::move(ways);
    m_emptyWords->setText(words);
    for (std::size_t i = 0; i < m_wayButtons.size(); ++i) {
        m_wayButtons[i]->setVisible(i < m_ways.size());
        m_wayButtons[i]->setText(i < m_ways.size() ? m_ways[i].words : QString());
        m_wayButtons[i]->updateGeometry();
    }
    m_stack->setCurrentWidget(m_empty);
    m_add->hide();
    settle();
}

QString RackPage::emptyWords() const {
    return m_stack->currentWidget() == m_empty ? m_emptyWords->text() : QString();
}

void RackPage::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), Look::now().colours().panel);
}

void RackPage::keyPressEvent(QKeyEvent* event) {
    if (event->key() != Qt::Key_Escape)
        return QWidget::keyPressEvent(event);
    if (isEditing())
        m_editor->doneButton()->click();
    else
        Q_EMIT closeAsked();
}

} // namespace pw::gui
