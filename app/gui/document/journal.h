#pragma once

#include "core/jobfile/tree.h"
#include "core/util/result.h"

#include <filesystem>
#include <mutex>
#include <QDateTime>
#include <QString>
#include <vector>

namespace pw::gui {

/// A job with unsaved changes, as it was last written down.
struct KeptJob {
    std::filesystem::path journal; ///< the file that holds it
    std::filesystem::path jobFile; ///< where it belongs; empty when it was never saved
    quint64 revision = 0;
    QDateTime written;
    jobfile::Tree tree;

    /// Its title, or its file's name, or nothing.
    QString name() const;
};

/// What a window writes down of the job it is changing, so that no crash or power cut takes more than the
/// last moment. One file a window, in a folder that all windows of a person share; it is a whole job file
/// with one key more, so that it can even be opened by hand. Beside it lies a lock that the system lets go of
/// when the process dies, however it dies: a journal without a held lock was left behind. Never thrown away
/// but by forget() and discard().
class Journal {
public:
    explicit Journal(std::filesystem::path folder);
    ~Journal(); ///< lets go of the lock; what is kept stays
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;

    /// In the person's data folder (Qt names the state folder only from 6.7 on).
    static std::filesystem::path standardFolder();

    /// A place of its own in the folder; what is below does it when it is needed.
    util::Status take();
    /// Whole or not at all. May run off the GUI thread, once at a time.
    util::Status keep(const jobfile::Tree& tree, const std::filesystem::path& jobFile, quint64 revision);
    /// Saved, or given up by the person: nothing to keep any more.
    void forget();

    /// What processes that are gone have left, newest first. One that cannot be read is left where it is.
    std::vector<KeptJob> leftBehind() const;
    /// Makes it this window's own; false when another window was quicker.
    bool takeOver(const KeptJob& kept);
    /// Throws it away; false when another window was quicker.
    static bool discard(const KeptJob& kept);

    /// Tells the other windows which file is open here (empty: none).
    void setOpenFile(const std::filesystem::path& jobFile);
    /// Has another window this file open?
    bool isOpenElsewhere(const std::filesystem::path& jobFile) const;

    const std::filesystem::path& file() const { return m_file; }

private:
    std::mutex m_taking;
    std::filesystem::path m_folder, m_file, m_lockFile, m_openFile;
    int m_lock = -1;
};

} // namespace pw::gui
