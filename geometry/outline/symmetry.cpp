#include "geometry/outline/symmetry.h"

#include "core/shape/split.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace pw::outline {

using shape::Loop;
using shape::Point;
using std::numbers::pi;

namespace {

constexpr double kSameShape = 3e-8; ///< of the plate's size
constexpr double kSameForce = 1e-9;
constexpr double kSameBulge = 1e-6;
/// More sectors would save nothing worth having and make triangles thin at the bore.
constexpr int kMostTurns = 32;
/// Where the lines meet in material the triangles cannot be blunter than the sector.
constexpr int kMostTurnsAtSolidCentre = 6;

/// A turn about the origin, or a mirroring in a line through it.
struct Motion {
    bool mirror = false;
    double angle = 0; ///< of the turn, or of the line

    Point operator()(Point p) const {
        return mirror ? shape::rotated({p.x, -p.y}, 2 * angle) : shape::rotated(p, angle);
    }
    Loop operator()(const Loop& loop) const {
        return mirror ? shape::mirrored(loop, angle) : shape::turned(loop, angle);
    }
};

/// A hole or the rim, in a form that does not depend on where its list of vertices starts.
struct Feature {
    shape::Part part;
    Loop loop;
    std::optional<shape::Circle> circle;
    Point centre;
};

bool sameLoop(const Loop& a, const Loop& b, double within) {
    const std::size_t n = a.size();
    if (n != b.size())
        return false;
    for (std::size_t shift = 0; shift < n; ++shift) {
        bool same = true;
        for (std::size_t i = 0; i < n && same; ++i) {
            const shape::Vertex &p = a.vertices[i], &q = b.vertices[(i + shift) % n];
            same = shape::distance(p.at, q.at) <= within && std::abs(p.bulge - q.bulge) <= kSameBulge;
        }
        if (same)
            return true;
    }
    return false;
}

class Symmetry {
public:
    Symmetry(const shape::Region& region, const std::vector<LoadedPlace>& places) {
        add(region.rim, shape::Part::Rim);
        for (const shape::Hole& hole : region.holes)
            add(hole.loop, hole.part);
        const shape::Box box = shape::bounds(region.rim);
        m_within = kSameShape * std::max({std::abs(box.low.x), std::abs(box.low.y), std::abs(box.high.x),
                                          std::abs(box.high.y)});
        for (const LoadedPlace& place : places)
            if (place.force != 0)
                m_places.push_back(place);
    }

    bool holds(const Motion& motion) const {
        std::vector<bool> taken(m_places.size(), false);
        for (const LoadedPlace& place : m_places) {
            const Point image = motion(place.centre);
            std::size_t i = 0;
            for (; i < m_places.size(); ++i)
                if (!taken[i] && shape::distance(image, m_places[i].centre) <= m_within &&
                    std::abs(place.outside - m_places[i].outside) <= m_within &&
                    std::abs(place.force - m_places[i].force) <= kSameForce * std::abs(place.force))
                    break;
            if (i == m_places.size())
                return false;
            taken[i] = true;
        }
        // Loops of one region do not coincide, so an image that is found need not be marked as taken.
        return std::all_of(m_features.begin(), m_features.end(), [&](const Feature& f) {
            return std::any_of(m_features.begin(), m_features.end(),
                               [&](const Feature& g) { return maps(motion, f, g); });
        });
    }

    /// Points off the centre of which a motion of the plate onto itself can only swap one for another.
    std::vector<Point> landmarks() const {
        std::vector<Point> out;
        const auto add = [&](Point p) {
            if (shape::norm(p) > m_within)
                out.push_back(p);
        };
        for (const LoadedPlace& place : m_places)
            add(place.centre);
        if (!out.empty())
            return out;
        for (std::size_t i = 1; i < m_features.size(); ++i)
            add(m_features[i].centre);
        if (!out.empty())
            return out;
        for (const Feature& f : m_features)
            if (f.circle)
                add(f.centre);
            else
                for (const shape::Vertex& v : f.loop.vertices)
                    add(v.at);
        return out;
    }

    double within() const { return m_within; }

private:
    void add(const Loop& loop, shape::Part part) {
        Feature f{part, shape::merged(loop), shape::asCircle(loop), {}};
        f.centre = f.circle ? f.circle->centre : shape::centroid(loop);
        m_features.push_back(std::move(f));
    }

    bool maps(const Motion& motion, const Feature& f, const Feature& g) const {
        if (f.part != g.part || f.circle.has_value() != g.circle.has_value() ||
            shape::distance(motion(f.centre), g.centre) > m_within)
            return false;
        if (f.circle)
            return std::abs(f.circle->radius - g.circle->radius) <= m_within;
        return sameLoop(motion(f.loop), g.loop, m_within);
    }

    std::vector<Feature> m_features;
    std::vector<LoadedPlace> m_places;
    double m_within = 0;
};

double angleOf(Point p) {
    return std::atan2(p.y, p.x);
}

} // namespace

plate::Sector findSector(const shape::Region& region, const std::vector<LoadedPlace>& places) {
    const Symmetry symmetry(region, places);
    const bool solidCentre = shape::containsMaterial(region, {0, 0});
    const int most = solidCentre ? kMostTurnsAtSolidCentre : kMostTurns;
    const std::vector<Point> marks = symmetry.landmarks();
    std::vector<double> lines; // those through the first place first, as they are preferred
    for (const LoadedPlace& place : places)
        if (shape::norm(place.centre) > symmetry.within()) {
            lines.push_back(angleOf(place.centre));
            break;
        }
    if (marks.empty()) // rings only: any line will do
        return {2 * kMostTurnsAtSolidCentre, lines.empty() ? 0 : lines.front()};
    for (const Point& mark : marks) {
        const double between = 0.5 * (angleOf(marks.front()) + angleOf(mark));
        lines.push_back(between);
        lines.push_back(between + pi / 2);
    }
    const auto line = std::find_if(lines.begin(), lines.end(), [&](double angle) {
        return symmetry.holds({true, angle});
    });
    if (line == lines.end())
        return {};
    int turns = most;
    while (turns > 1 && !symmetry.holds({false, 2 * pi / turns}))
        --turns;
    return {2 * turns, *line};
}

} // namespace pw::outline
