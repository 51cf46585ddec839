#include "geometry/outline/hole_checks.h"

#include "core/shape/nearest.h"
#include "core/util/say.h"

#include <utility>

namespace pw::outline {

using shape::Hole;
using shape::Loop;
using shape::Part;

namespace {

constexpr double kTouching = 2e-3; ///< mm; thinner material is none, to a cutter and to the mesher

std::string nameOf(const Hole& hole) {
    switch (hole.part) {
    case Part::Bore:
        return say("the bore");
    case Part::Access:
        return say("the access hole of station %1", {hole.index + 1});
    default:
        return say("extra hole %1", {hole.index + 1});
    }
}

std::string fieldOf(const Hole& hole, const std::string& boreField) {
    switch (hole.part) {
    case Part::Bore:
        return boreField;
    case Part::Access:
        return "stations.access_hole";
    default:
        return std::string("plate.holes[") + std::to_string(hole.index) + "]";
    }
}

enum class Standing { Inside, Across, Outside, Around };

Standing placeOf(const Loop& rim, const Loop& hole) {
    if (shape::clearance(rim, hole) <= kTouching)
        return Standing::Across;
    if (shape::contains(rim, hole.vertices.front().at))
        return Standing::Inside;
    return shape::contains(hole, rim.vertices.front().at) ? Standing::Around : Standing::Outside;
}

std::string mendOf(const Hole& hole) {
    switch (hole.part) {
    case Part::Bore:
        return say("make the bore smaller or the plate larger (its origin is the bore centre)");
    case Part::Access:
        return say("make the hole or stations.circle smaller, or the plate larger");
    default:
        return say("move it inward or make it smaller");
    }
}

std::string mendOf(const Hole& a, const Hole& b) {
    if (a.part == Part::Bore && b.part == Part::Access)
        return say("make the bore or the access holes smaller, or stations.circle larger");
    return say("move one of them or make it smaller");
}

/// What is wrong, of one hole and of the access holes of several stations; %1 the hole or the stations, %2
/// the mend, %3 the other hole.
struct Verb {
    const char* one;
    const char* many;
};
constexpr Verb kRunsOver{PW_SAY("%1 runs over the rim; %2"),
                         PW_SAY("the access holes of stations %1 run over the rim; %2")};
constexpr Verb kLiesOutside{PW_SAY("%1 lies outside the plate; %2"),
                            PW_SAY("the access holes of stations %1 lie outside the plate; %2")};
constexpr Verb kIsLarger{PW_SAY("%1 is larger than the plate; %2"),
                         PW_SAY("the access holes of stations %1 are larger than the plate; %2")};
constexpr Verb kRunsInto{PW_SAY("%1 runs into %3; %2"),
                         PW_SAY("the access holes of stations %1 run into %3; %2")};
constexpr Verb kLiesWithin{PW_SAY("%1 lies within or around %3; %2"),
                           PW_SAY("the access holes of stations %1 lie within or around %3; %2")};

/// Stations fail by the half dozen: one message for all that have the same fault.
class Faults {
public:
    explicit Faults(const std::string& boreField) : m_boreField(boreField) {}

    void add(const Hole& hole, const Verb& verb, const std::string& mend, const std::string& other = {}) {
        const std::string number = std::to_string(hole.index + 1);
        for (Entry& e : m_entries)
            if (hole.part == Part::Access && e.isAccess && e.verb.one == verb.one && e.other == other) {
                e.stations.push_back(number);
                return;
            }
        m_entries.push_back({fieldOf(hole, m_boreField),
                             nameOf(hole),
                             verb,
                             mend,
                             other,
                             hole.part == Part::Access,
                             {number}});
    }

    void addNeighbours(const Hole& a, const Hole& b) {
        m_pairs.push_back(say("%1 and %2", {a.index + 1, b.index + 1}));
    }

    util::Problems problems() const {
        util::Problems out;
        for (const Entry& e : m_entries) {
            const bool many = e.stations.size() > 1;
            out.push_back({e.field, many ? say(e.verb.many, {sayAll(e.stations), e.mend, e.other})
                                         : say(e.verb.one, {e.name, e.mend, e.other})});
        }
        if (!m_pairs.empty()) {
            std::string pairs;
            for (const std::string& pair : m_pairs)
                pairs += (pairs.empty() ? "" : ", ") + pair;
            out.push_back({"stations.access_hole", say("the access holes of stations %1 run into each other; "
                                                       "make the holes smaller or stations.circle larger",
                                                       {pairs})});
        }
        return out;
    }

private:
    struct Entry {
        std::string field, name;
        Verb verb;
        std::string mend, other;
        bool isAccess;
        std::vector<std::string> stations;
    };
    const std::string& m_boreField;
    std::vector<Entry> m_entries;
    std::vector<std::string> m_pairs;
};

} // namespace

util::Problems checkHoles(const shape::Region& region, const std::string& boreField) {
    Faults faults(boreField);
    for (const Hole& hole : region.holes) {
        const auto add = [&](const Verb& verb) { faults.add(hole, verb, mendOf(hole)); };
        switch (placeOf(region.rim, hole.loop)) {
        case Standing::Inside:
            break;
        case Standing::Across:
            add(kRunsOver);
            break;
        case Standing::Outside:
            add(kLiesOutside);
            break;
        case Standing::Around:
            add(kIsLarger);
            break;
        }
    }
    for (std::size_t i = 0; i < region.holes.size(); ++i)
        for (std::size_t j = i + 1; j < region.holes.size(); ++j) {
            const Hole &a = region.holes[i], &b = region.holes[j];
            const bool meet = shape::clearance(a.loop, b.loop) <= kTouching;
            const bool within = !meet && (shape::contains(a.loop, b.loop.vertices.front().at) ||
                                          shape::contains(b.loop, a.loop.vertices.front().at));
            if (!meet && !within)
                continue;
            if (a.part == Part::Access && b.part == Part::Access)
                faults.addNeighbours(a, b);
            else if (meet)
                faults.add(b, kRunsInto, mendOf(a, b), nameOf(a));
            else
                faults.add(b, kLiesWithin, mendOf(a, b), nameOf(a));
        }
    return faults.problems();
}

} // namespace pw::outline
