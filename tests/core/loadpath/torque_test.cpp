#include "core/loadpath/torque.h"

#include "tests/support/csv.h"
#include "tests/support/quantities.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;
using pw::testing::readCsv;

using pw::testing::mm;

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

/// Shigley 9th ed., eq. (8-26), (8-27): K with a collar of 1.25 d; at f = fc = 0.15 "about 0.20, whatever the
/// size" (row KF, from memory). By hand for M16: 0.9188/2 x (0.043315 + 0.173205)/(1 - 0.0075) + 0.625 x 0.15
/// = 0.194.
TEST(Torque, KIsAboutAFifthAtFifteenHundredths) {
    for (const char* name :
         {"M8", "M10", "M12", "M16", "M20", "M24", "1/2-13 UNC", "3/4-10 UNC", "1-8 UNC"}) {
        const auto thread = pw::thread::parse(name);
        ASSERT_TRUE(thread) << name;
        TorqueInputs in{*thread, thread->diameter * 1.25, {}};
        in.friction.thread = in.friction.collar = {0.15, 0.15};
        const auto k = kFactor(in);
        EXPECT_NEAR(k.low, 0.20, 0.01) << name;
        EXPECT_EQ(k.low, k.high);
        // T = K F d is the power-screw equation written short.
        EXPECT_NEAR(k.low * 7000 * thread->diameter.mm(), torqueFor(in, Force::fromN(7000)).low.newtonMm(),
                    1e-6);
    }
    const auto m16 = pw::thread::parse("M16");
    TorqueInputs in{*m16, mm(20), {}};
    in.friction.thread = in.friction.collar = {0.15, 0.15};
    EXPECT_NEAR(kFactor(in).low, 0.194, 0.001);
}

/// Table 8-15 of Shigley 9th ed.: K from 0.12 (greased) to 0.30 (black, dry). Its classes are no frictions;
/// ours must lie beside them: moly under zinc-plated 0.20, dry round it.
TEST(Torque, KOfTheLubricationClassesLiesBesideThePublishedTable) {
    const auto thread = pw::thread::parse("M16");
    const auto k = [&](job::Lubrication lubrication) {
        job::Screw screw;
        screw.lubrication = lubrication;
        return kFactor(TorqueInputs{*thread, mm(20), frictionOf(screw)});
    };
    EXPECT_LT(k(job::Lubrication::Moly).high, published("K-cadmium-plated"));
    EXPECT_LT(k(job::Lubrication::Oiled).low, published("K-cadmium-plated"));
    EXPECT_GT(k(job::Lubrication::Oiled).high, published("K-cadmium-plated"));
    EXPECT_LT(k(job::Lubrication::Dry).low, published("K-zinc-plated"));
    EXPECT_NEAR(k(job::Lubrication::Dry).high, published("K-nonplated, black finish"), 0.01);
}

/// Mott, Machine Elements in Mechanical Design, 4th ed., Example Problem 17-1: 1 1/2-4 Acme, 12 500 lb, f =
/// 0.15, Dp = 1.3429 in: 1809 lb.in printed, with tan and cos rounded to three figures (0.5 %).
TEST(Torque, MeetsMottsAcmeScrew) {
    const double inch = 25.4, lbf = 4.4482216;
    const Torque torque = raisingTorque(Force::fromN(12500 * lbf), mm(1.3429 * inch), mm(0.25 * inch),
                                        Angle::fromDegree(14.5), 0.15);
    EXPECT_NEAR(torque.newtonMm() / (lbf * inch), 1809, 0.005 * 1809);
}

/// Shigley 9th ed., solutions to 8-4 (square, l = 5, dm = 22.5, 6 kN, 0.08; collar 40 mm at 0.05) and 8-6
/// (3-2 Acme, dm = 2.75 in, 2500 lbf, 0.05; collar 5 in at 0.06), as printed.
TEST(Torque, MeetsShigleysProblemsUpAndDown) {
    const Force load = Force::fromN(6000);
    EXPECT_NEAR(raisingTorque(load, mm(22.5), mm(5), Angle(), 0.08).newtonM(), 10.23, 0.005);
    EXPECT_NEAR(loweringTorque(load, mm(22.5), mm(5), Angle(), 0.08).newtonM(), 0.622, 0.001);
    EXPECT_NEAR(collarTorque(load, 0.05, mm(40)).newtonM(), 6, 1e-9);
    const double lbfInch = 4.4482216 * 25.4;
    EXPECT_NEAR(raisingTorque(Force::fromN(2500 * 4.4482216), mm(2.75 * 25.4), mm(0.5 * 25.4),
                              Angle::fromDegree(14.5), 0.05)
                        .newtonMm() /
                    lbfInch,
                377.6, 0.1);
    EXPECT_NEAR(collarTorque(Force::fromN(2500 * 4.4482216), 0.06, mm(5 * 25.4)).newtonMm() / lbfInch, 375,
                0.01);
}

/// Tr 24x5 by hand: dm 21.5, sec 15 = 1.03528, f = 0.15: 10.75 (5 + 10.489)/(67.544 - 0.776) = 2.4938 N.mm a
/// newton.
TEST(Torque, ATrapezoidalThreadByHand) {
    const auto thread = pw::thread::parse("Tr 24x5");
    ASSERT_TRUE(thread);
    EXPECT_NEAR(threadTorque({*thread, mm(20), {}}, Force::fromN(1000), 0.15).newtonMm(), 2493.8, 0.5);
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
    EXPECT_FALSE(frictionOf(screw).assumed);
    screw.lubrication.reset(); // one of the two is a guess then, and said
    EXPECT_TRUE(frictionOf(screw).assumed);
    screw.collarFriction = screw.threadFriction;
    EXPECT_FALSE(frictionOf(screw).assumed);
}

TEST(Torque, ASteepScrewRunsBackByItself) {
    // Shigley 9th ed., eq. (8-3): self-locking when pi f dm > l.
    EXPECT_TRUE(holdsByItself(mm(30), mm(7.5), Angle(), 0.08));
    EXPECT_FALSE(holdsByItself(mm(30), mm(8), Angle(), 0.08));
    EXPECT_GT(loweringTorque(Force::fromN(1000), mm(30), mm(7.5), Angle(), 0.08).newtonMm(), 0);
    EXPECT_LT(loweringTorque(Force::fromN(1000), mm(30), mm(8), Angle(), 0.08).newtonMm(), 0);
}

} // namespace
