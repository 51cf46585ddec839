#include "app/gui/models/missing_order.h"

#include "app/gui/models/fields.h"

#include <algorithm>

namespace pw::gui {

void orderMissing(engine::Report& report, const jobfile::Tree& tree) {
    // A problem with a figure that is not there is one more that is missing.
    const bool wrong = std::ranges::any_of(report.problems, [&](const util::Problem& problem) {
        return problem.field.empty() || tree.at(problem.field);
    });
    if (report.grade != verdict::Grade::Incomplete || wrong || report.missing.empty())
        return;
    const auto groups = fieldGroups(tree);
    const auto place = [&](const engine::Missing& missing) {
        int at = 0;
        for (const auto& group : groups) {
            if (group.id == "load" &&
                (missing.field.starts_with("springs") || missing.field.starts_with("load")))
                return at;
            for (const auto& field : group.fields) {
                if (field.path == missing.field || field.path.starts_with(missing.field + "."))
                    return at;
                ++at;
            }
        }
        return at;
    };
    std::ranges::stable_sort(report.missing, {}, place);
    report.reason = report.missing.front().how;
}

bool asksForPlate(const engine::Report& report) {
    const auto isPlates = [](const engine::Missing& missing) { return missing.field.starts_with("plate."); };
    // Access holes are asked for with the stations, early, and proposed with the plate.
    const auto isProposed = [&](const engine::Missing& missing) {
        return isPlates(missing) || missing.field == "stations.access_hole";
    };
    return report.grade == verdict::Grade::Incomplete && !report.missing.empty() &&
           (isPlates(report.missing.front()) || std::ranges::all_of(report.missing, isProposed));
}

} // namespace pw::gui
