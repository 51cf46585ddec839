#include "geometry/outline/sector.h"

#include "core/shape/nearest.h"
#include "core/shape/split.h"
#include "core/util/require.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace pw::outline {

using shape::Loop;
using shape::Point;
using shape::Side;
using Kind = plate::MeshEdge::Kind;

namespace {

constexpr double kSameRay = 1e-7; ///< of the plate's size: points so close are one, or on the line

class Cutter {
public:
    Cutter(const shape::Region& region, const plate::Sector& sector) : m_region(region), m_sector(sector) {
        const shape::Box box = shape::bounds(region.rim);
        m_size =
            std::max({std::abs(box.low.x), std::abs(box.low.y), std::abs(box.high.x), std::abs(box.high.y)});
        m_snap = kSameRay * m_size;
        for (int i = 0; i < 2; ++i)
            m_rays[i] = shape::polar(1, sector.line0 + i * sector.opening());
    }

    TaggedRegion cut() {
        for (const TaggedLoop& loop : tagged(m_region).loops)
            addPieces(loop);
        for (int i = 0; i < 2; ++i)
            addRay(i);
        return chained();
    }

private:
    bool onRay(int i, Point p) const {
        return std::abs(shape::cross(m_rays[i], p)) <= m_snap && shape::dot(m_rays[i], p) >= -m_snap;
    }

    Point snapped(Point p) const {
        for (const Point& ray : m_rays)
            if (std::abs(shape::cross(ray, p)) <= m_snap && shape::dot(ray, p) >= -m_snap)
                return ray * shape::dot(ray, p);
        return p;
    }

    bool isInside(Point p) const {
        const bool leftOf0 = shape::cross(m_rays[0], p) > 0;
        return m_sector.count == 2 ? leftOf0 : leftOf0 && shape::cross(p, m_rays[1]) > 0;
    }

    /// A circle may start anywhere; away from both lines, so that no hair of an arc is left between its start
    /// and a line.
    Loop placed(const Loop& loop) const {
        const auto circle = shape::asCircle(loop);
        if (!circle)
            return shape::merged(loop);
        const Point out = shape::polar(circle->radius, m_sector.line0 + m_sector.opening() / 2);
        const double bulge = loop.vertices.front().bulge > 0 ? 1 : -1;
        return {{{circle->centre + out, bulge}, {circle->centre - out, bulge}}};
    }

    void addPieces(const TaggedLoop& taggedLoop) {
        Loop loop = placed(untagged(taggedLoop));
        for (shape::Vertex& v : loop.vertices)
            v.at = snapped(v.at);
        for (std::size_t i = 0; i < loop.size(); ++i) {
            Side rest = loop.side(i);
            std::vector<std::pair<double, Point>> cuts; // by distance along the side
            for (const Point& ray : m_rays)
                for (const Point& p : shape::crossings(rest, {{0, 0}, ray * (4 * m_size), 0}))
                    if (shape::distance(p, rest.from) > m_snap && shape::distance(p, rest.to) > m_snap)
                        cuts.push_back({shape::splitAt(rest, p).first.length(), ray * shape::dot(ray, p)});
            std::sort(cuts.begin(), cuts.end(),
                      [](const auto& a, const auto& b) { return a.first < b.first; });
            for (const auto& [along, at] : cuts) {
                const auto [before, after] = shape::splitAt(rest, at);
                keep(before, taggedLoop.front());
                rest = after;
            }
            keep(rest, taggedLoop.front());
        }
    }

    void keep(const Side& side, const TaggedSide& tag) {
        if (shape::distance(side.from, side.to) > m_snap && isInside(side.pointAt(0.5)))
            m_pieces.push_back({side, tag.kind, tag.index});
    }

    /// The stretches of a line between boundary points that lie in material: outward on line 0, inward on
    /// line 1, so that the material is on the left.
    void addRay(int i) {
        const Point ray = m_rays[i];
        std::vector<double> stops;
        if (shape::containsMaterial(m_region, {0, 0}))
            stops.push_back(0);
        for (const TaggedSide& piece : m_pieces)
            if (piece.kind != Kind::Symmetry)
                for (const Point& end : {piece.side.from, piece.side.to})
                    if (onRay(i, end))
                        stops.push_back(shape::dot(ray, end));
        std::sort(stops.begin(), stops.end());
        for (std::size_t k = 0; k + 1 < stops.size(); ++k) {
            if (stops[k + 1] - stops[k] <= m_snap ||
                !shape::containsMaterial(m_region, ray * (0.5 * (stops[k] + stops[k + 1]))))
                continue;
            const Point a = ray * stops[k], b = ray * stops[k + 1];
            m_pieces.push_back({i == 0 ? Side{a, b, 0} : Side{b, a, 0}, Kind::Symmetry, i});
        }
    }

    TaggedRegion chained() {
        TaggedRegion out;
        std::vector<bool> used(m_pieces.size(), false);
        for (std::size_t first = 0; first < m_pieces.size(); ++first) {
            if (used[first])
                continue;
            TaggedLoop loop{m_pieces[first]};
            used[first] = true;
            const Point start = m_pieces[first].side.from;
            while (shape::distance(loop.back().side.to, start) > 2 * m_snap) {
                std::size_t next = m_pieces.size();
                double least = 4 * m_snap;
                for (std::size_t i = 0; i < m_pieces.size(); ++i) {
                    const double gap = shape::distance(m_pieces[i].side.from, loop.back().side.to);
                    if (!used[i] && gap < least) {
                        least = gap;
                        next = i;
                    }
                }
                util::require(next < m_pieces.size(),
                              "sector edge left open at x = " + std::to_string(loop.back().side.to.x) +
                                  ", y = " + std::to_string(loop.back().side.to.y));
                used[next] = true;
                TaggedSide piece = m_pieces[next];
                piece.side.from = loop.back().side.to;
                loop.push_back(piece);
            }
            loop.back().side.to = start;
            out.loops.push_back(std::move(loop));
        }
        return out;
    }

    const shape::Region& m_region;
    const plate::Sector& m_sector;
    double m_size = 0, m_snap = 0;
    Point m_rays[2];
    std::vector<TaggedSide> m_pieces;
};

} // namespace

TaggedRegion cutSector(const shape::Region& region, const plate::Sector& sector) {
    return sector.count <= 1 ? tagged(region) : Cutter(region, sector).cut();
}

} // namespace pw::outline
