#pragma once

#include "app/gui/document/tree_document.h"
#include "core/jobfile/read.h"

#include <filesystem>

namespace pw::gui {

/// The one job that is open, and the only one who writes it. The truth is the tree as it was typed; the job
/// read from it is worked out anew after every edit.
class Document : public TreeDocument {
    Q_OBJECT

public:
    explicit Document(QObject* parent = nullptr);

    const job::Job& job() const { return m_reading.job; }
    const jobfile::Reading& reading() const { return m_reading; }

    const std::filesystem::path& path() const { return m_path; }
    /// Title of the job, or the file's name, or "New job".
    QString name() const;
    bool isChanged() const { return !undoStack().isClean(); }

    QString assumedAt(const std::string& path, const engine::Report* report,
                      units::System system) const override;

    void startNew(jobfile::Tree tree);
    util::Status open(const std::filesystem::path& file);
    /// To the file it came from, whoever wrote it last; see onDisk().
    util::Status save();
    /// What the file held until now, if it was a whole job, stays beside it as NAME~.
    util::Status saveAs(const std::filesystem::path& file);
    /// What the last save could not do, though it did save: keep the copy. Empty when all went well.
    const QString& saveRemark() const { return m_saveRemark; }
    /// Takes what the file holds now as one more step: undo goes back to what stood here.
    util::Status revert();
    /// A job that was left behind by a crash: what the file holds, and the change to it as one step.
    void recover(jobfile::Tree tree, const std::filesystem::path& file);

    /// The file beside what was last read from it or written to it here.
    enum class OnDisk { Same, Changed, Gone };
    OnDisk onDisk() const;
    /// The file is gone: the job counts as not saved.
    void fileLost();

Q_SIGNALS:
    /// Another path, another saved state.
    void fileChanged();

protected:
    void read() override { m_reading = jobfile::readJob(tree()); }
    const util::Problems& problems() const override { return m_reading.problems; }
    util::Problems problemsIn(const jobfile::Tree& tree) const override;

private:
    jobfile::Reading m_reading;
    std::filesystem::path m_path;
    std::string m_onDisk; ///< content of the file as last read or written here
    QString m_saveRemark;
};

} // namespace pw::gui
