#include "app/engine/words.h"

#include "app/engine/gauge.h"
#include "core/units/format.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

namespace {

using units::show;
using units::System;
using verdict::Grade;

constexpr std::size_t kWidth = 96;

/// Columns a UTF-8 text takes (one a code point; nothing wider is used here).
std::size_t columns(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(
        text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

/// The text broken at blanks, the first line after `head`, the rest indented as far.
std::string wrapped(const std::string& head, const std::string& text) {
    std::string out = head, line;
    const std::string indent(columns(head), ' ');
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word = text.substr(at, end - at);
        if (!line.empty() && columns(head) + columns(line) + 1 + columns(word) > kWidth) {
            out += line + "\n" + indent;
            line.clear();
        }
        line += (line.empty() ? "" : " ") + word;
        at = end + 1;
    }
    return out + line + "\n";
}

std::string padded(const std::string& text, std::size_t width) {
    const std::size_t have = columns(text);
    return have < width ? text + std::string(width - have, ' ') : text;
}

/// A fit check's margin is a length, a force check's a ratio.
std::string marginWords(const verdict::Check& check, double value, System system) {
    const bool isLength = check.kind == verdict::CheckKind::Fit && !check.marginIsRatio && check.unit == "mm";
    return isLength ? show(units::Length::fromMm(value), system) : units::number(value) + " x";
}

/// In the job's units, the other ones behind.
template<class Q>
std::string both(const Q& value, System system) {
    return show(value, system) + " (" +
           show(value, system == System::Metric ? System::Inch : System::Metric) + ")";
}

std::string row(const std::string& label, const std::string& text) {
    return wrapped(padded(label, 14), text);
}

std::string list(const std::string& title, const std::vector<std::string>& lines, bool numbered) {
    if (lines.empty())
        return {};
    std::string out = "\n" + title + "\n";
    for (std::size_t i = 0; i < lines.size(); ++i)
        out +=
            wrapped(numbered ? padded("  " + std::to_string(i + 1) + ".", lines.size() > 9 ? 6 : 5) : "  - ",
                    lines[i]);
    return out;
}

std::string sourceWords(const Report& report) {
    const std::string& source = report.load.source;
    if (source == "springs")
        return ", from the springs";
    if (source == "hub")
        return ", what the hub may ask";
    if (source == "wrench")
        return ", what the wrench can make";
    if (source == "ram")
        return ", what the ram can make";
    if (source == "rated")
        return ": nobody states a load, this is what the tool may be used for";
    return ", as given";
}

std::string figures(const Report& report) {
    const System system = report.preferred;
    std::string out;
    if (report.load.total) {
        std::string text = show(*report.load.total, system) + " in all";
        if (report.load.perStation)
            text += ", " + show(*report.load.perStation, system) + " a station";
        out += row("Load", text + sourceWords(report));
    }
    if (report.hub.pull)
        out += row("Hub asks", show(*report.hub.pull, system) +
                                   (report.hub.heatToFree
                                        ? "; it comes free by heat at " + show(*report.hub.heatToFree, system)
                                        : std::string()));
    if (report.screw.stopTorque)
        out += row("Stop at", both(*report.screw.stopTorque, system) + " on the wrench");
    if (report.screw.stopPressure)
        out +=
            row("Stop at", units::showPressure(*report.screw.stopPressure, system) + " on the ram's gauge");
    if (report.screw.torqueRange)
        out += row("It takes", show(*report.screw.torqueRange, system) + " to reach full load");
    if (report.screw.ratedLoad)
        out += row("Rated load", both(*report.screw.ratedLoad, system));
    if (report.screw.stamp)
        out += row("Stamp", both(*report.screw.stamp, system));
    if (report.proof.load) {
        std::string text = both(*report.proof.load, system);
        if (report.proof.reading && report.proof.readingAt)
            text += "; a dial from " + show(*report.proof.readingAt, system) +
                    " off the middle to the rim reads " + dialWords(*report.proof.reading, system) +
                    ", and goes back to within " + show(report.proof.returnWithin, system);
        out += row("Proof load", text);
    }
    if (report.plate.massKg)
        out += row("Plate weighs", both(units::Mass::fromKg(*report.plate.massKg), system));
    return out;
}

std::string cell(const std::string& text, std::size_t width) {
    return padded(text, width) + "  ";
}

/// The dial against the load, and turns against torque.
std::string tables(const Report& report) {
    const System system = report.preferred;
    std::string out;
    if (!report.gauge.empty()) {
        out += "\nThe plate as a gauge";
        if (report.proof.readingAt)
            out += ", dial from " + show(*report.proof.readingAt, system) + " off the middle to the rim";
        out += "\n";
        for (const GaugeRow& row : report.gauge)
            out += "  " + cell(show(row.load, system), 11) + cell(dialWords(row.reading, system), 12) +
                   row.what + "\n";
    }
    if (!report.travel.moments.empty()) {
        out += "\nThread in hand\n";
        for (const loadpath::ThreadMoment& moment : report.travel.moments)
            out += "  " + cell(moment.when, 11) + show(moment.toEnd, system) + " to the end" +
                   (moment.toShank ? ", " + show(*moment.toShank, system) + " to the plain shank"
                                   : std::string()) +
                   "\n";
        if (report.travel.threadNeeded)
            out += "  needed at least " + show(*report.travel.threadNeeded, system) + "\n";
    }
    if (!report.card.rows.empty()) {
        out += "\nTurns and torque\n";
        for (const CardRow& row : report.card.rows) {
            // Of a stiff puller the turns are too few to tell.
            const double turns = std::round(row.turns * 100) / 100;
            out += "  " +
                   (row.squeeze || turns >= 0.1 ? cell(units::number(turns) + " turns", 11) : std::string()) +
                   cell(show(row.load, system), 18) + cell(show(row.torque, system), 18);
            if (row.reading) {
                const std::string low = dialWords(row.reading->low, system),
                                  high = dialWords(row.reading->high, system);
                out += "dial " + (low == high ? low : low + " to " + high);
            }
            out += "\n";
        }
        for (const std::string& note : report.card.notes)
            out += wrapped("  - ", note);
    }
    return out;
}

/// One change may mend several checks: it is said once. What mends a check and leaves the tool failing is
/// said only as far as nothing does better.
std::string mendRows(const Report& report) {
    const auto enough = [](const Change& c) { return c.leaves == Grade::Holds || c.leaves == Grade::Thin; };
    const bool any = std::any_of(report.changes.begin(), report.changes.end(), enough);
    std::string out;
    std::vector<const Change*> said;
    for (const Change& change : report.changes) {
        const bool known = std::any_of(said.begin(), said.end(), [&](const Change* c) {
            return c->field == change.field && c->value == change.value;
        });
        if (known || (any && !enough(change)) || (!any && said.size() >= 3))
            continue;
        said.push_back(&change);
        out += row("Mend", change.what);
    }
    if (!any && !said.empty())
        out += row("", "No single change is enough: it takes several.");
    return out;
}

/// What does not hold in full, what holds in a few words: the numbers behind it stand in the window and in
/// --json.
std::string checkRows(const Report& report) {
    if (report.checks.empty())
        return {};
    std::string weak, strong;
    for (const verdict::Check& check : report.checks) {
        const std::string head = "  " + padded(std::string(verdict::wordOf(check.grade)), 12);
        if (check.grade != Grade::Holds)
            weak += wrapped(head, check.title + ": " + check.basis);
        else if (check.margin && check.wanted)
            strong += head + padded(check.title, 31) + marginWords(check, *check.margin, report.preferred) +
                      ", " + marginWords(check, *check.wanted, report.preferred) + " wanted\n";
        else
            strong += head + check.title + "\n";
    }
    return "\nChecks, weakest first\n" + weak + strong;
}

/// A demand or capacity in the check's own unit, as the report keeps it.
std::string amount(double value, const std::string& unit, System system) {
    if (unit == "N")
        return show(units::Force::fromN(value), system);
    if (unit == "mm")
        return show(units::Length::fromMm(value), system);
    if (unit == "MPa")
        return show(units::Stress::fromMpa(value), system);
    if (unit == "N.m")
        return show(units::Torque::fromNm(value), system);
    return units::number(value) + " " + unit;
}

/// Every check: margin, demand against capacity, the numbers put in, and where the limit comes from.
std::string reasonRows(const Report& report) {
    if (report.checks.empty())
        return {};
    const System system = report.preferred;
    std::string out = "\nChecks, weakest first\n";
    for (const verdict::Check& check : report.checks) {
        std::string text = check.title;
        if (check.margin && check.wanted)
            text += ", " + marginWords(check, *check.margin, system) + ", " +
                    marginWords(check, *check.wanted, system) + " wanted";
        if (check.demand && check.capacity)
            text += " (" + amount(*check.demand, check.unit, system) + " of " +
                    amount(*check.capacity, check.unit, system) + ")";
        text += ". " + check.basis + ".";
        if (!check.source.empty())
            text += " Source: " + check.source + ".";
        out += wrapped("  " + padded(std::string(verdict::wordOf(check.grade)), 12), text);
    }
    return out;
}

} // namespace

std::string toWords(const job::Job& job, const Report& report, bool reasons) {
    std::string out;
    if (!report.title.empty())
        out += wrapped("", report.title) + "\n";
    out += wrapped(padded(std::string(verdict::wordOf(report.grade)), 14), report.reason);
    if (const verdict::Check* weakest = report.find(report.weakest)) {
        std::string text = weakest->title;
        if (weakest->margin && weakest->wanted)
            text += ", " + units::number(*weakest->margin) + " against " + units::number(*weakest->wanted) +
                    " wanted";
        out += row("Weakest link", text);
    }
    out += figures(report);
    out += mendRows(report);
    std::vector<std::string> needed, wrong;
    for (const Missing& m : report.missing)
        needed.push_back(m.field + ": " + m.how);
    for (const util::Problem& p : report.problems)
        wrong.push_back(util::toText(p));
    out += list("Needed first", needed, false);
    out += list("Wrong", wrong, false);
    out += reasons ? reasonRows(report) : checkRows(report);
    out += list("Assumed", report.assumptions, false);
    if (report.plate.field && !report.plate.spread.empty()) {
        std::vector<std::string> lines;
        const auto change = [](double now, double before) {
            const double percent = std::round(100 * (now / before - 1));
            return (percent >= 0 ? "+" : "") + units::number(percent, 3) + " %";
        };
        for (const PlateReport::Spread& row : report.plate.spread)
            lines.push_back("With " + row.what + ": worst stress " +
                            change(row.peakStressMpa, report.plate.field->peakStressMpa) +
                            (report.plate.field->deflectionMm
                                 ? ", bend " + change(row.deflectionMm, *report.plate.field->deflectionMm)
                                 : std::string()));
        out += list("What moves the answer", lines, false);
    }
    if (report.grade == Grade::Holds || report.grade == Grade::Thin) {
        out += tables(report);
        out += list("Order of work", report.steps, true);
    } else if (report.grade != Grade::Incomplete) {
        out += job.work == job::Work::Pull ? "\nDo not pull with this tool.\n"
                                           : "\nDo not squeeze with this plate.\n";
    }
    out += list("Cautions", report.cautions, false);
    return out;
}

} // namespace pw::engine
