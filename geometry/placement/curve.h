#pragma once

#include "core/shape/loop.h"

#include <optional>
#include <vector>

/// Placing plates on pieces asks for the same curves' distances some hundred thousand times; here they are
/// laid out for that. mm, radians.
namespace pw::placement {

using shape::Loop;
using shape::Point;

/// A closed curve made ready for distances.
class Curve {
public:
    explicit Curve(const Loop& loop);

    /// Positive inside, negative outside, exact to rounding.
    double depth(Point p) const;

    const Loop& loop() const { return m_loop; }
    const std::optional<shape::Circle>& circle() const { return m_circle; }
    const shape::Box& box() const { return m_box; }

private:
    struct Piece {
        Point from, along;    ///< start, and to the end
        double perSquare = 0; ///< 1 over the chord squared; 0 of a point
        bool isArc = false;
        Point centre;
        double radius = 0;
        double outward = 0; ///< which side of the chord the arc lies on: +1 right, -1 left
    };
    Loop m_loop;
    std::optional<shape::Circle> m_circle;
    shape::Box m_box;
    std::vector<Piece> m_pieces;
};

/// A polygon in place of a curve. `Around`: no point of the curve lies outside it; `Within`: the polygon lies
/// inside the curve; both by at most `within` mm. Sides longer than `longest` are cut up.
enum class Side { Around, Within };
std::vector<Point> polygonOf(const Loop& loop, Side side, double within, double longest = 1e9);

/// Corners of a counter-clockwise polygon that point inward.
std::vector<Point> reflexCorners(const std::vector<Point>& polygon);

/// The middle and radius of a small circle round the points (not always the smallest).
shape::Circle circleRound(const std::vector<Point>& points);

} // namespace pw::placement
