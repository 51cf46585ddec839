#include "geometry/outline/hole_checks.h"

#include "core/shape/nearest.h"

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
        return "the bore";
    case Part::Access:
        return "the access hole of station " + std::to_string(hole.index + 1);
    default:
        return "extra hole " + std::to_string(hole.index + 1);
    }
}

std::string fieldOf(const Hole& hole, const std::string& boreField) {
    switch (hole.part) {
    case Part::Bore:
        return boreField;
    case Part::Access:
        return "stations.access_hole";
    default:
        return "plate.holes[" + std::to_string(hole.index) + "]";
    }
}

enum class Place { Inside, Across, Outside, Around };

Place placeOf(const Loop& rim, const Loop& hole) {
    if (shape::clearance(rim, hole) <= kTouching)
        return Place::Across;
    if (shape::contains(rim, hole.vertices.front().at))
        return Place::Inside;
    return shape::contains(hole, rim.vertices.front().at) ? Place::Around : Place::Outside;
}

const char* mendOf(const Hole& hole) {
    switch (hole.part) {
    case Part::Bore:
        return "; make the bore smaller or the plate larger (its origin is the bore centre)";
    case Part::Access:
        return "; make the hole or stations.circle smaller, or the plate larger";
    default:
        return "; move it inward or make it smaller";
    }
}

const char* mendOf(const Hole& a, const Hole& b) {
    if (a.part == Part::Bore && b.part == Part::Access)
        return "; make the bore or the access holes smaller, or stations.circle larger";
    return "; move one of them or make it smaller";
}

struct Verb {
    const char* one;
    const char* many;
};
constexpr Verb kRunsOver{"runs over the rim", "run over the rim"};
constexpr Verb kLiesOutside{"lies outside the plate", "lie outside the plate"};
constexpr Verb kIsLarger{"is larger than the plate", "are larger than the plate"};

/// Stations fail by the half dozen: one message for all that have the same fault.
class Faults {
public:
    explicit Faults(const std::string& boreField) : m_boreField(boreField) {}

    void add(const Hole& hole, const std::string& one, const std::string& many, const std::string& mend) {
        const std::string number = std::to_string(hole.index + 1);
        for (Entry& e : m_entries)
            if (hole.part == Part::Access && e.isAccess && e.one == one) {
                e.stations.push_back(number);
                return;
            }
        m_entries.push_back(
            {fieldOf(hole, m_boreField), nameOf(hole), one, many, mend, hole.part == Part::Access, {number}});
    }

    void addNeighbours(const Hole& a, const Hole& b) {
        m_pairs.push_back(std::to_string(a.index + 1) + " and " + std::to_string(b.index + 1));
    }

    util::Problems problems() const {
        util::Problems out;
        for (const Entry& e : m_entries) {
            const bool many = e.stations.size() > 1;
            out.push_back(
                {e.field, (many ? "the access holes of stations " + listed(e.stations) + " " + e.many
                                : e.name + " " + e.one) +
                              e.mend});
        }
        if (!m_pairs.empty()) {
            std::string pairs;
            for (const std::string& pair : m_pairs)
                pairs += (pairs.empty() ? "" : ", ") + pair;
            out.push_back({"stations.access_hole", "the access holes of stations " + pairs +
                                                       " run into each other; make the holes smaller or "
                                                       "stations.circle larger"});
        }
        return out;
    }

private:
    struct Entry {
        std::string field, name, one, many, mend;
        bool isAccess;
        std::vector<std::string> stations;
    };
    const std::string& m_boreField;
    std::vector<Entry> m_entries;
    std::vector<std::string> m_pairs;
};

} // namespace

std::string listed(const std::vector<std::string>& items) {
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i)
        out += (i == 0 ? "" : i + 1 == items.size() ? " and " : ", ") + items[i];
    return out;
}

util::Problems checkHoles(const shape::Region& region, const std::string& boreField) {
    Faults faults(boreField);
    for (const Hole& hole : region.holes) {
        const auto say = [&](const Verb& verb) { faults.add(hole, verb.one, verb.many, mendOf(hole)); };
        switch (placeOf(region.rim, hole.loop)) {
        case Place::Inside:
            break;
        case Place::Across:
            say(kRunsOver);
            break;
        case Place::Outside:
            say(kLiesOutside);
            break;
        case Place::Around:
            say(kIsLarger);
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
                faults.add(b, "runs into " + nameOf(a), "run into " + nameOf(a), mendOf(a, b));
            else
                faults.add(b, "lies within or around " + nameOf(a), "lie within or around " + nameOf(a),
                           mendOf(a, b));
        }
    return faults.problems();
}

} // namespace pw::outline
