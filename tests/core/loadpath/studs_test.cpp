#include "core/loadpath/studs.h"

#include "tests/support/csv.h"
#include "tests/support/jobs.h"
#include "tests/support/quantities.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;
using pw::testing::findCheck;
using pw::testing::jobFrom;
namespace job = pw::job;

using pw::testing::newton;

/// Common practice, no published source (MODEL 4): F/(n - 1) for three or more, 0.6 F each for two.
TEST(Studs, TheWorstTakesMoreThanItsShare) {
    EXPECT_EQ(worstShare(1), 1.0);
    EXPECT_EQ(worstShare(2), 0.6);
    EXPECT_EQ(worstShare(3), 0.5);
    EXPECT_NEAR(worstShare(4), 1 / 3.0, 1e-15);
    EXPECT_NEAR(worstShare(12), 1 / 11.0, 1e-15);
}

job::Job bolted(const std::string& thread, const std::string& grade, int count,
                const std::string& more = {}) {
    return jobFrom(R"({"platewright": 1, "work": "pull", "stations": {"count": )" + std::to_string(count) +
                   R"(, "circle": "90 mm", "access_hole": "40 mm"}, "plate": {}, "hub": {"outside": "160 mm",
                 "hub_material": "cast iron", "bolts": {"thread": ")" +
                   thread + R"(", "grade": ")" + grade + R"(")" + more + "}}}");
}

double proofOf(const std::string& thread, const std::string& grade) {
    const MemberChecks out = boltChecks(bolted(thread, grade, 4), newton(3000), 1);
    const Check* check = findCheck(out.checks, "bolts.proof");
    return check && check->capacity ? *check->capacity : 0;
}

/// Proof loads of ISO 898-1:2013, Table 5, printed to three figures (0.5 %).
TEST(BoltsProof, MeetsTheProofLoadsOfIso898) {
    struct {
        const char *thread, *grade;
        double newton;
    } const rows[] = {{"M10", "8.8", 33700},   {"M12", "8.8", 48900},  {"M16", "8.8", 91000},
                      {"M20", "8.8", 147000},  {"M24", "8.8", 212000}, {"M12", "10.9", 70000},
                      {"M16", "10.9", 130000}, {"M12", "12.9", 81800}, {"M16", "12.9", 152000},
                      {"M12", "4.6", 19000},   {"M20", "4.6", 55100},  {"M16", "5.8", 59700},
                      {"M30", "10.9", 466000}};
    for (const auto& row : rows)
        EXPECT_NEAR(proofOf(row.thread, row.grade), row.newton, 0.006 * row.newton)
            << row.thread << " " << row.grade;
}

/// SAE J429 proof strength (threads_grades_torque_screws.csv) x tensile stress area
/// (threads_stress_areas.csv), both as printed.
TEST(BoltsProof, MeetsProofStrengthTimesStressAreaOfTheInchTables) {
    const auto published = [](const std::string& file, const std::string& id) {
        for (const auto& row : pw::testing::readCsv(std::string(PW_REFERENCE) + "/" + file))
            if (row.at("id") == id)
                return std::stod(row.at("published"));
        throw std::runtime_error("no row " + id);
    };
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(std::string(PW_REFERENCE) + "/threads_stress_areas.csv")) {
        const std::string& id = row.at("id");
        if (!id.starts_with("UN-At-"))
            continue;
        const std::string designation = row.at("params").substr(0, row.at("params").find(';'));
        const double diameter = std::stod(id.substr(6));
        if (diameter < 0.25 || diameter > 1)
            continue;
        const double area = std::stod(row.at("published")) * 645.16;
        for (const auto& [grade, key] :
             {std::pair{"SAE 5", "SAE-5-1/4-1-proof"}, std::pair{"SAE 8", "SAE-8-1/4-1_1/2-proof"}}) {
            const double proof = published("threads_grades_torque_screws.csv", key) * 6.894757 * area;
            EXPECT_NEAR(proofOf(designation, grade), proof, 0.006 * proof) << designation << " " << grade;
            ++rows;
        }
    }
    EXPECT_GE(rows, 10);
}

TEST(BoltsProof, OneSlackBoltLeavesItsLoadToTheOthersAndTheVerdictIsSudden) {
    // 3 x M12 8.8, 48.9 kN each: half of the load on the worst.
    const auto at = [](double load) {
        return *findCheck(boltChecks(bolted("M12", "8.8", 3), newton(load), 1).checks, "bolts.proof");
    };
    EXPECT_NEAR(*at(40000).demand, 20000, 1e-9);
    EXPECT_EQ(at(48000).grade, Grade::Holds);  // 2.04
    EXPECT_EQ(at(60000).grade, Grade::Thin);   // 1.63
    EXPECT_EQ(at(80000).grade, Grade::Breaks); // 1.22
    // A stated number of bolts goes before the stations'.
    const Check five = *findCheck(
        boltChecks(bolted("M12", "8.8", 3, R"(, "count": 5)"), newton(40000), 1).checks, "bolts.proof");
    EXPECT_NEAR(*five.demand, 10000, 1e-9);
}

TEST(BoltsProof, OnlyTheStationsThatCarryCountAsBolts) {
    job::Job half = bolted("M12", "8.8", 4);
    half.stations.loaded = {true, false, true, false};
    const MemberChecks out = boltChecks(half, newton(10000), 1);
    EXPECT_NEAR(*findCheck(out.checks, "bolts.proof")->demand, 6000, 1e-9) << "two carry, 0.6 each";
}

/// EN 1993-1-2 Annex D Table D.1 (from memory): 0.903 at 300 C.
TEST(BoltsProof, HeatTakesItsShare) {
    const double cold = proofOf("M12", "8.8");
    const MemberChecks hot = boltChecks(bolted("M12", "8.8", 4), newton(3000), 1, 0.903);
    EXPECT_NEAR(*findCheck(hot.checks, "bolts.proof")->capacity, 0.903 * cold, 1e-6);
    EXPECT_NE(findCheck(hot.checks, "bolts.proof")->basis.find("hot"), std::string::npos);
}

/// ASME B1.1 / FED-STD-H28 by hand for M12, 20 mm engaged, limits of ISO 965-1 6g/6H from memory: Ds 11.701,
/// En 11.063, Kn 10.441, Es 10.679. Hub: pi 20 x 11.701/1.75 (0.875 + 0.57735 x 0.638) = 522.3 mm2; screw: pi
/// 20 x 10.441/1.75 (0.875 + 0.57735 x 0.238) = 379.5 mm2; half the ultimate in shear. 1 % for the limits.
TEST(BoltsThread, StripsInTheHubsOwnMaterial) {
    struct {
        const char* hub;
        double capacity;
    } const rows[] = {
        {"EN-GJL-200", 522.3 * 100}, // 200 MPa
        {"cast iron", 522.3 * 75},   // the weakest grade, EN-GJL-150
        {"6061-T6", 522.3 * 145},    // 290 MPa
        {"S235", 522.3 * 180},       // 360 MPa
        {"1045", 522.3 * 285},       // 570 MPa: still under the screw's 379.5 x 400
    };
    for (const auto& row : rows) {
        job::Job made = bolted("M12", "8.8", 4, R"(, "engagement": "20 mm")");
        made.hub->hubMaterial = job::Material{};
        made.hub->hubMaterial->name = row.hub;
        const MemberChecks out = boltChecks(made, newton(30000), 1);
        const Check* check = findCheck(out.checks, "bolts.thread");
        ASSERT_TRUE(check && check->capacity) << row.hub;
        EXPECT_NEAR(*check->capacity, std::min(row.capacity, 379.5 * 400), 0.01 * row.capacity) << row.hub;
        EXPECT_NEAR(*check->demand, 10000, 1e-9);
    }
}

TEST(BoltsThread, WornAndDamagedCountLessAndPlainIronIsTakenWhereNobodySays) {
    job::Job made = bolted("M12", "8.8", 4, R"(, "engagement": "20 mm")");
    const auto capacity = [&] {
        return *findCheck(boltChecks(made, newton(30000), 1).checks, "bolts.thread")->capacity;
    };
    const double good = capacity();
    made.hub->bolts->threadCondition = job::ThreadCondition::Worn;
    EXPECT_NEAR(capacity(), 0.75 * good, 1e-6);
    made.hub->bolts->threadCondition = job::ThreadCondition::Damaged;
    EXPECT_NEAR(capacity(), 0.5 * good, 1e-6);
    made.hub->bolts->threadCondition.reset();
    made.hub->hubMaterial.reset();
    EXPECT_NEAR(capacity(), good, 1e-6);
    EXPECT_FALSE(boltChecks(made, newton(30000), 1).assumptions.empty());
}

TEST(Bolts, WhatIsMissingIsNamed) {
    job::Job made = bolted("M12", "8.8", 4);
    EXPECT_EQ(findCheck(boltChecks(made, newton(1000), 1).checks, "bolts.thread")->grade, Grade::Incomplete);
    made.hub->bolts->thread.clear();
    const MemberChecks out = boltChecks(made, newton(1000), 1);
    EXPECT_EQ(findCheck(out.checks, "bolts.proof")->grade, Grade::Incomplete);
    EXPECT_NE(findCheck(out.checks, "bolts.proof")->basis.find("thread"), std::string::npos);
    made.hub->bolts.reset();
    EXPECT_TRUE(boltChecks(made, newton(1000), 1).checks.empty());
}

/// AISC 360 Table J3.4 (from memory): 1.25 d from centre to edge.
TEST(BoltsEdge, TooNearTheRimIsThinAndOnItBreaks) {
    const auto at = [](double outside) {
        job::Job made = bolted("M12", "8.8", 4);
        made.hub->outside = Length::fromMm(outside);
        return *findCheck(boltChecks(made, newton(1000), 1).checks, "bolts.edge");
    };
    EXPECT_EQ(at(120).grade, Grade::Holds); // 15 = 1.25 x 12
    EXPECT_EQ(at(118).grade, Grade::Thin);
    EXPECT_EQ(at(102).grade, Grade::Breaks); // 6 mm: the hole touches the rim
    EXPECT_EQ(at(80).grade, Grade::Breaks);
}

/// ISO 273 fine, from memory: 0.4 mm and more over the bolt.
TEST(BoltsPass, TheHoleMustLetTheBoltThrough) {
    const auto at = [](double hole) {
        job::Job made = bolted("M12", "8.8", 4);
        made.stations.accessHole = Length::fromMm(hole);
        return *findCheck(boltChecks(made, newton(1000), 1).checks, "access.bolt");
    };
    EXPECT_EQ(at(13).grade, Grade::Holds);
    EXPECT_EQ(at(12.4).grade, Grade::Holds);
    EXPECT_EQ(at(12.2).grade, Grade::Thin);
    EXPECT_EQ(at(11.9).grade, Grade::Breaks);
}

pw::material::Material steel(double yield) {
    pw::material::Material made;
    made.name = "test steel";
    made.yield = Stress::fromMpa(yield);
    made.ultimate = Stress::fromMpa(2 * yield);
    made.source = "the test";
    return made;
}

/// By hand. M16 8.8 (ISO 898-1: 640 MPa up to M16, 157 mm2): 100.5 kN a leg. Bar 75 x 35, bore M24, span 140:
/// 20 kN gives 700 N.m on (75 - 24) x 35^2 / 6 = 10412.5 mm3: 67.23 MPa. Foot: nut of 24 mm across flats (ISO
/// 4032), face 22.8; washer ISO 7089 30 x 3: min(30, 28.8); hole 17: pi/4 (28.8^2 - 17^2) = 424.5 mm2 x 1.8 x
/// 250 = 191.0 kN.
TEST(Legs, AreRodsFeetAndABeam) {
    const job::Job made = jobFrom(R"({"platewright": 1, "work": "pull",
        "stations": {"count": 2, "circle": "140 mm", "access_hole": "17 mm"},
        "plate": {"outline": {"shape": "bar", "length": "200 mm", "width": "75 mm"}, "thickness": "35 mm",
                  "bore_thread": "M24"},
        "legs": {"count": 2, "span": "140 mm", "thread": "M16", "grade": "8.8"}})");
    const MemberChecks out = legChecks(made, steel(250), newton(20000), 1);
    const Check* tension = findCheck(out.checks, "legs.tension");
    ASSERT_TRUE(tension);
    EXPECT_NEAR(*tension->demand, 12000, 1e-9);
    EXPECT_NEAR(*tension->capacity, 100500, 0.003 * 100500);
    const Check* beam = findCheck(out.checks, "legs.bending");
    ASSERT_TRUE(beam);
    EXPECT_NEAR(*beam->demand, 67.23, 0.01);
    EXPECT_EQ(beam->grade, Grade::Holds);
    const Check* feet = findCheck(out.checks, "legs.feet");
    ASSERT_TRUE(feet);
    EXPECT_NEAR(*feet->capacity, 191000, 500);
    EXPECT_EQ(findCheck(out.checks, "access.bolt")->grade, Grade::Holds);
    EXPECT_TRUE(legChecks(bolted("M12", "8.8", 4), steel(250), newton(20000), 1).checks.empty());
}

TEST(Legs, ABoreAsWideAsTheBarOrAHoleThatSwallowsTheNutIsNotCarried) {
    job::Job made = jobFrom(R"({"platewright": 1, "work": "pull",
        "stations": {"count": 2, "circle": "140 mm", "access_hole": "32 mm"},
        "plate": {"outline": {"shape": "bar", "length": "200 mm", "width": "24 mm"}, "thickness": "35 mm",
                  "bore_thread": "M24"},
        "legs": {"count": 2, "thread": "M16", "grade": "8.8"}})");
    const MemberChecks out = legChecks(made, steel(250), newton(20000), 1);
    EXPECT_EQ(findCheck(out.checks, "legs.bending")->grade, Grade::Sets);
    EXPECT_NE(findCheck(out.checks, "legs.feet")->grade, Grade::Holds);
    EXPECT_NE(findCheck(out.checks, "legs.feet")->basis.find("fall through"), std::string::npos);
}

} // namespace
