#include "core/shape/loop.h"
#include "core/shape/nearest.h"
#include "core/shape/region.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace pw::shape;
using std::numbers::pi;

namespace {

constexpr double kRounding = 1e-11; ///< relative; a few hundred roundings of double arithmetic
const double kQuarter = std::tan(pi / 8);

/// A pear of mixed sides: two lines, a bulge, a dent.
Loop mixedLoop() {
    return {{{{-30, -20}, 0}, {{40, -25}, 0.6}, {{45, 30}, 0}, {{0, 35}, -0.4}, {{-35, 25}, 0.1}}};
}

/// The same curve as a polygon of many short chords, independent of every arc formula but pointAt.
std::vector<Point> chords(const Loop& loop, int perSide) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < loop.size(); ++i)
        for (int k = 0; k < perSide; ++k)
            points.push_back(loop.side(i).pointAt(double(k) / perSide));
    return points;
}

double polygonArea(const std::vector<Point>& p) {
    double twice = 0;
    for (std::size_t i = 0; i < p.size(); ++i)
        twice += cross(p[i], p[(i + 1) % p.size()]);
    return twice / 2;
}

bool polygonContains(const std::vector<Point>& p, Point q) {
    bool in = false;
    for (std::size_t i = 0, j = p.size() - 1; i < p.size(); j = i++)
        if ((p[i].y > q.y) != (p[j].y > q.y) &&
            q.x < (p[j].x - p[i].x) * (q.y - p[i].y) / (p[j].y - p[i].y) + p[i].x)
            in = !in;
    return in;
}

} // namespace

TEST(Side, EveryPointOfAnArcIsOnItsCircle) {
    for (const double bulge : {-2.5, -1.0, -0.3, -1e-4, 1e-4, 0.2, kQuarter, 1.0, 3.0}) {
        const Side side{{3, -4}, {17, 9}, bulge};
        const Circle c = side.circle();
        for (double t = 0; t <= 1; t += 0.125)
            EXPECT_NEAR(distance(side.pointAt(t), c.centre), c.radius, kRounding * c.radius)
                << bulge << " " << t;
        EXPECT_NEAR(side.length(), c.radius * std::abs(side.sweep()), kRounding * side.length());
        // Definition of the bulge: height of the arc over half the chord.
        const Point mid = 0.5 * (side.from + side.to);
        EXPECT_NEAR(distance(side.pointAt(0.5), mid), std::abs(bulge) * distance(side.from, side.to) / 2,
                    1e-9);
    }
}

TEST(Side, PositiveBulgeTurnsCounterClockwise) {
    const Side half{{1, 0}, {-1, 0}, 1}; // the upper half of the unit circle
    EXPECT_NEAR(half.pointAt(0.5).y, 1, kRounding);
    EXPECT_NEAR(half.tangentAt(0.5).x, -1, kRounding);
    EXPECT_NEAR(half.tangentAt(0).y, 1, kRounding);
    EXPECT_EQ(half.reversed().reversed().from, half.from);
    EXPECT_NEAR(half.reversed().pointAt(0.25).y, half.pointAt(0.75).y, kRounding);
}

TEST(Side, TangentIsTheSlopeOfThePath) {
    for (const double bulge : {0.0, 0.4, -1.3}) {
        const Side side{{3, -4}, {17, 9}, bulge};
        for (const double t : {0.1, 0.5, 0.8}) {
            const Point step = side.pointAt(t + 1e-6) - side.pointAt(t - 1e-6);
            const Point expected = step * (1 / norm(step));
            EXPECT_NEAR(cross(expected, side.tangentAt(t)), 0, 1e-8);
            EXPECT_GT(dot(expected, side.tangentAt(t)), 0);
        }
    }
}

TEST(Side, NearestPointBeatsEverySampleAndIsOnTheSide) {
    std::mt19937 random(1);
    std::uniform_real_distribution<double> where(-30, 30), bulges(-2, 2);
    for (int round = 0; round < 200; ++round) {
        const Side side{{where(random), where(random)}, {where(random), where(random)}, bulges(random)};
        const Point p{where(random), where(random)};
        const double found = side.distanceTo(p);
        double sampled = 1e9;
        for (int k = 0; k <= 400; ++k)
            sampled = std::min(sampled, distance(p, side.pointAt(k / 400.0)));
        EXPECT_LE(found, sampled + 1e-9);
        EXPECT_GE(found, sampled - side.length() / 400) << round;
        EXPECT_NEAR(side.distanceTo(side.nearestTo(p)), 0, 1e-9);
    }
}

TEST(Side, AnArcThatIsAllButStraightEndsWhereItEnds) {
    // Its centre is up to 10^10 mm away, and a point beyond an end was taken to lie beside the arc.
    for (double bulge = 1e-10; bulge < 2e-3; bulge *= 3)
        for (const double sign : {1.0, -1.0}) {
            const Side arc{{-40, 20}, {-15, 28}, sign * bulge};
            for (const double beyond : {0.05, 1.0, 10.0}) {
                const Point p = arc.to + beyond * arc.tangentAt(1);
                EXPECT_NEAR(arc.distanceTo(p), beyond, 1e-12) << bulge;
            }
            for (const double t : {0.1, 0.5, 0.8})
                for (const double off : {-30.0, -1.0, 0.0, 2.0, 25.0}) {
                    const Point along = arc.tangentAt(t), p = arc.pointAt(t) + off * Point{-along.y, along.x};
                    EXPECT_NEAR(arc.distanceTo(p), std::abs(off), 1e-11) << bulge; // a radius of metres
                    EXPECT_NEAR(distance(arc.nearestTo(p), arc.pointAt(t)), 0, 1e-9) << bulge;
                }
        }
}

TEST(Side, BoundsHoldTheSideAndAreTouchedByIt) {
    std::mt19937 random(2);
    std::uniform_real_distribution<double> where(-30, 30), bulges(-2, 2);
    for (int round = 0; round < 100; ++round) {
        const Side side{{where(random), where(random)}, {where(random), where(random)}, bulges(random)};
        const Box box = side.bounds();
        double top = -1e9, left = 1e9;
        for (int k = 0; k <= 2000; ++k) {
            const Point p = side.pointAt(k / 2000.0);
            top = std::max(top, p.y);
            left = std::min(left, p.x);
            ASSERT_LE(p.x, box.high.x + 1e-9);
            ASSERT_GE(p.y, box.low.y - 1e-9);
        }
        EXPECT_NEAR(top, box.high.y, 0.01);
        EXPECT_NEAR(left, box.low.x, 0.01);
    }
}

TEST(Crossings, LieOnBothSides) {
    std::mt19937 random(3);
    std::uniform_real_distribution<double> where(-10, 10), bulges(-1.5, 1.5);
    int met = 0;
    for (int round = 0; round < 120; ++round) {
        Side a{{where(random), where(random)}, {where(random), where(random)}, bulges(random)};
        Side b{
            {where(random), where(random)}, {where(random), where(random)}, round % 3 ? bulges(random) : 0};
        if (round % 5 == 0)
            a.bulge = 0;
        const auto points = crossings(a, b);
        for (const Point& p : points) {
            EXPECT_NEAR(a.distanceTo(p), 0, 1e-8);
            EXPECT_NEAR(b.distanceTo(p), 0, 1e-8);
        }
        EXPECT_EQ(points.size(), crossings(b, a).size());
        // Independent count: changes of sign along fine chords.
        int count = 0;
        const int n = 200;
        for (int i = 0; i < n; ++i)
            for (int j = 0; j < n; ++j) {
                const Point p = a.pointAt(double(i) / n), q = a.pointAt(double(i + 1) / n);
                const Point r = b.pointAt(double(j) / n), s = b.pointAt(double(j + 1) / n);
                if (cross(q - p, r - p) * cross(q - p, s - p) < 0 &&
                    cross(s - r, p - r) * cross(s - r, q - r) < 0)
                    ++count;
            }
        if (std::size_t(count) != points.size()) {
            // Chords may miss a pair of crossings where the sides all but touch, or one at a very end.
            EXPECT_LT(std::abs(count - int(points.size())), 3);
            continue;
        }
        ++met;
    }
    EXPECT_GT(met, 110);
}

TEST(Crossings, TouchingCountsOnce) {
    const Side line{{-5, 1}, {5, 1}, 0}, half{{1, 0}, {-1, 0}, 1};
    EXPECT_EQ(crossings(line, half).size(), 1u);
    const Side besideIt{{3, 0}, {1, 0}, -1}; // lower-left neighbour circle touching at (1, 0)
    EXPECT_EQ(crossings(half, besideIt).size(), 1u);
    EXPECT_EQ(crossings({{0, 0}, {1, 0}, 0}, {{1, 0}, {2, 0}, 0}).size(), 1u);
}

TEST(Crossings, OverlappingSidesGiveNoPoints) {
    EXPECT_TRUE(crossings({{0, 0}, {2, 0}, 0}, {{1, 0}, {3, 0}, 0}).empty());
    EXPECT_TRUE(meeting({{0, 0}, {2, 0}, 0}, {{1, 0}, {3, 0}, 0}).overlap);
    EXPECT_TRUE(meeting({{1, 0}, {-1, 0}, 1}, {{0, 1}, {0, -1}, 1}).overlap);
}

TEST(Loop, CircleHasTheAreaAndPerimeterOfACircle) {
    const Loop loop = circleLoop({5, -7}, 12);
    EXPECT_NEAR(signedArea(loop), pi * 144, 1e-10);
    EXPECT_NEAR(perimeter(loop), 24 * pi, 1e-11);
    EXPECT_NEAR(centroid(loop).x, 5, 1e-12);
    EXPECT_NEAR(centroid(loop).y, -7, 1e-12);
    ASSERT_TRUE(asCircle(loop));
    EXPECT_NEAR(asCircle(loop)->radius, 12, 1e-12);
    EXPECT_FALSE(asCircle(slotLoop({}, 30, 10, 0)));
    EXPECT_TRUE(asCircle(reversed(loop)));
}

TEST(Loop, KnownShapesHaveTheirTextbookAreas) {
    EXPECT_NEAR(signedArea(rectangleLoop(80, 50)), 4000, 1e-10);
    EXPECT_NEAR(signedArea(rectangleLoop(80, 50, 10)), 4000 - (4 - pi) * 100, 1e-9);
    EXPECT_NEAR(signedArea(rectangleLoop(80, 50, 25)), 30 * 50 + pi * 625, 1e-9);
    EXPECT_NEAR(signedArea(barLoop(120, 40, true)), 80 * 40 + pi * 400, 1e-9);
    EXPECT_NEAR(signedArea(slotLoop({3, 4}, 30, 10, 0.7)), 200 + pi * 25, 1e-10);
    EXPECT_FALSE(crossesItself(rectangleLoop(80, 50, 25)));
    EXPECT_FALSE(crossesItself(rectangleLoop(50, 80, 25)));
    EXPECT_FALSE(crossesItself(barLoop(120, 40, true)));
    EXPECT_TRUE(asCircle(rectangleLoop(50, 50, 25)));
}

TEST(Loop, AreaAndCentroidConvergeFromFineChords) {
    const Loop loop = mixedLoop();
    const double coarse = polygonArea(chords(loop, 200)), fine = polygonArea(chords(loop, 400));
    // Chord polygons err with the square of the chord; the limit is a third beyond the finer one.
    EXPECT_NEAR(signedArea(loop), fine + (fine - coarse) / 3, 1e-6);
    Point moment;
    double area = 0;
    const auto points = chords(loop, 2000);
    for (std::size_t i = 0; i < points.size(); ++i) {
        const Point a = points[i], b = points[(i + 1) % points.size()];
        moment = moment + (a + b) * (cross(a, b) / 6);
        area += cross(a, b) / 2;
    }
    EXPECT_NEAR(centroid(loop).x, moment.x / area, 1e-4);
    EXPECT_NEAR(centroid(loop).y, moment.y / area, 1e-4);
}

TEST(Loop, CentroidOfAHalfDiscIsFourThirdsOfTheRadiusOverPi) {
    const Loop half{{{{0, 0}, 0}, {{9, 0}, kQuarter}, {{0, 9}, kQuarter}, {{-9, 0}, 0}}};
    EXPECT_NEAR(centroid(half).y, 4 * 9 / (3 * pi), 1e-11);
    EXPECT_NEAR(centroid(half).x, 0, 1e-11);
}

TEST(Loop, ContainsAgreesWithTheCircleEquation) {
    const Loop loop = circleLoop({1, 2}, 10);
    EXPECT_TRUE(contains(loop, {1, 2})); // on the chord of both halves
    std::mt19937 random(4);
    std::uniform_real_distribution<double> angle(0, 2 * pi);
    for (int i = 0; i < 2000; ++i) {
        const double a = angle(random);
        EXPECT_TRUE(contains(loop, Point{1, 2} + polar(10 - 1e-9, a))) << a;
        EXPECT_FALSE(contains(loop, Point{1, 2} + polar(10 + 1e-9, a))) << a;
    }
    for (const double a : {0.0, pi / 2, pi, 3 * pi / 2}) {
        EXPECT_TRUE(contains(loop, Point{1, 2} + polar(10 - 1e-9, a))) << a;
        EXPECT_FALSE(contains(loop, Point{1, 2} + polar(10 + 1e-9, a))) << a;
    }
}

TEST(Loop, ContainsAgreesWithFineChordsOnMixedSides) {
    for (const Loop& loop : {mixedLoop(), reversed(mixedLoop()), slotLoop({2, 3}, 40, 15, 1.1),
                             turned(rectangleLoop(60, 40, 12), 0.3)}) {
        const auto points = chords(loop, 4000);
        std::mt19937 random(5);
        std::uniform_real_distribution<double> where(-60, 60);
        for (int i = 0; i < 400; ++i) {
            const Point p{where(random), std::round(where(random))};
            if (distanceTo(loop, p) < 1e-3)
                continue;
            EXPECT_EQ(contains(loop, p), polygonContains(points, p)) << p.x << " " << p.y;
        }
    }
}

TEST(Loop, ReversingTurningAndMirroringKeepWhatTheyShould) {
    const Loop loop = mixedLoop();
    EXPECT_NEAR(signedArea(reversed(loop)), -signedArea(loop), 1e-9);
    EXPECT_NEAR(signedArea(turned(loop, 1.2)), signedArea(loop), 1e-9);
    EXPECT_NEAR(signedArea(mirrored(loop, 0.4)), signedArea(loop), 1e-9);
    EXPECT_NEAR(perimeter(mirrored(loop, 0.4)), perimeter(loop), 1e-9);
    const Point p{20, 5};
    const Point image = rotated({rotated(p, -0.4).x, -rotated(p, -0.4).y}, 0.4);
    EXPECT_NEAR(distanceTo(mirrored(loop, 0.4), image), distanceTo(loop, p), 1e-9);
    EXPECT_NEAR(distanceTo(moved(turned(loop, 1.2), {3, 4}), rotated(p, 1.2) + Point{3, 4}),
                distanceTo(loop, p), 1e-9);
}

TEST(Loop, SelfCrossingIsSeen) {
    EXPECT_FALSE(crossesItself(mixedLoop()));
    EXPECT_FALSE(crossesItself(circleLoop({1, 1}, 3)));
    const Loop bowTie{{{{0, 0}, 0}, {{10, 10}, 0}, {{10, 0}, 0}, {{0, 10}, 0}}};
    EXPECT_TRUE(crossesItself(bowTie));
    const Loop spike{{{{0, 0}, 0}, {{10, 0}, 0}, {{10, 10}, 0}, {{10, 4}, 0}, {{0, 4}, 0}}};
    EXPECT_TRUE(crossesItself(spike));
    const Loop dentThroughTheFarSide{{{{0, 0}, 0}, {{40, 0}, 0}, {{40, 10}, 1}, {{0, 10}, 0}}};
    EXPECT_FALSE(crossesItself(dentThroughTheFarSide));
    Loop dent = dentThroughTheFarSide;
    dent.vertices[2].bulge = -1;
    EXPECT_TRUE(crossesItself(dent));
}

TEST(Loop, ClearanceOfCirclesIsCentreDistanceLessRadii) {
    EXPECT_NEAR(clearance(circleLoop({0, 0}, 12), circleLoop({24.2, 0}, 12)), 0.2, 1e-12);
    EXPECT_NEAR(clearance(circleLoop({0, 0}, 12), circleLoop(polar(24.2, 1.234), 12)), 0.2, 1e-12);
    EXPECT_NEAR(clearance(circleLoop({0, 0}, 70), circleLoop(polar(50, 0.3), 12)), 8, 1e-12);
    EXPECT_EQ(clearance(circleLoop({0, 0}, 12), circleLoop({20, 0}, 12)), 0);
    EXPECT_TRUE(crosses(circleLoop({0, 0}, 12), circleLoop({20, 0}, 12)));
    EXPECT_FALSE(crosses(circleLoop({0, 0}, 70), circleLoop({20, 0}, 12)));
}

TEST(Loop, NearestPointsOfAnyTwoLoopsBeatEverySample) {
    std::mt19937 random(6);
    std::uniform_real_distribution<double> angle(0, 2 * pi);
    for (int round = 0; round < 30; ++round) {
        const Loop a = turned(mixedLoop(), angle(random));
        const Loop b = moved(slotLoop({}, 50, 12, angle(random)), polar(95, angle(random)));
        const Nearest found = nearest(a, b);
        double sampled = 1e9;
        for (const Point& p : chords(a, 300))
            sampled = std::min(sampled, distanceTo(b, p));
        EXPECT_LE(found.distance, sampled + 1e-9);
        EXPECT_GE(found.distance, sampled - 0.05);
        EXPECT_NEAR(distance(found.onA, found.onB), found.distance, 1e-9);
        EXPECT_NEAR(distanceTo(a, found.onA), 0, 1e-9);
        EXPECT_NEAR(distanceTo(b, found.onB), 0, 1e-9);
    }
}

TEST(Region, MaterialIsInsideTheRimAndOutsideTheHoles) {
    const Region region{circleLoop({}, 70),
                        {{circleLoop({}, 10), Part::Bore, 0}, {circleLoop({50, 0}, 12), Part::Access, 0}}};
    EXPECT_NEAR(area(region), pi * (4900 - 100 - 144), 1e-9);
    EXPECT_TRUE(containsMaterial(region, {30, 0}));
    EXPECT_FALSE(containsMaterial(region, {0, 0}));
    EXPECT_FALSE(containsMaterial(region, {50, 5}));
    EXPECT_FALSE(containsMaterial(region, {0, 71}));
}
