#include "app/engine/advice.h"

#include "core/thread/thread.h"
#include "core/units/format.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace pw::engine {

namespace {

using units::show;
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

/// Quarter turns are what a hand can tell.
std::string turnsWords(double turns) {
    const double quarters = std::round(turns * 4) / 4;
    return units::number(quarters, 3) + (quarters == 1 ? " turn" : " turns");
}

Found<double> turnsFor(const job::Job& job, units::Length travel) {
    if (!job.screw || job.screw->thread.empty())
        return std::nullopt;
    const auto thread = thread::parse(job.screw->thread);
    if (!thread)
        return std::nullopt;
    return travel / thread->lead();
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
    if (job.work == job::Work::Pull)
        cautions.push_back(
            "Of a pull only the plate, the screw's stress and the threads are checked: not its buckling, "
            "nor bolts, legs, jaws and the flange that is pulled.");
    if (report.load.energy)
        cautions.push_back(
            show(*report.load.energy, job.preferred) +
            " is stored in the springs and can kill. Stand out of line, glasses on, a guard or "
            "chain over the tool.");
    else
        cautions.push_back(
            "A loaded tool can kill when it lets go. Stand out of line, glasses on, a guard or chain "
            "over it.");
    if (report.proof.load)
        cautions.push_back("Prove the tool once at " + show(*report.proof.load, job.preferred) +
                           " before its first use; no set may be left.");
    if (!job.springs.empty())
        cautions.push_back("Do not heat springs, nor the tool under load: hot steel is weak.");
    else
        cautions.push_back("Do not heat the tool under load: hot steel is weak.");
    if (job.screw && job.screw->hammering)
        cautions.push_back("No hammering on a brittle plate or a ram.");
    cautions.push_back(
        "Grind flame-cut edges at bore and holes 1 to 2 mm deep; no weld nearer a hole than twice the "
        "thickness; no burrs on the lands.");
    cautions.push_back(
        "The figures take sound steel and good threads for granted. Local rules and licensed practice "
        "come first.");
    return cautions;
}

std::vector<std::string> stepsFor(const job::Job& job, const Report& report) {
    std::vector<std::string> steps;
    if (job.work && *job.work == job::Work::Pull)
        return steps;
    const units::System system = job.preferred;
    const auto add = [&](std::string text) { steps.push_back(std::move(text)); };
    const int stations = static_cast<int>(report.stations.size());
    add("Look the plate and threads over, oil the thread, set the plate on the retainers with every land "
        "bearing.");
    std::string squeeze = "Stand out of line. Tighten evenly";
    if (job.travel.compressFurther) {
        squeeze += " until the pack is " + show(*job.travel.compressFurther, system) + " shorter";
        if (const auto turns = turnsFor(job, *job.travel.compressFurther))
            squeeze += ", " + turnsWords(*turns) + " from tight";
    } else {
        squeeze += " until the keepers are free";
    }
    if (report.screw.torqueRange)
        squeeze += "; it takes " + show(*report.screw.torqueRange, system);
    add(squeeze + ".");
    if (report.screw.stopTorque && report.screw.torqueRange &&
        report.screw.torqueRange->high > *report.screw.stopTorque)
        add("Go by turns and dial, not by torque. Past " + show(*report.screw.stopTorque, system) +
            " make sure that the retainers still move with each part of a turn; if they do not, stop.");
    else if (report.screw.stopTorque)
        add("Stop at " + show(*report.screw.stopTorque, system) + ", whatever the keepers do.");
    if (stations > 0)
        add("Take the keepers out through the access holes, a pick, no fingers. Count them: " +
            std::to_string(stations) + " stations, all out before letting up.");
    std::string back = "Let up slowly";
    if (report.travel.release) {
        back += " over " + show(*report.travel.release, system);
        if (const auto turns = turnsFor(job, *report.travel.release))
            back += ", " + turnsWords(*turns) + " back";
        back += ", until the springs are free";
    }
    if (report.travel.threadLeft && report.travel.threadLeft->mm() > 0)
        back += "; " + show(*report.travel.threadLeft, system) + " of thread is then left";
    add(back + ".");
    add("If one keeper hangs, squeeze again before doing anything else.");
    return steps;
}

Missing missingFigure(const std::string& field) {
    struct Row {
        const char *field, *how;
    };
    static constexpr std::array<Row, 18> kRows{{
        {"stations.count", "Needed: how many stations. Count the pins"},
        {"stations.circle", "Needed: the pin circle. Measure over two opposite pins, then take off one pin"},
        {"stations.access_hole", "Needed: the access hole. Wide enough for the keeper with 3 mm to spare"},
        {"stations.land",
         "Needed: the land, the ring that bears on the retainer. Measure the retainer across"},
        {"stations.retainer", "Needed: the retainer. Measure it across"},
        {"plate.outline", "Needed: the plate's outline, a disc, bar, rectangle or polygon"},
        {"plate.outline.diameter", "Needed: the disc's diameter"},
        {"plate.outline.length", "Needed: the plate's length"},
        {"plate.outline.width", "Needed: the plate's width"},
        {"plate.outline.points", "Needed: the corners of the plate"},
        {"plate.thickness",
         "Needed: the plate's thickness. Measure clear of the burnt edge, in three places, and take the "
         "thinnest"},
        {"plate.bore", "Needed: the bore. A little over the screw's diameter"},
        {"plate.holes", "Needed: the size of an extra hole"},
        {"load", "Needed: a load. Give the springs, or the load in all"},
        {"work", "Needed: compress or pull"},
        {"screw.thread", "Needed: the screw's thread, M20 or 3/4-10. It decides the centre bearing"},
        {"centre.bearing_outside", "Needed: the centre bearing. Measure the washer across"},
        {"springs", "Needed: the springs' forces. Read two lengths on a scale"},
    }};
    for (const Row& row : kRows)
        if (field == row.field)
            return {field, std::string(row.how) + "."};
    return {field, "Needed: " + field + "."};
}

} // namespace pw::engine
