#include "app/engine/tool.h"

#include "core/job/process.h"
#include "core/job/station_places.h"
#include "core/loadpath/members.h"
#include "core/units/format.h"
#include "core/util/say.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::engine {

namespace {

using units::Length;
using units::show;

/// Stations on holes: for each station the hole it lies in, and how far off the worst is, once the tool is
/// turned.
struct Match {
    double turn = 0; ///< radians, of the part's stations into the tool's coordinates
    double worst = 1e300;
    std::vector<std::size_t> holes;
};

shape::Point turned(shape::Point p, double angle) {
    const double c = std::cos(angle), s = std::sin(angle);
    return {c * p.x - s * p.y, s * p.x + c * p.y};
}

Match matchAt(const std::vector<shape::Point>& stations, const std::vector<shape::Point>& holes,
              double turn) {
    Match match{turn, 0, {}};
    for (shape::Point station : stations) {
        const shape::Point at = turned(station, turn);
        const auto nearest =
            std::min_element(holes.begin(), holes.end(), [&](shape::Point a, shape::Point b) {
                return shape::distance(a, at) < shape::distance(b, at);
            });
        const std::size_t hole = static_cast<std::size_t>(nearest - holes.begin());
        if (std::find(match.holes.begin(), match.holes.end(), hole) != match.holes.end())
            match.worst = 1e300; // two stations in one hole
        match.holes.push_back(hole);
        match.worst = std::max(match.worst, shape::distance(*nearest, at));
    }
    return match;
}

/// Turned so that the first station comes under each hole in turn; the best of them.
Match bestMatch(const std::vector<shape::Point>& stations, const std::vector<shape::Point>& holes) {
    Match best;
    const shape::Point first = stations.front();
    for (shape::Point hole : holes) {
        const double turn = std::atan2(hole.y, hole.x) - std::atan2(first.y, first.x);
        if (Match match = matchAt(stations, holes, turn); match.worst < best.worst - 1e-9)
            best = std::move(match);
    }
    return best;
}

/// The tool's plate on the part, its holes all there, loaded where a station is.
job::Job combined(const job::Job& tool, const job::Job& part, const Match& match,
                  const std::vector<shape::Point>& holes) {
    job::Job both = part;
    both.plate = tool.plate;
    both.centre = tool.centre;
    both.cutting = tool.cutting;
    both.keepClear.clear(); // in the part's own coordinates, not turned
    both.stations.accessHole = tool.stations.accessHole;
    both.stations.hole = tool.stations.hole;
    if (!both.stations.land)
        both.stations.land = part.stations.retainer ? part.stations.retainer : tool.stations.land;
    both.stations.at.clear();
    both.stations.count.reset();
    both.stations.circle.reset();
    both.stations.start.reset();
    both.stations.loaded.assign(holes.size(), false);
    both.load.share.assign(part.load.share.empty() ? 0 : holes.size(), 0);
    for (shape::Point hole : holes)
        both.stations.at.push_back({Length::fromMm(hole.x), Length::fromMm(hole.y)});
    for (std::size_t i = 0; i < match.holes.size(); ++i) {
        both.stations.loaded[match.holes[i]] = part.stations.loaded.empty() || part.stations.loaded[i];
        if (!part.load.share.empty())
            both.load.share[match.holes[i]] = part.load.share[i];
    }
    if (tool.screw) {
        if (!both.screw)
            both.screw.emplace();
        job::Screw& screw = *both.screw;
        screw.washerOutside = tool.screw->washerOutside;
        screw.washerThickness = tool.screw->washerThickness;
        screw.wrench = tool.screw->wrench;
        screw.handPull = tool.screw->handPull;
        screw.lubrication = tool.screw->lubrication;
        // A screw in the tool's own thread or nut belongs to the tool; a stud in the shaft to the part.
        if (loadpath::intoOf(tool) != job::Into::Shaft) {
            screw.thread = tool.screw->thread;
            screw.grade = tool.screw->grade;
            screw.turns = tool.screw->turns;
            screw.into = tool.screw->into;
            screw.engagement = tool.screw->engagement;
            screw.pointDiameter = tool.screw->pointDiameter;
        }
    }
    both.ram = tool.ram;
    both.legs = tool.legs;
    const job::ProcessHabits habits = job::habitsOf(tool.cutting.process.value_or(job::Process::PlasmaTable));
    both.cutting.layoutError =
        tool.cutting.layoutError.value_or(habits.layoutError) + Length::fromMm(match.worst);
    return both;
}

/// What keeps the tool off the part, and what of it is only to be minded.
std::vector<std::string> obstacles(const job::Job& tool, const job::Job& part, const Match& match) {
    std::vector<std::string> found;
    const auto text = [&](auto q) { return show(q, part.preferred); };
    const auto hole = tool.stations.accessHole;
    const auto pass = part.stations.keeper ? part.stations.keeper : part.stations.pin;
    const Length off = Length::fromMm(match.worst);
    if (hole && pass && *hole - off * 2.0 < *pass)
        found.push_back(say("the stations lie %1 off the tool's holes of %2: %3 does not pass",
                            {text(off), text(*hole), text(*pass)}));
    else if (hole && !pass && off > *hole * 0.25)
        found.push_back(say("the stations lie %1 off the tool's holes of %2", {text(off), text(*hole)}));
    if (loadpath::intoOf(tool) == job::Into::Shaft && part.screw && tool.plate.bore)
        if (const auto thread = thread::parse(part.screw->thread);
            thread && thread->diameter > *tool.plate.bore)
            found.push_back(say("the part's %1 does not pass the tool's bore of %2",
                                {thread->name, text(*tool.plate.bore)}));
    if (part.hub && part.hub->bolts && hole)
        if (const auto bolt = thread::parse(part.hub->bolts->thread);
            bolt && bolt->diameter > *hole - off * 2.0)
            found.push_back(
                off.mm() > 0.05
                    ? say("bolts %1 do not pass the tool's holes of %2, which lie %3 off",
                          {bolt->name, text(*hole), text(off)})
                    : say("bolts %1 do not pass the tool's holes of %2", {bolt->name, text(*hole)}));
    return found;
}

/// What the rated load hangs on: the weakest member, or springs that go solid before it is reached.
std::string firstToGive(const Report& report) {
    const verdict::Check* weakest = nullptr;
    for (const verdict::Check& check : report.checks)
        if (check.kind == verdict::CheckKind::Force && check.grade != verdict::Grade::Incomplete &&
            check.id != "plate.set" && check.marginOverWanted() &&
            (!weakest || *check.marginOverWanted() < *weakest->marginOverWanted()))
            weakest = &check;
    if (!weakest || !report.screw.ratedLoad || !report.load.total)
        return {};
    const units::Force carried = report.load.total->high * *weakest->marginOverWanted();
    if (*report.screw.ratedLoad < carried * (1 - 1e-6))
        return say("the springs of its own job, which go solid there; the tool itself carries more");
    return weakest->title;
}

} // namespace

ToolLimits limitsOf(const job::Job& tool, const CheckOptions& options) {
    CheckOptions plain = options;
    plain.mend = plain.spread = false;
    const Report report = check(tool, plain);
    ToolLimits limits{tool.preferred, report.title, report.grade, report.reason};
    limits.rated = report.screw.ratedLoad;
    limits.stop = report.screw.stopTorque;
    limits.ratedBy = firstToGive(report);
    int loaded = static_cast<int>(report.stations.size());
    if (!tool.stations.loaded.empty())
        loaded = static_cast<int>(std::count(tool.stations.loaded.begin(), tool.stations.loaded.end(), true));
    if (limits.rated && loaded > 0)
        limits.perStation = *limits.rated / static_cast<double>(loaded);
    return limits;
}

OtherUse tryTool(const job::Job& tool, const job::Job& part, const std::string& name,
                 const CheckOptions& options) {
    OtherUse use;
    use.name = name;
    const auto no = [&](std::string why) {
        use.reasons.push_back(std::move(why));
        return use;
    };
    if (tool.work.value_or(job::Work::Compress) != part.work.value_or(job::Work::Compress))
        return no(part.work == job::Work::Pull ? say("that job pulls, the tool squeezes")
                                               : say("that job squeezes, the tool pulls"));
    const std::vector<shape::Point> holes = job::stationCentres(tool.stations),
                                    stations = job::stationCentres(part.stations);
    if (holes.empty() || stations.empty())
        return no(say("stations are missing in one of the two jobs"));
    if (stations.size() > holes.size())
        return no(say("the part has %1 stations, the tool %2 holes", {stations.size(), holes.size()}));
    const Match match = bestMatch(stations, holes);
    if (match.worst > 1e200)
        return no(say("its stations do not come under different holes"));
    use.turnDegrees = std::remainder(match.turn, 2 * std::numbers::pi) * 180 / std::numbers::pi;
    use.reasons = obstacles(tool, part, match);
    if (!use.reasons.empty())
        return use;
    use.fits = true;
    if (match.worst > 0.05)
        use.reasons.push_back(say("the stations lie up to %1 off the holes",
                                  {show(Length::fromMm(match.worst), part.preferred)}));
    CheckOptions plain = options;
    plain.mend = plain.spread = false;
    const Report report = check(combined(tool, part, match, holes), plain);
    use.grade = report.grade;
    use.reason = report.reason;
    return use;
}

jobfile::Tree toTree(const ToolLimits& limits, const std::vector<OtherUse>& uses) {
    using jobfile::Tree;
    Tree t = Tree::object();
    t["platewright"] = 1;
    t["title"] = limits.title;
    t["verdict"] = verdict::wordOf(limits.grade);
    t["reason"] = limits.reason;
    t["rated_load_N"] = limits.rated ? Tree(limits.rated->newton()) : Tree();
    t["per_station_N"] = limits.perStation ? Tree(limits.perStation->newton()) : Tree();
    t["rated_by"] = limits.ratedBy.empty() ? Tree() : Tree(limits.ratedBy);
    t["stop_torque_Nm"] = limits.stop ? Tree(limits.stop->newtonM()) : Tree();
    Tree& jobs = t["jobs"] = Tree::list();
    for (const OtherUse& use : uses) {
        Tree item = Tree::object();
        item["name"] = use.name;
        item["fits"] = use.fits;
        item["turn_deg"] = use.turnDegrees ? Tree(*use.turnDegrees) : Tree();
        item["verdict"] = use.fits ? Tree(verdict::wordOf(use.grade)) : Tree();
        item["reason"] = use.reason.empty() ? Tree() : Tree(use.reason);
        Tree& reasons = item["notes"] = Tree::list();
        for (const std::string& reason : use.reasons)
            reasons.push(Tree(reason));
        jobs.push(std::move(item));
    }
    return t;
}

std::string toWords(const ToolLimits& limits, const std::vector<OtherUse>& uses) {
    std::string out;
    if (!limits.title.empty())
        out += limits.title + "\n\n";
    if (!limits.rated)
        return out + "Its own job has no answer yet: " + limits.reason + "\n";
    out += "May be used up to " + show(*limits.rated, limits.preferred) + " in all";
    if (limits.perStation)
        out += ", " + show(*limits.perStation, limits.preferred) + " at each station that carries";
    out += ".\n";
    if (!limits.ratedBy.empty())
        out += "First to give: " + limits.ratedBy + ".\n";
    if (limits.stop)
        out += "Stop at " + show(*limits.stop, limits.preferred) + " on the wrench.\n";
    if (limits.grade == verdict::Grade::Sets || limits.grade == verdict::Grade::Breaks)
        out +=
            "On its own job it " + std::string(verdict::wordOf(limits.grade)) + ": " + limits.reason + "\n";
    if (!uses.empty())
        out += "\nOther jobs\n";
    for (const OtherUse& use : uses) {
        out += "  " + std::string(use.fits ? verdict::wordOf(use.grade) : "no") + "  " + use.name + "\n";
        if (use.fits && use.turnDegrees && std::abs(*use.turnDegrees) > 0.5)
            out += "      turned by " + units::number(*use.turnDegrees) + " degrees\n";
        for (const std::string& reason : use.reasons)
            out += "      " + reason + "\n";
        if (use.fits && !use.reason.empty())
            out += "      " + use.reason + "\n";
    }
    return out;
}

} // namespace pw::engine
