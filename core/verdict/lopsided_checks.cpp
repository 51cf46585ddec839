#include "core/verdict/lopsided_checks.h"

#include "core/util/say.h"

namespace pw::verdict {

namespace {

constexpr double kHungHolds = 1.5, kHungBreaks = 1.1, kTipHolds = 0.6, kTiltAllowed = 0.2;
constexpr const char* kPractice = PW_SAY("common practice, no published source");

std::string nameOf(int station) {
    return say("station %1", {station + 1});
}

std::string mm(double value, units::System system) {
    return units::show(units::Length::fromMm(value), system);
}
std::string newton(double value, units::System system) {
    return units::show(units::Force::fromN(value), system);
}

} // namespace

Check hungStationCheck(double designLoad, int station, double collapseFactor, bool reached,
                       shape::Point where) {
    Check c{.id = "plate.hung_station", .member = "plate", .title = say("One station hung"), .unit = "N"};
    c.demand = designLoad;
    c.capacity = designLoad * collapseFactor;
    c.margin = collapseFactor;
    c.wanted = kHungHolds;
    c.grade = collapseFactor >= kHungHolds    ? Grade::Holds
              : collapseFactor >= kHungBreaks ? Grade::Thin
                                              : Grade::Breaks;
    c.basis =
        say(reached ? PW_SAY("%1 hung, the others carrying: folds at %2 x; wanted %3 (an accident)")
                    : PW_SAY("%1 hung, the others carrying: carries at least %2 x; wanted %3 (an accident)"),
            {nameOf(station), units::number(collapseFactor), units::number(kHungHolds)});
    c.source =
        say("collapse by elastic-plastic bending, von Mises; limits: common practice, no published source");
    c.where = {where};
    // Followed no further than needed, so the margin is not known well enough to be called the weakest link.
    if (!reached)
        c.kind = CheckKind::Note;
    return c;
}

Check tipCheck(double offset, double bearingRadius, int station, shape::Point where, units::System system) {
    Check c{
        .id = "plate.tip", .member = "plate", .title = say("Tipping"), .kind = CheckKind::Fit, .unit = "mm"};
    c.demand = offset;
    c.capacity = bearingRadius;
    c.marginIsRatio = true;
    c.margin = offset > 0 ? bearingRadius / offset : 99.0;
    c.wanted = 1 / kTipHolds;
    c.grade = offset <= kTipHolds * bearingRadius ? Grade::Holds : Grade::Thin;
    c.basis = say("with %1 hung the load stands %2 off the middle, the bearing's radius is %3",
                  {nameOf(station), mm(offset, system), mm(bearingRadius, system)});
    if (c.grade == Grade::Thin)
        c.basis = say("%1: all keepers out before letting up; if one hangs, squeeze again", {c.basis});
    c.source = say(kPractice);
    c.where = {where};
    return c;
}

Check stuckStationCheck(double extraForce, std::optional<double> wrenchAdds, int station, shape::Point where,
                        units::System system) {
    Check c{.id = "plate.stuck_station",
            .member = "plate",
            .title = say("One station stuck"),
            .kind = CheckKind::Note,
            .unit = "N"};
    c.capacity = extraForce;
    c.source = say("elastic field to 1.5 x yield at the worst place, where a set begins to show; common "
                   "practice, no published source for the limit");
    c.where = {where};
    const std::string takes = say("%1 rusted fast may take %2 more than its share before the plate sets",
                                  {nameOf(station), newton(extraForce, system)});
    if (!wrenchAdds) {
        c.basis = say("%1; what the wrench can add is not known: give its length and the pull", {takes});
        return c;
    }
    c.demand = *wrenchAdds;
    c.margin = *wrenchAdds > 0 ? extraForce / *wrenchAdds : 99.0;
    c.wanted = 1;
    c.grade = *c.margin >= 1 ? Grade::Holds : Grade::Thin;
    c.basis = say("%1; the wrench can add %2", {takes, newton(*wrenchAdds, system)});
    if (c.grade == Grade::Thin)
        c.basis = say("%1: watch that all retainers move together, and stop if one does not", {c.basis});
    return c;
}

Check tiltCheck(double tilt, int station, shape::Point where, units::System system) {
    Check c{.id = "land.tilt",
            .member = "lands",
            .title = say("Retainer tilt"),
            .kind = CheckKind::Fit,
            .unit = "mm"};
    c.demand = tilt;
    c.capacity = kTiltAllowed;
    c.marginIsRatio = true;
    c.margin = tilt > 0 ? kTiltAllowed / tilt : 99.0;
    c.wanted = 1;
    c.grade = tilt <= kTiltAllowed ? Grade::Holds : Grade::Thin;
    c.basis = say("the bent plate tilts the retainer of %1 by %2 across it, %3 allowed",
                  {nameOf(station), mm(tilt, system), mm(kTiltAllowed, system)});
    c.source = say(kPractice);
    c.where = {where};
    return c;
}

} // namespace pw::verdict
