#pragma once

#include "app/engine/rack.h"

#include <functional>
#include <QWidget>
#include <vector>

class QBoxLayout;
class QStackedWidget;

namespace pw::gui {

class NoticeBar;
class PieceEditor;
class RackList;
class WorkBar;
class Segments;
class TextBlock;
class WordButton;

/// The rack where the plan stands: the ranked list, or one piece being edited, or what to do when there is
/// nothing yet. It shows and asks; what is done, RackDesk does.
class RackPage : public QWidget {
    Q_OBJECT

public:
    explicit RackPage(QWidget* parent = nullptr);

    RackList& list() { return *m_list; }
    PieceEditor& editor() { return *m_editor; }
    NoticeBar& notice() { return *m_notice; }
    WorkBar& progress() { return *m_progress; }

    /// "rack.json, 20 pieces", "Not in the file"
    void setFileWords(const QString& words);
    void setPrefer(engine::Prefer prefer);
    void showList();
    void showEditor();
    /// Nothing to list: why, and what can be done about it.
    struct Way {
        QString words;
        std::function<void()> act;
    };
    void showEmpty(const QString& words, std::vector<Way> ways);
    bool isEditing() const;
    QString emptyWords() const;
    std::vector<WordButton*> ways() const { return m_wayButtons; }

    WordButton* addButton() const { return m_add; }
    WordButton* closeButton() const { return m_close; }
    Segments* preferChoice() const { return m_prefer; }

Q_SIGNALS:
    void closeAsked();
    void addAsked();
    void preferChosen(engine::Prefer prefer);

protected:
    void paintEvent(QPaintEvent*) override;
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent*) override;

private:
    void settle();
    static QStringList preferWords();
    void openPreferMenu();

    QBoxLayout* m_head = nullptr;
    TextBlock *m_title, *m_file;
    WordButton *m_add, *m_close;
    TextBlock* m_preferTitle;
    Segments* m_prefer;
    WordButton* m_preferMenu; ///< the same choice where there is little room
    WorkBar* m_progress;
    NoticeBar* m_notice;
    QStackedWidget* m_stack;
    RackList* m_list;
    PieceEditor* m_editor;
    QWidget* m_empty;
    TextBlock* m_emptyWords;
    std::vector<WordButton*> m_wayButtons;
    std::vector<Way> m_ways;
};

} // namespace pw::gui
