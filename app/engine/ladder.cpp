#include "app/engine/ladder.h"

#include "app/engine/model_cache.h"
#include "core/material/stock.h"

#include <algorithm>
#include <future>

namespace pw::engine {

namespace {

using material::StockThickness;
using verdict::Grade;

job::Job inThickness(job::Job job, units::Length thickness) {
    job.plate.thickness = thickness;
    return job;
}

Rung rungOf(const job::Job& job, const StockThickness& stock, const CheckOptions& options) {
    CheckOptions plain = options;
    plain.mend = plain.spread = false; // and the meshes are shared
    const Report report = check(inThickness(job, stock.thickness), plain);
    Rung rung{stock.label, stock.thickness, report.grade, report.weakest};
    if (const verdict::Check* weakest = report.find(report.weakest)) {
        rung.weakestTitle = weakest->title;
        rung.marginOverWanted = weakest->marginOverWanted();
    }
    rung.collapseFactor = report.plate.collapseFactor;
    rung.firstYieldFactor = report.plate.firstYieldFactor;
    rung.setMm = report.plate.setMm;
    if (report.plate.field)
        rung.deflectionMm = report.plate.field->deflectionMm;
    rung.massKg = report.plate.massKg;
    return rung;
}

jobfile::Tree number(const Found<double>& value) {
    return value ? jobfile::Tree(*value) : jobfile::Tree();
}

bool isPlateCheck(const verdict::Check& check) {
    return check.id == "plate.collapse" || check.id == "plate.set";
}

} // namespace

Ladder ladder(const job::Job& job, const CheckOptions& options) {
    const std::vector<StockThickness>& stock = material::stockThicknesses(job.preferred);
    Ladder ladder;
    ladder.rungs.resize(stock.size());
    CheckOptions shared = options;
    shared.models = std::make_shared<ModelCache>();
    // Two workers, every second rung each: the thick ones are no slower than the thin ones.
    const auto work = [&](std::size_t first) {
        for (std::size_t i = first; i < stock.size(); i += 2)
            ladder.rungs[i] = rungOf(job, stock[i], shared);
    };
    auto other = std::async(std::launch::async, work, 1);
    work(0);
    other.get();
    for (const Rung& rung : ladder.rungs)
        if (rung.grade == Grade::Holds) {
            ladder.thinnestThatHolds = rung.label;
            break;
        }
    return ladder;
}

jobfile::Tree toTree(const Ladder& ladder) {
    using jobfile::Tree;
    Tree t = Tree::object();
    t["platewright"] = 1;
    Tree& rungs = t["rungs"] = Tree::list();
    for (const Rung& rung : ladder.rungs) {
        Tree r = Tree::object();
        r["label"] = rung.label;
        r["thickness_mm"] = rung.thickness.mm();
        r["verdict"] = verdict::wordOf(rung.grade);
        r["weakest"] = rung.weakest.empty() ? Tree() : Tree(rung.weakest);
        r["margin_over_wanted"] = number(rung.marginOverWanted);
        r["collapse_factor"] = number(rung.collapseFactor);
        r["first_yield_factor"] = number(rung.firstYieldFactor);
        r["set_mm"] = number(rung.setMm);
        r["deflection_mm"] = number(rung.deflectionMm);
        r["mass_kg"] = number(rung.massKg);
        r["on_rack"] = rung.onRack;
        rungs.push(std::move(r));
    }
    t["thinnest_that_holds"] = ladder.thinnestThatHolds.empty() ? Tree() : Tree(ladder.thinnestThatHolds);
    return t;
}

std::string toWords(const Ladder& ladder, units::System system) {
    std::string out;
    for (const Rung& rung : ladder.rungs) {
        std::string line = "  " + rung.label;
        line.resize(std::max<std::size_t>(line.size(), 12), ' ');
        line += verdict::wordOf(rung.grade);
        line.resize(std::max<std::size_t>(line.size(), 24), ' ');
        if (rung.collapseFactor)
            line += "folds at " + units::number(*rung.collapseFactor) + " x";
        if (rung.massKg)
            line += ", " + units::show(units::Mass::fromKg(*rung.massKg), system);
        if (!rung.weakestTitle.empty())
            line += ", weakest: " + rung.weakestTitle;
        out += line + "\n";
    }
    out += ladder.thinnestThatHolds.empty() ? "None of these holds.\n"
                                            : "Thinnest that holds: " + ladder.thinnestThatHolds + "\n";
    return out;
}

Found<Change> thickerPlate(const job::Job& job, const Report& report) {
    if (!job.plate.thickness || !report.plate.collapseFactor || report.grade == Grade::Holds ||
        report.grade == Grade::Incomplete)
        return std::nullopt;
    const auto isPoor = [](const verdict::Check& c) { return isPlateCheck(c) && c.grade != Grade::Holds; };
    if (std::none_of(report.checks.begin(), report.checks.end(), isPoor))
        return std::nullopt;
    constexpr int kMostTries = 4;
    int tries = 0;
    Found<Change> second; // mends the plate, but something else stays thin
    for (const StockThickness& stock : material::stockThicknesses(job.preferred)) {
        // Folding goes with t squared; what cannot reach even that is not worth a check.
        const double growth = stock.thickness / *job.plate.thickness;
        const verdict::Check* folding = report.find("plate.collapse");
        if (growth <= 1 || (folding && folding->margin && folding->wanted &&
                            *folding->margin * growth * growth < 0.97 * *folding->wanted))
            continue;
        if (++tries > kMostTries)
            break;
        const Report thicker = check(inThickness(job, stock.thickness), {.mend = false, .spread = false});
        const bool plateHolds = std::none_of(thicker.checks.begin(), thicker.checks.end(), isPoor);
        const bool holds = thicker.grade == Grade::Holds;
        if (!plateHolds || (!holds && (thicker.grade != Grade::Thin || second)))
            continue;
        std::string what = "Use " + stock.label + " plate. Then it " +
                           (holds ? "holds" : "is thin, no longer for the plate") + ".";
        if (thicker.plate.massKg && report.plate.massKg)
            what += " " +
                    units::show(units::Mass::fromKg(*thicker.plate.massKg - *report.plate.massKg),
                                job.preferred) +
                    " heavier.";
        second = Change{"plate.collapse", what, "plate.thickness", stock.label};
        if (holds)
            break;
    }
    return second;
}

} // namespace pw::engine
