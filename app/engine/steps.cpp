#include "app/engine/advice.h"
#include "app/engine/gauge.h"
#include "core/util/say.h"

#include "core/loadpath/pull_load.h"
#include "core/loadpath/setup.h"
#include "core/units/format.h"

#include <cmath>

/// The order of work for the job at hand, with the job's own numbers. What to do in which order is common
/// practice, no published source.
namespace pw::engine {

namespace {

using units::Length;
using units::show;

/// Quarter turns are what a hand can tell.
std::string turnsWords(double turns) {
    const double quarters = std::round(turns * 4) / 4;
    return quarters == 1 ? say("1 turn") : say("%1 turns", {units::number(quarters, 3)});
}

Found<thread::Thread> threadOf(const job::Job& job) {
    return loadpath::membersOf(job).thread;
}

/// Opposite stations after one another, so that the load stays in the middle: 1, 4, 2, 5, 3, 6.
std::string opposites(int count) {
    std::string order;
    const int half = (count + 1) / 2;
    for (int i = 0; i < half; ++i)
        for (int k : {i, i + half})
            if (k < count)
                order += (order.empty() ? "" : ", ") + std::to_string(k + 1);
    return order;
}

/// Largest difference of the gap round the rim while letting up, to the feeler gauge's nearest 0.05 mm or
/// 0.002 in: a retainer may tilt by 0.2 mm across it (as land.tilt), and the rim opens as much more as it is
/// farther across.
Found<Length> gapDifference(const job::Job& job, const Report& report) {
    if (!report.region || !report.landOutside || !(*report.landOutside > Length()))
        return std::nullopt;
    const auto box = shape::bounds(report.region->rim);
    const double across = std::min(box.width(), box.height());
    const double gap = 0.2 * across / report.landOutside->mm();
    const double step = job.preferred == units::System::Inch ? 0.002 * 25.4 : 0.05;
    return Length::fromMm(std::max(step, std::floor(gap / step) * step));
}

class Steps {
public:
    Steps(const job::Job& job, const Report& report)
        : m_job(job), m_report(report), m_thread(threadOf(job)), m_system(job.preferred) {}

    std::vector<std::string> squeeze() {
        const int stations = static_cast<int>(m_report.stations.size());
        add(say("Look plate and threads over. Oil the thread and the face that turns. Count the keepers in "
                "place: %1 stations.",
                {stations}));
        anchorScrew();
        add(say("Set the plate on the retainers, every land bearing, nut and washer down by hand. Run a "
                "second nut on behind the first as a catch, one turn clear of it."));
        tighten();
        stop();
        if (const auto gap = gapDifference(m_job, m_report))
            add(say("Feel the gap round the rim: it must be the same all round, within a feeler of %1. If "
                    "not, a retainer is stuck: do not go on.",
                    {show(*gap, m_system)}));
        keepers(stations);
        letUp();
        add(say(
            "If one keeper hangs or the gap opens on one side, squeeze again before doing anything else."));
        add(say("Going together is the same the other way round: keepers counted in, all seated, before the "
                "nut comes off."));
        return std::move(m_steps);
    }

    std::vector<std::string> pull() {
        add(say("Clean shaft and hub, soak the joint with penetrating oil and give it time. Take out set "
                "screws, keys that draw, and snap rings."));
        add(say("Leave the shaft's nut on, backed off by %1 and no more: it catches the hub when it lets go.",
                {show(Length::fromMm(3), m_system)}));
        fastenToHub();
        if (m_job.ram)
            add(say(
                "Stand the ram square on the plate, the rod straight through it, its nut full of thread."));
        else
            add(say("Oil the screw and its point. Centre the point on the shaft; square, or it walks."));
        if (m_report.proof.readingAt)
            add(say("Dial from %1 off the middle to the rim, set to nothing.",
                    {show(*m_report.proof.readingAt, m_system)}));
        load();
        stopPulling();
        heat();
        add(say("When it has let go, take the load off before anything is unscrewed. Let hot parts cool in "
                "still air; never quench cast iron."));
        return std::move(m_steps);
    }

private:
    void add(std::string text) { m_steps.push_back(std::move(text)); }

    Found<double> turnsFor(Length travel) const {
        if (!m_thread)
            return std::nullopt;
        return travel / m_thread->lead();
    }

    void anchorScrew() {
        if (loadpath::intoOf(m_job) != job::Into::Shaft || loadpath::turnsOf(m_job) != job::Turns::Nut)
            return;
        if (!m_job.screw || !m_job.screw->engagement)
            return add(say(
                "Screw the stud into the shaft as deep as it goes. Lock it, and mark it across the joint: "
                "it must not unscrew while the nut is let up."));
        const std::string deep = show(*m_job.screw->engagement, m_system);
        if (const auto turns = turnsFor(*m_job.screw->engagement))
            add(say("Screw the stud into the shaft %1 deep, %2. Lock it, and mark it across the joint: it "
                    "must not "
                    "unscrew while the nut is let up.",
                    {deep, turnsWords(*turns)}));
        else
            add(say(
                "Screw the stud into the shaft %1 deep. Lock it, and mark it across the joint: it must not "
                "unscrew while the nut is let up.",
                {deep}));
    }

    void tighten() {
        std::string text = say("Stand out of line. Tighten evenly until the retainers begin to move");
        if (!m_report.card.rows.empty())
            text = say("%1, about %2", {text, show(m_report.card.rows.front().torque, m_system)});
        if (m_job.travel.compressFurther) {
            text = say("%1; then on until the pack is %2 shorter",
                       {text, show(*m_job.travel.compressFurther, m_system)});
            if (const auto turns = turnsFor(*m_job.travel.compressFurther))
                text = say("%1, %2", {text, turnsWords(*turns)});
        } else {
            text = say("%1; then on until the keepers are free", {text});
        }
        if (m_report.screw.torqueRange)
            text = say("%1; it takes %2", {text, show(*m_report.screw.torqueRange, m_system)});
        add(text + ".");
    }

    void stop() {
        if (!m_report.screw.stopTorque)
            return;
        if (m_report.screw.torqueRange && m_report.screw.torqueRange->high > *m_report.screw.stopTorque)
            add(say("Go by turns and dial, not by torque. Past %1 make sure that the retainers still move "
                    "with each part of a turn; if they do not, stop.",
                    {show(*m_report.screw.stopTorque, m_system)}));
        else
            add(say("Stop at %1, whatever the keepers do.", {show(*m_report.screw.stopTorque, m_system)}));
    }

    void keepers(int stations) {
        if (stations == 0)
            return;
        int loaded = 0;
        for (bool is : m_job.stations.loaded)
            loaded += is ? 1 : 0;
        if (loaded > 0 && loaded < stations) {
            add(say("Take the keepers out of the %1 stations under the plate only, with a pick, no fingers; "
                    "count them. The others stay in.",
                    {loaded}));
            m_some = true;
            return;
        }
        if (stations > 2)
            add(say("Take the keepers out through the access holes, a pick, no fingers, opposite stations "
                    "after one "
                    "another: %1. Count them: %2 stations, all out before letting up.",
                    {opposites(stations), stations}));
        else
            add(say("Take the keepers out through the access holes, a pick, no fingers. Count them: %1 "
                    "stations, all "
                    "out before letting up.",
                    {stations}));
    }

    void letUp() {
        std::string text = say("Let up slowly, a quarter of a turn at a time");
        if (m_report.travel.release) {
            const std::string travel = show(*m_report.travel.release, m_system);
            if (const auto turns = turnsFor(*m_report.travel.release))
                text = say("%1, over %2, %3 back, until the springs are free",
                           {text, travel, turnsWords(*turns)});
            else
                text = say("%1, over %2, until the springs are free", {text, travel});
        }
        if (m_report.travel.threadLeft && m_report.travel.threadLeft->mm() > 0)
            text = say("%1; %2 of thread is then left", {text, show(*m_report.travel.threadLeft, m_system)});
        add(say("%1. Watch the mark on the stud and the gap round the rim.", {text}));
        if (m_some)
            add(say("Turn the plate to the next stations and do the same, until all are free."));
    }

    void fastenToHub() {
        if (!m_job.hub && !m_job.legs)
            return;
        if (m_job.hub && m_job.hub->bolts) {
            const job::Bolts& bolts = *m_job.hub->bolts;
            std::string text = say("Bolt the plate to the hub");
            if (bolts.count && !bolts.thread.empty())
                text = say("Bolt the plate to the hub with %1 x %2", {*bolts.count, bolts.thread});
            if (bolts.engagement)
                text = say("%1, %2 deep", {text, show(*bolts.engagement, m_system)});
            add(say("%1, all down to the same gap, snug and no more.", {text}));
        } else if (m_job.hub && m_job.hub->jaws) {
            add(say("Set the jaws right under the flange, as close to the hub as they go, all bearing; tie "
                    "them together."));
        }
        if (m_job.legs)
            add(say(
                "Legs square to the strongback and the same length, full nuts, so that it stands level."));
    }

    void load() {
        std::string text = say("Load it in steps, a quarter at a time");
        if (!m_report.gauge.empty()) {
            text = say("%1: the dial shows %2 at %3 and in proportion",
                       {text, dialWords(m_report.gauge.front().reading, m_system),
                        show(m_report.gauge.front().load, m_system)});
        }
        add(say("%1. Wait a minute at each, look whether anything has moved or bent.", {text}));
    }

    void stopPulling() {
        if (!m_report.screw.ratedLoad)
            return;
        const units::Force rated = *m_report.screw.ratedLoad;
        if (m_report.screw.stopTorque)
            add(say("Stop at %1 on the wrench: that is %2. No longer wrench, no pipe.",
                    {show(*m_report.screw.stopTorque, m_system), show(rated, m_system)}));
        if (!m_job.ram) {
            if (!m_report.screw.stopTorque)
                add(say("Stop at %1. No longer wrench, no pipe.", {show(rated, m_system)}));
            return;
        }
        if (m_report.screw.stopPressure)
            add(say("Stop at %1 on the ram's gauge: that is %2.",
                    {units::showPressure(*m_report.screw.stopPressure, m_system),
                     show(*m_report.screw.stopPressure * *m_job.ram->area, m_system)}));
        else
            add(say("Stop the ram at %1.",
                    {show(std::min(rated, m_job.ram->capacity.value_or(rated)), m_system)}));
    }

    void heat() {
        const auto& free = m_report.hub.heatToFree;
        if (!free)
            return;
        add(say(
            "If it does not come: let the load off. Heat the hub alone, evenly and quickly, the shaft kept "
            "cold with wet rags: it opens at %1. Load again while it is hot; keep the tool under %2.",
            {show(*free, m_system), show(units::Temperature::fromCelsius(100), m_system)}));
    }

    const job::Job& m_job;
    const Report& m_report;
    Found<thread::Thread> m_thread;
    units::System m_system;
    std::vector<std::string> m_steps;
    bool m_some = false;
};

} // namespace

std::vector<std::string> stepsFor(const job::Job& job, const Report& report) {
    Steps steps(job, report);
    return job.work == job::Work::Pull ? steps.pull() : steps.squeeze();
}

} // namespace pw::engine
