#include "app/engine/cut_preview.h"

#include "core/thread/thread.h"

namespace pw::engine {

exchange::CutSettings cutSettingsOf(const job::Job& job, const job::Assumed& assumed) {
    exchange::CutSettings settings;
    settings.process = assumed.process;
    settings.thickness = *job.plate.thickness;
    settings.kerf = assumed.habits.kerf;
    settings.growth = assumed.habits.growth;
    settings.drilledExtras = job::holesForTheDrill(job.plate);
    if (const auto thread = thread::parse(job.plate.boreThread); !job.plate.boreThread.empty() && thread)
        settings.tappedBore = exchange::TappedBore{thread->name, thread::tappingDrill(*thread)};
    return settings;
}

util::Result<exchange::CutPath> cutPathOf(const job::Job& job, const Report& report) {
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate", "There is no whole plate to cut yet."};
    const auto settings = cutSettingsOf(job, job::assume(job));
    return exchange::makeCutPath({*report.region}, settings,
                                 exchange::usualRates(settings.process, settings.thickness));
}

} // namespace pw::engine
