#include "core/loadpath/travel.h"

#include "tests/support/chance.h"
#include "tests/support/quantities.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

using pw::testing::mm;

TravelInputs nutOnStud() {
    TravelInputs in;
    in.diameter = mm(20);
    in.pitch = mm(2.5);
    in.standoff = mm(30);
    in.usableLength = mm(150);
    in.plate = mm(12);
    in.washer = mm(4);
    in.nutHeight = mm(16);
    in.compressFurther = mm(4);
    in.releaseTravel = mm(60);
    return in;
}

TEST(ThreadTravel, TheNutMustStayOnUntilTheSpringsAreFree) {
    TravelInputs in = nutOnStud();
    // 30 - 4 + 60 + 12 + 4 + 16 = 118 of 150.
    EXPECT_NEAR(threadLeft(in)->mm(), 32, 1e-12);
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Holds);
    in.usableLength = mm(120); // 2 mm, under two pitches
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Thin);
    in.usableLength = mm(117);
    const Check check = threadTravelCheck(in);
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("1\u00a0mm too short"), std::string::npos) << check.basis;
}

TEST(ThreadTravel, ATallNutNeedsOnlyOneDiameterOn) {
    TravelInputs in = nutOnStud();
    in.nutHeight = mm(40);
    EXPECT_NEAR(threadLeft(in)->mm(), 150 - 102 - 20, 1e-12);
}

TEST(ThreadTravel, ATurningScrewMustStayInTheShaft) {
    TravelInputs in = nutOnStud();
    in.turns = job::Turns::Screw;
    in.engagement = mm(90);
    // 90 + 4 - 60 - 20 = 14 mm.
    EXPECT_NEAR(threadLeft(in)->mm(), 14, 1e-12);
    in.engagement = mm(70);
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Breaks);
}

/// By hand. Nut: reach assembled 30 + 12 + 4 = 46, squeezed 42, free 102, of 150 mm thread.
TEST(ThreadMoments, OfATurningNutByHand) {
    TravelInputs in = nutOnStud();
    in.threadLength = mm(140); // 10 mm of plain shank stand out of the face
    const auto moments = threadMoments(in);
    ASSERT_EQ(moments.size(), 3u);
    const char* when[] = {"assembled", "squeezed", "free"};
    const double reach[] = {46, 42, 102};
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(moments[i].when, when[i]);
        EXPECT_NEAR(moments[i].engaged.mm(), 16, 1e-12) << "the whole nut";
        EXPECT_NEAR(moments[i].toEnd.mm(), 150 - reach[i] - 16, 1e-12);
        ASSERT_TRUE(moments[i].toShank);
        EXPECT_NEAR(moments[i].toShank->mm(), reach[i] - 10, 1e-12);
    }
    in.usableLength = mm(110); // 8 mm stand in the nut when the springs are free
    EXPECT_NEAR(threadMoments(in)[2].engaged.mm(), 8, 1e-12);
    in.usableLength = mm(90);
    EXPECT_EQ(threadMoments(in)[2].engaged.mm(), 0) << "off";
    in.threadLength.reset();
    EXPECT_FALSE(threadMoments(in)[1].toShank);
}

/// Screw in the shaft: 70 assembled, 74 squeezed, 14 free.
TEST(ThreadMoments, OfATurningScrewByHand) {
    TravelInputs in = nutOnStud();
    in.turns = job::Turns::Screw;
    in.engagement = mm(70);
    in.threadLength = mm(80);
    const auto moments = threadMoments(in);
    ASSERT_EQ(moments.size(), 3u);
    const double engaged[] = {70, 74, 14};
    for (int i = 0; i < 3; ++i) {
        EXPECT_NEAR(moments[i].engaged.mm(), engaged[i], 1e-12);
        EXPECT_NEAR(moments[i].toEnd.mm(), engaged[i] - 20, 1e-12) << "one diameter must stay";
        EXPECT_NEAR(moments[i].toShank->mm(), 80 - engaged[i], 1e-12);
    }
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Breaks);
}

/// A bolt turned by its head in a nut of 18 mm: 80 mm past the nut's face assembled, 84 squeezed, 24 free;
/// the whole nut must stay, 18 mm: 6 mm left. Needed: 60 - 4 + 18 + 5 = 79 mm.
TEST(ThreadTravel, ABoltTurnedThroughANutHasTheThreadBehindItToo) {
    TravelInputs in = nutOnStud();
    in.turns = job::Turns::Screw;
    in.through = true;
    in.hole = mm(18);
    in.usableLength.reset();
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Incomplete);
    EXPECT_NE(threadTravelCheck(in).basis.find("usable length"), std::string::npos);
    EXPECT_NEAR(threadNeeded(in)->mm(), 79, 1e-12);
    in.usableLength = mm(80);
    in.engagement = mm(18);
    const auto moments = threadMoments(in);
    ASSERT_EQ(moments.size(), 3u);
    EXPECT_NEAR(moments[1].engaged.mm(), 18, 1e-12);
    EXPECT_NEAR(moments[2].engaged.mm(), 18, 1e-12);
    EXPECT_NEAR(moments[2].toEnd.mm(), 6, 1e-12);
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Holds);
    in.usableLength = mm(73);
    const Check check = threadTravelCheck(in);
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("of thread is needed"), std::string::npos) << check.basis;
    // Blind, what sits in the shaft is all there is.
    in.through = false;
    EXPECT_NEAR(threadLeft(in)->mm(), 18 + 4 - 60 - 18, 1e-12);
}

TEST(ThreadTravel, WhatItSaysIsNeededMendsItAndNoLess) {
    pw::testing::Chance chance(20261);
    for (int i = 0; i < 300; ++i) {
        TravelInputs in = nutOnStud();
        in.turns = i % 2 ? job::Turns::Screw : job::Turns::Nut;
        in.diameter = mm(chance.between(8, 36));
        in.pitch = in.diameter * chance.between(0.08, 0.2);
        in.standoff = mm(chance.between(-5, 80));
        in.plate = mm(chance.between(4, 40));
        in.washer = mm(chance.between(0, 12));
        in.nutHeight = in.diameter * chance.between(0.5, 1.5);
        in.compressFurther = mm(chance.between(0, 8));
        in.releaseTravel = in.compressFurther + mm(chance.between(5, 90));
        in.usableLength.reset();
        in.engagement.reset();
        const auto needed = threadNeeded(in);
        ASSERT_TRUE(needed);
        auto& given = i % 2 ? in.engagement : in.usableLength;
        EXPECT_EQ(threadTravelCheck(in).grade, Grade::Incomplete);
        given = *needed + mm(1e-9);
        EXPECT_EQ(threadTravelCheck(in).grade, Grade::Holds) << threadTravelCheck(in).basis;
        given = *needed - mm(0.1);
        EXPECT_EQ(threadTravelCheck(in).grade, Grade::Thin) << threadTravelCheck(in).basis;
        given = *needed - in.pitch * 2.0 - mm(0.1);
        const Check check = threadTravelCheck(in);
        EXPECT_EQ(check.grade, Grade::Breaks) << check.basis;
        EXPECT_NE(check.basis.find("needed"), std::string::npos) << check.basis;
    }
}

TEST(ThreadTravel, ANutThatRunsOntoTheShankWhileSqueezedIsCaught) {
    TravelInputs in = nutOnStud(); // reach squeezed 42 mm, all thread 150
    in.threadLength = mm(120);     // shank to 30 mm: 12 mm of room
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Holds);
    in.threadLength = mm(110); // shank to 40: 2 mm, under two pitches
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Thin);
    in.threadLength = mm(105); // shank to 45
    const Check check = threadTravelCheck(in);
    EXPECT_EQ(check.grade, Grade::Breaks);
    EXPECT_NE(check.basis.find("shank"), std::string::npos);
    EXPECT_NEAR(*check.margin, -3, 1e-12);
    // The turning screw: 90 in, 94 squeezed.
    in.turns = job::Turns::Screw;
    in.engagement = mm(90);
    in.threadLength = mm(93);
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Breaks);
    in.threadLength = mm(100);
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Holds);
}

TEST(ThreadTravel, NamesWhatIsMissingAndHowToMeasureIt) {
    TravelInputs in = nutOnStud();
    in.standoff.reset();
    EXPECT_EQ(threadTravelCheck(in).grade, Grade::Incomplete);
    EXPECT_NE(threadTravelCheck(in).basis.find("standoff"), std::string::npos);
    in = nutOnStud();
    in.releaseTravel.reset();
    EXPECT_NE(threadTravelCheck(in).basis.find("free length"), std::string::npos);
    EXPECT_FALSE(threadLeft(in));
}

TEST(PinTravel, SaysWhatIsLeftWhenTheRetainerLeavesItsPin) {
    job::Job made;
    made.work = job::Work::Compress;
    made.stations.count = 6;
    made.stations.pinEnd = mm(9);
    job::Spring spring;
    spring.loads = {{mm(60), {Force::fromN(700), Force::fromN(720)}}};
    spring.rate = pw::units::Rate::fromNPerMm(12);
    made.springs = {spring};
    Check check = pinTravelCheck(made, pw::spring::packLoads(made));
    EXPECT_NEAR(*check.demand, 720 - 9 * 12, 1e-9);
    EXPECT_EQ(check.grade, Grade::Holds) << "a warning, not a weakness of the tool";
    EXPECT_NE(check.basis.find("hands away"), std::string::npos);
    made.stations.pinEnd = mm(56); // 48 N of 720
    check = pinTravelCheck(made, pw::spring::packLoads(made));
    EXPECT_NEAR(*check.demand, 48, 1e-9);
    EXPECT_EQ(check.basis.find("hands away"), std::string::npos);
    made.stations.pinEnd.reset();
    EXPECT_EQ(pinTravelCheck(made, pw::spring::packLoads(made)).grade, Grade::Incomplete);
}

} // namespace
