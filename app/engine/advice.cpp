#include "app/engine/advice.h"

#include "core/loadpath/setup.h"
#include "core/units/format.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pw::engine {

namespace {

using units::show;

/// A part this warm has been heated on purpose.
constexpr double kWarm = 60;

using verdict::Grade;

std::string capitalised(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
        text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

std::string lowered(std::string text) {
    if (!text.empty() && text[0] >= 'A' && text[0] <= 'Z')
        text[0] = static_cast<char>(text[0] - 'A' + 'a');
    return text;
}

std::string loadWords(const job::Job& job) {
    return job.springs.empty() ? "full load" : "full spring load";
}

const verdict::Check* worstCheck(const Report& report) {
    const verdict::Check* worst = nullptr;
    for (const verdict::Check& check : report.checks)
        if (check.grade == report.grade && (!worst || check.id == report.weakest))
            worst = &check;
    return worst;
}

std::string thicknessWords(const job::Job& job) {
    if (!job.plate.thickness)
        return "This plate";
    return job.preferred == units::System::Inch ? units::inchFraction(*job.plate.thickness)
                                                : show(*job.plate.thickness, job.preferred);
}

std::string sentence(const std::string& title, const std::string& basis) {
    return title + ": " + basis + ".";
}

/// In two lines of the window's head; empty where the check's own words are short enough.
std::string thinReason(const job::Job& job, const verdict::Check& check) {
    if (check.id == "plate.collapse" && check.margin && check.wanted)
        return thicknessWords(job) + " holds with less in hand than wanted: it folds at " +
               units::number(*check.margin) + " x the load, wanted " + units::number(*check.wanted) + ".";
    if (check.id == "plate.set")
        return "No set to see at " + loadWords(job) + ", but a quarter more leaves one.";
    if (check.id == "plate.tip")
        return "If one keeper hangs, the load tips the plate. All keepers out before letting up.";
    if (check.id == "plate.stuck_station")
        return "A rusted station could bend the plate: watch that all retainers move together.";
    if (check.id == "screw.torque_window")
        return "Torque does not tell where to stop here: stop by turns and dial.";
    if (check.id == "screw.overrun")
        return "The wrench can make more than the tool should take: stop by turns and dial.";
    return {};
}

} // namespace

std::string reasonFor(const job::Job& job, const Report& report) {
    if (report.grade == Grade::Incomplete) {
        if (!report.problems.empty())
            return capitalised(report.problems.front().message);
        if (!report.missing.empty())
            return report.missing.front().how;
        for (const verdict::Check& check : report.checks)
            if (check.grade == Grade::Incomplete)
                return sentence(check.title, check.basis);
        return "A figure is missing.";
    }
    const verdict::Check* weakest = report.find(report.weakest);
    if (report.grade == Grade::Holds) {
        std::string text = "The plate stays flat at " + loadWords(job) + ".";
        if (weakest)
            text += " First to give: " + lowered(weakest->title) + ".";
        return text;
    }
    const verdict::Check* check = worstCheck(report);
    if (!check)
        return {};
    if (check->id == "plate.set" && report.grade == Grade::Sets && report.plate.setMm) {
        const std::string where =
            report.plate.field ? ", starting " + report.plate.field->peakPlace : std::string();
        return thicknessWords(job) +
               " bends for good: " + show(units::Length::fromMm(*report.plate.setMm), job.preferred) +
               " of set at " + loadWords(job) + where + ".";
    }
    if (check->id == "plate.collapse" && (report.grade == Grade::Sets || report.grade == Grade::Breaks) &&
        check->margin)
        return thicknessWords(job) +
               (report.grade == Grade::Sets ? " is too close to folding: it folds at "
                                            : " folds: it carries only ") +
               units::number(*check->margin) + " x the load.";
    if (report.grade == Grade::Thin)
        if (const std::string text = thinReason(job, *check); !text.empty())
            return text;
    return sentence(check->title, check->basis);
}

std::vector<std::string> cautionsFor(const job::Job& job, const Report& report) {
    std::vector<std::string> cautions;
    const bool pull = job.work == job::Work::Pull;
    const auto say = [&](std::string text) { cautions.push_back(std::move(text)); };
    if (report.load.energy)
        say(show(*report.load.energy, job.preferred) +
            " is stored in the springs and can kill. Stand out of line, glasses on, a guard or "
            "chain over the tool.");
    else if (report.hub.jump)
        say("A hub lets go with a bang: " + show(*report.hub.jump, job.preferred) +
            " in the bent tool alone, more in a ram and hose. Stand out of line, glasses on, a chain or "
            "blanket over "
            "it, the shaft's nut left on.");
    else
        say("A loaded tool can kill when it lets go. Stand out of line, glasses on, a guard or chain "
            "over it.");
    if (report.proof.load)
        say("Prove the tool once at " + show(*report.proof.load, job.preferred) +
            " before its first use; no set may be left.");
    const bool heated = (job.heat.part && job.heat.part->celsius() > kWarm) ||
                        (job.heat.tool && job.heat.tool->celsius() > kWarm);
    if (heated && !pull)
        say("DO NOT HEAT A PACK WITH ITS SPRINGS IN PLACE: springs lose their temper, a keeper lets go, and "
            "the "
            "energy comes out at once.");
    else if (heated)
        say("Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. "
            "Hot steel "
            "is weak; " +
            std::string(job.ram ? "a hot ram leaks and bursts." : "a hot screw strips."));
    else if (!job.springs.empty())
        say("Do not heat springs, nor the tool under load: hot steel is weak.");
    else
        say("Do not heat the tool under load: hot steel is weak.");
    for (const std::string& remark : report.hub.remarks)
        say(remark);
    if (loadpath::hammerFactorOf(job) > 1)
        say("A blow on a loaded tool adds half its load again. Never on a ram, a brittle plate or a cast "
            "flange.");
    if (job.ram)
        say("Hoses and couplings: whole, rated for the ram, out of the line of the rod. Never stand behind a "
            "loaded "
            "ram.");
    say("Grind flame-cut edges at bore and holes 1 to 2 mm deep; no weld nearer a hole than twice the "
        "thickness; no burrs on the lands.");
    say("The figures take sound steel and good threads for granted. Local rules and licensed practice "
        "come first.");
    return cautions;
}

} // namespace pw::engine
