#include "app/gui/panels/notice_bar.h"

#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"

#include <QHBoxLayout>
#include <QPainter>

namespace pw::gui {

namespace {

constexpr std::size_t kMostChoices = 3;

} // namespace

NoticeBar::NoticeBar(QWidget* parent)
    : QWidget(parent), m_words(new TextBlock(Type::Row, &Palette::ink, this)) {
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(16, 3, 12, 3);
    row->addWidget(m_words, 1, Qt::AlignVCenter);
    // Made at once, so that they stand in the tab order where they stand in the window.
    for (std::size_t i = 0; i < kMostChoices; ++i) {
        auto* button = new WordButton({}, WordButton::Style::Boxed, this);
        row->addWidget(button, 0, Qt::AlignTop);
        button->hide();
        connect(button, &QAbstractButton::clicked, this, [this, i] {
            const auto act = m_choices.at(i).act;
            say({});
            act();
        });
        m_buttons.push_back(button);
    }
    auto* close = new WordButton(tr("Close"), WordButton::Style::Flat, this);
    row->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QAbstractButton::clicked, this, [this] { say({}); });
    hide();
}

void NoticeBar::say(const QString& words) {
    ask(words, {});
}

void NoticeBar::ask(const QString& words, std::vector<Choice> choices) {
    choices.resize(std::min(choices.size(), kMostChoices));
    m_choices = std::move(choices);
    m_words->setText(words);
    for (std::size_t i = 0; i < m_buttons.size(); ++i) {
        const bool used = i < m_choices.size();
        m_buttons[i]->setVisible(used);
        m_buttons[i]->setText(used ? m_choices[i].words : QString());
        m_buttons[i]->setAccessibleDescription(used ? words : QString());
        m_buttons[i]->updateGeometry();
    }
    setAccessibleName(words);
    setVisible(!words.isEmpty());
}

QString NoticeBar::words() const {
    return m_words->text();
}

std::vector<WordButton*> NoticeBar::choices() const {
    return {m_buttons.begin(), m_buttons.begin() + static_cast<std::ptrdiff_t>(m_choices.size())};
}

void NoticeBar::paintEvent(QPaintEvent*) {
    const Palette& c = Look::now().colours();
    QPainter painter(this);
    painter.fillRect(rect(), c.field);
    painter.setPen(c.rule);
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

} // namespace pw::gui
