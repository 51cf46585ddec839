#include "core/material/material.h"
#include "tests/support/csv.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <iostream>

using namespace pw::material;

namespace {

Material found(const std::string& name, double thicknessMm = 0) {
    const auto material = find(name, Length::fromMm(thicknessMm));
    EXPECT_TRUE(material.ok()) << name << ": " << (material.ok() ? "" : material.problem().message);
    return material.ok() ? *material : Material{};
}

constexpr double kKsi = 6.894757; // NIST SP 811

/// The thickness a row of the reference table speaks of: "S275 t 16-40 mm", "S235 t <=16 mm".
double thicknessOf(const std::string& params) {
    const std::string range = params.substr(params.find(" t ") + 3);
    if (range.starts_with("<="))
        return std::atof(range.c_str() + 2);
    return std::atof(range.c_str() + range.find('-') + 1);
}

// EN 10025-2:2004 Table 7, rows of tests/reference/steels.csv that were seen in print.
TEST(Material, EuropeanSteelsHaveTheStandardsStrengthAtEachThickness) {
    int yields = 0, ultimates = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/steels.csv")) {
        if (!row.at("id").starts_with("EN-S") || !row.at("provenance").starts_with("SEEN"))
            continue;
        const std::string& params = row.at("params");
        const Material m = found(params.substr(0, params.find(' ')), thicknessOf(params));
        const double printed = std::atof(row.at("published").c_str()); // of a range its low end
        if (row.at("quantity") == "ReH min") {
            EXPECT_DOUBLE_EQ(m.yield.mpa(), printed) << row.at("id");
            ++yields;
        } else {
            EXPECT_DOUBLE_EQ(m.ultimate.mpa(), printed) << row.at("id");
            ++ultimates;
        }
        EXPECT_DOUBLE_EQ(m.E.mpa(), 210000) << row.at("id"); // EN 1993-1-1
    }
    EXPECT_GE(yields, 15);
    EXPECT_GE(ultimates, 4);
}

// Shigley Table A-20, rows seen in print; "1045 HR" and the like.
TEST(Material, BarSteelsHaveTheHandbooksStrength) {
    int checked = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/steels.csv")) {
        if (!row.at("id").starts_with("A20-"))
            continue;
        ASSERT_TRUE(row.at("provenance").starts_with("SEEN"));
        const Material m = found(row.at("params"), 25);
        const double printed = std::atof(row.at("published").c_str());
        EXPECT_DOUBLE_EQ(row.at("quantity") == "yield" ? m.yield.mpa() : m.ultimate.mpa(), printed)
            << row.at("id");
        ++checked;
    }
    EXPECT_GE(checked, 20);
}

TEST(Material, AmericanPlateHasTheStrengthOfItsSpecification) {
    int checked = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/steels.csv")) {
        if (!row.at("id").starts_with("ASTM-"))
            continue;
        const std::string& params = row.at("params");
        const std::string name = params.substr(0, params.find(' '));
        const Material m = found(name, params.find("2.5-6") != std::string::npos ? 100 : 25);
        const double ours = row.at("quantity") == "Fy" ? m.yield.mpa() : m.ultimate.mpa();
        const double printed = std::atof(row.at("published").c_str()) * kKsi;
        if (row.at("provenance").starts_with("SEEN")) {
            EXPECT_NEAR(ours, printed, 0.6) << row.at("id"); // whole MPa
            ++checked;
        } else {
            std::cout << row.at("id") << ": (from memory) " << printed << " MPa, ours " << ours << '\n';
        }
    }
    EXPECT_GE(checked, 4);
}

TEST(Material, NamesAreFoundHoweverTheyAreTyped) {
    for (const char* name : {"s235", "S235JR", "S 235", "St 37-2", "EN S235", "1.0038"})
        EXPECT_EQ(found(name).name, "S235") << name;
    for (const char* name : {"A36", "ASTM A36", "a-36"})
        EXPECT_EQ(found(name).name, "A36") << name;
    for (const char* name : {"1045", "AISI 1045", "1045 steel", "1045 HR", "C1045"})
        EXPECT_EQ(found(name).name, "1045") << name;
    for (const char* name : {"unknown scrap", "Unknown", "scrap", "steel", "mild steel"})
        EXPECT_EQ(found(name).name, "unknown scrap") << name;
    EXPECT_EQ(found("1018 cold drawn").name, "1018 CD");
    EXPECT_EQ(found("Stainless Steel").name, "304");
}

TEST(Material, EveryNameInTheListIsFoundAndNamesItsSource) {
    for (const std::string& name : names()) {
        const Material m = found(name, 12);
        EXPECT_EQ(m.name, name);
        EXPECT_FALSE(m.source.empty()) << name;
        EXPECT_GE(m.ultimate, m.yield) << name;
    }
}

TEST(Material, UnknownScrapIsWhatCommonPracticeTakes) {
    // Common practice, no published source.
    const Material scrap = found("unknown scrap");
    EXPECT_DOUBLE_EQ(scrap.yield.mpa(), 205);
    EXPECT_DOUBLE_EQ(scrap.ultimate.mpa(), 340);
    EXPECT_TRUE(scrap.unknown);
    EXPECT_FALSE(scrap.brittle);
    EXPECT_FALSE(found("S235").unknown);
}

TEST(Material, GreyIronIsBrittleAndDuctileIronIsNot) {
    EXPECT_TRUE(found("cast iron").brittle);
    EXPECT_TRUE(found("GG25").brittle);
    EXPECT_FALSE(found("ductile iron").brittle);
    EXPECT_FALSE(found("cast steel").brittle);
}

TEST(Material, AThicknessBeyondTheTableTakesItsLastRow) {
    EXPECT_DOUBLE_EQ(found("S235", 500).yield.mpa(), 175);
    EXPECT_DOUBLE_EQ(found("S235", 16).yield.mpa(), 235);
    EXPECT_DOUBLE_EQ(found("S235", 16.01).yield.mpa(), 225);
}

TEST(Material, AnUnknownNameListsNearOnes) {
    const auto slip = find("S253");
    ASSERT_FALSE(slip.ok());
    EXPECT_NE(slip.problem().message.find("\"S253\""), std::string::npos);
    EXPECT_NE(slip.problem().message.find("S235"), std::string::npos);
    const auto iron = find("iron");
    ASSERT_FALSE(iron.ok());
    EXPECT_NE(iron.problem().message.find("cast iron"), std::string::npos);
    const auto nonsense = find("@@@@@@@@@@@@@@@@@@@@@@@@");
    ASSERT_FALSE(nonsense.ok());
    EXPECT_NE(nonsense.problem().message.find("unknown scrap"), std::string::npos);
    EXPECT_FALSE(find("").ok());
    EXPECT_FALSE(find(std::string(100000, 'x')).ok());
    EXPECT_FALSE(find("astm").ok());
}

TEST(Material, TheUsersFiguresStandOverTheGradeAndAreMarked) {
    pw::job::Material given;
    given.name = "S235";
    EXPECT_FALSE(resolve(given)->usersOwn);
    given.yield = Stress::fromMpa(250);
    const auto over = resolve(given);
    ASSERT_TRUE(over.ok());
    EXPECT_TRUE(over->usersOwn);
    EXPECT_DOUBLE_EQ(over->yield.mpa(), 250);
    EXPECT_DOUBLE_EQ(over->ultimate.mpa(), 360);
    EXPECT_NE(over->source.find("stated by the user"), std::string::npos);
    given.yield = Stress::fromMpa(400); // above the grade's ultimate, which then says nothing
    EXPECT_DOUBLE_EQ(resolve(given)->ultimate.mpa(), 400);
}

TEST(Material, AnOwnNameWithAYieldIsSteelOfThatYield) {
    pw::job::Material given;
    given.name = "bed rail";
    EXPECT_FALSE(resolve(given).ok());
    given.yield = Stress::fromMpa(180);
    const auto own = resolve(given);
    ASSERT_TRUE(own.ok()) << own.problem().message;
    EXPECT_EQ(own->name, "bed rail");
    EXPECT_TRUE(own->usersOwn);
    EXPECT_FALSE(own->unknown);
    EXPECT_DOUBLE_EQ(own->ultimate.mpa(), 180);
    EXPECT_DOUBLE_EQ(own->E.mpa(), 210000);
    given.name.clear();
    EXPECT_TRUE(resolve(given).ok());
}

TEST(Material, WrongFiguresNameTheKeyAtFault) {
    pw::job::Material given;
    given.name = "S235";
    given.yield = Stress::fromMpa(-3);
    EXPECT_EQ(resolve(given).problem().field, "yield");
    given.yield.reset();
    given.nu = 0.7;
    EXPECT_EQ(resolve(given).problem().field, "nu");
    given.nu = 0.3;
    given.E = Stress::fromMpa(0);
    EXPECT_EQ(resolve(given).problem().field, "E");
    given.E.reset();
    given.yield = Stress::fromMpa(300);
    given.ultimate = Stress::fromMpa(200);
    EXPECT_EQ(resolve(given).problem().field, "ultimate");
    EXPECT_EQ(resolve({}).problem().field, "");
}

} // namespace
