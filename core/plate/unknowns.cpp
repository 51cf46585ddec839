#include "core/plate/unknowns.h"

#include "core/util/require.h"

#include <cmath>
#include <Eigen/OrderingMethods>
#include <Eigen/SparseCore>
#include <limits>
#include <numbers>

namespace pw::plate {

namespace {

constexpr int kFree = 0, kHeld = -1;

Eigen::Vector2d alongEdge(const Mesh& mesh, const MeshEdge& edge, int place) {
    const auto a = mesh.nodes.col(edge.nodes[0]), m = mesh.nodes.col(edge.nodes[1]),
               b = mesh.nodes.col(edge.nodes[2]);
    // Derivative of the side's parabola at its start, middle and end.
    if (place == 0)
        return (-3 * a + 4 * m - b).normalized();
    if (place == 1)
        return (b - a).normalized();
    return (a - 4 * m + 3 * b).normalized();
}

} // namespace

Unknowns::Unknowns(const Mesh& mesh, const Sector& sector, const std::vector<EdgeSupport>& supports,
                   Pins pins)
    : m_number(3 * mesh.nodeCount(), kFree), m_frame(mesh.nodeCount(), 0.0) {
    holdEdges(mesh, sector, supports);
    bool held = false;
    for (const EdgeSupport& support : supports)
        held = held || support.deflection;
    if (!held && pins == Pins::Needed)
        pin(mesh, sector);
    number(mesh);
}

void Unknowns::holdEdges(const Mesh& mesh, const Sector& sector, const std::vector<EdgeSupport>& supports) {
    std::vector<char> framed(mesh.nodeCount(), 0);
    const auto hold = [&](int node, double alongAngle, bool deflection, bool across, bool along) {
        if (deflection)
            m_number[3 * node] = kHeld;
        if (!across && !along)
            return;
        // In the node's frame unknown 1 is along the edge, unknown 2 across it.
        if (!framed[node]) {
            framed[node] = 1;
            m_frame[node] = alongAngle;
            if (along)
                m_number[3 * node + 1] = kHeld;
            if (across)
                m_number[3 * node + 2] = kHeld;
            return;
        }
        // A second edge through the node. The same line again changes nothing; any other leaves no rotation
        // that both allow, unless it only repeats what the first one holds.
        const double turn = std::abs(std::sin(alongAngle - m_frame[node]));
        if (turn < 1e-6) {
            if (along)
                m_number[3 * node + 1] = kHeld;
            if (across)
                m_number[3 * node + 2] = kHeld;
        } else if (turn > 1 - 1e-6) {
            if (along)
                m_number[3 * node + 2] = kHeld;
            if (across)
                m_number[3 * node + 1] = kHeld;
        } else {
            m_number[3 * node + 1] = m_number[3 * node + 2] = kHeld;
        }
    };
    for (const MeshEdge& edge : mesh.edges) {
        if (edge.kind != MeshEdge::Kind::Symmetry)
            continue;
        const double angle = sector.line0 + (edge.index == 1 ? sector.opening() : 0.0);
        for (int node : edge.nodes)
            hold(node, angle, false, true, false);
    }
    for (const MeshEdge& edge : mesh.edges) {
        for (const EdgeSupport& support : supports) {
            if (edge.kind != support.kind || edge.index != support.index)
                continue;
            for (int place = 0; place < 3; ++place) {
                const Eigen::Vector2d along = alongEdge(mesh, edge, place);
                hold(edge.nodes[place], std::atan2(along.y(), along.x()), support.deflection, support.across,
                     support.along);
            }
        }
    }
}

void Unknowns::pin(const Mesh& mesh, const Sector& sector) {
    const auto farthest = [&](auto&& measure) {
        int best = -1;
        double most = -1;
        for (int i = 0; i < mesh.nodeCount(); ++i) {
            const double m = measure(Eigen::Vector2d(mesh.nodes.col(i)));
            if (m > most + 1e-9)
                most = m, best = i;
        }
        return best;
    };
    const int first = farthest([&](const Eigen::Vector2d& p) { return 1e6 - p.norm(); });
    m_pinned = {first};
    const Eigen::Vector2d a = mesh.nodes.col(first);
    if (sector.count <= 2) {
        // One mirror line: it stops the tilt across itself, so pin a second place farthest along it.
        const Eigen::Vector2d line(std::cos(sector.line0), std::sin(sector.line0));
        const int second =
            sector.count == 2
                ? farthest([&](const Eigen::Vector2d& p) { return std::abs((p - a).dot(line)); })
                : farthest([&](const Eigen::Vector2d& p) { return (p - a).norm(); });
        m_pinned.push_back(second);
        if (sector.count == 1) {
            const Eigen::Vector2d b = mesh.nodes.col(second);
            m_pinned.push_back(farthest([&](const Eigen::Vector2d& p) {
                return std::abs((b - a).x() * (p - a).y() - (b - a).y() * (p - a).x());
            }));
        }
    }
    for (int node : m_pinned)
        m_number[3 * node] = kHeld;
}

void Unknowns::number(const Mesh& mesh) {
    // Approximate minimum degree on the nodes rather than on the unknowns: a third of the size, the same
    // order.
    using Graph = Eigen::SparseMatrix<int, Eigen::ColMajor, int>;
    std::vector<Eigen::Triplet<int>> links;
    links.reserve(36 * mesh.triangleCount());
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < 6; ++i)
            for (int j = 0; j < 6; ++j)
                links.emplace_back(mesh.triangles(i, t), mesh.triangles(j, t), 1);
    Graph graph(mesh.nodeCount(), mesh.nodeCount());
    graph.setFromTriplets(links.begin(), links.end());
    Eigen::PermutationMatrix<Eigen::Dynamic, Eigen::Dynamic, int> permutation;
    Eigen::AMDOrdering<int> ordering;
    ordering(graph, permutation);

    m_order.assign(permutation.indices().data(), permutation.indices().data() + mesh.nodeCount());
    m_count = 0;
    for (int node : m_order)
        for (int k = 0; k < 3; ++k)
            if (m_number[3 * node + k] != kHeld)
                m_number[3 * node + k] = m_count++;
    util::require(m_count > 0, "a plate mesh with nothing free to move");
}

std::array<double, 6> Unknowns::frames(const Mesh& mesh, Eigen::Index triangle) const {
    std::array<double, 6> f;
    for (int i = 0; i < 6; ++i)
        f[i] = m_frame[mesh.triangles(i, triangle)];
    return f;
}

Eigen::Matrix3Xd Unknowns::toNodes(const Eigen::VectorXd& unknowns) const {
    const auto nodes = static_cast<Eigen::Index>(m_frame.size());
    Eigen::Matrix3Xd u(3, nodes);
    for (int i = 0; i < nodes; ++i) {
        for (int k = 0; k < 3; ++k)
            u(k, i) = of(i, k) < 0 ? 0.0 : unknowns(of(i, k));
        if (m_frame[i] != 0) {
            const double c = std::cos(m_frame[i]), s = std::sin(m_frame[i]), along = u(1, i),
                         across = u(2, i);
            u(1, i) = c * along - s * across;
            u(2, i) = s * along + c * across;
        }
    }
    return u;
}

} // namespace pw::plate
