#pragma once

#include "app/gui/document/document.h"
#include "app/gui/document/proposal_finder.h"

#include <QDialog>

class QListView;
class QStackedWidget;
class QVBoxLayout;

namespace pw::gui {

class ProposalDelegate;
class ProposalModel;
class TextBlock;
class WordButton;
class WorkBar;

/// Plates for the job's stations, load and screw, each checked whole. Taking one puts its figures into the
/// job as one step that can be undone; all of them can be edited afterwards like typed ones.
class ProposeDialog : public QDialog {
    Q_OBJECT

public:
    ProposeDialog(Document& document, units::System system, ProposeFunction propose, QWidget* parent);
    ~ProposeDialog() override;

    ProposalModel& model() { return *m_model; }
    QListView* view() const { return m_view; }
    WorkBar& work() { return *m_work; }
    WordButton* takeButton() const { return m_take; }
    /// To the figures that are missing, in the order in which they are said.
    const std::vector<WordButton*>& wantButtons() const { return m_wants; }
    /// What is said where there are no rows.
    QString emptyWords() const;
    bool isBusy() const { return m_finder.isBusy(); }

Q_SIGNALS:
    void fieldAsked(const std::string& path);

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void ask();
    void stop();
    void show(std::shared_ptr<const engine::Proposals> proposals);
    void showEmpty(const QString& words, const std::vector<engine::Missing>& missing = {});
    void take();
    void settle();

    Document& m_document;
    units::System m_system;
    ProposalFinder m_finder;
    std::shared_ptr<const engine::Proposals> m_proposals; ///< null: none for the job as it is now
    TextBlock* m_intro;
    WorkBar* m_work;
    QStackedWidget* m_stack;
    ProposalModel* m_model;
    ProposalDelegate* m_delegate;
    QListView* m_view;
    QWidget* m_empty;
    QVBoxLayout* m_emptyColumn;
    std::vector<TextBlock*> m_emptyTexts;
    std::vector<WordButton*> m_wants;
    WordButton *m_take, *m_close;
};

} // namespace pw::gui
