#include "core/units/format.h"

#include "core/units/parse.h"
#include "tests/support/other_tongue.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>
#include <random>

using namespace pw::units;

namespace {

std::string metric(auto quantity) {
    return plainBlanks(show(quantity, System::Metric));
}
std::string inch(auto quantity) {
    return plainBlanks(show(quantity, System::Inch));
}

TEST(Format, NumbersKeepTheirFiguresAndNoMore) {
    EXPECT_EQ(number(0), "0");
    EXPECT_EQ(number(-0.0), "0");
    EXPECT_EQ(number(1), "1");
    EXPECT_EQ(number(12.345), "12.3");
    EXPECT_EQ(number(0.00012345), "0.000123");
    EXPECT_EQ(number(999.6), "1000");
    EXPECT_EQ(number(123456), "123000");
    EXPECT_EQ(number(-1.5), "-1.5");
    EXPECT_EQ(number(1234.5678, 6), "1234.57");
    EXPECT_EQ(number(std::numeric_limits<double>::quiet_NaN()), "?");
}

TEST(Format, QuantitiesReadAsPeopleWriteThem) {
    EXPECT_EQ(metric(Length::fromMm(12)), "12 mm");
    EXPECT_EQ(metric(Length::fromMm(12.346)), "12.35 mm");
    EXPECT_EQ(metric(Length::fromMm(0.02346)), "0.0235 mm"); // three figures
    EXPECT_EQ(inch(Length::fromMm(12)), "0.472 in");
    EXPECT_EQ(metric(Force::fromN(7500)), "7.5 kN");
    EXPECT_EQ(metric(Force::fromN(840)), "840 N");
    EXPECT_EQ(metric(Force::fromN(999.8)), "1 kN");
    EXPECT_EQ(inch(Force::fromN(7500)), "1,690 lbf");
    EXPECT_EQ(metric(Rate::fromNPerMm(12)), "12 N/mm");
    EXPECT_EQ(inch(Rate::fromNPerMm(12)), "68.5 lb/in");
    EXPECT_EQ(metric(Torque::fromNm(44)), "44 N\u00b7m");
    EXPECT_EQ(inch(Torque::fromNm(44)), "32.5 lb-ft");
    EXPECT_EQ(metric(Energy::fromJoule(170)), "170 J");
    EXPECT_EQ(inch(Energy::fromJoule(170)), "125 ft-lb");
    EXPECT_EQ(metric(Stress::fromMpa(205)), "205 MPa");
    EXPECT_EQ(metric(Stress::fromMpa(210000)), "210 GPa");
    EXPECT_EQ(inch(Stress::fromMpa(205)), "29.7 ksi");
    EXPECT_EQ(metric(Temperature::fromCelsius(20)), "20 \u00b0C");
    EXPECT_EQ(inch(Temperature::fromCelsius(20)), "68 \u00b0F");
    EXPECT_EQ(metric(Mass::fromKg(0.9)), "0.9 kg");
}

TEST(Format, ABlankBeforeTheUnitDoesNotBreak) {
    EXPECT_EQ(show(Length::fromMm(12), System::Metric), "12\u00a0mm");
}

TEST(Format, RangesNameTheUnitOnce) {
    EXPECT_EQ(metric(Range<Force>{Force::fromN(1150), Force::fromN(1250)}), "1.15 to 1.25 kN");
    EXPECT_EQ(metric(Range<Force>{Force::fromN(900), Force::fromN(1250)}), "900 N to 1.25 kN");
    EXPECT_EQ(metric(Range<Force>::exactly(Force::fromN(840))), "840 N");
}

TEST(Format, InchFractionsAreThoseOnARule) {
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(2.34375))), "2 11/32 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(0.5))), "1/2 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(3))), "3 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(0))), "0 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(-0.75))), "-3/4 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromMm(12))), "0.472 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromMm(12), Length::fromInch(1.0 / 128))), "15/32 in");
    EXPECT_EQ(plainBlanks(inchFraction(Length::fromInch(0.9999))), "1 in");
}

TEST(Format, WhatIsShownReadsBackAsTheSameFigure) {
    constexpr unsigned kSeed = 4;
    std::mt19937 random(kSeed);
    std::uniform_real_distribution<double> exponent(-1, 4);
    for (int i = 0; i < 2000; ++i) {
        const double value = std::pow(10.0, exponent(random));
        for (const System system : {System::Metric, System::Inch}) {
            const auto force = parse<Force>(show(Force::fromN(value), system));
            ASSERT_TRUE(force.ok()) << show(Force::fromN(value), system);
            EXPECT_NEAR(force->newton(), value, value * 0.0051); // three figures
            const auto torque = parse<Torque>(show(Torque::fromNm(value), system));
            ASSERT_TRUE(torque.ok()) << show(Torque::fromNm(value), system);
            EXPECT_NEAR(torque->newtonM(), value, value * 0.0051);
            const auto length = parse<Length>(inchFraction(Length::fromMm(value)));
            ASSERT_TRUE(length.ok()) << inchFraction(Length::fromMm(value));
            EXPECT_NEAR(length->mm(), value, 0.0005 * 25.4 * 1.01); // 0.001 in, or within the half thou
        }
    }
}

TEST(DecimalComma, is_in_what_is_shown_and_never_in_what_is_written) {
    const pw::testing::OtherTongue comma;
    EXPECT_EQ(number(1.25), "1,25");
    EXPECT_EQ(show(Length::fromMm(1.5), System::Metric), "1,5\u00a0mm");
    EXPECT_EQ(show(Force::fromN(7500), System::Metric), "7,5\u00a0kN");
    EXPECT_EQ(show(Force::fromLbf(1690), System::Inch), "1\u00a0690\u00a0lbf");
    EXPECT_EQ(show(Range<Force>{Force::fromN(1150), Force::fromN(1250)}, System::Metric),
              "1,15 to 1,25\u00a0kN");
    EXPECT_EQ(inchFraction(Length::fromInch(0.3)), "0,3\u00a0in");
    EXPECT_EQ(shownText("M10x1.5, 3/4 in. .5"), "M10x1,5, 3/4 in. .5");

    EXPECT_EQ(writtenNumber(1.25), "1.25");
    EXPECT_EQ(written(Length::fromMm(1.5), System::Metric), "1.5\u00a0mm");
    EXPECT_EQ(writtenInchFraction(Length::fromInch(0.3)), "0.3\u00a0in");
}

} // namespace
