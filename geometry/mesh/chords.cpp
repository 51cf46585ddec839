#include "geometry/mesh/chords.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace pw::mesh {

using outline::TaggedRegion;
using shape::Point;
using shape::Side;

namespace {

constexpr double kChordAngle = std::numbers::pi / 6; ///< twelve chords to a round hole at least
constexpr int kMostHalvings = 24;

struct SideRef {
    int loop, side, sides;
    Side shape;
    shape::Box box;
};

bool neighbours(const SideRef& a, const SideRef& b) {
    if (a.loop != b.loop)
        return false;
    const int apart = std::abs(a.side - b.side);
    return apart <= 1 || apart == a.sides - 1;
}

double boxDistance(const shape::Box& box, Point p) {
    const double x = std::max({box.low.x - p.x, 0.0, p.x - box.high.x});
    const double y = std::max({box.low.y - p.y, 0.0, p.y - box.high.y});
    return std::hypot(x, y);
}

class Splitter {
public:
    Splitter(const TaggedRegion& region, const SizeAt& size) : m_size(size) {
        for (std::size_t l = 0; l < region.loops.size(); ++l)
            for (std::size_t s = 0; s < region.loops[l].size(); ++s) {
                const Side& side = region.loops[l][s].side;
                m_sides.push_back({int(l), int(s), int(region.loops[l].size()), side, side.bounds()});
                const shape::Box& box = m_sides.back().box;
                m_leastNeck =
                    std::max({m_leastNeck, kLeastNeck * std::abs(box.low.x), kLeastNeck * std::abs(box.low.y),
                              kLeastNeck * std::abs(box.high.x), kLeastNeck * std::abs(box.high.y)});
            }
    }

    Chords split() {
        Chords out;
        for (const SideRef& ref : m_sides) {
            const std::vector<double> cuts = cutsOf(ref);
            for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
                const int start = int(out.points.size());
                out.points.push_back(ref.shape.pointAt(cuts[i]));
                out.chords.push_back({ref.loop, ref.side, cuts[i], cuts[i + 1], start, start + 1});
            }
            if (ref.side == ref.sides - 1) { // close the loop on its first point
                const auto first = std::find_if(out.chords.begin(), out.chords.end(),
                                                [&](const Chord& c) { return c.loop == ref.loop; });
                out.chords.back().end = first->start;
            }
        }
        out.neck = m_neck;
        return out;
    }

private:
    /// Size wanted on the side at t: the field's, and the width of material across.
    double wanted(const SideRef& ref, double t) {
        const Point p = ref.shape.pointAt(t);
        double size = m_size(p);
        const Point along = ref.shape.tangentAt(t);
        const Point left{-along.y, along.x};
        for (const SideRef& other : m_sides) {
            if (neighbours(ref, other) || boxDistance(other.box, p) >= size)
                continue;
            const Point q = other.shape.nearestTo(p);
            const double width = shape::distance(p, q);
            // Across a slot or a hole there is no material: only what lies on the left counts.
            if (width >= size || shape::dot(q - p, left) < 0.1 * width)
                continue;
            size = width;
            if (width < m_leastNeck && !m_neck)
                m_neck = p;
        }
        return size;
    }

    std::vector<double> cutsOf(const SideRef& ref) {
        const double length = ref.shape.length();
        double largest = 0;
        constexpr int kSamples = 8;
        for (int i = 0; i <= kSamples; ++i)
            largest = std::max(largest, wanted(ref, double(i) / kSamples));
        if (m_neck)
            return {0, 1};
        const int even = std::max({1, int(std::ceil(length / largest - 1e-6)),
                                   int(std::ceil(std::abs(ref.shape.sweep()) / kChordAngle - 1e-6))});
        std::vector<double> cuts{0};
        for (int i = 0; i < even; ++i)
            halve(ref, length, double(i) / even, i + 1 == even ? 1 : double(i + 1) / even, 0, cuts);
        return cuts;
    }

    void halve(const SideRef& ref, double length, double t0, double t1, int depth,
               std::vector<double>& cuts) {
        const double mid = 0.5 * (t0 + t1);
        // A little longer than wanted passes, or a size just under an even split would halve everything.
        const double limit = 1.3 * std::min({wanted(ref, t0 + 0.1 * (t1 - t0)), wanted(ref, mid),
                                             wanted(ref, t1 - 0.1 * (t1 - t0))});
        if (length * (t1 - t0) > limit && depth < kMostHalvings && !m_neck) {
            halve(ref, length, t0, mid, depth + 1, cuts);
            halve(ref, length, mid, t1, depth + 1, cuts);
        } else
            cuts.push_back(t1);
    }

    const SizeAt& m_size;
    std::vector<SideRef> m_sides;
    double m_leastNeck = 0;
    std::optional<Point> m_neck;
};

} // namespace

Chords splitBoundary(const TaggedRegion& region, const SizeAt& size) {
    return Splitter(region, size).split();
}

Chords halved(const Chords& chords, const TaggedRegion& region, const std::vector<bool>& which) {
    Chords out = chords;
    out.chords.clear();
    for (std::size_t i = 0; i < chords.chords.size(); ++i) {
        const Chord& c = chords.chords[i];
        if (!which[i]) {
            out.chords.push_back(c);
            continue;
        }
        const double mid = 0.5 * (c.t0 + c.t1);
        const int point = int(out.points.size());
        out.points.push_back(region.loops[c.loop][c.side].side.pointAt(mid));
        out.chords.push_back({c.loop, c.side, c.t0, mid, c.start, point});
        out.chords.push_back({c.loop, c.side, mid, c.t1, point, c.end});
    }
    return out;
}

} // namespace pw::mesh
