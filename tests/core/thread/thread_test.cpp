#include "core/thread/thread.h"
#include "tests/support/csv.h"

#include <cmath>
#include <cstdlib>
#include <gtest/gtest.h>
#include <iostream>

using namespace pw::thread;

namespace {

Thread named(const std::string& text) {
    const auto thread = parse(text);
    EXPECT_TRUE(thread.ok()) << text << ": " << (thread.ok() ? "" : thread.problem().message);
    return thread.ok() ? *thread : Thread{};
}

/// Printed to three or four figures, the last of which may be half a step off.
double roundingOf(const std::string& printed) {
    const std::size_t point = printed.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(printed.size() - point - 1);
    return 0.5 * std::pow(10.0, -decimals);
}

/// "0.25-20 UNC; ..." or "M8 x 1.25; ...": the thread at the head of a row's parameters.
std::string headOf(const std::string& params) {
    const std::string head = params.substr(0, params.find(';'));
    return head.substr(0, head.find(" ACME general purpose") == std::string::npos
                              ? head.size()
                              : head.find(" general purpose"));
}

TEST(ThreadGeometry, AreasAreThoseOfTheStandardsTables) {
    int checked = 0, reported = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/threads_stress_areas.csv")) {
        const std::string& id = row.at("id");
        const std::string& published = row.at("published");
        const bool stress = id.starts_with("UN-At") || id.starts_with("UN8-At") || id.starts_with("M-As");
        const bool root = id.starts_with("UN-Ar") || id.starts_with("UN8-Ar");
        if (!stress && !root)
            continue;
        const Thread thread = named(headOf(row.at("params")));
        const pw::units::Area area = stress ? tensileStressArea(thread) : rootArea(thread);
        const double ours = row.at("unit") == "mm^2" ? area.mm2() : area.squareInch();
        const double printed = std::atof(published.c_str());
        const double recomputed = std::atof(row.at("recomputed").c_str());
        // Tables cut off a last figure now and then, so one unit of it is allowed, not half.
        const double tolerance = 2 * roundingOf(published);
        const bool seen = row.at("provenance").starts_with("SEEN");
        if (seen || std::abs(recomputed - printed) <= tolerance) {
            EXPECT_NEAR(ours, printed, tolerance) << id;
            EXPECT_NEAR(ours, recomputed, recomputed * 5e-5)
                << id; // the row's own arithmetic, rounded constants
            ++checked;
        } else {
            std::cout << id << ": printed (from memory) " << printed << ", ours " << ours << '\n';
            ++reported;
        }
    }
    EXPECT_GE(checked, 60);
    EXPECT_LE(reported, 2);
}

TEST(ThreadGeometry, AcmePitchDiametersAreHalfAPitchUnder) {
    int checked = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/threads_stress_areas.csv")) {
        if (!row.at("id").starts_with("ACME-E-"))
            continue;
        const Thread thread = named(headOf(row.at("params")));
        EXPECT_NEAR(pitchDiameter(thread).inch(), std::atof(row.at("recomputed").c_str()), 1e-6)
            << row.at("id");
        ++checked;
    }
    EXPECT_GE(checked, 7);
}

// Mott, Machine Elements in Mechanical Design, 4th ed., example 17-1: 1 1/2-4 ACME, least pitch
// diameter 1.3429 in, lead angle 3.39 deg, 2.341 in2 of thread shear an inch.
TEST(ThreadGeometry, AcmeScrewAgreesWithATextbooksTable) {
    const Thread thread = named("1-1/2-4 ACME");
    EXPECT_NEAR(stripLimits(thread).screwPitchLeast.inch(), 1.3429, 0.00005);
    EXPECT_NEAR(leadAngle(thread).degree(), 3.39, 0.005);
    EXPECT_NEAR(screwShearArea(thread, Length::fromInch(1)).squareInch(), 2.341, 0.0005);
}

// ASME B1.1 appendix B with the printed limits Kn,max 0.696 and Es,min 0.7029 (STRIP-As in the reference
// table).
TEST(ThreadGeometry, ShearAreaOfThreeQuarterSixteenIsThatOfTheStandardsFormula) {
    const Thread thread = named("3/4-16 UNF");
    const StripLimits limits = stripLimits(thread);
    EXPECT_NEAR(limits.nutMinorMost.inch(), 0.696, 0.0005);
    EXPECT_NEAR(limits.screwPitchLeast.inch(), 0.7029, 0.00005);
    const double printedLimits = 0.01; // what half a thou in the printed Kn,max does to the area
    EXPECT_NEAR(screwShearArea(thread, Length::fromInch(1)).squareInch(), 1.232644, 1.232644 * printedLimits);
}

// ISO 965-1 and -2 limits of M20 6g/6H: screw pitch diameter 18.164, major 19.623, nut pitch diameter 18.600,
// minor 17.744 (from memory). The formulas are not rounded to the table's steps, which moves a limit by up to
// 3 % of its tolerance.
TEST(ThreadGeometry, LimitsOfM20LieWhereTheTablePutsThem) {
    const StripLimits limits = stripLimits(named("M20"));
    EXPECT_NEAR(limits.screwPitchLeast.mm(), 18.164, 0.010);
    EXPECT_NEAR(limits.screwMajorLeast.mm(), 19.623, 0.010);
    EXPECT_NEAR(limits.nutPitchMost.mm(), 18.600, 0.010);
    EXPECT_NEAR(limits.nutMinorMost.mm(), 17.744, 0.015);
}

TEST(ThreadGeometry, ShearAreasGrowWithTheEngagementAndTheNutIsTheStronger) {
    for (const char* name : {"M20", "5/8-11", "1-1/4-7", "1/2 BSW", "3/4-16", "1-5 ACME", "Tr 24x5"}) {
        const Thread thread = named(name);
        const double one = screwShearArea(thread, Length::fromMm(1)).mm2();
        EXPECT_NEAR(screwShearArea(thread, Length::fromMm(20)).mm2(), 20 * one, 1e-9 * one) << name;
        EXPECT_GT(nutShearArea(thread, Length::fromMm(1)).mm2(), one) << name;
        // At most the whole cylinder, and half of it at the least.
        EXPECT_LT(one, 3.1416 * thread.diameter.mm()) << name;
        EXPECT_GT(one, 3.1416 * rootDiameter(thread).mm() / 2) << name;
    }
}

// Flank angles and proportions by the standards' definitions of the profile.
TEST(ThreadGeometry, ProfilesHaveTheirProportions) {
    const Thread m20 = named("M20");
    EXPECT_NEAR(pitchDiameter(m20).mm(), 18.376, 0.0005); // ISO 724
    EXPECT_NEAR(minorDiameter(m20).mm(), 17.294, 0.0005); // ISO 724
    EXPECT_DOUBLE_EQ(flankAngle(m20).degree(), 30);
    const Thread tr = named("Tr 24x5");
    EXPECT_DOUBLE_EQ(pitchDiameter(tr).mm(), 21.5); // ISO 2904: d2 21.5, d3 18.5, D1 19
    EXPECT_DOUBLE_EQ(rootDiameter(tr).mm(), 18.5);
    EXPECT_DOUBLE_EQ(minorDiameter(tr).mm(), 19);
    EXPECT_DOUBLE_EQ(flankAngle(tr).degree(), 15);
    EXPECT_DOUBLE_EQ(flankAngle(named("1-5 ACME")).degree(), 14.5);
    const Thread bsw = named("1/2 BSW");
    EXPECT_NEAR(pitchDiameter(bsw).inch(), 0.4466, 0.00005); // BS 84 (from memory)
    EXPECT_NEAR(minorDiameter(bsw).inch(), 0.3933, 0.00005); // BS 84 (from memory)
    EXPECT_DOUBLE_EQ(flankAngle(bsw).degree(), 27.5);
}

// ISO 2306; inch: usual tap drill charts, 75 % thread (common practice).
TEST(ThreadGeometry, TappingDrillsAreThoseOnTheChart) {
    const std::pair<const char*, double> metric[] = {{"M6", 5},     {"M8", 6.8},   {"M10", 8.5},
                                                     {"M12", 10.2}, {"M16", 14},   {"M20", 17.5},
                                                     {"M24", 21},   {"M30", 26.5}, {"M12x1.25", 10.8}};
    for (const auto& [name, drill] : metric)
        EXPECT_NEAR(tappingDrill(named(name)).mm(), drill, 1e-9) << name;
    const std::pair<const char*, double> inch[] = {
        {"3/8-16", 5. / 16},  {"1/2-13", 27. / 64}, {"5/8-11", 17. / 32}, {"5/8-18", 37. / 64},
        {"3/4-10", 21. / 32}, {"3/4-16", 11. / 16}, {"1-8", 7. / 8}};
    for (const auto& [name, drill] : inch)
        EXPECT_NEAR(tappingDrill(named(name)).inch(), drill, 1e-9) << name;
}

// ISO 4032 and ISO 7089 for M20: across flats 30, least height 16.9; washer 37 by 3.
TEST(ThreadHardware, NutsAndWashersAreTheStandardOnes) {
    const auto m20 = standardHexagon(named("M20x1.5"));
    ASSERT_TRUE(m20.has_value());
    EXPECT_DOUBLE_EQ(m20->nutAcrossFlats.mm(), 30);
    EXPECT_DOUBLE_EQ(m20->nutHeight.mm(), 16.9);
    const auto washer = standardWasher(named("M20"));
    ASSERT_TRUE(washer.has_value());
    EXPECT_DOUBLE_EQ(washer->outside.mm(), 37);
    EXPECT_DOUBLE_EQ(washer->thickness.mm(), 3);
    // ASME B18.2.2, B18.21.1: 5/8 in nut 15/16 across flats, washer N 1.312 by 0.095.
    EXPECT_NEAR(standardHexagon(named("5/8-11"))->nutAcrossFlats.inch(), 15. / 16, 1e-12);
    EXPECT_NEAR(standardWasher(named("5/8-11"))->outside.inch(), 1.312, 1e-12);
    // BS 1083:1965: 5/8 in nut 1.010 across flats, 0.552 high at the least.
    EXPECT_NEAR(standardHexagon(named("5/8 BSW"))->nutAcrossFlats.inch(), 1.010, 1e-12);
    EXPECT_NEAR(standardHexagon(named("5/8 BSW"))->nutHeight.inch(), 0.552, 1e-12);
    EXPECT_NEAR(standardWasher(named("5/8 BSW"))->thickness.inch(), 0.095, 1e-12);
}

TEST(ThreadHardware, ASizeBetweenTwoTakesTheNextWasherAndNoNut) {
    EXPECT_DOUBLE_EQ(standardWasher(named("Tr 26x5"))->inside.mm(), 28);
    EXPECT_FALSE(standardHexagon(named("Tr 26x5")).has_value());
    EXPECT_FALSE(standardWasher(named("M100x4")).has_value());
}

} // namespace
