#include "core/verdict/lopsided_checks.h"

namespace pw::verdict {

namespace {

constexpr double kHungHolds = 1.5, kHungBreaks = 1.1, kTipHolds = 0.6, kTiltAllowed = 0.2;
constexpr const char* kPractice = "common practice, no published source";

std::string nameOf(int station) {
    return "station " + std::to_string(station + 1);
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
    Check c{.id = "plate.hung_station", .member = "plate", .title = "One station hung", .unit = "N"};
    c.demand = designLoad;
    c.capacity = designLoad * collapseFactor;
    c.margin = collapseFactor;
    c.wanted = kHungHolds;
    c.grade = collapseFactor >= kHungHolds    ? Grade::Holds
              : collapseFactor >= kHungBreaks ? Grade::Thin
                                              : Grade::Breaks;
    c.basis = nameOf(station) +
              " hung, the others carrying: " + (reached ? "folds at " : "carries at least ") +
              units::number(collapseFactor) + " x; wanted " + units::number(kHungHolds) + " (an accident)";
    c.source = "collapse by elastic-plastic bending, von Mises; limits: common practice, no published source";
    c.where = {where};
    // Followed no further than needed, so the margin is not known well enough to be called the weakest link.
    if (!reached)
        c.kind = CheckKind::Note;
    return c;
}

Check tipCheck(double offset, double bearingRadius, int station, shape::Point where, units::System system) {
    Check c{.id = "plate.tip", .member = "plate", .title = "Tipping", .kind = CheckKind::Fit, .unit = "mm"};
    c.demand = offset;
    c.capacity = bearingRadius;
    c.marginIsRatio = true;
    c.margin = offset > 0 ? bearingRadius / offset : 99.0;
    c.wanted = 1 / kTipHolds;
    c.grade = offset <= kTipHolds * bearingRadius ? Grade::Holds : Grade::Thin;
    c.basis = "with " + nameOf(station) + " hung the load stands " + mm(offset, system) +
              " off the middle, the bearing's "
              "radius is " +
              mm(bearingRadius, system);
    if (c.grade == Grade::Thin)
        c.basis += ": all keepers out before letting up; if one hangs, squeeze again";
    c.source = kPractice;
    c.where = {where};
    return c;
}

Check stuckStationCheck(double extraForce, std::optional<double> wrenchAdds, int station, shape::Point where,
                        units::System system) {
    Check c{.id = "plate.stuck_station",
            .member = "plate",
            .title = "One station stuck",
            .kind = CheckKind::Note,
            .unit = "N"};
    c.capacity = extraForce;
    c.source =
        "elastic field to 1.5 x yield at the worst place, where a set begins to show; common practice, no "
        "published source for the limit";
    c.where = {where};
    const std::string takes = nameOf(station) + " rusted fast may take " + newton(extraForce, system) +
                              " more than its share before the plate sets";
    if (!wrenchAdds) {
        c.basis = takes + "; what the wrench can add is not known: give its length and the pull";
        return c;
    }
    c.demand = *wrenchAdds;
    c.margin = *wrenchAdds > 0 ? extraForce / *wrenchAdds : 99.0;
    c.wanted = 1;
    c.grade = *c.margin >= 1 ? Grade::Holds : Grade::Thin;
    c.basis = takes + "; the wrench can add " + newton(*wrenchAdds, system);
    if (c.grade == Grade::Thin)
        c.basis += ": watch that all retainers move together, and stop if one does not";
    return c;
}

Check tiltCheck(double tilt, int station, shape::Point where, units::System system) {
    Check c{
        .id = "land.tilt", .member = "lands", .title = "Retainer tilt", .kind = CheckKind::Fit, .unit = "mm"};
    c.demand = tilt;
    c.capacity = kTiltAllowed;
    c.marginIsRatio = true;
    c.margin = tilt > 0 ? kTiltAllowed / tilt : 99.0;
    c.wanted = 1;
    c.grade = tilt <= kTiltAllowed ? Grade::Holds : Grade::Thin;
    c.basis = "the bent plate tilts the retainer of " + nameOf(station) + " by " + mm(tilt, system) +
              " across it, " + mm(kTiltAllowed, system) + " allowed";
    c.source = kPractice;
    c.where = {where};
    return c;
}

} // namespace pw::verdict
