#pragma once

#include "core/jobfile/read.h"
#include "core/jobfile/tree.h"

#include <filesystem>
#include <optional>
#include <QObject>
#include <QString>
#include <QUndoStack>
#include <string>

namespace pw::gui {

/// The one job that is open, and the only one who writes it. The truth is the tree as it was typed; the job
/// read from it is worked out anew after every edit.
class Document : public QObject {
    Q_OBJECT

public:
    explicit Document(QObject* parent = nullptr);

    const jobfile::Tree& tree() const { return m_tree; }
    const job::Job& job() const { return m_reading.job; }
    const jobfile::Reading& reading() const { return m_reading; }
    QUndoStack& undoStack() { return m_undo; }

    /// Grows with every change; tells answers for an older job from those for this one.
    quint64 revision() const { return m_revision; }

    const std::filesystem::path& path() const { return m_path; }
    /// Title of the job, or the file's name, or "New job".
    QString name() const;
    bool isChanged() const { return !m_undo.isClean(); }

    /// Puts a value in (null takes it out). Edits of the same path in one gesture (a drag, a spell of typing)
    /// are one step of undo; gesture 0 is a step of its own.
    void edit(const std::string& path, jobfile::Tree value, const QString& label, int gesture = 0);
    /// Any change at all as one step. `key` says what was changed, for merging within a gesture.
    void replace(jobfile::Tree after, const QString& label, const std::string& key = {}, int gesture = 0);
    /// A number for a new gesture.
    int newGesture() { return ++m_gesture; }

    /// What the reader would object to in this figure if it stood there; nothing when it would be understood.
    std::optional<QString> objection(const std::string& path, const jobfile::Tree& value) const;
    /// The same when the whole job looked like `trial`.
    std::optional<QString> objectionTo(const jobfile::Tree& trial, const std::string& path) const;
    /// What the reader objects to at this path now.
    std::optional<QString> problemAt(const std::string& path) const;

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
    void changed();
    /// Another path, another saved state.
    void fileChanged();

private:
    friend class EditCommand;
    void setTree(const jobfile::Tree& tree);

    jobfile::Tree m_tree;
    jobfile::Reading m_reading;
    QUndoStack m_undo;
    std::filesystem::path m_path;
    std::string m_onDisk; ///< content of the file as last read or written here
    QString m_saveRemark;
    quint64 m_revision = 0;
    int m_gesture = 0;
};

} // namespace pw::gui
