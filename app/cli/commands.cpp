#include "app/cli/commands.h"

#include "app/cli/ahead.h"
#include "app/cli/bad_input.h"
#include "app/cli/cut_words.h"
#include "app/cli/rack_command.h"
#include "app/cli/read_job.h"
#include "app/cli/terminal.h"
#include "app/engine/check.h"
#include "app/engine/ladder.h"
#include "app/engine/rack.h"
#include "app/engine/report_json.h"
#include "app/engine/report_text.h"
#include "app/engine/several.h"
#include "app/engine/tool.h"
#include "app/engine/words.h"
#include "app/engine/write.h"
#include "app/paper/offcut.h"
#include "app/paper/write_paper.h"
#include "app/version/version.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/say.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <CLI/CLI.hpp>
#include <filesystem>
#include <iostream>
#include <memory>
#include <sstream>

namespace pw::cli {

namespace {

constexpr int kGood = 0, kWeak = 1, kBadInput = 2;

shape::Point parsePlace(const std::string& text) {
    const auto wrong = [&] {
        return BadInput{"--at: not a place: \"" + text + "\". Write it in mm like --at=35,-12.5\n"};
    };
    const std::size_t comma = text.find(',');
    if (comma == std::string::npos)
        throw wrong();
    shape::Point p;
    const auto read = [&](std::string_view part, double& value) {
        const auto [end, error] = std::from_chars(part.data(), part.data() + part.size(), value);
        if (error != std::errc() || end != part.data() + part.size() || !(std::abs(value) < 1e6))
            throw wrong();
    };
    const std::string_view view(text);
    read(view.substr(0, comma), p.x);
    read(view.substr(comma + 1), p.y);
    return p;
}

int statusOf(const engine::Report& report) {
    return engine::mayBeMade(report.grade) ? kGood : kWeak;
}

enum class Form { Words, Reasons, Json, Text };

int doCheck(const std::string& file, const std::string& rackFile, Form form,
            const std::vector<std::string>& at, std::ostream& out, std::ostream& err) {
    engine::CheckOptions options;
    for (const std::string& text : at)
        options.at.push_back(parsePlace(text));
    const job::Job job = readJob(file, err);
    sayAhead(job, engine::WorkOn::Check, err);
    engine::Report report = engine::check(job, options);
    if (job.piece)
        if (const auto rack = rackFor(job, file, rackFile); !rack.empty())
            if (const auto under = engine::pieceUnder(job, readRackFile(rack, err)))
                engine::addStockFit(report, *under);
    out << (form == Form::Json   ? jobfile::toJson(engine::toTree(report))
            : form == Form::Text ? engine::toText(report)
                                 : engine::toWords(job, report, form == Form::Reasons));
    return statusOf(report);
}

int doLadder(const std::string& file, const std::string& rackFile, bool json, std::ostream& out,
             std::ostream& err) {
    const job::Job job = readJob(file, err);
    sayAhead(job, engine::WorkOn::Ladder, err);
    engine::Ladder ladder = engine::ladder(job);
    const std::filesystem::path rack = rackFor(job, file, rackFile);
    // One that is only named may be missing, one that was given may not.
    if (std::error_code error; !rackFile.empty() || (!rack.empty() && std::filesystem::exists(rack, error)))
        engine::markOnRack(ladder, readRackFile(rack, err));
    out << (json ? jobfile::toJson(engine::toTree(ladder)) : engine::toWords(ladder, job.preferred));
    return ladder.thinnestThatHolds.empty() ? kWeak : kGood;
}

/// A folder stands for the job files in it, by name.
std::vector<std::string> jobFilesIn(const std::vector<std::string>& places) {
    std::vector<std::string> files;
    for (const std::string& place : places) {
        std::error_code error;
        if (!std::filesystem::is_directory(place, error)) {
            files.push_back(place);
            continue;
        }
        std::vector<std::string> here;
        for (const auto& entry : std::filesystem::directory_iterator(place, error))
            if (entry.path().filename().string().ends_with(".plate.json"))
                here.push_back(entry.path().string());
        std::sort(here.begin(), here.end());
        files.insert(files.end(), here.begin(), here.end());
    }
    return files;
}

int doTool(const std::string& file, const std::vector<std::string>& places, bool json, std::ostream& out,
           std::ostream& err) {
    const job::Job tool = readJob(file, err);
    std::vector<engine::OtherUse> uses;
    for (const std::string& other : jobFilesIn(places))
        if (std::error_code error; !std::filesystem::equivalent(other, file, error))
            try {
                uses.push_back(engine::tryTool(tool, readJob(other, err), other));
            } catch (const BadInput& bad) { // the rest still has an answer
                err << bad.text;
            }
    const engine::ToolLimits limits = engine::limitsOf(tool);
    out << (json ? jobfile::toJson(engine::toTree(limits, uses)) : engine::toWords(limits, uses));
    return limits.rated ? kGood : kWeak;
}

/// Writes the file and answers what there is to say about it.
using Write = std::function<util::Result<std::vector<std::string>>(const job::Job&, const engine::Report&,
                                                                   const std::filesystem::path&)>;

int doWrite(const std::string& file, const std::string& target, bool anyway, const Write& write,
            std::ostream& out, std::ostream& err) {
    const job::Job job = readJob(file, err);
    sayAhead(job, engine::WorkOn::Check, err);
    const engine::Report report = engine::check(job);
    if (!engine::mayBeMade(report.grade) && !anyway) {
        err << target << ": "
            << say("not written. %1: %2\nAdd --anyway to write it all the same, marked on its face.",
                   {say(verdict::wordOf(report.grade).data()), report.reason})
            << "\n";
        return kWeak;
    }
    const auto written = write(job, report, target);
    if (!written) {
        err << util::toText(written.problem()) << "\n";
        return report.grade == verdict::Grade::Incomplete ? kWeak : kBadInput;
    }
    out << say(verdict::wordOf(report.grade).data()) << ": " << report.reason << "\n"
        << say("Wrote %1", {target}) << "\n";
    for (const std::string& line : *written)
        out << units::plainBlanks(line) << "\n";
    return kGood;
}

/// Several plates set out on one piece, and cut by one program.
int doCutOn(const std::vector<std::string>& files, const std::string& piece, const std::string& target,
            const engine::CutChoices& choices, std::ostream& out, std::ostream& err) {
    if (piece.empty())
        throw BadInput{"--on is missing: how large is the piece? Write it like --on \"300 x 400 mm\"\n"};
    const auto sheet = engine::pieceOf(piece);
    if (!sheet)
        throw BadInput{"--on: " + sheet.problem().message + "\n"};
    std::vector<engine::PlacedPlate> plates;
    for (const std::string& file : files) {
        engine::PlacedPlate plate{readJob(file, err), {}, {}};
        sayAhead(plate.job, engine::WorkOn::Check, err);
        plate.report = engine::check(plate.job);
        if (!engine::mayBeMade(plate.report.grade) && !choices.anyway) {
            err << target << ": not written. " << file << ": " << verdict::wordOf(plate.report.grade) << ": "
                << plate.report.reason << "\nAdd --anyway to write it all the same, marked on its face.\n";
            return kWeak;
        }
        if (const auto problem = engine::refusalOf(plate.job, plate.report, choices.anyway)) {
            err << util::toText(*problem) << "\n";
            return kWeak;
        }
        plates.push_back(std::move(plate));
    }
    if (const auto status = engine::setOutOn(plates, *sheet); !status) {
        err << util::toText(status.problem()) << "\n";
        return kBadInput;
    }
    const auto written = engine::writeCutFile(plates, sheet->words, target, choices);
    if (!written) {
        err << util::toText(written.problem()) << "\n";
        return kBadInput;
    }
    out << "Wrote " << target << "\n";
    for (std::size_t i = 0; i < plates.size(); ++i)
        out << files[i] << ": " << engine::placeWords(plates[i]) << "\n";
    for (const std::string& line : *written)
        out << units::plainBlanks(line) << "\n";
    return kGood;
}

int doSheet(const std::string& file, const std::string& rackFile, const std::string& target, bool anyway,
            bool asTemplate, const std::string& paperName, const std::string& language, std::ostream& out,
            std::ostream& err) {
    std::unique_ptr<paper::InLanguage> spoken;
    if (!language.empty()) {
        spoken = std::make_unique<paper::InLanguage>(language);
        if (!spoken->known()) {
            std::string known;
            for (const std::string& code : paper::InLanguage::all())
                known += (known.empty() ? "" : ", ") + code;
            throw BadInput{"--language: not a language there is: \"" + language + "\". There are: " + known +
                           "\n"};
        }
    }
    paper::PaperChoices choices;
    choices.anyway = anyway;
    choices.file = std::filesystem::path(file).filename().string();
    if (!paperName.empty())
        choices.size = std::tolower(static_cast<unsigned char>(paperName[0])) == 'a'
                           ? paper::PaperSize::A4
                           : paper::PaperSize::Letter;
    return doWrite(
        file, target, anyway,
        [&](const auto& job, const auto& report, const auto& place) {
            if (job.piece)
                if (const auto rack = rackFor(job, file, rackFile);
                    !rackFile.empty() || (!rack.empty() && std::filesystem::exists(rack)))
                    choices.offcut = paper::offcutOf(job, readRackFile(rack, err));
            return asTemplate ? paper::writeTemplate(job, report, place, choices)
                              : paper::writeShopSheet(job, report, place, choices);
        },
        out, err);
}

} // namespace

job::Job readJob(const std::string& file, std::ostream& err) {
    const auto tree = jobfile::loadTree(file);
    if (!tree)
        throw BadInput{util::toText(tree.problem()) + "\n"};
    jobfile::Reading reading = jobfile::readJob(*tree);
    if (!reading.problems.empty())
        throw BadInput{file + " has " +
                       (reading.problems.size() == 1 ? std::string("a figure") : std::string("figures")) +
                       " to mend:\n" + util::toText(reading.problems)};
    for (const std::string& key : reading.unknownKeys)
        err << "note: " << file << ": not known and left alone: " << key << "\n";
    return std::move(reading.job);
}

namespace {

int runPlain(int argc, const char* const* argv, bool& json, std::ostream& out, std::ostream& err,
             const OpenWindow& openWindow) {
    CLI::App app{"Platewright: compressor plates and pullers from scrap steel, checked before they are cut.\n"
                 "With a job file and no command word it opens the window."};
    app.name("platewright");
    app.set_version_flag("--version", std::string("platewright ") + versionText());
    app.footer(
        "Exit status: 0 holds or thin; 1 sets, breaks or incomplete; 2 bad input or bad command line.");

    std::string job, target, windowJob;
    std::vector<std::string> at;
    bool anyway = false;
    app.add_option("job", windowJob, "a job file (NAME.plate.json) to open in the window");

    std::string rackFile;
    const auto addRack = [&](CLI::App& command) {
        command.add_option("--rack", rackFile,
                           "the rack file; when not given, the one that the job names in its own folder");
    };
    CLI::App* check = app.add_subcommand("check", "say whether the tool holds, and why");
    check->add_option("job", job, "the job file")->required();
    check->add_flag("--json", json, "print the whole report as JSON");
    bool reasons = false, text = false;
    check->add_flag("--reasons", reasons, "say of every check what it rests on, with its source");
    check
        ->add_flag("--text", text,
                   "print every figure on a line of its own, in a fixed order, to compare by diff")
        ->excludes("--json");
    check->add_option("--at", at, "add the field at a place X,Y (mm, plate coordinates); may be given again")
        ->allow_extra_args(false)
        ->take_all();
    addRack(*check);
    CLI::App* ladder = app.add_subcommand("ladder", "the same tool in every stock thickness");
    ladder->add_option("job", job, "the job file")->required();
    addRack(*ladder);
    ladder->add_flag("--json", json, "print it as JSON");
    CLI::App* tool =
        app.add_subcommand("tool", "a finished tool: what it may be used for, and on which other jobs");
    std::vector<std::string> others;
    tool->add_option("job", job, "the tool's own job file")->required();
    tool->add_option("others", others, "other job files, or folders of them, to try it on");
    tool->add_flag("--json", json, "print it as JSON");
    CLI::App* rack = app.add_subcommand("rack", "which pieces on the rack will do, best first");
    std::string prefer;
    rack->add_option("job", job, "the job file")->required();
    addRack(*rack);
    rack->add_option("--prefer", prefer, "where verdicts are equal")
        ->check(CLI::IsMember({"least-waste", "lightest", "thickest-margin", "quickest-cut"}));
    rack->add_flag("--json", json, "print it as JSON");
    CLI::App* propose =
        app.add_subcommand("propose", "plates for the job's stations, load and screw, with their trade-offs");
    propose->add_option("job", job, "the job file; its plate may be left out")->required();
    propose->add_flag("--json", json, "print it as JSON");
    std::vector<std::string> plates;
    const auto addWriter = [&](const char* name, const char* what, const char* file, bool several) {
        CLI::App* command = app.add_subcommand(name, what);
        if (several)
            command->add_option("job", plates, "the job file; several for plates that are cut from one piece")
                ->required();
        else
            command->add_option("job", job, "the job file")->required();
        command->add_option("-o,--output", target, file)->required();
        command->add_flag("--anyway", anyway,
                          "write it even when the verdict is sets, breaks or incomplete, marked");
        return command;
    };
    CLI::App* cut =
        addWriter("cut", "write the cut file: the finished size, or the path of the torch",
                  "the file to write: NAME.dxf or NAME.svg, a drawing; NAME.ngc, a program", true);
    CutWords cutWords;
    addCutWords(*cut, cutWords);
    std::string piece;
    cut->add_option("--on", piece, "set the plates out on a piece this large, like \"300 x 400 mm\"");
    CLI::App* solid = addWriter("solid", "write the plate, or the whole stack, as a solid",
                                "the file to write, NAME.step", false);
    bool stack = false;
    solid->add_flag("--stack", stack, "plate, screw, nut, washer and retainers as an assembly");
    CLI::App* sheet = addWriter("sheet", "write the shop sheet for the bench, or the paper template",
                                "the file to write, NAME.pdf", false);
    bool asTemplate = false;
    std::string paperName;
    sheet->add_flag("--template", asTemplate,
                    "the plate at full size instead, to hang on the pins and punch through");
    sheet->add_option("--paper", paperName, "a4 or letter; by the job's unit when not said")
        ->check(CLI::IsMember({"a4", "letter"}, CLI::ignore_case));
    std::string language;
    sheet->add_option("--language", language,
                      "what the sheet is written in, like \"de\"; English when not said");
    addRack(*sheet);
    app.require_subcommand(0, 1);

    try {
        app.parse(argc, argv);
    } catch (const CLI::ParseError& error) {
        const bool asked = error.get_exit_code() == 0; // --help, --version
        app.exit(error, out, err);
        return asked ? kGood : kBadInput;
    }
    try {
        if (check->parsed())
            return doCheck(job, rackFile,
                           json      ? Form::Json
                           : text    ? Form::Text
                           : reasons ? Form::Reasons
                                     : Form::Words,
                           at, out, err);
        if (ladder->parsed())
            return doLadder(job, rackFile, json, out, err);
        if (rack->parsed())
            return doRack(job, rackFile, prefer, json, out, err);
        if (propose->parsed())
            return doPropose(job, json, out, err);
        if (tool->parsed())
            return doTool(job, others, json, out, err);
        if (cut->parsed() && (plates.size() > 1 || !piece.empty()))
            return doCutOn(plates, piece, target, choicesOf(cutWords, anyway), out, err);
        if (cut->parsed())
            return doWrite(
                plates.front(), target, anyway,
                [choices = choicesOf(cutWords, anyway)](const auto& j, const auto& report, const auto& file) {
                    return engine::writeCutFile(j, report, file, choices);
                },
                out, err);
        if (solid->parsed())
            return doWrite(
                job, target, anyway,
                [anyway, stack](const auto& j, const auto& report,
                                const auto& file) -> util::Result<std::vector<std::string>> {
                    const util::Status status = engine::writeSolid(j, report, file, anyway, stack);
                    if (!status)
                        return status.problem();
                    return std::vector<std::string>();
                },
                out, err);
        if (sheet->parsed())
            return doSheet(job, rackFile, target, anyway, asTemplate, paperName, language, out, err);
        return openWindow(windowJob.empty() ? std::nullopt : std::optional<std::filesystem::path>(windowJob));
    } catch (const BadInput& bad) {
        err << bad.text;
        return kBadInput;
    }
}

} // namespace

int run(int argc, const char* const* argv, std::ostream& out, std::ostream& err,
        const OpenWindow& openWindow) {
    // JSON escapes what is odd in its own way, and must stay what it is.
    bool json = false;
    std::ostringstream said, told;
    const int status = runPlain(argc, argv, json, said, told, openWindow);
    out << (json ? said.str() : forTerminal(said.str()));
    err << forTerminal(told.str());
    return status;
}

} // namespace pw::cli
