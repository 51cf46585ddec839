#include "app/gui/document/rack_ranker.h"

namespace pw::gui {

RackRanker::RackRanker(RankFunction rank, QObject* parent) : QObject(parent), m_rank(std::move(rank)) {
    connect(&m_work, &NewestWork::slow, this, &RackRanker::slow);
    connect(&m_work, &NewestWork::foretold, this, &RackRanker::foretold);
    connect(&m_work, &NewestWork::failed, this, &RackRanker::failed);
}

void RackRanker::ask(const job::Job& job, std::shared_ptr<const rack::RackReading> rack,
                     engine::Prefer prefer) {
    if (!m_rank || !rack)
        return;
    m_work.ask(
        [this, job, rack = std::move(rack), prefer](const NewestWork::Beside& beside) -> NewestWork::Then {
            beside.foretell(engine::estimateWork(job, engine::WorkOn::Rack, engine::kindsOf(rack->rack)));
            engine::RackOptions options;
            options.prefer = prefer;
            options.progress = beside.progress;
            const auto answer = std::make_shared<const engine::RackAnswer>(m_rank(job, *rack, options));
            return [this, answer, rack] { Q_EMIT found(answer, rack); };
        },
        kRestMs);
}

} // namespace pw::gui
