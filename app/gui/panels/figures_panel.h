#pragma once

#include "app/engine/report.h"
#include "app/gui/document/document.h"
#include "app/gui/models/part_lists.h"
#include "app/gui/models/piece_choice.h"

#include <map>
#include <memory>
#include <QWidget>

namespace pw::gui {

class FieldEditor;
class FieldFlow;
class GroupHeader;
class SlimScrollArea;
class TextBlock;
class WordButton;

/// The job's questions in the order in which a mechanic meets them. One group is open at a time; the closed
/// ones together are the whole job in plain words.
class FiguresPanel : public QWidget {
    Q_OBJECT

public:
    explicit FiguresPanel(Document& document, QWidget* parent = nullptr);
    ~FiguresPanel() override;

    void setUnits(units::System system);
    void setReport(std::shared_ptr<const engine::Report> report);
    /// The rack that the job names, to choose a piece from.
    void setRack(RackState rack);
    /// Opens the group that holds the field, and puts the keyboard into it when asked to.
    void openField(const std::string& path, bool takeKeyboard);
    /// `row`: which of several, as in the job file.
    void openPart(PlanPart part, std::size_t row = 0);
    /// Opens a row of one of the lists: "plate.holes[2]".
    void openRow(const std::string& path);
    void openGroup(const std::string& id);
    std::string openGroupId() const { return m_open; }

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

    /// A figure that was typed and left and does not count, as it was not understood or does not go with the
    /// rest; in the open group or in a closed one.
    struct NotCounted {
        std::string path;
        QString label;
        bool operator==(const NotCounted&) const = default;
    };

Q_SIGNALS:
    void notCountedChanged(const std::vector<NotCounted>& figures);
    /// The keyboard is in a field of this part of the plan (None: in none).
    void fieldEntered(PlanPart part, std::size_t row);

protected:
    void paintEvent(QPaintEvent*) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Group {
        std::string id;
        GroupHeader* header = nullptr;
        FieldFlow* flow = nullptr;
        QWidget* body = nullptr;
    };

    void rebuild();
    void refresh();
    void buildOpenGroup();
    void buildSprings(FieldFlow& flow);
    void buildLists(FieldFlow& flow);
    /// Where an action stands: in a list, or in one of its rows.
    struct ActionPlace {
        std::size_t list = 0;
        std::string row{};
        std::size_t action = 0;
        const RowAction* in(const std::vector<PartList>& lists) const;
    };
    void buildRow(FieldFlow& flow, const PartRow& row, std::size_t list);
    WordButton* actionButton(const RowAction& action, const ActionPlace& place);
    bool isUnfolded(const PartList& list) const;
    void refreshLists();
    void lightRow();
    FieldEditor* addField(FieldFlow& flow, Field field);
    std::string signature() const;
    /// Sets aside what stands in the open boxes and is not in the job, until their boxes are there again.
    void keepUntaken();
    void tellNotCounted();
    /// How many rows every list has that the path leads through: which row "springs[1]" is hangs on it.
    std::vector<std::size_t> rowsAlong(const std::string& path) const;
    void enter(FieldEditor* editor);
    void exit(FieldEditor* editor);
    void removeAt(const std::string& path, const QString& label);
    Group* find(const std::string& id);

    Document& m_document;
    std::shared_ptr<const engine::Report> m_report;
    units::System m_units = units::System::Metric;
    RackState m_rack;
    SlimScrollArea* m_scroll;
    QWidget* m_column;
    std::vector<Group> m_groups;
    std::string m_open = "stations";
    std::vector<FieldEditor*> m_editors;
    std::string m_signature;
    struct Untaken {
        std::string group;
        std::vector<std::size_t> rows; ///< rowsAlong() its path when its box was built
        QString text, label;
    };
    std::map<std::string, Untaken> m_untaken; ///< by field, of boxes that are not there now
    std::vector<NotCounted> m_told;
    std::string m_built;                                    ///< the group whose boxes there are
    std::map<std::string, std::vector<std::size_t>> m_rows; ///< rowsAlong() of every box, when it was built
    bool m_wantsTotal = false; ///< "known total" was chosen and no figure typed yet
    std::map<std::string, bool> m_moreOpen;
    std::string m_openRow; ///< of the lists in the open group
    std::map<std::string, WordButton*> m_rowHeads;
    std::map<std::size_t, TextBlock*> m_listNotes; ///< by list, or by spring
    std::vector<std::pair<WordButton*, ActionPlace>> m_actions;
};

} // namespace pw::gui
