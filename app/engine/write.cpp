#include "app/engine/write.h"

#include "app/engine/cut_preview.h"
#include "core/job/assumed.h"
#include "core/thread/thread.h"
#include "core/util/say.h"
#include "core/util/write_file.h"
#include "geometry/exchange/cut_plan.h"
#include "geometry/exchange/dxf.h"
#include "geometry/exchange/rs274.h"
#include "geometry/exchange/svg.h"
#include "geometry/solid/plate_solid.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

namespace {

std::string suffixOf(const std::filesystem::path& file) {
    std::string suffix = file.extension().string();
    std::transform(suffix.begin(), suffix.end(), suffix.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return suffix;
}

/// What every output of a plate that may not be made says on its face. In English everywhere, as all of a
/// file: machines and other shops read it.
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
        return util::Problem{
            "", say("not written: the verdict is %1. %2 Add --anyway to write it all the same, marked",
                    {say(verdict::wordOf(report.grade).data()), report.reason})};
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate",
                             say("not written: there is no whole plate to write. %1", {report.reason})};
    return *report.region;
}

/// What the choices ask of a format that it cannot carry.
std::optional<util::Problem> mismatch(const std::string& suffix, const std::string& file,
                                      const CutChoices& choices) {
    if (suffix != ".dxf" && suffix != ".svg" && suffix != ".ngc")
        return util::Problem{file, say("not a kind of cut file this version writes; name it like plate.dxf, "
                                       "plate.svg or plate.ngc")};
    if (choices.r12 && suffix != ".dxf")
        return util::Problem{file, say("release 12 is a kind of DXF; name the file like plate.dxf")};
    if ((choices.feed || choices.pierceSeconds) && suffix != ".ngc" && !choices.path)
        return util::Problem{file, say("a drawing at the finished size has no feed and no pierce time; name "
                                       "the file like plate.ngc, or ask for the path")};
    return std::nullopt;
}

std::string spoken(const exchange::CutPath& path, units::System system) {
    const double minutes = path.seconds / 60;
    const std::string time = minutes < 1 ? say("%1 s", {units::number(path.seconds, 2)})
                                         : say("%1 min", {units::number(minutes, 2)});
    const std::string length = units::show(units::Length::fromMm(path.cutLength), system);
    const auto pierces = static_cast<long long>(path.burns.size());
    if (path.rates.guessed)
        return sayMany(
            "%n pierces, %1 of cut, about %2 at a guessed feed and pierce time: set them from the torch's "
            "own chart.",
            "1 pierce, %1 of cut, about %2 at a guessed feed and pierce time: set them from the torch's "
            "own chart.",
            pierces, {length, time});
    return sayMany("%n pierces, %1 of cut, about %2.", "1 pierce, %1 of cut, about %2.", pierces,
                   {length, time});
}

std::vector<std::string> sentencesOf(const exchange::CutPath& path, units::System system) {
    std::vector<std::string> lines{spoken(path, system)};
    for (const exchange::DrilledHole& hole : path.drilled) {
        const std::string name = exchange::nameOf(hole.part, hole.index),
                          size = units::show(hole.diameter, system);
        const std::string line = hole.note.empty() ? say("To drill: %1, %2.", {name, size})
                                                   : say("To drill: %1, %2, %3.", {name, size, hole.note});
        if (std::find(lines.begin(), lines.end(), line) == lines.end())
            lines.push_back(line);
    }
    for (const exchange::CutEdge& edge : path.sawn)
        if (!edge.note.empty())
            lines.push_back(say("Not burned: %1: %2.", {exchange::nameOf(edge.part, edge.index), edge.note}));
    lines.insert(lines.end(), path.notes.begin(), path.notes.end());
    return lines;
}

template<class Drawn>
util::Result<std::string> drawing(const Drawn& drawn, const job::Job& job, const std::string& warning,
                                  const std::string& suffix, const CutChoices& choices) {
    if (suffix == ".svg") {
        exchange::SvgOptions options;
        options.units = job.preferred;
        options.title = job.title;
        options.warning = warning;
        return exchange::toSvg(drawn, options);
    }
    exchange::DxfOptions options;
    options.version = choices.r12 ? exchange::DxfVersion::R12 : exchange::DxfVersion::R2000;
    options.units = job.preferred;
    options.title = job.title;
    options.warning = warning;
    return exchange::toDxf(drawn, options);
}

util::Result<std::string> program(const exchange::CutPath& path, const job::Job& job,
                                  const std::string& material, const std::string& warning) {
    exchange::Rs274Options options;
    options.units = job.preferred;
    options.title = job.title;
    options.material = material;
    options.warning = warning;
    return exchange::toRs274(path, options);
}

} // namespace

bool mayBeMade(verdict::Grade grade) {
    return grade == verdict::Grade::Holds || grade == verdict::Grade::Thin;
}

util::Result<std::vector<std::string>> writeCutFile(const job::Job& job, const Report& report,
                                                    const std::filesystem::path& file,
                                                    const CutChoices& choices) {
    const std::string suffix = suffixOf(file);
    if (auto wrong = mismatch(suffix, file.string(), choices))
        return *std::move(wrong);
    const auto region = plateToWrite(job, report, choices.anyway);
    if (!region)
        return region.problem();
    const job::Assumed assumed = job::assume(job);
    const exchange::CutSettings settings = cutSettingsOf(job, assumed);
    const std::string warning = warningOf(report);
    std::vector<std::string> sentences;
    util::Result<std::string> text = std::string();
    if (suffix == ".ngc" && assumed.process == job::Process::HandTorch)
        return util::Problem{"cutting.process", say("no table runs a hand torch. Say \"torch table\" or "
                                                    "\"plasma table\", or write a drawing like plate.dxf")};
    if (suffix == ".ngc" || choices.path) {
        exchange::CutRates rates = exchange::usualRates(settings.process, settings.thickness);
        rates.guessed = !choices.feed || !choices.pierceSeconds;
        rates.feed = choices.feed.value_or(rates.feed);
        rates.pierceSeconds = choices.pierceSeconds.value_or(rates.pierceSeconds);
        const auto path = exchange::makeCutPath({*region}, settings, rates);
        if (!path)
            return path.problem();
        sentences = sentencesOf(*path, job.preferred);
        text = suffix == ".ngc" ? program(*path, job, assumed.steel.name, warning)
                                : drawing(*path, job, warning, suffix, choices);
    } else {
        text = drawing(exchange::makeCutPlan(*region, settings), job, warning, suffix, choices);
    }
    if (assumed.stacked > 1)
        sentences.push_back(say("One plate of %1: cut it %2 times.", {assumed.stacked, assumed.stacked}));
    if (!text)
        return text.problem();
    if (const auto status = util::writeFileWhole(file, *text); !status)
        return status.problem();
    return sentences;
}

util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway) {
    CutChoices choices;
    choices.anyway = anyway;
    const auto written = writeCutFile(job, report, file, choices);
    return written ? util::Status(util::Done{}) : util::Status(written.problem());
}

util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway) {
    if (const std::string suffix = suffixOf(file); suffix != ".step" && suffix != ".stp")
        return util::Problem{file.string(),
                             say("not a kind of solid this version writes; name it like plate.step")};
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
