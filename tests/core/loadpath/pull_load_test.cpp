#include "core/loadpath/pull_load.h"

#include "core/loadpath/setup.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>
#include <numbers>

namespace {

using namespace pw::loadpath;
using pw::testing::jobFrom;
namespace job = pw::job;

job::Job puller(const std::string& screw, const std::string& more = {}) {
    return jobFrom(R"({"platewright": 1, "work": "pull", "stations": {}, "plate": {"bore_thread": "M24"},
                     "screw": {"thread": "M24", "turns": "screw", "into": "plate", "point_diameter": "18 mm",
                               "lubrication": "oiled", )" +
                   screw + "}" + more + "}");
}

PullSources sourcesOf(const job::Job& made, std::optional<Range<Force>> hub = std::nullopt) {
    return pullSources(made, setUp(made).torque, hub);
}

/// By hand: M24, d2 = 22.051, l = 3, sec 30 = 1.1547, point 18 mm (mean 12). At friction 0.08: 11.0255 (3
/// + 6.400)/ (69.275 - 0.277) + 0.08 x 6 = 1.9820 N.mm a newton; 0.16: 11.0255 (3 + 12.799)/(69.275 - 0.554)
/// + 0.96 = 3.4948. 250 mm x 120 N = 30 N.m: 15.136 kN and 8.584 kN.
TEST(PullSources, TheWrenchMakesMostAtTheLowFriction) {
    const PullSources sources = sourcesOf(puller(R"("wrench": "250 mm", "hand_pull": "120 N")"));
    ASSERT_TRUE(sources.wrench);
    EXPECT_NEAR(sources.wrench->high.newton(), 15136, 15);
    EXPECT_NEAR(sources.wrench->low.newton(), 8584, 9);
    EXPECT_EQ(sources.design(), sources.wrench->high);
    EXPECT_EQ(sources.range().low, sources.wrench->low);
    EXPECT_TRUE(sources.assumptions.empty());
}

TEST(PullSources, AWrenchWithoutAHandIsPulledHardAndThatIsSaid) {
    const PullSources sources = sourcesOf(puller(R"("wrench": "250 mm")"));
    ASSERT_TRUE(sources.wrench);
    EXPECT_NEAR(sources.wrench->high.newton(), 15136 * 400 / 120.0,
                50); // common practice, no published source
    EXPECT_FALSE(sources.assumptions.empty());
}

TEST(PullSources, TheLargestDecides) {
    const std::string ram = R"(, "ram": {"area": "1600 mm2", "max_pressure": "500 bar", "capacity": "20 t"})";
    const auto hub = [](double low, double high) {
        return Range<Force>{Force::fromN(low), Force::fromN(high)};
    };
    const job::Job both = puller(R"("wrench": "250 mm", "hand_pull": "120 N")", ram);
    EXPECT_NEAR(sourcesOf(both).design().newton(), 80000, 1e-6);
    EXPECT_NEAR(sourcesOf(both, hub(10000, 60000)).design().newton(), 80000, 1e-6);
    EXPECT_NEAR(sourcesOf(both, hub(10000, 90000)).design().newton(), 90000, 1e-6);
    EXPECT_NEAR(sourcesOf(both, hub(10000, 90000)).range().low.newton(), 10000, 1e-6);
    EXPECT_NEAR(sourcesOf(both, hub(10000, 90000)).most()->newton(), 80000, 1e-6);
}

TEST(PullSources, WithNothingStatedThereIsNothing) {
    const PullSources sources = sourcesOf(puller(R"("grade": "8.8")"));
    EXPECT_FALSE(sources.known());
    EXPECT_FALSE(sources.most());
    EXPECT_EQ(sources.design(), Force());
}

} // namespace
