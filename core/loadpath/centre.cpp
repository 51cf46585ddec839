#include "core/loadpath/centre.h"

#include "core/loadpath/factors.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <numbers>

namespace pw::loadpath {

namespace {

constexpr double kThreadReach = 1.25;

} // namespace

std::optional<CentreBearing> centreBearing(const job::Job& job, const thread::Thread* thread) {
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    CentreBearing result;
    const Length bore = job.plate.bore.value_or(Length());
    const bool tapped = !job.plate.boreThread.empty();

    if (tapped && thread && !job.centre.bearingOutside) {
        result.throughThread = true;
        result.inside = job.centre.bearingInside.value_or(thread->diameter);
        result.outside = result.inside * kThreadReach;
        result.basis =
            say("tapped bore: the force comes in through the thread, taken on a ring from %1 to %2",
                {show(result.inside), show(result.outside)});
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
            result.assumptions.push_back(
                say("nut for %1 taken as %2 across flats, 1.5 x diameter", {thread->name, show(flats)}));
        result.nutFace = flats * kFaceOfFlats;
        const auto standard = thread::standardWasher(*thread);
        if (job.screw && job.screw->washerOutside) {
            result.washerOutside = *job.screw->washerOutside;
            result.washerThickness =
                job.screw->washerThickness.value_or(standard ? standard->thickness : Length());
            result.washerInside = standard ? standard->inside : thread->diameter;
            if (!job.screw->washerThickness && standard)
                result.assumptions.push_back(say("washer thickness not given: %1 of %2",
                                                 {show(standard->thickness), standard->source}));
        } else if (standard) {
            result.washerOutside = standard->outside;
            result.washerThickness =
                job.screw && job.screw->washerThickness ? *job.screw->washerThickness : standard->thickness;
            result.washerInside = standard->inside;
            result.assumptions.push_back(
                say("washer not given: %1 for %2, %3 x %4",
                    {standard->source, thread->name, show(standard->outside), show(result.washerThickness)}));
        }
    }

    result.inside = job.centre.bearingInside.value_or(std::max(bore, result.washerInside));
    if (job.centre.bearingOutside) {
        result.outside = *job.centre.bearingOutside;
        result.basis = say("centre bearing as stated, %1 to %2", {show(result.inside), show(result.outside)});
        return result;
    }
    if (!thread)
        return std::nullopt;
    const Length spread = result.nutFace + result.washerThickness * 2.0;
    if (result.washerOutside > Length()) {
        result.outside = std::min(result.washerOutside, spread);
        result.basis =
            result.washerOutside <= spread
                ? say("centre bearing %1 to %2: the washer's outside",
                      {show(result.inside), show(result.outside)})
                : say("centre bearing %1 to %2: nut face %3 + 2 x washer %4 (a %5 washer this thin does not "
                      "reach its rim)",
                      {show(result.inside), show(result.outside), show(result.nutFace),
                       show(result.washerThickness), show(result.washerOutside)});
    } else {
        result.outside = result.nutFace;
        result.basis = say("centre bearing %1 to %2: the nut face, no washer",
                           {show(result.inside), show(result.outside)});
    }
    result.assumptions.push_back(result.basis);
    return result;
}

Check centreBearingCheck(const CentreBearing& bearing, const material::Material& plate, Force load, double s,
                         units::System system) {
    const auto show = [&](auto q) { return units::show(q, system); };
    const double in = bearing.inside.mm(), out = bearing.outside.mm();
    if (out <= in) {
        Check check = strengthCheck("centre.bearing", "centre bearing", say("Centre bearing"), Rule::Ductile,
                                    load.newton(), 0, "N", s);
        check.basis = say("nothing bears: inside %1, outside %2; use a larger or thicker washer",
                          {show(bearing.inside), show(bearing.outside)});
        check.source = say("geometry");
        return check;
    }
    const units::Area area = units::Area::fromMm2(std::numbers::pi / 4 * (out * out - in * in));
    const Force capacity = plate.yield * kBearingOfYield * area;
    Check check = strengthCheck("centre.bearing", "centre bearing", say("Centre bearing"), Rule::Ductile,
                                load.newton(), capacity.newton(), "N", s);
    check.basis = say("%1 on a ring %2 to %3, %4: %5 against 1.8 x yield %6 (%7)",
                      {show(load), show(bearing.inside), show(bearing.outside), show(area), show(load / area),
                       show(plate.yield), plate.name});
    check.source = say("AISC 360 J7, bearing 1.8 x yield (from memory); %1", {plate.source});
    return check;
}

} // namespace pw::loadpath
