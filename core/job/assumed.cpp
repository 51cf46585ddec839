#include "core/job/assumed.h"

namespace pw::job {

namespace {

constexpr std::string_view kUnknownScrap = "unknown scrap";

/// Collects defaults and their sentences.
class Filler {
public:
    Filler(Assumed& assumed, units::System system) : m_assumed(assumed), m_system(system) {}

    /// The given value, or the default that stands in `out`, with the sentence that says so.
    template<class T>
    void fill(T& out, const Given<T>& given, std::string sentence) {
        if (given)
            out = *given;
        else
            m_assumed.sentences.push_back(std::move(sentence));
    }
    std::string show(Length length) const { return units::show(length, m_system); }

private:
    Assumed& m_assumed;
    units::System m_system;
};

void fillCutting(Filler& filler, Assumed& assumed, const Cutting& cutting) {
    filler.fill(assumed.process, cutting.process, "Cut on a plasma table, as nothing else was said.");
    assumed.habits = habitsOf(assumed.process);
    const std::string usual = ", usual for " + std::string(nameOf(assumed.process)) + ".";
    const ProcessHabits habits = assumed.habits;
    filler.fill(assumed.habits.kerf, cutting.kerf,
                "The cut is " + filler.show(habits.kerf) + " wide" + usual);
    filler.fill(assumed.habits.layoutError, cutting.layoutError,
                "Holes may lie " + filler.show(habits.layoutError) + " off their place" + usual);
    filler.fill(assumed.habits.growth, cutting.growth,
                "Holes come out " + filler.show(habits.growth) + " larger on the radius" + usual);
}

void fillScrew(Filler& filler, Assumed& assumed, const Screw& screw) {
    filler.fill(assumed.turns, screw.turns, "The nut is turned, not the screw.");
    filler.fill(assumed.into, screw.into, "The screw goes into the shaft's own thread.");
    filler.fill(assumed.lubrication, screw.lubrication, "Threads and the face that turns are oiled.");
    filler.fill(assumed.threadCondition, screw.threadCondition, "The threads are in good condition.");
}

} // namespace

Assumed assume(const Job& job) {
    Assumed assumed;
    Filler filler(assumed, job.preferred);
    assumed.steel.name = kUnknownScrap;
    filler.fill(assumed.steel, job.plate.steel, "The plate's steel was not named: judged as unknown scrap.");
    assumed.stacked = job.plate.stacked.value_or(1);
    assumed.land = job.stations.land;
    if (!assumed.land && job.stations.retainer) {
        assumed.land = job.stations.retainer;
        assumed.sentences.push_back("The land is as wide as the retainer, " + filler.show(*assumed.land) +
                                    ".");
    }
    assumed.bearingInside = job.centre.bearingInside;
    if (!assumed.bearingInside && job.plate.bore) {
        assumed.bearingInside = job.plate.bore;
        if (job.centre.bearingOutside)
            assumed.sentences.push_back("The centre bearing starts at the bore, " +
                                        filler.show(*assumed.bearingInside) + ".");
    }
    fillCutting(filler, assumed, job.cutting);
    if (job.screw)
        fillScrew(filler, assumed, *job.screw);
    filler.fill(assumed.margin, job.wanted.margin, "A margin of 2 is wanted, usual for tools like this.");
    return assumed;
}

} // namespace pw::job
