#include "core/spring/pack.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::spring;
namespace job = pw::job;
using pw::units::Range;
using pw::verdict::Check;
using pw::verdict::Grade;

Length mm(double v) {
    return Length::fromMm(v);
}
Force newton(double v) {
    return Force::fromN(v);
}
Range<Force> between(double low, double high) {
    return {newton(low), newton(high)};
}

job::Spring spring(std::vector<job::SpringReading> loads) {
    job::Spring made;
    made.loads = std::move(loads);
    return made;
}

job::Job sixStations(std::vector<job::Spring> springs) {
    job::Job made;
    made.work = job::Work::Compress;
    made.stations.count = 6;
    made.springs = std::move(springs);
    return made;
}

const Check& find(const std::vector<Check>& checks, const std::string& id) {
    for (const Check& check : checks)
        if (check.id == id)
            return check;
    throw std::runtime_error("no check " + id);
}

bool mentions(const pw::util::Problems& list, const std::string& field) {
    for (const auto& problem : list)
        if (problem.field == field)
            return true;
    return false;
}

// Common practice, no published source.
TEST(Pack, SixStationsOfNestedSpringsMakeTheLoadTheTradeKnows) {
    const auto lbf = [](double low, double high) {
        return Range<Force>{Force::fromLbf(low), Force::fromLbf(high)};
    };
    const PackLoads pack = packLoads(sixStations(
        {spring({{Length::fromInch(2), lbf(147, 163)}}), spring({{Length::fromInch(2), lbf(113, 125)}})}));
    EXPECT_NEAR(pack.station.low.lbf(), 260, 1e-9);
    EXPECT_NEAR(pack.station.high.lbf(), 288, 1e-9);
    EXPECT_NEAR(pack.total.low.lbf(), 1560, 1e-9);
    EXPECT_NEAR(pack.total.high.lbf(), 1728, 1e-9);
}

TEST(Pack, RangesStayRangesAndTheRateAddsTheSqueeze) {
    job::Spring outer = spring({{mm(60), between(650, 725)}});
    outer.rate = Rate::fromNPerMm(12);
    job::Job made = sixStations({outer});
    made.travel.compressFurther = mm(4);
    const PackLoads pack = packLoads(made);
    // By hand: 650 + 12 x 4 = 698, 725 + 48 = 773 N a station.
    EXPECT_NEAR(pack.station.low.newton(), 698, 1e-9);
    EXPECT_NEAR(pack.station.high.newton(), 773, 1e-9);
    EXPECT_NEAR(pack.total.high.newton(), 6 * 773, 1e-9);
    EXPECT_NEAR(pack.assembledTotal->high.newton(), 6 * 725, 1e-9);
    EXPECT_NEAR(pack.releaseLength->mm(), 56, 1e-12);
    // F^2 / 2k each: 773^2 / 24 = 24 897 N.mm, six of them 149 J.
    EXPECT_NEAR(pack.energy->joule(), 6 * 773.0 * 773.0 / 24 / 1000, 1e-6);
    // The stiff one is 773/12 = 64.4 mm short of free.
    EXPECT_NEAR(pack.releaseTravel->mm(), 773.0 / 12, 1e-9);
    EXPECT_TRUE(pack.problems.empty());
}

TEST(Pack, TwoReadingsGiveTheRate) {
    const PackLoads pack =
        packLoads(sixStations({spring({{mm(60), between(600, 660)}, {mm(50), between(720, 780)}})}));
    // 120 N over 10 mm, low and high alike.
    EXPECT_NEAR(pack.springs[0].steep.low.newtonPerMm(), 12, 1e-9);
    EXPECT_NEAR(pack.springs[0].steep.high.newtonPerMm(), 12, 1e-9);
    EXPECT_NEAR(pack.springs[0].forceAt(mm(60)).low.newton(), 600, 1e-9);
    EXPECT_NEAR(pack.springs[0].forceAt(mm(50)).high.newton(), 780, 1e-9);
    EXPECT_NEAR(pack.springs[0].forceAt(mm(45)).high.newton(), 840, 1e-9);
    EXPECT_NEAR(pack.total.low.newton(), 3600, 1e-9) << "assembled length is that of the first row";
}

TEST(Pack, OneNominalFigureIsTakenTenPercentEitherWay) {
    job::Spring outer = spring({{mm(60), between(700, 700)}});
    outer.freeLength = mm(110);
    const PackLoads pack = packLoads(sixStations({outer}));
    EXPECT_NEAR(pack.station.low.newton(), 630, 1e-9);
    EXPECT_NEAR(pack.station.high.newton(), 770, 1e-9);
    EXPECT_NEAR(pack.releaseTravel->mm(), 50, 1e-9);
}

TEST(Pack, WireCoilsAndFreeLengthAreEnough) {
    job::Spring outer;
    outer.assembledLength = mm(60);
    outer.freeLength = mm(100);
    outer.wire = mm(5);
    outer.coilOutside = mm(32);
    outer.activeCoils = 7;
    outer.shearModulus = Stress::fromMpa(80000);
    outer.totalCoils = 9;
    outer.ends = "closed ground";
    const PackLoads pack = packLoads(sixStations({outer}));
    // k = 80000 x 5^4 / (8 x 27^3 x 7) = 45.362 N/mm; 40 mm of it 1814.5 N, +-10 %.
    const double nominal = 80000.0 * 625 / (8.0 * 27 * 27 * 27 * 7) * 40;
    EXPECT_NEAR(pack.station.low.newton(), 0.9 * nominal, 1e-6);
    EXPECT_NEAR(pack.station.high.newton(), 1.1 * nominal, 1e-6);
    EXPECT_NEAR(pack.clearanceToSolid->mm(), 15, 1e-9) << "nine coils of 5 mm are 45 mm";
}

TEST(Pack, NoRateToBeHadIsAssumedOnBothSafeSidesAndASecondReadingIsAskedFor) {
    job::Job made = sixStations({spring({{mm(60), between(650, 725)}})});
    made.travel.compressFurther = mm(5);
    const PackLoads pack = packLoads(made);
    // Free length 75 for the force: k = 725/15, so 5 mm more add a third. 108 for the travel: 108 - 55 = 53.
    EXPECT_NEAR(pack.station.high.newton(), 725 * 20.0 / 15, 1e-9);
    EXPECT_NEAR(pack.releaseTravel->mm(), 53, 1e-9);
    EXPECT_TRUE(mentions(pack.missing, "springs[0].loads"));
    ASSERT_FALSE(pack.assumptions.empty());
    EXPECT_NE(pack.assumptions.front().find("1.25"), std::string::npos);
    EXPECT_NE(pack.assumptions.front().find("1.8"), std::string::npos);
}

TEST(Pack, FiguresThatContradictEachOtherAreSaidAndTheStifferOneCounts) {
    job::Spring outer = spring({{mm(60), between(700, 740)}});
    outer.rate = Rate::fromNPerMm(12);
    outer.freeLength = mm(90); // says 24 N/mm
    job::Job made = sixStations({outer});
    made.travel.compressFurther = mm(10);
    const PackLoads pack = packLoads(made);
    EXPECT_TRUE(mentions(pack.problems, "springs[0].rate"));
    EXPECT_GE(pack.station.high.newton(), 740 + 24 * 10 - 10);
    // Readings that fall as the spring gets shorter fix nothing.
    const PackLoads swapped =
        packLoads(sixStations({spring({{mm(60), between(700, 720)}, {mm(50), between(600, 620)}})}));
    EXPECT_TRUE(mentions(swapped.problems, "springs[0].loads"));
    EXPECT_FALSE(swapped.known());
}

TEST(Pack, AStatedTotalIsTakenAsItStandsAndSharedOut) {
    job::Job made = sixStations({});
    made.load.total = between(7500, 7500);
    made.load.share = {2, 1, 1, 1, 1, 0};
    const PackLoads pack = packLoads(made);
    EXPECT_EQ(pack.source, LoadSource::Given);
    EXPECT_NEAR(pack.total.low.newton(), 7500, 1e-9);
    EXPECT_NEAR(pack.perStation[0].high.newton(), 2500, 1e-9);
    EXPECT_NEAR(pack.perStation[5].high.newton(), 0, 1e-9);
    EXPECT_NEAR(pack.station.high.newton(), 2500, 1e-9);
    EXPECT_FALSE(pack.energy);
    EXPECT_TRUE(mentions(pack.missing, "springs"));
}

TEST(Pack, StationsThatAreNotLoadedCarryNothing) {
    job::Job made = sixStations({spring({{mm(60), between(650, 725)}})});
    made.stations.loaded = {true, false, false, true, false, false};
    const PackLoads pack = packLoads(made);
    EXPECT_EQ(pack.loaded, 2);
    EXPECT_NEAR(pack.total.high.newton(), 1450, 1e-9);
    EXPECT_NEAR(pack.perStation[0].high.newton(), 725, 1e-9);
    EXPECT_NEAR(pack.perStation[1].high.newton(), 0, 1e-9);
}

TEST(Pack, TwoSpringsAStationCountTwice) {
    job::Spring one = spring({{mm(60), between(100, 110)}});
    one.perStation = 2;
    EXPECT_NEAR(packLoads(sixStations({one})).total.high.newton(), 6 * 220, 1e-9);
}

TEST(CoilBind, AtOrUnderTheSolidLengthBreaksAndSaysByHowMuch) {
    job::Spring outer = spring({{mm(60), between(650, 725)}});
    outer.rate = Rate::fromNPerMm(12);
    outer.solidLength = mm(45);
    job::Job made = sixStations({outer});
    made.travel.compressFurther = mm(4);
    made.travel.swell = mm(13);
    const PackLoads pack = packLoads(made);
    const Check check = find(checkSprings(made, pack), "load.coil_bind");
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("2\u00a0mm too early"), std::string::npos) << check.basis;
    EXPECT_NE(check.basis.find("cut"), std::string::npos) << check.basis;
    EXPECT_NE(checkSprings(made, packLoads(made)).front().basis.find("of swell: without it"),
              std::string::npos);
    made.travel.swell = mm(11);
    EXPECT_EQ(find(checkSprings(made, packLoads(made)), "load.coil_bind").grade, Grade::Breaks)
        << "just solid";
    made.travel.swell = mm(8); // 3 mm left, a tenth of 45 wanted
    EXPECT_EQ(find(checkSprings(made, packLoads(made)), "load.coil_bind").grade, Grade::Thin);
    made.travel.swell = mm(0); // 11 mm left
    EXPECT_EQ(find(checkSprings(made, packLoads(made)), "load.coil_bind").grade, Grade::Holds);
    // 60 - 45 = 15 mm from assembled to solid: 725 + 15 x 12 a station when it binds, wherever it was
    // squeezed to.
    EXPECT_NEAR(packLoads(made).loadAtBind->high.newton(), 6 * (725 + 180), 1e-9);
    EXPECT_NEAR(packLoads(made).limitAtBind()->newton(), 6 * (650 + 180), 1e-9);
}

TEST(CoilBind, LeastGapsComeFromTheWireWhenItIsKnown) {
    // EN 13906-1 (from memory): n (0.0015 D^2/d + 0.1 d) = 7 (0.0015 x 27^2 / 5 + 0.5) = 5.03 mm.
    EXPECT_NEAR(sumOfLeastGaps(mm(5), mm(27), 7).mm(), 5.0309, 1e-4);
}

TEST(CoilBind, WithoutASolidLengthItIsIncompleteAndSaysHowToMeasure) {
    job::Job made = sixStations({spring({{mm(60), between(650, 725)}})});
    const PackLoads pack = packLoads(made);
    const Check check = find(checkSprings(made, pack), "load.coil_bind");
    EXPECT_EQ(check.grade, Grade::Incomplete);
    EXPECT_NE(check.basis.find("vice"), std::string::npos);
    EXPECT_FALSE(pack.limitAtBind());
}

TEST(SpringStress, IsInformationWhereTheWireIsUnknownAndThinWhereAKnownWireIsOverstressed) {
    job::Spring outer = spring({{mm(60), between(2400, 2500)}});
    outer.rate = Rate::fromNPerMm(45);
    outer.wire = mm(5);
    outer.coilOutside = mm(32);
    job::Job made = sixStations({outer});
    // tau = K_B 8 F D / (pi d^3): C = 5.4, K_B = 23.6/18.6; 2500 N: 1744 MPa, far over any wire of 5 mm.
    const Check unknown = find(checkSprings(made, packLoads(made)), "springs.stress");
    EXPECT_NEAR(*unknown.demand, 23.6 / 18.6 * 8 * 2500 * 27 / (3.14159265 * 125), 0.01);
    EXPECT_EQ(unknown.grade, Grade::Holds);
    EXPECT_EQ(unknown.kind, pw::verdict::CheckKind::Note);
    made.springs[0].wireMaterial = "music wire";
    EXPECT_EQ(find(checkSprings(made, packLoads(made)), "springs.stress").grade, Grade::Thin);
}

TEST(Pack, NothingGivenIsAskedForAndDoesNotCrash) {
    job::Job made;
    const PackLoads pack = packLoads(made);
    EXPECT_FALSE(pack.known());
    EXPECT_TRUE(mentions(pack.missing, "stations.count"));
    job::Job noLoad = sixStations({});
    EXPECT_TRUE(mentions(packLoads(noLoad).missing, "springs"));
    job::Job bare = sixStations({job::Spring{}});
    EXPECT_TRUE(mentions(packLoads(bare).missing, "springs[0].assembled_length"));
    bare.stations.loaded = {false, false, false, false, false, false};
    EXPECT_TRUE(mentions(packLoads(bare).problems, "stations.loaded"));
}

} // namespace
