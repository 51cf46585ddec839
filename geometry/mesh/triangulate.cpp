#include "geometry/mesh/triangulate.h"

#include "core/util/say.h"

#include <algorithm>
#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Delaunay_mesh_face_base_2.h>
#include <CGAL/Delaunay_mesher_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Triangulation_vertex_base_with_info_2.h>
#include <cmath>
#include <exception>
#include <utility>

namespace pw::mesh {

using shape::Point;

namespace {

struct Id {
    int value = -1;
};

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
using VertexBase = CGAL::Triangulation_vertex_base_with_info_2<Id, Kernel>;
using FaceBase = CGAL::Delaunay_mesh_face_base_2<Kernel>;
using Data = CGAL::Triangulation_data_structure_2<VertexBase, FaceBase>;
using Cdt = CGAL::Constrained_Delaunay_triangulation_2<Kernel, Data>;

/// Longest side of an accepted triangle over the wanted size: with it an open field comes out with about as
/// many triangles as equilateral ones of the wanted size would make.
constexpr double kLongest = 1.5;
/// Square of the sine of the least angle: the largest for which refinement is proved to end (20.7 degrees).
constexpr double kLeastSine2 = 0.125;

/// What CGAL's mesher asks of a criterion: is this triangle bad, and which of two is worse.
class Criteria {
public:
    /// Size over the wanted size, squared, when above 1; else the least sine, squared.
    struct Quality {
        double sine2 = 1, size2 = 0;
        bool operator<(const Quality& q) const {
            if (size2 > 1 || q.size2 > 1)
                return size2 > q.size2;
            return sine2 < q.sine2;
        }
    };

    class Is_bad {
    public:
        Is_bad(const Criteria& c) : m_criteria(&c) {}

        CGAL::Mesh_2::Face_badness operator()(const Quality& q) const {
            if (m_criteria->full())
                return CGAL::Mesh_2::NOT_BAD;
            if (q.size2 > 1)
                return CGAL::Mesh_2::IMPERATIVELY_BAD;
            return q.sine2 < kLeastSine2 ? CGAL::Mesh_2::BAD : CGAL::Mesh_2::NOT_BAD;
        }

        CGAL::Mesh_2::Face_badness operator()(const Cdt::Face_handle& face, Quality& q) const {
            const auto& a = face->vertex(0)->point();
            const auto& b = face->vertex(1)->point();
            const auto& c = face->vertex(2)->point();
            const double ux = b.x() - a.x(), uy = b.y() - a.y(), vx = c.x() - a.x(), vy = c.y() - a.y();
            const double wx = vx - ux, wy = vy - uy;
            double l[3] = {ux * ux + uy * uy, vx * vx + vy * vy, wx * wx + wy * wy};
            std::sort(l, l + 3);
            const double wanted =
                kLongest * (*m_criteria->m_size)({(a.x() + b.x() + c.x()) / 3, (a.y() + b.y() + c.y()) / 3});
            q.size2 = l[2] / (wanted * wanted);
            const double twice = ux * vy - uy * vx;
            q.sine2 = twice * twice / (l[2] * l[1]);
            return (*this)(q);
        }

    private:
        const Criteria* m_criteria;
    };

    Criteria(const Cdt& cdt, const std::function<double(Point)>& size, int mostTriangles)
        : m_cdt(&cdt), m_size(&size), m_most(mostTriangles) {}
    Is_bad is_bad_object() const { return Is_bad(*this); }
    bool full() const { return int(m_cdt->number_of_faces()) > m_most; }

private:
    const Cdt* m_cdt;
    const std::function<double(Point)>* m_size;
    int m_most;
};

util::Problem touching(Point p) {
    return {"plate", "two edges of the plate touch or cross near x = " + std::to_string(std::lround(p.x)) +
                         " mm, y = " + std::to_string(std::lround(p.y)) + " mm; leave material between them"};
}

/// Everything on the material side of the first segment, up to the segments all round.
void markMaterial(Cdt& cdt, Cdt::Face_handle first) {
    for (auto f = cdt.all_faces_begin(); f != cdt.all_faces_end(); ++f)
        f->set_in_domain(false);
    std::vector<Cdt::Face_handle> front{first};
    first->set_in_domain(true);
    while (!front.empty()) {
        const Cdt::Face_handle f = front.back();
        front.pop_back();
        for (int i = 0; i < 3; ++i) {
            const Cdt::Face_handle next = f->neighbor(i);
            if (f->is_constrained(i) || next->is_in_domain() || cdt.is_infinite(next))
                continue;
            next->set_in_domain(true);
            front.push_back(next);
        }
    }
}

/// The triangle on the left of the edge from a to b; null when there is no such edge.
Cdt::Face_handle leftOf(const Cdt& cdt, Cdt::Vertex_handle a, Cdt::Vertex_handle b) {
    Cdt::Face_handle face;
    int i = 0;
    if (!cdt.is_edge(a, b, face, i))
        return nullptr;
    return face->vertex(Cdt::ccw(i)) == a ? face : face->neighbor(i);
}

util::Result<Triangulation> refined(const std::vector<Point>& points, const std::vector<Segment>& segments,
                                    const std::function<double(Point)>& size, int mostTriangles) {
    Cdt cdt;
    std::vector<Cdt::Vertex_handle> vertices;
    vertices.reserve(points.size());
    Cdt::Face_handle hint;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const auto v = cdt.insert({points[i].x, points[i].y}, hint);
        if (v->info().value >= 0)
            return touching(points[i]);
        v->info().value = int(i);
        hint = v->face();
        vertices.push_back(v);
    }
    for (const Segment& s : segments)
        cdt.insert_constraint(vertices[s.start], vertices[s.end]);

    for (const Segment& s : segments) {
        const auto left = leftOf(cdt, vertices[s.start], vertices[s.end]);
        if (left == nullptr || cdt.is_infinite(left))
            return touching(points[s.start]);
        if (&s == &segments.front())
            markMaterial(cdt, left);
        if (!left->is_in_domain())
            return util::Problem{"plate",
                                 "the holes cut the plate into pieces that do not hang together; move them "
                                 "apart or make them smaller"};
    }

    const Criteria criteria(cdt, size, mostTriangles);
    CGAL::Delaunay_mesher_2<Cdt, Criteria> mesher(cdt, criteria);
    mesher.init(true);
    mesher.refine_mesh();
    if (criteria.full())
        return util::Problem{"plate",
                             say("the plate needs more than %1 triangles: it has too many holes, or something in "
                                 "the outline is far too narrow or too small",
                                 {mostTriangles})};

    Triangulation out;
    out.points = points;
    for (auto v = cdt.finite_vertices_begin(); v != cdt.finite_vertices_end(); ++v) {
        if (v->info().value >= 0)
            continue;
        v->info().value = int(out.points.size());
        out.points.push_back({v->point().x(), v->point().y()});
    }
    std::vector<int> next(out.points.size(), -1);
    for (auto f = cdt.finite_faces_begin(); f != cdt.finite_faces_end(); ++f) {
        if (!f->is_in_domain())
            continue;
        const int id[3] = {f->vertex(0)->info().value, f->vertex(1)->info().value,
                           f->vertex(2)->info().value};
        out.triangles.push_back({id[0], id[1], id[2]});
        for (int i = 0; i < 3; ++i)
            if (f->is_constrained(i))
                next[id[Cdt::ccw(i)]] = id[Cdt::cw(i)];
    }
    for (std::size_t i = 0; i < segments.size(); ++i) {
        const Point a = points[segments[i].start], along = points[segments[i].end] - a;
        const double square = shape::dot(along, along);
        double from = 0;
        for (int at = segments[i].start; at != segments[i].end;) {
            const int to = next[at];
            if (to < 0)
                return touching(a);
            const double end = to == segments[i].end ? 1 : shape::dot(out.points[to] - a, along) / square;
            if (end <= from)
                return touching(a);
            out.boundary.push_back({at, to, int(i), from, end});
            from = end;
            at = to;
        }
    }
    return out;
}

} // namespace

util::Result<Triangulation> triangulate(const std::vector<Point>& points,
                                        const std::vector<Segment>& segments,
                                        const std::function<double(Point)>& size, int mostTriangles) {
    if (segments.size() < 3)
        return util::Problem{"plate", "the outline has no area"};
    try {
        return refined(points, segments, size, mostTriangles);
    } catch (const Cdt::Intersection_of_constraints_exception&) {
        return util::Problem{"plate", "two edges of the plate cross each other; leave material between them"};
    } catch (const std::exception& e) {
        return util::Problem{"plate",
                             std::string("the plate could not be divided into triangles: ") + e.what()};
    }
}

} // namespace pw::mesh
