#include "core/loadpath/rating.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr double kProof = 1.25;
constexpr const char* kWindowTitle = PW_SAY("Room to stop");
constexpr const char* kOverrunTitle = PW_SAY("Wrench");

/// Does the margin stand for a load that can be scaled?
bool scales(const Check& check) {
    return check.kind == CheckKind::Force && check.grade != Grade::Incomplete && check.marginOverWanted() &&
           check.id != "plate.set" && check.id != "plate.hung_station";
}

/// Collapse is called "sets" under this; everything else at its limit.
double firstHarm(const Check& check) {
    return check.id == "plate.collapse" ? 1.5 : 1.0;
}

} // namespace

Force roundUp(Force load, Force most, units::System system) {
    const double unit = system == units::System::Metric ? 1.0 : units::kNewtonPerPoundForce;
    const double value = load.newton() / unit;
    if (value <= 0)
        return load;
    const double exponent = std::floor(std::log10(value));
    for (int digits = 2; digits <= 4; ++digits) {
        const double step = std::pow(10.0, exponent - digits + 1);
        const double rounded = std::ceil(value / step * (1 - 1e-12)) * step;
        if (rounded * unit <= most.newton() * (1 + 1e-12))
            return Force::fromN(rounded * unit);
    }
    return load;
}

Rating ratingOf(const RatingInputs& in) {
    Rating rating;
    double least = 0;
    for (const Check& check : in.checks) {
        if (!scales(check) || (rating.known && *check.marginOverWanted() >= least))
            continue;
        rating.known = true;
        least = *check.marginOverWanted();
        rating.ratedBy = check.id;
    }
    rating.known = rating.known && in.design > Force();
    if (!rating.known)
        return rating;
    const auto show = [&](auto q) { return units::show(q, in.system); };
    rating.rated = in.design * least;
    if (in.limitAtBind && *in.limitAtBind < rating.rated) {
        rating.rated = *in.limitAtBind;
        rating.ratedBy = "load.coil_bind";
    }
    if (in.ramLimit && *in.ramLimit < rating.rated && *in.ramLimit >= in.design) {
        rating.rated = *in.ramLimit;
        rating.ratedBy = "ram.capacity";
    }
    // Equal but for rounding counts as enough.
    const bool enough = rating.rated >= in.design * (1 - 1e-9);
    if (enough) {
        const Force most = std::max(rating.rated, in.design);
        rating.stamp = roundUp(in.design, most, in.system);
        if (in.stampWanted) {
            if (*in.stampWanted < in.design || *in.stampWanted > most)
                rating.notes.push_back(
                    say("a stamp of %1 lies outside %2 (the load) to %3 (the rated load); %4 is taken",
                        {show(*in.stampWanted), show(in.design), show(most), show(*rating.stamp)}));
            else
                rating.stamp = *in.stampWanted;
        }
        rating.proof = *rating.stamp * kProof;
        if (in.limitAtBind && *rating.proof > *in.limitAtBind) {
            rating.proofOnPacking = true;
            rating.notes.push_back(
                say("proof of %1 would drive the springs solid: prove the tool on solid packing",
                    {show(*rating.proof)}));
        }
        if (in.ramLimit && *rating.proof > *in.ramLimit)
            rating.notes.push_back(say(
                "proof of %1 is more than the ram makes, %2: prove the tool in a press or with a larger ram",
                {show(*rating.proof), show(*in.ramLimit)}));
    } else {
        rating.notes.push_back(say("the rated load %1 is under the load of the job %2: no stamp",
                                   {show(rating.rated), show(in.design)}));
    }
    if (in.torque) {
        rating.stop = torqueFor(*in.torque, rating.rated).low;
        rating.atDesign = torqueFor(*in.torque, in.design);
        if (rating.proof)
            rating.atProof = torqueFor(*in.torque, *rating.proof);
    }
    return rating;
}

Check torqueWindowCheck(const RatingInputs& in, const Rating& rating) {
    if (!in.torque || !rating.known)
        return incompleteCheck(
            "screw.torque_window", "screw", say(kWindowTitle), CheckKind::Note,
            !in.torque ? say("the screw's thread is not given")
                       : say("no load, so no torque: give the springs' forces or the load in all"));
    const Torque need = rating.atDesign->high, stop = *rating.stop;
    const auto show = [&](auto q) { return units::show(q, in.system); };
    Check check;
    check.id = "screw.torque_window";
    check.member = "screw";
    check.title = say(kWindowTitle);
    check.kind = CheckKind::Note;
    check.unit = "N.m";
    check.demand = need.newtonM();
    check.capacity = stop.newtonM();
    check.margin = stop / need;
    check.wanted = 1;
    check.grade = *check.margin < 1 - 1e-9 ? Grade::Thin : Grade::Holds;
    check.basis =
        say("%1 may need %2 (%3); stop at %4, which is %5 when it runs easily",
            {show(in.design), show(need), in.torque->friction.words, show(stop), show(rating.rated)});
    if (check.grade == Grade::Thin)
        check.basis = say("%1: stop by turns and dial, not by torque", {check.basis});
    const Range<double> k = kFactor(*in.torque);
    check.basis = say("%1; K %2 to %3", {check.basis, units::number(k.low, 2), units::number(k.high, 2)});
    check.source =
        say("power-screw equation, Shigley 9th ed. ch. 8; friction classes of VDI 2230-1 (from memory)");
    return check;
}

Check overrunCheck(const RatingInputs& in, const OverrunInputs& overrun) {
    const auto missing = [&](const std::string& what) {
        return incompleteCheck("screw.overrun", "screw", say(kOverrunTitle), CheckKind::Note, what);
    };
    if (!in.torque)
        return missing(say("the screw's thread is not given"));
    if (!overrun.wrench || !overrun.pull)
        return missing(!overrun.wrench
                           ? say("the wrench's length is not given: measure to the middle of the hand")
                           : say("how hard you pull the wrench is not given: 250 N, 55 lbf, is a firm pull"));
    const Check* first = nullptr;
    Force harm;
    for (const Check& check : in.checks) {
        if (!scales(check))
            continue;
        const Force load = in.design * (*check.margin / firstHarm(check));
        if (!first || load < harm) {
            first = &check;
            harm = load;
        }
    }
    if (!first || !(in.design > Force()))
        return missing(say("nothing to hold it against: no strength check could be made"));
    const Torque torque = *overrun.pull * *overrun.wrench;
    const Force made = mostLoadOf(*in.torque, torque);
    const auto show = [&](auto q) { return units::show(q, in.system); };
    Check check;
    check.id = "screw.overrun";
    check.member = "screw";
    check.title = say(kOverrunTitle);
    check.kind = CheckKind::Note;
    check.unit = "N";
    check.demand = made.newton();
    check.capacity = harm.newton();
    check.margin = made > Force() ? harm / made : 99.0;
    check.wanted = 1;
    check.grade = *check.margin < 1 ? Grade::Thin : Grade::Holds;
    check.basis = say("%1 at the end of a wrench of %2, %3, can make %4; the first to go is the %5 at %6",
                      {show(*overrun.pull), show(*overrun.wrench), show(torque), show(made),
                       verdict::sayMember(first->member), show(harm)});
    if (check.grade == Grade::Thin) {
        const double turns = overrun.compressFurther / overrun.lead;
        check.basis = turns > 0 ? say("%1; from where the retainers start to move, stop at %2 turns",
                                      {check.basis, units::number(turns, 2)})
                                : say("%1; stop by turns and dial", {check.basis});
    }
    check.source = say("power-screw equation at low friction, Shigley 9th ed. ch. 8");
    return check;
}

} // namespace pw::loadpath
