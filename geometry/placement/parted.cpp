#include "geometry/placement/parted.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>
#include <optional>
#include <tuple>
#include <utility>

namespace pw::placement {

namespace {

using shape::Loop;
using shape::Point;

constexpr double kSame = 1e-7; ///< mm; points nearer than this are one
constexpr double kJump = 3;    ///< in webs; what is nearest has gone over to another place of the edge

/// Where on a closed curve: side number and the part of that side.
struct Place {
    double u = 0;
    Point at;
};

Place placeOn(const Loop& loop, double u) {
    const double n = static_cast<double>(loop.size());
    u = std::fmod(u + n, n);
    const auto i = std::min(static_cast<std::size_t>(u), loop.size() - 1);
    return {u, loop.side(i).pointAt(u - static_cast<double>(i))};
}

double partOf(const shape::Side& side, Point p) {
    if (!side.isArc()) {
        const Point along = side.to - side.from;
        return std::clamp(shape::dot(p - side.from, along) / shape::dot(along, along), 0.0, 1.0);
    }
    const Point centre = side.circle().centre, a = side.from - centre, b = p - centre;
    const double sweep = side.sweep(), whole = 2 * std::numbers::pi;
    double angle = std::atan2(shape::cross(a, b), shape::dot(a, b));
    if (sweep < 0)
        angle = -angle;
    // A hair before the start is the start, not the end of a whole turn.
    if (angle < 0)
        angle = whole + angle - std::abs(sweep) < -angle ? angle + whole : 0;
    return std::clamp(angle / std::abs(sweep), 0.0, 1.0);
}

/// A bounding curve with the steel on its left.
struct Edge {
    Loop loop;
    const Obstacle* obstacle = nullptr; ///< null: the rim, or the cut itself
    shape::Box box;
    struct Port {
        double u = 0;
        int order = 0; ///< of ports at one place
        std::size_t slit = 0;
        bool atCut = false;
    };
    std::vector<Port> ports;
};

struct Near {
    std::size_t edge = 0;
    Place place;
    double distance = std::numeric_limits<double>::infinity();
};

/// A line across the steel from the cut to what is nearest, where a web begins or ends.
struct Slit {
    Place cut, other;
    std::size_t edge = 0;
};

/// Takes one cut out of one part.
class Parting {
public:
    Parting(const Stock& piece, const Loop& cut, double web) : m_piece(piece), m_web(web) {
        m_edges.push_back({piece.rim});
        for (const Obstacle& thing : piece.obstacles)
            if (thing.isHole)
                m_edges.push_back({shape::reversed(thing.loop), &thing});
        m_edges.push_back({shape::reversed(cut)});
        m_cut = m_edges.size() - 1;
        for (Edge& edge : m_edges)
            edge.box = shape::bounds(edge.loop);
    }

    /// The parts; none when what is left all round the cut is one thin ring. `into` gets what is dropped.
    std::vector<Stock> run(Parted& into) {
        findWebs();
        if (m_ring) {
            double left = 0;
            for (const Edge& edge : m_edges)
                left += shape::signedArea(edge.loop);
            ++into.webs;
            addThinnest(into);
            into.dropped += left;
            return {};
        }
        std::vector<Loop> rims, holes;
        double dropped = 0;
        int webs = 0;
        if (!trace(rims, holes, dropped, webs)) {
            for (Edge& edge : m_edges)
                edge.ports.clear();
            rims = {m_piece.rim};
            holes.clear();
            dropped = 0;
            webs = 0;
        }
        into.dropped += dropped;
        into.webs += webs;
        if (webs > 0)
            addThinnest(into);
        return sorted(rims, holes);
    }

private:
    void addThinnest(Parted& into) const {
        into.thinnest = into.thinnest > 0 ? std::min(into.thinnest, m_thinnest) : m_thinnest;
    }

    Near nearest(Point p) const {
        Near near;
        for (std::size_t e = 0; e + 1 < m_edges.size(); ++e) {
            const Edge& edge = m_edges[e];
            const double away = std::max(
                {edge.box.low.x - p.x, p.x - edge.box.high.x, edge.box.low.y - p.y, p.y - edge.box.high.y});
            if (away > std::min(near.distance, 2 * m_web))
                continue;
            for (std::size_t i = 0; i < edge.loop.size(); ++i) {
                const shape::Side side = edge.loop.side(i);
                const Point at = side.nearestTo(p);
                const double distance = shape::distance(p, at);
                if (distance >= near.distance)
                    continue;
                near = {e, placeOn(edge.loop, static_cast<double>(i) + partOf(side, at)), distance};
            }
        }
        return near;
    }

    struct Look {
        double u = 0; ///< on the cut
        Near near;
    };

    Look look(double u) const {
        const Place place = placeOn(m_edges[m_cut].loop, u);
        return {u, nearest(place.at)};
    }
    bool isThin(const Look& l) const { return l.near.distance < m_web; }
    bool goesOn(const Look& a, const Look& b) const {
        return a.near.edge == b.near.edge &&
               shape::distance(a.near.place.at, b.near.place.at) < kJump * m_web;
    }

    /// Looks along the cut, close enough to see every web worth the name.
    std::vector<Look> looks() const {
        const Loop& cut = m_edges[m_cut].loop;
        const double step = std::max(std::min(m_web / 4, 1.0), shape::perimeter(cut) / 6000);
        std::vector<Look> all;
        for (std::size_t i = 0; i < cut.size(); ++i) {
            const int parts = std::max(1, static_cast<int>(std::ceil(cut.side(i).length() / step)));
            for (int k = 0; k < parts; ++k)
                all.push_back(look(static_cast<double>(i) + static_cast<double>(k) / parts));
        }
        return all;
    }

    /// The last place between two looks at which `same` still holds, and the first at which it does not.
    template<class Same>
    std::pair<Look, Look> border(Look from, Look to, Same same) const {
        for (int i = 0; i < 50; ++i) {
            const Look middle = look((from.u + to.u) / 2);
            (same(middle) ? from : to) = middle;
        }
        return {from, to};
    }

    /// `isLast`: of the web that ends where the first begins.
    void addSlit(const Look& at, bool isLast = false) {
        Slit slit{placeOn(m_edges[m_cut].loop, at.u), at.near.place, at.near.edge};
        const int seq = static_cast<int>(m_slits.size());
        m_edges[m_cut].ports.push_back({slit.cut.u, isLast ? -1 : seq, m_slits.size(), true});
        // Both sides of a web run in opposite ways.
        m_edges[slit.edge].ports.push_back({slit.other.u, -seq, m_slits.size(), false});
        m_slits.push_back(slit);
    }

    void findWebs() {
        const std::vector<Look> all = looks();
        const std::size_t n = all.size();
        m_thinnest = m_web;
        for (const Look& l : all)
            m_thinnest = std::min(m_thinnest, l.near.distance);
        const auto breaksBefore = [&](std::size_t i) {
            const Look &a = all[(i + n - 1) % n], &b = all[i];
            return !isThin(a) || !isThin(b) || !goesOn(a, b);
        };
        std::size_t first = 0;
        while (first < n && !breaksBefore(first))
            ++first;
        if (first == n) { // thin all round, and the same edge all round
            m_ring = true;
            return;
        }
        const double whole = static_cast<double>(m_edges[m_cut].loop.size());
        std::optional<Look> begun; ///< where the web that is open began
        for (std::size_t k = 0; k < n; ++k) {
            const std::size_t i = (first + k) % n;
            Look before = all[(i + n - 1) % n], here = all[i];
            if (before.u > here.u)
                here.u += whole;
            const auto open = [&](const Look& at) { begun = at; };
            const auto close = [&](const Look& at) {
                // Slits are kept in pairs, begin and end.
                addSlit(*begun);
                addSlit(at);
                begun.reset();
            };
            const bool was = isThin(before), is = isThin(here);
            if (was && is) {
                if (goesOn(before, here))
                    continue;
                const auto [last, next] =
                    border(before, here, [&](const Look& l) { return goesOn(before, l); });
                if (begun)
                    close(last);
                else if (k == 0)
                    m_closing = last;
                open(next);
            } else if (is) {
                open(border(before, here, [&](const Look& l) { return !isThin(l); }).second);
            } else if (was) {
                const Look last = border(before, here, [&](const Look& l) { return isThin(l); }).first;
                if (begun)
                    close(last);
                else if (k == 0)
                    m_closing = last;
            }
        }
        if (begun && m_closing) {
            addSlit(*begun);
            addSlit(*m_closing, true);
        }
    }

    static bool comesBefore(const Edge::Port& a, const Edge::Port& b) {
        return std::abs(a.u - b.u) > 1e-9 ? a.u < b.u : a.order < b.order;
    }

    /// Along an edge from one place to another, each side or part of a side.
    static void walk(Loop& into, const Loop& along, double from, double to) {
        while (to - from > 1e-12) {
            const double whole = std::floor(from + 1e-12), end = std::min(to, whole + 1);
            const auto i = static_cast<std::size_t>(whole) % along.size();
            const shape::Side side = along.side(i);
            const double a = std::max(from - whole, 0.0), b = end - whole;
            into.vertices.push_back(
                {side.pointAt(a), side.isArc() ? std::tan(side.sweep() * (b - a) / 4) : 0.0});
            from = end;
        }
    }

    static void tidy(Loop& loop) {
        auto& v = loop.vertices;
        for (std::size_t i = 0; i < v.size() && v.size() > 1;) {
            const std::size_t next = (i + 1) % v.size();
            if (shape::distance(v[i].at, v[next].at) < kSame)
                v.erase(v.begin() + static_cast<std::ptrdiff_t>(i));
            else
                ++i;
        }
    }

    /// Goes round every face with the steel on the left, across slits. False: it does not add up.
    bool trace(std::vector<Loop>& rims, std::vector<Loop>& holes, double& dropped, int& webs) {
        double before = 0, after = 0;
        for (Edge& edge : m_edges) {
            std::ranges::sort(edge.ports, comesBefore);
            if (!edge.ports.empty())
                before += shape::signedArea(edge.loop);
        }
        std::vector<std::vector<bool>> seen;
        for (const Edge& edge : m_edges)
            seen.emplace_back(edge.ports.size(), false);
        const auto otherEnd = [&](std::size_t e, const Edge::Port& port) {
            const std::size_t to = port.atCut ? m_slits[port.slit].edge : m_cut;
            const auto& ports = m_edges[to].ports;
            for (std::size_t i = 0; i < ports.size(); ++i)
                if (ports[i].slit == port.slit && ports[i].atCut != port.atCut)
                    return std::pair(to, i);
            return std::pair(e, std::size_t{0});
        };
        for (std::size_t e = 0; e < m_edges.size(); ++e)
            for (std::size_t i = 0; i < m_edges[e].ports.size(); ++i) {
                if (seen[e][i])
                    continue;
                Loop face;
                bool isWeb = false;
                std::size_t at = e, port = i;
                while (!seen[at][port]) {
                    seen[at][port] = true;
                    const Edge& edge = m_edges[at];
                    const std::size_t next = (port + 1) % edge.ports.size();
                    const Edge::Port &from = edge.ports[port], &to = edge.ports[next];
                    walk(face, edge.loop, from.u,
                         next == 0 ? to.u + static_cast<double>(edge.loop.size()) : std::max(to.u, from.u));
                    face.vertices.push_back({placeOn(edge.loop, to.u).at, 0});
                    isWeb = isWeb || (from.atCut && to.slit == from.slit + 1 && from.slit % 2 == 0);
                    std::tie(at, port) = otherEnd(at, to);
                }
                if (at != e || port != i)
                    return false;
                tidy(face);
                const double area = face.size() < 2 ? 0 : shape::signedArea(face);
                after += area;
                if (isWeb) {
                    if (area < -kSame)
                        return false;
                    dropped += area;
                    ++webs;
                } else if (area > kSame) {
                    if (shape::crossesItself(face))
                        return false;
                    rims.push_back(std::move(face));
                } else if (area < -kSame) {
                    holes.push_back(shape::reversed(face));
                }
            }
        if (m_edges[0].ports.empty())
            rims.push_back(m_piece.rim);
        return std::abs(after - before) < 1e-6 * std::max(1.0, std::abs(before));
    }

    /// To each part its holes and bad areas.
    std::vector<Stock> sorted(const std::vector<Loop>& rims, const std::vector<Loop>& joined) const {
        std::vector<Stock> parts;
        for (const Loop& rim : rims)
            parts.push_back({rim, {}});
        const auto put = [&](const Loop& loop, std::size_t index) {
            for (Stock& part : parts)
                if (shape::contains(part.rim, loop.vertices.front().at))
                    return part.obstacles.push_back({loop, true, index});
        };
        for (const Edge& edge : m_edges)
            if (edge.obstacle && edge.ports.empty())
                put(edge.obstacle->loop, edge.obstacle->index);
        if (m_edges[m_cut].ports.empty())
            put(shape::reversed(m_edges[m_cut].loop), kCut);
        for (const Loop& loop : joined)
            put(loop, kCut);
        for (const Obstacle& thing : m_piece.obstacles)
            for (Stock& part : parts)
                if (!thing.isHole && (liesOn(part.rim, thing.loop) != Lies::Outside ||
                                      shape::contains(thing.loop, part.rim.vertices.front().at)))
                    part.obstacles.push_back(thing);
        return parts;
    }

    const Stock& m_piece;
    double m_web, m_thinnest = 0;
    std::vector<Edge> m_edges; ///< the rim, the holes, the cut
    std::size_t m_cut = 0;
    std::vector<Slit> m_slits;
    std::optional<Look> m_closing; ///< of a web that goes on over the first look
    bool m_ring = false;
};

/// Holes in the steel and apart from each other: edges are then what bounds the steel.
bool isPlain(const Stock& piece) {
    for (std::size_t i = 0; i < piece.obstacles.size(); ++i) {
        if (!piece.obstacles[i].isHole)
            continue;
        if (liesOn(piece.rim, piece.obstacles[i].loop) != Lies::Inside)
            return false;
        for (std::size_t j = 0; j < piece.obstacles.size(); ++j)
            if (j != i && piece.obstacles[j].isHole &&
                liesOn(piece.obstacles[j].loop, piece.obstacles[i].loop) != Lies::Outside)
                return false;
    }
    return true;
}

bool takes(const Stock& part, const Loop& cut) {
    return liesOn(part.rim, cut) == Lies::Inside &&
           std::ranges::none_of(part.obstacles, [&](const Obstacle& thing) {
               return thing.isHole && (shape::crosses(thing.loop, cut) ||
                                       shape::contains(thing.loop, cut.vertices.front().at) ||
                                       shape::contains(cut, thing.loop.vertices.front().at));
           });
}

bool isBadAllOver(const Stock& part) {
    return std::ranges::any_of(part.obstacles, [&](const Obstacle& thing) {
        return !thing.isHole && liesOn(part.rim, thing.loop) == Lies::Outside &&
               shape::contains(thing.loop, part.rim.vertices.front().at);
    });
}

} // namespace

Parted partedBy(const Stock& piece, const std::vector<Loop>& cuts, double web, double usableWidth) {
    Parted out;
    // What lay within a cut is gone with it.
    Stock left{piece.rim, {}};
    for (const Obstacle& thing : piece.obstacles)
        if (std::ranges::none_of(cuts, [&](const Loop& cut) {
                return !shape::crosses(cut, thing.loop) &&
                       shape::contains(cut, thing.loop.vertices.front().at);
            }))
            left.obstacles.push_back(thing);
    std::vector<Stock> parts{left};
    bool parted = isPlain(left);
    for (const Loop& cut : cuts) {
        if (!parted)
            break;
        const auto part = std::ranges::find_if(parts, [&](const Stock& s) { return takes(s, cut); });
        parted = part != parts.end();
        if (!parted)
            break;
        const Stock whole = std::move(*part);
        parts.erase(part);
        for (Stock& made : Parting(whole, cut, web).run(out))
            parts.push_back(std::move(made));
    }
    if (!parted) {
        out = {};
        parts = {left};
        for (const Loop& cut : cuts)
            parts.front().obstacles.push_back({cut, true, kCut});
    }
    std::vector<std::pair<double, Stock>> kept;
    for (Stock& part : parts) {
        const double steel = area(part);
        if (isBadAllOver(part) || restOf(part, {}, 0.2, usableWidth).usable <= 0) {
            ++out.crumbs;
            out.dropped += steel;
            continue;
        }
        kept.emplace_back(steel, std::move(part));
    }
    std::ranges::stable_sort(kept, std::greater{}, &std::pair<double, Stock>::first);
    for (auto& [steel, part] : kept)
        out.parts.push_back(std::move(part));
    return out;
}

} // namespace pw::placement
