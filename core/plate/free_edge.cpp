#include "core/plate/free_edge.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace pw::plate {

namespace {

struct EdgePoint {
    int node = 0;
    Eigen::Vector2d at, slope; ///< slope: rotations bx, by
};

/// A smooth stretch of one edge, node by node.
struct Row {
    std::vector<EdgePoint> points;
    bool closed = false;
    MeshEdge::Kind kind = MeshEdge::Kind::Rim;
    int index = 0;
};

using Corners = std::array<Eigen::Vector2d, 3>;

Corners places(const Mesh& mesh, const MeshEdge& edge) {
    return {mesh.nodes.col(edge.nodes[0]), mesh.nodes.col(edge.nodes[1]), mesh.nodes.col(edge.nodes[2])};
}

Eigen::Vector2d startDirection(const Corners& c) {
    return (-3 * c[0] + 4 * c[1] - c[2]).normalized();
}
Eigen::Vector2d endDirection(const Corners& c) {
    return (c[0] - 4 * c[1] + 3 * c[2]).normalized();
}

/// Sides of neighbouring triangles on one arc meet within a few degrees of each other's parabola.
constexpr double kSmoothCosine = 0.985; // 10 degrees

std::vector<Row> smoothRows(const Mesh& mesh, const Eigen::Matrix3Xd& nodes) {
    std::map<int, std::vector<int>> startingAt;
    std::vector<int> before(mesh.edges.size(), -1), after(mesh.edges.size(), -1);
    for (std::size_t i = 0; i < mesh.edges.size(); ++i)
        if (mesh.edges[i].kind != MeshEdge::Kind::Symmetry)
            startingAt[mesh.edges[i].nodes[0]].push_back(static_cast<int>(i));
    for (std::size_t i = 0; i < mesh.edges.size(); ++i) {
        const MeshEdge& edge = mesh.edges[i];
        if (edge.kind == MeshEdge::Kind::Symmetry)
            continue;
        const auto next = startingAt.find(edge.nodes[2]);
        if (next == startingAt.end())
            continue;
        for (int j : next->second) {
            const MeshEdge& other = mesh.edges[j];
            if (other.kind == edge.kind && other.index == edge.index &&
                endDirection(places(mesh, edge)).dot(startDirection(places(mesh, other))) > kSmoothCosine) {
                after[i] = j;
                before[j] = static_cast<int>(i);
            }
        }
    }
    const auto point = [&](int node) {
        return EdgePoint{node, mesh.nodes.col(node), nodes.block<2, 1>(1, node)};
    };
    std::vector<Row> rows;
    std::vector<char> seen(mesh.edges.size(), 0);
    const auto follow = [&](int first) {
        Row row;
        row.kind = mesh.edges[first].kind;
        row.index = mesh.edges[first].index;
        row.points.push_back(point(mesh.edges[first].nodes[0]));
        int i = first;
        while (i >= 0 && !seen[i]) {
            seen[i] = 1;
            row.points.push_back(point(mesh.edges[i].nodes[1]));
            row.points.push_back(point(mesh.edges[i].nodes[2]));
            i = after[i];
        }
        row.closed = i == first;
        if (row.closed)
            row.points.pop_back();
        rows.push_back(std::move(row));
    };
    for (std::size_t i = 0; i < mesh.edges.size(); ++i)
        if (mesh.edges[i].kind != MeshEdge::Kind::Symmetry && before[i] < 0)
            follow(static_cast<int>(i));
    for (std::size_t i = 0; i < mesh.edges.size(); ++i)
        if (mesh.edges[i].kind != MeshEdge::Kind::Symmetry && !seen[i])
            follow(static_cast<int>(i));
    return rows;
}

EdgePoint mirrored(const EdgePoint& p, double angle) {
    const Eigen::Vector2d line(std::cos(angle), std::sin(angle));
    const auto mirror = [&](const Eigen::Vector2d& v) -> Eigen::Vector2d {
        return 2 * line.dot(v) * line - v;
    };
    return {p.node, mirror(p.at), mirror(p.slope)};
}

/// Derivatives at place `at` of the polynomial through the points, whose parameter is the chord length.
struct Slopes {
    Eigen::Vector2d place, rotation;
};
Slopes derivative(const std::vector<const EdgePoint*>& points, std::size_t at) {
    std::vector<double> s(points.size(), 0);
    for (std::size_t i = 1; i < points.size(); ++i)
        s[i] = s[i - 1] + (points[i]->at - points[i - 1]->at).norm();
    Slopes d{Eigen::Vector2d::Zero(), Eigen::Vector2d::Zero()};
    for (std::size_t j = 0; j < points.size(); ++j) {
        double weight = 0; // derivative of Lagrange's j-th polynomial
        if (j == at) {
            for (std::size_t k = 0; k < points.size(); ++k)
                if (k != at)
                    weight += 1 / (s[at] - s[k]);
        } else {
            weight = 1 / (s[j] - s[at]);
            for (std::size_t k = 0; k < points.size(); ++k)
                if (k != at && k != j)
                    weight *= (s[at] - s[k]) / (s[j] - s[k]);
        }
        d.place += weight * points[j]->at;
        d.rotation += weight * points[j]->slope;
    }
    return d;
}

} // namespace

std::vector<EdgeMoment> freeEdgeMoments(const PlateModel& model, const Section& section,
                                        const ElasticSolution& solution) {
    const Mesh& mesh = model.mesh();
    std::map<int, double> mirrorAt; // node on a symmetry line: its angle
    for (const MeshEdge& edge : mesh.edges)
        if (edge.kind == MeshEdge::Kind::Symmetry)
            for (int node : edge.nodes)
                mirrorAt[node] = model.sector().line0 + (edge.index == 1 ? model.sector().opening() : 0.0);

    const double stiffness = section.E * std::pow(section.thickness, 3) / 12;
    constexpr int kReach = 2; // nodes to either side
    std::vector<EdgeMoment> moments;
    for (Row& row : smoothRows(mesh, solution.nodes)) {
        const auto own = static_cast<int>(row.points.size());
        std::vector<EdgePoint> line = row.points;
        int first = 0;
        bool mirrorFront = false, mirrorBack = false;
        if (row.closed) {
            std::vector<EdgePoint> wrapped;
            for (int i = -kReach; i < own + kReach; ++i)
                wrapped.push_back(row.points[((i % own) + own) % own]);
            line = std::move(wrapped);
            first = kReach;
        } else {
            const int reach = std::min(kReach, own - 1);
            if (const auto m = mirrorAt.find(line.front().node); m != mirrorAt.end()) {
                mirrorFront = true;
                for (int i = 1; i <= reach; ++i)
                    line.insert(line.begin(), mirrored(row.points[i], m->second));
                first = reach;
            }
            if (const auto m = mirrorAt.find(row.points.back().node); m != mirrorAt.end()) {
                mirrorBack = true;
                for (int i = 1; i <= reach; ++i)
                    line.push_back(mirrored(row.points[own - 1 - i], m->second));
            }
        }
        const auto count = static_cast<int>(line.size());
        for (int i = 0; i < own; ++i) {
            // A kink at the end of an open row: a sharp corner, no figure there.
            if (!row.closed && ((i == 0 && !mirrorFront) || (i == own - 1 && !mirrorBack)))
                continue;
            const int at = first + i;
            int low = at - kReach, high = at + kReach;
            if (low < 0)
                high = std::min(count - 1, high - low), low = 0;
            if (high > count - 1)
                low = std::max(0, low - (high - count + 1)), high = count - 1;
            std::vector<const EdgePoint*> stencil;
            for (int k = low; k <= high; ++k)
                stencil.push_back(&line[k]);
            const Slopes d = derivative(stencil, static_cast<std::size_t>(at - low));
            const double speed = d.place.norm();
            const Eigen::Vector2d along = d.place / speed;
            moments.push_back(
                {row.points[i].node, along, stiffness * along.dot(d.rotation) / speed, row.kind, row.index});
        }
    }
    return moments;
}

void putIn(Eigen::Matrix3Xd& moments, const std::vector<EdgeMoment>& edges) {
    for (const EdgeMoment& e : edges) {
        const double c = e.along.x(), s = e.along.y();
        moments.col(e.node) << e.moment * c * c, e.moment * s * s, e.moment * c * s;
    }
}

} // namespace pw::plate
