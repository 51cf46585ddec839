#include "core/job/assumed.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace pw::job {
namespace {

bool says(const Assumed& assumed, std::string_view words) {
    return std::ranges::any_of(assumed.sentences, [&](const std::string& sentence) {
        return sentence.find(words) != std::string::npos;
    });
}

TEST(Assume, AnEmptyJobGetsTheModelsDefaults) {
    const Assumed assumed = assume(Job());
    EXPECT_EQ(assumed.process, Process::PlasmaTable);
    EXPECT_EQ(assumed.margin, 2);
    EXPECT_EQ(assumed.steel.name, "unknown scrap");
    EXPECT_EQ(assumed.stacked, 1);
    EXPECT_FALSE(assumed.land);
    EXPECT_FALSE(assumed.bearingInside);
    EXPECT_TRUE(says(assumed, "unknown scrap"));
    EXPECT_TRUE(says(assumed, "plasma table"));
    EXPECT_FALSE(says(assumed, "oiled")) << "there is no screw";
}

TEST(Assume, WhatWasGivenStandsAndIsNotCalledAssumed) {
    Job job;
    job.plate.steel.emplace().name = "S235";
    job.plate.stacked = 2;
    job.stations.land = Length::fromMm(36);
    job.stations.retainer = Length::fromMm(40);
    job.plate.bore = Length::fromMm(21);
    job.centre.bearingInside = Length::fromMm(25);
    job.cutting = {Process::Milled, Length::fromMm(1), Length::fromMm(0.2), Length::fromMm(0.1)};
    job.wanted.margin = 3;
    job.screw = Screw();
    job.screw->turns = Turns::Screw;
    job.screw->into = Into::Plate;
    job.screw->lubrication = Lubrication::Moly;
    job.screw->threadCondition = ThreadCondition::Worn;
    const Assumed assumed = assume(job);
    EXPECT_EQ(assumed.sentences, std::vector<std::string>());
    EXPECT_EQ(assumed.steel.name, "S235");
    EXPECT_EQ(assumed.stacked, 2);
    EXPECT_EQ(assumed.land, Length::fromMm(36));
    EXPECT_EQ(assumed.bearingInside, Length::fromMm(25));
    EXPECT_EQ(assumed.habits.kerf, Length::fromMm(1));
    EXPECT_EQ(assumed.habits.layoutError, Length::fromMm(0.2));
    EXPECT_EQ(assumed.habits.growth, Length::fromMm(0.1));
    EXPECT_EQ(assumed.margin, 3);
    EXPECT_EQ(assumed.turns, Turns::Screw);
    EXPECT_EQ(assumed.into, Into::Plate);
    EXPECT_EQ(assumed.lubrication, Lubrication::Moly);
    EXPECT_EQ(assumed.threadCondition, ThreadCondition::Worn);
}

TEST(Assume, TheLandFallsBackOnTheRetainerAndTheBearingOnTheBore) {
    Job job;
    job.stations.retainer = Length::fromMm(40);
    job.plate.bore = Length::fromMm(21);
    job.centre.bearingOutside = Length::fromMm(44);
    const Assumed assumed = assume(job);
    EXPECT_EQ(assumed.land, Length::fromMm(40));
    EXPECT_EQ(assumed.bearingInside, Length::fromMm(21));
    EXPECT_TRUE(says(assumed, "40"));
    EXPECT_TRUE(says(assumed, "21"));
}

TEST(Assume, AScrewLeftBareIsOiledSoundAndTurnedByItsNut) {
    Job job;
    job.screw = Screw();
    const Assumed assumed = assume(job);
    EXPECT_EQ(assumed.turns, Turns::Nut);
    EXPECT_EQ(assumed.into, Into::Shaft);
    EXPECT_EQ(assumed.lubrication, Lubrication::Oiled);
    EXPECT_EQ(assumed.threadCondition, ThreadCondition::Good);
    EXPECT_TRUE(says(assumed, "oiled"));
    EXPECT_TRUE(says(assumed, "good condition"));
}

TEST(Assume, OneGivenFigureOfTheProcessLeavesTheOthersAssumed) {
    Job job;
    job.cutting.process = Process::HandTorch;
    job.cutting.kerf = Length::fromMm(3);
    const Assumed assumed = assume(job);
    EXPECT_EQ(assumed.habits.kerf, Length::fromMm(3));
    EXPECT_EQ(assumed.habits.layoutError, habitsOf(Process::HandTorch).layoutError);
    EXPECT_TRUE(says(assumed, "usual for hand torch"));
    EXPECT_FALSE(says(assumed, "The cut is"));
}

TEST(Assume, RougherProcessesAreNoTruerThanFinerOnes) {
    const Process fromFineToRough[] = {Process::Milled, Process::SawAndDrill, Process::PlasmaTable,
                                       Process::TorchTable, Process::HandTorch};
    for (std::size_t i = 1; i < std::size(fromFineToRough); ++i) {
        const ProcessHabits fine = habitsOf(fromFineToRough[i - 1]), rough = habitsOf(fromFineToRough[i]);
        EXPECT_LE(fine.layoutError, rough.layoutError) << nameOf(fromFineToRough[i]);
        EXPECT_LE(fine.growth, rough.growth) << nameOf(fromFineToRough[i]);
    }
}

TEST(Assume, SentencesUseTheUnitsOfTheJob) {
    Job job;
    job.stations.retainer = Length::fromInch(1.375);
    job.preferred = units::System::Inch;
    EXPECT_TRUE(says(assume(job), "1.375"));
    EXPECT_TRUE(says(assume(job), "in"));
}

} // namespace
} // namespace pw::job
