#pragma once

#include "app/engine/rack.h"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

namespace pw::gui {

using RankFunction =
    std::function<engine::RackAnswer(const job::Job&, const rack::RackReading&, const engine::RackOptions&)>;

/// Ranks the rack's pieces for the job off the GUI thread, on copies, once both have been left alone for a
/// moment. The newest question wins: what an older one still answers is dropped.
class RackRanker : public QObject {
    Q_OBJECT

public:
    /// How long job and rack must rest.
    static constexpr int kRestMs = 150;
    /// Work longer than this shows that it is running.
    static constexpr int kSlowMs = 200;

    explicit RackRanker(RankFunction rank, QObject* parent = nullptr);
    ~RackRanker() override;

    void ask(const job::Job& job, std::shared_ptr<const rack::RackReading> rack, engine::Prefer prefer);
    /// No answer is wanted any more: the page was left, or the person said so.
    void stop();
    bool isBusy() const { return m_running || m_waiting.has_value(); }

Q_SIGNALS:
    /// `rack`: what was ranked.
    void found(std::shared_ptr<const engine::RackAnswer> answer,
               std::shared_ptr<const rack::RackReading> rack);
    void failed(const QString& what);
    /// Only once the work has taken longer than kSlowMs. `done` 0..1.
    void slow(double done, const QString& what);

private:
    struct Question {
        job::Job job;
        std::shared_ptr<const rack::RackReading> rack;
        engine::Prefer prefer = engine::Prefer::LeastWaste;
    };

    void start();
    void finish(std::shared_ptr<const engine::RackAnswer> answer, const QString& error);

    RankFunction m_rank;
    QThreadPool m_pool;
    QTimer m_rest, m_slowTimer;
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_running = false, m_isSlow = false;
    double m_done = 0;
    QString m_what;
    std::optional<Question> m_waiting, m_asked;
};

} // namespace pw::gui
