#pragma once

#include "app/engine/check.h"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>

namespace pw::gui {

using CheckFunction = std::function<engine::Report(const job::Job&, const engine::CheckOptions&)>;
using MendFunction = std::function<std::vector<engine::Change>(const job::Job&, const engine::Report&,
                                                               const engine::CheckOptions&)>;

/// Checks a copy of the job off the GUI thread. The newest question wins: asking again tells a running check
/// to stop, and whatever an older question still answers is dropped.
class Checker : public QObject {
    Q_OBJECT

public:
    /// Work longer than this shows that it is running.
    static constexpr int kSlowMs = 200;

    /// `mend` may be empty: then nothing is looked for.
    explicit Checker(CheckFunction check, MendFunction mend = {}, QObject* parent = nullptr);
    ~Checker() override;

    void ask(const job::Job& job, quint64 revision);
    bool isBusy() const { return m_running || m_waiting; }

Q_SIGNALS:
    /// Twice for a verdict that does not hold: at once, and again with what would change it.
    void answered(quint64 revision, std::shared_ptr<const engine::Report> report);
    /// The check threw: a bug, told in words.
    void failed(quint64 revision, const QString& what);
    /// Only once the work has taken longer than kSlowMs. `done` 0..1.
    void slow(double done, const QString& what);

private:
    struct Question {
        job::Job job;
        quint64 revision = 0;
    };

    void start(Question question);
    void finish(quint64 revision, std::shared_ptr<const engine::Report> report, const QString& error,
                bool stopped);

    CheckFunction m_check;
    MendFunction m_mend;
    QThreadPool m_pool;
    QTimer m_slowTimer;
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_running = false;
    bool m_isSlow = false;
    double m_done = 0;
    QString m_what;
    std::optional<Question> m_waiting;
};

} // namespace pw::gui
