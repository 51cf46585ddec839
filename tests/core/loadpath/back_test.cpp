#include "core/loadpath/back.h"

#include "tests/support/jobs.h"
#include "tests/support/quantities.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
using pw::testing::findCheck;
using pw::testing::jobFrom;
namespace job = pw::job;

using pw::testing::newton;

/// Strength of the parts by hand: S235 235 MPa up to 16 mm and 225 above (EN 10025-2), 1045 310 MPa (Shigley
/// 9th ed. Table A-20).
job::Job behind(const std::string& back, const std::string& screw) {
    return jobFrom(R"({"platewright": 1, "work": "compress", "stations": {}, "plate": {"bore": "18 mm"},
                     "screw": {"thread": "M16", "grade": "8.8", )" +
                   screw + R"(}, "back": {)" + back + "}}");
}

const char* kBar =
    R"("kind": "bar", "span": "90 mm", "width": "50 mm", "thickness": "20 mm", "steel": "S235")";

std::vector<Check> checksOf(const job::Job& made, double load) {
    return backChecks(made, setUp(made), newton(load), 1).checks;
}

TEST(BackingBar, BendsOnItsNetSectionAndTheHeadBearsOnIt) {
    // 10 kN on 90 mm: 225 N.m; hole 1.1 x 16 = 17.6: 6 x 225000 / (32.4 x 400) = 104.2 MPa.
    const auto checks = checksOf(behind(kBar, R"("turns": "nut", "into": "nut")"), 10000);
    const Check* bending = findCheck(checks, "back.bending");
    ASSERT_TRUE(bending);
    EXPECT_NEAR(*bending->demand, 104.17, 0.05);
    EXPECT_EQ(*bending->capacity, 225);
    EXPECT_EQ(bending->grade, Grade::Holds); // 2.16
    // M16 head 24 mm across flats (ISO 4014): pi/4 ((0.95 x 24)^2 - 17.6^2) = 165.0 mm2 x 1.8 x 225 = 66.8
    // kN.
    const Check* bearing = findCheck(checks, "back.bearing");
    ASSERT_TRUE(bearing);
    EXPECT_NEAR(*bearing->capacity, 66820, 70);
}

TEST(BackingBar, ATappedBarHasTheThreadsOwnHoleAndNoBearing) {
    const auto checks = checksOf(behind(kBar, R"("into": "bar", "engagement": "20 mm")"), 10000);
    EXPECT_NEAR(*findCheck(checks, "back.bending")->demand, 6 * 225000.0 / (34 * 400), 0.01);
    EXPECT_FALSE(findCheck(checks, "back.bearing"));
}

TEST(BackingBar, WhatCannotCarryOrIsNotGivenIsSaid) {
    const std::string narrow = R"("kind": "bar", "span": "90 mm", "width": "17 mm", "thickness": "20 mm")";
    EXPECT_EQ(findCheck(checksOf(behind(narrow, R"("into": "nut")"), 10000), "back.bending")->grade,
              Grade::Sets);
    const auto open =
        checksOf(behind(R"("kind": "bar", "width": "50 mm", "thickness": "20 mm")", R"("into": "nut")"), 1);
    EXPECT_EQ(findCheck(open, "back.bending")->grade, Grade::Incomplete);
    EXPECT_NE(findCheck(open, "back.bending")->basis.find("span"), std::string::npos);
}

TEST(StopBlock, IsJudgedOnBearingAndOnlyWithASpanOnBending) {
    const auto plain = checksOf(
        behind(R"("kind": "block", "steel": "S235", "thickness": "12 mm")", R"("into": "nut")"), 10000);
    EXPECT_FALSE(findCheck(plain, "back.bending"));
    ASSERT_TRUE(findCheck(plain, "back.bearing"));
    EXPECT_EQ(findCheck(plain, "back.bearing")->member, "stop block");
    const auto none = checksOf(behind(R"("kind": "none")", R"("into": "nut")"), 10000);
    EXPECT_TRUE(none.empty());
}

job::Job pushing(const std::string& more, const std::string& screw = R"("point_diameter": "16 mm")") {
    return jobFrom(R"({"platewright": 1, "work": "pull", "stations": {}, "plate": {"bore_thread": "M20"},
                     "screw": {"thread": "M20", "grade": "8.8", "turns": "screw", "into": "plate", )" +
                   screw + "}, " + more + "}");
}

std::vector<Check> pointOf(const job::Job& made, double load) {
    return pointChecks(made, setUp(made), newton(load), 1).checks;
}

/// Bearing 1.8 x yield (AISC 360 J7, from memory). Spot of 16 mm: 201.06 mm2 x 1.8 x 310 = 112.2 kN.
TEST(Point, BearsOnTheShaftsEnd) {
    const job::Job made = pushing(R"("hub": {"shaft_material": "1045"})");
    const Check check = *findCheck(pointOf(made, 50000), "point.bearing");
    EXPECT_NEAR(*check.capacity, 112190, 20);
    EXPECT_EQ(check.grade, Grade::Holds);
    EXPECT_EQ(findCheck(pointOf(made, 70000), "point.bearing")->grade, Grade::Thin);
    EXPECT_EQ(findCheck(pointOf(made, 120000), "point.bearing")->grade, Grade::Sets);
}

TEST(Point, OfASoftScrewIsTheWeakerOne) {
    job::Job made = pushing(R"("hub": {"shaft_material": "1045"})");
    made.screw->grade = "4.6"; // 240 MPa, ISO 898-1
    EXPECT_NEAR(*findCheck(pointOf(made, 50000), "point.bearing")->capacity, 201.06 * 1.8 * 240, 20);
}

TEST(Point, OnAHollowShaftOnlyItsRingCarriesAndAPointInTheBoreBreaks) {
    // pi/4 (16^2 - 14^2) = 47.12 mm2 x 1.8 x 310 = 26.30 kN.
    const Check ring =
        *findCheck(pointOf(pushing(R"("hub": {"shaft_material": "1045", "shaft_bore": "14 mm"})"), 10000),
                   "point.bearing");
    EXPECT_NEAR(*ring.capacity, 26295, 10);
    for (const char* bore : {"16 mm", "18 mm"}) {
        const Check hole = *findCheck(pointOf(pushing(R"("hub": {"shaft_material": "1045", "shaft_bore": ")" +
                                                      std::string(bore) + "\"}"),
                                              10),
                                      "point.bearing");
        EXPECT_EQ(hole.grade, Grade::Breaks) << bore;
        EXPECT_NE(hole.basis.find("nothing to push on"), std::string::npos);
        EXPECT_NE(hole.basis.find("stop bolt"), std::string::npos);
    }
}

TEST(Point, HammeringCountsHalfAsMuchAgainOnShaftBarAndBlock) {
    const std::string hit = R"("point_diameter": "16 mm", "hammering": true)";
    EXPECT_NEAR(
        *findCheck(pointOf(pushing(R"("hub": {"shaft_material": "1045"})", hit), 20000), "point.bearing")
             ->demand,
        30000, 1e-6);
    for (const char* kind : {"bar", "block"}) {
        const std::string back = R"("back": {"kind": ")" + std::string(kind) + R"(", "steel": "S235"})";
        EXPECT_NEAR(*findCheck(checksOf(pushing(back, hit), 20000), "back.bearing")->demand, 30000, 1e-6)
            << kind;
    }
}

TEST(Point, OnABarIsTheBarsOwnCheckAndTheBarHasNoHole) {
    const job::Job made =
        pushing(R"("back": {"kind": "bar", "span": "100 mm", "width": "50 mm", "thickness": "20 mm",
                                     "steel": "S235"})");
    EXPECT_TRUE(pointOf(made, 10000).empty());
    const auto checks = checksOf(made, 10000);
    EXPECT_NEAR(*findCheck(checks, "back.bending")->demand, 6 * 250000.0 / (50 * 400), 1e-6);
    EXPECT_NEAR(*findCheck(checks, "back.bearing")->capacity, 201.06 * 1.8 * 225, 20);
}

TEST(Point, OfAScrewThatIsDrawnBearsOnNothing) {
    EXPECT_TRUE(pointOf(behind(kBar, R"("into": "nut")"), 10000).empty());
}

/// M16, 20 mm in 1045 by ASME B1.1 / FED-STD-H28, limits of ISO 965-1 6g/6H from memory (Kn 14.210,
/// Es 14.503, Ds 15.682, En 14.913): screw pi 20 x 14.210/2 (1 + 0.57735 x 0.293) = 521.9 mm2 x 400 = 208.8
/// kN; shaft pi 20 x 15.682/2 (1 + 0.57735 x 0.769) = 711.4 mm2 x 285 = 202.7 kN.
TEST(StopBolt, StandingOnItsThreadStripsItAndSeatedOnItsPadDoesNot) {
    const std::string bolt =
        R"("hub": {"shaft_material": "1045", "shaft_bore": "14 mm"}, "back": {"kind": "stop bolt",
        "thread": "M16", "grade": "8.8", "engagement": "20 mm")";
    const auto bare = checksOf(pushing(bolt + "}"), 15000);
    const Check* thread = findCheck(bare, "back.thread");
    ASSERT_TRUE(thread);
    EXPECT_EQ(thread->kind, pw::verdict::CheckKind::Force);
    EXPECT_NEAR(*thread->capacity, 202700, 0.01 * 202700);
    EXPECT_FALSE(findCheck(bare, "back.bearing"));
    EXPECT_EQ(findCheck(checksOf(pushing(bolt + "}"), 170000), "back.thread")->grade, Grade::Breaks);

    const auto seated = checksOf(pushing(bolt + R"(, "pad": "24 mm"})"), 170000);
    EXPECT_EQ(findCheck(seated, "back.thread")->kind, pw::verdict::CheckKind::Note);
    EXPECT_EQ(findCheck(seated, "back.thread")->grade, Grade::Holds);
    // Pad: pi/4 (24^2 - 16^2) = 251.3 mm2 x 1.8 x 310 = 140.2 kN.
    EXPECT_NEAR(*findCheck(seated, "back.bearing")->capacity, 140240, 50);
    // And the point has something to push on, bore or no bore.
    EXPECT_NE(findCheck(pointOf(pushing(bolt + "}"), 15000), "point.bearing")->grade, Grade::Breaks);
}

TEST(StopBolt, ASoftOneIsWhatThePointDentsNotTheShaft) {
    const job::Job made = pushing(R"("hub": {"shaft_material": "1045"}, "back": {"kind": "stop bolt",
        "thread": "M16", "grade": "4.6", "engagement": "20 mm", "pad": "24 mm"})");
    EXPECT_NEAR(*findCheck(pointOf(made, 15000), "point.bearing")->capacity, 201.06 * 1.8 * 240, 20);
}

TEST(StopBolt, APadNoWiderThanTheBoltSeatsOnNothing) {
    const job::Job made = pushing(R"("hub": {"shaft_material": "1045"}, "back": {"kind": "stop bolt",
        "thread": "M16", "grade": "8.8", "engagement": "20 mm", "pad": "16 mm"})");
    const auto checks = checksOf(made, 15000);
    EXPECT_FALSE(findCheck(checks, "back.bearing"));
    EXPECT_EQ(findCheck(checks, "back.thread")->kind, pw::verdict::CheckKind::Force);
    EXPECT_FALSE(backChecks(made, setUp(made), newton(15000), 1).assumptions.empty());
}

/// EN 1993-1-2 Table 3.1: kp 0.42 at 400 C.
TEST(BackingBar, IsAsWarmAsTheTool) {
    job::Job made = behind(kBar, R"("into": "nut")");
    made.heat.tool = pw::units::Temperature::fromCelsius(400);
    EXPECT_NEAR(*findCheck(checksOf(made, 10000), "back.bending")->capacity, 0.42 * 225, 1e-6);
    made.back->steel = job::Material{};
    made.back->steel->name = "6061-T6";
    const MemberChecks out = backChecks(made, setUp(made), newton(10000), 1);
    ASSERT_FALSE(out.problems.empty());
    EXPECT_EQ(out.problems.front().field, "heat.tool");
}

TEST(StopBolt, WhatIsMissingIsNamed) {
    const auto none = checksOf(pushing(R"("back": {"kind": "stop bolt"})"), 15000);
    EXPECT_EQ(findCheck(none, "back.thread")->grade, Grade::Incomplete);
    const auto shallow = checksOf(pushing(R"("back": {"kind": "stop bolt", "thread": "M16"})"), 15000);
    EXPECT_EQ(findCheck(shallow, "back.thread")->grade, Grade::Incomplete);
    EXPECT_NE(findCheck(shallow, "back.thread")->basis.find("deep"), std::string::npos);
}

} // namespace
