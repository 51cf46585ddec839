#pragma once

#include "app/engine/rack.h"
#include "app/gui/document/newest_work.h"

#include <functional>
#include <memory>
#include <QObject>

namespace pw::gui {

using RankFunction =
    std::function<engine::RackAnswer(const job::Job&, const rack::RackReading&, const engine::RackOptions&)>;

/// Ranks the rack's pieces for the job off the GUI thread, on copies, once both have been left alone for a
/// moment. The newest question wins.
class RackRanker : public QObject {
    Q_OBJECT

public:
    /// How long job and rack must rest.
    static constexpr int kRestMs = 150;

    explicit RackRanker(RankFunction rank, QObject* parent = nullptr);

    void ask(const job::Job& job, std::shared_ptr<const rack::RackReading> rack, engine::Prefer prefer);
    /// No answer is wanted any more: the page was left, or the person said so.
    void stop() { m_work.stop(); }
    bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    /// `rack`: what was ranked.
    void found(std::shared_ptr<const engine::RackAnswer> answer,
               std::shared_ptr<const rack::RackReading> rack);
    void failed(const QString& what);
    /// As NewestWork's.
    void slow(double done, const QString& what);
    void foretold(const QString& words);

private:
    RankFunction m_rank;
    NewestWork m_work; // last: its thread asks the function
};

} // namespace pw::gui
