#include "app/gui/views/plan_geometry.h"
#include "app/gui/views/section_geometry.h"
#include "core/job/assumed.h"
#include "core/loadpath/centre.h"
#include "core/thread/thread.h"

#include <algorithm>
#include <cmath>

// What stands where in the section; how the plate travels is in section_geometry.cpp. Lengths in mm. Sizes
// that nobody gave are drawn in a usual proportion (common practice, no published source) and marked.
namespace pw::gui {

namespace {

using Role = SectionPart::Role;
using Hatch = SectionPart::Hatch;

/// A size and whether somebody gave it.
struct Size {
    double mm = 0;
    bool known = false;
};

Size sizeOr(const job::Given<units::Length>& given, double usual) {
    return given && given->mm() > 0 ? Size{given->mm(), true} : Size{usual, false};
}

class Builder {
public:
    Builder(const job::Job& job, const StackTravel& travel, double place)
        : m_job(job), m_travel(travel), m_place(place), m_state(stateAt(travel, place)),
          m_plan(planShape(job)) {
        readPlate();
        readScrew();
    }

    Section run() {
        if (m_travel.isPull)
            pull();
        else
            compress();
        finish();
        return std::move(m_out);
    }

private:
    void add(Role role, double x0, double x1, double low, double high, bool known,
             Hatch hatch = Hatch::None) {
        if (x1 - x0 > 1e-6 && high - low > 1e-6)
            m_out.parts.push_back({role, x0, x1, std::max(low, 0.0), high, known, hatch});
    }

    void readPlate() {
        m_thick = m_job.plate.thickness ? m_job.plate.thickness->mm() * m_job.plate.stacked.value_or(1) : 10;
        m_thickKnown = m_job.plate.thickness.has_value();
        const shape::Point out = m_plan.stations.empty() ? shape::Point{1, 0} : m_plan.stations.front();
        m_ray = shape::norm(out);
        if (m_plan.stations.empty())
            m_ray = m_plan.circle / 2;
        const shape::Point way = out * (1 / std::max(shape::norm(out), 1e-9));
        const shape::Side ray{{0, 0}, way * 1e4, 0};
        const auto along = [&](const shape::Loop& loop, double& least, double& most) {
            for (std::size_t i = 0; i < loop.size(); ++i)
                for (const shape::Point p : shape::crossings(ray, loop.side(i))) {
                    least = std::min(least, shape::norm(p));
                    most = std::max(most, shape::norm(p));
                }
        };
        double least = 1e9;
        if (m_plan.rim)
            along(*m_plan.rim, least, m_rim);
        m_rimKnown = m_rim > 0;
        if (!m_rimKnown)
            m_rim = m_ray > 0 ? m_ray * 1.4 : 80;
        if (m_ray <= 0)
            m_ray = m_rim * 0.7;
        m_holeFrom = 1e9;
        if (const auto hole = m_plan.accessLoop(0))
            along(*hole, m_holeFrom, m_holeTo);
        m_holeTo = std::min(m_holeTo, m_rim);
    }

    void readScrew() {
        const job::Screw screw = m_job.screw.value_or(job::Screw{});
        const auto parsed = thread::parse(screw.thread);
        m_screwKnown = parsed.ok();
        m_screw = parsed ? parsed->diameter.mm() : 16;
        m_bore = m_job.plate.bore ? m_job.plate.bore->mm() / 2 : m_screw / 2;
        double flats = 1.5 * m_screw;
        m_nut = sizeOr(screw.nutHeight, 0.8 * m_screw);
        if (parsed)
            if (const auto hex = thread::standardHexagon(*parsed)) {
                flats = hex->nutAcrossFlats.mm();
                if (!m_nut.known)
                    m_nut.mm = hex->nutHeight.mm();
            }
        m_nutOut = flats / 2;
        m_washerOut = sizeOr(screw.washerOutside, 0);
        m_washer = sizeOr(screw.washerThickness, 0);
        if (parsed && !m_job.plate.boreThread.empty())
            return;
        if (const auto bearing = loadpath::centreBearing(m_job, parsed ? &*parsed : nullptr)) {
            if (!m_washerOut.known)
                m_washerOut.mm = bearing->washerOutside.mm();
            if (!m_washer.known)
                m_washer.mm = bearing->washerThickness.mm();
        }
    }

    /// The plate with its bore and the access hole, its right face at `face`.
    void addPlate(double face) {
        const bool known = m_thickKnown && m_rimKnown;
        const double from = face - m_thick;
        const double bore = m_job.plate.boreThread.empty() ? m_bore : m_screw / 2;
        if (m_holeFrom > m_holeTo) {
            add(Role::Plate, from, face, bore, m_rim, known, Hatch::Rising);
            return;
        }
        add(Role::Plate, from, face, bore, m_holeFrom, known, Hatch::Rising);
        add(Role::Plate, from, face, m_holeTo, m_rim, known, Hatch::Rising);
    }

    double springOutside(std::size_t i) const {
        const auto& spring = m_travel.pack.springs[i];
        if (spring.meanCoil && spring.wire)
            return spring.meanCoil->mm() + spring.wire->mm();
        // One inside the other, within the retainer.
        return retainer().mm * (0.92 - 0.3 * static_cast<double>(i));
    }

    Size retainer() const {
        Size size = sizeOr(m_job.stations.retainer, 0);
        if (!size.known)
            size = sizeOr(m_job.stations.land, m_plan.access > 0 ? m_plan.access * 1.5 : m_ray * 0.45);
        return size;
    }

    void addSprings(double from) {
        const auto& springs = m_travel.pack.springs;
        m_out.springFrom = m_out.springTo = from;
        for (std::size_t i = 0; i < springs.size(); ++i) {
            const double length = m_state.lengths[i];
            const bool solid =
                springs[i].solid && springs[i].known && length <= springs[i].solid->mm() + 1e-9;
            m_out.springSolid.push_back(solid);
            if (!springs[i].known || length <= 0)
                continue;
            const double outside = springOutside(i);
            double wire = springs[i].wire ? springs[i].wire->mm() : outside / 7;
            double coils = 0;
            if (i < m_job.springs.size())
                coils = m_job.springs[i].totalCoils.value_or(0);
            if (coils <= 0)
                coils = springs[i].solid ? springs[i].solid->mm() / wire : 0.6 * length / wire;
            coils = std::clamp(coils, 3.0, 24.0);
            // Where the wire was not given, coils that touch when the spring is solid tell it best.
            if (!springs[i].wire && springs[i].solid)
                wire = springs[i].solid->mm() / coils;
            m_out.anyGuessed = m_out.anyGuessed || !springs[i].wire;
            for (const double x : coilPlaces(from, length, wire, coils))
                for (const int side : {-1, 1})
                    m_out.coils.push_back({x, m_ray + side * (outside - wire) / 2, wire, i});
            if (m_out.springTo == from) {
                m_out.springTo = from + length;
                m_out.springAt = m_ray + outside / 2;
            }
        }
    }

    void compress() {
        const auto& springs = m_travel.pack.springs;
        const job::Screw screw = m_job.screw.value_or(job::Screw{});
        const double further = m_state.towardsHub;
        const double thin = std::max(3.0, 0.03 * m_rim);
        const bool someSpring = !springs.empty() && springs.front().known;
        const double swell = m_travel.pack.squeeze.mm() - m_travel.squeeze;
        const double packed = someSpring ? springs.front().assembled.mm() - swell : 0.8 * m_ray;
        const job::Back back = m_job.back.value_or(job::Back{});
        const bool onBar = back.kind == job::BackKind::Bar || back.kind == job::BackKind::Block;
        const double thickHub = std::max(8.0, 0.16 * m_ray);
        const Size standoff = sizeOr(screw.standoff, thin + packed + (onBar ? thickHub : 0));
        // x = 0 is the face that the screw enters; the retainers' faces stand off it when assembled.
        const double face = -standoff.mm + further, seat = -standoff.mm + thin + packed;
        const double farHub = onBar && seat < -1 ? 0 : seat + thickHub;
        const double keep = retainer().mm / 2;
        const double hubRim = m_ray + std::max(keep, 4.0) + 6;

        const double inner = std::clamp(m_ray - keep - 4, m_screw * 0.65, std::max(m_screw, m_screw * 0.66));
        add(Role::Hub, seat, farHub, onBar ? m_screw * 0.55 : inner, hubRim, false, Hatch::Falling);
        const double enters = sizeOr(screw.engagement, 1.2 * m_screw).mm;
        double screwTo = enters;
        if (onBar) {
            const Size thick = sizeOr(back.thickness, 0.3 * m_ray);
            const Size span = sizeOr(back.span, 2 * m_ray);
            add(Role::Bar, farHub, farHub + thick.mm, m_screw * 0.55, std::max(span.mm / 2, m_screw),
                thick.known, Hatch::Rising);
            add(Role::Nut, farHub + thick.mm, farHub + thick.mm + m_nut.mm, m_screw / 2, m_nutOut,
                m_nut.known);
            screwTo = farHub + thick.mm + m_nut.mm + 0.15 * m_screw;
        } else {
            const double end = std::max(farHub, enters + 0.4 * m_screw) + 0.5 * m_screw;
            add(Role::Shaft, 0, end, 0, inner, false);
        }
        // The pin stays with the hub; the keeper sits on it until it is squeezed free and taken out.
        const Size pin = sizeOr(m_job.stations.pin, keep > 0 ? keep * 0.5 : 8);
        const double pinEnd = -standoff.mm - sizeOr(m_job.stations.pinEnd, 2.2 * thin).mm;
        add(Role::Pin, pinEnd, seat, m_ray - pin.mm / 2, m_ray + pin.mm / 2, pin.known);
        const bool lettingUp = m_place > m_travel.squeezedPlace() + 1e-9;
        if (!lettingUp && m_job.stations.keeper)
            for (const int side : {-1, 1}) {
                const double a = m_ray + side * pin.mm / 2,
                             b = m_ray + side * m_job.stations.keeper->mm() / 2;
                add(Role::Keeper, -standoff.mm - thin * 0.8, -standoff.mm, std::min(a, b), std::max(a, b),
                    true);
            }
        for (const int side : {-1, 1}) {
            const double a = m_ray + side * pin.mm / 2, b = m_ray + side * keep;
            add(Role::Retainer, face, face + thin, std::min(a, b), std::max(a, b), retainer().known,
                Hatch::Falling);
        }
        addSprings(face + thin);
        addPlate(face);
        addScrew(screw, face - m_thick, screwTo, standoff.mm);
    }

    void addScrew(const job::Screw& screw, double back, double screwTo, double standoff) {
        const bool nutTurns = job::assume(m_job).turns == job::Turns::Nut;
        const double washer = m_washerOut.mm > 0 ? std::max(m_washer.mm, 1.0) : 0;
        if (washer > 0)
            add(Role::Washer, back - washer, back, m_screw / 2, m_washerOut.mm / 2,
                m_washerOut.known && m_washer.known, Hatch::Falling);
        const double seat = back - washer;
        add(Role::Nut, seat - m_nut.mm, seat, nutTurns ? m_screw / 2 : 0, m_nutOut, nutTurns && m_nut.known);
        if (nutTurns) {
            const double reach = standoff + m_thick + washer + m_nut.mm + m_screw +
                                 m_travel.release.value_or(m_screw) - m_travel.squeeze;
            const Size usable = sizeOr(screw.usableLength, reach);
            add(Role::Screw, -usable.mm, screwTo, 0, m_screw / 2, usable.known && m_screwKnown);
            m_out.threadFrom = -usable.mm;
            m_out.threadTo = seat - m_nut.mm;
        } else {
            add(Role::Screw, seat, screwTo + m_state.towardsHub, 0, m_screw / 2, m_screwKnown);
        }
    }

    void pull() {
        const job::Screw screw = m_job.screw.value_or(job::Screw{});
        const job::Hub hub = m_job.hub.value_or(job::Hub{});
        const double drawn = m_travel.squeeze - m_state.towardsHub;
        const Size gap = sizeOr(screw.freeLength, 1.5 * m_screw);
        const double face = -gap.mm - drawn, back = face - m_thick;
        const Size length = sizeOr(hub.length, 0.8 * m_ray);
        const Size shaft = sizeOr(hub.shaft, std::max(1.4 * m_screw, 0.6 * m_ray));
        const Size bore = sizeOr(hub.shaftBore, 0);
        const Size outside = sizeOr(hub.outside, 2 * m_rim * 0.96);
        add(Role::Shaft, 0, length.mm * 1.35, bore.mm / 2, shaft.mm / 2, shaft.known);
        add(Role::Hub, -drawn, length.mm - drawn, shaft.mm / 2, outside.mm / 2, length.known && outside.known,
            Hatch::Falling);
        if (hub.bolts || !m_job.legs) {
            const auto thread =
                hub.bolts ? thread::parse(hub.bolts->thread) : util::Result<thread::Thread>(util::Problem{});
            const double bolt = thread ? thread->diameter.mm() : std::max(6.0, 0.8 * m_plan.access);
            const double enters = hub.bolts && hub.bolts->engagement ? hub.bolts->engagement->mm() : bolt;
            add(Role::Bolt, back, enters - drawn, m_ray - bolt / 2, m_ray + bolt / 2, thread.ok());
            add(Role::Bolt, back - 0.65 * bolt, back, m_ray - 0.8 * bolt, m_ray + 0.8 * bolt, thread.ok());
        } else {
            addLegs(hub, back, length.mm - drawn);
        }
        addPlate(face);
        const double head = 0.65 * m_screw;
        const double stem = std::max(1.5 * m_screw, m_travel.release.value_or(0) + 0.5 * m_screw);
        // The screw stands on the shaft's end and the plate climbs along it.
        const double screwFrom = -gap.mm - m_thick - stem;
        add(Role::Screw, screwFrom, 0, 0, m_screw / 2, m_screwKnown && gap.known);
        add(Role::Nut, screwFrom - head, screwFrom, 0, m_nutOut, false);
    }

    void addLegs(const job::Hub& hub, double back, double hubEnd) {
        const auto thread = thread::parse(m_job.legs->thread);
        const double leg = thread ? thread->diameter.mm() : 0.6 * m_screw;
        const double at = m_job.legs->span ? m_job.legs->span->mm() / 2 : m_ray;
        const double hook = 0.8 * leg;
        add(Role::Leg, back - 1.5 * leg, hubEnd + hook, at - leg / 2, at + leg / 2, thread.ok());
        const double overlap =
            hub.jaws && hub.jaws->overlap ? hub.jaws->overlap->mm() : std::max(4.0, 0.6 * leg);
        const double rim = hub.outside ? hub.outside->mm() / 2 : at - leg;
        add(Role::Jaw, hubEnd, hubEnd + hook, rim - overlap, at - leg / 2, hub.jaws.has_value());
        add(Role::Nut, back - 0.8 * leg, back, at - 0.85 * leg, at + 0.85 * leg, false);
    }

    void finish() {
        m_out.stationAt = m_ray;
        m_out.left = 1e9;
        m_out.right = -1e9;
        for (const auto& part : m_out.parts) {
            m_out.left = std::min(m_out.left, part.x0);
            m_out.right = std::max(m_out.right, part.x1);
            m_out.high = std::max(m_out.high, part.high);
            m_out.anyGuessed = m_out.anyGuessed || !part.known;
        }
        if (m_out.parts.empty())
            m_out.left = m_out.right = 0;
    }

    const job::Job& m_job;
    const StackTravel& m_travel;
    double m_place;
    StackState m_state;
    PlanShape m_plan;
    Section m_out;
    double m_thick = 10, m_ray = 0, m_rim = 0, m_holeFrom = 0, m_holeTo = 0;
    bool m_thickKnown = false, m_rimKnown = false, m_screwKnown = false;
    double m_screw = 16, m_bore = 8, m_nutOut = 12;
    Size m_nut, m_washer, m_washerOut;
};

} // namespace

Section sectionAt(const job::Job& job, const StackTravel& travel, double place) {
    return Builder(job, travel, place).run();
}

} // namespace pw::gui
