#include "core/loadpath/back.h"

#include "core/loadpath/beam.h"
#include "core/loadpath/factors.h"
#include "core/loadpath/screw.h"
#include "core/material/hot.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <numbers>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr double kClearanceHole =
    1.1; ///< a hole to pass the screw, over its diameter; ISO 273 medium, from memory
constexpr const char* kHammerWords = PW_SAY("%1; 1.5 x for hammering");
constexpr const char* kBearingSource = PW_SAY("AISC 360 J7, bearing 1.8 x yield (from memory); %1");

units::Area ring(Length outside, Length inside) {
    const double o = outside.mm(), i = inside.mm();
    return units::Area::fromMm2(std::max(0.0, std::numbers::pi / 4 * (o * o - i * i)));
}

Check bearingCheck(const std::string& id, const std::string& member, const std::string& title, Force load,
                   Length outside, Length inside, const material::Material& on, double s,
                   units::System system) {
    const units::Area area = ring(outside, inside);
    const Force capacity = on.yield * kBearingOfYield * area;
    Check check = strengthCheck(id, member, title, Rule::Ductile, load.newton(), capacity.newton(), "N", s);
    const auto show = [&](auto q) { return units::show(q, system); };
    check.basis = inside > Length()
                      ? say("%1 on a ring %2 to %3, %4, against 1.8 x yield %5 (%6)",
                            {show(load), show(inside), show(outside), show(area), show(on.yield), on.name})
                      : say("%1 on a spot of %2, %3, against 1.8 x yield %4 (%5)",
                            {show(load), show(outside), show(area), show(on.yield), on.name});
    check.source = say(kBearingSource, {on.source});
    return check;
}

/// What dents first where a screw or bolt presses on steel.
material::Material weakerOf(material::Material steel, const std::optional<material::ScrewGrade>& screw,
                            const std::string& rod = say("screw")) {
    if (screw && screw->yield < steel.yield) {
        steel.yield = screw->yield;
        steel.name = say("the %1, %2", {rod, screw->name});
        steel.source = screw->source;
    }
    return steel;
}

Check barBending(const job::Job& job, const Setup& setup, const material::Material& steel, Force load,
                 double s) {
    const job::Back& back = *job.back;
    const char* id = "back.bending";
    const std::string title = say("Backing bar, bending");
    const auto missing = [&](const std::string& what) {
        return incompleteCheck(id, "backing bar", title, CheckKind::Force, what);
    };
    if (!back.span)
        return missing(
            say("the backing bar's span is not given: measure between the two places it rests on"));
    if (!back.width || !back.thickness)
        return missing(say("the backing bar's width and thickness are not given: measure them"));
    Beam beam{*back.span, *back.width, *back.thickness, {}};
    if (setup.members.thread)
        beam.hole = setup.members.thread->diameter * (intoOf(job) == job::Into::Bar ? 1.0 : kClearanceHole);
    // A bar the screw only pushes against has no hole.
    if (screwPushes(job))
        beam.hole = Length();
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    if (!hasSection(beam)) {
        Check check = strengthCheck(id, "backing bar", title, Rule::Ductile, load.newton(), 0, "N", s);
        check.basis = say("the screw's hole of %1 is as wide as the bar", {show(beam.hole)});
        check.source = say("geometry");
        return check;
    }
    const Stress stress = netStress(beam, load);
    const std::string netWidth = beam.hole > Length()
                                     ? say("(%1 - hole %2)", {show(*back.width), show(beam.hole)})
                                     : "(" + show(*back.width) + ")";
    Check check =
        strengthCheck(id, "backing bar", title, Rule::Ductile, stress.mpa(), steel.yield.mpa(), "MPa", s);
    check.basis =
        say("%1 in the middle of %2: F L / 4 = %3 on %4 x %5^2 / 6 = %6 against yield %7 (%8); it bends %9",
            {show(load), show(*back.span), show(midMoment(beam, load)), netWidth, show(*back.thickness),
             show(stress), show(steel.yield), steel.name, show(midDeflection(beam, load, steel.E))});
    check.source = say("beam on two supports, Roark 7th ed. Table 8.1; %1", {steel.source});
    return check;
}

/// The bar is part of the tool and as warm.
material::Material atToolHeat(material::Material steel, const job::Job& job, MemberChecks& out) {
    if (!job.heat.tool)
        return steel;
    const auto hot = material::atTemperature(steel, *job.heat.tool);
    if (!hot) {
        out.problems.push_back({"heat.tool", hot.problem().message});
        return steel;
    }
    steel.yield = hot->yieldForSet;
    steel.E = hot->E;
    return steel;
}

void barChecks(const job::Job& job, const Setup& setup, Force load, double s, MemberChecks& out) {
    const job::Back& back = *job.back;
    auto steel = orScrap(back.steel, back.thickness.value_or(Length()));
    if (!steel) {
        out.problems.push_back({"back.steel", steel.problem().message});
        return;
    }
    steel = atToolHeat(*steel, job, out);
    if (!back.steel)
        out.assumptions.push_back(say("the backing bar's steel is not given: taken as unknown scrap"));
    if (back.kind == job::BackKind::Bar || back.span)
        out.checks.push_back(barBending(job, setup, *steel, load, s));
    const char *id = "back.bearing", *member = back.kind == job::BackKind::Bar ? "backing bar" : "stop block";
    const std::string title = say("Pressure on the back");
    if (intoOf(job) == job::Into::Bar)
        return; // tapped: thread.bar carries it
    if (!setup.members.thread) {
        out.checks.push_back(
            incompleteCheck(id, member, title, CheckKind::Force,
                            say("the forcing screw's thread is not given, M20 or 3/4-10 for one")));
        return;
    }
    if (screwPushes(job)) {
        const double hammer = hammerFactorOf(job);
        Check check =
            bearingCheck(id, member, title, load * hammer, pointDiameterOf(job, *setup.members.thread), {},
                         weakerOf(*steel, setup.members.screw), s, job.preferred);
        if (hammer > 1)
            check.basis = say(kHammerWords, {check.basis});
        out.checks.push_back(check);
        return;
    }
    // The head or nut behind the bar: its face, no washer counted.
    const auto hexagon = thread::standardHexagon(*setup.members.thread);
    const Length face =
        (hexagon ? hexagon->boltAcrossFlats : setup.members.thread->diameter * kFlatsOfDiameter) *
        kFaceOfFlats;
    out.checks.push_back(bearingCheck(id, member, title, load, face,
                                      setup.members.thread->diameter * kClearanceHole, *steel, s,
                                      job.preferred));
}

util::Result<material::Material> shaftSteel(const job::Job& job, MemberChecks& out) {
    std::optional<job::Material> given;
    if (job.hub && job.hub->shaftMaterial)
        given = job.hub->shaftMaterial;
    else if (job.screw && job.screw->intoMaterial)
        given = job.screw->intoMaterial;
    if (!given)
        out.assumptions.push_back(say("the shaft's steel is not given: taken as unknown scrap"));
    auto steel = orScrap(given);
    if (!steel)
        out.problems.push_back(
            {job.hub && job.hub->shaftMaterial ? "hub.shaft_material" : "screw.into_material",
             steel.problem().message});
    return steel;
}

void stopBoltChecks(const job::Job& job, Force load, double s, MemberChecks& out) {
    const job::Back& back = *job.back;
    const std::string threadTitle = say("Stop bolt's thread"), padTitle = say("Stop bolt's pad");
    const auto shaft = shaftSteel(job, out);
    if (back.thread.empty() || !shaft) {
        out.checks.push_back(
            incompleteCheck("back.thread", "stop bolt", threadTitle, CheckKind::Force,
                            say("the stop bolt's thread is not given, M16 or 5/8-11 for one")));
        return;
    }
    const auto thread = thread::parse(back.thread);
    if (!thread) {
        out.problems.push_back({"back.thread", thread.problem().message});
        return;
    }
    const bool seats = back.pad && *back.pad > thread->diameter;
    if (back.pad && !seats)
        out.assumptions.push_back(
            say("a pad of %1 is no wider than the %2 stop bolt and seats on nothing: its thread carries",
                {units::show(*back.pad, job.preferred), thread->name}));
    if (seats)
        out.checks.push_back(bearingCheck("back.bearing", "stop bolt", padTitle, load, *back.pad,
                                          thread->diameter, *shaft, s, job.preferred));
    if (back.grade.empty())
        out.assumptions.push_back(say("the stop bolt's grade is not given: taken as the weakest sold"));
    const auto grade = material::findScrewGrade(back.grade.empty() ? "unknown" : back.grade, *thread);
    if (!grade) {
        out.problems.push_back({"back.grade", grade.problem().message});
        return;
    }
    if (!back.engagement) {
        out.checks.push_back(incompleteCheck("back.thread", "stop bolt", threadTitle,
                                             seats ? CheckKind::Note : CheckKind::Force,
                                             say("how deep the stop bolt sits in the shaft is not given: "
                                                 "count its turns in and multiply by the pitch")));
        return;
    }
    StripInputs in;
    in.id = "back.thread";
    in.member = "stop bolt";
    in.title = threadTitle;
    in.thread = *thread;
    in.engagement = *back.engagement;
    in.screw = *grade;
    in.inside = *shaft;
    in.load = load;
    in.s = s;
    in.system = job.preferred;
    Check check = stripCheck(in);
    if (seats) { // the pad carries: what the thread alone would do is for information
        check.kind = CheckKind::Note;
        check.grade = Grade::Holds;
        check.basis = say(
            "screwed down onto its pad the thread carries nothing; left standing off it would carry all: %1",
            {check.basis});
    }
    out.checks.push_back(check);
}

} // namespace

MemberChecks backChecks(const job::Job& job, const Setup& setup, Force load, double s) {
    MemberChecks out;
    if (!job.back)
        return out;
    switch (job.back->kind) {
    case job::BackKind::Bar:
    case job::BackKind::Block:
        barChecks(job, setup, load, s, out);
        break;
    case job::BackKind::StopBolt:
        stopBoltChecks(job, load, s, out);
        break;
    case job::BackKind::Shaft:
    case job::BackKind::None:
        break;
    }
    return out;
}

MemberChecks pointChecks(const job::Job& job, const Setup& setup, Force load, double s) {
    MemberChecks out;
    if (!screwPushes(job) || !setup.members.thread)
        return out;
    // On a bar or block the back's own check has it.
    if (job.back && (job.back->kind == job::BackKind::Bar || job.back->kind == job::BackKind::Block))
        return out;
    const bool onBolt = job.back && job.back->kind == job::BackKind::StopBolt;
    const Length point = pointDiameterOf(job, *setup.members.thread);
    const Length bore = !onBolt && job.hub ? job.hub->shaftBore.value_or(Length()) : Length();
    const auto shaft = shaftSteel(job, out);
    if (!shaft)
        return out;
    // On a stop bolt the point stands on its head; a soft one is dented before the shaft.
    std::optional<material::ScrewGrade> bolt;
    if (onBolt)
        if (const auto thread = thread::parse(job.back->thread))
            if (const auto grade =
                    material::findScrewGrade(job.back->grade.empty() ? "unknown" : job.back->grade, *thread))
                bolt = *grade;
    const material::Material weaker = weakerOf(weakerOf(*shaft, bolt, say("stop bolt")), setup.members.screw);
    const double hammer = hammerFactorOf(job);
    Check check = bearingCheck("point.bearing", "screw point", say("Screw point on the shaft"), load * hammer,
                               point, bore, weaker, s, job.preferred);
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    if (bore >= point) {
        check.grade = Grade::Breaks;
        check.basis = say("the shaft is bored %1 and the point is %2 across: it has nothing to push on; put "
                          "a plug or a stop bolt in the shaft's end",
                          {show(bore), show(point)});
        check.source = say("geometry");
    } else if (hammer > 1) {
        check.basis = say(kHammerWords, {check.basis});
    }
    out.checks.push_back(check);
    return out;
}

} // namespace pw::loadpath
