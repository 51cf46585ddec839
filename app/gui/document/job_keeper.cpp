#include "app/gui/document/job_keeper.h"

#include "app/gui/document/document.h"

#include <algorithm>
#include <QGuiApplication>

namespace pw::gui {

JobKeeper::JobKeeper(Document& document, std::filesystem::path folder, QObject* parent)
    : QObject(parent), m_document(document), m_journal(std::make_unique<Journal>(std::move(folder))),
      m_isHeld([] { return QGuiApplication::mouseButtons() != Qt::NoButton; }) {
    m_pool.setMaxThreadCount(1); // in the order in which they happened
    m_timer.setSingleShot(true);
    connect(&m_timer, &QTimer::timeout, this, &JobKeeper::due);
    connect(&m_document, &Document::changed, this, &JobKeeper::edited);
    connect(&m_document, &Document::fileChanged, this, &JobKeeper::filed);
    (void)m_journal->take(); // here, so that the other windows' locks are told from ours; keep() says trouble
    m_journal->setOpenFile(m_document.path());
}

JobKeeper::~JobKeeper() {
    m_pool.waitForDone();
}

void JobKeeper::edited() {
    if (!m_waiting.isValid())
        m_waiting.start();
    const auto left = std::max<qint64>(kLongestMs - m_waiting.elapsed(), 0);
    m_timer.start(static_cast<int>(std::min<qint64>(kQuietMs, left)));
}

void JobKeeper::filed() {
    m_journal->setOpenFile(m_document.path());
    // Saved, opened, undone to what is saved: the file on the disk is the job.
    if (!m_document.isChanged())
        forget();
    else
        edited();
}

void JobKeeper::due() {
    if (m_isHeld()) {
        m_timer.start(kQuietMs / 2);
        return;
    }
    m_waiting.invalidate();
    if (m_document.isChanged())
        write();
    else
        forget();
}

void JobKeeper::write() {
    m_timer.stop();
    m_waiting.invalidate();
    m_isKept = true;
    auto wentWell = std::make_shared<bool>(false);
    m_lastWrite = wentWell;
    m_pool.start([this, wentWell, tree = m_document.tree(), file = m_document.path(),
                  revision = m_document.revision()] {
        const auto status = m_journal->keep(tree, file, revision);
        *wentWell = status.ok();
        QMetaObject::invokeMethod(
            this, [this, status] { written(status); }, Qt::QueuedConnection);
    });
}

void JobKeeper::written(const util::Status& status) {
    if (status.ok() == !m_inTrouble)
        return;
    m_inTrouble = !status.ok();
    Q_EMIT trouble(status.ok() ? QString() : QString::fromStdString(status.problem().message));
}

bool JobKeeper::flush() {
    if (m_document.isChanged() && (m_timer.isActive() || !m_isKept))
        write();
    m_pool.waitForDone();
    return !m_lastWrite || *m_lastWrite;
}

bool JobKeeper::takeBack(const KeptJob& kept) {
    m_pool.waitForDone();
    if (!m_journal->takeOver(kept))
        return false;
    // The journal has it already; opening the file it belongs to is no reason to empty it.
    m_isKept = false;
    m_document.recover(kept.tree, kept.jobFile);
    if (m_document.isChanged())
        flush();
    else
        m_journal->forget();
    return true;
}

void JobKeeper::forget() {
    m_timer.stop();
    m_waiting.invalidate();
    m_pool.waitForDone();
    if (m_isKept)
        m_journal->forget();
    m_isKept = false;
    m_lastWrite.reset();
}

} // namespace pw::gui
