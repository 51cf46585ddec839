#pragma once

#include "app/engine/report.h"

#include <cstdint>
#include <vector>

namespace pw::gui {

/// The plate's middle surface with its deflection and stress, whole, cut into flat triangles; and its edges.
/// Made once a report; turning it and drawing it larger only reads it.
struct BentShape {
    struct Point {
        float x = 0, y = 0; ///< mm
        float w = 0;        ///< deflection, mm, positive towards the nut
        float value = 0;    ///< stress, MPa
    };
    struct Triangle {
        std::uint32_t a = 0, b = 0, c = 0; ///< counter-clockwise seen from the nut
    };
    struct Edge {
        std::uint32_t a = 0, b = 0; ///< in `rim`
        bool hole = false;
    };
    std::vector<Point> points;
    std::vector<Triangle> triangles;
    std::vector<Point> rim; ///< points of the edges
    std::vector<Edge> edges;
    double radius = 0;        ///< of the circle about the middle that holds the plate
    double most = 0;          ///< greatest deflection without its sign, mm
    double low = 0, high = 0; ///< of the deflection, mm

    bool isEmpty() const { return triangles.empty(); }
};

BentShape bentShape(const engine::Picture& picture);

/// Times by which the bend may be drawn larger: 1, 2, 5, 10, 20, ...; step 0 is as it is.
double exaggeration(int step);
/// The step at which the bend is plain to see: the largest that keeps it within a fifth of the radius.
int clearStep(const BentShape& shape);

} // namespace pw::gui
