#include "core/units/parse.h"

#include <clocale>
#include <cmath>
#include <gtest/gtest.h>
#include <random>

using namespace pw::units;

namespace {

// Rounding of a handful of multiplications; anything larger is a wrong reading.
constexpr double kRounding = 1e-12;

constexpr double kLbf = 4.4482216152605; // NIST SP 811
constexpr double kKgf = 9.80665;         // NIST SP 811

struct TypedCase {
    Kind kind;
    const char* text;
    double base;
};

struct RangeCase {
    Kind kind;
    const char* text;
    double low, high;
};

void expectReads(const TypedCase& c) {
    const auto read = parseBase(c.kind, c.text);
    ASSERT_TRUE(read.ok()) << c.text << ": " << read.problem().message;
    EXPECT_NEAR(*read, c.base, std::abs(c.base) * kRounding) << c.text;
}

void expectReads(const RangeCase& c) {
    const auto read = parseRangeBase(c.kind, c.text);
    ASSERT_TRUE(read.ok()) << c.text << ": " << read.problem().message;
    EXPECT_NEAR(read->low, c.low, std::abs(c.low) * kRounding) << c.text;
    EXPECT_NEAR(read->high, c.high, std::abs(c.high) * kRounding) << c.text;
}

void expectRefused(Kind kind, const std::string& text) {
    const auto read = parseRangeBase(kind, text);
    ASSERT_FALSE(read.ok()) << text << " was read as " << read->low << " to " << read->high;
    EXPECT_NE(read.problem().message.find(exampleOf(kind)), std::string::npos) << read.problem().message;
}

TEST(Parse, ReadsLengthsAsAMechanicTypesThem) {
    const TypedCase cases[] = {
        {Kind::Length, "7/8 in", 22.225},
        {Kind::Length, "2 11/32\"", 2.34375 * 25.4},
        {Kind::Length, "2-11/32 in", 2.34375 * 25.4},
        {Kind::Length, "7.25in", 184.15},
        {Kind::Length, ".030 in", 0.762},
        {Kind::Length, "30 thou", 0.762},
        {Kind::Length, "30 mil", 0.762},
        {Kind::Length, "1 ft 2 in", 355.6},
        {Kind::Length, "1ft2in", 355.6},
        {Kind::Length, "1' 2\"", 355.6},
        {Kind::Length, "1'-2 1/2\"", 368.3},
        {Kind::Length, "1 ft", 304.8},
        {Kind::Length, "12.7 mm", 12.7},
        {Kind::Length, "12.7MM", 12.7},
        {Kind::Length, "1/2\u2033", 12.7},
        {Kind::Length, "1/2''", 12.7},
        {Kind::Length, "6\u2032 1\u2033", 73 * 25.4},
        {Kind::Length, "\u00bd in", 12.7},
        {Kind::Length, "2\u00bd in", 63.5},
        {Kind::Length, "2-\u00bd in", 63.5},
        {Kind::Length, "2 \u215b in", 53.975},
        {Kind::Length, "1\u20448 in", 3.175},
        {Kind::Length, "  20\u00a0mm  ", 20},
        {Kind::Length, "1.2 cm", 12},
        {Kind::Length, "1.5 m", 1500},
        {Kind::Length, "1,250 mm", 1250},
        {Kind::Length, "1,250.5 mm", 1250.5},
        {Kind::Length, "0 mm", 0},
        {Kind::Length, "-10 mm", -10},
        {Kind::Length, "\u221210 mm", -10},
        {Kind::Length, "-2-11/32 in", -2.34375 * 25.4},
        {Kind::Length, "-1 ft 2 in", -355.6},
        {Kind::Length, "+4 mm", 4},
    };
    for (const TypedCase& c : cases)
        expectReads(c);
}

TEST(Parse, ReadsForcesRatesTorquesAndStresses) {
    const TypedCase cases[] = {
        {Kind::Force, "180 lbf", 180 * kLbf},
        {Kind::Force, "180 lb", 180 * kLbf},
        {Kind::Force, "2100 lbs", 2100 * kLbf},
        {Kind::Force, "2,100 lbs.", 2100 * kLbf},
        {Kind::Force, "0.8 kN", 800},
        {Kind::Force, "7500N", 7500},
        {Kind::Force, "95 kgf", 95 * kKgf},
        {Kind::Force, "95 kg", 95 * kKgf},
        {Kind::Force, "95 kp", 95 * kKgf},
        {Kind::Force, "95 daN", 950},
        {Kind::Force, "12 t", 12000 * kKgf},
        {Kind::Force, "12 tonne", 12000 * kKgf},
        {Kind::Force, "12 ton", 24000 * kLbf},
        {Kind::Rate, "80 lb/in", 80 * kLbf / 25.4},
        {Kind::Rate, "80 lbf/in.", 80 * kLbf / 25.4},
        {Kind::Rate, "80 lb per inch", 80 * kLbf / 25.4},
        {Kind::Rate, "1.4 kg/mm", 1.4 * kKgf},
        {Kind::Rate, "12 N/mm", 12},
        {Kind::Rate, "12 kN/m", 12},
        {Kind::Torque, "60 lb-ft", 60 * kLbf * 304.8},
        {Kind::Torque, "60 lbft", 60 * kLbf * 304.8},
        {Kind::Torque, "60 lbf.ft", 60 * kLbf * 304.8},
        {Kind::Torque, "60 ft-lb", 60 * kLbf * 304.8},
        {Kind::Torque, "60 ft lbs", 60 * kLbf * 304.8},
        {Kind::Torque, "60 in-lb", 60 * kLbf * 25.4},
        {Kind::Torque, "60 in.-lb.", 60 * kLbf * 25.4},
        {Kind::Torque, "12 N.m", 12000},
        {Kind::Torque, "12 N\u00b7m", 12000},
        {Kind::Torque, "12 Nm", 12000},
        {Kind::Torque, "12 N m", 12000},
        {Kind::Torque, "12 N.mm", 12},
        {Kind::Torque, "1.2 kN.m", 1.2e6},
        {Kind::Torque, "8 kgf.m", 8000 * kKgf},
        {Kind::Torque, "8 kg.cm", 80 * kKgf},
        {Kind::Torque, "8 mkg", 8000 * kKgf},
        {Kind::Stress, "36 ksi", 36000 * kLbf / 645.16},
        {Kind::Stress, "36,000 psi", 36000 * kLbf / 645.16},
        {Kind::Stress, "36000 lb/in2", 36000 * kLbf / 645.16},
        {Kind::Stress, "36000 lbf/sq in", 36000 * kLbf / 645.16},
        {Kind::Stress, "250 MPa", 250},
        {Kind::Stress, "210 GPa", 210000},
        {Kind::Stress, "700 bar", 70},
        {Kind::Stress, "250 N/mm2", 250},
        {Kind::Stress, "250 N/mm\u00b2", 250},
        {Kind::Stress, "250 N/mm^2", 250},
        {Kind::Stress, "40 kg/mm2", 40 * kKgf},
        {Kind::Stress, "200 kg/cm2", 2 * kKgf},
        {Kind::Area, "1600 mm2", 1600},
        {Kind::Area, "2.5 sq in", 2.5 * 645.16},
        {Kind::Area, "2 1/2 in\u00b2", 2.5 * 645.16},
        {Kind::Angle, "30 deg", std::acos(-1.0) / 6},
        {Kind::Angle, "30\u00b0", std::acos(-1.0) / 6},
        {Kind::Temperature, "20 C", 20},
        {Kind::Temperature, "20 \u00b0C", 20},
        {Kind::Temperature, "-40 F", -40},
        {Kind::Temperature, "212 deg F", 100},
    };
    for (const TypedCase& c : cases)
        expectReads(c);
}

TEST(Parse, ReadsRangesAndTolerances) {
    const RangeCase cases[] = {
        {Kind::Force, "180-205 lbf", 180 * kLbf, 205 * kLbf},
        {Kind::Force, "180 - 205 lbf", 180 * kLbf, 205 * kLbf},
        {Kind::Force, "180 to 205 lbf", 180 * kLbf, 205 * kLbf},
        {Kind::Force, "180 lbf to 205 lbf", 180 * kLbf, 205 * kLbf},
        {Kind::Force, "180\u2013205 lbf", 180 * kLbf, 205 * kLbf},
        {Kind::Force, "180 lbf - 1 kN", 180 * kLbf, 1000},
        {Kind::Force, "1,150-1,250 N", 1150, 1250},
        {Kind::Force, "190 \u00b18 lbf", 182 * kLbf, 198 * kLbf},
        {Kind::Force, "190 +-8 lbf", 182 * kLbf, 198 * kLbf},
        {Kind::Force, "190 +/- 8 lbf", 182 * kLbf, 198 * kLbf},
        {Kind::Force, "190 lbf \u00b1 8 lbf", 182 * kLbf, 198 * kLbf},
        {Kind::Force, "190 lbf \u00b15%", 180.5 * kLbf, 199.5 * kLbf},
        {Kind::Force, "190 \u00b15% lbf", 180.5 * kLbf, 199.5 * kLbf},
        {Kind::Force, "12 to 14 t", 12000 * kKgf, 14000 * kKgf},
        {Kind::Force, "190 lbf", 190 * kLbf, 190 * kLbf},
        {Kind::Length, "1/2-3/4 in", 12.7, 19.05},
        {Kind::Length, "1-1/2-2 in", 38.1, 50.8},
        {Kind::Length, "1 1/2 - 1 3/4 in", 38.1, 44.45},
        {Kind::Length, "2-3 1/2 in", 50.8, 88.9},
        {Kind::Length, "1 ft to 1 ft 2 in", 304.8, 355.6},
        {Kind::Length, "0.03-0.08 mm", 0.03, 0.08},
        {Kind::Temperature, "-10 to -5 C", -10, -5},
        {Kind::Temperature, "68 \u00b1 9 F", 15, 25},
    };
    for (const RangeCase& c : cases)
        expectReads(c);
}

TEST(Parse, AHyphenJoinsAProperFractionAndMakesARangeOtherwise) {
    expectReads(TypedCase{Kind::Length, "2-11/32 in", 2.34375 * 25.4});
    expectReads(RangeCase{Kind::Length, "2-11 in", 50.8, 279.4});
    expectRefused(Kind::Length, "2-32/11 in");
    expectRefused(Kind::Length, "2\u201311/32 in"); // an en dash is a range, and this one runs backwards
}

// Manufacturers' Standard Gauge: US Standard weights (15 U.S.C. 206) over 41.82 lb/ft2 per inch of thickness.
TEST(Parse, ReadsSheetGaugesByNumber) {
    const double roundedTo = 0.00005 * 25.4;
    EXPECT_NEAR(parse<Length>("10 ga")->mm(), 5.625 / 41.82 * 25.4, roundedTo);
    EXPECT_NEAR(parse<Length>("16 gauge")->mm(), 2.5 / 41.82 * 25.4, roundedTo);
    EXPECT_NEAR(parse<Length>("3 GA")->mm(), 10 / 41.82 * 25.4, roundedTo);
    expectRefused(Kind::Length, "2 ga");
    expectRefused(Kind::Length, "10.5 ga");
    expectRefused(Kind::Length, "10 ga \u00b1 1 ga");
}

TEST(Parse, RefusesWhatIsNoQuantityAndGivesAnExample) {
    const char* lengths[] = {"",
                             " ",
                             "mm",
                             "20",
                             "20 mmm",
                             "20 mm mm",
                             "20 mm 3",
                             "20 lbf",
                             "nan mm",
                             "inf mm",
                             "-inf mm",
                             "0x10 mm",
                             "1e3 mm",
                             "1e999 mm",
                             "1.2.3 mm",
                             "1..2 mm",
                             "--2 mm",
                             "- 2 mm",
                             "0,5 in",
                             "12,7 mm",
                             "0,500 in",
                             "1,00 mm",
                             "1,0000 mm",
                             "1234,567 mm",
                             "1 234 mm",
                             "1/0 in",
                             "1/2/3 in",
                             "1.5/2 in",
                             "1/2.5 in",
                             "2.5 1/2 in",
                             "2 5/2 in",
                             "1' 2",
                             "1 ft 14 in",
                             "1.5 ft 2 in",
                             "10-5 mm",
                             "5 mm to",
                             "5 mm - 6",
                             "to 5 mm",
                             "5 mm to 6 mm to 7 mm",
                             "5 +- mm",
                             "5 mm +- 150%",
                             "\u00b15 mm",
                             "1000000000 mm",
                             "0.000000001 mm",
                             "99999999999999999999999999999999 mm",
                             "20 mm\n",
                             "20 m\x01m",
                             "\xff\xfe",
                             "20 mm;",
                             "twenty mm",
                             "20 millimeters exactly"};
    for (const char* text : lengths)
        expectRefused(Kind::Length, text);
    expectRefused(Kind::Length, std::string("20 mm\0", 6));
    expectRefused(Kind::Length, std::string(5000, '9') + " mm");
    expectRefused(Kind::Stress, "250 mPa");
    expectRefused(Kind::Stress, "12 ton/in2");
    expectRefused(Kind::Force, "12 tonnes of it");
    expectRefused(Kind::Temperature, "-500 C");
    expectRefused(Kind::Temperature, "300 K");
    expectRefused(Kind::Temperature, "20 C \u00b15%");
    expectRefused(Kind::Torque, "60 lb/ft");
    expectRefused(Kind::Rate, "60 lb-in");
}

TEST(Parse, TheMessageSaysWhatIsWrongShowsTheTextAndGivesAnExample) {
    EXPECT_EQ(parse<Length>("20 mmm").problem().message,
              "Not a length: \"20 mmm\". Type it like 20 mm or 3/4 in.");
    EXPECT_EQ(parse<Area>("20").problem().message,
              "Not an area: \"20\" (no unit). Type it like 1600 mm2 or 2.5 in2.");
    EXPECT_EQ(parse<Length>("12,7 mm").problem().message,
              "Not a length: \"12,7 mm\" (a comma only groups thousands, the decimal mark is a point). Type "
              "it like 20 "
              "mm or 3/4 in.");
    EXPECT_TRUE(parse<Length>("").problem().message.starts_with("Nothing typed where a length is wanted."));
    const std::string long_ = parse<Length>(std::string(100000, 'x')).problem().message;
    EXPECT_LT(long_.size(), 200u);
    const std::string odd = parse<Length>("\x1b[31m20 mm").problem().message;
    EXPECT_EQ(odd.find('\x1b'), std::string::npos);
}

TEST(Parse, OneFigureIsNotARange) {
    EXPECT_FALSE(parse<Force>("180-205 lbf").ok());
    EXPECT_TRUE(parse<Force>("180-180 lbf").ok());
}

TEST(Parse, ABareFigureTakesTheUnitOfItsField) {
    EXPECT_DOUBLE_EQ(parse<Length>("1/2", "in")->mm(), 12.7);
    EXPECT_DOUBLE_EQ(parse<Length>("12 mm", "in")->mm(), 12);
    EXPECT_DOUBLE_EQ(parseRange<Force>("180-205", "N")->high.newton(), 205);
    EXPECT_DOUBLE_EQ(parseRange<Force>("190 \u00b1 8", "N")->low.newton(), 182);
    EXPECT_FALSE(parse<Length>("12").ok());
}

TEST(Parse, TellsWhetherAUnitWasTyped) {
    EXPECT_TRUE(hasUnit(Kind::Length, "12 mm"));
    EXPECT_TRUE(hasUnit(Kind::Force, "180-205 lbf"));
    EXPECT_FALSE(hasUnit(Kind::Length, "12"));
    EXPECT_FALSE(hasUnit(Kind::Length, "1/2"));
    EXPECT_FALSE(hasUnit(Kind::Length, ""));
    EXPECT_FALSE(hasUnit(Kind::Length, "12 lbf"));
}

TEST(Parse, ACommaDecimalDesktopChangesNothing) {
    const char* const before = std::setlocale(LC_ALL, nullptr);
    const std::string saved = before ? before : "C";
    // Not every machine has it installed; the reading must be right either way.
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    EXPECT_DOUBLE_EQ(parse<Length>("12.5 mm")->mm(), 12.5);
    EXPECT_FALSE(parse<Length>("12,5 mm").ok());
    std::setlocale(LC_ALL, saved.c_str());
}

TEST(Parse, RandomTextNeverCrashesAndWhatIsReadIsWithinReason) {
    constexpr unsigned kSeed = 20240611;
    std::mt19937 random(kSeed);
    SCOPED_TRACE("seed " + std::to_string(kSeed));
    const std::string pieces[] = {
        "1",  "2",      "9",      "0",      "/",    "-",    " ",   ".",  ",",   "in", "mm",  "ft", "'",
        "\"", "to",     "+-",     "%",      "lb",   "lbf",  "N",   "kN", "deg", "C",  "F",   "ga", "e",
        "x",  "\u00bd", "\u00b1", "\u2013", "\xff", "\x01", "bar", "m2", "t",   "+",  "1/2", "nan"};
    int read = 0;
    for (int round = 0; round < 200000; ++round) {
        std::string text;
        for (int i = static_cast<int>(random() % 8); i >= 0; --i)
            text += pieces[random() % std::size(pieces)];
        const Kind kind = static_cast<Kind>(random() % 8);
        const auto range = parseRangeBase(kind, text);
        if (!range.ok())
            continue;
        ++read;
        ASSERT_TRUE(std::isfinite(range->low) && std::isfinite(range->high)) << text;
        ASSERT_LE(range->low, range->high) << text;
        ASSERT_TRUE(hasUnit(kind, text)) << text;
    }
    EXPECT_GT(read, 100); // the loop does meet texts that are quantities
}

TEST(Parse, RandomBytesNeverCrash) {
    constexpr unsigned kSeed = 77;
    std::mt19937 random(kSeed);
    for (int round = 0; round < 50000; ++round) {
        std::string text;
        for (int i = static_cast<int>(random() % 20); i > 0; --i)
            text += static_cast<char>(random() % 256);
        const auto range = parseRangeBase(static_cast<Kind>(random() % 8), text);
        if (range.ok()) {
            ASSERT_LE(range->low, range->high);
        }
    }
}

} // namespace
