#include "core/loadpath/buckling.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <cmath>
#include <numbers>

namespace pw::loadpath {

namespace {

using std::numbers::pi;

constexpr double kSteelE = 207000; ///< MPa, carbon steel

double slenderness(const Column& column) {
    return column.length.mm() / (column.diameter.mm() / 4);
}

} // namespace

bool isSlender(const Column& column) {
    const double c = 1 / (column.endFactor * column.endFactor);
    return slenderness(column) > std::sqrt(2 * pi * pi * c * column.E.mpa() / column.yield.mpa());
}

Stress criticalStress(const Column& column) {
    const double c = 1 / (column.endFactor * column.endFactor), E = column.E.mpa(), sy = column.yield.mpa(),
                 l = slenderness(column);
    if (isSlender(column))
        return Stress::fromMpa(c * pi * pi * E / (l * l));
    const double bend = sy * l / (2 * pi);
    return Stress::fromMpa(sy - bend * bend / (c * E));
}

Check bucklingCheck(const BucklingInputs& in) {
    const char* id = "screw.buckling";
    const std::string title = say("Screw, buckling");
    if (!in.freeLength)
        return incompleteCheck(id, "screw", title, verdict::CheckKind::Force,
                               say("how long the screw stands free is not given: measure from the plate to "
                                   "the shaft's end when the pull begins, and add what it must still come"));
    const Length root = thread::rootDiameter(in.thread);
    const Column column{root, *in.freeLength, in.endFactor, in.strength.yield, Stress::fromMpa(kSteelE)};
    const Force capacity = criticalStress(column) * thread::rootArea(in.thread);
    Check check =
        strengthCheck(id, "screw", title, Rule::Sudden, in.load.newton(), capacity.newton(), "N", in.s);
    const auto show = [&](auto q) { return units::show(q, in.system); };
    const std::string stress = isSlender(column) ? say("Euler %1", {show(criticalStress(column))})
                                                 : say("Johnson %1", {show(criticalStress(column))});
    check.basis =
        say("%1, root %2, %3 free, %4 (K = %5): %6 x %7 = %8 against %9",
            {in.thread.name, show(root), show(*in.freeLength), in.endWords, units::number(in.endFactor),
             stress, show(thread::rootArea(in.thread)), show(capacity), show(in.load)});
    check.source = say("Shigley 9th ed. eq. (4-43) Euler, (4-48) Johnson; %1", {in.strength.source});
    return check;
}

} // namespace pw::loadpath
