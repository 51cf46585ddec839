#pragma once

#include "app/engine/ladder.h"
#include "app/gui/document/newest_work.h"

#include <functional>
#include <memory>
#include <optional>
#include <QObject>

namespace pw::gui {

using LadderFunction = std::function<engine::Ladder(const job::Job&, const engine::CheckOptions&)>;

/// Finds the thickness ladder of the job off the GUI thread, once the job has been left alone for a moment.
/// The newest question wins. A ladder does not hang on the plate's own thickness or on words, so changing
/// those asks for nothing.
class LadderFinder : public QObject {
    Q_OBJECT

public:
    /// How long the job must rest: a ladder is a dozen checks and must not hold up the verdict.
    static constexpr int kRestMs = 120;

    explicit LadderFinder(LadderFunction find, QObject* parent = nullptr);

    void ask(const job::Job& job);
    /// The job is another now and will be asked about later: a search that is of no use any more stops at
    /// once and leaves the processor to the verdict.
    void overtake(const job::Job& job);
    /// There can be no ladder of the job as it is now; a running search is stopped.
    void forget();
    bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    /// Null: what is known no longer holds and newer work has begun, or it failed.
    void found(std::shared_ptr<const engine::Ladder> ladder);
    void failed(const QString& what);

private:
    void stop();

    LadderFunction m_find;
    std::optional<job::Job> m_asked, m_answered; ///< looked for now; known
    NewestWork m_work;                           // last: its thread asks the function
};

} // namespace pw::gui
