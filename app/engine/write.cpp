#include "app/engine/write.h"

#include "core/job/assumed.h"
#include "core/thread/thread.h"
#include "core/util/write_file.h"
#include "geometry/exchange/cut_plan.h"
#include "geometry/exchange/dxf.h"
#include "geometry/solid/plate_solid.h"

#include <algorithm>

namespace pw::engine {

namespace {

std::string suffixOf(const std::filesystem::path& file) {
    std::string suffix = file.extension().string();
    std::transform(suffix.begin(), suffix.end(), suffix.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return suffix;
}

/// What every output of a plate that may not be made says on its face.
std::string warningOf(const Report& report) {
    if (mayBeMade(report.grade))
        return {};
    std::string word(verdict::wordOf(report.grade));
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return "DO NOT USE: " + word;
}

/// The plate that is to be written, or why it is not.
util::Result<shape::Region> plateToWrite(const job::Job& job, const Report& report, bool anyway) {
    if (!mayBeMade(report.grade) && !anyway)
        return util::Problem{"", "not written: the verdict is " + std::string(verdict::wordOf(report.grade)) +
                                     ". " + report.reason + " Add --anyway to write it all the same, marked"};
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate", "not written: there is no whole plate to write. " + report.reason};
    return *report.region;
}

} // namespace

bool mayBeMade(verdict::Grade grade) {
    return grade == verdict::Grade::Holds || grade == verdict::Grade::Thin;
}

util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway) {
    if (suffixOf(file) != ".dxf")
        return util::Problem{file.string(),
                             "not a kind of cut file this version writes; name it like plate.dxf"};
    const auto region = plateToWrite(job, report, anyway);
    if (!region)
        return region.problem();
    const job::Assumed assumed = job::assume(job);
    exchange::CutSettings settings;
    settings.process = assumed.process;
    settings.thickness = *job.plate.thickness;
    settings.kerf = assumed.habits.kerf;
    settings.growth = assumed.habits.growth;
    if (const auto thread = thread::parse(job.plate.boreThread); !job.plate.boreThread.empty() && thread)
        settings.tappedBore = exchange::TappedBore{thread->name, thread::tappingDrill(*thread)};
    exchange::DxfOptions options;
    options.units = job.preferred;
    options.title = job.title;
    options.warning = warningOf(report);
    return util::writeFileWhole(file, exchange::toDxf(exchange::makeCutPlan(*region, settings), options));
}

util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway) {
    if (const std::string suffix = suffixOf(file); suffix != ".step" && suffix != ".stp")
        return util::Problem{file.string(),
                             "not a kind of solid this version writes; name it like plate.step"};
    const auto region = plateToWrite(job, report, anyway);
    if (!region)
        return region.problem();
    solid::StepOptions options;
    options.units = job.preferred;
    options.product = job.title;
    options.description = warningOf(report);
    if (!options.description.empty())
        options.product = options.description + (job.title.empty() ? "" : " - " + job.title);
    const auto text = solid::toStep(*region, *job.plate.thickness, options);
    if (!text)
        return text.problem();
    return util::writeFileWhole(file, *text);
}

} // namespace pw::engine
