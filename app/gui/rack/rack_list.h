#pragma once

#include "app/gui/models/rack_model.h"

#include <QWidget>

class QListView;

namespace pw::gui {

class RackDelegate;
class TextBlock;
class WordButton;

/// The ranked pieces, and under them what there is to say about the picked one and what can be done with it.
class RackList : public QWidget {
    Q_OBJECT

public:
    static constexpr std::size_t kNone = static_cast<std::size_t>(-1);

    explicit RackList(QWidget* parent = nullptr);

    /// The picked piece stays picked.
    void setRows(std::vector<RackRow> rows);
    /// The piece that lies under the plan; kNone: none.
    void setUnder(std::size_t row);
    void setStale(bool stale);
    /// No room for what there is to say about the picked piece: the list needs it.
    void setLow(bool low);
    void pick(std::size_t row);
    /// From now on the best one is picked, until somebody picks another.
    void forgetPick();
    /// Of `offcuts`; kNone when none is picked.
    std::size_t picked() const;

    const RackModel& model() const { return *m_model; }
    QListView* view() const { return m_view; }
    WordButton* layButton() const { return m_lay; }
    WordButton* changeButton() const { return m_change; }
    WordButton* copyButton() const { return m_copy; }
    WordButton* takeOffButton() const { return m_takeOff; }
    WordButton* cutButton() const { return m_cut; }

Q_SIGNALS:
    void layAsked(std::size_t row);
    void changeAsked(std::size_t row);
    void copyAsked(std::size_t row);
    void takeOffAsked(std::size_t row);
    void cutAsked(std::size_t row);

protected:
    void resizeEvent(QResizeEvent*) override;
    void paintEvent(QPaintEvent*) override;

private:
    const RackRow* pickedRow() const;
    void refresh();
    void settle();

    RackModel* m_model;
    RackDelegate* m_delegate;
    QListView* m_view;
    TextBlock* m_words;
    WordButton *m_lay, *m_change, *m_copy, *m_takeOff, *m_cut;
    std::size_t m_under = kNone;
    bool m_byHand = false, m_setting = false, m_low = false;
};

} // namespace pw::gui
