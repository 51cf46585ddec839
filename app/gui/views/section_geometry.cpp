#include "app/gui/views/section_geometry.h"

#include "core/thread/thread.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

namespace {

/// Share of the slider that squeezing takes when there is letting up as well.
constexpr double kSqueezeShare = 0.4;

std::optional<thread::Thread> threadOf(const job::Job& job) {
    if (!job.screw || job.screw->thread.empty())
        return {};
    const auto parsed = thread::parse(job.screw->thread);
    return parsed ? std::optional(*parsed) : std::nullopt;
}

spring::Coils coilsAt(const spring::Resolved& spring, double length) {
    if (!spring.solid)
        return spring::Coils::Unknown;
    const double left = length - spring.solid->mm();
    // The same bounds as the check of the coils at full squeeze.
    if (left <= 1e-9)
        return spring::Coils::Solid;
    return spring.leastGaps && left < spring.leastGaps->mm() ? spring::Coils::Tight : spring::Coils::Clear;
}

} // namespace

double StackTravel::squeezedPlace() const {
    if (squeeze <= 0)
        return 0;
    return release.value_or(0) > 0 ? kSqueezeShare : 1;
}

double StackTravel::towardsHub(double place) const {
    const double at = squeezedPlace();
    if (place <= at)
        return at > 0 ? squeeze * place / at : 0;
    return squeeze - release.value_or(0) * (place - at) / (1 - at);
}

double StackTravel::placeOf(double towardsHub, bool lettingUp) const {
    const double at = squeezedPlace();
    if (!lettingUp)
        return squeeze > 0 ? std::clamp(towardsHub / squeeze, 0.0, 1.0) * at : 0;
    const double back = release.value_or(0);
    return back > 0 ? at + std::clamp((squeeze - towardsHub) / back, 0.0, 1.0) * (1 - at) : at;
}

StackTravel stackTravel(const job::Job& job, const engine::Report* report) {
    StackTravel t;
    t.isPull = job.work == job::Work::Pull;
    if (const auto thread = threadOf(job))
        t.lead = thread->lead().mm();
    if (t.isPull) {
        // What is pulled comes towards the plate; nothing is squeezed first.
        if (job.hub && job.hub->draw && job.hub->draw->mm() > 0)
            t.release = job.hub->draw->mm();
        return t;
    }
    t.pack = spring::packLoads(job);
    t.squeeze = job.travel.compressFurther.value_or(units::Length()).mm();
    if (t.pack.releaseTravel && t.pack.releaseTravel->mm() > 0)
        t.release = t.pack.releaseTravel->mm();
    if (report && report->travel.threadLeft)
        t.threadLeft = report->travel.threadLeft->mm();
    return t;
}

StackState stateAt(const StackTravel& travel, double place) {
    StackState s;
    s.towardsHub = travel.towardsHub(place);
    const double at = travel.squeezedPlace();
    if (travel.lead && *travel.lead > 0)
        s.turns = (place <= at ? s.towardsHub : travel.squeeze - s.towardsHub) / *travel.lead;
    if (travel.isPull)
        return s;
    const auto& pack = travel.pack;
    // Swell is squeezed out before anything moves: the pack stands swollen when it is assembled.
    const double swell = pack.squeeze.mm() - travel.squeeze;
    units::Range<units::Force> sum;
    bool all = !pack.springs.empty();
    for (const auto& spring : pack.springs) {
        if (!spring.known) {
            all = false;
            s.lengths.push_back(0);
            continue;
        }
        const double length =
            std::min(spring.assembled.mm() - swell - s.towardsHub, spring.freeForTravel.mm());
        s.lengths.push_back(length);
        sum = sum + spring.forceAt(units::Length::fromMm(length)) * static_cast<double>(spring.perStation);
        s.coils = std::max(s.coils, coilsAt(spring, length));
        if (spring.solid) {
            const auto left = units::Length::fromMm(length) - *spring.solid;
            s.shortOfSolid = s.shortOfSolid ? std::min(*s.shortOfSolid, left) : left;
        }
        if (!s.springLength)
            s.springLength = units::Length::fromMm(length);
    }
    // What is left of rounding at the free end is no force.
    constexpr units::Force kNothing = units::Force::fromN(1e-6);
    if (all && pack.loaded > 0)
        s.force = {sum.low < kNothing ? units::Force() : sum.low * static_cast<double>(pack.loaded),
                   sum.high < kNothing ? units::Force() : sum.high * static_cast<double>(pack.loaded)};
    if (travel.threadLeft && travel.release) {
        const double backedOff = travel.squeeze - s.towardsHub;
        s.threadLeft = units::Length::fromMm(*travel.threadLeft + *travel.release - backedOff);
    }
    return s;
}

const SectionPart* Section::find(SectionPart::Role role) const {
    const auto at = std::ranges::find(parts, role, &SectionPart::role);
    return at == parts.end() ? nullptr : &*at;
}

QRectF sectionBounds(const job::Job& job, const StackTravel& travel) {
    double left = 0, right = 0, high = 1;
    for (const double place : {0.0, travel.squeezedPlace(), 1.0}) {
        const Section s = sectionAt(job, travel, place);
        left = std::min(left, s.left);
        right = std::max(right, s.right);
        high = std::max(high, s.high);
    }
    return {left, -high, right - left, 2 * high};
}

std::vector<double> coilPlaces(double from, double length, double wire, double coils) {
    const int n = std::clamp(static_cast<int>(std::lround(coils)), 2, 40);
    std::vector<double> places;
    for (int i = 0; i < n; ++i)
        places.push_back(from + wire / 2 + (length - wire) * i / (n - 1));
    return places;
}

} // namespace pw::gui
