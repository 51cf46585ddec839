#include "app/engine/stack.h"

#include "core/job/assumed.h"
#include "core/loadpath/centre.h"
#include "core/loadpath/members.h"
#include "core/thread/thread.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::engine {

namespace {

using shape::Loop;
using shape::Point;
using solid::Colour;
using units::Length;

constexpr Colour kSteel{}, kScrew{0.36, 0.38, 0.41}, kNut{0.72, 0.6, 0.3}, kWasher{0.8, 0.8, 0.78},
    kRetainer{0.5, 0.56, 0.66}, kBolt{0.45, 0.42, 0.36};

Loop hexagon(double acrossFlats) {
    const double corner = acrossFlats / std::sqrt(3.0);
    Loop loop;
    for (int i = 0; i < 6; ++i)
        loop.vertices.push_back({shape::polar(corner, i * std::numbers::pi / 3), 0});
    return loop;
}

shape::Region ring(double outside, double inside) {
    return {shape::circleLoop({}, outside / 2), {{shape::circleLoop({}, inside / 2), shape::Part::Bore, 0}}};
}

std::string withNote(const std::string& name, bool given) {
    return given ? name : name + " (usual size)";
}

class Stack {
public:
    Stack(const job::Job& job, const Report& report)
        : m_job(job), m_report(report), m_members(loadpath::membersOf(job)) {}

    std::vector<solid::Part> run(const std::string& plateName) {
        const job::Assumed assumed = job::assume(m_job);
        const Length thick = *m_job.plate.thickness;
        solid::Part plate{*m_report.region, thick, plateName, kSteel, {}};
        for (int i = 0; i < assumed.stacked; ++i)
            plate.places.push_back({{}, thick * i});
        m_top = (thick * assumed.stacked).mm();
        m_parts.push_back(std::move(plate));
        const bool pull = m_job.work == job::Work::Pull;
        if (!pull)
            retainers();
        else if (m_job.hub && m_job.hub->bolts)
            bolts();
        if (m_members.thread && loadpath::hasScrew(m_job))
            screw(assumed, pull);
        return std::move(m_parts);
    }

private:
    void add(shape::Region region, double height, std::string name, const Colour& colour,
             std::vector<solid::Part::Place> places) {
        m_parts.push_back(
            {std::move(region), Length::fromMm(height), std::move(name), colour, std::move(places)});
    }

    std::vector<solid::Part::Place> atStations(double z) const {
        std::vector<solid::Part::Place> places;
        for (const Point station : m_report.stations)
            places.push_back({station, Length::fromMm(z)});
        return places;
    }

    /// Cups whose faces bear on the plate; the keeper sits in them round the pin.
    void retainers() {
        const auto outside = m_job.stations.retainer ? m_job.stations.retainer : m_job.stations.land;
        if (!outside || m_report.stations.empty())
            return;
        const auto inside = m_job.stations.pin ? m_job.stations.pin : m_job.stations.keeper;
        const double hole = inside && *inside < *outside ? inside->mm() : 0.4 * outside->mm();
        const double high = std::max(3.0, 0.12 * outside->mm());
        add(ring(outside->mm(), hole), high, withNote("Retainer", false), kRetainer, atStations(-high));
    }

    void bolts() {
        const job::Bolts& given = *m_job.hub->bolts;
        const auto parsed = thread::parse(given.thread);
        if (given.thread.empty() || !parsed || m_report.stations.empty())
            return;
        const double d = parsed->diameter.mm();
        const auto hex = thread::standardHexagon(*parsed);
        const double below = given.engagement.value_or(parsed->diameter).mm();
        add({shape::circleLoop({}, d / 2), {}}, below + m_top, "Bolt " + parsed->name, kBolt,
            atStations(-below));
        add({hexagon(hex ? hex->boltAcrossFlats.mm() : 1.5 * d), {}}, 0.65 * d, "Bolt head " + parsed->name,
            kBolt, atStations(m_top));
    }

    void screw(const job::Assumed& assumed, bool pull) {
        const thread::Thread& thread = *m_members.thread;
        const job::Screw given = m_job.screw.value_or(job::Screw{});
        const double d = thread.diameter.mm();
        const auto hex = thread::standardHexagon(thread);
        double z = m_top;
        const bool tapped = !m_job.plate.boreThread.empty();
        if (!tapped && !pull) {
            if (const auto bearing = loadpath::centreBearing(m_job, &thread);
                bearing && bearing->washerThickness.mm() > 0) {
                add(ring(bearing->washerOutside.mm(), std::max(bearing->washerInside.mm(), d)),
                    bearing->washerThickness.mm(),
                    withNote("Washer", given.washerOutside && given.washerThickness), kWasher,
                    {{{}, Length::fromMm(z)}});
                z += bearing->washerThickness.mm();
            }
        }
        const bool nutTurns = assumed.turns == job::Turns::Nut;
        const auto height = loadpath::nutHeightOf(m_job, m_members);
        const double flats = hex ? hex->nutAcrossFlats.mm() : 1.5 * d;
        double top = z;
        if (loadpath::hasNut(m_job) && nutTurns && !tapped) {
            const double high = height ? height->mm() : 0.8 * d;
            shape::Region nut{hexagon(flats), {{shape::circleLoop({}, d / 2), shape::Part::Bore, 0}}};
            add(nut, high, withNote("Nut " + thread.name, given.nutHeight.has_value()), kNut,
                {{{}, Length::fromMm(z)}});
            top = z + high;
        }
        const double standoff = given.standoff.value_or(Length()).mm();
        // Below: into what it enters, or down to the shaft's end that it pushes on.
        const double low = pull ? -given.freeLength.value_or(thread.diameter * 1.5).mm()
                                : -standoff - given.engagement.value_or(thread.diameter).mm();
        double high = std::max(top + d / 2, given.usableLength ? given.usableLength->mm() - standoff : 0);
        bool known = given.usableLength.has_value() && given.standoff.has_value();
        if (!nutTurns || tapped) { // its head turns
            high = top + (pull ? 2 * d : 0.0);
            add({hexagon(hex ? hex->boltAcrossFlats.mm() : 1.5 * d), {}}, 0.65 * d,
                withNote("Screw head " + thread.name, false), kScrew, {{{}, Length::fromMm(high)}});
            known = false;
        }
        double core = d;
        if (tapped) // the thread is cut into the plate: the screw fills the drilled hole and no more
            core = std::min(d, thread::tappingDrill(thread).mm());
        add({shape::circleLoop({}, core / 2), {}}, high - low, withNote("Screw " + thread.name, known),
            kScrew, {{{}, Length::fromMm(low)}});
    }

    const job::Job& m_job;
    const Report& m_report;
    const loadpath::Members m_members;
    std::vector<solid::Part> m_parts;
    double m_top = 0; ///< upper face of the plates, mm
};

} // namespace

std::vector<solid::Part> stackOf(const job::Job& job, const Report& report, const std::string& plateName) {
    return Stack(job, report).run(plateName);
}

} // namespace pw::engine
