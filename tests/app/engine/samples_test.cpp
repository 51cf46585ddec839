#include "app/engine/check.h"
#include "tests/support/jobs.h"

#include <filesystem>
#include <gtest/gtest.h>
#include <map>

using namespace pw;
using pw::testing::jobOf;
using verdict::Grade;

/// What the samples are there to show; their notes say so. A sample that is not listed holds or is thin.
TEST(Samples, AreAnsweredInFullAndAsTheirNotesSay) {
    const std::map<std::string, std::string> sources = {{"mill_lane_pull_nobody_knows", "rated"},
                                                        {"mill_lane_pull_two_bolt", "given"},
                                                        {"mill_lane_pull_stop_bolt", "given"},
                                                        {"mill_lane_six_pin", "springs"}};
    int samples = 0;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        const std::string file = entry.path().filename().string();
        const auto end = file.find(".plate.json");
        if (end == std::string::npos)
            continue;
        ++samples;
        const std::string name = file.substr(0, end);
        SCOPED_TRACE(name);
        const jobfile::Reading reading = jobfile::readJob(*jobfile::loadTree(entry.path()));
        EXPECT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
        EXPECT_TRUE(reading.unknownKeys.empty());
        engine::CheckOptions options;
        options.mend = false;
        const engine::Report report = engine::check(reading.job, options);
        EXPECT_TRUE(report.problems.empty()) << util::toText(report.problems);
        EXPECT_TRUE(report.missing.empty());
        if (name.ends_with("_thin"))
            EXPECT_TRUE(report.grade == Grade::Sets || report.grade == Grade::Breaks) << report.reason;
        else
            EXPECT_TRUE(report.grade == Grade::Holds || report.grade == Grade::Thin) << report.reason;
        for (const verdict::Check& check : report.checks)
            EXPECT_TRUE(check.kind == verdict::CheckKind::Note || check.grade != Grade::Incomplete)
                << check.id << ": " << check.basis;
        if (const auto source = sources.find(name); source != sources.end()) {
            EXPECT_EQ(report.load.source, source->second);
        }
        EXPECT_FALSE(report.steps.empty());
        EXPECT_FALSE(report.cautions.empty());
        // The rating's own sums: stop torque is that of the rated load, proof a quarter over the stamp.
        ASSERT_TRUE(report.screw.ratedLoad);
        if (report.screw.stamp) {
            EXPECT_GE(report.screw.stamp->newton(), report.load.total->high.newton() * (1 - 1e-9));
            EXPECT_LE(report.screw.stamp->newton(), report.screw.ratedLoad->newton() * (1 + 1e-9));
            EXPECT_NEAR(*report.proof.load / *report.screw.stamp, 1.25, 1e-12);
        } else {
            EXPECT_LT(report.screw.ratedLoad->newton(), report.load.total->high.newton());
        }
        if (report.screw.stopTorque) {
            EXPECT_NEAR(*report.screw.stopTorque / report.screw.torqueRange->low /
                            (*report.screw.ratedLoad / report.load.total->high),
                        1, 1e-9);
        }
    }
    EXPECT_GE(samples, 15);
}

TEST(Samples, TheFlangeUnderJawsIsTheWeakOneAsItsNotesSay) {
    EXPECT_EQ(engine::check(jobOf(pw::testing::sampleTree("mill_lane_pull_jaws_inch"))).weakest,
              "flange.bending");
}

TEST(Samples, OfAHollowShaftNeedTheirStopBolt) {
    jobfile::Tree tree = pw::testing::sampleTree("mill_lane_pull_stop_bolt");
    tree.set("hub.shaft_bore", "18 mm");
    EXPECT_NE(engine::check(jobOf(tree)).grade, Grade::Breaks);
    tree.set("back.kind", "none");
    const engine::Report report = engine::check(jobOf(tree));
    EXPECT_EQ(report.grade, Grade::Breaks);
    EXPECT_NE(report.reason.find("nothing to push on"), std::string::npos) << report.reason;
}
