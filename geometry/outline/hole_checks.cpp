#include "geometry/outline/hole_checks.h"

#include "core/shape/nearest.h"

#include <utility>

namespace pw::outline {

using shape::Hole;
using shape::Loop;
using shape::Part;

namespace {

constexpr double kTouching = 1e-6; ///< mm; thinner material is none

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
    if (a.part == Part::Access && b.part == Part::Access)
        return "; make the holes smaller or stations.circle larger";
    if (a.part == Part::Bore && b.part == Part::Access)
        return "; make the bore or the access holes smaller, or stations.circle larger";
    return "; move one of them or make it smaller";
}

/// Stations fail by the half dozen: one message for all that have the same fault.
class Grouped {
public:
    void add(const std::string& field, const std::string& what, const std::string& mend,
             const std::string& who) {
        for (Entry& e : m_entries)
            if (e.field == field && e.what == what && e.mend == mend) {
                e.who.push_back(who);
                return;
            }
        m_entries.push_back({field, what, mend, {who}});
    }

    util::Problems problems() const {
        util::Problems out;
        for (const Entry& e : m_entries)
            out.push_back({e.field, listed(e.who) + " " + e.what + e.mend});
        return out;
    }

private:
    struct Entry {
        std::string field, what, mend;
        std::vector<std::string> who;
    };
    std::vector<Entry> m_entries;
};

} // namespace

std::string listed(const std::vector<std::string>& items) {
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i)
        out += (i == 0 ? "" : i + 1 == items.size() ? " and " : ", ") + items[i];
    return out;
}

util::Problems checkHoles(const shape::Region& region, const std::string& boreField) {
    Grouped found;
    for (const Hole& hole : region.holes) {
        const auto say = [&](const char* what) {
            found.add(fieldOf(hole, boreField), what, mendOf(hole), nameOf(hole));
        };
        switch (placeOf(region.rim, hole.loop)) {
        case Place::Inside:
            break;
        case Place::Across:
            say("runs over the rim");
            break;
        case Place::Outside:
            say("lies outside the plate");
            break;
        case Place::Around:
            say("is larger than the plate");
            break;
        }
    }
    for (std::size_t i = 0; i < region.holes.size(); ++i)
        for (std::size_t j = i + 1; j < region.holes.size(); ++j) {
            const Hole &a = region.holes[i], &b = region.holes[j];
            const bool meet = shape::clearance(a.loop, b.loop) <= kTouching;
            const bool within = !meet && (shape::contains(a.loop, b.loop.vertices.front().at) ||
                                          shape::contains(b.loop, a.loop.vertices.front().at));
            if (meet || within)
                found.add(fieldOf(b, boreField),
                          meet ? "runs into " + nameOf(a) : "lies within or around " + nameOf(a),
                          mendOf(a, b), nameOf(b));
        }
    return found.problems();
}

} // namespace pw::outline
