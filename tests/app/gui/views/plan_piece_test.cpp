#include "app/gui/views/plan_piece.h"

#include "geometry/placement/stock.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::gui {
namespace {

using units::System;

rack::Offcut gusset() {
    rack::Offcut offcut;
    offcut.name = "gusset";
    offcut.thickness = {units::Length::fromMm(15), units::Length::fromMm(15)};
    offcut.outline.shape = job::OutlineShape::Polygon;
    offcut.outline.points = {{{0, 0}, 0}, {{300, 0}, 0}, {{0, 200}, 0}};
    return offcut;
}

PlanPiece laid(double x, double y, double degrees) {
    job::PieceChoice choice{"gusset", job::PointXY{units::Length::fromMm(x), units::Length::fromMm(y)},
                            units::Angle::fromDegree(degrees)};
    return pieceUnderPlate(placement::buildStock(gusset()).stock, choice);
}

bool hasCorner(const PlanPiece& piece, shape::Point p) {
    return std::ranges::any_of(piece.rim.vertices, [&](const shape::Vertex& vertex) {
        return shape::distance(vertex.at, p) < 1e-9;
    });
}

TEST(PlanPiece, lies_so_that_the_plate_is_where_the_job_puts_it_on_the_piece) {
    // The plate's middle is 80 mm along and 60 mm up: the piece's own origin lies as far left and down.
    const PlanPiece piece = laid(80, 60, 0);
    for (const shape::Point p : {shape::Point{-80, -60}, {220, -60}, {-80, 140}})
        EXPECT_TRUE(hasCorner(piece, p));
    EXPECT_EQ(piece.knob, (shape::Point{220, -60}));
}

TEST(PlanPiece, turns_back_under_a_plate_that_is_turned_on_it) {
    // Turned a quarter to the left, the plate's x runs along the piece's y: what is above it on the piece
    // lies to its right on the plan.
    const PlanPiece piece = laid(0, 0, 90);
    EXPECT_TRUE(hasCorner(piece, {200, 0}));
    EXPECT_TRUE(hasCorner(piece, {0, -300}));
}

TEST(PlanPiece, follows_the_hand_whichever_way_it_is_turned) {
    for (const double degrees : {0.0, 90.0, 180.0, -90.0}) {
        const PlanPiece before = laid(80, 60, degrees);
        const Setting setting{degrees, before.at};
        const shape::Point to = draggedPiece({5, 5}, {17.2, -3.4}, setting, System::Metric, false);
        const PlanPiece after = laid(to.x, to.y, degrees);
        for (std::size_t i = 0; i < before.rim.size(); ++i) {
            const shape::Point moved = after.rim.vertices[i].at - before.rim.vertices[i].at;
            EXPECT_NEAR(moved.x, 12, 1e-9) << degrees;
            EXPECT_NEAR(moved.y, -8, 1e-9) << degrees;
        }
        const shape::Point stepped = steppedPiece(setting, 1, 0, System::Metric, false);
        const PlanPiece right = laid(stepped.x, stepped.y, degrees);
        EXPECT_NEAR(right.rim.vertices[0].at.x - before.rim.vertices[0].at.x, 1, 1e-9) << degrees;
        EXPECT_NEAR(right.rim.vertices[0].at.y, before.rim.vertices[0].at.y, 1e-9) << degrees;
    }
}

TEST(PlanPiece, is_turned_by_its_farthest_corner_and_moved_by_the_rest) {
    PlanShape shape;
    shape.rim = shape::circleLoop({}, 50);
    shape.rimDiameter = 100;
    shape.piece = laid(80, 60, 0);
    EXPECT_EQ(grabAt(shape, {218, -58}, 4).part, PlanPart::PieceTurn);
    EXPECT_EQ(grabAt(shape, {120, -40}, 4).part, PlanPart::Piece);
    EXPECT_EQ(grabAt(shape, {0, 30}, 4).part, PlanPart::None) << "the plate covers it there";
    EXPECT_EQ(grabAt(shape, {200, 100}, 4).part, PlanPart::None) << "beside the piece";
    // A corner pulled to the left by ten degrees turns the plate ten degrees to the right on the piece.
    const double ten = 10 * std::numbers::pi / 180;
    const double turned =
        dragged(shape, {PlanPart::PieceTurn, 0}, {100, 0}, shape::polar(100, ten), 0, System::Metric, false);
    EXPECT_NEAR(turned, -10, 1e-9);
}

} // namespace
} // namespace pw::gui
