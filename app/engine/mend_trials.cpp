#include "app/engine/mend_trials.h"

#include "core/job/assumed.h"
#include "core/loadpath/setup.h"
#include "core/material/stock.h"
#include "core/units/parse.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace pw::engine {

namespace {

using job::Job;
using units::Length;
using units::System;
using Put = std::function<void(Job&, const std::string&)>;
using Names = std::vector<const char*>;

constexpr int kMostValues = 24;

Length lengthOf(const std::string& text) {
    const auto value = units::parse<Length>(text);
    return value ? *value : Length();
}

/// A whole step of rule or tape: 1 mm or 1/16 in, 5 mm or 1/4 in from 60 mm up.
Length stepAt(Length length, System system) {
    if (system == System::Metric)
        return Length::fromMm(length.mm() < 60 ? 1 : 5);
    return Length::fromInch(length.mm() < 60 ? 1.0 / 16 : 0.25);
}

std::string typed(Length length, System system) {
    return units::plainBlanks(system == System::Inch
                                  ? units::writtenInchFraction(length)
                                  : units::writtenNumber(std::round(length.mm() * 100) / 100, 6) + " mm");
}

/// From just over `from` to `to` in whole steps.
std::vector<std::string> lengthsUp(Length from, Length to, System system) {
    std::vector<std::string> values;
    Length at = from;
    while (static_cast<int>(values.size()) < kMostValues) {
        const Length step = stepAt(at, system);
        at = step * (std::floor(at / step * (1 + 1e-9)) + 1);
        if (at > to + Length::fromMm(1e-6))
            break;
        values.push_back(typed(at, system));
    }
    return values;
}

/// From just under `from` down to `to`.
std::vector<std::string> lengthsDown(Length from, Length to, System system) {
    std::vector<std::string> values;
    Length at = from;
    while (static_cast<int>(values.size()) < kMostValues) {
        const Length step = stepAt(at, system);
        at = step * (std::ceil(at / step * (1 - 1e-9)) - 1);
        if (at < to || at <= Length())
            break;
        values.push_back(typed(at, system));
    }
    return values;
}

/// Collects trials; those without a value to try are left out.
class Trials {
public:
    Trials(const verdict::Check& check, const Job& job, const Report& report)
        : m_check(check), m_job(job), m_report(report) {}

    std::vector<Trial> take() { return std::move(m_trials); }

    void add(const std::string& field, const std::string& words, std::vector<std::string> values, Put put) {
        if (!values.empty())
            m_trials.push_back({field, words, std::move(values), std::move(put)});
    }

    job::Screw screw() const { return m_job.screw.value_or(job::Screw{}); }
    Found<thread::Thread> thread() const {
        return m_job.screw || !m_job.plate.boreThread.empty() ? loadpath::membersOf(m_job).thread
                                                              : std::nullopt;
    }
    bool metricThread() const {
        const auto found = thread();
        return found ? found->form == thread::Form::Metric || found->form == thread::Form::Trapezoidal
                     : m_job.preferred == System::Metric;
    }
    /// How much of what is wanted is there; 1 when that is not known.
    double share() const { return std::min(1.0, m_check.marginOverWanted().value_or(1.0)); }

    void thickerPlate() {
        if (!m_job.plate.thickness)
            return;
        std::vector<std::string> values;
        // Bending goes with t squared: what cannot reach even that is not worth a check.
        const double least = m_check.id == "plate.collapse" || m_check.id == "legs.bending"
                                 ? std::sqrt(0.97 / std::max(0.01, share()))
                                 : 1.0;
        for (const material::StockThickness& stock : material::stockThicknesses(m_job.preferred))
            if (stock.thickness > *m_job.plate.thickness && stock.thickness / *m_job.plate.thickness >= least)
                values.push_back(stock.label);
        add("plate.thickness", say("Use %1 plate"), values,
            [](Job& j, const std::string& v) { j.plate.thickness = lengthOf(v); });
    }

    void betterSteel() {
        const auto now = loadpath::membersOf(m_job).plate;
        if (!now || m_job.plate.tests.cracks == job::CrackTest::Seen)
            return;
        std::vector<std::string> values;
        for (const char* name :
             m_job.preferred == System::Metric ? Names{"S235", "S355"} : Names{"A36", "A572-50"}) {
            const auto steel = material::find(name, m_job.plate.thickness.value_or(Length()));
            if (steel && steel->yield > now->yield)
                values.push_back(name);
        }
        add("plate.steel", say("Cut it from %1"), values, [](Job& j, const std::string& v) {
            j.plate.steel = job::Material{};
            j.plate.steel->name = v;
            j.plate.tests = {};
        });
    }

    /// Two opposite stations at a time, the rest held by their keepers.
    void fewerAtATime() {
        const int count = m_job.stations.count.value_or(0);
        if (m_job.work == job::Work::Pull || m_job.load.total || count < 4 || count % 2 != 0 ||
            !m_job.stations.loaded.empty())
            return;
        std::string pattern = "[";
        for (int i = 0; i < count; ++i)
            pattern += std::string(i ? ", " : "") + (i % (count / 2) == 0 ? "true" : "false");
        add("stations.loaded", say("Squeeze two opposite stations at a time"), {pattern + "]"},
            [count](Job& j, const std::string&) {
                j.stations.loaded.assign(static_cast<std::size_t>(count), false);
                j.stations.loaded[0] = j.stations.loaded[static_cast<std::size_t>(count / 2)] = true;
            });
    }

    void biggerWasher() {
        if (!m_report.bearingOutside || m_job.centre.bearingOutside || !m_job.plate.boreThread.empty())
            return;
        const bool metric = m_job.preferred == System::Metric;
        const auto setup = loadpath::setUp(m_job);
        if (!setup.bearing)
            return;
        std::vector<std::string> thicker;
        for (const char* label : metric ? Names{"4 mm", "5 mm", "6 mm", "8 mm", "10 mm", "12 mm"}
                                        : Names{"3/16 in", "1/4 in", "5/16 in", "3/8 in", "1/2 in"})
            if (lengthOf(label) > setup.bearing->washerThickness)
                thicker.push_back(label);
        if (setup.bearing->washerOutside > *m_report.bearingOutside) // it does not reach its rim yet
            add("screw.washer_thickness", say("Use a washer %1 thick"), thicker,
                [](Job& j, const std::string& v) {
                    if (!j.screw)
                        j.screw.emplace();
                    j.screw->washerThickness = lengthOf(v);
                });
        // Larger, and thick enough to reach the new rim.
        add("screw.washer_outside", say("Use a washer %1 across"),
            lengthsUp(setup.bearing->washerOutside, setup.bearing->washerOutside * 2.0, m_job.preferred),
            [](Job& j, const std::string& v) {
                if (!j.screw)
                    j.screw.emplace();
                j.screw->washerOutside = lengthOf(v);
            });
    }

    std::vector<std::string> strongerScrews(const std::string& now, const Found<thread::Thread>& on) const {
        std::vector<std::string> values;
        if (!on)
            return values;
        const auto have = material::findScrewGrade(now.empty() ? "unknown" : now, *on);
        const bool metric = on->form == thread::Form::Metric || on->form == thread::Form::Trapezoidal;
        for (const char* name : metric ? Names{"8.8", "10.9", "12.9"} : Names{"SAE 5", "B7", "SAE 8"}) {
            const auto grade = material::findScrewGrade(name, *on);
            if (have && grade && grade->yield > have->yield)
                values.push_back(name);
        }
        return values;
    }

    void betterScrew() {
        add("screw.grade", say("Use a screw of grade %1"), strongerScrews(screw().grade, thread()),
            [](Job& j, const std::string& v) {
                if (!j.screw)
                    j.screw.emplace();
                j.screw->grade = v;
            });
    }

    void betterNut() {
        const auto on = thread();
        if (!on)
            return;
        const auto have =
            material::findNutGrade(screw().nutGrade.empty() ? "unknown" : screw().nutGrade, *on);
        std::vector<std::string> values;
        for (const char* name : metricThread() ? Names{"8", "10", "12"} : Names{"SAE 5", "SAE 8", "2H"}) {
            const auto grade = material::findNutGrade(name, *on);
            if (have && grade && grade->proof > have->proof)
                values.push_back(name);
        }
        add("screw.nut_grade", say("Use a nut of grade %1"), values,
            [](Job& j, const std::string& v) { j.screw->nutGrade = v; });
        if (m_job.screw && m_job.screw->nutHeight)
            add("screw.nut_height", say("Use a nut %1 high"),
                lengthsUp(*m_job.screw->nutHeight, on->diameter * 1.25, m_job.preferred),
                [](Job& j, const std::string& v) { j.screw->nutHeight = lengthOf(v); });
    }

    /// No deeper than what the screw enters is thick; as deep as you like in a shaft.
    Length deepest(Length wanted) const {
        const job::Into into = loadpath::intoOf(m_job);
        job::Given<Length> thick;
        if (into == job::Into::Bar && m_job.back)
            thick = m_job.back->thickness;
        else if (into == job::Into::Plate)
            thick = m_job.plate.thickness;
        else if (into == job::Into::Nut)
            thick = screw().nutHeight;
        return thick ? std::min(*thick, wanted) : wanted;
    }

    void moreEngagement() {
        const auto on = thread();
        if (!on || !m_job.screw || !m_job.screw->engagement)
            return;
        add("screw.engagement", say("Screw it in %1 deep"),
            lengthsUp(*m_job.screw->engagement, deepest(on->diameter * 2.5), m_job.preferred),
            [](Job& j, const std::string& v) { j.screw->engagement = lengthOf(v); });
    }

    void moly() {
        if (!m_job.screw || screw().lubrication == job::Lubrication::Moly || screw().threadFriction ||
            screw().collarFriction)
            return;
        add("screw.lubrication", say("Grease thread and face with %1"), {PW_SAY("moly")},
            [](Job& j, const std::string&) { j.screw->lubrication = job::Lubrication::Moly; });
    }

    /// A shorter lever makes less; down to what the check wants.
    void shorterWrench() {
        if (!m_job.screw || !m_job.screw->wrench)
            return;
        const Length least = *m_job.screw->wrench * 0.2;
        add("screw.wrench", say("Use a wrench no longer than %1"),
            lengthsDown(*m_job.screw->wrench * std::min(1.0, share() * 1.02), least, m_job.preferred),
            [](Job& j, const std::string& v) { j.screw->wrench = lengthOf(v); });
    }

    /// What can be turned down where wrench or ram decides the load.
    void lessPull() {
        if (m_report.load.source == "wrench")
            shorterWrench();
        if (m_report.load.source == "ram" && m_job.ram && m_job.ram->maxPressure) {
            std::vector<std::string> values;
            const double bar = m_job.ram->maxPressure->mpa() * 10;
            for (double p = std::floor(bar * share() / 10) * 10; p >= bar * 0.2 && values.size() < 6; p -= 10)
                values.push_back(units::writtenNumber(p, 4) + " bar");
            add("ram.max_pressure", say("Set the ram's valve to %1"), values,
                [](Job& j, const std::string& v) {
                    if (const auto pressure = units::parse<units::Stress>(v))
                        j.ram->maxPressure = *pressure;
                });
        }
    }

    void noHammer() {
        if (loadpath::hammerFactorOf(m_job) > 1)
            add("screw.hammering", say("Do not hammer on it"), {"false"},
                [](Job& j, const std::string&) { j.screw->hammering = false; });
    }

    void coolTool() {
        if (m_job.heat.tool && m_job.heat.tool->celsius() > 100)
            add("heat.tool", say("Let the tool cool to %1 first"),
                {m_job.preferred == System::Inch ? "68 F" : "20 C"}, [](Job& j, const std::string& v) {
                    if (const auto t = units::parse<units::Temperature>(v))
                        j.heat.tool = *t;
                });
    }

    /// What has to go through an access hole, with room.
    Length mustPass() const {
        const Length room = Length::fromMm(3), boltRoom = Length::fromMm(0.5);
        Length most =
            m_job.stations.keeper ? *m_job.stations.keeper + room : m_job.stations.pin.value_or(Length());
        for (const std::string& name :
             {m_job.hub && m_job.hub->bolts ? m_job.hub->bolts->thread : std::string(),
              m_job.legs ? m_job.legs->thread : std::string()})
            if (const auto rod = thread::parse(name); !name.empty() && rod)
                most = std::max(most, rod->diameter + boltRoom);
        return most;
    }

    void accessHole(bool larger) {
        if (!m_job.stations.accessHole || m_job.stations.hole.shape != job::HoleShape::Round)
            return;
        const Length now = *m_job.stations.accessHole;
        const Length least = std::max(now * 0.6, mustPass());
        add("stations.access_hole",
            larger ? say("Open the access holes to %1") : say("Make the access holes %1"),
            larger ? lengthsUp(now, now * 1.6, m_job.preferred) : lengthsDown(now, least, m_job.preferred),
            [](Job& j, const std::string& v) { j.stations.accessHole = lengthOf(v); });
    }

    void largerPlate() {
        if (!m_job.plate.outline)
            return;
        const job::Outline& outline = *m_job.plate.outline;
        if (outline.shape == job::OutlineShape::Disc && outline.diameter)
            add("plate.outline.diameter", say("Cut the disc %1 across"),
                lengthsUp(*outline.diameter, *outline.diameter * 1.4, m_job.preferred),
                [](Job& j, const std::string& v) { j.plate.outline->diameter = lengthOf(v); });
        if (outline.shape != job::OutlineShape::Disc && outline.width)
            add("plate.outline.width", say("Cut it %1 wide"),
                lengthsUp(*outline.width, *outline.width * 1.6, m_job.preferred),
                [](Job& j, const std::string& v) { j.plate.outline->width = lengthOf(v); });
    }

    void truerCut() {
        const job::Process now = m_job.cutting.process.value_or(job::Process::PlasmaTable);
        if (m_job.cutting.layoutError || now == job::Process::Milled)
            return;
        const auto better = job::habitsOf(job::Process::SawAndDrill);
        if (now != job::Process::SawAndDrill && better.layoutError < job::habitsOf(now).layoutError)
            add("cutting.process", say("Cut it by saw and drill"), {"saw and drill"},
                [](Job& j, const std::string&) { j.cutting.process = job::Process::SawAndDrill; });
        add("cutting.process", say("Have it milled"), {"milled"},
            [](Job& j, const std::string&) { j.cutting.process = job::Process::Milled; });
    }

    void moreThread() {
        if (!m_job.screw || !m_report.travel.threadNeeded)
            return;
        const Length needed = *m_report.travel.threadNeeded;
        const job::Into into = loadpath::intoOf(m_job);
        const bool nut = loadpath::turnsOf(m_job) == job::Turns::Nut || into == job::Into::Bar ||
                         into == job::Into::Nut; // a tip that stands out behind is a longer screw
        const auto& now = nut ? m_job.screw->usableLength : m_job.screw->engagement;
        if (!now || *now >= needed)
            return;
        const Length most = nut ? needed * 1.2 : deepest(needed * 1.2);
        const auto values = lengthsUp(needed - stepAt(needed, m_job.preferred) * 0.5, most, m_job.preferred);
        if (nut)
            add("screw.usable_length", say("Use a screw with %1 of thread"), values,
                [](Job& j, const std::string& v) { j.screw->usableLength = lengthOf(v); });
        else
            add("screw.engagement", say("Screw it in %1 deep"), values,
                [](Job& j, const std::string& v) { j.screw->engagement = lengthOf(v); });
    }

    void lessSqueeze() {
        if (m_job.travel.compressFurther)
            add("travel.compress_further", say("Squeeze only %1 further"),
                lengthsDown(*m_job.travel.compressFurther, Length::fromMm(0.5), m_job.preferred),
                [](Job& j, const std::string& v) { j.travel.compressFurther = lengthOf(v); });
    }

    void shorterColumn() {
        if (m_job.screw && m_job.screw->freeLength)
            add("screw.free_length", say("Pack it up so that no more than %1 of the screw stands free"),
                lengthsDown(*m_job.screw->freeLength, *m_job.screw->freeLength * 0.3, m_job.preferred),
                [](Job& j, const std::string& v) { j.screw->freeLength = lengthOf(v); });
    }

    void widerPoint() {
        const auto on = thread();
        if (!on)
            return;
        add("screw.point_diameter", say("Turn the screw's point no smaller than %1"),
            lengthsUp(loadpath::pointDiameterOf(m_job, *on), on->diameter, m_job.preferred),
            [](Job& j, const std::string& v) {
                if (!j.screw)
                    j.screw.emplace();
                j.screw->pointDiameter = lengthOf(v);
            });
    }

    void bolts() {
        if (!m_job.hub || !m_job.hub->bolts)
            return;
        const job::Bolts& now = *m_job.hub->bolts;
        const auto on = thread::parse(now.thread);
        if (!on)
            return;
        if (m_check.id == "bolts.proof")
            add("hub.bolts.grade", say("Use bolts of grade %1"), strongerScrews(now.grade, *on),
                [](Job& j, const std::string& v) { j.hub->bolts->grade = v; });
        else if (now.engagement)
            add("hub.bolts.engagement", say("Screw the bolts in %1 deep"),
                lengthsUp(*now.engagement, on->diameter * 2.5, m_job.preferred),
                [](Job& j, const std::string& v) { j.hub->bolts->engagement = lengthOf(v); });
    }

    void legs() {
        if (m_job.legs)
            if (const auto on = thread::parse(m_job.legs->thread))
                add("legs.grade", say("Use legs of grade %1"), strongerScrews(m_job.legs->grade, *on),
                    [](Job& j, const std::string& v) { j.legs->grade = v; });
    }

    void rod() {
        if (m_job.ram)
            if (const auto on = thread::parse(m_job.ram->rod))
                add("ram.rod_grade", say("Use a rod of grade %1"), strongerScrews(m_job.ram->rodGrade, *on),
                    [](Job& j, const std::string& v) { j.ram->rodGrade = v; });
    }

    void thickerBack() {
        if (!m_job.back || !m_job.back->thickness)
            return;
        std::vector<std::string> values;
        for (const material::StockThickness& stock : material::stockThicknesses(m_job.preferred))
            if (stock.thickness > *m_job.back->thickness)
                values.push_back(stock.label);
        add("back.thickness", say("Use a backing bar %1 thick"), values,
            [](Job& j, const std::string& v) { j.back->thickness = lengthOf(v); });
    }

    void jaws() {
        if (!m_job.hub || !m_job.hub->jaws)
            return;
        const job::Jaws& now = *m_job.hub->jaws;
        if (now.count && *now.count == 2)
            add("hub.jaws.count", say("Use %1 jaws"), {"3"},
                [](Job& j, const std::string&) { j.hub->jaws->count = 3; });
        if (now.width)
            add("hub.jaws.width", say("Use jaws %1 wide, or a split ring"),
                lengthsUp(*now.width, *now.width * 4.0, m_job.preferred),
                [](Job& j, const std::string& v) { j.hub->jaws->width = lengthOf(v); });
    }

private:
    const verdict::Check& m_check;
    const Job& m_job;
    const Report& m_report;
    std::vector<Trial> m_trials;
};

} // namespace

std::vector<Trial> trialsFor(const verdict::Check& check, const Job& job, const Report& report) {
    Trials trials(check, job, report);
    const std::string& id = check.id;
    const auto is = [&](std::initializer_list<const char*> ids) {
        return std::any_of(ids.begin(), ids.end(), [&](const char* each) { return id == each; });
    };
    if (check.kind == verdict::CheckKind::Force || id == "tool.hammering") {
        trials.noHammer();
        trials.coolTool();
    }
    if (is({"plate.collapse", "plate.set", "plate.hung_station", "plate.stuck_station", "land.tilt"})) {
        trials.thickerPlate();
        trials.fewerAtATime();
        trials.betterSteel();
    } else if (is({"plate.tip", "centre.washer"})) {
        trials.biggerWasher();
    } else if (id == "centre.bearing") {
        trials.biggerWasher();
        trials.betterSteel();
    } else if (is({"screw.stress", "screw.hung_station"})) {
        trials.betterScrew();
        trials.moly();
        trials.biggerWasher();
    } else if (id == "screw.buckling") {
        trials.shorterColumn();
        trials.betterScrew();
    } else if (id == "screw.torque_window") {
        trials.moly();
    } else if (id == "screw.overrun") {
        trials.shorterWrench();
    } else if (id == "thread.nut") {
        trials.betterNut();
    } else if (is({"thread.shaft", "thread.bar"})) {
        trials.moreEngagement();
        trials.fewerAtATime();
    } else if (id == "thread.plate") {
        trials.thickerPlate();
        trials.betterSteel();
    } else if (id == "back.bending") {
        trials.thickerBack();
    } else if (is({"bolts.proof", "bolts.thread"})) {
        trials.bolts();
    } else if (id == "legs.tension") {
        trials.legs();
    } else if (is({"legs.bending", "legs.feet"})) {
        trials.thickerPlate();
    } else if (id == "ram.rod") {
        trials.rod();
    } else if (id == "point.bearing") {
        trials.widerPoint();
    } else if (is({"flange.bending", "jaws.bearing"})) {
        trials.jaws();
    } else if (id == "land.width") {
        trials.accessHole(false);
        trials.truerCut();
    } else if (id == "land.bearing") {
        trials.accessHole(false);
        trials.betterSteel();
    } else if (is({"access.keeper", "access.bolt"})) {
        trials.accessHole(true);
    } else if (id == "plate.ligament") {
        trials.accessHole(false);
        trials.largerPlate();
    } else if (id == "travel.thread") {
        trials.moreThread();
    } else if (id == "load.coil_bind" && !(job.travel.swell && job.travel.swell->mm() > 0)) {
        trials.lessSqueeze();
    }
    if (check.kind == verdict::CheckKind::Force)
        trials.lessPull();
    return trials.take();
}

} // namespace pw::engine
