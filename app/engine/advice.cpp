#include "app/engine/advice.h"

#include "core/loadpath/setup.h"
#include "core/units/format.h"
#include "core/util/say.h"

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

std::string loadWords(const job::Job& job) {
    return job.springs.empty() ? say("full load") : say("full spring load");
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
        return say("This plate");
    return job.preferred == units::System::Inch ? units::inchFraction(*job.plate.thickness)
                                                : show(*job.plate.thickness, job.preferred);
}

std::string sentence(const std::string& title, const std::string& basis) {
    return say("%1: %2.", {title, basis});
}

/// In two lines of the window's head; empty where the check's own words are short enough.
std::string thinReason(const job::Job& job, const verdict::Check& check) {
    if (check.id == "plate.collapse" && check.margin && check.wanted)
        return say("%1 holds with less in hand than wanted: it folds at %2 x the load, wanted %3.",
                   {thicknessWords(job), units::number(*check.margin), units::number(*check.wanted)});
    if (check.id == "plate.set")
        return say("No set to see at %1, but a quarter more leaves one.", {loadWords(job)});
    if (check.id == "plate.tip")
        return say("If one keeper hangs, the load tips the plate. All keepers out before letting up.");
    if (check.id == "plate.stuck_station")
        return say("A rusted station could bend the plate: watch that all retainers move together.");
    if (check.id == "screw.torque_window")
        return say("Torque does not tell where to stop here: stop by turns and dial.");
    if (check.id == "screw.overrun")
        return say("The wrench can make more than the tool should take: stop by turns and dial.");
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
        return say("A figure is missing.");
    }
    const verdict::Check* weakest = report.find(report.weakest);
    if (report.grade == Grade::Holds) {
        if (!weakest)
            return say("The plate stays flat at %1.", {loadWords(job)});
        return say("The plate stays flat at %1. First to give: %2.",
                   {loadWords(job), inSentence(weakest->title)});
    }
    const verdict::Check* check = worstCheck(report);
    if (!check)
        return {};
    if (check->id == "plate.set" && report.grade == Grade::Sets && report.plate.setMm) {
        const std::string set = show(units::Length::fromMm(*report.plate.setMm), job.preferred);
        if (!report.plate.field)
            return say("%1 bends for good: %2 of set at %3.", {thicknessWords(job), set, loadWords(job)});
        return say("%1 bends for good: %2 of set at %3, starting %4.",
                   {thicknessWords(job), set, loadWords(job), report.plate.field->peakPlace});
    }
    if (check->id == "plate.collapse" && (report.grade == Grade::Sets || report.grade == Grade::Breaks) &&
        check->margin)
        return report.grade == Grade::Sets ? say("%1 is too close to folding: it folds at %2 x the load.",
                                                 {thicknessWords(job), units::number(*check->margin)})
                                           : say("%1 folds: it carries only %2 x the load.",
                                                 {thicknessWords(job), units::number(*check->margin)});
    if (report.grade == Grade::Thin)
        if (const std::string text = thinReason(job, *check); !text.empty())
            return text;
    return sentence(check->title, check->basis);
}

std::vector<std::string> cautionsFor(const job::Job& job, const Report& report) {
    std::vector<std::string> cautions;
    const bool pull = job.work == job::Work::Pull;
    const auto add = [&](std::string text) { cautions.push_back(std::move(text)); };
    if (report.load.energy)
        add(say(
            "%1 is stored in the springs and can kill. Stand out of line, glasses on, a guard or chain over "
            "the tool.",
            {show(*report.load.energy, job.preferred)}));
    else if (report.hub.jump)
        add(say("A hub lets go with a bang: %1 in the bent tool alone, more in a ram and hose. Stand out of "
                "line, glasses on, a chain or blanket over it, the shaft's nut left on.",
                {show(*report.hub.jump, job.preferred)}));
    else
        add(say("A loaded tool can kill when it lets go. Stand out of line, glasses on, a guard or chain "
                "over it."));
    if (report.proof.load)
        add(say("Prove the tool once at %1 before its first use; no set may be left.",
                {show(*report.proof.load, job.preferred)}));
    const bool heated = (job.heat.part && job.heat.part->celsius() > kWarm) ||
                        (job.heat.tool && job.heat.tool->celsius() > kWarm);
    if (heated && !pull)
        add(say(
            "DO NOT HEAT A PACK WITH ITS SPRINGS IN PLACE: springs lose their temper, a keeper lets go, and "
            "the energy comes out at once."));
    else if (heated && job.ram)
        add(say(
            "Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. "
            "Hot steel is weak; a hot ram leaks and bursts."));
    else if (heated)
        add(say(
            "Heat the hub, never the tool, and not while it is loaded: let the load off, heat, load again. "
            "Hot steel is weak; a hot screw strips."));
    else if (!job.springs.empty())
        add(say("Do not heat springs, nor the tool under load: hot steel is weak."));
    else
        add(say("Do not heat the tool under load: hot steel is weak."));
    for (const std::string& remark : report.hub.remarks)
        add(remark);
    if (loadpath::hammerFactorOf(job) > 1)
        add(say("A blow on a loaded tool adds half its load again. Never on a ram, a brittle plate or a cast "
                "flange."));
    if (job.ram)
        add(say(
            "Hoses and couplings: whole, rated for the ram, out of the line of the rod. Never stand behind a "
            "loaded ram."));
    add(say("Grind flame-cut edges at bore and holes 1 to 2 mm deep; no weld nearer a hole than twice the "
            "thickness; no burrs on the lands."));
    add(say("The figures take sound steel and good threads for granted. Local rules and licensed practice "
            "come first."));
    return cautions;
}

} // namespace pw::engine
