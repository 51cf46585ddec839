#include "core/loadpath/load_path.h"

#include "tests/support/quantities.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
namespace job = pw::job;

using pw::testing::mm;
using pw::testing::newton;

/// An invented six-pin drum with every figure of the load path.
job::Job whole() {
    job::Job made;
    made.work = job::Work::Compress;
    made.stations.count = 6;
    made.stations.circle = mm(100);
    made.stations.accessHole = mm(24);
    made.stations.land = mm(34);
    made.stations.retainer = mm(36);
    made.stations.keeper = mm(18);
    made.stations.pin = mm(12);
    made.stations.pinEnd = mm(9);
    job::Spring spring;
    spring.loads = {{mm(60), {newton(1100), newton(1200)}}};
    spring.rate = pw::units::Rate::fromNPerMm(12);
    spring.solidLength = mm(45);
    made.springs = {spring};
    made.travel.compressFurther = mm(4);
    job::Outline disc;
    disc.diameter = mm(140);
    made.plate.outline = disc;
    made.plate.thickness = mm(12);
    made.plate.bore = mm(20);
    made.plate.steel = job::Material{};
    made.plate.steel->name = "S235";
    job::Screw screw;
    screw.thread = "M20";
    screw.grade = "8.8";
    screw.nutGrade = "8";
    screw.turns = job::Turns::Nut;
    screw.into = job::Into::Shaft;
    screw.intoMaterial = job::Material{};
    screw.intoMaterial->name = "1045";
    screw.engagement = mm(24);
    screw.standoff = mm(30);
    screw.usableLength = mm(200);
    screw.washerOutside = mm(37);
    screw.washerThickness = mm(4);
    screw.wrench = mm(300);
    screw.handPull = newton(250);
    screw.lubrication = job::Lubrication::Oiled;
    made.screw = screw;
    made.cutting.process = job::Process::PlasmaTable;
    return made;
}

const std::vector<Ligament> kLigaments = {{"between hole 1 and the rim", 8, {}}};

const Check* find(const std::vector<Check>& checks, const std::string& id) {
    for (const Check& check : checks)
        if (check.id == id)
            return &check;
    return nullptr;
}

TEST(LoadPath, AWholeJobIsCheckedMemberByMember) {
    const job::Job made = whole();
    const auto pack = pw::spring::packLoads(made);
    const LoadPath path = loadPath(made, pack, kLigaments);
    EXPECT_TRUE(path.problems.empty());
    for (const char* id :
         {"screw.stress", "thread.nut", "thread.shaft", "centre.bearing", "centre.washer", "travel.thread",
          "travel.pin", "access.keeper", "land.width", "land.bearing", "plate.ligament", "cut.holes"}) {
        const Check* check = find(path.checks, id);
        ASSERT_TRUE(check) << id;
        EXPECT_NE(check->grade, Grade::Incomplete) << id << ": " << check->basis;
        EXPECT_FALSE(check->basis.empty()) << id;
        EXPECT_FALSE(check->source.empty()) << id;
        EXPECT_FALSE(check->title.empty()) << id;
        if (check->kind == pw::verdict::CheckKind::Force) {
            EXPECT_TRUE(check->margin && check->wanted && check->demand && check->capacity) << id;
            EXPECT_NEAR(*check->margin, *check->capacity / *check->demand, 1e-9 * *check->margin) << id;
        }
    }
    // 6 x (1200 + 48) N is little for an M20 of class 8.8.
    EXPECT_EQ(find(path.checks, "screw.stress")->grade, Grade::Holds);
    EXPECT_EQ(find(path.checks, "thread.shaft")->grade, Grade::Holds);
    ASSERT_TRUE(path.bearing);
    EXPECT_NEAR(path.bearing->outside.mm(), 36.5, 1e-9); // 28.5 + 2 x 4
}

TEST(LoadPath, RatesTheToolFromAllChecksAndStopsBeforeTheSpringsBind) {
    const job::Job made = whole();
    const auto pack = pw::spring::packLoads(made);
    const LoadPath path = loadPath(made, pack, kLigaments);
    const RatedLoadPath rated = rate(made, pack, path.torque, path.checks);
    ASSERT_TRUE(rated.rating.known);
    // Low springs at 45 mm: 6 x (1100 + 15 x 12) = 7680 N; the load is 7488 N; steel carries far more.
    EXPECT_EQ(rated.rating.ratedBy, "load.coil_bind");
    EXPECT_NEAR(rated.rating.rated.newton(), 7680, 1e-6);
    EXPECT_LE(rated.rating.stamp->newton(), 7680);
    EXPECT_GE(rated.rating.stamp->newton(), 7488);
    EXPECT_TRUE(rated.rating.proofOnPacking);
    EXPECT_TRUE(find(rated.checks, "screw.torque_window"));
    EXPECT_TRUE(find(rated.checks, "screw.overrun"));
}

TEST(LoadPath, MissingFiguresBecomeIncompleteChecksThatSayHowToMeasure) {
    job::Job made = whole();
    made.screw.reset();
    made.stations.pinEnd.reset();
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), {});
    for (const char* id : {"screw.stress", "thread.shaft", "travel.thread", "travel.pin", "plate.ligament",
                           "centre.bearing"}) {
        const Check* check = find(path.checks, id);
        ASSERT_TRUE(check) << id;
        EXPECT_EQ(check->grade, Grade::Incomplete) << id;
        EXPECT_FALSE(check->basis.empty()) << id;
    }
    EXPECT_TRUE(path.problems.empty()); // nothing that was given is wrong
}

TEST(LoadPath, WithoutALoadNothingIsJudgedOnStrength) {
    job::Job made = whole();
    made.springs.clear();
    const auto pack = pw::spring::packLoads(made);
    const LoadPath path = loadPath(made, pack, kLigaments);
    for (const Check& check : path.checks)
        if (check.kind == pw::verdict::CheckKind::Force) {
            EXPECT_EQ(check.grade, Grade::Incomplete) << check.id;
        }
    EXPECT_EQ(find(path.checks, "land.width")->grade, Grade::Holds) << "room needs no load";
    EXPECT_FALSE(rate(made, pack, path.torque, path.checks).rating.known);
}

TEST(LoadPath, WhatIsNotGivenIsTakenAsTheWeakestAndSaid) {
    job::Job made = whole();
    made.screw->grade.clear();
    made.screw->nutGrade.clear();
    made.screw->intoMaterial.reset();
    made.plate.steel.reset();
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), kLigaments);
    EXPECT_GE(path.assumptions.size(), 3u);
    ASSERT_TRUE(path.members.plate);
    EXPECT_EQ(path.members.plate->yield.mpa(), 205) << "unknown scrap: common practice, no published source";
    EXPECT_NE(find(path.checks, "thread.shaft")->grade, Grade::Incomplete);
}

TEST(LoadPath, AnUnknownGradeIsAProblemWithItsField) {
    job::Job made = whole();
    made.screw->grade = "unobtainium";
    made.plate.steel->name = "cheese";
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), kLigaments);
    bool screw = false, plate = false;
    for (const auto& problem : path.problems) {
        screw = screw || problem.field == "screw.grade";
        plate = plate || problem.field == "plate.steel";
    }
    EXPECT_TRUE(screw && plate);
    EXPECT_EQ(find(path.checks, "screw.stress")->grade, Grade::Incomplete);
    EXPECT_EQ(find(path.checks, "land.bearing")->grade, Grade::Incomplete);
}

TEST(LoadPath, ATappedPlateOfAPullJobIsCheckedOnItsOwnThread) {
    job::Job made = whole();
    made.work = job::Work::Pull;
    made.springs.clear();
    made.load.total = pw::units::Range<Force>{newton(30000), newton(30000)};
    made.plate.bore.reset();
    made.plate.boreThread = "M20";
    made.screw->turns = job::Turns::Screw;
    made.screw->into = job::Into::Plate;
    made.screw->pointDiameter = mm(16);
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), kLigaments);
    const Check* thread = find(path.checks, "thread.plate");
    ASSERT_TRUE(thread);
    EXPECT_NE(thread->basis.find("12\u00a0mm engaged"), std::string::npos)
        << "no deeper than the plate: " << thread->basis;
    EXPECT_FALSE(find(path.checks, "thread.nut"));
    EXPECT_FALSE(find(path.checks, "centre.washer"));
    EXPECT_FALSE(find(path.checks, "travel.thread"));
    ASSERT_TRUE(path.torque);
    EXPECT_NEAR(path.torque->collar.mm(), 16 * 2 / 3.0, 1e-9) << "the point is what rubs";
}

/// Which part turns sets the collar (MODEL 4): a bolt drawn through a nut or bar behind turns on its head,
/// face 0.95 x 30 (ISO 4014) to washer hole 21 (ISO 7089), mean 24.75 mm; only a screw that pushes turns on
/// its point.
TEST(LoadPath, ABoltThatIsDrawnTurnsOnItsHeadAndNotOnItsPoint) {
    job::Job made = whole();
    for (job::Into into : {job::Into::Nut, job::Into::Bar, job::Into::Shaft}) {
        made.screw->turns = job::Turns::Screw;
        made.screw->into = into;
        EXPECT_NEAR(setUp(made).torque->collar.mm(), 24.75, 1e-9) << static_cast<int>(into);
    }
    made.work = job::Work::Pull; // through a bar of the tool against the shaft's end
    made.screw->into = job::Into::Bar;
    made.screw->pointDiameter = mm(15);
    EXPECT_NEAR(setUp(made).torque->collar.mm(), 10, 1e-9);
}

TEST(LoadPath, ABoltTurnedThroughANutIsMeasuredByItsUsableLength) {
    job::Job made = whole();
    made.screw->turns = job::Turns::Screw;
    made.screw->into = job::Into::Nut;
    made.screw->nutHeight = mm(18);
    made.screw->engagement = mm(18);
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), kLigaments);
    // 200 + 4 - travel - 18, travel to the softest spring's free end: 4 + 1200/12 = 104.
    ASSERT_TRUE(path.threadLeft);
    EXPECT_NEAR(path.threadLeft->mm(), 200 + 4 - 104 - 18, 1e-9);
}

TEST(LoadPath, FiguresAreWrittenInTheUnitsTheUserTypes) {
    job::Job made = whole();
    made.preferred = pw::units::System::Inch;
    const LoadPath path = loadPath(made, pw::spring::packLoads(made), kLigaments);
    EXPECT_NE(find(path.checks, "screw.stress")->basis.find("lbf"), std::string::npos);
    EXPECT_EQ(find(path.checks, "land.width")->basis.find("mm"), std::string::npos);
}

TEST(LoadPath, AScrewThatDoesNotGoIntoTheTappedBoreIsToldSo) {
    job::Job made;
    made.work = job::Work::Pull;
    made.plate.boreThread = "5/8-11";
    made.screw.emplace();
    made.screw->thread = "3/4-10";
    const Members wrong = membersOf(made);
    ASSERT_EQ(wrong.problems.size(), 1u);
    EXPECT_EQ(wrong.problems[0].field, "screw.thread");
    made.screw->thread = "5/8-11 UNC"; // the same by another spelling
    EXPECT_TRUE(membersOf(made).problems.empty());
}

/// ISO 7089: the washer of M12 is 24 mm across.
TEST(LoadPath, BoltsOfAPullerBearOnTheirStandardWashersWhenNobodySays) {
    job::Job made;
    made.work = job::Work::Pull;
    made.hub.emplace();
    made.hub->bolts.emplace();
    made.hub->bolts->thread = "M12";
    ASSERT_TRUE(landOf(made));
    EXPECT_EQ(landOf(made)->mm(), 24);
    made.work = job::Work::Compress;
    EXPECT_FALSE(landOf(made));
}

} // namespace
