#include "core/hub/heat.h"

#include "core/material/hot.h"
#include "tests/support/chance.h"
#include "tests/support/csv.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace pw::hub;
using pw::material::Metal;
using pw::units::System;

namespace {

Temperature celsius(double value) {
    return Temperature::fromCelsius(value);
}

bool speaksOf(const std::vector<HeatEffect>& advice, std::string_view on) {
    return std::ranges::find(advice, on, &HeatEffect::on) != advice.end();
}

// tests/reference/press_fits.csv, PF-dT: d 50 mm, interference and clearance 0.10 mm, 12e-6.
TEST(Heat, OpensAFitAtTheTextbooksDifference) {
    int rows = 0;
    for (const auto& row : pw::testing::readCsv(PW_REFERENCE "/press_fits.csv")) {
        if (row.at("id") != "PF-dT")
            continue;
        const double kelvin =
            kelvinToOpen(Length::fromMm(0.06), Length::fromMm(0.04), Length::fromMm(50), 12e-6);
        EXPECT_NEAR(kelvin, std::stod(row.at("recomputed")), 1e-4); // printed to seven figures
        EXPECT_NEAR(temperatureToOpen(Length::fromMm(0.06), Length::fromMm(0.04), Length::fromMm(50), 12e-6)
                        .celsius(),
                    20 + kelvin, 1e-9);
        ++rows;
    }
    EXPECT_EQ(rows, 1);
}

TEST(Heat, LeavesNothingAtTheTemperatureThatOpens) {
    pw::testing::Chance chance(20240615);
    for (int i = 0; i < 200; ++i) {
        const Length d = Length::fromMm(chance.between(5, 300)), delta = d * chance.between(1e-4, 2e-3);
        const double hub = chance.between(9e-6, 25e-6), shaft = chance.between(9e-6, 25e-6);
        const Temperature opens = temperatureToOpen(delta, Length(), d, hub);
        EXPECT_NEAR(interferenceAt(delta, d, hub, opens, shaft, kRoom).mm(), 0, 1e-12) << i;
        EXPECT_GT(interferenceAt(delta, d, hub, opens - celsius(1), shaft, kRoom).mm(), 0) << i;
        const auto together = temperatureToOpenTogether(delta, Length(), d, hub, shaft);
        ASSERT_EQ(together.has_value(), hub > shaft) << i;
        if (together) {
            EXPECT_NEAR(interferenceAt(delta, d, hub, *together, shaft, *together).mm(), 0, 1e-10) << i;
            EXPECT_GT(*together, opens) << i;
        }
    }
}

TEST(Heat, OfBothPartsAlikeChangesNothing) {
    const Length delta = Length::fromMm(0.05), d = Length::fromMm(60);
    EXPECT_NEAR(interferenceAt(delta, d, 12e-6, celsius(300), 12e-6, celsius(300)).mm(), 0.05, 1e-15);
    EXPECT_FALSE(temperatureToOpenTogether(delta, Length(), d, 12e-6, 12e-6));
    // A brass shaft in an iron hub gets tighter.
    EXPECT_GT(interferenceAt(delta, d, 10.5e-6, celsius(200), 18e-6, celsius(200)), delta);
}

TEST(HeatAdvice, SaysWhatWasReachedAndNoMore) {
    EXPECT_TRUE(heatAdvice(celsius(20), Metal::Steel, System::Metric).empty());
    const auto warm = heatAdvice(celsius(155), Metal::GreyIron, System::Metric);
    EXPECT_TRUE(speaksOf(warm, "grease"));
    EXPECT_TRUE(speaksOf(warm, "spring"));
    EXPECT_TRUE(speaksOf(warm, "grey iron"));
    EXPECT_FALSE(speaksOf(warm, "steel"));
    EXPECT_FALSE(speaksOf(warm, "aluminium"));
    EXPECT_FALSE(speaksOf(warm, "oil"));
    EXPECT_TRUE(speaksOf(heatAdvice(celsius(200), Metal::Aluminium, System::Metric), "oil"));
    EXPECT_TRUE(std::ranges::is_sorted(warm, {}, &HeatEffect::from));
}

TEST(HeatAdvice, SpeaksInTheUnitsOfWhoReadsIt) {
    for (const System system : {System::Metric, System::Inch})
        for (const HeatEffect& effect : heatAdvice(celsius(1000), Metal::Steel, system)) {
            EXPECT_EQ(effect.says.find('{'), std::string::npos) << effect.says;
            if (effect.on == "bolt") {
                // 200 C is 392 F.
                const bool fahrenheit = effect.says.find("392") != std::string::npos;
                EXPECT_EQ(fahrenheit, system == System::Inch) << effect.says;
            }
        }
}

TEST(HeatAdvice, NamesTheSourceOfEveryLine) {
    ASSERT_GE(heatEffects().size(), 12u);
    for (const HeatEffect& effect : heatEffects()) {
        EXPECT_FALSE(effect.source.empty()) << effect.on;
        EXPECT_TRUE(effect.says.ends_with(".")) << effect.says;
    }
}

// The shares that the sentences speak of are those of the tables.
TEST(HeatAdvice, QuotesTheTablesRightly) {
    using namespace pw::material;
    const auto says = [](std::string_view on, double from) {
        for (const HeatEffect& effect : heatEffects())
            if (effect.on == on && effect.from == celsius(from))
                return effect.says;
        return std::string();
    };
    const auto quoted = [](double factor) {
        char text[16];
        std::snprintf(text, sizeof text, "%.2f", factor);
        return std::string(text);
    };
    for (const double t : {200.0, 300.0, 500.0})
        EXPECT_NE(says("steel", 100).find(quoted(hotFactors(celsius(t)).kp)), std::string::npos) << t;
    for (const double t : {500.0, 600.0, 700.0})
        EXPECT_NE(says("steel", 400).find(quoted(hotFactors(celsius(t)).ky)), std::string::npos) << t;
    EXPECT_NE(says("bolt", 100).find(quoted(hotBoltFactor(celsius(600)))), std::string::npos);
}

} // namespace
