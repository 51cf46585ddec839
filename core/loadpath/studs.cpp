#include "core/loadpath/studs.h"

#include "core/loadpath/beam.h"
#include "core/loadpath/factors.h"
#include "core/loadpath/members.h"
#include "core/loadpath/screw.h"
#include "core/material/grades.h"
#include "core/material/material.h"
#include "core/thread/thread.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <numbers>

namespace pw::loadpath {

namespace {

using verdict::CheckKind;

constexpr double kPassRoom = 0.4;                ///< mm, ISO 273 fine from M8 to M12, from memory
constexpr double kEdgeOfDiameter = 1.25;         ///< AISC 360 Table J3.4, from memory
constexpr const char* kWeakestHub = "cast iron"; ///< its weakest grade

/// A rod's thread and grade, or why not.
struct Rod {
    std::optional<thread::Thread> thread;
    std::optional<material::ScrewGrade> grade;
};

Rod rodOf(const std::string& thread, const std::string& grade, const std::string& section, double strength,
          MemberChecks& out) {
    Rod rod;
    if (thread.empty())
        return rod;
    if (auto found = thread::parse(thread))
        rod.thread = *found;
    else
        out.problems.push_back({section + ".thread", found.problem().message});
    if (!rod.thread)
        return rod;
    if (grade.empty())
        out.assumptions.push_back(say("grade of the %1 not given: taken as the weakest sold",
                                      {say(section.substr(section.rfind('.') + 1).c_str())}));
    if (auto found = material::findScrewGrade(grade.empty() ? "unknown" : grade, *rod.thread)) {
        rod.grade = *found;
        rod.grade->proof = rod.grade->proof * strength;
        rod.grade->yield = rod.grade->yield * strength;
        rod.grade->ultimate = rod.grade->ultimate * strength;
    } else {
        out.problems.push_back({section + ".grade", found.problem().message});
    }
    return rod;
}

std::string hotWords(double strength) {
    return strength < 1 ? say(", %1 of it left hot (EN 1993-1-2 Annex D)", {units::number(strength)}) : "";
}

/// Force of the worst rod against a stress on its stress area, in `words` of these figures.
Check tensionCheck(const std::string& id, const std::string& member, const std::string& title,
                   const std::string& rods, const Rod& rod, int count, Force load, Stress limit,
                   const char* words, double s, units::System system) {
    const Force worst = load * worstShare(count);
    const units::Area area = thread::tensileStressArea(*rod.thread);
    Check check =
        strengthCheck(id, member, title, Rule::Sudden, worst.newton(), (limit * area).newton(), "N", s);
    const auto show = [&](auto q) { return units::show(q, system); };
    check.basis = say(words, {count, rod.thread->name, show(worst), shareWords(count, say(rods.c_str())),
                              show(limit), show(area), show(limit * area), rod.grade->name});
    check.source =
        say("stress area ASME B1.1 / ISO 898-1; uneven share: common practice, no published source; %1",
            {rod.grade->source});
    return check;
}

/// One bolt at each station that is not left empty.
int carryingStations(const job::Stations& stations) {
    if (!stations.loaded.empty())
        return static_cast<int>(std::count(stations.loaded.begin(), stations.loaded.end(), true));
    return !stations.at.empty() ? static_cast<int>(stations.at.size()) : stations.count.value_or(0);
}

std::optional<Length> stationRadius(const job::Job& job) {
    if (job.stations.circle)
        return *job.stations.circle / 2.0;
    return std::nullopt;
}

std::optional<Check> boltEdgeCheck(const job::Job& job, const thread::Thread& thread) {
    const auto circle = stationRadius(job);
    if (!circle || !job.hub->outside)
        return std::nullopt; // nothing said about how near the rim they are
    const Length edge = *job.hub->outside / 2.0 - *circle, wanted = thread.diameter * kEdgeOfDiameter;
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    Check check;
    check.id = "bolts.edge";
    check.member = "hub";
    check.title = say("Bolts to the hub's rim");
    check.kind = CheckKind::Fit;
    check.unit = "mm";
    check.demand = wanted.mm();
    check.capacity = edge.mm();
    check.margin = edge.mm();
    check.wanted = wanted.mm();
    check.grade = edge <= thread.diameter / 2.0 ? Grade::Breaks : edge < wanted ? Grade::Thin : Grade::Holds;
    check.basis =
        say("from a bolt's middle to the hub's rim: %1 / 2 - %2 = %3, wanted 1.25 x %4 = %5",
            {show(*job.hub->outside), show(*circle), show(edge), show(thread.diameter), show(wanted)});
    check.source = say("AISC 360 Table J3.4, least edge distance (from memory)");
    return check;
}

} // namespace

std::optional<Check> passCheck(const job::Job& job, const std::string& name, const std::string& rods) {
    const auto thread = thread::parse(name);
    if (!thread || !job.stations.accessHole)
        return std::nullopt;
    const Length hole = *job.stations.accessHole, room = hole - thread->diameter,
                 wanted = Length::fromMm(kPassRoom);
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    Check check;
    check.id = "access.bolt";
    check.member = rods;
    check.title = say("Room for the %1", {say(rods.c_str())});
    check.kind = CheckKind::Fit;
    check.unit = "mm";
    check.demand = thread->diameter.mm();
    check.capacity = hole.mm();
    check.margin = room.mm();
    check.wanted = wanted.mm();
    check.grade = room < Length() ? Grade::Breaks : room < wanted * (1 - 1e-9) ? Grade::Thin : Grade::Holds;
    check.basis = say(
        "%1 through a hole of %2: %3",
        {thread->name, show(hole),
         room < Length() ? say("does not pass") : say("%1 of room, %2 wanted", {show(room), show(wanted)})});
    check.source = say("clearance of ISO 273, fine (from memory)");
    return check;
}

double worstShare(int count) {
    if (count <= 1)
        return 1;
    return count == 2 ? 0.6 : 1.0 / (count - 1);
}

std::string shareWords(int count, const std::string& rods) {
    if (count <= 1)
        return say("all of it");
    if (count == 2)
        return say("0.6 of it, two %1 never share evenly", {rods});
    return say("1/%1 of it, one of the %2 slack", {count - 1, rods});
}

MemberChecks boltChecks(const job::Job& job, Force load, double s, double strength) {
    MemberChecks out;
    if (!job.hub || !job.hub->bolts)
        return out;
    const job::Bolts& bolts = *job.hub->bolts;
    const auto missing = [&](const std::string& id, const std::string& title, const std::string& what) {
        out.checks.push_back(incompleteCheck(id, "puller bolts", title, CheckKind::Force, what));
    };
    const std::string proofTitle = say("Puller bolts"), threadTitle = say("Bolt threads in the hub");
    const Rod rod = rodOf(bolts.thread, bolts.grade, "hub.bolts", strength, out);
    int count = bolts.count.value_or(0);
    if (count == 0)
        count = carryingStations(job.stations);
    if (!rod.thread || !rod.grade || count <= 0) {
        const std::string what =
            count <= 0    ? say("how many bolts go into the hub is not given: count them")
            : !rod.thread ? say("the puller bolts' thread is not given, M12 or 1/2-13 for one: try a screw "
                                "in the hub's holes")
                          : say("the puller bolts' grade is not known: read the marks on their heads");
        missing("bolts.proof", proofTitle, what);
        missing("bolts.thread", threadTitle, what);
        return out;
    }
    Check proof = tensionCheck(
        "bolts.proof", "puller bolts", proofTitle, "bolts", rod, count, load, rod.grade->proof,
        PW_SAY("%1 x %2, the worst takes %3 (%4) against proof %5 x %6 = %7 (%8)"), s, job.preferred);
    proof.basis += hotWords(strength);
    out.checks.push_back(proof);

    job::Material iron;
    iron.name = kWeakestHub;
    if (!job.hub->hubMaterial)
        out.assumptions.push_back(say("the hub's material is not given: taken as plain cast iron"));
    const auto hub = material::resolve(job.hub->hubMaterial.value_or(iron));
    if (!hub)
        out.problems.push_back({"hub.hub_material", hub.problem().message});
    if (!bolts.engagement) {
        missing("bolts.thread", threadTitle,
                say("how deep the bolts go into the hub is not given: count their turns in and multiply by "
                    "the pitch"));
    } else if (hub) {
        StripInputs in;
        in.id = "bolts.thread";
        in.member = "hub";
        in.title = threadTitle;
        in.thread = *rod.thread;
        in.engagement = *bolts.engagement;
        in.screw = *rod.grade;
        in.inside = *hub;
        in.condition = bolts.threadCondition.value_or(job::ThreadCondition::Good);
        in.load = load * worstShare(count);
        in.s = s;
        in.system = job.preferred;
        Check check = stripCheck(in);
        check.basis = say("%1, %2", {check.basis, shareWords(count, say("bolts"))});
        out.checks.push_back(check);
    }
    if (auto edge = boltEdgeCheck(job, *rod.thread))
        out.checks.push_back(*edge);
    if (auto pass = passCheck(job, bolts.thread, "bolts"))
        out.checks.push_back(*pass);
    return out;
}

namespace {

Check feetCheck(const job::Job& job, const Rod& rod, int count, Force load, const material::Material& plate,
                double s) {
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    const auto hexagon = thread::standardHexagon(*rod.thread);
    const auto washer = thread::standardWasher(*rod.thread);
    const Length face =
        (hexagon ? hexagon->nutAcrossFlats : rod.thread->diameter * kFlatsOfDiameter) * kFaceOfFlats;
    Length outside = face;
    if (washer)
        outside = std::min(washer->outside, face + washer->thickness * 2.0);
    const Length hole = job.stations.accessHole.value_or(rod.thread->diameter);
    const double o = outside.mm(), h = hole.mm();
    const units::Area area = units::Area::fromMm2(std::max(0.0, std::numbers::pi / 4 * (o * o - h * h)));
    const Force worst = load * worstShare(count), capacity = plate.yield * kBearingOfYield * area;
    Check check = strengthCheck("legs.feet", "legs", say("Legs, their nuts on the plate"), Rule::Ductile,
                                worst.newton(), capacity.newton(), "N", s);
    check.basis =
        h >= o
            ? say("the leg's nut and washer, %1, fall through the hole of %2: use a larger, thicker washer",
                  {show(outside), show(hole)})
            : say("%1 on a ring %2 to %3, %4, against 1.8 x yield %5 (%6)",
                  {show(worst), show(hole), show(outside), show(area), show(plate.yield), plate.name});
    check.source = say("AISC 360 J7, bearing 1.8 x yield (from memory); %1", {plate.source});
    return check;
}

/// Width of a bar or rectangle across its length; none for other outlines.
std::optional<Length> barWidth(const job::Job& job) {
    if (!job.plate.outline)
        return std::nullopt;
    const job::Outline& outline = *job.plate.outline;
    const bool isBar =
        outline.shape == job::OutlineShape::Bar || outline.shape == job::OutlineShape::Rectangle;
    return isBar ? outline.width : std::nullopt;
}

std::optional<Check> strongbackCheck(const job::Job& job, int count, Force load,
                                     const material::Material& plate, double s) {
    const auto width = barWidth(job);
    const auto span = job.legs->span ? job.legs->span : job.stations.circle;
    if (count != 2 || !width || !span || !job.plate.thickness)
        return std::nullopt; // no beam: the field solution alone answers
    Length bore = job.plate.bore.value_or(Length());
    if (const auto thread = thread::parse(job.plate.boreThread); !job.plate.boreThread.empty() && thread)
        bore = thread->diameter;
    const double stacked = job.plate.stacked.value_or(1);
    const Beam beam{*span, *width, *job.plate.thickness, bore};
    const auto show = [&](auto q) { return units::show(q, job.preferred); };
    if (!hasSection(beam)) {
        Check check = strengthCheck("legs.bending", "strongback", say("Strongback as a beam"), Rule::Ductile,
                                    load.newton(), 0, "N", s);
        check.basis = say("the bore %1 is as wide as the bar %2", {show(bore), show(*width)});
        check.source = say("geometry");
        return check;
    }
    const Stress stress = netStress(beam, load / stacked);
    Check check = strengthCheck("legs.bending", "strongback", say("Strongback as a beam"), Rule::Ductile,
                                stress.mpa(), plate.yield.mpa(), "MPa", s);
    const std::string section =
        stacked > 1 ? say("(%1 - %2) x %3^2 / 6 of %4 loose bars",
                          {show(*width), show(bore), show(*job.plate.thickness), units::number(stacked)})
                    : say("(%1 - %2) x %3^2 / 6", {show(*width), show(bore), show(*job.plate.thickness)});
    check.basis = say("%1 in the middle of %2: F L / 4 = %3 on %4 = %5 against yield %6 (%7)",
                      {show(load), show(*span), show(midMoment(beam, load)), section, show(stress),
                       show(plate.yield), plate.name});
    check.source = say("beam on two supports, Roark 7th ed. Table 8.1; %1", {plate.source});
    return check;
}

} // namespace

MemberChecks legChecks(const job::Job& job, const material::Material& plate, Force load, double s,
                       double strength) {
    MemberChecks out;
    if (!job.legs)
        return out;
    const job::Legs& legs = *job.legs;
    const Rod rod = rodOf(legs.thread, legs.grade, "legs", strength, out);
    const int count = legs.count.value_or(2);
    if (!legs.count)
        out.assumptions.push_back(say("the strongback stands on two legs"));
    if (!rod.thread || !rod.grade) {
        out.checks.push_back(
            incompleteCheck("legs.tension", "legs", say("Legs"), CheckKind::Force,
                            !rod.thread ? say("the legs' thread is not given, M16 or 5/8-11 for one: measure "
                                              "across and count the pitch")
                                        : say("the legs' grade is not known: read the marks on their ends")));
    } else {
        Check check = tensionCheck(
            "legs.tension", "legs", say("Legs"), "legs", rod, count, load, rod.grade->yield,
            PW_SAY("%1 x %2, the worst takes %3 (%4) against yield %5 x %6 = %7 (%8)"), s, job.preferred);
        check.basis += hotWords(strength);
        out.checks.push_back(check);
        out.checks.push_back(feetCheck(job, rod, count, load, plate, s));
    }
    if (auto pass = passCheck(job, legs.thread, "legs"); pass && !(job.hub && job.hub->bolts))
        out.checks.push_back(*pass);
    if (auto beam = strongbackCheck(job, count, load, plate, s))
        out.checks.push_back(*beam);
    return out;
}

} // namespace pw::loadpath
