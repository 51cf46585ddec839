#include "core/verdict/plate_checks.h"

#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::verdict {

namespace {

using units::number;

constexpr const char* kCollapseSource =
    PW_SAY("factors: ASME BTH-1 category A design factor 2.0 times the plastic shape factor 1.5; collapse by "
           "elastic-plastic bending, von Mises");
constexpr const char* kBrittleSource = PW_SAY("common practice, no published source");

/// A brittle plate's margins of 2 and 4 are not kept by a peak that is wrong by more; common practice, no
/// published source.
constexpr double kPeakErrorAllowed = 10;

std::string showMm(double mm, units::System system) {
    return units::show(units::Length::fromMm(mm), system);
}
std::string showMpa(double mpa, units::System system) {
    return units::show(units::Stress::fromMpa(mpa), system);
}

/// Small sets as a mechanic would read them off a dial: to 0.001 mm or 0.0001 in.
std::string showSet(double mm, units::System system) {
    if (system == units::System::Inch)
        return mm < 0.00127 ? say("none to see") : number(std::round(mm / 25.4 * 1e4) / 1e4, 3) + "\u00a0in";
    return mm < 0.0005 ? say("none to see") : number(std::round(mm * 1e3) / 1e3, 3) + "\u00a0mm";
}

Check collapseCheck(const PlateFindings& f, const PlateDemands& d) {
    Check c{.id = "plate.collapse", .member = "plate", .title = say("Plate, folding"), .unit = "N"};
    c.source = say(kCollapseSource);
    const double category = d.loadIsStated ? 1.0 : 1.5;
    const double s = category * d.wantedMargin / 2;
    c.wanted = 3.0 * s;
    c.demand = f.designLoad;
    if (!f.collapseFactor) {
        c.basis = say("not worked out");
        return c;
    }
    const double factor = *f.collapseFactor;
    if (!f.collapseReached && factor < 3.0 * s) {
        c.basis = say("its bending could be followed to %1 x the load and no further; wanted %2",
                      {number(factor), number(3.0 * s)});
        return c;
    }
    c.margin = factor;
    c.capacity = factor * f.designLoad;
    c.grade = factor >= 3.0 * s   ? Grade::Holds
              : factor >= 1.5 * s ? Grade::Thin
              : factor >= 1.1     ? Grade::Sets
                                  : Grade::Breaks;
    c.basis =
        say(f.collapseReached ? PW_SAY("folds at %1 x the load of %2; wanted %3")
                              : PW_SAY("carries at least %1 x the load of %2; wanted %3"),
            {number(factor), units::show(units::Force::fromN(f.designLoad), d.system), number(3.0 * s)});
    if (f.firstYieldFactor)
        c.basis = say("%1; yields first at %2 x, %3", {c.basis, number(*f.firstYieldFactor), f.peakPlace});
    if (d.hammer > 1)
        c.basis = say("%1; counted with %2 x for hammering", {c.basis, number(d.hammer)});
    if (!d.loadIsStated)
        c.basis = say("%1; half as much again is wanted as nobody states the load", {c.basis});
    c.where = f.peakAt;
    return c;
}

Check setCheck(const PlateFindings& f, const PlateDemands& d) {
    Check c{.id = "plate.set",
            .member = "plate",
            .title = say("Plate, set"),
            .kind = CheckKind::Fit,
            .unit = "mm"};
    c.source = say("limit: common practice, no published source; set by elastic-plastic bending, von Mises");
    const double limit = setLimit(f, d);
    c.capacity = limit;
    c.where = f.peakAt;
    if (f.unloadingFailed) {
        c.basis = say("what the load leaves behind could not be followed");
        return c;
    }
    const std::string allowed = say("allowed %1", {showMm(limit, d.system)});
    if (f.set && f.setAtProof && *f.setAtProof < limit) {
        c.grade = Grade::Holds;
        c.demand = *f.setAtProof;
        c.basis = say("set after 1.25 x the load: %1; %2", {showSet(*f.setAtProof, d.system), allowed});
    } else if (f.set && *f.set < limit) {
        c.grade = Grade::Thin;
        c.demand = f.setAtProof ? *f.setAtProof : *f.set;
        c.basis = f.setAtProof ? say("set after the load: %1, after 1.25 x: %2; %3",
                                     {showSet(*f.set, d.system), showSet(*f.setAtProof, d.system), allowed})
                               : say("set after the load: %1, and 1.25 x is more than it carries; %2",
                                     {showSet(*f.set, d.system), allowed});
    } else if (f.followed) {
        c.grade = Grade::Sets;
        if (f.set)
            c.demand = *f.set;
        c.basis = f.set ? say("set after the load: %1; %2", {showSet(*f.set, d.system), allowed})
                        : say("it folds before it carries the load");
    } else {
        c.basis = say("not worked out");
        return c;
    }
    if (c.demand && *c.demand > 0) {
        c.marginIsRatio = true;
        c.margin = limit / *c.demand;
        c.wanted = 1.0;
    }
    return c;
}

Check brittleCheck(const PlateFindings& f, const material::Material& steel, const PlateDemands& d) {
    Check c{.id = "plate.collapse", .member = "plate", .title = say("Plate, cracking"), .unit = "MPa"};
    c.source = say(kBrittleSource);
    const double s = d.wantedMargin / 2;
    c.wanted = 4.0 * s;
    c.where = f.peakAt;
    if (!f.peakStress) {
        c.basis = say("not worked out");
        return c;
    }
    if (f.sharpCorner) {
        c.basis = say("brittle, and a sharp inside corner is where it cracks: round it");
        return c;
    }
    if (f.peakErrorPercent > kPeakErrorAllowed) {
        c.basis = say("brittle, and the worst stress is not known: the last mesh moved it by %1 %",
                      {number(f.peakErrorPercent, 2)});
        return c;
    }
    c.demand = *f.peakStress;
    c.capacity = steel.ultimate.mpa();
    c.margin = *c.capacity / *c.demand;
    c.grade = *c.margin >= 4.0 * s ? Grade::Holds : *c.margin >= 2.0 * s ? Grade::Thin : Grade::Breaks;
    c.basis =
        say("brittle: worst stress %1 %2 against %3 to break; wanted %4 x",
            {showMpa(*c.demand, d.system), f.peakPlace, showMpa(*c.capacity, d.system), number(4.0 * s)});
    return c;
}

Check steelCheck(const material::Material& steel, const PlateDemands& d) {
    Check c{.id = "plate.steel", .member = "plate", .title = say("Steel"), .kind = CheckKind::Note};
    c.source = say(kBrittleSource);
    if (d.tests.cracks == job::CrackTest::Seen) {
        c.grade = Grade::Breaks;
        c.basis = say("a crack was seen: do not use this piece");
    } else if (isBrittle(steel, d)) {
        c.grade = Grade::Holds;
        c.basis = steel.brittle ? say("brittle by its nature: judged on the worst stress, no hammering")
                                : say("the file skates or the strip snaps: judged as brittle, no hammering");
    } else if (d.unknownSteel &&
               (d.tests.file == job::FileTest::NotTried || d.tests.bend == job::BendTest::NotTried)) {
        c.grade = Grade::Holds;
        c.basis = say("file it first: if the file skates, do not use it; bend a strip and look for cracks");
    } else {
        c.grade = Grade::Holds;
        c.basis = d.unknownSteel
                      ? say("the file bites and the strip bends: soft steel, taken at %1 yield",
                            {showMpa(steel.yield.mpa(), d.system)})
                      : say("%1, yields at %2", {steel.name, showMpa(steel.yield.mpa(), d.system)});
    }
    return c;
}

} // namespace

double setLimit(const PlateFindings& findings, const PlateDemands& demands) {
    return demands.setLimit ? *demands.setLimit : std::max(0.02, findings.span / 5000);
}

bool isBrittle(const material::Material& steel, const PlateDemands& demands) {
    return steel.brittle || demands.tests.file == job::FileTest::Skates ||
           demands.tests.bend == job::BendTest::Snapped;
}

std::vector<Check> checkPlate(const PlateFindings& findings, const material::Material& steel,
                              const PlateDemands& demands) {
    std::vector<Check> checks;
    if (isBrittle(steel, demands)) {
        checks.push_back(brittleCheck(findings, steel, demands));
    } else {
        checks.push_back(collapseCheck(findings, demands));
        checks.push_back(setCheck(findings, demands));
    }
    checks.push_back(steelCheck(steel, demands));
    return checks;
}

} // namespace pw::verdict
