#include "app/gui/document/checker.h"

#include <exception>
#include <QMetaObject>

namespace pw::gui {

Checker::Checker(CheckFunction check, MendFunction mend, QObject* parent)
    : QObject(parent), m_check(std::move(check)), m_mend(std::move(mend)) {
    m_pool.setMaxThreadCount(1);
    m_slowTimer.setSingleShot(true);
    m_slowTimer.setInterval(kSlowMs);
    connect(&m_slowTimer, &QTimer::timeout, this, [this] {
        m_isSlow = true;
        Q_EMIT slow(m_done, m_what);
    });
}

Checker::~Checker() {
    if (m_stop)
        m_stop->store(true);
    m_pool.waitForDone();
}

void Checker::ask(const job::Job& job, quint64 revision) {
    // The 200 ms run from the first question that is still unanswered: a person who keeps dragging waits as
    // well.
    if (!m_slowTimer.isActive() && !isBusy())
        m_slowTimer.start();
    if (!m_running) {
        start({job, revision});
        return;
    }
    m_stop->store(true);
    m_waiting = Question{job, revision};
}

void Checker::start(Question question) {
    m_running = true;
    m_done = 0;
    m_what.clear();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    auto stop = m_stop;
    m_pool.start([this, question = std::move(question), stop] {
        std::shared_ptr<const engine::Report> report;
        QString error;
        bool stopped = false;
        engine::CheckOptions options;
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
        // The answer first; what would mend it costs more checks and follows.
        options.mend = false;
        try {
            report = std::make_shared<const engine::Report>(m_check(question.job, options));
            if (m_mend && report->grade != verdict::Grade::Holds) {
                QMetaObject::invokeMethod(
                    this,
                    [this, stop, report, revision = question.revision] {
                        if (stop->load())
                            return;
                        m_slowTimer.stop();
                        m_isSlow = false; // what follows is looked for in silence
                        Q_EMIT answered(revision, report);
                    },
                    Qt::QueuedConnection);
                auto whole = std::make_shared<engine::Report>(*report);
                whole->changes = m_mend(question.job, *report, options);
                report = whole;
            }
        } catch (const engine::Stopped&) {
            stopped = true;
        } catch (const std::exception& e) {
            error = QString::fromUtf8(e.what());
        } catch (...) {
            error = tr("an unknown fault");
        }
        QMetaObject::invokeMethod(
            this,
            [this, report, error, stopped, revision = question.revision] {
                finish(revision, report, error, stopped);
            },
            Qt::QueuedConnection);
    });
}

void Checker::finish(quint64 revision, std::shared_ptr<const engine::Report> report, const QString& error,
                     bool stopped) {
    m_running = false;
    if (m_waiting) {
        Question next = std::move(*m_waiting);
        m_waiting.reset();
        start(std::move(next));
        return;
    }
    m_slowTimer.stop();
    m_isSlow = false;
    if (report)
        Q_EMIT answered(revision, report);
    else if (!error.isEmpty())
        Q_EMIT failed(revision, error);
    else if (stopped)
        Q_EMIT failed(revision, tr("the check was stopped"));
}

} // namespace pw::gui
