#include "app/gui/document/ladder_finder.h"

#include <exception>
#include <QMetaObject>

namespace pw::gui {

namespace {

/// The job without what its ladder does not hang on.
job::Job essence(job::Job job) {
    job.plate.thickness.reset();
    job.title.clear();
    job.notes.clear();
    return job;
}

} // namespace

LadderFinder::LadderFinder(LadderFunction find, QObject* parent) : QObject(parent), m_find(std::move(find)) {
    m_pool.setMaxThreadCount(1);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &LadderFinder::start);
}

LadderFinder::~LadderFinder() {
    if (m_stop)
        m_stop->store(true);
    m_pool.waitForDone();
}

void LadderFinder::ask(const job::Job& job) {
    if (!m_find)
        return;
    job::Job question = essence(job);
    if (m_answered && *m_answered == question) {
        // Changed and changed back: what is known holds, what runs is of no use.
        m_waiting.reset();
        m_rest.stop();
        if (m_running)
            m_stop->store(true);
        return;
    }
    const bool same = (m_waiting && *m_waiting == question) ||
                      (m_running && !m_waiting && !m_stop->load() && m_asked && *m_asked == question);
    if (same)
        return;
    if (m_running)
        m_stop->store(true);
    m_waiting = std::move(question);
    m_rest.start();
}

void LadderFinder::overtake(const job::Job& job) {
    const job::Job question = essence(job);
    if (m_waiting && *m_waiting != question) {
        m_waiting.reset();
        m_rest.stop();
    }
    if (m_running && *m_asked != question)
        m_stop->store(true);
}

void LadderFinder::forget() {
    m_waiting.reset();
    m_answered.reset();
    m_rest.stop();
    if (m_running)
        m_stop->store(true);
    Q_EMIT found(nullptr);
}

void LadderFinder::start() {
    if (!m_waiting || m_running) // a running one starts the next when it has stopped
        return;
    m_running = true;
    m_asked = std::move(*m_waiting);
    m_waiting.reset();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, job = *m_asked, stop = m_stop] {
        std::shared_ptr<const engine::Ladder> ladder;
        QString error;
        engine::CheckOptions options;
        options.progress = [stop](double, std::string_view) { return !stop->load(); };
        try {
            ladder = std::make_shared<const engine::Ladder>(m_find(job, options));
        } catch (const engine::Stopped&) {
        } catch (const std::exception& e) {
            error = QString::fromUtf8(e.what());
        } catch (...) {
            error = tr("an unknown fault");
        }
        if (stop->load())
            ladder.reset();
        QMetaObject::invokeMethod(
            this, [this, job, ladder, error] { finish(job, ladder, error); }, Qt::QueuedConnection);
    });
}

void LadderFinder::finish(const job::Job& job, std::shared_ptr<const engine::Ladder> ladder,
                          const QString& error) {
    m_running = false;
    const bool overtaken = m_stop->load();
    if (!overtaken && ladder) {
        m_answered = job;
        Q_EMIT found(ladder);
    } else if (!overtaken && !error.isEmpty()) {
        m_answered.reset();
        Q_EMIT failed(error);
    }
    if (m_waiting && !m_rest.isActive())
        start();
}

} // namespace pw::gui
