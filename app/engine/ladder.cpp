#include "app/engine/ladder.h"

#include "app/engine/model_cache.h"
#include "app/engine/tree_parts.h"
#include "core/material/stock.h"
#include "core/util/say.h"

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
    if (rung.grade != Grade::Holds)
        for (const verdict::Check& check : report.checks)
            if (check.grade == rung.grade) {
                rung.because = check.title;
                break;
            }
    rung.collapseFactor = report.plate.collapseFactor;
    rung.firstYieldFactor = report.plate.firstYieldFactor;
    rung.setMm = report.plate.setMm;
    if (report.plate.field)
        rung.deflectionMm = report.plate.field->deflectionMm;
    rung.massKg = report.plate.massKg;
    return rung;
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
        r["because"] = rung.because.empty() ? Tree() : Tree(rung.because);
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
        if (!rung.because.empty())
            line += ", for: " + rung.because;
        else if (!rung.weakestTitle.empty())
            line += ", weakest: " + rung.weakestTitle;
        out += line + "\n";
    }
    out += ladder.thinnestThatHolds.empty() ? "None of these holds.\n"
                                            : "Thinnest that holds: " + ladder.thinnestThatHolds + "\n";
    return out;
}

} // namespace pw::engine
