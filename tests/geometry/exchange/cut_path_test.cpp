#include "geometry/exchange/cut_path.h"

#include "geometry/exchange/cut_order.h"
#include "tests/geometry/outline/plates.h"
#include "tests/support/chance.h"
#include "tests/support/cut_files.h"
#include "tests/support/plates.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::exchange {
namespace {

using shape::Loop;
using shape::Part;
using shape::Point;
using shape::Region;
using shape::Side;
using std::numbers::pi;

constexpr double kTrue = 1e-6; ///< mm; on half a kerf of 0.75 mm about 1e-6 of it

CutSettings settingsOf(double thickness, double kerf = 1.5,
                       job::Process process = job::Process::PlasmaTable) {
    CutSettings settings;
    settings.process = process;
    settings.thickness = Length::fromMm(thickness);
    settings.kerf = Length::fromMm(kerf);
    return settings;
}

CutPath pathOf(const std::vector<Region>& plates, const CutSettings& settings) {
    const auto path = makeCutPath(plates, settings, usualRates(settings.process, settings.thickness));
    EXPECT_TRUE(path.ok()) << (path.ok() ? "" : util::toText(path.problem()));
    return path.ok() ? *path : CutPath{};
}

std::string problemOf(const std::vector<Region>& plates, const CutSettings& settings) {
    const auto path = makeCutPath(plates, settings, usualRates(settings.process, settings.thickness));
    return path.ok() ? "" : util::toText(path.problem());
}

Region moved(Region region, Point by) {
    region.rim = shape::moved(region.rim, by);
    for (shape::Hole& hole : region.holes)
        hole.loop = shape::moved(hole.loop, by);
    return region;
}

double distanceToEdges(const Region& plate, Point p) {
    double least = distanceTo(plate.rim, p);
    for (const shape::Hole& hole : plate.holes)
        least = std::min(least, distanceTo(hole.loop, p));
    return least;
}

double distanceToMoves(const Burn& burn, Point p) {
    double least = 1e9;
    for (const Side& move : testing::movesOf(burn))
        least = std::min(least, move.distanceTo(p));
    return least;
}

bool says(const std::vector<std::string>& notes, const std::string& words) {
    return std::any_of(notes.begin(), notes.end(),
                       [&](const std::string& note) { return note.find(words) != std::string::npos; });
}

/// What must hold of any path, whatever the plates.
void expectSound(const CutPath& path, const std::vector<Region>& plates, double kerf,
                 testing::Chance& chance) {
    std::vector<bool> freed(plates.size());
    for (const Burn& burn : path.burns) {
        SCOPED_TRACE(nameOf(burn.part, burn.index));
        const Region& plate = plates[burn.plate];
        EXPECT_FALSE(freed[burn.plate]) << "cut after its plate was free";
        freed[burn.plate] = burn.outside;
        // The plate on the right hand: clockwise outside, counter-clockwise inside.
        EXPECT_EQ(signedArea(burn.loop) < 0, burn.outside);
        EXPECT_FALSE(crossesItself(burn.loop));
        for (std::size_t i = 0; i < burn.loop.size(); ++i)
            for (const double t : {0.0, 0.3, 0.7}) {
                const Point p = burn.loop.side(i).pointAt(t);
                EXPECT_NEAR(distanceToEdges(plate, p), kerf / 2, kTrue);
                EXPECT_FALSE(containsMaterial(plate, p));
            }
        // Leads: from scrap on to the start of the cut, the arc without a corner.
        EXPECT_EQ(burn.leadIn.to, burn.loop.vertices.front().at);
        const Point along = burn.loop.side(0).tangentAt(0);
        EXPECT_GE(distanceTo(burn.loop, burn.pierce()), kerf * (1 - 1e-9));
        if (burn.leadOut) {
            EXPECT_NEAR(cross(burn.leadIn.tangentAt(1), along), 0, 1e-6);
            EXPECT_GT(dot(burn.leadIn.tangentAt(1), along), 0);
            EXPECT_NEAR(cross(burn.leadOut->tangentAt(0), along), 0, 1e-6);
            EXPECT_EQ(burn.leadOut->from, burn.leadIn.to);
        }
        for (const Side* lead : {&burn.leadIn, burn.leadOut ? &*burn.leadOut : &burn.leadIn})
            for (double t = 0; t <= 1; t += 1.0 / 16) {
                const Point p = lead->pointAt(t);
                for (const Region& each : plates) {
                    EXPECT_FALSE(containsMaterial(each, p));
                    EXPECT_GE(distanceToEdges(each, p), kerf / 2 - kTrue);
                }
                for (const Burn& other : path.burns)
                    if (&other != &burn) {
                        EXPECT_GE(distanceTo(other.loop, p), kerf * (1 - 1e-9));
                    }
            }
    }
    EXPECT_EQ(std::count(freed.begin(), freed.end(), true), static_cast<long>(plates.size()));
    // What the torch burns away is no part of any plate.
    for (const Region& plate : plates) {
        const shape::Box box = bounds(plate.rim);
        for (int k = 0; k < 300; ++k) {
            const Point p{chance.between(box.low.x, box.high.x), chance.between(box.low.y, box.high.y)};
            if (!containsMaterial(plate, p))
                continue;
            for (const Burn& burn : path.burns)
                EXPECT_GE(distanceToMoves(burn, p), kerf / 2 - kTrue);
        }
    }
}

TEST(CutPath, OfTheKnownPlatesLeavesThePlate) {
    testing::Chance chance(7);
    for (const testing::KnownPlate& plate : testing::knownPlates())
        for (const double kerf : {0.8, 1.5, 2.5}) {
            SCOPED_TRACE(plate.name);
            expectSound(pathOf({plate.region}, settingsOf(plate.thickness, kerf)), {plate.region}, kerf,
                        chance);
        }
}

TEST(CutPath, OfRandomPlatesLeavesThePlate) {
    testing::Chance chance(7);
    int burns = 0, drilled = 0;
    for (const job::Job& job : testing::soundRandomJobs(120, 99)) {
        const Region region = outline::buildRegion(job).region;
        const CutPath path = pathOf({region}, settingsOf(8, 1.5));
        expectSound(path, {region}, 1.5, chance);
        burns += static_cast<int>(path.burns.size());
        drilled += static_cast<int>(path.drilled.size());
        if (::testing::Test::HasFailure())
            FAIL() << "job " << burns;
    }
    EXPECT_GT(burns, 300);
    EXPECT_GT(drilled, 50);
}

TEST(CutPath, GrowsTheOutsideAndShrinksTheHolesByHalfAKerf) {
    const CutPath path = pathOf({testing::ringOfSix().region}, settingsOf(12));
    for (const Burn& burn : path.burns) {
        const auto circle = asCircle(burn.loop);
        ASSERT_TRUE(circle);
        const double finished = burn.outside ? 70 : burn.part == Part::Bore ? 10 : 12;
        EXPECT_NEAR(circle->radius, finished + (burn.outside ? 0.75 : -0.75), 1e-12);
    }
}

TEST(CutPath, CountsPiercesLengthAndTime) {
    // A disc of 100 mm with a hole of 40 mm, kerf 2, 10 mm thick: leads of 5 mm radius, a quarter circle in
    // and an eighth out, so 2 pi 51 + 2 pi 19 + 2 x 5 (pi/2 + pi/4).
    Region region{shape::circleLoop({0, 0}, 50), {{shape::circleLoop({0, 0}, 20), Part::Bore, 0}}};
    const CutRates rates{1000, 0.7, 6000, false};
    const auto path = makeCutPath({region}, settingsOf(10, 2), rates);
    ASSERT_TRUE(path.ok());
    ASSERT_EQ(path->burns.size(), 2u);
    const double cut = 2 * pi * (51 + 19) + 2 * 5 * pi * 0.75;
    EXPECT_NEAR(path->cutLength, cut, 1e-9);
    const double travel = distance(path->extents.low, path->burns[0].pierce()) +
                          distance(path->burns[0].end(), path->burns[1].pierce());
    EXPECT_NEAR(path->travelLength, travel, 1e-9);
    EXPECT_NEAR(path->seconds, cut * 0.06 + travel * 0.01 + 1.4, 1e-9);
}

TEST(CutPath, NeighboursOnARingAreNotCutInARow) {
    // Ring of six, 12 mm plate: neighbours are 26 mm apart, under three thicknesses; the next but one is not.
    Region region{shape::circleLoop({0, 0}, 70), {}};
    for (int i = 0; i < 6; ++i)
        region.holes.push_back({shape::circleLoop(shape::polar(50, i * pi / 3), 12), Part::Access, i});
    const CutPath path = pathOf({region}, settingsOf(12));
    ASSERT_EQ(path.burns.size(), 7u);
    int beside = 0;
    for (std::size_t k = 1; k < 6; ++k) {
        const int step = std::abs(path.burns[k].index - path.burns[k - 1].index);
        beside += step == 1 || step == 5;
    }
    EXPECT_EQ(beside, 0);
    // It costs little: no step is longer than the way across.
    EXPECT_LT(path.travelLength, 8 * 100);
}

TEST(CutOrder, HolesFarApartAreCutByTheShortestNextStep) {
    std::vector<Loop> loops;
    std::vector<CutPlace> cuts;
    for (const double x : {300.0, 0.0, 200.0, 100.0})
        loops.push_back(shape::circleLoop({x, 0}, 10));
    for (const Loop& loop : loops)
        cuts.push_back({centroid(loop), centroid(loop), &loop});
    EXPECT_EQ(cutOrder(cuts, {-50, 0}, 30), (std::vector<std::size_t>{1, 3, 2, 0}));
    // Within each other's heat (80 mm apart): 0, 200, and there both others are neighbours and as near.
    EXPECT_EQ(cutOrder(cuts, {-50, 0}, 90), (std::vector<std::size_t>{1, 2, 0, 3}));
}

TEST(CutPath, ASmallHoleIsDrilledWithItsPilotCentre) {
    const CutPath path = pathOf({testing::ringOfSix().region}, settingsOf(12));
    const auto hole = std::find_if(path.drilled.begin(), path.drilled.end(), [](const DrilledHole& h) {
        return h.part == Part::Extra && h.index == 0;
    });
    ASSERT_NE(hole, path.drilled.end());
    EXPECT_NEAR(distance(hole->centre, {25, 14}), 0, 1e-12);
    EXPECT_NEAR(hole->diameter.mm(), 6, 1e-12);
    for (const Burn& burn : path.burns)
        EXPECT_FALSE(burn.part == Part::Extra && burn.index == 0);
}

TEST(CutPath, ASlotTooNarrowToBurnGetsPilotsAtItsEnds) {
    // 20 x 6 slot, turned 0.3, in 12 mm plate.
    const CutPath path = pathOf({testing::ringOfSix().region}, settingsOf(12));
    ASSERT_EQ(path.sawn.size(), 1u);
    std::vector<Point> ends;
    for (const DrilledHole& hole : path.drilled)
        if (hole.part == Part::Extra && hole.index == 1)
            ends.push_back(hole.centre);
    ASSERT_EQ(ends.size(), 2u);
    EXPECT_NEAR(distance(ends[0], ends[1]), 14, 1e-9);
    EXPECT_NEAR(distance((ends[0] + ends[1]) * 0.5, {-25, -15}), 0, 1e-9);
}

TEST(CutPath, ASmallHoleWorthBurningIsPiercedInTheMiddleAndSaysSo) {
    testing::Chance chance(7);
    // 3 mm plate, kerf 1.5: a hole of 6 mm leaves a line of 2.25 mm radius; a quarter circle's pierce would
    // lie 0.29 x 2.25 = 0.66 mm from it, less than a kerf.
    Region region{shape::circleLoop({0, 0}, 50), {{shape::circleLoop({10, 5}, 3), Part::Extra, 0}}};
    const CutPath path = pathOf({region}, settingsOf(3));
    ASSERT_EQ(path.burns.size(), 2u);
    EXPECT_NEAR(distance(path.burns[0].pierce(), {10, 5}), 0, 1e-6);
    EXPECT_FALSE(path.burns[0].leadIn.isArc());
    EXPECT_FALSE(path.burns[0].leadOut);
    EXPECT_TRUE(says(path.notes, "Hole 1: too small for a lead-in that bends"));
    expectSound(path, {region}, 1.5, chance);
}

TEST(CutPath, AHoleWithoutRoomForThePierceIsDrilled) {
    // 4 mm hole, kerf 1.5: the line has 1.25 mm radius, the pierce needs 1.5.
    Region region{shape::circleLoop({0, 0}, 50), {{shape::circleLoop({10, 5}, 2), Part::Extra, 0}}};
    const CutPath path = pathOf({region}, settingsOf(3));
    EXPECT_EQ(path.burns.size(), 1u);
    ASSERT_EQ(path.drilled.size(), 1u);
    EXPECT_EQ(path.drilled[0].note, "no room to pierce inside it");
    EXPECT_NEAR(path.drilled[0].diameter.mm(), 4, 1e-12);
}

TEST(CutPath, TheOutsideRunsIntoOpenSlotsAndPassesThoseNarrowerThanTheKerf) {
    const Region bar = testing::barWithOpenSlots().region; // slots 22 wide
    const CutPath path = pathOf({bar}, settingsOf(9.5, 2.5));
    const Burn& outside = path.burns.back();
    ASSERT_TRUE(outside.outside);
    EXPECT_NEAR(distanceTo(outside.loop, {70 - 11 + 1.25, 0}), 0, 1e-6); // the slot's bottom
    EXPECT_FALSE(says(path.notes, "narrower"));

    // A square with a 2 mm slot.
    Region slotted{{{{{-40, -40}, 0},
                     {{40, -40}, 0},
                     {{40, 40}, 0},
                     {{1, 40}, 0},
                     {{1, 10}, 0},
                     {{-1, 10}, 0},
                     {{-1, 40}, 0},
                     {{-40, 40}, 0}}},
                   {}};
    const CutPath narrow = pathOf({slotted}, settingsOf(6, 2.5));
    EXPECT_EQ(narrow.burns.size(), 1u);
    EXPECT_TRUE(says(narrow.notes, "Outside: where a slot or corner of it is narrower than the cut"));
    EXPECT_GT(distanceTo(narrow.burns[0].loop, {0, 20}), 15);
    EXPECT_EQ(pathOf({slotted}, settingsOf(6, 1.5)).notes, std::vector<std::string>());
}

TEST(CutPath, NoCutStartsAtASharpCorner) {
    const std::vector<Region> plates = {testing::barWithOpenSlots().region, testing::threeQuarterPie().region,
                                        Region{shape::rectangleLoop(90, 40), {}}};
    for (const Region& plate : plates) {
        const Burn outside = pathOf({plate}, settingsOf(8)).burns.back();
        for (std::size_t i = 0; i < plate.rim.size(); ++i) {
            const Point in = plate.rim.side((i + plate.rim.size() - 1) % plate.rim.size()).tangentAt(1),
                        out = plate.rim.side(i).tangentAt(0);
            if (std::abs(cross(in, out)) > 0.1) {
                EXPECT_GT(distance(plate.rim.vertices[i].at, outside.leadIn.to), 1.5);
            }
        }
    }
}

TEST(CutPath, AHoleWithANarrowNeckIsCutAsTwoAndSaysSo) {
    testing::Chance chance(7);
    const Loop dumbbell{{{{-25, -10}, 0},
                         {{-5, -10}, 0},
                         {{-5, -0.6}, 0},
                         {{5, -0.6}, 0},
                         {{5, -10}, 0},
                         {{25, -10}, 0},
                         {{25, 10}, 0},
                         {{5, 10}, 0},
                         {{5, 0.6}, 0},
                         {{-5, 0.6}, 0},
                         {{-5, 10}, 0},
                         {{-25, 10}, 0}}};
    const Region region{shape::rectangleLoop(100, 60), {{dumbbell, Part::Extra, 0}}};
    const CutPath path = pathOf({region}, settingsOf(6));
    EXPECT_EQ(path.burns.size(), 3u);
    EXPECT_TRUE(says(path.notes, "Hole 1: a neck of it is narrower than the cut. It is cut as 2 holes"));
    expectSound(path, {region}, 1.5, chance);
}

TEST(CutPath, SeveralPlatesAreCutOneAfterTheOther) {
    testing::Chance chance(7);
    const Region one = testing::ringOfSix().region;
    const std::vector<Region> sheet = {one, moved(one, {160, 0}), moved(one, {80, 145}),
                                       moved(testing::barWithOpenSlots().region, {260, 150})};
    const CutPath path = pathOf(sheet, settingsOf(12));
    expectSound(path, sheet, 1.5, chance);
    for (std::size_t k = 1; k < path.burns.size(); ++k)
        EXPECT_TRUE(path.burns[k].plate == path.burns[k - 1].plate || path.burns[k - 1].outside);
}

TEST(CutPath, APlateInTheHoleOfAnotherIsCutFirst) {
    testing::Chance chance(7);
    const Region ring{shape::circleLoop({0, 0}, 120), {{shape::circleLoop({0, 0}, 90), Part::Bore, 0}}};
    const Region inner = testing::ringOfSix().region;
    const CutPath path = pathOf({ring, inner}, settingsOf(12));
    expectSound(path, {ring, inner}, 1.5, chance);
    EXPECT_EQ(path.burns.front().plate, 1u);
    EXPECT_EQ(path.burns.back().plate, 0u);
}

TEST(CutPath, PlatesThatOverlapOrLeaveNoRoomAreRefused) {
    const Region one = testing::ringOfSix().region;
    EXPECT_NE(problemOf({one, moved(one, {100, 0})}, settingsOf(12)).find("plates 1 and 2 overlap"),
              std::string::npos);
    EXPECT_NE(problemOf({one, moved(one, {141, 0})}, settingsOf(12)).find("less than a kerf apart"),
              std::string::npos);
    const Region small{shape::circleLoop({25, -20}, 2), {}}; // inside the first one's steel
    EXPECT_NE(problemOf({one, small}, settingsOf(12)).find("overlap"), std::string::npos);
    // A disc in a hole only just larger: the cut passes, no pierce does.
    const Region ring{shape::circleLoop({0, 0}, 120), {{shape::circleLoop({0, 0}, 72), Part::Bore, 0}}};
    EXPECT_NE(problemOf({ring, one}, settingsOf(12)).find("no room to pierce beside it"), std::string::npos);
}

TEST(CutPath, NothingIsBurnedBySawOrMillAndATorchHasAKerf) {
    const Region region = testing::ringOfSix().region;
    for (const job::Process process : {job::Process::SawAndDrill, job::Process::Milled})
        EXPECT_EQ(problemOf({region}, settingsOf(12, 1.5, process)).rfind("cutting.process: ", 0), 0u);
    EXPECT_EQ(problemOf({region}, settingsOf(12, 0)).rfind("cutting.kerf: ", 0), 0u);
    EXPECT_EQ(problemOf({region}, settingsOf(12, 1.5, job::Process::HandTorch)), "");
    EXPECT_FALSE(makeCutPath({region}, settingsOf(12), CutRates{0, 1, 100, true}).ok());
}

} // namespace
} // namespace pw::exchange
