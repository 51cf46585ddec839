#include "app/engine/check.h"
#include "app/engine/report_json.h"
#include "app/engine/report_text.h"
#include "core/jobfile/read.h"
#include "tests/fuzz/json_mutator.h"

#include <cmath>

/// Whole checks of spoilt jobs, all but the bending of the plate: every member of the load path, what is said
/// of it, and the report as JSON.

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pw;
    const auto tree = jobfile::fromJson(fuzz::textOf(data, size));
    if (!tree)
        return 0;
    const jobfile::Reading reading = jobfile::readJob(*tree);
    if (!reading.problems.empty())
        return 0;
    engine::CheckOptions options;
    options.mend = options.bend = options.spread = false;
    const engine::Report report = engine::check(reading.job, options);
    for (const verdict::Check& check : report.checks) {
        PW_HOLDS(!check.id.empty() && !check.member.empty(), check.id);
        if (check.margin)
            PW_HOLDS(!std::isnan(*check.margin) &&
                         (check.kind != verdict::CheckKind::Force || *check.margin >= 0),
                     check.id + " " + std::to_string(*check.margin));
    }
    const std::string json = jobfile::toJson(engine::toTree(report));
    PW_HOLDS(jobfile::fromJson(json), json);
    (void)engine::toText(report);
    return 0;
}
