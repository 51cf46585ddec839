#pragma once

#include "app/engine/tool.h"
#include "app/gui/document/checker.h"
#include "app/gui/document/document.h"
#include "app/gui/questions.h"

#include <functional>
#include <QDialog>

namespace pw::gui {

class FieldEditor;
class FieldFlow;
class TextBlock;
class VerdictHead;

using ToolFunction = std::function<engine::OtherUse(const job::Job& tool, const job::Job& part,
                                                    const std::string& name, const engine::CheckOptions&)>;

/// Will the tool that is already on the wall do? Its figures, typed or taken from its own job, tried on the
/// job that is open. Nothing of that job is changed.
class ToolDialog : public QDialog {
    Q_OBJECT

public:
    /// Begins with the plate of the open job.
    ToolDialog(const Document& part, units::System system, ToolFunction tryTool, const Questions& questions,
               QWidget* parent);
    ~ToolDialog() override;

    Document& tool() { return m_tool; }
    const VerdictHead& head() const { return *m_head; }
    QString remarks() const;
    bool isBusy() const { return m_checker.isBusy(); }
    /// Another tool's job in place of the figures; what went wrong stands among the remarks.
    void take(const std::filesystem::path& file);

protected:
    void paintEvent(QPaintEvent*) override;

private:
    void build();
    void toolChanged();
    void show(const engine::Report& report);

    units::System m_units;
    Document m_tool;
    Checker m_checker;
    FieldFlow* m_flow;
    std::vector<FieldEditor*> m_editors;
    std::string m_asked; ///< which fields there are
    VerdictHead* m_head;
    TextBlock* m_remarks;
};

} // namespace pw::gui
