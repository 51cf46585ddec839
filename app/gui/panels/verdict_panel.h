#pragma once

#include "app/engine/report.h"

#include <memory>
#include <QWidget>
#include <vector>

namespace pw::gui {

class CheckRow;
class SlimScrollArea;
class TextBlock;
class VerdictHead;
class WordButton;

/// The answer: head, stop torque and rated load, the mend, the checks with the weakest first, the cautions.
/// Head, figures and cautions never scroll away.
class VerdictPanel : public QWidget {
    Q_OBJECT

public:
    explicit VerdictPanel(QWidget* parent = nullptr);

    void setUnits(units::System system);
    void setReport(std::shared_ptr<const engine::Report> report);
    void setBusy(double done, const QString& what);
    void setAhead(const QString& words);
    /// Figures that were typed and are not in this verdict: the first one's name and field, and how many.
    void setNotCounted(const QString& label, const std::string& field, std::size_t count);
    /// The check itself failed: a fault of the program, said where the verdict would stand.
    void setFailure(const QString& what);

    VerdictHead* head() const { return m_head; }
    std::vector<CheckRow*> rows() const { return m_rows; }
    WordButton* mendButton() const { return m_mend; }
    WordButton* notCountedButton() const { return m_notCounted; }
    WordButton* proposeButton() const { return m_propose; }
    /// Can plates be proposed where the plate's figures are asked for?
    void setProposes(bool proposes) { m_proposes = proposes; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void checkPicked(const std::vector<shape::Point>& where);
    /// Which check is open; empty: none.
    void checkOpened(const std::string& id);
    void mendAsked(const engine::Change& change);
    /// An incomplete verdict leads to the field it asks for, a figure that does not count to its own.
    void fieldAsked(const std::string& path);
    void proposeAsked();

protected:
    void paintEvent(QPaintEvent*) override;
    void resizeEvent(QResizeEvent*) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    class FiguresBlock;
    class Cautions;

    void refresh();
    void showRows();
    void pick(CheckRow* row);
    void foldRows();
    void settleRoom();

    std::shared_ptr<const engine::Report> m_report;
    units::System m_units = units::System::Metric;
    VerdictHead* m_head;
    FiguresBlock* m_figures;
    WordButton* m_notCounted;
    std::string m_notCountedField;
    WordButton* m_needed;
    WordButton* m_propose;
    WordButton* m_mend;
    QWidget* m_listHead;
    SlimScrollArea* m_scroll;
    QWidget* m_list;
    std::vector<CheckRow*> m_rows;
    WordButton* m_more;
    bool m_proposes = false;
    bool m_all = false; ///< the fold is open
    std::string m_openId;
    Cautions* m_cautions;
};

} // namespace pw::gui
