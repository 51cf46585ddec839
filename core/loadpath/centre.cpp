#include "core/loadpath/centre.h"

#include "core/units/format.h"

#include <algorithm>
#include <numbers>

namespace pw::loadpath {

namespace {

constexpr double kFaceOfFlats = 0.95;
constexpr double kFlatsOfDiameter = 1.5; // from memory: 1.5 on every usual size
constexpr double kThreadReach = 1.25;
constexpr double kBearingOfYield = 1.8; // AISC 360 J7, from memory

} // namespace

util::Result<CentreBearing> centreBearing(const job::Job& job, const thread::Thread* thread) {
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    CentreBearing result;
    const Length bore = job.plate.bore.value_or(Length());
    const bool tapped = !job.plate.boreThread.empty();

    if (tapped && thread && !job.centre.bearingOutside) {
        result.throughThread = true;
        result.inside = job.centre.bearingInside.value_or(thread->diameter);
        result.outside = result.inside * kThreadReach;
        result.basis = "tapped bore: the force comes in through the thread, taken on a ring from " +
                       show(result.inside) + " to " + show(result.outside);
        result.assumptions.push_back(result.basis);
        return result;
    }
    if (thread && !tapped) {
        const auto hexagon = thread::standardHexagon(*thread);
        const bool head = job.screw && job.screw->turns == job::Turns::Screw;
        Length flats = thread->diameter * kFlatsOfDiameter;
        if (hexagon)
            flats = head ? hexagon->boltAcrossFlats : hexagon->nutAcrossFlats;
        else
            result.assumptions.push_back("nut for " + thread->name + " taken as " + show(flats) +
                                         " across flats, 1.5 x diameter");
        result.nutFace = flats * kFaceOfFlats;
        const auto standard = thread::standardWasher(*thread);
        if (job.screw && job.screw->washerOutside) {
            result.washerOutside = *job.screw->washerOutside;
            result.washerThickness =
                job.screw->washerThickness.value_or(standard ? standard->thickness : Length());
            result.washerInside = standard ? standard->inside : thread->diameter;
            if (!job.screw->washerThickness && standard)
                result.assumptions.push_back("washer thickness not given: " + show(standard->thickness) +
                                             " of " + standard->source);
        } else if (standard) {
            result.washerOutside = standard->outside;
            result.washerThickness =
                job.screw && job.screw->washerThickness ? *job.screw->washerThickness : standard->thickness;
            result.washerInside = standard->inside;
            result.assumptions.push_back("washer not given: " + standard->source + " for " + thread->name +
                                         ", " + show(standard->outside) + " x " +
                                         show(result.washerThickness));
        }
    }

    result.inside = job.centre.bearingInside.value_or(std::max(bore, result.washerInside));
    if (job.centre.bearingOutside) {
        result.outside = *job.centre.bearingOutside;
        result.basis = "centre bearing as stated, " + show(result.inside) + " to " + show(result.outside);
        return result;
    }
    if (!thread)
        return util::Problem{"screw.thread",
                             "the forcing screw's thread, M20 or 3/4-10 for one, or the outside of the "
                             "centre bearing"};
    const Length spread = result.nutFace + result.washerThickness * 2.0;
    if (result.washerOutside > Length()) {
        result.outside = std::min(result.washerOutside, spread);
        result.basis = "centre bearing " + show(result.inside) + " to " + show(result.outside) + ": ";
        result.basis += result.washerOutside <= spread
                            ? "the washer's outside"
                            : "nut face " + show(result.nutFace) + " + 2 x washer " +
                                  show(result.washerThickness) + " (a " + show(result.washerOutside) +
                                  " washer this thin does not reach its rim)";
    } else {
        result.outside = result.nutFace;
        result.basis = "centre bearing " + show(result.inside) + " to " + show(result.outside) +
                       ": the nut face, no washer";
    }
    result.assumptions.push_back(result.basis);
    return result;
}

Check centreBearingCheck(const CentreBearing& bearing, const material::Material& plate, Force load, double s,
                         units::System system) {
    const auto show = [&](auto q) { return units::show(q, system); };
    const double in = bearing.inside.mm(), out = bearing.outside.mm();
    if (out <= in) {
        Check check = strengthCheck("centre.bearing", "centre bearing", "Centre bearing", Rule::Ductile,
                                    load.newton(), 0, "N", s);
        check.basis = "nothing bears: inside " + show(bearing.inside) + ", outside " + show(bearing.outside) +
                      "; use a larger or thicker washer";
        check.source = "geometry";
        return check;
    }
    const units::Area area = units::Area::fromMm2(std::numbers::pi / 4 * (out * out - in * in));
    const Force capacity = plate.yield * kBearingOfYield * area;
    Check check = strengthCheck("centre.bearing", "centre bearing", "Centre bearing", Rule::Ductile,
                                load.newton(), capacity.newton(), "N", s);
    check.basis = show(load) + " on a ring " + show(bearing.inside) + " to " + show(bearing.outside) + ", " +
                  show(area) + ": " + show(load / area) + " against 1.8 x yield " + show(plate.yield) + " (" +
                  plate.name + ")";
    check.source = "AISC 360 J7, bearing 1.8 x yield (from memory); " + plate.source;
    return check;
}

} // namespace pw::loadpath
