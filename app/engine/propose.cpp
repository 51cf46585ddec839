#include "app/engine/propose.h"

#include "app/engine/advice.h"
#include "app/engine/model_cache.h"
#include "app/engine/write.h"
#include "core/job/assumed.h"
#include "core/job/station_places.h"
#include "core/jobfile/read.h"
#include "core/jobfile/words.h"
#include "core/loadpath/fit.h"
#include "core/loadpath/setup.h"
#include "core/material/stock.h"
#include "core/thread/thread.h"
#include "core/util/say.h"

#include <algorithm>
#include <atomic>
#include <bit>
#include <cmath>
#include <future>
#include <mutex>

namespace pw::engine {

namespace {

using jobfile::Tree;
using units::Length;
using verdict::Grade;

// Room and steel as the checks ask for them (core/loadpath/fit). Common practice, no published source.
constexpr double kKeeperRoom = 3, kLand = 1, kLigament = 5, kLigamentOfThickness = 0.5; // mm
constexpr double kWasherToHoles = 1; ///< mm between a washer and the access holes
constexpr std::size_t kMostProposals = 4;

/// A figure rounded up to what a rule or drill set shows, as a person would write it.
class Rounding {
public:
    explicit Rounding(units::System system) : m_inch(system == units::System::Inch) {}

    /// `fine`: holes and bores; else outsides.
    double up(double mm, bool fine) const { return std::ceil(mm / step(fine) - 1e-6) * step(fine); }
    double down(double mm, bool fine) const { return std::floor(mm / step(fine) + 1e-6) * step(fine); }

    Tree write(double mm) const {
        if (!m_inch)
            return jobfile::describe(Tree(std::round(mm * 100) / 100)) + " mm";
        const double parts = std::round(mm / units::kMmPerInch * 16);
        if (std::abs(parts / 16 * units::kMmPerInch - mm) > 1e-6)
            return jobfile::describe(Tree(std::round(mm / units::kMmPerInch * 1000) / 1000)) + " in";
        return units::plainBlanks(units::writtenInchFraction(Length::fromMm(mm)));
    }

private:
    double step(bool fine) const { return m_inch ? units::kMmPerInch / (fine ? 16 : 8) : fine ? 0.5 : 2.0; }
    bool m_inch;
};

/// Diameter of a clearance hole. ISO 273, medium series (from memory); inch screws by the same step.
double clearanceHole(double screw) {
    return screw + (screw <= 5 ? 0.5 : screw < 14 ? 1 : screw < 18 ? 1.5 : screw < 30 ? 2 : 3);
}

struct Washer {
    double outside = 0, thickness = 0;
    bool thick = false;
};

/// What every proposal starts from.
struct Start {
    Tree tree;
    job::Job job;
    double radius = 0; ///< of the furthest station
    double circle = 0; ///< pin circle, twice the nearest station's radius
    int count = 0;
    double land = 0, hole = 0, bore = 0;
    std::vector<Washer> washers; ///< empty: the bearing is stated and stays
};

/// One plate to find the thickness of.
struct Idea {
    bool isBar = false;
    bool wide = false; ///< a rim further out than it need be
    std::optional<Washer> washer;
};

class Proposer {
public:
    Proposer(const Tree& tree, const CheckOptions& options, std::optional<units::System> system)
        : m_options(options) {
        m_options.mend = m_options.spread = false;
        m_options.at.clear();
        m_start.tree = tree;
        m_start.job = jobfile::readJob(tree).job;
        if (system)
            m_start.job.preferred = *system;
        m_all.preferred = m_start.job.preferred;
    }

    Proposals run() {
        if (!begin()) {
            addOtherWants();
            return std::move(m_all);
        }
        std::vector<Idea> ideas;
        std::vector<std::optional<Washer>> washers(m_start.washers.begin(), m_start.washers.end());
        if (washers.empty())
            washers.push_back(std::nullopt);
        for (const auto& washer : washers) {
            ideas.push_back({false, false, washer});
            if (canBeBar())
                ideas.push_back({true, false, washer});
        }
        ideas.push_back({false, true, washers.back()});
        m_trials = static_cast<double>(ideas.size() * trialsOfOne());
        std::vector<std::optional<Proposal>> found(ideas.size());
        const auto work = [&](std::size_t first) {
            for (std::size_t i = first; i < ideas.size(); i += 2)
                found[i] = thinnest(ideas[i]);
        };
        auto other = std::async(std::launch::async, work, 1);
        try {
            work(0);
        } catch (...) {
            other.wait();
            throw;
        }
        other.get();
        for (auto& proposal : found)
            if (proposal)
                m_all.best.push_back(std::move(*proposal));
        choose();
        if (m_all.best.empty())
            sayWhyNot(changesFor(ideas.front(), material::stockThicknesses(m_start.job.preferred).back()));
        return std::move(m_all);
    }

private:
    void need(const char* field) { m_all.missing.push_back(missingFigure(field)); }

    job::Job jobWith(const std::vector<JobChange>& changes) const {
        job::Job job = jobfile::readJob(withChanges(m_start.tree, changes)).job;
        job.preferred = m_start.job.preferred;
        return job;
    }

    /// What else the check would ask for later, so that all of it can be measured in one go. What is found
    /// here is no want.
    void addOtherWants() {
        CheckOptions quick = m_options;
        quick.bend = false;
        for (Missing& missing : check(m_start.job, quick).missing)
            if (!missing.field.starts_with("plate.") && missing.field != "stations.access_hole" &&
                std::ranges::find(m_all.missing, missing.field, &Missing::field) == m_all.missing.end())
                m_all.missing.push_back(std::move(missing));
    }

    /// Nothing could be checked whole: what keeps the check from it, plate and holes taken as given.
    void sayWhyNot(const std::vector<JobChange>& changes) {
        CheckOptions quick = m_options;
        quick.bend = false;
        const Report report = check(jobWith(changes), quick);
        m_all.missing = report.missing;
        if (m_all.missing.empty())
            m_all.trouble = report.problems.empty() ? report.reason : util::toText(report.problems.front());
    }

    /// The part of all trials that is done, from trials that run two at a time.
    bool tell(double part, const std::string& what) {
        if (!m_options.progress)
            return true;
        const std::scoped_lock lock(m_telling);
        m_told = std::max(m_told, std::min((m_done + part) / m_trials, 1.0));
        return m_options.progress(m_told, what);
    }

    /// Most halvings of the stock thicknesses.
    std::size_t trialsOfOne() const {
        return std::bit_width(material::stockThicknesses(m_start.job.preferred).size());
    }

    bool begin() {
        const job::Job& job = m_start.job;
        const auto stations = job::stationCentres(job.stations);
        if (stations.empty())
            need(job.stations.count ? "stations.circle" : "stations.count");
        m_start.count = static_cast<int>(stations.size());
        double nearest = 1e9;
        for (const shape::Point& p : stations) {
            m_start.radius = std::max(m_start.radius, shape::norm(p));
            nearest = std::min(nearest, shape::norm(p));
        }
        m_start.circle = 2 * nearest;
        const auto land = loadpath::landOf(job);
        if (!land)
            need("stations.land");
        else
            m_start.land = land->mm();
        const bool hole = findHole(), bore = findBore(); // whatever is missing is named
        return !stations.empty() && land && hole && bore;
    }

    /// Passes the keeper with room, and leaves a land that bears.
    bool findHole() {
        const job::Job& job = m_start.job;
        const Rounding rounding(job.preferred);
        if (job.stations.hole.shape != job::HoleShape::Round && !job.stations.accessHole) {
            need("stations.access_hole");
            return false;
        }
        const job::Assumed assumed = job::assume(job);
        const double most =
            m_start.land - 2 * (kLand + assumed.habits.layoutError.mm() + assumed.habits.growth.mm());
        double least = 0;
        if (job.work == job::Work::Pull) {
            const std::string& rods = job.hub && job.hub->bolts ? job.hub->bolts->thread
                                      : job.legs                ? job.legs->thread
                                                                : std::string();
            if (const auto thread = thread::parse(rods))
                least = clearanceHole(thread->diameter.mm());
        } else if (job.stations.keeper) {
            least = job.stations.keeper->mm() + kKeeperRoom;
        }
        if (least == 0) {
            if (!job.stations.accessHole) {
                need("stations.access_hole");
                return false;
            }
            m_start.hole = job.stations.accessHole->mm();
            return true;
        }
        // Easy for the pick where the land allows it, but no wider than a third over what the keeper needs.
        const double easy = job.work == job::Work::Pull ? least : std::min(least + 3, most);
        m_start.hole = std::max(rounding.up(least, true), rounding.down(easy, true));
        m_all.rules.push_back(
            say("Access holes pass the keeper or bolt with room and leave a land of 1 mm beside layout "
                "error and growth (common practice, no published source)."));
        return true;
    }

    bool findBore() {
        const job::Job& job = m_start.job;
        const Rounding rounding(job.preferred);
        const loadpath::Setup setup = loadpath::setUp(job);
        const auto thread =
            job.screw ? thread::parse(job.screw->thread) : util::Result<thread::Thread>(util::Problem{});
        const auto rod =
            job.ram ? thread::parse(job.ram->rod) : util::Result<thread::Thread>(util::Problem{});
        const bool tapped = !job.plate.boreThread.empty();
        if (tapped || (!thread && !rod)) {
            if (!tapped && !job.plate.bore) {
                need("screw.thread");
                return false;
            }
            m_start.bore = job.plate.bore ? job.plate.bore->mm() : 0;
            return true;
        }
        const double screw = thread ? thread->diameter.mm() : rod->diameter.mm();
        m_start.bore = rounding.up(clearanceHole(screw), true);
        m_all.rules.push_back(
            say("The bore is the screw's clearance hole, ISO 273 medium series (from memory)."));
        if (thread)
            addWashers(*thread, setup);
        return true;
    }

    void addWashers(const thread::Thread& thread, const loadpath::Setup& setup) {
        const Rounding rounding(m_start.job.preferred);
        const bool inch = m_start.job.preferred == units::System::Inch;
        const double most = m_start.circle - m_start.hole - 2 * kWasherToHoles;
        const auto standard = thread::standardWasher(thread);
        if (standard && standard->outside.mm() <= most)
            m_start.washers.push_back({standard->outside.mm(), standard->thickness.mm(), false});
        const auto hexagon = thread::standardHexagon(thread);
        const double face = setup.bearing && setup.bearing->nutFace > Length() ? setup.bearing->nutFace.mm()
                            : hexagon ? 0.95 * hexagon->nutAcrossFlats.mm()
                                      : 1.4 * thread.diameter.mm();
        const double thick = inch ? 3 * units::kMmPerInch / 8 : 10;
        // Wider than the nut face and twice its thickness it carries nothing there (MODEL of the centre
        // bearing).
        const double outside = rounding.down(std::min(face + 2 * thick, most), true);
        if (outside >= m_start.bore + 2 * thick &&
            (m_start.washers.empty() || outside > m_start.washers[0].outside))
            m_start.washers.push_back({outside, thick, true});
        if (!m_start.washers.empty())
            m_all.rules.push_back(
                say("A washer bears no further out than the nut's face and twice its thickness, and "
                    "stays clear of the access holes."));
    }

    bool canBeBar() const {
        const job::Job& job = m_start.job;
        if (m_start.count == 2)
            return job.stations.at.empty();
        return job.work != job::Work::Pull && m_start.count % 2 == 0 && job.stations.at.empty() &&
               job.load.share.empty();
    }

    std::vector<JobChange> changesFor(const Idea& idea, const material::StockThickness& stock) const {
        const Rounding rounding(m_start.job.preferred);
        const double ligament = std::max(kLigament, kLigamentOfThickness * stock.thickness.mm());
        const double across = std::max(m_start.land, m_start.hole + 2 * ligament);
        std::vector<JobChange> changes;
        Tree outline = Tree::object();
        if (idea.isBar) {
            outline["shape"] = "bar";
            outline["length"] = rounding.write(rounding.up(2 * m_start.radius + across, false));
            outline["width"] = rounding.write(rounding.up(
                std::max({across, m_start.bore + 2 * ligament, idea.washer ? idea.washer->outside : 0.0}),
                false));
            outline["ends"] = "round";
        } else {
            const double outside = 2 * m_start.radius + across * (idea.wide ? 1.5 : 1);
            outline["shape"] = "disc";
            outline["diameter"] = rounding.write(rounding.up(outside, false));
        }
        changes.emplace_back("plate.outline", std::move(outline));
        changes.emplace_back("plate.thickness", Tree(units::plainBlanks(stock.label)));
        changes.emplace_back("plate.stacked", Tree());
        changes.emplace_back("plate.holes", Tree());
        if (m_start.tree.at("piece"))
            changes.emplace_back("piece", Tree()); // another thickness: it does not come from there
        if (m_start.bore > 0 && m_start.job.plate.boreThread.empty())
            changes.emplace_back("plate.bore", rounding.write(m_start.bore));
        changes.emplace_back("stations.access_hole", rounding.write(m_start.hole));
        if (idea.washer) {
            changes.emplace_back("screw.washer_outside", rounding.write(idea.washer->outside));
            changes.emplace_back("screw.washer_thickness", rounding.write(idea.washer->thickness));
            changes.emplace_back("centre.bearing_outside", Tree());
            changes.emplace_back("centre.bearing_inside", Tree());
        }
        if (idea.isBar && m_start.count > 2) {
            changes.emplace_back("stations.count", Tree(2));
            changes.emplace_back("stations.start", Tree());
            changes.emplace_back("stations.loaded", Tree());
            if (const auto& total = m_start.job.load.total) {
                const double part = 2.0 / m_start.count;
                changes.emplace_back("load.total",
                                     Tree(Tree::List{std::round(total->low.newton() * part * 10) / 10,
                                                     std::round(total->high.newton() * part * 10) / 10}));
            }
        }
        return changes;
    }

    Proposal tryOne(const Idea& idea, const material::StockThickness& stock) {
        Proposal proposal;
        proposal.changes = changesFor(idea, stock);
        const job::Job made = jobWith(proposal.changes);
        const std::string thick = units::show(stock.thickness, m_start.job.preferred);
        const std::string what =
            idea.isBar ? say("Trying a bar, %1 thick", {thick}) : say("Trying a ring, %1 thick", {thick});
        CheckOptions options = m_options;
        options.progress = [&](double part, std::string_view) { return tell(part, what); };
        const Report report = check(made, options);
        ++m_done;
        proposal.grade = report.grade;
        proposal.thickness = stock.thickness;
        proposal.thicknessLabel = stock.label;
        proposal.region = report.region;
        proposal.massKg = report.plate.massKg;
        if (report.plate.field)
            proposal.deflectionMm = report.plate.field->deflectionMm;
        proposal.weakest = report.weakest;
        proposal.reason = report.reason;
        if (const verdict::Check* weakest = report.find(report.weakest))
            proposal.margin = weakest->marginOverWanted();
        return proposal;
    }

    /// The thinnest stock plate that holds; else the thinnest of the best verdict there is.
    std::optional<Proposal> thinnest(const Idea& idea) {
        const auto& stock = material::stockThicknesses(m_start.job.preferred);
        std::optional<Proposal> best;
        std::size_t low = 0, high = stock.size();
        // Halving: a thicker plate is no weaker. What ligaments and a pick's reach ask for goes the other
        // way, so that the answer is the best that was seen, not the last.
        while (low < high) {
            const std::size_t middle = (low + high) / 2;
            Proposal proposal = tryOne(idea, stock[middle]);
            const bool enough = proposal.grade == Grade::Holds;
            const bool tooThick = !enough && isForThickness(proposal.weakest);
            if (!best || isBetter(proposal, *best))
                best = std::move(proposal);
            if (enough || tooThick)
                high = middle;
            else
                low = middle + 1;
        }
        if (!best || best->grade == Grade::Incomplete)
            return std::nullopt;
        name(*best, idea);
        return best;
    }

    static bool isForThickness(const std::string& check) {
        return check == "access.keeper" || check == "plate.ligament";
    }

    static int rankOf(Grade grade) {
        return grade == Grade::Holds    ? 0
               : grade == Grade::Thin   ? 1
               : grade == Grade::Sets   ? 2
               : grade == Grade::Breaks ? 3
                                        : 4;
    }

    static bool isBetter(const Proposal& a, const Proposal& b) {
        if (rankOf(a.grade) != rankOf(b.grade))
            return rankOf(a.grade) < rankOf(b.grade);
        return a.thickness < b.thickness;
    }

    void name(Proposal& proposal, const Idea& idea) const {
        const job::Outline outline = *jobWith(proposal.changes).plate.outline;
        const auto show = [&](Length l) { return units::show(l, m_start.job.preferred); };
        proposal.stationsAtATime = idea.isBar ? 2 : m_start.count;
        if (idea.isBar)
            proposal.title = say("Bar, %1 by %2, %3 thick",
                                 {show(*outline.length), show(*outline.width), show(proposal.thickness)});
        else
            proposal.title =
                say("Full ring, %1 across, %2 thick", {show(*outline.diameter), show(proposal.thickness)});
        if (idea.isBar && m_start.count > 2)
            proposal.tradeOff =
                say("Least steel and quick to saw; takes two opposite stations at a time, so the work is "
                    "done %1 times over.",
                    {m_start.count / 2});
        else if (idea.isBar)
            proposal.tradeOff = say("Least steel and quick to saw.");
        else if (idea.wide)
            proposal.tradeOff =
                say("More rim outside the holes: stiffer and heavier, and needs a larger piece.");
        else
            proposal.tradeOff =
                say("All stations at once, with the rim no larger than lands and holes ask for.");
        if (idea.washer && idea.washer->thick)
            proposal.tradeOff += " " + say("Needs a thick washer of %1 by %2.",
                                           {show(Length::fromMm(idea.washer->outside)),
                                            show(Length::fromMm(idea.washer->thickness))});
    }

    /// The best few: what is no lighter, no thinner and no better than another of its kind goes.
    void choose() {
        auto& all = m_all.best;
        std::ranges::stable_sort(all, [](const Proposal& a, const Proposal& b) {
            if (rankOf(a.grade) != rankOf(b.grade))
                return rankOf(a.grade) < rankOf(b.grade);
            return a.massKg.value_or(1e9) < b.massKg.value_or(1e9);
        });
        std::vector<Proposal> kept;
        for (Proposal& proposal : all) {
            const bool beaten = std::ranges::any_of(kept, [&](const Proposal& other) {
                return other.stationsAtATime == proposal.stationsAtATime &&
                       rankOf(other.grade) <= rankOf(proposal.grade) &&
                       other.thickness <= proposal.thickness &&
                       other.massKg.value_or(0) <= proposal.massKg.value_or(0) &&
                       other.margin.value_or(0) >= proposal.margin.value_or(0);
            });
            if (!beaten && kept.size() < kMostProposals)
                kept.push_back(std::move(proposal));
        }
        all = std::move(kept);
    }

    CheckOptions m_options;
    Start m_start;
    Proposals m_all;
    std::mutex m_telling;
    std::atomic<int> m_done = 0; ///< trials
    double m_trials = 1, m_told = 0;
};

} // namespace

Tree withChanges(Tree job, const std::vector<JobChange>& changes) {
    for (const auto& [path, value] : changes)
        if (value.isNull())
            job.erase(path);
        else
            job.set(path, value);
    return job;
}

Proposals propose(const Tree& job, const CheckOptions& options, std::optional<units::System> system) {
    return Proposer(job, options, system).run();
}

Tree toTree(const Proposals& proposals) {
    Tree t = Tree::object();
    t["platewright"] = 1;
    Tree& list = t["proposals"] = Tree::list();
    const auto number = [](const Found<double>& value) {
        return value && std::isfinite(*value) ? Tree(*value) : Tree();
    };
    for (const Proposal& proposal : proposals.best) {
        Tree item = Tree::object();
        item["title"] = proposal.title;
        item["trade_off"] = proposal.tradeOff;
        item["verdict"] = verdict::wordOf(proposal.grade);
        item["margin"] = number(proposal.margin);
        item["weakest"] = proposal.weakest.empty() ? Tree() : Tree(proposal.weakest);
        item["reason"] = proposal.reason;
        item["thickness_mm"] = proposal.thickness.mm();
        item["mass_kg"] = number(proposal.massKg);
        item["deflection_mm"] = number(proposal.deflectionMm);
        item["stations_at_a_time"] = proposal.stationsAtATime;
        Tree& changes = item["changes"] = Tree::list();
        for (const auto& [path, value] : proposal.changes) {
            Tree change = Tree::object();
            change["field"] = path;
            change["value"] = value;
            changes.push(std::move(change));
        }
        list.push(std::move(item));
    }
    Tree& missing = t["missing"] = Tree::list();
    for (const Missing& m : proposals.missing) {
        Tree item = Tree::object();
        item["field"] = m.field;
        item["how"] = m.how;
        missing.push(std::move(item));
    }
    t["trouble"] = proposals.trouble.empty() ? Tree() : Tree(proposals.trouble);
    Tree& rules = t["rules"] = Tree::list();
    for (const std::string& rule : proposals.rules)
        rules.push(rule);
    return t;
}

std::string toWords(const Proposals& proposals) {
    std::string out;
    for (const Missing& missing : proposals.missing)
        out += missing.how + ".\n";
    int place = 0;
    for (const Proposal& proposal : proposals.best) {
        out += std::to_string(++place) + ". " + proposal.title + ": " +
               std::string(verdict::wordOf(proposal.grade));
        if (proposal.margin)
            out += ", " + say("%1 x what is wanted", {units::number(*proposal.margin, 2)});
        if (proposal.massKg)
            out += ", " + units::show(units::Mass::fromKg(*proposal.massKg), proposals.preferred);
        out += "\n   " + proposal.tradeOff + "\n";
        if (proposal.grade != Grade::Holds)
            out += "   " + proposal.reason + "\n";
        for (const auto& [path, value] : proposal.changes) {
            if (value.isNull())
                continue;
            std::string shown = value.text() ? *value.text() : "";
            if (const Tree::Object* group = value.members())
                for (const auto& [key, figure] : *group)
                    shown += (shown.empty() ? "" : ", ") + key + " " + (figure.text() ? *figure.text() : "");
            else if (const Tree::List* items = value.items(); items && items->size() == 2)
                shown = jobfile::describe((*items)[0]) + " to " + jobfile::describe((*items)[1]) + " N";
            else if (value.number())
                shown = jobfile::describe(value);
            out += "     " + path + ": " + shown + "\n";
        }
    }
    for (const std::string& rule : proposals.rules)
        out += rule + "\n";
    if (!proposals.trouble.empty())
        out += proposals.trouble + "\n";
    else if (proposals.best.empty() && proposals.missing.empty())
        out += say("No plate of these sizes can be checked; see what check says of the job.") + "\n";
    return units::plainBlanks(out);
}

} // namespace pw::engine
