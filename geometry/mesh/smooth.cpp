#include "geometry/mesh/smooth.h"

#include <algorithm>

namespace pw::mesh {

using shape::Point;

namespace {

/// Area over the sum of the squared sides, times 4 sqrt(3): 1 for an equilateral triangle, 0 for a flat one.
double roundness(Point a, Point b, Point c) {
    const Point u = b - a, v = c - a, w = c - b;
    return 3.4641016151377544 * shape::cross(u, v) / (shape::dot(u, u) + shape::dot(v, v) + shape::dot(w, w));
}

} // namespace

void smooth(std::vector<Point>& points, const std::vector<std::array<int, 3>>& triangles,
            const std::vector<bool>& fixed, int sweeps) {
    std::vector<int> start(points.size() + 1, 0), around(3 * triangles.size());
    for (const auto& t : triangles)
        for (const int v : t)
            ++start[v + 1];
    for (std::size_t i = 1; i < start.size(); ++i)
        start[i] += start[i - 1];
    std::vector<int> fill(start.begin(), start.end() - 1);
    for (std::size_t t = 0; t < triangles.size(); ++t)
        for (const int v : triangles[t])
            around[fill[v]++] = int(t);

    for (int sweep = 0; sweep < sweeps; ++sweep)
        for (std::size_t v = 0; v < points.size(); ++v) {
            if (fixed[v] || start[v] == start[v + 1])
                continue;
            const auto worst = [&] {
                double least = 1;
                for (int k = start[v]; k < start[v + 1]; ++k) {
                    const auto& t = triangles[around[k]];
                    least = std::min(least, roundness(points[t[0]], points[t[1]], points[t[2]]));
                }
                return least;
            };
            const Point before = points[v];
            Point sum;
            for (int k = start[v]; k < start[v + 1]; ++k)
                for (const int other : triangles[around[k]])
                    if (other != int(v))
                        sum = sum + points[other];
            const double was = worst();
            points[v] = sum * (1.0 / (2 * (start[v + 1] - start[v])));
            if (worst() <= was)
                points[v] = before;
        }
}

} // namespace pw::mesh
