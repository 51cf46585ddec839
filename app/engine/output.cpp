#include "app/engine/output.h"

#include "core/job/process.h"
#include "core/thread/thread.h"
#include "core/util/say.h"

#include <algorithm>
#include <cctype>

namespace pw::engine {

bool mayBeMade(verdict::Grade grade) {
    return grade == verdict::Grade::Holds || grade == verdict::Grade::Thin;
}

std::string warningOf(const Report& report) {
    if (mayBeMade(report.grade))
        return {};
    std::string word(verdict::wordOf(report.grade));
    std::transform(word.begin(), word.end(), word.begin(),
                   [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return "DO NOT USE: " + word;
}

std::optional<util::Problem> refusalOf(const job::Job& job, const Report& report, bool anyway) {
    if (!mayBeMade(report.grade) && !anyway)
        return util::Problem{
            "", say("not written: the verdict is %1. %2 Add --anyway to write it all the same, marked",
                    {say(verdict::wordOf(report.grade).data()), report.reason})};
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate",
                             say("not written: there is no whole plate to draw. %1", {report.reason})};
    return std::nullopt;
}

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

std::string suffixOf(const std::filesystem::path& file) {
    std::string suffix = file.extension().string();
    std::transform(suffix.begin(), suffix.end(), suffix.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return suffix;
}

} // namespace pw::engine
