#include "core/loadpath/centre.h"

#include "tests/support/quantities.h"

#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

using pw::testing::mm;

pw::thread::Thread m20() {
    auto parsed = pw::thread::parse("M20");
    if (!parsed)
        throw std::runtime_error(parsed.problem().message);
    return *parsed;
}

job::Job withBore(double bore) {
    job::Job made;
    made.plate.bore = mm(bore);
    made.screw = job::Screw{};
    made.screw->thread = "M20";
    return made;
}

// M20: nut 30 mm across flats (ISO 4032), washer 21 x 37 x 3 (ISO 7089); face 0.95 x 30 = 28.5.
TEST(CentreBearing, AThinWasherDoesNotSpreadTheLoadToItsRim) {
    const auto thread = m20();
    const auto bearing = centreBearing(withBore(20), &thread);
    ASSERT_TRUE(bearing);
    EXPECT_NEAR(bearing->outside.mm(), 28.5 + 6, 1e-9);
    EXPECT_NEAR(bearing->inside.mm(), 21, 1e-9) << "the washer's hole is wider than the bore";
    EXPECT_FALSE(bearing->assumptions.empty());
}

TEST(CentreBearing, AThickWasherReachesItsRim) {
    auto made = withBore(24);
    made.screw->washerOutside = mm(44);
    made.screw->washerThickness = mm(10);
    const auto thread = m20();
    const auto bearing = centreBearing(made, &thread);
    ASSERT_TRUE(bearing);
    EXPECT_NEAR(bearing->outside.mm(), 44, 1e-9);
    EXPECT_NEAR(bearing->inside.mm(), 24, 1e-9);
}

TEST(CentreBearing, AStatedOneIsTakenAsItIs) {
    auto made = withBore(20);
    made.centre.bearingOutside = mm(44);
    made.centre.bearingInside = mm(20);
    const auto thread = m20();
    const auto bearing = centreBearing(made, &thread);
    ASSERT_TRUE(bearing);
    EXPECT_EQ(bearing->outside, mm(44));
    EXPECT_EQ(bearing->inside, mm(20));
    EXPECT_TRUE(centreBearing(made, nullptr)) << "then no thread is needed";
    made.centre.bearingOutside.reset();
    EXPECT_FALSE(centreBearing(made, nullptr));
}

TEST(CentreBearing, ATappedBoreCarriesThroughItsThread) {
    auto made = withBore(20);
    made.plate.bore.reset();
    made.plate.boreThread = "M20";
    const auto thread = m20();
    const auto bearing = centreBearing(made, &thread);
    ASSERT_TRUE(bearing);
    EXPECT_TRUE(bearing->throughThread);
    EXPECT_GT(bearing->outside, bearing->inside);
}

TEST(CentreBearing, IsHeldAgainstNineFifthsOfYield) {
    CentreBearing bearing;
    bearing.inside = mm(20);
    bearing.outside = mm(40);
    pw::material::Material scrap;
    scrap.name = "unknown scrap";
    scrap.yield = Stress::fromMpa(205);
    // 1.8 x 205 x pi/4 (1600 - 400) = 347.8 kN.
    const double capacity = 1.8 * 205 * std::numbers::pi / 4 * 1200;
    const Check check =
        centreBearingCheck(bearing, scrap, Force::fromN(100000), 1, pw::units::System::Metric);
    EXPECT_NEAR(*check.capacity, capacity, 1);
    EXPECT_EQ(check.grade, Grade::Holds);
    EXPECT_EQ(centreBearingCheck(bearing, scrap, Force::fromN(200000), 1, pw::units::System::Inch).grade,
              Grade::Thin);
    EXPECT_EQ(centreBearingCheck(bearing, scrap, Force::fromN(400000), 1, pw::units::System::Inch).grade,
              Grade::Sets);
    bearing.outside = mm(20);
    EXPECT_EQ(centreBearingCheck(bearing, scrap, Force::fromN(1), 1, pw::units::System::Inch).grade,
              Grade::Sets);
}

} // namespace
