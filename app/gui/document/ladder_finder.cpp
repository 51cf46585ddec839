#include "app/gui/document/ladder_finder.h"

namespace pw::gui {

namespace {

/// The job without what its ladder does not hang on.
job::Job essence(job::Job job) {
    job.plate.thickness.reset();
    job.title.clear();
    job.notes.clear();
    return job;
}

} // namespace

LadderFinder::LadderFinder(LadderFunction find, QObject* parent) : QObject(parent), m_find(std::move(find)) {
    connect(&m_work, &NewestWork::failed, this, [this](const QString& what) {
        m_asked.reset();
        m_answered.reset();
        Q_EMIT failed(what);
    });
}

void LadderFinder::ask(const job::Job& job) {
    if (!m_find)
        return;
    const job::Job question = essence(job);
    if (m_answered && *m_answered == question) {
        stop(); // changed and changed back: what is known holds, what runs is of no use
        return;
    }
    if (m_asked && *m_asked == question)
        return;
    m_asked = question;
    m_work.ask(
        [this, question](const NewestWork::Beside& beside) -> NewestWork::Then {
            engine::CheckOptions options;
            options.progress = beside.progress;
            const auto ladder = std::make_shared<const engine::Ladder>(m_find(question, options));
            return [this, question, ladder] {
                m_asked.reset();
                m_answered = question;
                Q_EMIT found(ladder);
            };
        },
        kRestMs);
}

void LadderFinder::overtake(const job::Job& job) {
    if (m_asked && *m_asked != essence(job))
        stop();
}

void LadderFinder::forget() {
    stop();
    m_answered.reset();
    Q_EMIT found(nullptr);
}

void LadderFinder::stop() {
    m_asked.reset();
    m_work.stop();
}

} // namespace pw::gui
