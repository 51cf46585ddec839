#include "app/gui/document/rack_ranker.h"

#include <exception>
#include <QMetaObject>

namespace pw::gui {

RackRanker::RackRanker(RankFunction rank, QObject* parent) : QObject(parent), m_rank(std::move(rank)) {
    m_pool.setMaxThreadCount(1);
    m_rest.setSingleShot(true);
    m_rest.setInterval(kRestMs);
    connect(&m_rest, &QTimer::timeout, this, &RackRanker::start);
    m_slowTimer.setSingleShot(true);
    m_slowTimer.setInterval(kSlowMs);
    connect(&m_slowTimer, &QTimer::timeout, this, [this] {
        m_isSlow = true;
        Q_EMIT slow(m_done, m_what);
    });
}

RackRanker::~RackRanker() {
    if (m_stop)
        m_stop->store(true);
    m_pool.waitForDone();
}

void RackRanker::ask(const job::Job& job, std::shared_ptr<const rack::RackReading> rack,
                     engine::Prefer prefer) {
    if (!m_rank || !rack)
        return;
    if (m_running)
        m_stop->store(true);
    if (!m_slowTimer.isActive() && !isBusy())
        m_slowTimer.start();
    m_waiting = Question{job, std::move(rack), prefer};
    m_rest.start();
}

void RackRanker::stop() {
    m_waiting.reset();
    m_rest.stop();
    m_slowTimer.stop();
    m_isSlow = false;
    if (m_running)
        m_stop->store(true);
}

void RackRanker::start() {
    if (!m_waiting || m_running) // a running one starts the next when it has stopped
        return;
    m_running = true;
    m_done = 0;
    m_what.clear();
    m_asked = std::move(*m_waiting);
    m_waiting.reset();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, question = *m_asked, stop = m_stop] {
        std::shared_ptr<const engine::RackAnswer> answer;
        QString error;
        engine::RackOptions options;
        options.prefer = question.prefer;
        options.progress = [this, stop](double done, std::string_view what) {
            if (stop->load())
                return false;
            const auto words = QString::fromUtf8(what.data(), static_cast<qsizetype>(what.size()));
            QMetaObject::invokeMethod(
                this,
                [this, stop, done, words] {
                    if (stop->load())
                        return;
                    m_done = done;
                    m_what = words;
                    if (m_isSlow)
                        Q_EMIT slow(done, words);
                },
                Qt::QueuedConnection);
            return true;
        };
        try {
            answer =
                std::make_shared<const engine::RackAnswer>(m_rank(question.job, *question.rack, options));
        } catch (const engine::Stopped&) {
        } catch (const std::exception& e) {
            error = QString::fromUtf8(e.what());
        } catch (...) {
            error = tr("an unknown fault");
        }
        QMetaObject::invokeMethod(
            this, [this, answer, error] { finish(answer, error); }, Qt::QueuedConnection);
    });
}

void RackRanker::finish(std::shared_ptr<const engine::RackAnswer> answer, const QString& error) {
    m_running = false;
    const bool overtaken = m_stop->load();
    if (m_waiting) {
        if (!m_rest.isActive())
            start();
        return;
    }
    m_slowTimer.stop();
    m_isSlow = false;
    if (overtaken)
        return;
    if (answer)
        Q_EMIT found(answer, m_asked->rack);
    else if (!error.isEmpty())
        Q_EMIT failed(error);
}

} // namespace pw::gui
