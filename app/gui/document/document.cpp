#include "app/gui/document/document.h"

#include "app/gui/models/assumed_text.h"
#include "core/jobfile/json.h"
#include "core/util/write_file.h"

namespace pw::gui {

namespace {

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

Document::Document(QObject* parent) : TreeDocument(parent) {
    connect(&undoStack(), &QUndoStack::cleanChanged, this, &Document::fileChanged);
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

QString Document::assumedAt(const std::string& path, const engine::Report* report,
                            units::System system) const {
    return assumedText(path, job(), report, system);
}

util::Problems Document::problemsIn(const jobfile::Tree& tree) const {
    return jobfile::readJob(tree).problems;
}

// NOLINTNEXTLINE(performance-unnecessary-value-param): handed over as it is to recover(), which keeps it
void Document::startNew(jobfile::Tree tree) {
    undoStack().clear();
    m_path.clear();
    m_onDisk.clear();
    Q_EMIT replaced();
    setTree(tree);
    Q_EMIT fileChanged();
}

util::Status Document::open(const std::filesystem::path& file) {
    // Read first: a change between the two is then noticed, not taken for what was opened.
    const auto text = util::readFile(file);
    auto loaded = jobfile::loadTree(file);
    if (!loaded)
        return loaded.problem();
    undoStack().clear();
    m_path = file;
    m_onDisk = text ? *text : std::string();
    Q_EMIT replaced();
    setTree(*loaded);
    Q_EMIT fileChanged();
    return util::Done{};
}

util::Status Document::save() {
    return saveAs(m_path);
}

util::Status Document::saveAs(const std::filesystem::path& file) {
    const std::string text = jobfile::toJson(tree());
    m_saveRemark = keepCopy(file, text);
    auto saved = util::writeFileWhole(file, text);
    if (!saved)
        return saved;
    m_path = file;
    m_onDisk = text;
    undoStack().setClean();
    Q_EMIT fileChanged();
    return saved;
}

util::Status Document::revert() {
    const auto text = util::readFile(m_path);
    auto loaded = jobfile::loadTree(m_path);
    if (!loaded)
        return loaded.problem();
    m_onDisk = text ? *text : std::string();
    Q_EMIT replaced();
    replace(std::move(*loaded), tr("Back to what is saved"));
    undoStack().setClean();
    Q_EMIT fileChanged();
    return util::Done{};
}

void Document::recover(jobfile::Tree tree, const std::filesystem::path& file) {
    if (!file.empty() && open(file)) {
        replace(std::move(tree), tr("Taken back"));
        return;
    }
    undoStack().clear();
    m_path = file;
    m_onDisk.clear();
    Q_EMIT replaced();
    setTree(tree);
    undoStack().resetClean();
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
    undoStack().resetClean();
    Q_EMIT fileChanged();
}

} // namespace pw::gui
