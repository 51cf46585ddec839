#include "app/engine/ladder.h"

#include "core/jobfile/read.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

using namespace pw;

using pw::testing::sampleJob;

TEST(Ladder, HasEveryStockThicknessWithTheSameAnswerAsACheckOfIt) {
    const job::Job job = sampleJob("mill_lane_six_pin");
    const engine::Ladder ladder = engine::ladder(job);
    ASSERT_EQ(ladder.rungs.size(), 12u);
    job::Job alone = job;
    alone.plate.thickness = ladder.rungs[4].thickness;
    const engine::Report report = engine::check(alone);
    EXPECT_EQ(ladder.rungs[4].grade, report.grade);
    EXPECT_DOUBLE_EQ(*ladder.rungs[4].collapseFactor, *report.plate.collapseFactor);
    EXPECT_DOUBLE_EQ(*ladder.rungs[4].massKg, *report.plate.massKg);
}

TEST(Ladder, ThickerNeverFoldsEarlierAndTheThinnestThatHoldsIsTheFirst) {
    const engine::Ladder ladder = engine::ladder(sampleJob("mill_lane_six_pin"));
    for (std::size_t i = 1; i < ladder.rungs.size(); ++i)
        EXPECT_GT(*ladder.rungs[i].collapseFactor, *ladder.rungs[i - 1].collapseFactor);
    for (const engine::Rung& rung : ladder.rungs) {
        if (rung.label == ladder.thinnestThatHolds)
            break;
        EXPECT_NE(rung.grade, verdict::Grade::Holds) << rung.label;
    }
    EXPECT_FALSE(ladder.thinnestThatHolds.empty());
}

TEST(Ladder, SpeaksInInchFractionsToAnInchJob) {
    const engine::Ladder ladder = engine::ladder(sampleJob("mill_lane_eight_pin_inch"));
    EXPECT_EQ(ladder.rungs.front().label, "1/8 in");
    EXPECT_NEAR(ladder.rungs.front().thickness.mm(), 3.175, 1e-12);
}
