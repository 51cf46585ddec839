#pragma once

#include "app/engine/work_estimate.h"

#include <atomic>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <QObject>
#include <QString>
#include <QTimer>
#include <string_view>
#include <thread>

namespace pw::gui {

/// Work beside the window's thread, of which only the newest question counts: asking again tells what runs to
/// stop, and what an older question still answers is dropped.
class NewestWork : public QObject {
    Q_OBJECT

public:
    /// Work longer than this shows that it is running.
    static constexpr int kSlowMs = 200;

    using Then = std::function<void()>;

    /// What the work may call from its own thread.
    class Beside {
    public:
        /// For the engine's options: false once nobody waits for the answer any more.
        std::function<bool(double done, std::string_view what)> progress;
        /// Says before it starts how long it will take and what memory, where that is worth saying.
        void foretell(const engine::WorkEstimate& estimate) const;
        /// Runs `then` in the window's thread, unless nobody waits any more.
        std::function<void(Then)> tell;

    private:
        friend class NewestWork;
        NewestWork* m_work = nullptr;
    };

    /// Runs in a thread of its own, on copies; what it gives back runs in the window's thread. May throw:
    /// engine::Stopped after `progress` said false, anything else is a fault and is told.
    using Work = std::function<Then(const Beside&)>;

    explicit NewestWork(QObject* parent = nullptr);
    ~NewestWork() override;

    /// `restMs`: begun only once nothing else has been asked for so long.
    void ask(Work work, int restMs = 0);
    /// No answer is wanted any more.
    void stop();
    /// What is still to come is looked for in silence: an answer is there.
    void hush();
    /// An answer is waited for.
    bool isBusy() const { return m_waiting || (m_running && !m_stop->load()); }

Q_SIGNALS:
    /// Empty where it is neither long nor much.
    void foretold(const QString& words);
    /// Only once the work has taken longer than kSlowMs. `done` 0..1.
    void slow(double done, const QString& what);
    void failed(const QString& what);

private:
    void start();
    void finish(const Then& then, const QString& error);
    /// From any thread: `then` runs in the window's.
    void post(Then then);
    Q_INVOKABLE void takePosted();

    // Handed over by the standard library's means, both ways: the thread sanitizer sees those, and not Qt's.
    std::thread m_thread;
    std::mutex m_posting;
    std::deque<Then> m_posted;
    QTimer m_rest, m_slowTimer;
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_running = false, m_isSlow = false;
    double m_done = 0;
    QString m_what;
    Work m_waiting;
};

} // namespace pw::gui
