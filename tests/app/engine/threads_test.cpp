// What is promised to be safe from several threads at once. The answers must be those of one thread; the
// thread sanitizer (tests/threads.sh) sees what goes unnoticed here.
#include "app/engine/ladder.h"
#include "app/engine/model_cache.h"
#include "app/engine/propose.h"
#include "app/engine/rack.h"
#include "app/engine/report_json.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"
#include "tests/support/jobs.h"

#include <atomic>
#include <future>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::sampleJob;
using pw::testing::sampleTree;

namespace {

/// The report without the one figure that differs from run to run.
std::string figures(const engine::Report& report) {
    jobfile::Tree t = engine::toTree(report);
    t.set("plate.field.solve_ms", jobfile::Tree());
    return jobfile::toJson(t);
}

} // namespace

TEST(Threads, ChecksOfDifferentJobsAtOnceAnswerLikeOneAtATime) {
    const std::vector<std::string> samples{"mill_lane_six_pin", "mill_lane_two_pin_bar",
                                           "mill_lane_pull_two_bolt", "mill_lane_six_pin_thin"};
    std::vector<std::future<std::string>> running;
    for (const std::string& sample : samples)
        running.push_back(
            std::async(std::launch::async, [sample] { return figures(engine::check(sampleJob(sample))); }));
    for (std::size_t i = 0; i < samples.size(); ++i)
        EXPECT_EQ(running[i].get(), figures(engine::check(sampleJob(samples[i])))) << samples[i];
}

TEST(Threads, ChecksThatShareMeshesAnswerAlike) {
    engine::CheckOptions options;
    options.mend = false;
    options.models = std::make_shared<engine::ModelCache>();
    const job::Job one = sampleJob("mill_lane_six_pin");
    std::vector<std::future<std::string>> running;
    for (int i = 0; i < 4; ++i)
        running.push_back(
            std::async(std::launch::async, [&] { return figures(engine::check(one, options)); }));
    const std::string first = running[0].get();
    for (int i = 1; i < 4; ++i)
        EXPECT_EQ(running[i].get(), first);
}

TEST(Threads, ALadderAndProposalsRunBesideAChecking) {
    auto ladder =
        std::async(std::launch::async, [] { return engine::ladder(sampleJob("mill_lane_six_pin")); });
    auto proposals =
        std::async(std::launch::async, [] { return engine::propose(sampleTree("mill_lane_six_pin")); });
    EXPECT_EQ(engine::check(sampleJob("mill_lane_six_pin_thin")).grade, verdict::Grade::Sets);
    EXPECT_GT(ladder.get().rungs.size(), 5u);
    EXPECT_FALSE(proposals.get().best.empty());
}

TEST(Threads, ARackIsStoppedFromAnotherThread) {
    const auto rackTree = rack::loadRackTree(PW_SAMPLES "/rack.json");
    ASSERT_TRUE(rackTree);
    const rack::RackReading reading = rack::readRack(*rackTree);
    std::atomic<bool> stop{false};
    std::atomic<int> told{0};
    engine::RackOptions options;
    options.progress = [&](double, std::string_view) {
        ++told;
        return !stop.load();
    };
    auto running = std::async(std::launch::async, [&] {
        try {
            (void)engine::rankRack(sampleJob("mill_lane_six_pin"), reading, options);
            return false;
        } catch (const engine::Stopped&) {
            return true;
        }
    });
    while (told.load() == 0 && running.wait_for(std::chrono::milliseconds(1)) != std::future_status::ready) {
    }
    stop = true;
    EXPECT_TRUE(running.get());
}
