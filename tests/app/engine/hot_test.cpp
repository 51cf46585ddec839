#include "app/engine/check.h"
#include "tests/support/jobs.h"
#include "tests/support/quick_check.h"

#include <gtest/gtest.h>

using namespace pw;
using pw::testing::quickCheck;
using pw::testing::sampleTree;
using verdict::Grade;

namespace {

double marginOf(const engine::Report& report, const char* id) {
    const verdict::Check* check = report.find(id);
    return check && check->margin ? *check->margin : -1;
}

} // namespace

/// EN 1993-1-2 Annex D Table D.1 (from memory): k_b 0.903 at 300 C, 0.775 at 400 C, so 0.839 at 350 C.
/// Table 3.1: k_p 0.613 and 0.42: 0.5165; k_y 1 at both.
TEST(Hot, AToolLosesWhatTheEurocodeSaysInScrewThreadAndPlate) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_two_bolt");
    const engine::Report cold = quickCheck(tree);
    tree.set("heat.tool", "350 C");
    const engine::Report hot = quickCheck(tree);
    EXPECT_NEAR(marginOf(hot, "screw.stress") / marginOf(cold, "screw.stress"), 0.839, 1e-3);
    EXPECT_NEAR(marginOf(hot, "bolts.proof") / marginOf(cold, "bolts.proof"), 0.839, 1e-3);
    EXPECT_NEAR(*hot.plate.firstYieldFactor / *cold.plate.firstYieldFactor, 0.5165, 0.005);
    EXPECT_NEAR(*hot.plate.collapseFactor / *cold.plate.collapseFactor, 1.0, 0.01);
}

TEST(Hot, APartHeatsItsBoltsButNotTheScrew) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_two_bolt");
    const engine::Report cold = quickCheck(tree);
    tree.set("heat.part", "300 C");
    const engine::Report hot = quickCheck(tree);
    EXPECT_NEAR(marginOf(hot, "bolts.proof") / marginOf(cold, "bolts.proof"), 0.903, 1e-3);
    EXPECT_NEAR(marginOf(hot, "screw.stress"), marginOf(cold, "screw.stress"), 1e-9);
    EXPECT_NEAR(*hot.plate.collapseFactor, *cold.plate.collapseFactor, 1e-9);
}

TEST(Hot, LegsAndRodLoseTheirShare) {
    jobfile::Tree legs = sampleTree("mill_lane_pull_nobody_knows");
    legs.set("load.total", "30 kN");
    jobfile::Tree ram = sampleTree("mill_lane_pull_ram_pulley");
    ram.set("load.total", "80 kN");
    for (auto& [tree, id] : {std::pair{&legs, "legs.tension"}, std::pair{&ram, "ram.rod"}}) {
        const double cold = marginOf(quickCheck(*tree), id);
        tree->set("heat.tool", "500 C"); // k_b 0.55
        EXPECT_NEAR(marginOf(quickCheck(*tree), id) / cold, 0.55, 1e-3) << id;
    }
}

TEST(Hot, UpToAHundredDegreesThePlateIsAsItWas) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_two_bolt");
    const engine::Report cold = quickCheck(tree);
    tree.set("heat.tool", "100 C");
    EXPECT_EQ(*quickCheck(tree).plate.firstYieldFactor, *cold.plate.firstYieldFactor);
}

TEST(Hot, AnAluminiumToolHasNoFactorsAndSaysSo) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_two_bolt");
    tree.set("plate.steel", "6061-T6");
    EXPECT_NE(quickCheck(tree).grade, Grade::Incomplete) << quickCheck(tree).reason;
    tree.set("heat.tool", "200 C");
    const engine::Report report = quickCheck(tree);
    EXPECT_EQ(report.grade, Grade::Incomplete);
    ASSERT_FALSE(report.problems.empty());
    EXPECT_EQ(report.problems.front().field, "heat.tool");
    EXPECT_NE(report.problems.front().message.find("alumin"), std::string::npos)
        << report.problems.front().message;
}
