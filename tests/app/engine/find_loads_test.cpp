#include "app/engine/find_loads.h"

#include "app/engine/check.h"
#include "tests/support/jobs.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::jobOf;
using pw::testing::sampleTree;
using verdict::CheckKind;
using verdict::Grade;

namespace {

engine::Report quick(const jobfile::Tree& tree) {
    engine::CheckOptions options;
    options.mend = options.spread = false;
    return engine::check(jobOf(tree), options);
}

double designOf(const engine::Report& report) {
    return report.load.total ? report.load.total->high.newton() : 0;
}

double wantedOfPlate(const engine::Report& report) {
    const verdict::Check* check = report.find("plate.collapse");
    return check && check->wanted ? *check->wanted : 0;
}

/// The strongback nobody states a load for.
jobfile::Tree nobodys() {
    return sampleTree("mill_lane_pull_nobody_knows");
}

} // namespace

TEST(PullLoad, AStatedTotalStandsWhateverWrenchAndHubSay) {
    jobfile::Tree tree = nobodys();
    tree.set("load.total", "18 kN");
    tree.set("screw.wrench", "600 mm");
    tree.set("screw.hand_pull", "400 N");
    const engine::Report report = quick(tree);
    EXPECT_EQ(report.load.source, "given");
    EXPECT_NEAR(designOf(report), 18000, 1e-6);
    EXPECT_NEAR(wantedOfPlate(report), 3.0, 1e-12);
}

/// By hand as in tests/core/loadpath/pull_load_test.cpp: M24, 18 mm point, oiled: 30 N.m make 15.136 kN at
/// most.
TEST(PullLoad, TheWrenchDecidesAndNobodyStatingALoadWantsHalfAsMuchAgain) {
    jobfile::Tree tree = nobodys();
    tree.set("screw.wrench", "250 mm");
    tree.set("screw.hand_pull", "120 N");
    const engine::Report report = quick(tree);
    EXPECT_EQ(report.load.source, "wrench");
    EXPECT_NEAR(designOf(report), 15136, 15);
    EXPECT_NEAR(wantedOfPlate(report), 4.5, 1e-12) << "ASME BTH-1 category B: neither load nor hub stated";
    // With the hub stated the load is known to be bounded by what is asked: category A.
    tree.set("hub", pw::testing::treeOf(R"({"fit": "rust only", "force": ["4 kN", "9 kN"]})"));
    const engine::Report known = quick(tree);
    EXPECT_EQ(known.load.source, "wrench");
    EXPECT_NEAR(designOf(known), 15136, 15);
    EXPECT_NEAR(wantedOfPlate(known), 3.0, 1e-12);
    // And a hub that asks for more decides.
    tree.set("hub.force", pw::testing::treeOf(R"(["4 kN", "22 kN"])"));
    const engine::Report hub = quick(tree);
    EXPECT_EQ(hub.load.source, "hub");
    EXPECT_NEAR(designOf(hub), 22000, 1e-6);
    EXPECT_NEAR(hub.load.total->low.newton(), 4000, 1e-6);
}

TEST(PullLoad, ARamDecidesByPressureTimesArea) {
    const engine::Report report = quick(sampleTree("mill_lane_pull_ram_pulley"));
    EXPECT_GE(designOf(report), 80000 - 1e-6); // 1600 mm2 x 500 bar
    if (report.load.source == "ram") {
        EXPECT_NEAR(designOf(report), 80000, 1e-6);
    }
}

TEST(PullLoad, WithoutHubWrenchOrRamTheToolIsRatedAndEverythingHolds) {
    for (const char* steel : {"unknown scrap", "S235", "S355"}) {
        for (const char* thickness : {"20 mm", "35 mm"}) {
            jobfile::Tree tree = nobodys();
            tree.set("plate.steel", steel);
            tree.set("plate.thickness", thickness);
            tree.set("screw.engagement", thickness);
            SCOPED_TRACE(std::string(steel) + " " + thickness);
            const engine::Report report = quick(tree);
            EXPECT_TRUE(report.missing.empty() && report.problems.empty()) << report.reason;
            EXPECT_EQ(report.load.source, "rated");
            EXPECT_EQ(report.find("plate.set")->grade, Grade::Holds);
            const verdict::Check* weakest = nullptr;
            for (const verdict::Check& check : report.checks)
                if (check.kind == CheckKind::Force && check.grade != Grade::Incomplete &&
                    check.marginOverWanted()) {
                    EXPECT_GE(*check.marginOverWanted(), 1 - 1e-9) << check.id << " " << check.basis;
                    // Set is judged by its limit, not in proportion to the load.
                    if (check.id != "plate.set" &&
                        (!weakest || *check.marginOverWanted() < *weakest->marginOverWanted()))
                        weakest = &check;
                }
            ASSERT_TRUE(weakest);
            EXPECT_NEAR(wantedOfPlate(report), 4.5, 1e-12);
            // Two figures in the job's units.
            const double step = std::pow(10, std::floor(std::log10(designOf(report))) - 1);
            EXPECT_NEAR(std::remainder(designOf(report), step), 0, 1e-6 * step);
            // Tight: a tenth more fails the weakest, unless permanent set already brought the load down.
            const double over = *weakest->marginOverWanted();
            EXPECT_LT(over, 1.1) << weakest->id;
            tree.set("load.total", std::to_string(1.1 * designOf(report)) + " N");
            const engine::Report more = quick(tree);
            ASSERT_TRUE(more.find(weakest->id) && more.find(weakest->id)->margin);
            EXPECT_LT(*more.find(weakest->id)->margin, *weakest->wanted) << weakest->id;
            // What is stamped, stopped at and proved at goes with it.
            ASSERT_TRUE(report.screw.stamp && report.screw.ratedLoad && report.proof.load);
            EXPECT_GE(report.screw.stamp->newton(), designOf(report) * (1 - 1e-9));
            EXPECT_LE(report.screw.stamp->newton(), report.screw.ratedLoad->newton() * (1 + 1e-9));
            EXPECT_NEAR(*report.proof.load / *report.screw.stamp, 1.25, 1e-12);
        }
    }
}

/// The load that was tried stood there as what the tool may be used for.
TEST(PullLoad, AToolThatCannotWorkIsNotRatedAtTheLoadThatWasTried) {
    jobfile::Tree tree = nobodys();
    tree.set("hub", pw::testing::treeOf(R"({"shaft": "60 mm", "shaft_bore": "20 mm"})"));
    const engine::Report report = quick(tree);
    EXPECT_EQ(report.grade, Grade::Breaks);
    EXPECT_NE(report.reason.find("nothing to push on"), std::string::npos) << report.reason;
    EXPECT_FALSE(report.load.total);
    EXPECT_FALSE(report.screw.ratedLoad);
    EXPECT_FALSE(report.screw.stopTorque);
    EXPECT_FALSE(report.proof.load);
    EXPECT_TRUE(report.gauge.empty() && report.card.rows.empty());
}

TEST(PullLoad, RatedInInchesIsARoundFigureInPounds) {
    jobfile::Tree tree = nobodys();
    tree.set("stations.circle", "5 1/2 in");
    tree.set("stations.access_hole", "11/16 in");
    tree.set("stations.land", "1 3/16 in");
    tree.set("plate.outline", pw::testing::treeOf(R"({"shape": "bar", "length": "8 in", "width": "3 in"})"));
    tree.set("plate.thickness", "1 1/4 in");
    tree.set("plate.bore_thread", "1-8 UNC");
    tree.set("screw",
             pw::testing::treeOf(R"({"thread": "1-8 UNC", "grade": "5", "turns": "screw", "into": "plate",
        "engagement": "1 1/4 in", "free_length": "3 in", "point_diameter": "3/4 in", "lubrication": "oiled"})"));
    tree.set("legs", pw::testing::treeOf(R"({"count": 2, "span": "5 1/2 in", "thread": "5/8-11", "grade": "5",
        "length": "6 in"})"));
    const engine::Report report = quick(tree);
    ASSERT_EQ(report.load.source, "rated") << report.reason;
    EXPECT_EQ(report.preferred, units::System::Inch);
    const double lbf = report.load.total->high.lbf(), step = std::pow(10, std::floor(std::log10(lbf)) - 1);
    EXPECT_NEAR(std::remainder(lbf, step), 0, 1e-6 * step) << lbf;
}

/// Statics by hand. 3 x 5 kN on R = 42.5: two left push 10 kN at R / 2 = 21.25 off the middle; the bearing of
/// the tapped M20 reaches 1.25 x 10 = 12.5 mm and balances 0.85 of that (MODEL 2: bearing pressure as far as
/// the ring can push). The screw takes 10 kN x (21.25 - 10.625) = 106.25 N.m.
TEST(HungStation, LeavesTheScrewWhatTheBearingCannotBalance) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_stop_bolt");
    const engine::Report report = quick(tree);
    const verdict::Check* check = report.find("screw.hung_station");
    ASSERT_TRUE(check && check->demand);
    // Stress area of M20 244.8 mm2, d = 17.655; twist of 10 kN at friction 0.16: 10 x 2.1123 = 21.1 N.m.
    const double modulus = std::acos(-1.0) * std::pow(17.655, 3) / 32, tension = 10000 / 244.8,
                 bending = 106250 / modulus / 1.698, twist = 21123 / (2 * modulus);
    EXPECT_NEAR(*check->demand, std::hypot(tension + bending, std::sqrt(3.0) * twist), 0.01 * *check->demand)
        << check->basis;
}

/// Two legs tip until both carry: neither can hang.
TEST(HungStation, OfTwoLegsThereIsNone) {
    EXPECT_FALSE(quick(sampleTree("mill_lane_pull_nobody_knows")).find("screw.hung_station"));
    EXPECT_FALSE(quick(sampleTree("mill_lane_pull_two_bolt")).find("screw.hung_station"));
}

TEST(Rating, OfACompressJobNothingPassesTheLoadAtWhichTheSpringsBind) {
    jobfile::Tree tree = sampleTree("mill_lane_six_pin");
    // Binds 5 mm after the squeeze: low springs 6 x (560 + 51 x 8) = 5808 N; the load is 6 x (630 + 153) =
    // 4698 N.
    tree.set("springs", pw::testing::treeOf(R"([{"per_station": 1, "assembled_length": "60 mm",
        "loads": [{"length": "60 mm", "force": ["560 N", "630 N"]}], "rate": "51 N/mm", "solid_length": "52 mm"}])"));
    const engine::Report report = quick(tree);
    ASSERT_TRUE(report.screw.ratedLoad && report.screw.stamp && report.proof.load && report.screw.stopTorque);
    EXPECT_NEAR(designOf(report), 4698, 1e-6);
    EXPECT_LE(report.screw.ratedLoad->newton(), 5808 + 1e-6);
    EXPECT_LE(report.screw.stamp->newton(), 5808 + 1e-6);
    // By hand (gauge_test.cpp): 2.2416 N.mm a newton at the low friction.
    EXPECT_NEAR(report.screw.stopTorque->newtonMm() / report.screw.ratedLoad->newton(), 2.2416, 0.005);
    // 1.25 x 4700 = 5875 > 5808: on packing.
    const bool packing =
        std::any_of(report.assumptions.begin(), report.assumptions.end(),
                    [](const std::string& s) { return s.find("packing") != std::string::npos; });
    EXPECT_EQ(packing, report.proof.load->newton() > 5808);
    EXPECT_TRUE(packing);
}
