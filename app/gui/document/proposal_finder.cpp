#include "app/gui/document/proposal_finder.h"

#include <exception>
#include <QMetaObject>

namespace pw::gui {

ProposalFinder::ProposalFinder(ProposeFunction propose, QObject* parent)
    : QObject(parent), m_propose(std::move(propose)) {
    m_pool.setMaxThreadCount(1);
    m_rest.setSingleShot(true);
    connect(&m_rest, &QTimer::timeout, this, &ProposalFinder::start);
}

ProposalFinder::~ProposalFinder() {
    if (m_stop)
        m_stop->store(true);
    m_pool.waitForDone();
}

void ProposalFinder::ask(const jobfile::Tree& job, units::System system) {
    if (!m_propose)
        return;
    // The first question waits for nothing; one that follows on its heels may be followed by more.
    m_rest.setInterval(isBusy() ? kRestMs : 0);
    if (m_running)
        m_stop->store(true);
    m_waiting = Question{job, system};
    m_rest.start();
}

void ProposalFinder::stop() {
    m_waiting.reset();
    m_rest.stop();
    if (m_running)
        m_stop->store(true);
}

void ProposalFinder::start() {
    if (!m_waiting || m_running) // a running one starts the next when it has stopped
        return;
    m_running = true;
    Question asked = std::move(*m_waiting);
    m_waiting.reset();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    m_pool.start([this, question = std::move(asked), stop = m_stop] {
        std::shared_ptr<const engine::Proposals> proposals;
        QString error;
        engine::CheckOptions options;
        int told = -1; // in steps that can be seen: propose() tells one at a time
        options.progress = [this, stop, &told](double done, std::string_view what) {
            if (stop->load())
                return false;
            if (const int step = static_cast<int>(done * 200); step != told) {
                told = step;
                const auto words = QString::fromUtf8(what.data(), static_cast<qsizetype>(what.size()));
                QMetaObject::invokeMethod(
                    this,
                    [this, stop, done, words] {
                        if (!stop->load())
                            Q_EMIT progressed(done, words);
                    },
                    Qt::QueuedConnection);
            }
            return true;
        };
        try {
            proposals =
                std::make_shared<const engine::Proposals>(m_propose(question.job, options, question.system));
        } catch (const engine::Stopped&) {
        } catch (const std::exception& e) {
            error = QString::fromUtf8(e.what());
        } catch (...) {
            error = tr("an unknown fault");
        }
        QMetaObject::invokeMethod(
            this, [this, proposals, error] { finish(proposals, error); }, Qt::QueuedConnection);
    });
}

void ProposalFinder::finish(std::shared_ptr<const engine::Proposals> proposals, const QString& error) {
    m_running = false;
    const bool overtaken = m_stop->load();
    if (m_waiting) {
        if (!m_rest.isActive())
            start();
        return;
    }
    if (overtaken)
        return;
    if (proposals)
        Q_EMIT found(proposals);
    else if (!error.isEmpty())
        Q_EMIT failed(error);
}

} // namespace pw::gui
