#include "geometry/exchange/cut_path.h"

#include "core/job/process.h"
#include "core/shape/split.h"
#include "core/util/require.h"
#include "geometry/exchange/cut_order.h"
#include "geometry/exchange/lead.h"
#include "geometry/outline/offset.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace pw::exchange {

using shape::Loop;
using shape::Point;
using shape::Region;
using shape::Side;

namespace {

constexpr double kHeatReach = 3; ///< thicknesses

/// The same closed curve, beginning at a place on one of its sides.
Loop begunAt(const Loop& loop, std::size_t index, double t) {
    const Side side = loop.side(index);
    const auto [before, after] = splitAt(side, side.pointAt(t));
    Loop out{{{after.from, after.bulge}}};
    for (std::size_t k = 1; k < loop.size(); ++k)
        out.vertices.push_back(loop.vertices[(index + k) % loop.size()]);
    out.vertices.push_back({before.from, before.bulge});
    // A circle stays two halves, exactly.
    if (const auto circle = asCircle(loop)) {
        const double bulge = side.bulge > 0 ? 1 : -1;
        return {{{after.from, bulge}, {circle->centre * 2 - after.from, bulge}}};
    }
    return out;
}

/// A torch line before it has a start.
struct Line {
    Loop loop; ///< in the direction of travel
    bool outside = false;
    CutEdge edge;
};

class PathMaker {
public:
    PathMaker(const std::vector<Region>& plates, const CutSettings& settings) : m_plates(plates) {
        m_path.settings = settings;
        m_kerf = settings.kerf.mm();
        m_rules = {std::max(2 * m_kerf, settings.thickness.mm() / 2), m_kerf, m_kerf, m_kerf / 2};
    }

    util::Status layLines() {
        for (std::size_t plate = 0; plate < m_plates.size(); ++plate) {
            CutPlan plan = makeCutPlan(m_plates[plate], m_path.settings);
            for (DrilledHole& hole : plan.drilled)
                m_path.drilled.push_back(std::move(hole));
            m_lines.emplace_back();
            for (CutEdge& edge : plan.inside) {
                if (!edge.note.empty()) {
                    saw(std::move(edge));
                    continue;
                }
                if (const auto status = layInside(plate, edge); !status)
                    return status;
            }
            if (const auto status = layOutside(plate, plan.outside); !status)
                return status;
        }
        return util::Done{};
    }

    /// Cuts of a plate in the order of their turn, the outside last.
    void startCuts() {
        for (const auto& lines : m_lines)
            for (const Line& line : lines)
                m_allLoops.push_back(line.loop);
        m_burns.resize(m_plates.size());
        for (std::size_t plate = 0; plate < m_plates.size(); ++plate)
            for (const Line& line : m_lines[plate])
                start(plate, line);
    }

    CutPath finish(const CutRates& rates) {
        m_path.extents = extents();
        Point at = m_path.extents.low;
        for (const std::size_t plate : platesInTurn(at))
            takeInTurn(plate, at);
        m_path.rates = rates;
        at = m_path.extents.low;
        for (const Burn& burn : m_path.burns) {
            m_path.travelLength += distance(at, burn.pierce());
            m_path.cutLength += burn.length();
            at = burn.end();
        }
        m_path.seconds = m_path.cutLength / rates.feed * 60 + m_path.travelLength / rates.travel * 60 +
                         static_cast<double>(m_path.burns.size()) * rates.pierceSeconds;
        return std::move(m_path);
    }

private:
    std::string called(std::size_t plate, const CutEdge& edge) const {
        const std::string of = m_plates.size() > 1 ? " of plate " + std::to_string(plate + 1) : std::string();
        return nameOf(edge.part, edge.index) + of;
    }

    void note(std::string text) {
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
        if (std::find(m_path.notes.begin(), m_path.notes.end(), text) == m_path.notes.end())
            m_path.notes.push_back(std::move(text));
    }

    /// A shaped hole that is not burned: pilot centres where it has round ends.
    void saw(CutEdge edge) {
        if (std::find(m_path.sawn.begin(), m_path.sawn.end(), edge) != m_path.sawn.end())
            return;
        for (std::size_t i = 0; i < edge.loop.size(); ++i) {
            const Side side = edge.loop.side(i);
            if (std::abs(side.bulge - 1) > 1e-6)
                continue;
            const shape::Circle end = side.circle();
            m_path.drilled.push_back({end.centre, Length::fromMm(2 * end.radius), edge.part, edge.index,
                                      "end of a slot, saw and file between"});
        }
        m_path.sawn.push_back(std::move(edge));
    }

    /// What cannot be pierced is drilled or sawn.
    void giveUp(std::size_t plate, const CutEdge& edge, const std::string& why) {
        if (const auto circle = asCircle(edge.loop)) {
            m_path.drilled.push_back(
                {circle->centre, Length::fromMm(2 * circle->radius), edge.part, edge.index, why});
            return;
        }
        note(called(plate, edge) + ": " + why + ". Drill, saw and file it.");
        saw(edge);
    }

    util::Status layInside(std::size_t plate, const CutEdge& edge) {
        const auto offset = outline::offsetLoop(edge.loop, -m_kerf / 2);
        if (!offset)
            return util::Problem{called(plate, edge), offset.problem().message};
        if (offset->loops.empty()) {
            giveUp(plate, edge, "narrower than the cut");
            return util::Done{};
        }
        if (offset->loops.size() > 1)
            note(called(plate, edge) + ": a neck of it is narrower than the cut. It is cut as " +
                 std::to_string(offset->loops.size()) + " holes; saw out what is left between.");
        else if (!offset->lost.empty())
            note(called(plate, edge) +
                 ": where it is narrower than the cut, or rounded more tightly, it is left out.");
        for (const Loop& loop : offset->loops)
            m_lines[plate].push_back({loop, false, edge});
        return util::Done{};
    }

    util::Status layOutside(std::size_t plate, const CutEdge& edge) {
        const auto offset = outline::offsetLoop(edge.loop, m_kerf / 2);
        if (!offset)
            return util::Problem{called(plate, edge), offset.problem().message};
        if (!offset->lost.empty())
            note(called(plate, edge) + ": where a slot or corner of it is narrower than the cut, or rounded "
                                       "more tightly, it is left out.");
        for (const Loop& loop : offset->loops) {
            // A pocket behind a mouth too narrow for the cut is burned out like a hole.
            const bool outside = signedArea(loop) > 0;
            m_lines[plate].push_back({reversed(loop), outside, edge});
        }
        return util::Done{};
    }

    void start(std::size_t plate, const Line& line) {
        std::vector<Loop> others, behind;
        for (const Loop& loop : m_allLoops)
            if (!(loop == line.loop))
                others.push_back(loop);
        if (!(line.edge.loop == m_plates[plate].rim))
            behind.push_back(m_plates[plate].rim);
        for (const shape::Hole& hole : m_plates[plate].holes)
            if (!(hole.loop == line.edge.loop))
                behind.push_back(hole.loop);
        const auto lead = findLead(line.loop, m_rules, m_plates, others, behind);
        if (!lead) {
            if (line.outside)
                m_blocked.push_back(called(plate, line.edge));
            else
                giveUp(plate, line.edge, "no room to pierce inside it");
            return;
        }
        if (!lead->out && !line.outside)
            note(called(plate, line.edge) +
                 ": too small for a lead-in that bends; it is pierced in the middle "
                 "and the lead is straight.");
        m_burns[plate].push_back({lead->in, begunAt(line.loop, lead->side, lead->at), lead->out, line.outside,
                                  plate, line.edge.part, line.edge.index});
    }

    shape::Box extents() const {
        std::vector<Loop> all = m_allLoops;
        for (const auto& burns : m_burns)
            for (const Burn& burn : burns) {
                all.push_back({{{burn.leadIn.from, burn.leadIn.bulge}, {burn.leadIn.to, 0}}});
                if (burn.leadOut)
                    all.push_back({{{burn.leadOut->from, burn.leadOut->bulge}, {burn.leadOut->to, 0}}});
            }
        shape::Box box = shape::bounds(all.front());
        for (const Loop& loop : all) {
            const shape::Box b = bounds(loop);
            box.low = {std::min(box.low.x, b.low.x), std::min(box.low.y, b.low.y)};
            box.high = {std::max(box.high.x, b.high.x), std::max(box.high.y, b.high.y)};
        }
        return box;
    }

    /// Plates that lie in a hole of another first, then the nearest.
    std::vector<std::size_t> platesInTurn(Point from) const {
        const auto depth = [&](std::size_t plate) {
            const Point on = m_plates[plate].rim.vertices.front().at;
            return std::count_if(m_plates.begin(), m_plates.end(), [&](const Region& other) {
                return &other != &m_plates[plate] && contains(other.rim, on);
            });
        };
        const auto away = [&](std::size_t plate) { return distance(from, centroid(m_plates[plate].rim)); };
        std::vector<std::size_t> turn(m_plates.size());
        std::iota(turn.begin(), turn.end(), std::size_t{0});
        std::stable_sort(turn.begin(), turn.end(), [&](std::size_t a, std::size_t b) {
            return depth(a) != depth(b) ? depth(a) > depth(b) : away(a) < away(b) - 1e-6;
        });
        return turn;
    }

    void takeInTurn(std::size_t plate, Point& at) {
        for (const bool outside : {false, true}) {
            std::vector<const Burn*> burns;
            std::vector<CutPlace> places;
            for (const Burn& burn : m_burns[plate])
                if (burn.outside == outside) {
                    burns.push_back(&burn);
                    places.push_back({burn.pierce(), burn.end(), &burn.loop});
                }
            for (const std::size_t next : cutOrder(places, at, kHeatReach * m_path.settings.thickness.mm())) {
                m_path.burns.push_back(*burns[next]);
                at = burns[next]->end();
            }
        }
    }

public:
    const std::vector<std::string>& blocked() const { return m_blocked; }

private:
    const std::vector<Region>& m_plates;
    CutPath m_path;
    double m_kerf = 0;
    LeadRules m_rules;
    std::vector<std::vector<Line>> m_lines; ///< for each plate
    std::vector<Loop> m_allLoops;
    std::vector<std::vector<Burn>> m_burns; ///< for each plate
    std::vector<std::string> m_blocked;     ///< outsides without room for a pierce
};

std::optional<util::Problem> problemOf(const std::vector<Region>& plates, const CutSettings& settings,
                                       const CutRates& rates) {
    if (settings.process == job::Process::SawAndDrill || settings.process == job::Process::Milled)
        return util::Problem{"cutting.process", "no path for a torch: nothing is burned with \"" +
                                                    std::string(job::nameOf(settings.process)) +
                                                    "\". Say \"plasma table\" or \"torch table\", or write "
                                                    "the finished size"};
    const double kerf = settings.kerf.mm();
    if (!(kerf > 0))
        return util::Problem{"cutting.kerf", "a torch takes a width away; give it like 1.5 mm"};
    if (!(rates.feed > 0) || !(rates.pierceSeconds >= 0) || !(rates.travel > 0))
        return util::Problem{"", "the feed must be above zero and the pierce time not below it"};
    for (std::size_t i = 0; i < plates.size(); ++i)
        for (std::size_t j = i + 1; j < plates.size(); ++j) {
            const Point onI = plates[i].rim.vertices.front().at, onJ = plates[j].rim.vertices.front().at;
            if (clearance(plates[i].rim, plates[j].rim) < kerf || containsMaterial(plates[i], onJ) ||
                containsMaterial(plates[j], onI))
                return util::Problem{"", "plates " + std::to_string(i + 1) + " and " + std::to_string(j + 1) +
                                             " overlap or are less than a kerf apart; move one of them"};
        }
    return std::nullopt;
}

} // namespace

double Burn::length() const {
    return leadIn.length() + perimeter(loop) + (leadOut ? leadOut->length() : 0);
}

std::string nameOf(shape::Part part, int index) {
    switch (part) {
    case shape::Part::Rim:
        return "outside";
    case shape::Part::Bore:
        return "bore";
    case shape::Part::Access:
        return "access hole " + std::to_string(index + 1);
    case shape::Part::Extra:
        return "hole " + std::to_string(index + 1);
    }
    throw util::Bug("a part without a name");
}

util::Result<CutPath> makeCutPath(const std::vector<Region>& plates, const CutSettings& settings,
                                  const CutRates& rates) {
    util::require(!plates.empty(), "makeCutPath: no plate");
    if (auto problem = problemOf(plates, settings, rates))
        return *std::move(problem);
    PathMaker maker(plates, settings);
    if (const auto status = maker.layLines(); !status)
        return status.problem();
    maker.startCuts();
    if (!maker.blocked().empty())
        return util::Problem{"", maker.blocked().front() +
                                     ": no room to pierce beside it; move the plates further apart"};
    return maker.finish(rates);
}

} // namespace pw::exchange
