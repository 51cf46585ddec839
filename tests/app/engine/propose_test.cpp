#include "app/engine/propose.h"

#include "core/jobfile/read.h"
#include "tests/support/jobs.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <atomic>
#include <mutex>
#include <string>
#include <vector>

namespace pw::engine {
namespace {

using jobfile::Tree;
using verdict::Grade;

using testing::sampleTree;

TEST(Propose, FromStationsLoadAndScrewAlone) {
    Tree tree = sampleTree("mill_lane_six_pin");
    tree.erase("plate");
    tree.erase("stations.access_hole");
    tree.erase("screw.washer_outside");
    tree.erase("screw.washer_thickness");
    const Proposals proposals = propose(tree);
    ASSERT_FALSE(proposals.best.empty());
    EXPECT_EQ(proposals.best.front().grade, Grade::Holds);
    for (const Proposal& proposal : proposals.best) {
        // As it would be saved it reads without a problem, and gets the verdict that was promised.
        const jobfile::Reading made = jobfile::readJob(withChanges(tree, proposal.changes));
        EXPECT_TRUE(made.problems.empty()) << util::toText(made.problems);
        const Report report = check(made.job);
        EXPECT_EQ(report.grade, proposal.grade) << proposal.title;
        for (const char* id : {"land.width", "access.keeper", "plate.ligament", "centre.washer"}) {
            ASSERT_TRUE(report.find(id)) << id;
            EXPECT_EQ(report.find(id)->grade, Grade::Holds)
                << proposal.title << ": " << report.find(id)->basis;
        }
        // ISO 273 medium series: 22 mm for M20.
        EXPECT_NEAR(made.job.plate.bore->mm(), 22, 1e-9);
    }
}

TEST(Propose, TheThicknessIsTheLeastThatHolds) {
    const Tree tree = sampleTree("mill_lane_six_pin");
    const Proposal first = propose(tree).best.front();
    ASSERT_EQ(first.grade, Grade::Holds);
    job::Job job = jobfile::readJob(withChanges(tree, first.changes)).job;
    job.plate.thickness =
        units::Length::fromMm(first.thickness.mm() * 0.75); // the next thinner stock or less
    EXPECT_NE(check(job).grade, Grade::Holds);
}

TEST(Propose, OffersABarAndSaysWhatItCosts) {
    const Proposals proposals = propose(sampleTree("mill_lane_six_pin"));
    bool bar = false, ring = false;
    for (const Proposal& proposal : proposals.best) {
        bar |= proposal.stationsAtATime == 2;
        ring |= proposal.stationsAtATime == 6;
        EXPECT_FALSE(proposal.tradeOff.empty());
    }
    EXPECT_TRUE(bar && ring);
}

TEST(Propose, InchJobsGetFractions) {
    const Proposals proposals = propose(sampleTree("mill_lane_eight_pin_inch"));
    ASSERT_FALSE(proposals.best.empty());
    for (const auto& [path, value] : proposals.best.front().changes) {
        if (path == "plate.bore" || path == "stations.access_hole") {
            EXPECT_TRUE(value.text() && value.text()->ends_with(" in")) << path;
        }
    }
}

TEST(Propose, SaysWhatItNeeds) {
    Tree tree = sampleTree("mill_lane_six_pin");
    tree.erase("stations.circle");
    const Proposals proposals = propose(tree);
    EXPECT_TRUE(proposals.best.empty());
    ASSERT_EQ(proposals.missing.size(), 1u);
    EXPECT_EQ(proposals.missing[0].field, "stations.circle");
}

TEST(Propose, NamesAllThatIsMissingAtOnce) {
    Tree tree = sampleTree("mill_lane_six_pin");
    for (const char* path : {"stations.circle", "springs", "screw.thread", "plate"})
        tree.erase(path);
    const Proposals proposals = propose(tree);
    const auto asks = [&](const std::string& field) {
        return std::ranges::any_of(proposals.missing, [&](const Missing& m) { return m.field == field; });
    };
    EXPECT_TRUE(asks("stations.circle"));
    EXPECT_TRUE(asks("screw.thread"));
    EXPECT_TRUE(asks("springs"));
    EXPECT_FALSE(asks("plate.thickness")) << "that is what it is to find";
}

TEST(Propose, ALoadThatIsMissingIsNamed) {
    Tree tree = sampleTree("mill_lane_six_pin");
    tree.erase("springs");
    const Proposals proposals = propose(tree);
    EXPECT_TRUE(proposals.best.empty());
    ASSERT_FALSE(proposals.missing.empty());
    EXPECT_EQ(proposals.missing[0].field, "springs");
}

TEST(Propose, ShowsThePlateItChecked) {
    for (const Proposal& proposal : propose(sampleTree("mill_lane_six_pin")).best) {
        ASSERT_TRUE(proposal.region) << proposal.title;
        const double steel = 7.85e-6; // kg/mm3, EN 1993-1-1 3.2.6
        EXPECT_NEAR(*proposal.massKg, shape::area(*proposal.region) * proposal.thickness.mm() * steel,
                    0.01 * *proposal.massKg)
            << proposal.title;
    }
}

TEST(Propose, TellsHowFarItIsAndStops) {
    std::mutex mutex;
    std::vector<double> told;
    CheckOptions options;
    options.progress = [&](double part, std::string_view what) {
        const std::scoped_lock lock(mutex);
        EXPECT_NE(what.find("thick"), std::string_view::npos);
        told.push_back(part);
        return true;
    };
    (void)propose(sampleTree("mill_lane_six_pin"), options);
    ASSERT_GT(told.size(), 10u);
    EXPECT_TRUE(std::ranges::is_sorted(told));
    EXPECT_GT(told.back(), 0.5);
    EXPECT_LE(told.back(), 1);
    std::atomic<int> asked = 0;
    options.progress = [&](double, std::string_view) { return ++asked < 5; };
    EXPECT_THROW((void)propose(sampleTree("mill_lane_six_pin"), options), Stopped);
}

TEST(Propose, SizesAreRoundInTheUnitsAskedFor) {
    const Tree metric = sampleTree("mill_lane_six_pin");
    const Proposals proposals = propose(metric, {}, units::System::Inch);
    ASSERT_FALSE(proposals.best.empty());
    for (const auto& [path, value] : proposals.best.front().changes) {
        if (path == "plate.bore" || path == "stations.access_hole" || path == "plate.thickness") {
            EXPECT_TRUE(value.text() && value.text()->ends_with("in")) << path << ' ' << *value.text();
        }
    }
}

TEST(Propose, LetsGoOfThePieceThatTheOldPlateLayOn) {
    Tree tree = sampleTree("mill_lane_six_pin");
    tree.set("piece.name", "door plate, left half");
    const Proposals proposals = propose(tree);
    ASSERT_FALSE(proposals.best.empty());
    EXPECT_FALSE(withChanges(tree, proposals.best.front().changes).find("piece"));
}

TEST(Propose, AnswersEveryKindOfSampleJob) {
    for (const char* name :
         {"mill_lane_two_pin_bar", "mill_lane_pull_three_bolt_inch", "mill_lane_pull_ram_pulley",
          "mill_lane_square_four", "mill_lane_pull_nobody_knows"}) {
        const Proposals proposals = propose(sampleTree(name));
        EXPECT_TRUE(!proposals.best.empty() || !proposals.missing.empty()) << name;
    }
}

} // namespace
} // namespace pw::engine
