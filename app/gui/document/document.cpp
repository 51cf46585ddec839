#include "app/gui/document/document.h"

#include "app/gui/document/edit_command.h"
#include "core/jobfile/json.h"
#include "core/util/write_file.h"

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

/// What is about to be replaced, put beside it, if it is a whole job and another one. What went wrong, or
/// nothing: for want of a copy no job is left unsaved.
QString keepCopy(const std::filesystem::path& file, const std::string& next) {
    const auto before = util::readFile(file);
    if (!before || *before == next || !jobfile::loadTree(file))
        return {};
    std::filesystem::path copy = file;
    copy += "~";
    const auto kept = util::writeFileWhole(copy, *before);
    return kept ? QString()
                : Document::tr("The copy of what it held before, %1, was %2.")
                      .arg(QString::fromStdString(copy.filename().string()),
                           QString::fromStdString(kept.problem().message));
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

std::optional<QString> Document::objectionTo(const jobfile::Tree& trial, const std::string& path) const {
    return messageAt(jobfile::readJob(trial).problems, path);
}

std::optional<QString> Document::problemAt(const std::string& path) const {
    return messageAt(m_reading.problems, path);
}

void Document::startNew(jobfile::Tree tree) {
    m_undo.clear();
    m_path.clear();
    m_onDisk.clear();
    setTree(tree);
    Q_EMIT fileChanged();
}

util::Status Document::open(const std::filesystem::path& file) {
    // Read first: a change between the two is then noticed, not taken for what was opened.
    const auto text = util::readFile(file);
    auto loaded = jobfile::loadTree(file);
    if (!loaded)
        return loaded.problem();
    m_undo.clear();
    m_path = file;
    m_onDisk = text ? *text : std::string();
    setTree(*loaded);
    Q_EMIT fileChanged();
    return util::Done{};
}

util::Status Document::save() {
    return saveAs(m_path);
}

util::Status Document::saveAs(const std::filesystem::path& file) {
    const std::string text = jobfile::toJson(m_tree);
    m_saveRemark = keepCopy(file, text);
    auto saved = util::writeFileWhole(file, text);
    if (!saved)
        return saved;
    m_path = file;
    m_onDisk = text;
    m_undo.setClean();
    Q_EMIT fileChanged();
    return saved;
}

util::Status Document::revert() {
    const auto text = util::readFile(m_path);
    auto loaded = jobfile::loadTree(m_path);
    if (!loaded)
        return loaded.problem();
    m_onDisk = text ? *text : std::string();
    replace(std::move(*loaded), tr("Back to what is saved"));
    m_undo.setClean();
    Q_EMIT fileChanged();
    return util::Done{};
}

void Document::recover(jobfile::Tree tree, const std::filesystem::path& file) {
    if (!file.empty() && open(file)) {
        replace(std::move(tree), tr("Taken back"));
        return;
    }
    m_undo.clear();
    m_path = file;
    m_onDisk.clear();
    setTree(tree);
    m_undo.resetClean();
    Q_EMIT fileChanged();
}

Document::OnDisk Document::onDisk() const {
    if (m_path.empty())
        return OnDisk::Same;
    std::error_code error;
    if (!std::filesystem::exists(m_path, error))
        return error ? OnDisk::Same : OnDisk::Gone;
    const auto text = util::readFile(m_path);
    // What cannot be read now cannot be compared; saving will say what is the matter with it.
    return !text || *text == m_onDisk ? OnDisk::Same : OnDisk::Changed;
}

void Document::fileLost() {
    m_undo.resetClean();
    Q_EMIT fileChanged();
}

} // namespace pw::gui
