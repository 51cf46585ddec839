#include "geometry/outline/offset.h"

#include "tests/support/chance.h"
#include "tests/support/plates.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::outline {
namespace {

using shape::Loop;
using shape::Point;
using std::numbers::pi;

constexpr double kTrue = 1e-6; ///< of the distance: what the tool is asked for

Offset offsetOf(const Loop& loop, double distance) {
    const auto offset = offsetLoop(loop, distance);
    EXPECT_TRUE(offset.ok()) << (offset.ok() ? "" : offset.problem().message);
    return offset.ok() ? *offset : Offset{};
}

double areaOf(const Offset& offset) {
    double sum = 0;
    for (const Loop& loop : offset.loops)
        sum += shape::signedArea(loop);
    return sum;
}

bool liesIn(const Offset& offset, Point p) {
    bool in = false;
    for (const Loop& loop : offset.loops)
        in ^= shape::contains(loop, p);
    return in;
}

/// Every point of the offset is at the distance from the original and none nearer.
void expectAtDistance(const Offset& offset, const Loop& loop, double distance, int perSide = 12) {
    for (const Loop& made : offset.loops) {
        EXPECT_FALSE(shape::crossesItself(made));
        for (std::size_t i = 0; i < made.size(); ++i)
            for (int k = 0; k <= perSide; ++k) {
                const double away = shape::distanceTo(loop, made.side(i).pointAt(double(k) / perSide));
                ASSERT_NEAR(away, distance, kTrue * distance);
            }
    }
}

/// Nothing is missing and nothing too much: a point lies inside the offset exactly when the distance to the
/// original says so. Points within the tolerance of the border are passed over.
int expectWhole(const Offset& offset, const Loop& loop, double distance, testing::Chance& chance,
                int points) {
    const shape::Box box = shape::bounds(loop);
    const double d = std::abs(distance);
    int wrong = 0;
    for (int k = 0; k < points; ++k) {
        const Point p{chance.between(box.low.x - 1.5 * d, box.high.x + 1.5 * d),
                      chance.between(box.low.y - 1.5 * d, box.high.y + 1.5 * d)};
        const double away = shape::distanceTo(loop, p);
        if (std::abs(away - d) < 1e-5 * d)
            continue;
        const bool in = shape::contains(loop, p);
        const bool wanted = distance > 0 ? in || away < d : in && away > d;
        wrong += liesIn(offset, p) != wanted;
    }
    return wrong;
}

/// A star-shaped loop: corners at mixed radii, sides straight, bulging or dented; none crosses another.
Loop randomLoop(testing::Chance& chance, bool convex) {
    for (;;) {
        const int corners = 3 + static_cast<int>(chance.between(0, 9));
        const double turn = chance.between(0, 6);
        const double squash = chance.between(0.4, 1);
        Loop loop;
        for (int i = 0; i < corners; ++i) {
            const double angle = turn + 2 * pi * (i + (convex ? 0 : chance.between(-0.3, 0.3))) / corners;
            const Point p = shape::polar(convex ? 50 : chance.between(8, 80), angle);
            const double kind = chance.between(0, 3);
            // A bulge up to a third of the corner's own share of the turn keeps a convex loop convex.
            const double bulge = kind < 1 ? 0
                                 : convex ? chance.between(0, std::tan(pi / corners / 2))
                                          : chance.between(-0.7, 0.7);
            loop.vertices.push_back({convex ? p : Point{p.x, p.y * squash}, bulge});
        }
        if (!shape::crossesItself(loop) && shape::signedArea(loop) > 100)
            return loop;
    }
}

TEST(Offset, OfACircleIsACircle) {
    for (const double sense : {1.0, -1.0}) {
        const Loop circle =
            sense > 0 ? shape::circleLoop({7, -3}, 12) : shape::reversed(shape::circleLoop({7, -3}, 12));
        for (const double d : {0.75, -0.75, 30.0, -11.5}) {
            const Offset offset = offsetOf(circle, sense * d);
            ASSERT_EQ(offset.loops.size(), 1u);
            const auto made = shape::asCircle(offset.loops[0]);
            ASSERT_TRUE(made);
            EXPECT_NEAR(made->radius, 12 + d, 1e-13 * 40);
            EXPECT_NEAR(shape::distance(made->centre, {7, -3}), 0, 1e-13 * 10);
            EXPECT_GT(shape::signedArea(offset.loops[0]) * sense, 0);
            EXPECT_TRUE(offset.lost.empty());
        }
        EXPECT_TRUE(offsetOf(circle, sense * -12).loops.empty());
        EXPECT_TRUE(offsetOf(circle, sense * -15).loops.empty());
        EXPECT_EQ(offsetOf(circle, sense * -15).lost.size(), 2u);
    }
}

TEST(Offset, GrowingAConvexLoopFollowsSteiner) {
    // Steiner's formula for convex bodies in the plane: A(d) = A + L d + pi d^2 (Schneider, Convex
    // Bodies, 4.2).
    testing::Chance chance(20240611);
    for (int round = 0; round < 250; ++round) {
        const Loop loop = randomLoop(chance, true);
        const double d = chance.between(0.1, 30);
        const Offset offset = offsetOf(loop, d);
        ASSERT_EQ(offset.loops.size(), 1u) << round;
        const double wanted = shape::signedArea(loop) + shape::perimeter(loop) * d + pi * d * d;
        EXPECT_NEAR(areaOf(offset), wanted, 1e-9 * wanted) << round;
        // Its derivative: the parallel curve is L + 2 pi d long.
        EXPECT_NEAR(shape::perimeter(offset.loops[0]), shape::perimeter(loop) + 2 * pi * d, 1e-7) << round;
        EXPECT_TRUE(offset.lost.empty());
        expectAtDistance(offset, loop, d);
        if (::testing::Test::HasFatalFailure())
            FAIL() << "round " << round;
    }
}

TEST(Offset, ShrinkingARectangleOrAPolygonTakesTheCornersTangents) {
    const Offset rectangle = offsetOf(shape::rectangleLoop(80, 50), -4);
    ASSERT_EQ(rectangle.loops.size(), 1u);
    EXPECT_NEAR(areaOf(rectangle), 72 * 42, 1e-9);
    EXPECT_EQ(rectangle.loops[0].size(), 4u);
    // Lines round one circle: A(d) = A - L d + k d^2, k the sum of tan(half the turn) over the corners, since
    // each corner's two offset strips share a kite of that area.
    for (int corners = 3; corners < 12; ++corners) {
        Loop loop;
        for (int i = 0; i < corners; ++i)
            loop.vertices.push_back({shape::polar(40, 0.3 + 2 * pi * i / corners), 0});
        const double d = 5, k = corners * std::tan(pi / corners);
        EXPECT_NEAR(areaOf(offsetOf(loop, -d)),
                    shape::signedArea(loop) - shape::perimeter(loop) * d + k * d * d, 1e-8);
    }
}

TEST(Offset, ShrinkingARoundedLoopFollowsSteinerBackwards) {
    // Inner parallel of a loop that is itself the outer parallel of another: A - L d + pi d^2 while every
    // radius is more than d.
    testing::Chance chance(77);
    for (int round = 0; round < 60; ++round) {
        const double d = chance.between(0.5, 8);
        const Loop loop = offsetOf(randomLoop(chance, true), 9).loops.at(0);
        const Offset inner = offsetOf(loop, -d);
        ASSERT_EQ(inner.loops.size(), 1u) << round;
        const double wanted = shape::signedArea(loop) - shape::perimeter(loop) * d + pi * d * d;
        EXPECT_NEAR(areaOf(inner), wanted, 1e-8 * wanted) << round;
    }
}

TEST(Offset, OfRandomLoopsIsEverywhereAtTheDistanceAndNothingIsMissing) {
    testing::Chance chance(424242);
    int split = 0, vanished = 0, lost = 0, pockets = 0;
    for (int round = 0; round < 500; ++round) {
        const Loop loop = randomLoop(chance, round % 5 == 0);
        const double d = std::exp(chance.between(std::log(0.2), std::log(30.0)));
        for (const double way : {1.0, -1.0}) {
            const Offset offset = offsetOf(loop, way * d);
            expectAtDistance(offset, loop, d);
            if (::testing::Test::HasFatalFailure())
                FAIL() << "round " << round << " way " << way;
            EXPECT_EQ(expectWhole(offset, loop, way * d, chance, 150), 0) << "round " << round << " d " << d;
            split += way < 0 && offset.loops.size() > 1;
            vanished += offset.loops.empty();
            pockets += way > 0 && offset.loops.size() > 1;
            lost += !offset.lost.empty();
            // The other hand of the reversed loop is the same curve.
            if (round % 10 == 0) {
                EXPECT_NEAR(areaOf(offsetOf(shape::reversed(loop), -way * d)), -areaOf(offset), 1e-6);
            }
        }
    }
    // The sample holds every kind of case.
    EXPECT_GE(split, 10);
    EXPECT_GE(vanished, 10);
    EXPECT_GE(lost, 50);
    std::cout << "split " << split << ", vanished " << vanished << ", closed pockets " << pockets << '\n';
}

TEST(Offset, RegularFiguresWhoseBranchesAllMeetInOnePointVanishCleanly) {
    for (int corners = 3; corners < 9; ++corners)
        for (const double bulge : {0.0, 0.1, -0.1}) {
            Loop loop;
            for (int i = 0; i < corners; ++i)
                loop.vertices.push_back({shape::polar(40, 2 * pi * i / corners), bulge});
            const double reach = shape::distanceTo(loop, {0, 0});
            for (const double f : {0.5, 0.9, 0.999999, 1.000001, 1.5}) {
                const Offset offset = offsetOf(loop, -f * reach);
                EXPECT_EQ(offset.loops.empty(), f > 1) << corners << " " << bulge << " " << f;
                expectAtDistance(offset, loop, f * reach);
            }
        }
}

TEST(Offset, ASlotNarrowerThanTwiceTheDistanceVanishes) {
    const Loop slot = shape::slotLoop({5, 5}, 30, 6, 0.7);
    EXPECT_EQ(offsetOf(slot, -2.9).loops.size(), 1u);
    for (const double d : {3.0, 3.1, 20.0}) {
        EXPECT_TRUE(offsetOf(slot, -d).loops.empty()) << d;
        EXPECT_EQ(offsetOf(slot, -d).lost.size(), 4u) << d;
    }
}

/// Two squares of 20 mm joined by a neck of the given width, 10 mm long.
Loop dumbbell(double neck) {
    const double h = neck / 2;
    return {{{{-25, -10}, 0},
             {{-5, -10}, 0},
             {{-5, -h}, 0},
             {{5, -h}, 0},
             {{5, -10}, 0},
             {{25, -10}, 0},
             {{25, 10}, 0},
             {{5, 10}, 0},
             {{5, h}, 0},
             {{-5, h}, 0},
             {{-5, 10}, 0},
             {{-25, 10}, 0}}};
}

TEST(Offset, ANeckNarrowerThanTwiceTheDistanceSplitsAndIsNamed) {
    EXPECT_EQ(offsetOf(dumbbell(4.2), -2).loops.size(), 1u);
    for (const double neck : {4.0, 3.8}) {
        const Offset split = offsetOf(dumbbell(neck), -2);
        EXPECT_EQ(split.loops.size(), 2u) << neck;
        EXPECT_EQ(split.lost, (std::vector<std::size_t>{3 - 1, 8})) << neck;
        // Each square: 16 x 16, its side towards the neck straight but for the kerf's own reach into the
        // neck: the two arcs about the neck's corners meet at the neck's middle, sqrt(4 - h^2) before x = 5.
        const double h = neck / 2, reach = std::sqrt(std::max(0.0, 4 - h * h));
        const double tip = 2 * (2 * h - (h * reach / 2 + 2 * std::asin(h / 2)));
        EXPECT_NEAR(areaOf(split), 2 * (16 * 16 + tip), 1e-9) << neck;
    }
}

TEST(Offset, AnOpenSlotNarrowerThanTwiceTheDistanceIsPassedOverByTheOutside) {
    const Loop rim = testing::barWithOpenSlots().region.rim; // slots 22 mm wide
    EXPECT_TRUE(offsetOf(rim, 5).lost.empty());
    const Offset wide = offsetOf(rim, 11.5);
    EXPECT_EQ(wide.loops.size(), 1u);
    // Sides 2, 3, 4 and 8, 9, 10 are the two slots.
    EXPECT_EQ(wide.lost, (std::vector<std::size_t>{2, 3, 4, 8, 9, 10}));
    expectAtDistance(wide, rim, 11.5);
}

TEST(Offset, ASlotWithAWideInsideAndANarrowMouthLeavesAPocket) {
    // A square of 60 with a keyhole: mouth 2 wide, inside a circle of radius 8.
    const double y = std::sqrt(64.0 - 1);
    const double reach = 2 * pi - 2 * std::asin(1.0 / 8);
    const Loop loop{{{{-30, -30}, 0},
                     {{30, -30}, 0},
                     {{30, 30}, 0},
                     {{1, 30}, 0},
                     {{1, y}, -std::tan(reach / 4)},
                     {{-1, y}, 0},
                     {{-1, 30}, 0},
                     {{-30, 30}, 0}}};
    ASSERT_FALSE(shape::crossesItself(loop));
    const Offset offset = offsetOf(loop, 1.5);
    ASSERT_EQ(offset.loops.size(), 2u);
    const bool firstTurnsLeft = shape::signedArea(offset.loops[0]) > 0;
    EXPECT_LT(shape::signedArea(offset.loops[firstTurnsLeft ? 1 : 0]), 0);
    expectAtDistance(offset, loop, 1.5);
}

TEST(Offset, CornersDrawnOnlyNearlyTangentLeaveNoHair) {
    // Bulges cut to six places, as drawings carry them.
    Loop loop = shape::rectangleLoop(100, 60, 10);
    for (shape::Vertex& v : loop.vertices)
        v.bulge = std::round(v.bulge * 1e6) / 1e6;
    for (const double d : {0.75, -0.75, 9.5, -9.5, -9.999999}) {
        const Offset offset = offsetOf(loop, d);
        ASSERT_EQ(offset.loops.size(), 1u) << d;
        expectAtDistance(offset, loop, std::abs(d));
        EXPECT_NEAR(areaOf(offset), (100 + 2 * d) * (60 + 2 * d) - (4 - pi) * (10 + d) * (10 + d),
                    1e-3 * 100); // six places of a bulge on a 10 mm radius, along 320 mm
    }
}

TEST(Offset, ACuspIsRoundedOnItsOwnHandOnly) {
    // At (67, 2) an arc comes back along the line before it: a spike without an angle. The semicircle round
    // its tip belongs to the outside only, and was taken for the inside as well.
    const Loop drop{{{{67, 2}, -0.5},
                     {{46, 20}, 0.5},
                     {{15, 29}, 0.75},
                     {{-30, 23}, -0.25},
                     {{-63, 5}, 0},
                     {{-15, -7}, 0.25},
                     {{-20, -28}, 0.5},
                     {{22, -8}, 0}}};
    testing::Chance chance(3);
    for (const double d : {1.5, -1.5, 4.0, -4.0}) {
        const Offset offset = offsetOf(drop, d);
        EXPECT_EQ(offset.loops.size(), 1u);
        expectAtDistance(offset, drop, std::abs(d));
        EXPECT_EQ(expectWhole(offset, drop, d, chance, 400), 0) << d;
    }
}

TEST(Offset, ArcsThatAreAllButStraightAreNoTrouble) {
    testing::Chance chance(31);
    for (int round = 0; round < 300; ++round) {
        Loop loop = randomLoop(chance, false);
        for (shape::Vertex& v : loop.vertices)
            v.bulge = std::exp(chance.between(std::log(1e-11), std::log(1e-3))) *
                      (chance.between(-1, 1) < 0 ? -1 : 1);
        if (shape::crossesItself(loop))
            continue;
        for (const double d : {1.0, -1.0, 6.0, -6.0}) {
            const Offset offset = offsetOf(loop, d);
            expectAtDistance(offset, loop, std::abs(d));
            EXPECT_EQ(expectWhole(offset, loop, d, chance, 60), 0) << "round " << round << " d " << d;
        }
    }
}

TEST(Offset, WorksFarFromTheOriginAndAtAnySize) {
    testing::Chance chance(9);
    for (int round = 0; round < 40; ++round) {
        const Loop loop = randomLoop(chance, false);
        const double d = chance.between(0.5, 6);
        const double area = areaOf(offsetOf(loop, -d));
        EXPECT_NEAR(areaOf(offsetOf(shape::moved(loop, {1500, -900}), -d)), area, 1e-4) << round;
        Loop small = loop;
        for (shape::Vertex& v : small.vertices)
            v.at = v.at * 1e-2;
        EXPECT_NEAR(areaOf(offsetOf(small, -d * 1e-2)), area * 1e-4, 1e-8) << round;
    }
}

} // namespace
} // namespace pw::outline
