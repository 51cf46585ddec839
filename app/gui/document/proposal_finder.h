#pragma once

#include "app/engine/propose.h"
#include "app/gui/document/newest_work.h"

#include <functional>
#include <memory>
#include <QObject>

namespace pw::gui {

using ProposeFunction =
    std::function<engine::Proposals(const jobfile::Tree& job, const engine::CheckOptions&, units::System)>;

/// Looks for plates off the GUI thread, on a copy of the job. The newest question wins.
class ProposalFinder : public QObject {
    Q_OBJECT

public:
    /// How long the job must rest once it has changed under a search.
    static constexpr int kRestMs = 150;

    explicit ProposalFinder(ProposeFunction propose, QObject* parent = nullptr);

    void ask(const jobfile::Tree& job, units::System system);
    /// No answer is wanted any more.
    void stop() { m_work.stop(); }
    bool isBusy() const { return m_work.isBusy(); }

Q_SIGNALS:
    void found(std::shared_ptr<const engine::Proposals> proposals);
    void failed(const QString& what);
    /// As NewestWork's.
    void slow(double done, const QString& what);
    void foretold(const QString& words);

private:
    ProposeFunction m_propose;
    NewestWork m_work; // last: its thread asks the function
};

} // namespace pw::gui
