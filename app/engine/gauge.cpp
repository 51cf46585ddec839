#include "app/engine/gauge.h"

#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::engine {

namespace {

using units::Force;
using units::Length;
using units::Range;
using units::Torque;

/// A card longer than this is not read at the bench; then whole turns, then more, are shown.
constexpr std::size_t kMostRows = 14;

/// From the least load at the least friction to the most at the most.
Range<Torque> torqueOver(const loadpath::TorqueInputs& torque, const Range<Force>& load) {
    return {loadpath::torqueFor(torque, load.low).low, loadpath::torqueFor(torque, load.high).high};
}

Found<Range<Length>> readingOver(const Found<Dial>& dial, const Range<Force>& load) {
    if (!dial)
        return std::nullopt;
    return Range<Length>{dial->perNewton * load.low.newton(), dial->perNewton * load.high.newton()};
}

void squeezeRows(const job::Job& job, const spring::PackLoads& pack, const loadpath::TorqueInputs& torque,
                 const Found<Dial>& dial, Card& card) {
    const Length swell = job.travel.swell.value_or(Length()),
                 further = job.travel.compressFurther.value_or(Length()), lead = torque.thread.lead();
    double step = 0.5;
    while (further / lead / step > static_cast<double>(kMostRows - 2))
        step *= 2;
    const auto add = [&](Length squeeze) {
        const Range<Force> load = spring::totalAt(pack, swell + squeeze);
        card.rows.push_back(
            {squeeze / lead, squeeze, load, torqueOver(torque, load), readingOver(dial, load)});
    };
    for (double turns = 0; lead * turns < further - lead * 0.05; turns += step)
        add(lead * turns);
    add(further);
    card.notes = {
        say("Turns count from where the retainers begin to move, not from hand-tight."),
        say("Much more torque than this before anything moves: a retainer is stuck, a keeper has jammed or "
            "the pack is solid. Stop, look, let up."),
        say("Much less: a spring is broken or missing, or a keeper is already out. Stop and count."),
        say("Torque high but the dial right: the screw is dry. Torque right but the dial high: the screw "
            "runs easier than taken. Believe the dial.")};
}

void pullRows(const spring::PackLoads& pack, const loadpath::TorqueInputs& torque, const Found<Dial>& dial,
              const Found<units::Rate>& stiffness, Card& card) {
    for (const double part : {0.25, 0.5, 0.75, 1.0}) {
        const Force load = pack.design() * part;
        const Range<Force> exactly{load, load};
        const double turns = stiffness ? load / *stiffness / torque.thread.lead() : 0;
        card.rows.push_back(
            {turns, std::nullopt, exactly, torqueOver(torque, exactly), readingOver(dial, exactly)});
    }
    card.notes = {
        say("Turns count from snug, and only what plate and screw give; jaws, bolts and slack add to them."),
        say("Torque climbs and the dial does not: friction in the screw, or its point has seized. Oil it, "
            "start again."),
        say("The dial stands still or falls while you turn: something gives, the hub or the tool. Stop and "
            "look which."),
        say("At full load and nothing moves: stand clear and wait. Then let the load off, and soak the joint "
            "or heat the hub. No longer wrench.")};
}

} // namespace

std::string dialWords(Length reading, units::System system) {
    const bool inch = system == units::System::Inch;
    const double step = inch ? 1e-4 : 1e-3, value = inch ? reading.inch() : reading.mm();
    return units::number(std::round(value / step) * step, 4) + (inch ? "\u00a0in" : "\u00a0mm");
}

std::vector<GaugeRow> gaugeRows(Force design, const ScrewReport& screw, const ProofReport& proof,
                                const Dial& dial) {
    std::vector<GaugeRow> rows;
    const auto add = [&](const std::string& what, Force load) {
        for (GaugeRow& row : rows)
            if (std::abs(load / row.load - 1) < 0.005) {
                row.what += ", " + what;
                return;
            }
        rows.push_back({what, load, dial.perNewton * load.newton()});
    };
    add(say("a quarter"), design * 0.25);
    add(say("half"), design * 0.5);
    add(say("three quarters"), design * 0.75);
    add(say("design load"), design);
    if (screw.stamp)
        add(say("stamp"), *screw.stamp);
    if (screw.ratedLoad)
        add(say("rated load"), *screw.ratedLoad);
    if (proof.load)
        add(say("proof"), *proof.load);
    std::stable_sort(rows.begin(), rows.end(),
                     [](const GaugeRow& a, const GaugeRow& b) { return a.load < b.load; });
    return rows;
}

Card turnsAndTorque(const job::Job& job, const spring::PackLoads& pack,
                    const Found<loadpath::TorqueInputs>& torque, const Found<Dial>& dial,
                    const Found<units::Rate>& stiffness) {
    Card card;
    if (!torque || !pack.known())
        return card;
    if (job.work == job::Work::Pull)
        pullRows(pack, *torque, dial, stiffness, card);
    else if (pack.source == spring::LoadSource::Springs)
        squeezeRows(job, pack, *torque, dial, card);
    return card;
}

} // namespace pw::engine
