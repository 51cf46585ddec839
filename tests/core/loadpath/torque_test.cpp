#include "core/loadpath/torque.h"

#include "tests/support/csv.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;
using pw::testing::readCsv;

Length mm(double v) {
    return Length::fromMm(v);
}

double published(const std::string& id) {
    for (const auto& row : readCsv(PW_REFERENCE "/threads_grades_torque_screws.csv"))
        if (row.at("id") == id)
            return std::stod(row.at("published"));
    throw std::runtime_error("no row " + id);
}

/// Shigley's Mechanical Engineering Design, 9th ed., Example 8-1: square thread d = 32, p = 4, two starts,
/// f = fc = 0.08, dc = 40 mm, F = 6.4 kN. Printed to three or four figures.
TEST(Torque, MeetsShigleysPowerScrew) {
    const Force load = Force::fromN(6400);
    const Torque thread = raisingTorque(load, mm(30), mm(8), Angle::fromDegree(0), 0.08);
    const Torque collar = collarTorque(load, 0.08, mm(40));
    EXPECT_NEAR((thread + collar).newtonM(), published("EX81-TR"), 0.005);
    EXPECT_NEAR(torsionStress(thread + collar, mm(28)).mpa(), published("EX81-tau"), 0.005);
    EXPECT_NEAR((load / pw::units::Area::fromMm2(std::numbers::pi / 4 * 28 * 28)).mpa(),
                -published("EX81-sig"), 0.005);
}

TEST(Torque, ASixtyDegreeThreadRubsMoreThanASquareOne) {
    // M20 by hand: 9.188 (2.5 + pi 0.15 18.376 / cos 30) / (pi 18.376 - 0.15 x 2.5 / cos 30) = 2.0044 mm x F.
    const auto thread = pw::thread::parse("M20");
    ASSERT_TRUE(thread);
    TorqueInputs in{*thread, mm(25), {}};
    EXPECT_NEAR(threadTorque(in, Force::fromN(10000), 0.15).newtonM(), 20.04, 0.02);
}

TEST(Torque, LowFrictionAndHighFrictionSpanTheRange) {
    const auto thread = pw::thread::parse("M20");
    ASSERT_TRUE(thread);
    job::Screw screw;
    screw.lubrication = job::Lubrication::Oiled;
    TorqueInputs in{*thread, mm(25), frictionOf(screw)};
    const auto range = torqueFor(in, Force::fromN(10000));
    EXPECT_LT(range.low.newtonM(), range.high.newtonM());
    // Collar alone: 0.08 x 12.5 mm x 10 kN = 10 N.m, and twice that.
    in.friction.thread = {0, 0};
    const auto collar = torqueFor(in, Force::fromN(10000));
    EXPECT_NEAR((collar.high - collar.low).newtonM(), 10, 1e-9);
    // What a torque makes at most, and the torque of that load: there and back.
    const Force most = mostLoadOf(in, Torque::fromNm(40));
    EXPECT_NEAR(torqueFor(in, most).low.newtonM(), 40, 1e-9);
}

TEST(Torque, StatedFrictionsReplaceTheLubrication) {
    job::Screw screw;
    EXPECT_EQ(frictionOf(screw).thread.low, 0.08);
    EXPECT_TRUE(frictionOf(screw).assumed);
    screw.lubrication = job::Lubrication::Dry;
    EXPECT_EQ(frictionOf(screw).thread.high, 0.24);
    EXPECT_FALSE(frictionOf(screw).assumed);
    screw.lubrication = job::Lubrication::Moly;
    EXPECT_EQ(frictionOf(screw).collar.low, 0.04);
    screw.threadFriction = pw::units::Range<double>{0.12, 0.12};
    EXPECT_EQ(frictionOf(screw).thread.low, 0.12);
    EXPECT_EQ(frictionOf(screw).collar.high, 0.10);
}

TEST(Torque, ASteepScrewRunsBackByItself) {
    // Shigley 9th ed., eq. (8-3): self-locking when pi f dm > l.
    EXPECT_TRUE(holdsByItself(mm(30), mm(7.5), Angle(), 0.08));
    EXPECT_FALSE(holdsByItself(mm(30), mm(8), Angle(), 0.08));
    EXPECT_GT(loweringTorque(Force::fromN(1000), mm(30), mm(7.5), Angle(), 0.08).newtonMm(), 0);
    EXPECT_LT(loweringTorque(Force::fromN(1000), mm(30), mm(8), Angle(), 0.08).newtonMm(), 0);
}

} // namespace
