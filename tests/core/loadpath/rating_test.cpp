#include "core/loadpath/rating.h"

#include "tests/support/quantities.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

using pw::testing::mm;
using pw::testing::newton;

Check force(const std::string& id, double margin, double wanted) {
    Check check;
    check.id = id;
    check.member = id.substr(0, id.find('.'));
    check.kind = pw::verdict::CheckKind::Force;
    check.margin = margin;
    check.wanted = wanted;
    check.grade = margin >= wanted ? Grade::Holds : Grade::Thin;
    return check;
}

RatingInputs inputs(std::vector<Check> checks) {
    RatingInputs in;
    in.checks = std::move(checks);
    in.design = newton(7400);
    TorqueInputs torque;
    auto thread = pw::thread::parse("M20");
    if (!thread)
        throw std::runtime_error(thread.problem().message);
    torque.thread = *thread;
    torque.collar = mm(25);
    torque.friction = frictionOf(job::Screw{});
    in.torque = torque;
    return in;
}

TEST(Rating, TheWeakestLinkSetsTheRatedLoad) {
    const Rating rating = ratingOf(inputs({force("plate.collapse", 4.5, 3), force("screw.stress", 2.6, 2)}));
    EXPECT_TRUE(rating.known);
    EXPECT_EQ(rating.ratedBy, "screw.stress");
    EXPECT_NEAR(rating.rated.newton(), 7400 * 1.3, 1e-6);
    // Stop torque is that load at low friction.
    const RatingInputs in = inputs({});
    EXPECT_NEAR(rating.stop->newtonM(), torqueFor(*in.torque, newton(7400 * 1.3)).low.newtonM(), 1e-9);
}

TEST(Rating, SetAndAccidentsDoNotScaleWithTheLoad) {
    const Rating rating = ratingOf(inputs(
        {force("plate.set", 1.1, 1), force("plate.hung_station", 1.6, 1.5), force("screw.stress", 4, 2)}));
    EXPECT_EQ(rating.ratedBy, "screw.stress");
}

TEST(Rating, TheStampIsRoundAndLiesBetweenLoadAndRatedLoad) {
    Rating rating = ratingOf(inputs({force("screw.stress", 4, 2)}));
    EXPECT_NEAR(rating.stamp->newton(), 7400, 1e-6);
    EXPECT_NEAR(rating.proof->newton(), 9250, 1e-6);
    EXPECT_FALSE(rating.proofOnPacking);
    auto in = inputs({force("screw.stress", 4, 2)});
    in.stampWanted = newton(8000);
    EXPECT_NEAR(ratingOf(in).stamp->newton(), 8000, 1e-6);
    in.stampWanted = newton(20000);
    rating = ratingOf(in);
    EXPECT_NEAR(rating.stamp->newton(), 7400, 1e-6);
    EXPECT_FALSE(rating.notes.empty());
    rating = ratingOf(inputs({force("screw.stress", 1.8, 2)}));
    EXPECT_FALSE(rating.stamp) << "a tool that only just carries its load is not stamped with it";
    EXPECT_FALSE(rating.notes.empty());
}

TEST(Rating, RoundFiguresAreOfTwoDigitsUnlessThatPassesTheRatedLoad) {
    const Force far = newton(1e9);
    EXPECT_NEAR(roundUp(newton(4638), far, pw::units::System::Metric).newton(), 4700, 1e-6);
    EXPECT_NEAR(roundUp(newton(4638), newton(4650), pw::units::System::Metric).newton(), 4640, 1e-6);
    EXPECT_NEAR(roundUp(newton(4638), newton(4638), pw::units::System::Metric).newton(), 4638, 1e-6);
    EXPECT_NEAR(roundUp(Force::fromLbf(1711), far, pw::units::System::Inch).lbf(), 1800, 1e-6);
    EXPECT_NEAR(roundUp(newton(7500), far, pw::units::System::Metric).newton(), 7500, 1e-6);
}

TEST(Rating, NothingPassesTheLoadAtCoilBindAndTheProofGoesOnPacking) {
    auto in = inputs({force("screw.stress", 8, 2)});
    in.limitAtBind = newton(8800);
    const Rating rating = ratingOf(in);
    EXPECT_EQ(rating.ratedBy, "load.coil_bind");
    EXPECT_NEAR(rating.rated.newton(), 8800, 1e-6);
    EXPECT_LE(rating.stamp->newton(), 8800);
    EXPECT_TRUE(rating.proofOnPacking);
    in.stampWanted = newton(9000);
    EXPECT_LE(ratingOf(in).stamp->newton(), 8800);
}

TEST(TorqueWindow, IsThinWhenTheLoadMayNeedMoreThanTheStop) {
    auto in = inputs({force("screw.stress", 2.6, 2)});
    Rating rating = ratingOf(in);
    Check check = torqueWindowCheck(in, rating);
    EXPECT_EQ(check.grade, Grade::Thin) << "friction spans a factor of two, the rating only 1.3";
    EXPECT_NE(check.basis.find("turns and dial"), std::string::npos);
    in = inputs({force("screw.stress", 8, 2)});
    rating = ratingOf(in);
    EXPECT_EQ(torqueWindowCheck(in, rating).grade, Grade::Holds);
    in.torque.reset();
    EXPECT_EQ(torqueWindowCheck(in, ratingOf(in)).grade, Grade::Incomplete);
}

TEST(Overrun, ALongWrenchCanMakeMoreThanTheToolStandsAndItSaysWhereToStop) {
    auto in = inputs({force("screw.stress", 3, 2), force("plate.collapse", 3.3, 3)});
    OverrunInputs overrun{mm(300), newton(250), mm(4), mm(2.5)};
    const Check check = overrunCheck(in, overrun);
    // The plate sets at 3.3/1.5 = 2.2 times the load, before the screw at 3.
    EXPECT_NEAR(*check.capacity, 2.2 * 7400, 1e-6);
    EXPECT_NEAR(*check.demand, mostLoadOf(*in.torque, Torque::fromNm(75)).newton(), 1e-6);
    EXPECT_EQ(check.grade, Grade::Thin);
    EXPECT_NE(check.basis.find("1.6 turns"), std::string::npos) << check.basis;
    overrun.pull = newton(20);
    EXPECT_EQ(overrunCheck(in, overrun).grade, Grade::Holds);
    overrun.wrench.reset();
    EXPECT_EQ(overrunCheck(in, overrun).grade, Grade::Incomplete);
}

TEST(Rating, NothingKnownIsNotRated) {
    EXPECT_FALSE(ratingOf(inputs({})).known);
    auto in = inputs({force("screw.stress", 3, 2)});
    in.design = Force();
    EXPECT_FALSE(ratingOf(in).known);
}

} // namespace
