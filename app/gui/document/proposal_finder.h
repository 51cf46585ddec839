#pragma once

#include "app/engine/propose.h"

#include <atomic>
#include <functional>
#include <memory>
#include <optional>
#include <QObject>
#include <QThreadPool>
#include <QTimer>

namespace pw::gui {

using ProposeFunction =
    std::function<engine::Proposals(const jobfile::Tree& job, const engine::CheckOptions&, units::System)>;

/// Looks for plates off the GUI thread, on a copy of the job. The newest question wins: what an older one
/// still answers is dropped.
class ProposalFinder : public QObject {
    Q_OBJECT

public:
    /// How long the job must rest once it has changed under a search.
    static constexpr int kRestMs = 150;

    explicit ProposalFinder(ProposeFunction propose, QObject* parent = nullptr);
    ~ProposalFinder() override;

    void ask(const jobfile::Tree& job, units::System system);
    /// No answer is wanted any more.
    void stop();
    bool isBusy() const { return m_waiting.has_value() || (m_running && !m_stop->load()); }

Q_SIGNALS:
    void found(std::shared_ptr<const engine::Proposals> proposals);
    void failed(const QString& what);
    /// `done` 0..1 of the search that is asked for now.
    void progressed(double done, const QString& what);

private:
    struct Question {
        jobfile::Tree job;
        units::System system = units::System::Metric;
    };

    void start();
    void finish(std::shared_ptr<const engine::Proposals> proposals, const QString& error);

    ProposeFunction m_propose;
    QThreadPool m_pool;
    QTimer m_rest;
    std::shared_ptr<std::atomic<bool>> m_stop;
    bool m_running = false;
    std::optional<Question> m_waiting;
};

} // namespace pw::gui
