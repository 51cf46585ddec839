#include "core/loadpath/ram.h"

#include "core/loadpath/pull_load.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
using pw::testing::findCheck;
using pw::testing::jobFrom;
namespace job = pw::job;

job::Job withRam(const std::string& ram) {
    return jobFrom(
        R"({"platewright": 1, "work": "pull", "stations": {}, "plate": {}, "hub": {"length": "70 mm"},
                     "ram": {)" +
        ram + "}}");
}

Check capacity(const std::string& ram, double load) {
    return *findCheck(ramChecks(withRam(ram), Force::fromN(load), 1).checks, "ram.capacity");
}

/// Pressure x area: 500 bar on 1600 mm2 is 80 kN.
TEST(Ram, MakesPressureTimesAreaElseItsCapacity) {
    EXPECT_NEAR(ramForce(*withRam(R"("area": "1600 mm2", "max_pressure": "500 bar")").ram)->newton(), 80000,
                1e-6);
    EXPECT_NEAR(ramForce(*withRam(R"("area": "1600 mm2", "max_pressure": "500 bar", "capacity": "20 t")").ram)
                    ->newton(),
                80000, 1e-6);
    // 12 t x 9.80665.
    EXPECT_NEAR(ramForce(*withRam(R"("capacity": "12 t", "area": "1600 mm2")").ram)->newton(), 117679.8, 0.1);
    EXPECT_FALSE(ramForce(*withRam(R"("area": "1600 mm2")").ram));
}

TEST(Ram, AValveThatDrivesItPastItsCapacityBreaks) {
    const std::string ram = R"("area": "1600 mm2", "capacity": "8 t", "max_pressure": )"; // 78.45 kN
    EXPECT_EQ(capacity(ram + R"("490 bar")", 78400).grade, Grade::Holds);                 // 78.4 kN
    const Check over = capacity(ram + R"("500 bar")", 80000);
    EXPECT_EQ(over.grade, Grade::Breaks);
    EXPECT_NE(over.basis.find("valve lower"), std::string::npos) << over.basis;
}

TEST(Ram, OneThatIsTooWeakStallsAndIsThin) {
    const Check weak = capacity(R"("capacity": "5 t")", 60000);
    EXPECT_EQ(weak.grade, Grade::Thin);
    EXPECT_NE(weak.basis.find("stalls"), std::string::npos);
    EXPECT_EQ(capacity(R"("capacity": "5 t")", 40000).grade, Grade::Holds);
    EXPECT_EQ(capacity(R"("stroke": "50 mm")", 40000).grade, Grade::Incomplete);
}

/// ASTM A193 B7: 105 ksi yield (from memory) = 723.9 MPa; M30 561 mm2 (ISO 898-1): 406.1 kN.
TEST(Ram, TheRodIsHeldAgainstItsYield) {
    const auto rod = [](double load, double strength) {
        return *findCheck(ramChecks(withRam(R"("capacity": "12 t", "rod": "M30", "rod_grade": "B7")"),
                                    Force::fromN(load), 1, strength)
                              .checks,
                          "ram.rod");
    };
    EXPECT_NEAR(*rod(80000, 1).capacity, 406100, 1500);
    EXPECT_EQ(rod(200000, 1).grade, Grade::Holds);
    EXPECT_EQ(rod(250000, 1).grade, Grade::Thin);
    EXPECT_EQ(rod(350000, 1).grade, Grade::Breaks);
    EXPECT_NEAR(*rod(80000, 0.55).capacity, 0.55 * *rod(80000, 1).capacity, 1e-6);
    const MemberChecks none = ramChecks(withRam(R"("capacity": "12 t")"), Force::fromN(1000), 1);
    EXPECT_EQ(findCheck(none.checks, "ram.rod")->grade, Grade::Incomplete);
}

TEST(Ram, AShortStrokeSaysPackUpInBetween) {
    const auto stroke = [](const std::string& length) {
        return *findCheck(
            ramChecks(withRam(R"("capacity": "12 t", "stroke": ")" + length + "\""), Force::fromN(1000), 1)
                .checks,
            "ram.stroke");
    };
    EXPECT_EQ(stroke("50 mm").grade, Grade::Holds);
    EXPECT_NE(stroke("50 mm").basis.find("pack up"), std::string::npos);
    EXPECT_EQ(stroke("75 mm").basis.find("pack up"), std::string::npos);
}

} // namespace
