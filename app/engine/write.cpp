#include "app/engine/write.h"

#include "app/engine/stack.h"
#include "core/util/require.h"
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

using units::Length;

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

/// A name that says so when the plate may not be made.
std::string marked(const std::string& name, const std::string& warning) {
    if (warning.empty())
        return name;
    return name.empty() ? warning : warning + " - " + name;
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
                                  const std::string& material, const std::string& warning, bool onPiece) {
    exchange::Rs274Options options;
    if (onPiece)
        options.datum = exchange::Datum::PlateOrigin;
    options.units = job.preferred;
    options.title = job.title;
    options.material = material;
    options.warning = warning;
    return exchange::toRs274(path, options);
}

/// Plates on one sheet are cut by one program: what makes that impossible.
std::optional<util::Problem> unlike(const std::vector<PlacedPlate>& plates) {
    const exchange::CutSettings first = cutSettingsOf(plates[0].job, job::assume(plates[0].job));
    for (const PlacedPlate& plate : plates) {
        const exchange::CutSettings each = cutSettingsOf(plate.job, job::assume(plate.job));
        if (std::abs(each.thickness.mm() - first.thickness.mm()) > 1e-6)
            return util::Problem{
                "plate.thickness",
                say("plates of one piece are of one thickness: \"%1\" takes %2, \"%3\" %4",
                    {plates[0].job.title, units::show(first.thickness, plates[0].job.preferred),
                     plate.job.title, units::show(each.thickness, plate.job.preferred)})};
        if (each.process != first.process || std::abs(each.kerf.mm() - first.kerf.mm()) > 1e-6)
            return util::Problem{
                "cutting", say("plates of one piece are cut in one way: process and kerf of \"%1\" differ",
                               {plate.job.title})};
        if (each.tappedBore != first.tappedBore)
            return util::Problem{
                "plate.bore_thread",
                say("plates of one piece that are cut together have the same thread in the bore, or none")};
    }
    return std::nullopt;
}

std::string titleOf(const std::vector<PlacedPlate>& plates) {
    std::vector<std::pair<std::string, int>> titles;
    for (const PlacedPlate& plate : plates) {
        const auto same = std::find_if(titles.begin(), titles.end(),
                                       [&](const auto& known) { return known.first == plate.job.title; });
        if (same == titles.end())
            titles.emplace_back(plate.job.title, 1);
        else
            ++same->second;
    }
    std::string text;
    for (const auto& [title, count] : titles)
        text +=
            (text.empty() ? "" : " + ") + (count > 1 ? std::to_string(count) + " x " : std::string()) + title;
    return text;
}

util::Result<std::vector<std::string>> writeAll(const std::vector<PlacedPlate>& plates,
                                                const std::string& piece, const std::filesystem::path& file,
                                                const CutChoices& choices) {
    const std::string suffix = suffixOf(file);
    if (auto wrong = mismatch(suffix, file.string(), choices))
        return *std::move(wrong);
    std::string warning;
    for (const PlacedPlate& plate : plates) {
        if (auto problem = refusalOf(plate.job, plate.report, choices.anyway))
            return *std::move(problem);
        if (warning.empty())
            warning = warningOf(plate.report);
    }
    if (auto problem = unlike(plates))
        return *std::move(problem);
    job::Job job = plates.front().job;
    job.title = titleOf(plates) + (piece.empty() ? "" : " on " + piece);
    std::vector<shape::Region> regions;
    for (const PlacedPlate& plate : plates)
        regions.push_back(outline::placed(*plate.report.region, plate.place));
    const job::Assumed assumed = job::assume(job);
    const exchange::CutSettings settings = cutSettingsOf(job, assumed);
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
        const auto path = exchange::makeCutPath(regions, settings, rates);
        if (!path)
            return path.problem();
        sentences = sentencesOf(*path, job.preferred);
        text = suffix == ".ngc" ? program(*path, job, assumed.steel.name, warning, !piece.empty())
                                : drawing(*path, job, warning, suffix, choices);
    } else {
        text = drawing(exchange::makeCutPlan(regions, settings), job, warning, suffix, choices);
    }
    if (plates.size() == 1 && assumed.stacked > 1)
        sentences.push_back(say("One plate of %1: cut it %2 times.", {assumed.stacked, assumed.stacked}));
    if (!piece.empty())
        sentences.push_back(say("X0 Y0 is the low left corner of the piece, %1.", {piece}));
    if (!text)
        return text.problem();
    if (const auto status = util::writeFileWhole(file, *text); !status)
        return status.problem();
    return sentences;
}

} // namespace

util::Result<std::vector<std::string>> writeCutFile(const job::Job& job, const Report& report,
                                                    const std::filesystem::path& file,
                                                    const CutChoices& choices) {
    return writeAll({{job, report, {}}}, {}, file, choices);
}

util::Result<std::vector<std::string>> writeCutFile(const std::vector<PlacedPlate>& plates,
                                                    const std::string& piece,
                                                    const std::filesystem::path& file,
                                                    const CutChoices& choices) {
    util::require(!plates.empty(), "writeCutFile: no plate");
    return writeAll(plates, piece, file, choices);
}

double gapBetween(const job::Job& job) {
    const job::Assumed assumed = job::assume(job);
    const double thick = job.plate.thickness.value_or(Length()).mm(), kerf = assumed.habits.kerf.mm();
    // Two leads side by side, each as wide as its radius and its crater.
    return std::max(5.0, 2 * std::max(2 * kerf, thick / 2) + 3 * kerf);
}

util::Status writeCut(const job::Job& job, const Report& report, const std::filesystem::path& file,
                      bool anyway) {
    CutChoices choices;
    choices.anyway = anyway;
    const auto written = writeCutFile(job, report, file, choices);
    return written ? util::Status(util::Done{}) : util::Status(written.problem());
}

util::Status writeSolid(const job::Job& job, const Report& report, const std::filesystem::path& file,
                        bool anyway, bool stack) {
    if (const std::string suffix = suffixOf(file); suffix != ".step" && suffix != ".stp")
        return util::Problem{file.string(),
                             say("not a kind of solid this version writes; name it like plate.step")};
    if (auto problem = refusalOf(job, report, anyway))
        return *std::move(problem);
    solid::StepOptions options;
    options.units = job.preferred;
    options.description = warningOf(report);
    options.product = marked(job.title, options.description);
    const exchange::CutSettings settings = cutSettingsOf(job, job::assume(job));
    if (settings.tappedBore)
        options.description +=
            std::string(options.description.empty() ? "" : ". ") + "Bore: drill " +
            units::plainBlanks(units::written(settings.tappedBore->tapDrill, job.preferred)) + ", tap " +
            settings.tappedBore->thread;
    const auto text = stack ? solid::toStep(stackOf(job, report, marked("Plate", warningOf(report))), options)
                            : solid::toStep(*report.region, *job.plate.thickness, options);
    if (!text)
        return text.problem();
    return util::writeFileWhole(file, *text);
}

} // namespace pw::engine
