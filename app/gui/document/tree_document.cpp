#include "app/gui/document/tree_document.h"

#include "app/gui/document/edit_command.h"

namespace pw::gui {

using jobfile::Tree;

namespace {

/// Is `field` the path itself or something inside it?
bool concerns(const std::string& field, const std::string& path) {
    if (!field.starts_with(path))
        return false;
    return field.size() == path.size() || field[path.size()] == '.' || field[path.size()] == '[';
}

std::optional<QString> messageAt(const util::Problems& problems, const std::string& path) {
    for (const auto& problem : problems)
        if (concerns(problem.field, path))
            return QString::fromStdString(problem.message);
    return {};
}

} // namespace

void TreeDocument::setTree(const Tree& tree) {
    m_tree = tree;
    read();
    ++m_revision;
    Q_EMIT changed();
}

void TreeDocument::edit(const std::string& path, Tree value, const QString& label, int gesture) {
    Tree after = m_tree;
    if (value.isNull())
        after.erase(path);
    else
        after.set(path, std::move(value));
    replace(std::move(after), label, path, gesture);
}

void TreeDocument::replace(Tree after, const QString& label, const std::string& key, int gesture) {
    if (after == m_tree)
        return;
    m_inGesture = gesture != 0;
    m_undo.push(new EditCommand(*this, std::move(after), label, key, gesture));
    m_inGesture = false;
}

std::optional<QString> TreeDocument::objection(const std::string& path, const Tree& value) const {
    Tree trial = m_tree;
    if (value.isNull())
        trial.erase(path);
    else
        trial.set(path, value);
    return objectionTo(trial, path);
}

std::optional<QString> TreeDocument::objectionTo(const Tree& trial, const std::string& path) const {
    return messageAt(problemsIn(trial), path);
}

std::optional<QString> TreeDocument::problemAt(const std::string& path) const {
    return messageAt(problems(), path);
}

QString TreeDocument::assumedAt(const std::string&, const engine::Report*, units::System) const {
    return {};
}

} // namespace pw::gui
