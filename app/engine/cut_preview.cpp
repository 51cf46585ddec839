#include "app/engine/cut_preview.h"

#include "app/engine/output.h"
#include "core/util/say.h"

namespace pw::engine {

util::Result<exchange::CutPath> cutPathOf(const job::Job& job, const Report& report) {
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate", say("There is no whole plate to cut yet.")};
    const auto settings = cutSettingsOf(job, job::assume(job));
    return exchange::makeCutPath({*report.region}, settings,
                                 exchange::usualRates(settings.process, settings.thickness));
}

} // namespace pw::engine
