#include "geometry/placement/fit.h"

#include "geometry/outline/offset.h"
#include "geometry/placement/rest.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::placement {

namespace {

constexpr double kPi = std::numbers::pi;

/// Sides shorter than this, mm, are not laid against one another.
constexpr double kLeastEdge = 15;
constexpr std::size_t kMostTurns = 8;

bool isNear(double a, double b, double period, double within) {
    const double off = std::remainder(a - b, period > 0 ? period : 2 * kPi);
    return std::abs(off) < within;
}

/// Turns that lay a straight side of the plate along one of the piece, long sides first.
std::vector<double> turnsAlongEdges(const shape::Loop& plate, const shape::Loop& piece, double period) {
    struct Edge {
        double length, angle;
    };
    const auto edges = [](const shape::Loop& loop) {
        std::vector<Edge> found;
        for (std::size_t i = 0; i < loop.size(); ++i) {
            const shape::Side side = loop.side(i);
            if (!side.isArc() && side.length() >= kLeastEdge)
                found.push_back(
                    {side.length(), std::atan2(side.to.y - side.from.y, side.to.x - side.from.x)});
        }
        std::ranges::sort(found, [](const Edge& a, const Edge& b) { return a.length > b.length; });
        return found;
    };
    std::vector<double> turns;
    const auto ours = edges(plate), theirs = edges(piece);
    for (const Edge& their : theirs)
        for (const Edge& our : ours) {
            double turn = std::fmod(their.angle - our.angle, period);
            if (turn < 0)
                turn += period;
            if (turns.size() < kMostTurns &&
                std::ranges::none_of(turns, [&](double t) { return isNear(t, turn, period, 0.01); }))
                turns.push_back(turn);
        }
    return turns;
}

class Fitter {
public:
    Fitter(const shape::Region& plate, const Stock& stock, const Spacing& spacing, const FitOptions& options)
        : m_plate(plate), m_stock(stock), m_spacing(spacing), m_options(options),
          m_cut(polygonOf(cutLoop(plate, spacing.kerf), Side::Around, 0.2)),
          m_middle(shape::centroid(stock.rim)), m_area(area(stock)) {
        m_limits.tolerance = options.tolerance;
        m_limits.stop = options.stop;
        if (!options.thorough) {
            m_limits.extraLooks = 40;
            m_limits.mostPlaces = 3;
        }
    }

    FitAnswer run() {
        const Slack slack(m_plate, m_stock, m_spacing);
        SearchResult found = findPlaces(slack, m_limits);
        m_answer.settled = found.settled;
        consider(slack, found.places, std::nullopt);
        tryHolesAsBore();
        m_answer.stopped = m_options.stop && m_options.stop();
        if (m_answer.place) {
            m_answer.settled = true;
            if (!m_options.thorough)
                weigh(*m_answer.place);
        }
        if (!m_answer.place && !m_answer.stopped)
            sayWhatIsShort(slack, found.best);
        return m_answer;
    }

private:
    void consider(const Slack& slack, const std::vector<Spot>& places, std::optional<std::size_t> bore) {
        if (places.empty())
            return;
        std::vector<Spot> starts = places;
        m_aligned.clear();
        if (slack.period() > 0 && !bore)
            for (const double turn : turnsAlongEdges(m_plate.rim, m_stock.rim, slack.period())) {
                SearchLimits limits = m_limits;
                limits.mostLooks = 4000;
                limits.extraLooks = 40;
                limits.mostPlaces = 2;
                m_aligned.push_back(turn);
                for (const Spot& spot : findPlaces(slack, limits, turn).places)
                    starts.push_back(spot);
                if (!m_options.thorough && starts.size() > places.size() + 3)
                    break;
            }
        // Where edges can be laid along edges, only the roomiest of the other turns are of interest.
        if (starts.size() > places.size())
            starts.erase(starts.begin() +
                             static_cast<std::ptrdiff_t>(std::min<std::size_t>(3, places.size())),
                         starts.begin() + static_cast<std::ptrdiff_t>(places.size()));
        m_tried.clear();
        for (const Spot& start : starts) {
            tryAt(slack, start, bore);
            if (bore) // it lies where the hole is
                continue;
            if (m_options.towards) {
                tryAt(slack, pushed(slack, start, *m_options.towards), bore);
                continue;
            }
            const int directions = m_options.thorough ? 8 : 4;
            for (int k = 0; k < directions; ++k)
                tryAt(slack,
                      pushed(slack, start, (k + 0.5) * 2 * kPi / directions, m_options.thorough ? 0.02 : 0.5),
                      bore);
        }
    }

    void tryAt(const Slack& slack, const Spot& spot, std::optional<std::size_t> bore) {
        if (m_options.stop && m_options.stop())
            return;
        for (const Spot& other : m_tried)
            if (shape::distance(other.pivot, spot.pivot) < 1 && std::abs(other.turn - spot.turn) < 0.01)
                return;
        m_tried.push_back(spot);
        Placement place;
        place.pose = slack.poseOf(spot.pivot, spot.turn);
        place.bore = bore;
        if (bore)
            place.boreDiameter = 2 * shape::asCircle(m_stock.obstacles[*bore].loop)->radius;
        if (m_options.thorough)
            weigh(place);
        else // the further from the middle of the piece, the more is left in one
            place.worth = shape::distance(spot.pivot, m_middle) * kRoughly;
        // Along an edge is easier to lay out and leaves straight sides.
        if (slack.period() > 0 && !m_aligned.empty() && std::ranges::none_of(m_aligned, [&](double t) {
                return isNear(t, spot.turn, slack.period(), 1e-6);
            }))
            place.worth -= kAskew * shape::signedArea(m_plate.rim);
        place.spare = std::max(spot.slack, 0.0);
        if (m_answer.place && !isBetter(place, *m_answer.place))
            return;
        // Turned only where that is needed.
        const Pose straight = slack.poseOf(spot.pivot, 0);
        if (shape::asCircle(m_plate.rim) && spot.turn != 0 &&
            fits(m_plate, m_stock, m_spacing, straight, bore))
            place.pose = straight;
        else if (!fits(m_plate, m_stock, m_spacing, place.pose, bore)) // the last word, by exact distances
            return;
        m_answer.place = place;
    }

    void weigh(Placement& place) const {
        std::vector<Point> cut = m_cut;
        for (Point& p : cut)
            p = place.pose.at + shape::rotated(p, place.pose.turn);
        const Rest rest = restOf(m_stock, {cut}, m_options.thorough ? 0.2 : 0.3, m_options.usableWidth);
        place.usable = rest.usable;
        place.biggest = rest.biggest;
        place.worth = rest.worth - (rest.usable - rest.biggest) / 2;
        place.waste = std::max(0.0, m_area - shape::signedArea(m_plate.rim) - place.usable);
    }

    bool isBetter(const Placement& a, const Placement& b) const {
        if (m_options.towards) {
            const Point along = shape::polar(1, *m_options.towards);
            return shape::dot(a.pose.at, along) > shape::dot(b.pose.at, along);
        }
        constexpr double kSameArea =
            kRoughly / 10; // mm2: no difference to anybody, and the polygons are no truer
        if (std::abs(a.worth - b.worth) > kSameArea)
            return a.worth > b.worth;
        return a.bore && !b.bore; // one hole less to make
    }

    void tryHolesAsBore() {
        const auto bore = std::ranges::find(m_plate.holes, shape::Part::Bore, &shape::Hole::part);
        if (bore == m_plate.holes.end())
            return;
        const auto wanted = shape::asCircle(bore->loop);
        for (std::size_t i = 0; wanted && i < m_stock.obstacles.size(); ++i) {
            const auto hole = shape::asCircle(m_stock.obstacles[i].loop);
            if (!hole || !m_stock.obstacles[i].isHole || hole->radius < wanted->radius - kBoreUnder / 2 ||
                hole->radius > wanted->radius * kBoreOver)
                continue;
            const Slack slack(m_plate, m_stock, m_spacing, i);
            SearchLimits limits = m_limits;
            limits.mostLooks = 20000;
            const Point middle = slack.pivotOf({{}, 0}); // of the plate, from its own origin
            if (shape::norm(middle - wanted->centre) < 1e-6) {
                consider(slack, findPlaces(slack, limits, std::nullopt, hole->centre).places, i);
                continue;
            }
            // The bore is off the middle: every turn has its own place.
            const double span = slack.period() > 0 ? slack.period() : 2 * kPi;
            std::vector<Spot> places;
            const int steps = 360;
            for (int k = 0; k < steps; ++k) {
                const double turn = span * k / steps;
                const Pose pose{hole->centre - shape::rotated(wanted->centre, turn), turn};
                const Point pivot = slack.pivotOf(pose);
                if (const double there = slack.at(pivot, turn, 0); there >= 0)
                    places.push_back({pivot, turn, there});
            }
            consider(slack, places, i);
        }
    }

    void sayWhatIsShort(const Slack& slack, const Spot& best) {
        const double reach = std::max(slack.bounds().width(), slack.bounds().height()) / 8;
        const auto nearest = [&](const Slack& s, const Spot& from) {
            return eased(s, from, std::max(reach, 1.0), 0.01, s.period() > 0);
        };
        const Spot spot = nearest(slack, best);
        m_answer.nearest = slack.poseOf(spot.pivot, spot.turn);
        m_answer.missing = std::max(0.0, -2 * spot.slack);
        m_answer.shortOf = ShortOf::Size;
        if (m_stock.obstacles.empty())
            return;
        const auto fitsWithout = [&](bool holes) {
            Stock bare{m_stock.rim, {}};
            for (const Obstacle& thing : m_stock.obstacles)
                if (thing.isHole != holes)
                    bare.obstacles.push_back(thing);
            if (bare.obstacles.size() == m_stock.obstacles.size())
                return false;
            SearchLimits limits = m_limits;
            limits.mostLooks = 20000;
            limits.extraLooks = 0;
            const Slack without(m_plate, bare, m_spacing);
            return !findPlaces(without, limits).places.empty();
        };
        if (fitsWithout(false))
            m_answer.shortOf = ShortOf::BadAreas;
        else if (fitsWithout(true))
            m_answer.shortOf = ShortOf::Holes;
        else {
            SearchLimits limits = m_limits;
            limits.mostLooks = 20000;
            const Stock bare{m_stock.rim, {}};
            const Slack without(m_plate, bare, m_spacing);
            const SearchResult alone = findPlaces(without, limits);
            if (!alone.places.empty()) {
                m_answer.shortOf = ShortOf::Holes; // and bad areas together
                return;
            }
            const Spot bareSpot = nearest(without, alone.best);
            m_answer.missing = std::max(0.0, -2 * bareSpot.slack);
        }
    }

    static constexpr double kAskew = 0.05;  ///< of the plate's area that a place askew to every edge costs
    static constexpr double kRoughly = 200; ///< mm2 a millimetre is held to be worth

    const shape::Region& m_plate;
    const Stock& m_stock;
    const Spacing& m_spacing;
    const FitOptions& m_options;
    std::vector<Point> m_cut;
    Point m_middle;
    double m_area;
    SearchLimits m_limits;
    std::vector<Spot> m_tried;
    std::vector<double> m_aligned; ///< turns along an edge
    FitAnswer m_answer;
};

} // namespace

shape::Loop cutLoop(const shape::Region& plate, double kerf) {
    if (kerf <= 0)
        return plate.rim;
    if (const auto circle = shape::asCircle(plate.rim))
        return shape::circleLoop(circle->centre, circle->radius + kerf);
    const auto grown = outline::offsetLoop(plate.rim, kerf);
    if (!grown || grown->loops.empty())
        return plate.rim;
    return *std::ranges::max_element(grown->loops, {}, shape::signedArea);
}

Stock withCut(const Stock& stock, const shape::Loop& cut) {
    Stock left{stock.rim, {}};
    for (const Obstacle& thing : stock.obstacles)
        if (shape::crosses(cut, thing.loop) || !shape::contains(cut, thing.loop.vertices.front().at))
            left.obstacles.push_back(thing);
    left.obstacles.push_back({cut, true, 0});
    return left;
}

FitAnswer fitPlate(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
                   const FitOptions& options) {
    return Fitter(plate, stock, spacing, options).run();
}

std::vector<Placement> fitSeveral(const shape::Region& plate, const Stock& stock, const Spacing& spacing,
                                  std::size_t most, const FitOptions& options) {
    const auto oneByOne = [&](const FitOptions& each) {
        std::vector<Placement> places;
        Stock left = stock;
        while (places.size() < most) {
            const FitAnswer answer = fitPlate(plate, left, spacing, each);
            if (!answer.place || answer.stopped)
                break;
            places.push_back(*answer.place);
            left = withCut(left, placed(cutLoop(plate, spacing.kerf), answer.place->pose));
        }
        return places;
    };
    std::vector<Placement> best = oneByOne(options);
    // Each where it wastes least may leave the next one no room; packed from one end there may be.
    for (int k = 0; k < 8 && best.size() < most; ++k) {
        FitOptions packed = options;
        packed.towards = (k + 0.5) * kPi / 4;
        if (std::vector<Placement> places = oneByOne(packed); places.size() > best.size())
            best = std::move(places);
    }
    return best;
}

} // namespace pw::placement
