#include "core/loadpath/screw.h"

#include "tests/support/quantities.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;
namespace material = pw::material;

using pw::testing::mm;
using pw::testing::newton;

pw::thread::Thread thread(const std::string& name) {
    auto parsed = pw::thread::parse(name);
    if (!parsed)
        throw std::runtime_error(parsed.problem().message);
    return *parsed;
}

material::ScrewGrade grade88() {
    return {"8.8", Stress::fromMpa(600), Stress::fromMpa(660), Stress::fromMpa(830), "ISO 898-1", false};
}

material::Material steel(double yield, double ultimate) {
    material::Material made;
    made.name = "test steel";
    made.yield = Stress::fromMpa(yield);
    made.ultimate = Stress::fromMpa(ultimate);
    made.source = "the test";
    return made;
}

ScrewInputs m20(double load, double friction) {
    ScrewInputs in;
    in.thread = thread("M20");
    in.strength = grade88();
    in.load = newton(load);
    in.friction = friction;
    return in;
}

TEST(Screw, PullAndTwistGoTogetherByVonMises) {
    // ISO 898-1: stress area of M20 245 mm2 (printed to three figures). 49 kN: 200 MPa.
    // Twist by hand at friction 0.16: T = 49000 x 9.188 (2.5 + pi 0.16 18.376 1.1547)/(pi 18.376 -
    // 0.16 2.5 1.1547)
    //   = 49000 x 2.1213 = 103.9 N.m, on d = sqrt(4 x 245/pi) = 17.66: 16 T/(pi d^3) = 96.1 MPa.
    const ScrewStress stress = screwStress(m20(49000, 0.16));
    EXPECT_NEAR(stress.tension.mpa(), 200, 0.5);
    EXPECT_NEAR(stress.torsion.mpa(), 96.1, 0.5);
    EXPECT_NEAR(stress.together.mpa(), std::sqrt(200.0 * 200 + 3 * 96.1 * 96.1), 1.0);
}

TEST(Screw, IsJudgedOnItsYieldWithNumbersAndSource) {
    const Check check = screwStressCheck(m20(49000, 0.16));
    EXPECT_EQ(check.id, "screw.stress");
    EXPECT_NEAR(*check.margin, 660 / 260.2, 0.02);
    EXPECT_EQ(check.grade, Grade::Holds);
    EXPECT_EQ(*check.wanted, 2.0);
    EXPECT_NE(check.basis.find("49\u00a0kN"), std::string::npos) << check.basis;
    EXPECT_NE(check.source.find("ISO 898-1"), std::string::npos);
    EXPECT_EQ(screwStressCheck(m20(80000, 0.16)).grade, Grade::Thin);    // 425 MPa: 1.55
    EXPECT_EQ(screwStressCheck(m20(105000, 0.16)).grade, Grade::Breaks); // 558 MPa: 1.18
}

/// By hand on d = sqrt(4 x 244.8 / pi) = 17.655 mm: pi d^3 / 32 = 540.2 mm3, so 100 N.m bend with 185.1 MPa.
TEST(Screw, BendingAddsToThePullOnTheSameSection) {
    ScrewInputs in = m20(49000, 0.16);
    const ScrewStress straight = screwStress(in);
    in.bending = Torque::fromNm(100);
    const ScrewStress bent = screwStress(in);
    EXPECT_NEAR(bent.bending.mpa(), 185.1, 0.3);
    EXPECT_NEAR(bent.tension.mpa(), straight.tension.mpa(), 1e-9);
    EXPECT_NEAR(bent.together.mpa(), std::hypot(200.2 + 185.1, std::sqrt(3.0) * 96.1), 1.0);
    EXPECT_NE(screwStressCheck(in).basis.find("bending"), std::string::npos);
}

TEST(Screw, ThrustIsJudgedAsPullIs) {
    ScrewInputs in = m20(49000, 0.16);
    const Check drawn = screwStressCheck(in);
    in.pushes = true;
    const Check pushed = screwStressCheck(in);
    EXPECT_EQ(*drawn.margin, *pushed.margin);
    EXPECT_NE(pushed.basis.find("thrust"), std::string::npos);
}

/// Common practice, no published source (MODEL 4).
TEST(Screw, HammeringCountsHalfAsMuchAgain) {
    ScrewInputs in = m20(40000, 0.16);
    in.hammer = 1.5;
    EXPECT_NEAR(*screwStressCheck(in).margin, *screwStressCheck(m20(60000, 0.16)).margin, 1e-9);
    EXPECT_NE(screwStressCheck(in).basis.find("hammering"), std::string::npos);
}

/// Full plastic moment of a round bar over its first yield 16/(3 pi) = 1.698 (Roark 7th ed. Table A.1).
TEST(HungScrew, CountsItsBendingByTheFullPlasticMomentAndWantsLess) {
    ScrewInputs in = m20(49000, 0.16);
    in.bending = Torque::fromNm(100);
    const Check check = hungScrewCheck(in, 2, {10, 0});
    EXPECT_NEAR(*check.demand, std::hypot(200.2 + 185.1 / 1.698, std::sqrt(3.0) * 96.1), 1.0);
    EXPECT_EQ(*check.wanted, 1.5);
    EXPECT_EQ(check.grade, Grade::Holds); // 660 / 351.4 = 1.88
    EXPECT_NE(check.basis.find("station 3 hangs"), std::string::npos);
    in.bending = Torque::fromNm(250); // 200.2 + 272.5, twist 166.4: 501 MPa, 1.32
    EXPECT_EQ(hungScrewCheck(in, 2, {10, 0}).grade, Grade::Thin);
    in.bending = Torque::fromNm(400); // 200.2 + 436 : 657 MPa, 1.00
    EXPECT_EQ(hungScrewCheck(in, 2, {10, 0}).grade, Grade::Breaks);
}

StripInputs shaft(double engagement) {
    StripInputs in;
    in.id = "thread.shaft";
    in.member = "shaft thread";
    in.title = "Shaft thread";
    in.thread = thread("M20");
    in.engagement = mm(engagement);
    in.screw = grade88();
    in.inside = steel(310, 570);
    in.load = newton(20000);
    return in;
}

TEST(Strip, TheWeakerSideGoesFirstInItsOwnSteel) {
    const StripInputs in = shaft(20);
    const StripLoads loads = stripLoads(in);
    // Half the ultimate over the areas of ASME B1.1 / FED-STD-H28, whose own figures are tested with the
    // threads.
    EXPECT_NEAR(loads.screw.newton(), 415 * pw::thread::screwShearArea(in.thread, mm(20)).mm2(), 1);
    EXPECT_NEAR(loads.inside.newton(), 285 * pw::thread::nutShearArea(in.thread, mm(20)).mm2(), 1);
    const Check check = stripCheck(in);
    EXPECT_NEAR(*check.capacity, std::min(loads.screw, loads.inside).newton(), 1e-9);
    // A soft shaft strips inside, a soft screw outside.
    StripInputs soft = shaft(20);
    soft.inside = steel(150, 200);
    EXPECT_FALSE(stripLoads(soft).screwGoesFirst());
    soft = shaft(20);
    soft.screw.ultimate = Stress::fromMpa(300);
    soft.inside = steel(900, 1000);
    EXPECT_TRUE(stripLoads(soft).screwGoesFirst());
}

TEST(Strip, GoesWithTheEngagement) {
    EXPECT_NEAR(stripLoads(shaft(20)).least().newton(), 2 * stripLoads(shaft(10)).least().newton(), 1e-6);
}

TEST(Strip, AWornThreadCountsThreeQuartersAndADamagedOneHalf) {
    StripInputs in = shaft(20);
    const double good = stripLoads(in).least().newton();
    in.condition = job::ThreadCondition::Rusty;
    EXPECT_NEAR(stripLoads(in).least().newton(), 0.75 * good, 1e-6);
    EXPECT_NE(stripCheck(in).basis.find("rusty"), std::string::npos);
    in.condition = job::ThreadCondition::Damaged;
    EXPECT_NEAR(stripLoads(in).least().newton(), 0.5 * good, 1e-6);
}

TEST(Strip, ANutIsLimitedByItsProofAndByItsHeight) {
    // ISO 898-2: class 8 nut of M20, proof stress 920 MPa; on 245 mm2 225 kN.
    StripInputs in = shaft(18);
    in.id = "thread.nut";
    in.nut = material::NutGrade{"8", Stress::fromMpa(920), "ISO 898-2", false};
    in.standardNutHeight = mm(16.9);
    in.screw.ultimate = Stress::fromMpa(2000); // so that the screw's side does not govern
    EXPECT_NEAR(stripLoads(in).inside.newton(), 225000, 1000);
    in.engagement = mm(8.45);
    EXPECT_NEAR(stripLoads(in).inside.newton(), 112500, 500);
    EXPECT_NE(stripCheck(in).basis.find("of height"), std::string::npos);
}

} // namespace
