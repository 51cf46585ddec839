#include "core/loadpath/flange.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using namespace pw::loadpath;

namespace {

material::Material metal(bool brittle) {
    material::Material m;
    m.name = brittle ? "iron" : "steel";
    m.yield = Stress::fromMpa(brittle ? 98 : 240);
    m.ultimate = Stress::fromMpa(brittle ? 150 : 400);
    m.brittle = brittle;
    return m;
}

FlangeFindings at(double vonMises, double principal) {
    FlangeFindings f;
    f.vonMises = Stress::fromMpa(vonMises);
    f.principal = Stress::fromMpa(principal);
    f.jaws = 3;
    f.perJaw = Force::fromN(4000);
    return f;
}

} // namespace

/// Limits: the design's table (2.0 of ASME BTH-1 category A on yield; under 1 sets).
TEST(FlangeBending, DuctileIsJudgedOnYieldByVonMises) {
    EXPECT_EQ(flangeBendingCheck(at(119, 500), metal(false), {}).grade, Grade::Holds);
    EXPECT_EQ(flangeBendingCheck(at(121, 0), metal(false), {}).grade, Grade::Thin);
    EXPECT_EQ(flangeBendingCheck(at(239, 0), metal(false), {}).grade, Grade::Thin);
    EXPECT_EQ(flangeBendingCheck(at(241, 0), metal(false), {}).grade, Grade::Sets);
    EXPECT_EQ(flangeBendingCheck(at(119, 0), metal(false), {1.5}).grade, Grade::Thin);
}

/// Limits: 4 and 2 on ultimate, common practice, no published source.
TEST(FlangeBending, BrittleIsJudgedOnUltimateByTheLargestPrincipal) {
    EXPECT_EQ(flangeBendingCheck(at(500, 37), metal(true), {}).grade, Grade::Holds);
    EXPECT_EQ(flangeBendingCheck(at(0, 38), metal(true), {}).grade, Grade::Thin);
    EXPECT_EQ(flangeBendingCheck(at(0, 74), metal(true), {}).grade, Grade::Thin);
    EXPECT_EQ(flangeBendingCheck(at(0, 76), metal(true), {}).grade, Grade::Breaks);
    FlangeDemands hammered;
    hammered.hammering = true;
    EXPECT_EQ(flangeBendingCheck(at(0, 1), metal(true), hammered).grade, Grade::Breaks);
    EXPECT_EQ(flangeBendingCheck(at(1, 1), metal(false), hammered).grade, Grade::Holds);
}

TEST(FlangeBending, SaysWhenThePeakHasNotSettled) {
    FlangeFindings f = at(50, 50);
    f.settled = false;
    f.errorPercent = 7;
    EXPECT_NE(flangeBendingCheck(f, metal(false), {}).basis.find("not settled, within about 7"),
              std::string::npos);
}

/// By hand: 20 x 15 = 300 mm2; 1.8 x 240 x 300 = 129.6 kN.
TEST(JawBearing, ForceOverWidthTimesOverlap) {
    const Length w = Length::fromMm(20), o = Length::fromMm(15);
    const Check steel = jawBearingCheck(Force::fromN(64000), w, o, metal(false), {});
    EXPECT_NEAR(*steel.capacity, 129600, 1e-6);
    EXPECT_EQ(steel.grade, Grade::Holds);
    EXPECT_EQ(jawBearingCheck(Force::fromN(130000), w, o, metal(false), {}).grade, Grade::Sets);
    const Check iron = jawBearingCheck(Force::fromN(12000), w, o, metal(true), {});
    EXPECT_NEAR(*iron.capacity, 45000, 1e-6); // 150 x 300
    EXPECT_EQ(iron.grade, Grade::Thin);       // 3.75
    EXPECT_EQ(jawBearingCheck(Force::fromN(23000), w, o, metal(true), {}).grade, Grade::Breaks);
}

/// By hand: three sides 10 x (20 + 30) = 500 mm2, 0.6 x 240 x 500 = 72 kN; with a root of 30 mm and three
/// jaws 10 x pi x 30 / 3 = 314 mm2.
TEST(FlangeShear, RoundAJawOrItsPartOfTheRoot) {
    const auto check = [](double root) {
        return flangeShearCheck(Force::fromN(1000), 3, Length::fromMm(root), Length::fromMm(10),
                                Length::fromMm(20), Length::fromMm(15), metal(false), {});
    };
    EXPECT_NEAR(*check(90).capacity, 72000, 1e-6);
    EXPECT_NEAR(*check(30).capacity, 144 * 100 * std::numbers::pi, 1e-6);
}

TEST(MissingForFlange, ListsWhatIsNotGivenAndNothingElse) {
    job::Hub hub;
    const auto all = missingForFlange(hub);
    ASSERT_TRUE(all);
    for (const char* field : {"hub.flange.outside", "hub.flange.root", "hub.flange.thickness",
                              "hub.jaws.count", "hub.jaws.width", "hub.jaws.overlap"})
        EXPECT_NE(all->find(field), std::string::npos) << field;
    const Length l = Length::fromMm(10);
    hub.flange = job::Flange{l, l, l, {}};
    hub.jaws = job::Jaws{3, l, l};
    EXPECT_FALSE(missingForFlange(hub));
    EXPECT_FALSE(missingForJaws(hub));
    hub.jaws->count.reset();
    EXPECT_EQ(missingForJaws(hub), missingForFlange(hub));
}
