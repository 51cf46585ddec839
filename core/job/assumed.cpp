#include "core/job/assumed.h"

#include "core/util/say.h"

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
    filler.fill(assumed.process, cutting.process, say("Cut on a plasma table, as nothing else was said."));
    assumed.habits = habitsOf(assumed.process);
    const std::string process = say(nameOf(assumed.process).data());
    const ProcessHabits habits = assumed.habits;
    filler.fill(assumed.habits.kerf, cutting.kerf,
                say("The cut is %1 wide, usual for %2.", {filler.show(habits.kerf), process}));
    filler.fill(
        assumed.habits.layoutError, cutting.layoutError,
        say("Holes may lie %1 off their place, usual for %2.", {filler.show(habits.layoutError), process}));
    filler.fill(
        assumed.habits.growth, cutting.growth,
        say("Holes come out %1 larger on the radius, usual for %2.", {filler.show(habits.growth), process}));
}

void fillScrew(Filler& filler, Assumed& assumed, const Screw& screw) {
    filler.fill(assumed.turns, screw.turns, say("The nut is turned, not the screw."));
    filler.fill(assumed.into, screw.into, say("The screw goes into the shaft's own thread."));
    filler.fill(assumed.lubrication, screw.lubrication, say("Threads and the face that turns are oiled."));
    filler.fill(assumed.threadCondition, screw.threadCondition, say("The threads are in good condition."));
}

} // namespace

Assumed assume(const Job& job) {
    Assumed assumed;
    Filler filler(assumed, job.preferred);
    assumed.steel.name = kUnknownScrap;
    filler.fill(assumed.steel, job.plate.steel,
                say("The plate's steel was not named: judged as unknown scrap."));
    assumed.stacked = job.plate.stacked.value_or(1);
    assumed.land = job.stations.land;
    if (!assumed.land && job.stations.retainer) {
        assumed.land = job.stations.retainer;
        assumed.sentences.push_back(
            say("The land is as wide as the retainer, %1.", {filler.show(*assumed.land)}));
    }
    assumed.bearingInside = job.centre.bearingInside;
    if (!assumed.bearingInside && job.plate.bore) {
        assumed.bearingInside = job.plate.bore;
        if (job.centre.bearingOutside)
            assumed.sentences.push_back(
                say("The centre bearing starts at the bore, %1.", {filler.show(*assumed.bearingInside)}));
    }
    fillCutting(filler, assumed, job.cutting);
    if (job.screw)
        fillScrew(filler, assumed, *job.screw);
    filler.fill(assumed.margin, job.wanted.margin,
                say("A margin of 2 is wanted, usual for tools like this."));
    return assumed;
}

} // namespace pw::job
