#pragma once

#include "app/gui/document/journal.h"

#include <functional>
#include <memory>
#include <QElapsedTimer>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

namespace pw::gui {

class Document;

/// Sees to it that the journal has the job as it is: a moment after each edit, off the GUI thread, not in the
/// middle of a drag; and that it is empty when the job is saved.
class JobKeeper : public QObject {
    Q_OBJECT

public:
    static constexpr int kQuietMs = 500;    ///< after the last edit
    static constexpr int kLongestMs = 3000; ///< while edit follows edit

    JobKeeper(Document& document, std::filesystem::path folder, QObject* parent = nullptr);
    ~JobKeeper() override;

    Journal& journal() { return *m_journal; }

    /// Says whether something is being dragged just now; by default whether a mouse button is down.
    void setHeldTest(std::function<bool()> isHeld) { m_isHeld = std::move(isHeld); }

    /// Writes what is not written yet, and waits for it. False when it could not be written.
    bool flush();
    /// Takes a job that was left behind into this window; false when another one was quicker.
    bool takeBack(const KeptJob& kept);
    /// The person is done with the job.
    void forget();

Q_SIGNALS:
    /// The journal could not be written; empty when it can be again.
    void trouble(const QString& what);

private:
    void edited();
    void filed();
    void due();
    void write();
    void written(const util::Status& status);

    Document& m_document;
    std::unique_ptr<Journal> m_journal;
    std::function<bool()> m_isHeld;
    QThreadPool m_pool;
    QTimer m_timer;
    QElapsedTimer m_waiting; ///< since the first edit that is not written
    bool m_isKept = false;   ///< the journal has something, or will have soon
    bool m_inTrouble = false;
    std::shared_ptr<bool> m_lastWrite; ///< how the last write ended; looked at when the pool is done
};

} // namespace pw::gui
