#include "app/gui/document/checker.h"

namespace pw::gui {

Checker::Checker(CheckFunction check, MendFunction mend, QObject* parent)
    : QObject(parent), m_check(std::move(check)), m_mend(std::move(mend)) {
    connect(&m_work, &NewestWork::slow, this, &Checker::slow);
    connect(&m_work, &NewestWork::foretold, this, &Checker::foretold);
    connect(&m_work, &NewestWork::failed, this,
            [this](const QString& what) { Q_EMIT failed(m_revision, what); });
}

void Checker::ask(const job::Job& job, quint64 revision) {
    m_revision = revision;
    m_work.ask([this, job, revision](const NewestWork::Beside& beside) -> NewestWork::Then {
        beside.foretell(engine::estimateWork(job));
        engine::CheckOptions options;
        options.progress = beside.progress;
        options.mend = false; // the answer first; what would mend it costs more checks and follows
        auto report = std::make_shared<engine::Report>(m_check(job, options));
        if (m_mend && report->grade != verdict::Grade::Holds) {
            const auto first = std::make_shared<const engine::Report>(*report);
            beside.tell([this, revision, first] {
                m_work.hush();
                Q_EMIT answered(revision, first);
            });
            report->changes = m_mend(job, *first, options);
        }
        return [this, revision, report] { Q_EMIT answered(revision, report); };
    });
}

} // namespace pw::gui
