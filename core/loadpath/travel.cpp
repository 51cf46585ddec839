#include "core/loadpath/travel.h"

#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr const char* kThreadTitle = PW_SAY("Thread left");
constexpr const char* kPinTitle = PW_SAY("Off the pins");
constexpr double kPitchesToSpare = 2;
constexpr double kForceLeft = 0.10;

Length engagedLeast(const TravelInputs& in) {
    const auto& thread = in.turns == job::Turns::Nut ? in.nutHeight : in.hole;
    return thread ? std::min(in.diameter, *thread) : in.diameter;
}

/// Of a turning screw: how far its thread goes in, assembled.
std::optional<Length> insideOf(const TravelInputs& in) {
    return in.through && in.usableLength ? in.usableLength : in.engagement;
}

/// The figure that says how much thread there is.
bool countsUsableLength(const TravelInputs& in) {
    return in.turns == job::Turns::Nut || in.through;
}

/// From the face the screw enters to the nut, the plate backed off by `back` from where it stands squeezed.
Length reachOf(const TravelInputs& in, Length back) {
    return *in.standoff - in.compressFurther + back + *in.plate + in.washer;
}

/// What keeps the need for thread from being known, whatever thread there is.
std::string missingForNeed(const TravelInputs& in) {
    if (!in.releaseTravel)
        return say("how far the springs open is not known: give one spring's free length, or two readings");
    if (in.turns == job::Turns::Screw)
        return {};
    if (!in.standoff)
        return say("the standoff is not given: measure from the face the screw enters to the retainers' "
                   "faces, springs assembled");
    if (!in.plate)
        return say("the plate's thickness is not given");
    if (!in.nutHeight)
        return say("the nut's height is not given: measure it");
    return {};
}

std::string missingFor(const TravelInputs& in) {
    if (std::string missing = missingForNeed(in); !missing.empty())
        return missing;
    const auto show = [&](Length l) { return units::show(l, in.system); };
    if (in.turns == job::Turns::Screw && insideOf(in))
        return {};
    if (!countsUsableLength(in))
        return say("how deep the screw sits in its thread is not given: count its turns out and multiply by "
                   "the pitch; at least %1 is needed",
                   {show(*threadNeeded(in))});
    return in.usableLength ? std::string()
                           : say("the screw's usable length is not given: measure the thread from the face "
                                 "it enters to its free tip; at least %1 is needed",
                                 {show(*threadNeeded(in))});
}

/// Thread in hand at this place, back off counted from squeezed.
ThreadMoment momentAt(const TravelInputs& in, const std::string& when, Length back) {
    ThreadMoment moment{when, {}, {}, {}};
    if (in.turns == job::Turns::Screw) {
        const Length inside = *insideOf(in) + in.compressFurther - back;
        moment.engaged = in.through && in.hole ? std::clamp(inside, Length(), *in.hole) : inside;
        moment.toEnd = inside - engagedLeast(in);
        if (in.threadLength)
            moment.toShank = *in.threadLength - inside;
        return moment;
    }
    const Length reach = reachOf(in, back), past = *in.usableLength - reach;
    moment.engaged = std::clamp(past, Length(), *in.nutHeight);
    moment.toEnd = past - engagedLeast(in);
    if (in.threadLength)
        moment.toShank = reach - (*in.usableLength - *in.threadLength);
    return moment;
}

/// The moment at which nut or hole comes nearest to the shank; squeezed, for both ways of turning.
std::optional<Length> roomToShank(const TravelInputs& in) {
    return momentAt(in, say("squeezed"), Length()).toShank;
}

} // namespace

std::vector<ThreadMoment> threadMoments(const TravelInputs& in) {
    if (!missingFor(in).empty())
        return {};
    return {momentAt(in, say("assembled"), in.compressFurther), momentAt(in, say("squeezed"), Length()),
            momentAt(in, say("free"), *in.releaseTravel)};
}

std::optional<Length> threadLeft(const TravelInputs& in) {
    if (!missingFor(in).empty())
        return std::nullopt;
    return momentAt(in, say("free"), *in.releaseTravel).toEnd;
}

std::optional<Length> threadNeeded(const TravelInputs& in) {
    if (!missingForNeed(in).empty())
        return std::nullopt;
    const Length spare = in.pitch * kPitchesToSpare;
    if (in.turns == job::Turns::Screw)
        return *in.releaseTravel - in.compressFurther + engagedLeast(in) + spare;
    return reachOf(in, *in.releaseTravel) + engagedLeast(in) + spare;
}

Check threadTravelCheck(const TravelInputs& in) {
    const std::string missing = missingFor(in);
    if (!missing.empty())
        return incompleteCheck("travel.thread", "screw", say(kThreadTitle), CheckKind::Fit, missing);
    const auto show = [&](Length l) { return units::show(l, in.system); };
    const Length left = *threadLeft(in), spare = in.pitch * kPitchesToSpare;
    const bool nut = in.turns == job::Turns::Nut;
    Check check;
    check.id = "travel.thread";
    check.member = "screw";
    check.title = say(kThreadTitle);
    check.kind = CheckKind::Fit;
    check.unit = "mm";
    const Length capacity = nut ? *in.usableLength : *insideOf(in) + in.compressFurther;
    check.capacity = capacity.mm();
    check.demand = (capacity - left).mm();
    check.margin = left.mm();
    check.wanted = spare.mm();
    check.grade = left < Length() ? Grade::Breaks : left < spare ? Grade::Thin : Grade::Holds;
    check.source = say("one diameter engaged until the springs are free, two pitches to spare: common "
                       "practice, no published source");
    const std::string rest =
        left < Length() ? say("%1 too short; the screw lets go while the springs still push", {show(-left)})
                        : say("%1 left", {show(left)});
    if (nut)
        check.basis =
            say("free after %1: standoff %2 - squeeze %3 + travel %1 + plate %4 + washer %5 + nut %6 = %7 of "
                "%8 thread: %9",
                {show(*in.releaseTravel), show(*in.standoff), show(in.compressFurther), show(*in.plate),
                 show(in.washer), show(engagedLeast(in)), show(capacity - left), show(capacity), rest});
    else
        check.basis =
            say(in.through ? PW_SAY("free after %1: thread past the face %2 + squeeze %3 - travel %1, of "
                                    "which %4 must stay: %5")
                           : PW_SAY("free after %1: engaged %2 + squeeze %3 - travel %1, of which %4 must "
                                    "stay: %5"),
                {show(*in.releaseTravel), show(*insideOf(in)), show(in.compressFurther),
                 show(engagedLeast(in)), rest});
    if (left < spare)
        check.basis = say(countsUsableLength(in) ? PW_SAY("%1; %2 of thread is needed")
                                                 : PW_SAY("%1; %2 of engagement is needed"),
                          {check.basis, show(*threadNeeded(in))});
    // The other end: nut or hole running onto the plain shank while the keepers are still held.
    if (const auto room = roomToShank(in); room && *room < std::min(left, spare)) {
        check.grade = std::max(check.grade, *room < Length() ? Grade::Breaks : Grade::Thin);
        check.margin = room->mm();
        check.basis =
            *room < Length()
                ? say("%1; squeezed, the thread runs onto the plain shank %2 too early: pack it with "
                      "washers or cut more thread",
                      {check.basis, show(-*room)})
                : say("%1; squeezed, only %2 of thread is left to the plain shank",
                      {check.basis, show(*room)});
    }
    return check;
}

Check pinTravelCheck(const job::Job& job, const spring::PackLoads& pack) {
    const bool springsKnown =
        !pack.springs.empty() && std::all_of(pack.springs.begin(), pack.springs.end(),
                                             [](const auto& spring) { return spring.known; });
    if (!job.stations.pinEnd)
        return incompleteCheck(
            "travel.pin", "pins", say(kPinTitle), CheckKind::Note,
            say("how far the pins stand beyond the retainers is not given: measure it, assembled"));
    if (!springsKnown)
        return incompleteCheck(
            "travel.pin", "pins", say(kPinTitle), CheckKind::Note,
            say("the springs' figures are not given: a length assembled and a force, at least"));
    const Length swell = job.travel.swell.value_or(Length());
    Force left, assembled;
    for (const auto& spring : pack.springs) {
        const double each = spring.perStation;
        left += spring.forceAt(spring.assembled - swell + *job.stations.pinEnd).high * each;
        assembled += spring.forceAt(spring.assembled - swell).high * each;
    }
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    // A note: a force left there is how such packs are made, not a weakness of the tool, but the hands must
    // know it.
    Check check;
    check.id = "travel.pin";
    check.member = "pins";
    check.title = say(kPinTitle);
    check.kind = CheckKind::Note;
    check.grade = Grade::Holds;
    check.unit = std::string("N"); // the plain literal trips a false warning of GCC 12
    check.demand = left.newton();
    check.source = say("the springs' own figures");
    if (left > assembled * kForceLeft)
        check.basis =
            say("letting up, the retainer leaves its pin after %1 with %2 of %3 still behind it: keep the "
                "plate square and hands away until the springs are free",
                {show(*job.stations.pinEnd), show(left), show(assembled)});
    else
        check.basis = say("letting up, the retainer leaves its pin after %1 with next to nothing behind it",
                          {show(*job.stations.pinEnd)});
    return check;
}

} // namespace pw::loadpath
