#pragma once

#include "core/shape/loop.h"
#include "core/util/result.h"

#include <array>
#include <functional>
#include <vector>

namespace pw::mesh {

/// A straight boundary segment between two of the given points; material on the left.
struct Segment {
    int start = 0, end = 0;
};

/// Part of a segment that became the side of a triangle; `from` and `to` are fractions of the segment.
struct SegmentPart {
    int start = 0, end = 0;
    int segment = 0;
    double from = 0, to = 1;
};

struct Triangulation {
    std::vector<shape::Point> points;          ///< the given ones first, in their order
    std::vector<std::array<int, 3>> triangles; ///< counter-clockwise
    std::vector<SegmentPart> boundary;
};

/// Constrained Delaunay refinement of the material left of the segments: no angle under 20 degrees but at
/// corners that are sharper themselves, no side much longer than `size` there. The same input gives the same
/// triangles; safe to call from several threads at once. More than `mostTriangles` is a problem, as are
/// segments that cross or touch, and material in more than one piece.
util::Result<Triangulation> triangulate(const std::vector<shape::Point>& points,
                                        const std::vector<Segment>& segments,
                                        const std::function<double(shape::Point)>& size, int mostTriangles);

} // namespace pw::mesh
