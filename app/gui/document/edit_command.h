#pragma once

#include "core/jobfile/tree.h"

#include <QUndoCommand>
#include <string>

namespace pw::gui {

class Document;

/// The one kind of edit: the whole job before and after. A job is small, so this costs nothing and cannot go
/// wrong.
class EditCommand : public QUndoCommand {
public:
    EditCommand(Document& document, jobfile::Tree after, const QString& label, std::string key, int gesture);

    void undo() override;
    void redo() override;
    int id() const override { return 1; }
    bool mergeWith(const QUndoCommand* next) override;

private:
    Document& m_document;
    jobfile::Tree m_before, m_after;
    std::string m_key;
    int m_gesture;
};

} // namespace pw::gui
