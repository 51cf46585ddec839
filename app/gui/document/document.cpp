#include "app/gui/document/document.h"

#include "app/gui/document/edit_command.h"

namespace pw::gui {

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

Document::Document(QObject* parent) : QObject(parent) {
    connect(&m_undo, &QUndoStack::cleanChanged, this, &Document::fileChanged);
}

QString Document::name() const {
    if (!job().title.empty())
        return QString::fromStdString(job().title);
    if (!m_path.empty()) {
        QString file = QString::fromStdString(m_path.filename().string());
        if (file.endsWith(QLatin1String(".plate.json")))
            file.chop(11);
        return file;
    }
    return tr("New job");
}

void Document::setTree(const jobfile::Tree& tree) {
    m_tree = tree;
    m_reading = jobfile::readJob(m_tree);
    ++m_revision;
    Q_EMIT changed();
}

void Document::edit(const std::string& path, jobfile::Tree value, const QString& label, int gesture) {
    jobfile::Tree after = m_tree;
    if (value.isNull())
        after.erase(path);
    else
        after.set(path, std::move(value));
    replace(std::move(after), label, path, gesture);
}

void Document::replace(jobfile::Tree after, const QString& label, const std::string& key, int gesture) {
    if (after == m_tree)
        return;
    m_undo.push(new EditCommand(*this, std::move(after), label, key, gesture));
}

std::optional<QString> Document::objection(const std::string& path, const jobfile::Tree& value) const {
    jobfile::Tree trial = m_tree;
    if (value.isNull())
        trial.erase(path);
    else
        trial.set(path, value);
    return messageAt(jobfile::readJob(trial).problems, path);
}

std::optional<QString> Document::problemAt(const std::string& path) const {
    return messageAt(m_reading.problems, path);
}

void Document::startNew(jobfile::Tree tree) {
    m_undo.clear();
    m_path.clear();
    setTree(tree);
    Q_EMIT fileChanged();
}

util::Status Document::open(const std::filesystem::path& file) {
    auto loaded = jobfile::loadTree(file);
    if (!loaded)
        return loaded.problem();
    m_undo.clear();
    m_path = file;
    setTree(*loaded);
    Q_EMIT fileChanged();
    return util::Done{};
}

util::Status Document::save() {
    return saveAs(m_path);
}

util::Status Document::saveAs(const std::filesystem::path& file) {
    auto saved = jobfile::saveTree(m_tree, file);
    if (!saved)
        return saved;
    m_path = file;
    m_undo.setClean();
    Q_EMIT fileChanged();
    return saved;
}

} // namespace pw::gui
