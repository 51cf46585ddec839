#include "core/loadpath/travel.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

Length mm(double v) {
    return Length::fromMm(v);
}

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
