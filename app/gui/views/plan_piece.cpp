#include "app/gui/views/plan_piece.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

namespace {

shape::Point onPiece(shape::Point onPlan, double degrees) {
    return shape::rotated(onPlan, units::Angle::fromDegree(degrees).radian());
}

} // namespace

PlanPiece pieceUnderPlate(const placement::Stock& stock, const job::PieceChoice& choice) {
    PlanPiece piece;
    if (choice.at)
        piece.at = {choice.at->x.mm(), choice.at->y.mm()};
    const double turn = choice.turn ? choice.turn->radian() : 0;
    piece.turn = choice.turn ? choice.turn->degree() : 0;
    const auto under = [&](const shape::Loop& loop) {
        return shape::turned(shape::moved(loop, shape::Point{} - piece.at), -turn);
    };
    piece.rim = under(stock.rim);
    for (const placement::Obstacle& thing : stock.obstacles)
        (thing.isHole ? piece.holes : piece.badAreas).push_back(under(thing.loop));
    // The corner that is farthest out gives the best hold for turning, and lies clear of the plate.
    piece.knob = std::ranges::max_element(piece.rim.vertices, {}, [](const shape::Vertex& vertex) {
                     return shape::norm(vertex.at);
                 })->at;
    return piece;
}

shape::Point draggedPiece(shape::Point grabbedAt, shape::Point p, const Setting& before, units::System system,
                          bool fine, double coarse) {
    return draggedPlace({}, onPiece(grabbedAt - p, before.figure), before.place, system, fine, coarse);
}

shape::Point steppedPiece(const Setting& before, int right, int up, units::System system, bool fine,
                          double coarse) {
    const shape::Point way = onPiece({-1.0 * right, -1.0 * up}, before.figure);
    const bool alongX = std::abs(way.x) >= std::abs(way.y);
    const auto sign = [](double value) { return value > 0 ? 1 : -1; };
    return alongX ? steppedPlace(before.place, sign(way.x), 0, system, fine, coarse)
                  : steppedPlace(before.place, 0, sign(way.y), system, fine, coarse);
}

bool isOnPiece(const PlanShape& shape, shape::Point p, double reach) {
    if (!shape.piece || (shape.rim && shape::contains(*shape.rim, p)))
        return false;
    return shape::contains(shape.piece->rim, p) || shape::distanceTo(shape.piece->rim, p) < reach;
}

} // namespace pw::gui
