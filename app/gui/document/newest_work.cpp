#include "app/gui/document/newest_work.h"

#include "app/engine/check.h"

#include <exception>
#include <QMetaObject>
#include <QPointer>
#include <utility>

namespace pw::gui {

namespace {

/// Progress is told in steps that can be seen.
constexpr int kSteps = 200;

} // namespace

void NewestWork::Beside::foretell(const engine::WorkEstimate& estimate) const {
    const QString words = QString::fromStdString(engine::foretold(estimate));
    tell([work = m_work, words] { Q_EMIT work->foretold(words); });
}

NewestWork::NewestWork(QObject* parent) : QObject(parent) {
    m_rest.setSingleShot(true);
    connect(&m_rest, &QTimer::timeout, this, &NewestWork::start);
    m_slowTimer.setSingleShot(true);
    m_slowTimer.setInterval(kSlowMs);
    connect(&m_slowTimer, &QTimer::timeout, this, [this] {
        m_isSlow = true;
        Q_EMIT slow(m_done, m_what);
    });
}

NewestWork::~NewestWork() {
    if (m_stop)
        m_stop->store(true);
    if (m_thread.joinable())
        m_thread.join();
}

void NewestWork::ask(Work work, int restMs) {
    // The 200 ms run from the first question that is still unanswered: a person who keeps dragging waits as
    // well.
    if (!isBusy())
        m_slowTimer.start();
    if (m_running)
        m_stop->store(true);
    m_waiting = std::move(work);
    if (restMs > 0) {
        m_rest.start(restMs);
        return;
    }
    m_rest.stop();
    start();
}

void NewestWork::stop() {
    m_waiting = {};
    m_rest.stop();
    hush();
    if (m_running)
        m_stop->store(true);
}

void NewestWork::hush() {
    m_slowTimer.stop();
    m_isSlow = false;
}

void NewestWork::start() {
    if (!m_waiting || m_running) // a running one starts the next when it has stopped
        return;
    m_running = true;
    m_done = 0;
    m_what.clear();
    m_stop = std::make_shared<std::atomic<bool>>(false);
    if (m_thread.joinable())
        m_thread.join(); // its last word is there, so it has nothing left to do
    m_thread = std::thread([this, work = std::exchange(m_waiting, {}), stop = m_stop] {
        Beside beside;
        beside.m_work = this;
        beside.tell = [this, stop](Then then) {
            post([stop, then = std::move(then)] {
                if (!stop->load())
                    then();
            });
        };
        auto told = std::make_shared<std::atomic<int>>(-1); // the engine works with several threads
        beside.progress = [this, stop, told, tell = beside.tell](double done, std::string_view what) {
            if (stop->load())
                return false;
            const int step = static_cast<int>(done * kSteps);
            if (told->exchange(step) == step)
                return true;
            const auto words = QString::fromUtf8(what.data(), static_cast<qsizetype>(what.size()));
            tell([this, done, words] {
                m_done = done;
                m_what = words;
                if (m_isSlow)
                    Q_EMIT slow(done, words);
            });
            return true;
        };
        Then then;
        QString error;
        try {
            then = work(beside);
        } catch (const engine::Stopped&) {
            error = tr("the work was stopped");
        } catch (const std::exception& e) {
            error = QString::fromUtf8(e.what());
        } catch (...) {
            error = tr("an unknown fault");
        }
        post([this, then, error] { finish(then, error); });
    });
}

void NewestWork::post(Then then) {
    {
        const std::lock_guard lock(m_posting);
        m_posted.push_back(std::move(then));
    }
    QMetaObject::invokeMethod(this, "takePosted", Qt::QueuedConnection);
}

void NewestWork::takePosted() {
    const QPointer<NewestWork> alive(this); // what is run may throw us away, or wait in a loop of its own
    while (alive) {
        Then next;
        {
            const std::lock_guard lock(m_posting);
            if (m_posted.empty())
                return;
            next = std::move(m_posted.front());
            m_posted.pop_front();
        }
        next();
    }
}

void NewestWork::finish(const Then& then, const QString& error) {
    m_running = false;
    if (m_waiting) {
        if (!m_rest.isActive())
            start();
        return;
    }
    hush();
    if (m_stop->load())
        return;
    if (then)
        then();
    else
        Q_EMIT failed(error);
}

} // namespace pw::gui
