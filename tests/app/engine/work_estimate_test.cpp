#include "app/engine/work_estimate.h"

#include "app/engine/check.h"
#include "tests/support/jobs.h"

#include <cmath>
#include <filesystem>
#include <gtest/gtest.h>

/// What is said before a job starts. That it comes within a factor of 3 of the clock is for tests/bench/work
/// to see; here is what must hold on any machine.
namespace pw::engine {
namespace {

using jobfile::Tree;

job::Job withHoles(int count) {
    return testing::jobOf(testing::sixPinWithHoles(count));
}

TEST(WorkEstimate, NoSampleIsLongOrMuch) {
    int samples = 0;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (!entry.path().string().ends_with(".plate.json"))
            continue;
        ++samples;
        const job::Job job = testing::jobOf(*jobfile::loadTree(entry.path()));
        EXPECT_EQ(foretold(estimateWork(job)), "") << entry.path();
        EXPECT_GT(estimateWork(job).unknowns, 0) << entry.path();
    }
    EXPECT_GT(samples, 10);
}

TEST(WorkEstimate, APlateWithoutSymmetryAndWithThirtyHolesSaysHowLongItTakes) {
    const WorkEstimate work = estimateWork(withHoles(30));
    EXPECT_EQ(work.sectorOf, 1);
    EXPECT_EQ(work.holes, 37);
    const std::string words = foretold(work);
    EXPECT_NE(words.find("no symmetry and 37 holes"), std::string::npos) << words;
    EXPECT_NE(words.find("minutes"), std::string::npos) << words;
}

TEST(WorkEstimate, MoreHolesAreMoreWorkAndMoreMemory) {
    WorkEstimate before = estimateWork(withHoles(1));
    for (const int count : {3, 10, 30, 60}) {
        const WorkEstimate work = estimateWork(withHoles(count));
        EXPECT_GT(work.seconds, before.seconds) << count;
        EXPECT_GT(work.megabytes, before.megabytes) << count;
        EXPECT_GE(work.mostSeconds, work.seconds) << count;
        before = work;
    }
}

TEST(WorkEstimate, SymmetryIsLessWork) {
    const WorkEstimate whole = estimateWork(withHoles(1)), twelfth = estimateWork(withHoles(0));
    EXPECT_EQ(twelfth.sectorOf, 12);
    EXPECT_LT(twelfth.seconds, whole.seconds / 2);
    EXPECT_LT(twelfth.unknowns, whole.unknowns);
}

TEST(WorkEstimate, MoreChecksAreMoreWork) {
    const job::Job job = withHoles(10);
    const double one = estimateWork(job).seconds;
    EXPECT_GT(estimateWork(job, WorkOn::Ladder).seconds, 2 * one);
    EXPECT_GT(estimateWork(job, WorkOn::Propose).seconds, 2 * one);
    EXPECT_GT(estimateWork(job, WorkOn::Rack, 20).seconds, estimateWork(job, WorkOn::Rack, 10).seconds);
    EXPECT_EQ(estimateWork(job, WorkOn::Rack, 5000).seconds, estimateWork(job, WorkOn::Rack, 110).seconds)
        << "a rack is checked in no more kinds than that";
}

TEST(WorkEstimate, AJobWithoutAPlateIsNoWork) {
    EXPECT_EQ(foretold(estimateWork(job::Job())), "");
    EXPECT_EQ(foretold(estimateWork(testing::jobFrom(R"({"platewright": 1, "work": "compress"})"))), "");
}

/// The most that is ever bent: nothing runs out of memory or time, it is refused.
TEST(WorkEstimate, APlateBeyondTheHardLimitIsIncompleteAndSaysWhy) {
    Tree tree = testing::sampleTree("mill_lane_six_pin");
    tree.set("plate.outline.diameter", "1000 mm");
    for (int i = 0; i < 320; ++i) {
        const std::string hole = "plate.holes[" + std::to_string(i) + "]";
        const double angle = 2.4 * i, radius = 100 + 380.0 * std::sqrt(i / 320.0);
        tree.set(hole + ".at", Tree::List{radius * std::cos(angle), radius * std::sin(angle)});
        tree.set(hole + ".diameter", 3);
    }
    const job::Job job = testing::jobOf(tree);
    EXPECT_EQ(foretold(estimateWork(job)), "");
    CheckOptions options;
    options.mend = false;
    const Report report = check(job, options);
    EXPECT_EQ(report.grade, verdict::Grade::Incomplete);
    ASSERT_FALSE(report.problems.empty());
    EXPECT_EQ(report.problems[0].field, "plate");
    EXPECT_NE(report.problems[0].message.find("more than 20000 triangles"), std::string::npos)
        << report.problems[0].message;
}

} // namespace
} // namespace pw::engine
