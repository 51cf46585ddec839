#include "core/material/hot.h"
#include "tests/support/csv.h"

#include <cstdlib>
#include <gtest/gtest.h>

using namespace pw::material;

namespace {

Temperature celsius(double value) {
    return Temperature::fromCelsius(value);
}

Material named(const char* name) {
    const auto material = find(name, Length::fromMm(10));
    EXPECT_TRUE(material.ok()) << name;
    return material ? *material : Material{};
}

/// The table is typed in as printed.
constexpr double kAsPrinted = 1e-12;

// EN 1993-1-2:2005 Table 3.1, rows EC3T-* of tests/reference/steels.csv.
TEST(HotSteel, MeetsTheStandardsTable) {
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/steels.csv")) {
        const std::string& id = row.at("id");
        if (!id.starts_with("EC3T-"))
            continue;
        const std::string which = id.substr(5, 2);
        const HotFactors k = hotFactors(celsius(std::atof(id.substr(8).c_str())));
        const double ours = which == "ky" ? k.ky : which == "kp" ? k.kp : k.kE;
        EXPECT_NEAR(ours, std::atof(row.at("published").c_str()), kAsPrinted) << id;
        ++rows;
    }
    EXPECT_EQ(rows, 24);
}

// The rows that the reference table leaves out; open programs that name Table 3.1 of EN 1993-1-2:2005 print
// them so.
TEST(HotSteel, MeetsTheRowsTheReferenceLeavesOut) {
    const struct {
        double at, ky, kp, kE;
    } rows[] = {{200, 1, 0.807, 0.9},        {400, 1, 0.42, 0.7},         {600, 0.47, 0.18, 0.31},
                {800, 0.11, 0.05, 0.09},     {900, 0.06, 0.0375, 0.0675}, {1000, 0.04, 0.025, 0.045},
                {1100, 0.02, 0.0125, 0.0225}};
    for (const auto& row : rows) {
        const HotFactors k = hotFactors(celsius(row.at));
        EXPECT_NEAR(k.ky, row.ky, kAsPrinted) << row.at;
        EXPECT_NEAR(k.kp, row.kp, kAsPrinted) << row.at;
        EXPECT_NEAR(k.kE, row.kE, kAsPrinted) << row.at;
    }
}

TEST(HotSteel, IsWholeWhenCoolAndNothingWhenMolten) {
    for (const double cool : {-100.0, 0.0, 20.0, 99.0, 100.0})
        EXPECT_EQ(hotFactors(celsius(cool)), HotFactors{}) << cool;
    for (const double molten : {1200.0, 1201.0, 5000.0})
        EXPECT_EQ(hotFactors(celsius(molten)), (HotFactors{0, 0, 0})) << molten;
}

TEST(HotSteel, FallsInStraightLinesBetweenTheRowsAndNeverRises) {
    // Half way between the printed rows at 200 and 300 C, 400 and 500 C (EN 1993-1-2, note to Table 3.1).
    EXPECT_NEAR(hotFactors(celsius(250)).kp, (0.807 + 0.613) / 2, kAsPrinted);
    EXPECT_NEAR(hotFactors(celsius(450)).ky, (1 + 0.78) / 2, kAsPrinted);
    EXPECT_NEAR(hotFactors(celsius(425)).kE, 0.7 - 0.25 * 0.1, kAsPrinted);
    HotFactors before;
    double boltBefore = 1;
    for (double t = 0; t <= 1300; t += 1) {
        const HotFactors k = hotFactors(celsius(t));
        EXPECT_TRUE(k.ky <= before.ky && k.kp <= before.kp && k.kE <= before.kE) << t;
        EXPECT_LE(k.kp, k.ky) << t; // the proportional limit lies under the yield
        EXPECT_LE(hotBoltFactor(celsius(t)), boltBefore) << t;
        before = k;
        boltBefore = hotBoltFactor(celsius(t));
    }
}

// EN 1993-1-2:2005 Annex D, Table D.1 (from memory).
TEST(HotBolt, MeetsTheStandardsTable) {
    const double rows[][2] = {{20, 1},      {100, 0.968}, {150, 0.952}, {200, 0.935},
                              {300, 0.903}, {400, 0.775}, {500, 0.550}, {600, 0.220},
                              {700, 0.100}, {800, 0.067}, {900, 0.033}, {1000, 0}};
    for (const auto& row : rows)
        EXPECT_NEAR(hotBoltFactor(celsius(row[0])), row[1], kAsPrinted) << row[0];
    EXPECT_EQ(hotBoltFactor(celsius(-40)), 1);
    EXPECT_EQ(hotBoltFactor(celsius(1100)), 0);
    EXPECT_NEAR(hotBoltFactor(celsius(250)), (0.935 + 0.903) / 2, kAsPrinted);
}

TEST(HotMaterial, SetUsesTheProportionalLimitAndFoldingTheYield) {
    const auto hot = atTemperature(named("S235"), celsius(300));
    ASSERT_TRUE(hot.ok());
    // EN 1993-1-2 Table 3.1 at 300 C: kp 0.613, ky 1, kE 0.8; S235 and E of EN 10025-2, EN 1993-1-1.
    EXPECT_NEAR(hot->yieldForSet.mpa(), 0.613 * 235, 1e-9);
    EXPECT_NEAR(hot->yieldForCollapse.mpa(), 235, 1e-9);
    EXPECT_NEAR(hot->E.mpa(), 0.8 * 210000, 1e-6);
    EXPECT_FALSE(hot->beyondStandard);
    EXPECT_NE(hot->source.find("1993-1-2"), std::string::npos);
}

TEST(HotMaterial, CoolMetalIsTakenAsItIs) {
    for (const char* name : {"S235", "cast iron", "6061-T6", "304", "bronze"}) {
        const Material m = named(name);
        const auto cool = atTemperature(m, celsius(60));
        ASSERT_TRUE(cool.ok()) << name;
        EXPECT_EQ(cool->yieldForSet, m.yield) << name;
        EXPECT_EQ(cool->yieldForCollapse, m.yield) << name;
        EXPECT_EQ(cool->E, m.E) << name;
    }
}

TEST(HotMaterial, HotMetalThatIsNoPlainSteelHasNoFigures) {
    for (const char* name : {"cast iron", "ductile iron", "6061-T6", "304", "bronze"}) {
        const auto hot = atTemperature(named(name), celsius(150));
        ASSERT_FALSE(hot.ok()) << name;
        EXPECT_NE(hot.problem().message.find("cool"), std::string::npos);
    }
}

TEST(HotMaterial, SteelStrongerThanTheStandardIsMarked) {
    EXPECT_TRUE(atTemperature(named("42CrMo4"), celsius(200))->beyondStandard);
    EXPECT_FALSE(atTemperature(named("42CrMo4"), celsius(20))->beyondStandard);
}

// tests/reference/press_fits.csv, rows PF-al-*.
TEST(Expansion, IsThatOfTheHandbooks) {
    const std::map<std::string, std::vector<const char*>> names{
        {"PF-al-carbon steel", {"S235", "1045", "unknown scrap"}},
        {"PF-al-grey cast iron", {"cast iron", "GG25"}},
        {"PF-al-aluminium", {"aluminium", "aluminum"}},
        {"PF-al-brass/bronze", {"bronze", "brass"}},
        {"PF-al-austenitic stainless 304", {"304", "stainless"}},
        {"PF-al-concrete-code steel EN 1993-1-1", {"S355"}}};
    std::size_t rows = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/press_fits.csv")) {
        if (!row.at("id").starts_with("PF-al-"))
            continue;
        for (const char* name : names.at(row.at("id")))
            EXPECT_NEAR(named(name).expansion, std::atof(row.at("published").c_str()) * 1e-6, 1e-12) << name;
        ++rows;
    }
    EXPECT_EQ(rows, names.size());
}

TEST(Expansion, OfAnOwnMaterialIsSteelsAndSaidToBe) {
    pw::job::Material own;
    own.name = "bed rail";
    own.yield = Stress::fromMpa(180);
    EXPECT_TRUE(resolve(own)->expansionAssumed);
    EXPECT_DOUBLE_EQ(resolve(own)->expansion, 12.0e-6); // EN 1993-1-1, 3.2.6
    own.expansion = 11e-6;
    EXPECT_FALSE(resolve(own)->expansionAssumed);
    EXPECT_DOUBLE_EQ(resolve(own)->expansion, 11e-6);
    // Own strength over a grade leaves the grade's.
    own.expansion.reset();
    own.name = "cast iron";
    EXPECT_FALSE(resolve(own)->expansionAssumed);
    EXPECT_EQ(resolve(own)->expansion, named("cast iron").expansion);
    own.expansion = 12; // meant 12e-6
    EXPECT_EQ(resolve(own).problem().field, "expansion");
}

TEST(Material, HubsAndShaftsHavePlainNames) {
    for (const char* name : {"cast iron", "ductile iron", "malleable iron", "cast steel", "cast aluminium",
                             "aluminium", "bronze", "brass", "1045", "stainless"})
        EXPECT_TRUE(find(name).ok()) << name;
}

} // namespace
