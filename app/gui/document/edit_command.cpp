#include "app/gui/document/edit_command.h"

#include "app/gui/document/tree_document.h"

namespace pw::gui {

EditCommand::EditCommand(TreeDocument& document, jobfile::Tree after, const QString& label, std::string key,
                         int gesture)
    : QUndoCommand(label), m_document(document), m_before(document.tree()), m_after(std::move(after)),
      m_key(std::move(key)), m_gesture(gesture) {}

void EditCommand::undo() {
    m_document.setTree(m_before);
}

void EditCommand::redo() {
    m_document.setTree(m_after);
}

bool EditCommand::mergeWith(const QUndoCommand* next) {
    const auto* later = dynamic_cast<const EditCommand*>(next);
    if (!later || later->m_gesture == 0 || later->m_gesture != m_gesture || later->m_key != m_key)
        return false;
    m_after = later->m_after;
    // Dragged back to where it began: no step at all.
    setObsolete(m_after == m_before);
    return true;
}

} // namespace pw::gui
