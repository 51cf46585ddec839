#pragma once

#include "app/gui/document/rack_document.h"
#include "app/gui/models/piece_fields.h"

#include <map>
#include <QPointer>
#include <QWidget>

namespace pw::gui {

class FieldEditor;
class FieldFlow;
class SlimScrollArea;
class WordButton;

/// The figures of one piece of the rack, section by section, as the figures of a job are asked.
class PieceFigures : public QWidget {
    Q_OBJECT

public:
    explicit PieceFigures(QWidget* parent = nullptr);
    ~PieceFigures() override;

    void setPiece(RackDocument* rack, std::size_t row);
    void setUnits(units::System system);
    /// Opens a corner, hole or bad area.
    void openPart(PlanPart part, std::size_t index);
    /// Puts the keyboard into the figure at this path below the piece: "thickness".
    void openField(const std::string& key);
    /// What was typed and not taken yet is taken.
    void finishTyping();

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

Q_SIGNALS:
    void fieldEntered(PlanPart part, std::size_t index);

protected:
    void paintEvent(QPaintEvent*) override;

private:
    std::string at() const { return RackDocument::pathOf(m_row); }
    std::vector<PieceSection> sections() const;
    std::string signature(const std::vector<PieceSection>& sections) const;
    void refresh();
    void rebuild(const std::vector<PieceSection>& sections);
    void addField(FieldFlow& flow, const Field& field);
    void addList(FieldFlow& flow, const PartList& list);
    void addAction(FieldFlow& flow, const RowAction& action);
    void act(const QString& spoken);
    void enter(FieldEditor* editor);
    void exit(FieldEditor* editor);

    QPointer<RackDocument> m_rack;
    std::size_t m_row = 0;
    units::System m_units = units::System::Metric;
    SlimScrollArea* m_scroll;
    QWidget* m_column;
    std::vector<FieldFlow*> m_flows;
    std::vector<FieldEditor*> m_editors;
    std::map<FieldEditor*, FieldFlow*> m_flowOf;
    std::map<std::string, WordButton*> m_heads;
    std::string m_signature, m_openRow;
};

} // namespace pw::gui
