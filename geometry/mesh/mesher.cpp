#include "geometry/mesh/mesher.h"

#include "core/util/require.h"
#include "geometry/mesh/chords.h"
#include "geometry/mesh/quality.h"
#include "geometry/mesh/smooth.h"
#include "geometry/mesh/triangulate.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <string>

namespace pw::mesh {

using outline::TaggedRegion;
using shape::Point;

namespace {

constexpr int kSweeps = 3;
constexpr int kMostTries = 8;
/// A curved element may lose so much of its Jacobian at most; below, shape functions and stresses suffer.
constexpr double kLeastJacobian = 0.2;

double atOf(const Chord& chord, double fraction) {
    return chord.t0 + fraction * (chord.t1 - chord.t0);
}

/// Boundary points that the mesher put on a chord move to the arc it stands for.
void moveToArcs(Triangulation& flat, const Chords& chords, const TaggedRegion& region) {
    for (const SegmentPart& part : flat.boundary) {
        const Chord& chord = chords.chords[part.segment];
        if (part.from > 0)
            flat.points[part.start] =
                region.loops[chord.loop][chord.side].side.pointAt(atOf(chord, part.from));
    }
}

/// The middle nodes of all sides, numbered after the corners.
class Middles {
public:
    explicit Middles(const Triangulation& flat) : m_corners(int(flat.points.size())) {
        m_sides.reserve(3 * flat.triangles.size());
        for (const auto& t : flat.triangles)
            for (int i = 0; i < 3; ++i)
                m_sides.push_back(key(t[i], t[(i + 1) % 3]));
        std::sort(m_sides.begin(), m_sides.end());
        m_sides.erase(std::unique(m_sides.begin(), m_sides.end()), m_sides.end());
    }

    int count() const { return int(m_sides.size()); }
    std::pair<int, int> ends(int i) const { return {int(m_sides[i] >> 32), int(m_sides[i] & 0xffffffffu)}; }
    int nodeOf(int a, int b) const {
        const auto it = std::lower_bound(m_sides.begin(), m_sides.end(), key(a, b));
        return m_corners + int(it - m_sides.begin());
    }

private:
    static std::uint64_t key(int a, int b) {
        return (std::uint64_t(std::min(a, b)) << 32) | std::uint64_t(std::max(a, b));
    }
    int m_corners;
    std::vector<std::uint64_t> m_sides;
};

plate::Mesh quadratic(const Triangulation& flat, const Chords& chords, const TaggedRegion& region) {
    const Middles middles(flat);
    plate::Mesh mesh;
    const auto corners = Eigen::Index(flat.points.size());
    mesh.nodes.resize(2, corners + middles.count());
    for (Eigen::Index i = 0; i < corners; ++i)
        mesh.nodes.col(i) << flat.points[i].x, flat.points[i].y;
    for (int i = 0; i < middles.count(); ++i) {
        const auto [a, b] = middles.ends(i);
        mesh.nodes.col(corners + i) = 0.5 * (mesh.nodes.col(a) + mesh.nodes.col(b));
    }
    mesh.triangles.resize(6, Eigen::Index(flat.triangles.size()));
    for (std::size_t t = 0; t < flat.triangles.size(); ++t)
        for (int i = 0; i < 3; ++i) {
            const int a = flat.triangles[t][i], b = flat.triangles[t][(i + 1) % 3];
            mesh.triangles(i, t) = a;
            mesh.triangles(3 + i, t) = middles.nodeOf(a, b);
        }
    for (const SegmentPart& part : flat.boundary) {
        const Chord& chord = chords.chords[part.segment];
        const outline::TaggedSide& tagged = region.loops[chord.loop][chord.side];
        const int middle = middles.nodeOf(part.start, part.end);
        const Point p = tagged.side.pointAt(atOf(chord, 0.5 * (part.from + part.to)));
        mesh.nodes.col(middle) << p.x, p.y;
        mesh.edges.push_back({{part.start, middle, part.end}, tagged.kind, tagged.index});
    }
    return mesh;
}

/// Chords whose curved elements are badly bent, or whose points were moved into an element.
std::vector<bool> badChords(const plate::Mesh& mesh, const Triangulation& flat, std::size_t chords) {
    std::vector<bool> badPoint(flat.points.size(), false), out(chords, false);
    bool any = false;
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t) {
        if (leastJacobian(mesh, t) >= kLeastJacobian)
            continue;
        any = true;
        for (int i = 0; i < 3; ++i)
            badPoint[mesh.triangles(i, t)] = true;
    }
    if (!any)
        return {};
    for (const SegmentPart& part : flat.boundary)
        if (badPoint[part.start] || badPoint[part.end])
            out[part.segment] = true;
    return out;
}

std::string near(Point p) {
    return " near x = " + std::to_string(std::lround(p.x)) + " mm, y = " + std::to_string(std::lround(p.y)) +
           " mm";
}

std::string place(const Chords& chords, const std::vector<bool>& bad) {
    const auto i = std::size_t(std::find(bad.begin(), bad.end(), true) - bad.begin());
    return i < bad.size() ? near(chords.points[chords.chords[i].start]) : "";
}

} // namespace

util::Result<plate::Mesh> makeMesh(const TaggedRegion& region, const SizeField& size,
                                   const MeshLimits& limits) {
    util::require(size.far > 0, "mesh size must be positive, is " + std::to_string(size.far));
    const SizeAt sizeAt(size, region);
    const std::function<double(Point)> ask = [&](Point p) { return sizeAt(p); };
    Chords chords = splitBoundary(region, sizeAt);
    if (chords.neck)
        return util::Problem{"plate", "two edges of the plate touch or cross" + near(*chords.neck) +
                                          "; leave material between them"};
    if (int(chords.chords.size()) > limits.mostTriangles)
        return util::Problem{"plate", "the outline needs more than " + std::to_string(limits.mostTriangles) +
                                          " pieces of edge: it is far too ragged or too narrow somewhere"};
    std::vector<bool> bad;
    for (int attempt = 0; attempt < kMostTries; ++attempt) {
        std::vector<Segment> segments;
        for (const Chord& c : chords.chords)
            segments.push_back({c.start, c.end});
        auto flat = triangulate(chords.points, segments, ask, limits.mostTriangles);
        if (!flat)
            return flat.problem();
        moveToArcs(*flat, chords, region);
        std::vector<bool> fixed(flat->points.size(), false);
        for (const SegmentPart& part : flat->boundary)
            fixed[part.start] = true;
        smooth(flat->points, flat->triangles, fixed, kSweeps);
        plate::Mesh mesh = quadratic(*flat, chords, region);
        bad = badChords(mesh, *flat, chords.chords.size());
        if (bad.empty())
            return mesh;
        chords = halved(chords, region, bad);
    }
    return util::Problem{"plate", "the plate could not be divided into sound triangles" + place(chords, bad) +
                                      ": material or a notch there is far too narrow"};
}

} // namespace pw::mesh
