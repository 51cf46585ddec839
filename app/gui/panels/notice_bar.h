#pragma once

#include <functional>
#include <QString>
#include <QWidget>
#include <vector>

namespace pw::gui {

class TextBlock;
class WordButton;

/// A bar under the top bar: a file that could not be opened, keys that nobody knows, a job that was left
/// behind. Ink on field. It never takes the keyboard and never has to be answered.
class NoticeBar : public QWidget {
    Q_OBJECT

public:
    struct Choice {
        QString words;
        std::function<void()> act;
    };

    explicit NoticeBar(QWidget* parent = nullptr);

    void say(const QString& words);
    /// With at most three things that may be done about it. Picking one puts the bar away first.
    void ask(const QString& words, std::vector<Choice> choices);
    QString words() const;
    /// The buttons that show now, without Close.
    std::vector<WordButton*> choices() const;

protected:
    void paintEvent(QPaintEvent*) override;

private:
    TextBlock* m_words;
    std::vector<WordButton*> m_buttons;
    std::vector<Choice> m_choices;
};

} // namespace pw::gui
