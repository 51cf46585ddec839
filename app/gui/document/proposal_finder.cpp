#include "app/gui/document/proposal_finder.h"

#include "core/jobfile/read.h"

namespace pw::gui {

ProposalFinder::ProposalFinder(ProposeFunction propose, QObject* parent)
    : QObject(parent), m_propose(std::move(propose)) {
    connect(&m_work, &NewestWork::slow, this, &ProposalFinder::slow);
    connect(&m_work, &NewestWork::foretold, this, &ProposalFinder::foretold);
    connect(&m_work, &NewestWork::failed, this, &ProposalFinder::failed);
}

void ProposalFinder::ask(const jobfile::Tree& job, units::System system) {
    if (!m_propose)
        return;
    // The first question waits for nothing; one that follows on its heels may be followed by more.
    m_work.ask(
        [this, job, system](const NewestWork::Beside& beside) -> NewestWork::Then {
            beside.foretell(engine::estimateWork(jobfile::readJob(job).job, engine::WorkOn::Propose));
            engine::CheckOptions options;
            options.progress = beside.progress;
            const auto proposals = std::make_shared<const engine::Proposals>(m_propose(job, options, system));
            return [this, proposals] { Q_EMIT found(proposals); };
        },
        m_work.isBusy() ? kRestMs : 0);
}

} // namespace pw::gui
