#pragma once

#include "core/jobfile/tree.h"

#include <QUndoCommand>
#include <string>

namespace pw::gui {

class TreeDocument;

/// The one kind of edit: the whole job, or rack, before and after. Both are small, so this costs nothing and
/// cannot go wrong.
class EditCommand : public QUndoCommand {
public:
    EditCommand(TreeDocument& document, jobfile::Tree after, const QString& label, std::string key,
                int gesture);

    void undo() override;
    void redo() override;
    int id() const override { return 1; }
    bool mergeWith(const QUndoCommand* next) override;

private:
    TreeDocument& m_document;
    jobfile::Tree m_before, m_after;
    std::string m_key;
    int m_gesture;
};

} // namespace pw::gui
