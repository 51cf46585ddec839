#pragma once

#include "geometry/outline/tagged_region.h"

#include <memory>
#include <vector>

namespace pw::mesh {

/// Sizes wanted at the nodes of an earlier mesh, for refining where its solution needs it.
class BackgroundSizes {
public:
    /// `sizes`: one target edge length for each node of the mesh (those of middle nodes are not looked at),
    /// mm.
    BackgroundSizes(const plate::Mesh& mesh, std::vector<double> sizes);

    /// Linear within each triangle; outside the mesh, the value at its nearest triangle.
    double at(shape::Point p) const;

private:
    struct Corner3 {
        int node[3];
    };
    std::vector<shape::Point> m_points;
    std::vector<double> m_sizes;
    std::vector<Corner3> m_triangles;
    shape::Point m_low;
    double m_cell = 1;
    int m_columns = 1, m_rows = 1;
    std::vector<int> m_cellStart, m_cellItems;
};

/// How long the sides of triangles shall be, mm: `far` in the open, `nearX` at an edge of that kind, growing
/// by `grade` mm for each mm away from it. 0 leaves that edge at `far`. A background only makes things finer.
struct SizeField {
    double far = 0;
    double nearRim = 0, nearBore = 0, nearAccess = 0, nearExtra = 0;
    double grade = 0.4;
    std::shared_ptr<const BackgroundSizes> background = nullptr;

    double nearOf(plate::MeshEdge::Kind kind) const; ///< never 0, at most `far`
};

/// The size field of one region, ready to be asked many times.
class SizeAt {
public:
    SizeAt(const SizeField& field, const outline::TaggedRegion& region);
    double operator()(shape::Point p) const;

private:
    struct Edge {
        shape::Side side;
        bool arc = false;
        shape::Circle circle;
        double near = 0;
    };
    double m_far, m_grade;
    std::vector<Edge> m_edges;
    std::shared_ptr<const BackgroundSizes> m_background;
};

} // namespace pw::mesh
