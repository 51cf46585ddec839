#pragma once

#include "core/plate/mesh.h"

#include <cmath>
#include <functional>
#include <map>
#include <numbers>

/// Meshes with a known make, so that solver tests need no mesher.
namespace pw::testing {

/// A grid of m x n cells, two triangles each, its nodes placed by `place(u, v)` for u, v in [0, 1]. Sides: u
/// = 0 is tagged `uLow` and so on. With `closed` the side v = 1 is joined to v = 0.
struct GridEdges {
    plate::MeshEdge uLow{{}, plate::MeshEdge::Kind::Bore, 0}, uHigh{{}, plate::MeshEdge::Kind::Rim, 0},
        vLow{{}, plate::MeshEdge::Kind::Symmetry, 0}, vHigh{{}, plate::MeshEdge::Kind::Symmetry, 1};
};

inline plate::Mesh gridMesh(int m, int n, const std::function<Eigen::Vector2d(double, double)>& place,
                            const GridEdges& tags = {}, bool closed = false) {
    plate::Mesh mesh;
    std::map<std::pair<int, int>, int> numbers; // on a grid of half cells
    std::vector<Eigen::Vector2d> points;
    const auto node = [&](int i, int j) {
        if (closed)
            j %= 2 * n;
        const auto [at, isNew] = numbers.try_emplace({i, j}, static_cast<int>(points.size()));
        if (isNew)
            points.push_back(place(i / (2.0 * m), j / (2.0 * n)));
        return at->second;
    };
    mesh.triangles.resize(6, 2 * m * n);
    int t = 0;
    for (int i = 0; i < 2 * m; i += 2)
        for (int j = 0; j < 2 * n; j += 2) {
            // Diagonals alternate so that no direction is preferred.
            const bool turn = ((i + j) / 2) % 2 != 0;
            const auto add = [&](std::array<std::pair<int, int>, 3> c) {
                for (int k = 0; k < 3; ++k) {
                    const auto a = c[k], b = c[(k + 1) % 3];
                    mesh.triangles(k, t) = node(a.first, a.second);
                    mesh.triangles(3 + k, t) = node((a.first + b.first) / 2, (a.second + b.second) / 2);
                }
                ++t;
            };
            if (turn) {
                add({{{i, j}, {i + 2, j}, {i, j + 2}}});
                add({{{i + 2, j}, {i + 2, j + 2}, {i, j + 2}}});
            } else {
                add({{{i, j}, {i + 2, j}, {i + 2, j + 2}}});
                add({{{i, j}, {i + 2, j + 2}, {i, j + 2}}});
            }
        }
    const auto side = [&](plate::MeshEdge tag, std::pair<int, int> a, std::pair<int, int> b) {
        tag.nodes = {node(a.first, a.second), node((a.first + b.first) / 2, (a.second + b.second) / 2),
                     node(b.first, b.second)};
        mesh.edges.push_back(tag);
    };
    for (int j = 0; j < 2 * n; j += 2) {
        side(tags.uLow, {0, j + 2}, {0, j});
        side(tags.uHigh, {2 * m, j}, {2 * m, j + 2});
    }
    if (!closed)
        for (int i = 0; i < 2 * m; i += 2) {
            side(tags.vLow, {i, 0}, {i + 2, 0});
            side(tags.vHigh, {i + 2, 2 * n}, {i, 2 * n});
        }
    mesh.nodes.resize(2, static_cast<Eigen::Index>(points.size()));
    for (std::size_t i = 0; i < points.size(); ++i)
        mesh.nodes.col(static_cast<Eigen::Index>(i)) = points[i];
    return mesh;
}

/// A sector of an annulus, or all of it for opening 2 pi. Radii grow geometrically, true arcs.
inline plate::Mesh annulusMesh(double inside, double outside, double opening, int m, int n) {
    const bool closed = opening > 2 * std::numbers::pi - 1e-9;
    return gridMesh(
        m, n,
        [&](double u, double v) {
            const double r = inside * std::pow(outside / inside, u), a = opening * v;
            return Eigen::Vector2d(r * std::cos(a), r * std::sin(a));
        },
        {}, closed);
}

inline int nodeNear(const plate::Mesh& mesh, double x, double y) {
    Eigen::Index best = 0;
    (mesh.nodes.colwise() - Eigen::Vector2d(x, y)).colwise().norm().minCoeff(&best);
    return static_cast<int>(best);
}

} // namespace pw::testing
