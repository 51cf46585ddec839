#include "app/engine/tool.h"

#include "tests/support/jobs.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::jobOf;
using pw::testing::sampleTree;
using verdict::Grade;

namespace {

jobfile::Tree sixPin() {
    return sampleTree("mill_lane_six_pin");
}

engine::OtherUse use(const jobfile::Tree& tool, const jobfile::Tree& part) {
    return engine::tryTool(jobOf(tool), jobOf(part), "part");
}

std::string said(const engine::OtherUse& use) {
    std::string text = use.reason;
    for (const std::string& reason : use.reasons)
        text += "\n" + reason;
    return text;
}

} // namespace

TEST(Tool, OnItsOwnJobFitsUnturnedWithItsOwnVerdict) {
    for (const char* name :
         {"mill_lane_six_pin", "mill_lane_six_pin_thin", "mill_lane_three_pin_polygon",
          "mill_lane_square_four", "mill_lane_pull_three_bolt_inch", "mill_lane_pull_stop_bolt"}) {
        const auto tree = sampleTree(name);
        const engine::OtherUse same = use(tree, tree);
        EXPECT_TRUE(same.fits) << name << " " << said(same);
        ASSERT_TRUE(same.turnDegrees);
        EXPECT_NEAR(*same.turnDegrees, 0, 1e-9) << name;
        engine::CheckOptions options;
        options.mend = options.spread = false;
        EXPECT_EQ(verdict::wordOf(same.grade), verdict::wordOf(engine::check(jobOf(tree), options).grade))
            << name << " " << said(same);
    }
}

TEST(Tool, ATwelveHoleToolServesEverySecondStation) {
    jobfile::Tree tool = sixPin();
    tool.set("stations.count", 12);
    tool.set("stations.circle", "150 mm");
    tool.set("plate.outline.diameter", "200 mm");
    jobfile::Tree part = sixPin();
    part.set("stations.circle", "150 mm");
    const engine::OtherUse half = use(tool, part);
    EXPECT_TRUE(half.fits) << said(half);
    EXPECT_NE(half.grade, Grade::Incomplete) << half.reason;
    // Not the other way round.
    const engine::OtherUse more = use(part, tool);
    EXPECT_FALSE(more.fits);
    EXPECT_NE(said(more).find("12 stations"), std::string::npos) << said(more);
}

TEST(Tool, IsTurnedUnderAPartThatStandsTurned) {
    jobfile::Tree part = sixPin();
    part.set("stations.start", "30 deg");
    const engine::OtherUse turned = use(sixPin(), part);
    EXPECT_TRUE(turned.fits) << said(turned);
    EXPECT_NEAR(std::abs(*turned.turnDegrees), 30, 1e-9) << "six stations: 30 either way";
    EXPECT_EQ(turned.grade, Grade::Holds) << turned.reason;
    part.set("stations.start", "10 deg");
    EXPECT_NEAR(*use(sixPin(), part).turnDegrees, -10, 1e-9);
}

TEST(Tool, ALargerPinCircleDoesNotFitAndALittleIsLayoutError) {
    jobfile::Tree part = sixPin();
    part.set("stations.circle", "130 mm");
    const engine::OtherUse larger = use(sixPin(), part);
    EXPECT_FALSE(larger.fits);
    EXPECT_NE(said(larger).find("does not pass"), std::string::npos) << said(larger);
    part.set("stations.circle", "112 mm"); // 1 mm off each: 24 - 2 leaves 22 for the keeper of 18
    const engine::OtherUse little = use(sixPin(), part);
    EXPECT_TRUE(little.fits) << said(little);
    EXPECT_NE(said(little).find("off the holes"), std::string::npos) << said(little);
}

TEST(Tool, ReadsAPartMeasuredInInches) {
    jobfile::Tree part = sixPin();
    part.set("stations.circle", std::to_string(110 / 25.4) + " in");
    part.set("stations.keeper", "0.7 in");
    const engine::OtherUse inch = use(sixPin(), part);
    EXPECT_TRUE(inch.fits) << said(inch);
    EXPECT_EQ(inch.grade, Grade::Holds) << inch.reason;
}

TEST(Tool, TooThickAThreadOrTheOtherWorkDoesNotFit) {
    jobfile::Tree part = sixPin();
    part.set("screw.thread", "M24");
    EXPECT_FALSE(use(sixPin(), part).fits);
    EXPECT_FALSE(use(sixPin(), sampleTree("mill_lane_pull_stop_bolt")).fits);
    EXPECT_NE(said(use(sixPin(), sampleTree("mill_lane_pull_stop_bolt"))).find("pulls"), std::string::npos);
}

/// Circles of 90 and 85 mm: each hole of 13.5 is 2.5 mm off, which leaves 8.5 for a bolt of 10.
TEST(Tool, BoltsDoNotPassHolesThatLieTooFarOff) {
    const engine::OtherUse off =
        use(sampleTree("mill_lane_pull_taper"), sampleTree("mill_lane_pull_stop_bolt"));
    EXPECT_FALSE(off.fits);
    EXPECT_NE(said(off).find("do not pass"), std::string::npos) << said(off);
    jobfile::Tree near = sampleTree("mill_lane_pull_stop_bolt");
    near.set("stations.circle", "88 mm"); // 1 mm off: 11.5 left
    EXPECT_TRUE(use(sampleTree("mill_lane_pull_taper"), near).fits);
}

/// Stations that stay empty carry no bolt: three bolts share the pull, not six.
TEST(Tool, BoltsAreCountedOnThePartNotOnTheTool) {
    jobfile::Tree part = sampleTree("mill_lane_pull_stop_bolt"); // 3 x M10
    jobfile::Tree six = part;
    six.set("stations.count", 6);
    six.set("hub.bolts",
            pw::testing::treeOf(R"({"count": 6, "thread": "M10", "grade": "8.8", "engagement": "20 mm"})"));
    part.set("hub.bolts", pw::testing::treeOf(R"({"thread": "M10", "grade": "8.8", "engagement": "20 mm"})"));
    part.set("load.total", "70 kN"); // on the worst of three 35 kN > 33.7 of proof (ISO 898-1): breaks
    const engine::OtherUse three = use(six, part);
    EXPECT_TRUE(three.fits) << said(three);
    EXPECT_EQ(three.grade, Grade::Breaks) << three.reason;
}

TEST(ToolLimits, AreWhatTheCheckRatesItFor) {
    const job::Job job = jobOf(sampleTree("mill_lane_pull_nobody_knows"));
    const engine::ToolLimits limits = engine::limitsOf(job);
    const engine::Report report = engine::check(job);
    ASSERT_TRUE(limits.rated && limits.perStation);
    EXPECT_EQ(*limits.rated, *report.screw.ratedLoad);
    EXPECT_NEAR(*limits.rated / *limits.perStation, 2, 1e-12);
    EXPECT_FALSE(limits.ratedBy.empty());
}

/// A tool is not weaker because the springs of its own job bind: what gives first is named rightly.
TEST(ToolLimits, WhereTheSpringsBindFirstThatIsSaid) {
    jobfile::Tree tree = sixPin();
    tree.set("springs", pw::testing::treeOf(R"([{"per_station": 1, "assembled_length": "60 mm",
        "loads": [{"length": "60 mm", "force": "600 N"}], "rate": "51 N/mm", "solid_length": "52 mm"}])"));
    const engine::ToolLimits limits = engine::limitsOf(jobOf(tree));
    EXPECT_NE(limits.ratedBy.find("springs"), std::string::npos) << limits.ratedBy;
}
