#include "app/engine/flange.h"
#include "app/engine/flange_checks.h"
#include "core/plate/annular.h"
#include "tests/support/csv.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using engine::FlangeOptions;
using engine::FlangeTask;
using engine::solveFlange;
using units::Force;
using units::Length;
using units::Stress;
using verdict::Grade;

namespace {

constexpr double kPi = std::numbers::pi;

material::Material steel() {
    material::Material m;
    m.name = "test steel";
    m.yield = Stress::fromMpa(235);
    m.ultimate = Stress::fromMpa(360);
    m.E = Stress::fromMpa(200000);
    m.nu = 0.3;
    return m;
}

/// The flange of the job file's example.
FlangeTask threeJaws() {
    return {160, 90, 12, steel(), 3, 20, 15, 12000};
}

engine::FlangeField solved(const FlangeTask& task, const FlangeOptions& options = {}) {
    auto field = solveFlange(task, options);
    EXPECT_TRUE(field) << util::toText(field.problem());
    return field ? *field : engine::FlangeField{};
}

job::Job jobWithFlange() {
    job::Job job;
    job.work = job::Work::Pull;
    job.hub.emplace();
    job::Material iron;
    iron.name = "cast iron";
    job.hub->flange = job::Flange{Length::fromMm(160), Length::fromMm(90), Length::fromMm(12), iron};
    job.hub->jaws = job::Jaws{3, Length::fromMm(20), Length::fromMm(15)};
    return job;
}

std::string problemField(const FlangeTask& task) {
    const auto field = solveFlange(task);
    EXPECT_FALSE(field);
    return field ? "" : field.problem().field;
}

} // namespace

TEST(CantileverReference, SeriesGivesRoarksTable) {
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(std::string(PW_REFERENCE) + "/cantilever_root_moment.csv")) {
        if (row.at("published").empty() || !row.at("note").empty())
            continue;
        // Printed to three places.
        EXPECT_NEAR(std::stod(row.at("computed")), std::stod(row.at("published")), 0.0016)
            << row.at("c") << " " << row.at("z");
        ++rows;
    }
    EXPECT_EQ(rows, 23);
}

/// A flange whose overhang is a hundredth of its root's radius is a straight cantilever plate of endless
/// width. Expected: tests/reference/cantilever_root_moment.py, the problem of Jaramillo, J. Appl. Mech. 17
/// (1950) 67-72. The rim being curved is worth L / b = 1 %, the mesh's settling another 1 %.
TEST(Flange, NearlyStraightMeetsTheWideCantilever) {
    constexpr double kCurvatureAndMesh = 0.02;
    const double overhang = 10, rootRadius = 1000, t = 0.2;
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(std::string(PW_REFERENCE) + "/cantilever_root_moment.csv")) {
        if (row.at("ov").empty())
            continue;
        FlangeTask task{2 * (rootRadius + overhang), 2 * rootRadius, t, steel(), 60, 0, 0, 59};
        task.overlap = std::stod(row.at("ov")) * overhang;
        task.width = std::stod(row.at("w")) * overhang;
        FlangeOptions options;
        options.settledPercent = 1;
        const auto field = solved(task, options);
        EXPECT_NEAR(field.jaw.force, 1, 1e-12); // 59 N on 60 jaws, one of them slack
        EXPECT_TRUE(field.settled);
        const double moment = field.rootRadial * t * t / 6;
        EXPECT_NEAR(moment, std::stod(row.at("computed")), kCurvatureAndMesh * moment)
            << "overlap " << row.at("ov") << " width " << row.at("w") << " overhangs";
        ++rows;
    }
    EXPECT_EQ(rows, 4);
}

TEST(Flange, CurvatureRaisesTheRootMomentTowardsTheWideCantilevers) {
    const auto moment = [](double rootRadius, int jaws) {
        FlangeTask task{2 * (rootRadius + 10), 2 * rootRadius, 0.2, steel(), jaws, 5, 5, jaws - 1.0};
        FlangeOptions options;
        options.settledPercent = 1;
        return solved(task, options).rootRadial * 0.04 / 6;
    };
    const double near = moment(1000, 60), far = moment(125, 8);
    // 0.4164: cantilever_root_moment.csv, ov = w = 0.5.
    EXPECT_LT(std::abs(near - 0.4164), std::abs(far - 0.4164));
}

TEST(Flange, AFullRingIsTheAnnularFormula) {
    FlangeTask task = threeJaws();
    task.jaws = 2;
    task.width = kPi * (task.outside - task.overlap) / 2;
    const auto field = solved(task);
    EXPECT_TRUE(field.fullRing);
    EXPECT_TRUE(field.settled);
    EXPECT_NEAR(field.clampForce, task.force, 1e-6 * task.force);
    EXPECT_DOUBLE_EQ(field.rootRadial, field.rootRadialSpread);
    // Thin flange, force close to the rim: a line load there. Roark, 7th ed., Table 11.2 case 1l (outer edge
    // free, inner fixed), by annular.h, which annular_test holds against the printed coefficients.
    task.overlap = 0.08;
    task.width = kPi * task.outside / 2;
    plate::AnnularPlate line{.outer = 80, .inner = 45, .rigidity = 1, .poisson = 0.3};
    line.innerEdge = plate::Edge::Fixed;
    line.lines.push_back({80, task.force});
    const double expected = 6 / 144.0 * std::abs(plate::solveAnnular(line)->inner().radialMoment);
    EXPECT_NEAR(solved(task).rootRadial, expected, 0.002 * expected); // 0.04 mm of 35 in the arm
}

/// Three jaws that leave 5 % of the circle free in three short gaps. Behind the middle of a jaw, two
/// overhangs from the nearest gap (K = 0.037 there, cantilever_root_moment.csv), it is a full ring whose even
/// pressure is larger by 1 / 0.95.
TEST(Flange, LongJawsMeetTheAnnularFormulaWithinOnePercent) {
    FlangeTask task = threeJaws();
    const double part = 0.9499;
    task.width = part * kPi * (task.outside - task.overlap) / 3;
    FlangeOptions options;
    options.settledPercent = 0.5;
    const auto field = solved(task, options);
    EXPECT_FALSE(field.fullRing);
    EXPECT_NEAR(field.rootRadial, field.rootRadialSpread / part, 0.01 * field.rootRadialSpread);
}

TEST(Flange, TheClampGivesBackTheLoad) {
    for (const int jaws : {2, 3, 5}) {
        FlangeTask task = threeJaws();
        task.jaws = jaws;
        const auto field = solved(task);
        EXPECT_NEAR(field.appliedForce, task.force, 1e-9 * task.force);
        EXPECT_NEAR(field.clampForce, field.appliedForce, 1e-6 * task.force) << jaws << " jaws";
    }
}

TEST(Flange, HalfAJawsPartEqualsTheWholeRing) {
    for (const int jaws : {2, 3, 4}) {
        FlangeTask task = threeJaws();
        task.jaws = jaws;
        FlangeOptions options;
        options.settledPercent = 1;
        const auto part = solved(task, options);
        options.useSymmetry = false;
        const auto whole = solved(task, options);
        EXPECT_EQ(part.sectorOf, jaws < 4 ? 2 * jaws : 2); // one of four is slack
        EXPECT_EQ(whole.sectorOf, 1);
        EXPECT_NEAR(part.rootRadial, whole.rootRadial, 0.015 * whole.rootRadial) << jaws << " jaws";
        EXPECT_NEAR(part.vonMises, whole.vonMises, 0.015 * whole.vonMises) << jaws << " jaws";
        EXPECT_NEAR(part.deflection, whole.deflection, 0.003 * whole.deflection) << jaws << " jaws";
    }
}

/// Jaws far apart do not feel each other, so a shorter part than half a jaw's is enough.
TEST(Flange, ANarrowFlangesShorterPartEqualsTheWholeRing) {
    FlangeTask task{300, 260, 8, steel(), 2, 20, 10, 12000};
    FlangeOptions options;
    options.settledPercent = 1;
    const auto part = solved(task, options);
    options.useSymmetry = false;
    const auto whole = solved(task, options);
    EXPECT_GT(part.sectorOf, 4);
    EXPECT_NEAR(part.appliedForce, 12000, 1e-6);
    EXPECT_NEAR(part.clampForce, 12000, 0.01);
    EXPECT_NEAR(part.rootRadial, whole.rootRadial, 0.015 * whole.rootRadial);
    EXPECT_NEAR(part.deflection, whole.deflection, 0.003 * whole.deflection);
}

/// On a small root the jaw across from the slack one has it worst: nothing bends its side back.
TEST(Flange, ASlackJawRelievesNobody) {
    const FlangeTask task{300, 60, 12, steel(), 4, 12, 10, 12000};
    const auto slack = solved(task);
    EXPECT_NEAR(slack.appliedForce, 12000, 1e-6);
    EXPECT_LT(slack.rootAt.x, 0) << "away from the slack jaw, which lies along x";
    // Three even jaws carry as much each.
    FlangeTask three = task;
    three.jaws = 3;
    EXPECT_NEAR(solved(three).jaw.force, slack.jaw.force, 1e-9);
    EXPECT_GT(slack.rootRadial, solved(three).rootRadial);
}

/// On a narrow one all jaws are loaded; the whole ring without the slack one has no more stress.
TEST(Flange, ANarrowFlangeIsNotWorseWithoutItsSlackJaw) {
    FlangeTask task{180, 150.1, 8, steel(), 8, 12, 5, 12000};
    FlangeOptions options;
    options.settledPercent = 0.5;
    const auto part = solved(task, options);
    options.useSymmetry = false;
    const auto whole = solved(task, options);
    EXPECT_EQ(part.sectorOf, 16);
    EXPECT_EQ(whole.sectorOf, 1);
    EXPECT_NEAR(whole.appliedForce, part.appliedForce, 1e-6);
    EXPECT_LT(whole.rootRadial, 1.01 * part.rootRadial);
    EXPECT_LT(whole.vonMises, 1.01 * part.vonMises);
}

TEST(Flange, OddShapesAreSolvedOrRefused) {
    const FlangeTask tasks[] = {{1000, 10, 5, steel(), 50, 1.1, 1.1, 1000},
                                {1000, 990, 5, steel(), 2, 3, 1, 1000},
                                {1000, 999.8, 5, steel(), 3, 20, 0.05, 1000},
                                {160, 90, 100, steel(), 3, 20, 15, 12000},
                                {160, 5, 12, steel(), 2, 200, 15, 12000}};
    for (const FlangeTask& task : tasks) {
        const auto field = solveFlange(task);
        ASSERT_TRUE(field) << task.outside << " " << task.root << ": " << util::toText(field.problem());
        EXPECT_TRUE(field->settled) << task.outside << " " << task.root;
        EXPECT_NEAR(field->clampForce, field->appliedForce, 1e-5 * task.force);
    }
    FlangeTask speck = threeJaws();
    speck.overlap = 0.01;
    EXPECT_EQ(problemField(speck), "hub.jaws.overlap");
    speck = threeJaws();
    speck.width = 0.01;
    EXPECT_EQ(problemField(speck), "hub.jaws.width");
}

TEST(Flange, PeakSettlesWhereAMuchFinerMeshPutsIt) {
    for (const auto& [root, overlap] :
         {std::pair{90.0, 15.0}, std::pair{90.0, 33.0}, std::pair{130.0, 10.0}}) {
        FlangeTask task = threeJaws();
        task.root = root;
        task.overlap = overlap; // the last two end close to the root
        const auto usual = solved(task);
        FlangeOptions fine;
        fine.settledPercent = 0.2;
        fine.mostLevels = 9;
        const auto best = solved(task, fine);
        EXPECT_TRUE(usual.settled);
        EXPECT_GT(best.unknowns, 2 * usual.unknowns);
        EXPECT_NEAR(usual.rootRadial, best.rootRadial, 0.02 * best.rootRadial) << root << " " << overlap;
        EXPECT_NEAR(usual.vonMises, best.vonMises, 0.02 * best.vonMises) << root << " " << overlap;
    }
}

TEST(Flange, WiderJawsAndMoreOfThemBendItLess) {
    double before = 1e9;
    for (const double width : {8.0, 20.0, 45.0, 90.0}) {
        FlangeTask task = threeJaws();
        task.width = width;
        const double now = solved(task).vonMises;
        EXPECT_LT(now, before) << width << " mm wide";
        before = now;
    }
    FlangeTask two = threeJaws();
    two.jaws = 2;
    EXPECT_GT(solved(two).vonMises, 1.2 * solved(threeJaws()).vonMises);
}

/// The trap: an annular formula spreads the jaws' force all round.
TEST(Flange, TheAnnularFormulaIsUnsafeForJaws) {
    FlangeTask task = threeJaws();
    task.jaws = 2;
    const auto field = solved(task);
    EXPECT_GT(field.rootRadial, 1.5 * field.rootRadialSpread);
    EXPECT_GT(field.rootRadial, 2 * field.rootRadialSpread); // two to five times, says the design
    EXPECT_LT(field.rootRadial, 5 * field.rootRadialSpread);
}

TEST(Flange, StressGoesWithTheForceAndTheInverseSquareOfAThinThickness) {
    FlangeTask task = threeJaws();
    task.thickness = 0.4;
    const auto thin = solved(task);
    task.force *= 3;
    // Rounding moves the sizes of the finer meshes a little.
    EXPECT_NEAR(solved(task).vonMises, 3 * thin.vonMises, 1e-4 * thin.vonMises);
    task.force /= 3;
    task.thickness = 0.2;
    EXPECT_NEAR(solved(task).rootRadial, 4 * thin.rootRadial, 0.02 * thin.rootRadial * 4);
}

/// Limit analysis. Below: the elastic field at first yield is in balance and within yield. Above: a flange
/// that turns up as a cone, slope theta, yields round the root (2 pi b Mp theta) and round every circle
/// beyond it (2 pi (a - b) Mp theta) while the load at radius c does F theta (c - b); so F <= 2 pi a Mp / (c
/// - b), times 2 / sqrt 3 at most by von Mises. Mp = yield t^2 / 4.
TEST(Flange, FoldsAfterItYields) {
    FlangeTask task{300, 60, 12, steel(), 2, 12, 10, 12000};
    FlangeOptions options;
    options.collapse = true;
    const auto field = solved(task, options);
    ASSERT_TRUE(field.collapseFactor);
    EXPECT_GT(*field.collapseFactor, 235 / field.vonMises);
    const double mp = 235 * 12 * 12 / 4.0, a = 150, b = 30, c = 145;
    EXPECT_LT(*field.collapseFactor * 12000, 2 / std::sqrt(3.0) * 2 * kPi * a * mp / (c - b));
}

TEST(Flange, TwoOrThreeJawsShareEvenlyAndOneOfFourMayBeSlack) {
    EXPECT_DOUBLE_EQ(engine::jawShare(2, 900).force, 450);
    EXPECT_DOUBLE_EQ(engine::jawShare(3, 900).force, 300);
    EXPECT_FALSE(engine::jawShare(3, 900).oneSlack);
    EXPECT_DOUBLE_EQ(engine::jawShare(4, 900).force, 300);
    EXPECT_TRUE(engine::jawShare(4, 900).oneSlack);
}

TEST(Flange, FiguresThatCannotBeNameTheirField) {
    const auto with = [](auto change) {
        FlangeTask task = threeJaws();
        change(task);
        return problemField(task);
    };
    EXPECT_EQ(with([](FlangeTask& t) { t.outside = 0; }), "hub.flange.outside");
    EXPECT_EQ(with([](FlangeTask& t) { t.root = -1; }), "hub.flange.root");
    EXPECT_EQ(with([](FlangeTask& t) { t.root = 160; }), "hub.flange.root");
    EXPECT_EQ(with([](FlangeTask& t) { t.thickness = std::nan(""); }), "hub.flange.thickness");
    EXPECT_EQ(with([](FlangeTask& t) { t.width = 0; }), "hub.jaws.width");
    EXPECT_EQ(with([](FlangeTask& t) { t.width = 200; }), "hub.jaws.width");
    EXPECT_EQ(with([](FlangeTask& t) { t.overlap = 35; }), "hub.jaws.overlap");
    EXPECT_EQ(with([](FlangeTask& t) { t.overlap = 50; }), "hub.jaws.overlap");
    EXPECT_EQ(with([](FlangeTask& t) { t.jaws = 0; }), "hub.jaws.count");
    EXPECT_EQ(with([](FlangeTask& t) { t.jaws = 1; }), "hub.jaws.count");
    EXPECT_EQ(with([](FlangeTask& t) { t.force = 0; }), "load");
    FlangeTask task = threeJaws();
    task.overlap = 40;
    EXPECT_NE(solveFlange(task).problem().message.find("35 mm"), std::string::npos);
}

TEST(FlangeChecks, ThereAreNoneWithoutFlangeAndJaws) {
    std::vector<std::string> assumptions;
    EXPECT_TRUE(engine::flangeChecks({}, Force::fromN(1000), 1, assumptions).empty());
    job::Job job = jobWithFlange();
    job.hub->flange.reset();
    job.hub->jaws.reset();
    EXPECT_TRUE(engine::flangeChecks(job, Force::fromN(1000), 1, assumptions).empty());
    job = jobWithFlange();
    job.hub->jaws.reset();
    job.hub->bolts.emplace();
    EXPECT_TRUE(engine::flangeChecks(job, Force::fromN(1000), 1, assumptions).empty())
        << "bolts pull, nothing grips the flange";
    EXPECT_TRUE(assumptions.empty());
}

TEST(FlangeChecks, MissingFiguresAreNamedWithHowToMeasureThem) {
    std::vector<std::string> assumptions;
    job::Job job = jobWithFlange();
    job.hub->flange->root.reset();
    job.hub->jaws->width.reset();
    const auto checks = engine::flangeChecks(job, Force::fromN(1000), 1, assumptions);
    ASSERT_EQ(checks.size(), 2u);
    EXPECT_EQ(checks[0].id, "flange.bending");
    EXPECT_EQ(checks[0].grade, Grade::Incomplete);
    EXPECT_NE(checks[0].basis.find("hub.flange.root"), std::string::npos);
    EXPECT_NE(checks[0].basis.find("behind the flange"), std::string::npos);
    EXPECT_EQ(checks[0].basis.find("hub.flange.outside"), std::string::npos);
    EXPECT_EQ(checks[1].id, "jaws.bearing");
    EXPECT_EQ(checks[1].grade, Grade::Incomplete);
    EXPECT_NE(checks[1].basis.find("hub.jaws.width"), std::string::npos);
    EXPECT_FALSE(checks[0].margin);
}

TEST(FlangeChecks, JawsAloneStillGetTheirPressure) {
    std::vector<std::string> assumptions;
    job::Job job = jobWithFlange();
    job.hub->flange.reset();
    const auto checks = engine::flangeChecks(job, Force::fromN(9000), 1, assumptions);
    ASSERT_EQ(checks.size(), 2u);
    EXPECT_EQ(checks[0].grade, Grade::Incomplete);
    EXPECT_NE(checks[1].grade, Grade::Incomplete);
    EXPECT_DOUBLE_EQ(*checks[1].demand, 3000);
}

TEST(FlangeChecks, CastIronByDefaultAndSaid) {
    job::Job job = jobWithFlange();
    std::vector<std::string> named, assumed;
    const auto given = engine::flangeChecks(job, Force::fromN(12000), 1, named);
    job.hub->flange->material.reset();
    const auto taken = engine::flangeChecks(job, Force::fromN(12000), 1, assumed);
    EXPECT_EQ(given, taken);
    EXPECT_EQ(assumed.size(), named.size() + 1);
    EXPECT_NE(assumed.front().find("grey cast iron"), std::string::npos);
    job::Material own;
    own.name = "S235";
    job.hub->hubMaterial = own;
    std::vector<std::string> hubs;
    EXPECT_NE(engine::flangeChecks(job, Force::fromN(12000), 1, hubs), taken);
    EXPECT_NE(hubs.front().find("the hub's"), std::string::npos);
}

TEST(FlangeChecks, ABrittleFlangeIsJudgedByItsOwnLimits) {
    std::vector<std::string> assumptions;
    const job::Job job = jobWithFlange();
    const auto at = [&](double force, double s = 1) {
        return engine::flangeChecks(job, Force::fromN(force), s, assumptions).front();
    };
    const verdict::Check one = at(1000);
    ASSERT_TRUE(one.margin);
    // Margin goes with 1 / force, so these forces put it at 4.1, 3.9, 2.1 and 1.9.
    EXPECT_EQ(at(1000 * *one.margin / 4.1).grade, Grade::Holds);
    EXPECT_EQ(at(1000 * *one.margin / 3.9).grade, Grade::Thin);
    EXPECT_EQ(at(1000 * *one.margin / 2.1).grade, Grade::Thin);
    EXPECT_EQ(at(1000 * *one.margin / 1.9).grade, Grade::Breaks);
    EXPECT_EQ(at(1000 * *one.margin / 4.1, 1.5).grade, Grade::Thin);
    EXPECT_DOUBLE_EQ(*at(1000, 1.5).wanted, 6);
}

TEST(FlangeChecks, HotAndHammeredCount) {
    std::vector<std::string> assumptions;
    job::Job job = jobWithFlange();
    engine::FlangeCheckOptions hot;
    hot.strengthFactor = 0.5;
    const auto cold = engine::flangeChecks(job, Force::fromN(3000), 1, assumptions);
    const auto warm = engine::flangeChecks(job, Force::fromN(3000), 1, assumptions, hot);
    ASSERT_EQ(cold.size(), 3u);
    for (std::size_t i = 0; i < cold.size(); ++i)
        EXPECT_NEAR(*warm[i].margin, 0.5 * *cold[i].margin, 1e-9 * *cold[i].margin) << cold[i].id;
    job.screw.emplace();
    job.screw->hammering = true;
    EXPECT_EQ(cold.front().grade, Grade::Holds);
    EXPECT_EQ(engine::flangeChecks(job, Force::fromN(3000), 1, assumptions).front().grade, Grade::Breaks);
    job.hub->flange->material->name = "S235";
    EXPECT_EQ(engine::flangeChecks(job, Force::fromN(3000), 1, assumptions).front().grade, Grade::Holds);
}

TEST(FlangeChecks, WhatCannotBeIsIncompleteAndSaysWhy) {
    std::vector<std::string> assumptions;
    job::Job job = jobWithFlange();
    job.hub->jaws->overlap = Length::fromMm(40);
    const auto checks = engine::flangeChecks(job, Force::fromN(12000), 1, assumptions);
    ASSERT_FALSE(checks.empty());
    for (const verdict::Check& check : checks) {
        EXPECT_EQ(check.grade, Grade::Incomplete);
        EXPECT_NE(check.basis.find("hub.jaws.overlap"), std::string::npos);
    }
    job = jobWithFlange();
    job.hub->flange->material->name = "nosuchium";
    for (const verdict::Check& check : engine::flangeChecks(job, Force::fromN(12000), 1, assumptions))
        EXPECT_EQ(check.grade, Grade::Incomplete);
}

TEST(FlangeChecks, ASplitRingIsSaidToPullAllRound) {
    std::vector<std::string> assumptions;
    job::Job job = jobWithFlange();
    job.hub->jaws->count = 2;
    job.hub->jaws->width = Length::fromMm(225);
    const auto checks = engine::flangeChecks(job, Force::fromN(12000), 1, assumptions);
    EXPECT_NE(checks.front().basis.find("all round"), std::string::npos);
    EXPECT_NE(assumptions.back().find("split ring"), std::string::npos);
}
