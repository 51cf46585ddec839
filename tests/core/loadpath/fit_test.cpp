#include "core/loadpath/fit.h"

#include "tests/support/quantities.h"

#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

using pw::testing::mm;

/// Saw and drill with figures of its own, so that the arithmetic is plain.
job::Job plain() {
    job::Job made;
    made.stations.count = 6;
    made.stations.circle = mm(100);
    made.stations.accessHole = mm(24);
    made.stations.retainer = mm(30);
    made.stations.keeper = mm(18);
    made.stations.pin = mm(12);
    made.plate.thickness = mm(12);
    made.plate.bore = mm(20);
    made.cutting.process = job::Process::SawAndDrill;
    made.cutting.layoutError = mm(0.5);
    made.cutting.growth = mm(0.5);
    return made;
}

TEST(LandWidth, IsWhatLayoutAndCuttingLeave) {
    auto made = plain();
    // (30 - 24)/2 - 0.5 - 0.5 = 2 mm.
    Check check = landWidthCheck(made);
    EXPECT_NEAR(*check.margin, 2, 1e-12);
    EXPECT_EQ(check.grade, Grade::Holds);
    made.cutting.layoutError = mm(1.6); // 0.9
    EXPECT_EQ(landWidthCheck(made).grade, Grade::Thin);
    made.cutting.layoutError = mm(2.5); // 0
    EXPECT_EQ(landWidthCheck(made).grade, Grade::Breaks);
    made = plain();
    made.stations.land = mm(36); // the land given replaces the retainer
    EXPECT_NEAR(*landWidthCheck(made).margin, 5, 1e-12);
    made.stations.land.reset();
    made.stations.retainer.reset();
    check = landWidthCheck(made);
    EXPECT_EQ(check.grade, Grade::Incomplete);
    EXPECT_NE(check.basis.find("measure"), std::string::npos);
}

TEST(LandWidth, TakesTheProcessesOwnFiguresWhereNoneAreStated) {
    auto made = plain();
    made.cutting = {};
    made.cutting.process = job::Process::PlasmaTable; // 0.5 and 0.3
    EXPECT_NEAR(*landWidthCheck(made).margin, 2.2, 1e-12);
    made.cutting.process = job::Process::HandTorch; // 2.0 and 1.5
    EXPECT_EQ(landWidthCheck(made).grade, Grade::Breaks);
}

TEST(LandBearing, SpreadsTheStationsForceOverTheLand) {
    const auto made = plain();
    pw::material::Material scrap;
    scrap.name = "unknown scrap";
    scrap.yield = Stress::fromMpa(205);
    // 1.8 x 205 x pi/4 (900 - 576) = 93.9 kN.
    const Check check = landBearingCheck(made, scrap, Force::fromN(1250), 1);
    EXPECT_NEAR(*check.capacity, 369 * std::numbers::pi / 4 * 324, 1);
    EXPECT_EQ(check.grade, Grade::Holds);
    EXPECT_EQ(landBearingCheck(made, scrap, Force::fromN(60000), 1).grade, Grade::Thin);
    EXPECT_EQ(landBearingCheck(made, scrap, Force::fromN(100000), 1).grade, Grade::Sets);
    EXPECT_EQ(landBearingCheck(made, std::nullopt, Force::fromN(1250), 1).grade, Grade::Incomplete);
}

TEST(Access, TheKeepersNeedRoomAndThePinMustPass) {
    auto made = plain();
    EXPECT_EQ(accessCheck(made).grade, Grade::Holds); // 6 mm
    made.stations.keeper = mm(22);
    EXPECT_EQ(accessCheck(made).grade, Grade::Thin); // 2 mm
    made.stations.keeper = mm(25);
    EXPECT_EQ(accessCheck(made).grade, Grade::Breaks);
    made.stations.keeper = mm(10);
    made.stations.pin = mm(24);
    EXPECT_EQ(accessCheck(made).grade, Grade::Breaks);
    made = plain();
    made.stations.keeper.reset();
    EXPECT_EQ(accessCheck(made).grade, Grade::Incomplete);
}

TEST(Access, APickReachesOneAndAHalfHolesDeep) {
    auto made = plain();
    made.plate.thickness = mm(20);
    made.plate.stacked = 2; // 40 mm of plate, 36 mm of reach
    const Check check = accessCheck(made);
    EXPECT_EQ(check.grade, Grade::Thin);
    EXPECT_NE(check.basis.find("pick"), std::string::npos);
}

TEST(Access, ASlotIsAsWideAsItsWidth) {
    auto made = plain();
    made.stations.hole.shape = job::HoleShape::Slot;
    made.stations.hole.length = mm(40);
    made.stations.hole.width = mm(17);
    EXPECT_EQ(accessCheck(made).grade, Grade::Breaks);
}

TEST(Ligament, TheNarrowestIsNamed) {
    const auto made = plain();
    const std::vector<Ligament> wide = {{"between hole 1 and the rim", 8, {{62, 0}}},
                                        {"between holes", 26, {}}};
    EXPECT_EQ(ligamentCheck(made, wide).grade, Grade::Holds);
    const Check thin =
        ligamentCheck(made, {{"between hole 1 and the rim", 5.5, {{62, 0}}}, {"between holes", 26, {}}});
    EXPECT_EQ(thin.grade, Grade::Thin) << "under half of 12 mm";
    EXPECT_NE(thin.basis.find("between hole 1 and the rim"), std::string::npos);
    ASSERT_EQ(thin.where.size(), 1u);
    EXPECT_EQ(ligamentCheck(made, {{"between holes", 0, {}}}).grade, Grade::Breaks);
    auto light = plain();
    light.plate.thickness = mm(6);
    EXPECT_EQ(ligamentCheck(light, {{"between holes", 4.9, {}}}).grade, Grade::Thin) << "under 5 mm";
    EXPECT_EQ(ligamentCheck(made, {}).grade, Grade::Incomplete);
}

CentreBearing washer(double outside) {
    CentreBearing bearing;
    bearing.nutFace = mm(28.5);
    bearing.washerInside = mm(21);
    bearing.washerOutside = mm(outside);
    bearing.washerThickness = mm(3);
    return bearing;
}

TEST(Washer, MustCoverTheBore) {
    auto made = plain();
    EXPECT_EQ(washerCheck(made, washer(37))->grade, Grade::Holds); // 8.5 mm
    made.plate.bore = mm(38);
    const Check check = *washerCheck(made, washer(37));
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("pulls through"), std::string::npos);
    made.plate.bore = mm(33); // 2 mm of cover, under the washer's own 3; and wider than the nut face
    EXPECT_EQ(washerCheck(made, washer(37))->grade, Grade::Thin);
}

TEST(Washer, MayNotCoverTheAccessHoles) {
    auto made = plain();
    // Between the holes: 100 - 24 = 76 mm.
    EXPECT_EQ(washerCheck(made, washer(75))->grade, Grade::Holds);
    EXPECT_EQ(washerCheck(made, washer(80))->grade, Grade::Thin) << "2 mm into 6 mm of keeper room";
    const Check check = *washerCheck(made, washer(90));
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("76"), std::string::npos) << check.basis;
    CentreBearing tapped;
    tapped.throughThread = true;
    EXPECT_FALSE(washerCheck(made, tapped));
}

TEST(CutHoles, WhatIsTooSmallToBurnIsMarkedToDrill) {
    auto made = plain();
    EXPECT_NE(cutHolesCheck(made).basis.find("every hole is drilled"), std::string::npos);
    made.cutting.process = job::Process::PlasmaTable; // from 12 mm up
    EXPECT_NE(cutHolesCheck(made).basis.find("all can be burned"), std::string::npos);
    made.cutting.process = job::Process::HandTorch; // from 24 mm up: the bore of 20 is too small
    const Check check = cutHolesCheck(made);
    EXPECT_NE(check.basis.find("drill the bore of 20"), std::string::npos) << check.basis;
    EXPECT_EQ(check.grade, Grade::Holds) << "a thing to do, not a weakness";
}

} // namespace
