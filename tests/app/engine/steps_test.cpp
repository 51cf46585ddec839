#include "app/engine/advice.h"

#include "app/engine/check.h"
#include "app/engine/words.h"
#include "core/units/format.h"
#include "tests/support/jobs.h"
#include "tests/support/quick_check.h"

#include <cctype>
#include <filesystem>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::jobOf;
using pw::testing::quickCheck;
using pw::testing::sampleTree;
using units::show;

namespace {

std::string joined(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines)
        text += line + "\n";
    return text;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

/// By hand, sample six_pin: thread M20, 2.5 mm: 24 mm deep is 9.6 turns, 3 mm of squeeze 1.2 turns, told in
/// quarters. The softest spring end 630 N / 51 N/mm = 12.35 mm to free, and 3 mm: 15.35 mm, 6.14 turns.
/// Thread left: 125 - (30 - 3
/// + 15.35 + 12 + 6 + 18) = 46.65 mm.
TEST(Steps, OfASqueezeCarryTheJobsOwnNumbers) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_six_pin"));
    const std::string text = joined(report.steps);
    const auto mm = [](double v) { return show(units::Length::fromMm(v), units::System::Metric); };
    for (const std::string& part :
         {std::string("6 stations"), mm(24) + " deep, 9.5 turns", mm(3) + " shorter, 1.25 turns",
          mm(630 / 51.0 + 3) + ", 6.25 turns back", mm(125 - 63 - 15.353) + " of thread is then left",
          std::string("1, 4, 2, 5, 3, 6")})
        EXPECT_TRUE(has(text, part)) << part << "\n" << text;
    EXPECT_TRUE(has(text, show(*report.screw.stopTorque, report.preferred))) << text;
    EXPECT_TRUE(has(text, show(*report.screw.torqueRange, report.preferred))) << text;
}

TEST(Steps, OfAPullNeverGoPastTheRamsValveOrCapacity) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_ram_pulley");
    for (const auto& [field, value, most] :
         {std::tuple{"ram.max_pressure", "500 bar", 500.0}, std::tuple{"ram.max_pressure", "300 bar", 300.0},
          std::tuple{"ram.capacity", "6 t", 6 * 9806.65 / 160}}) { // bar, on 1600 mm2
        tree.set(field, value);
        const std::string text = units::plainBlanks(joined(quickCheck(tree).steps));
        const std::size_t unit = text.find(" bar on the ram's gauge");
        ASSERT_NE(unit, std::string::npos) << text;
        EXPECT_LE(std::stod(text.substr(text.rfind(' ', unit - 1) + 1)), most + 1e-9) << text;
    }
}

TEST(Steps, OfAPullNameBoltsDialAndHeat) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_pull_ram_pulley"));
    const std::string text = joined(report.steps);
    for (const std::string& part :
         {std::string("4 x M16"), std::string("Stand the ram square"),
          show(*report.proof.readingAt, report.preferred) + " off the middle",
          show(*report.hub.heatToFree, report.preferred), std::string("let the load off")})
        EXPECT_TRUE(has(text, part)) << part << "\n" << text;
    EXPECT_FALSE(has(text, "Oil the screw")) << "there is none";
    EXPECT_TRUE(has(joined(report.cautions), "Never stand behind"));
}

TEST(Steps, WithoutARamSayStopTorqueAndRatedLoad) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_pull_two_bolt"));
    const std::string text = joined(report.steps);
    EXPECT_TRUE(has(text, "Stop at " + show(*report.screw.stopTorque, report.preferred))) << text;
    EXPECT_TRUE(has(text, show(*report.screw.ratedLoad, report.preferred))) << text;
    EXPECT_FALSE(has(text, "ram")) << text;
    EXPECT_FALSE(has(joined(report.cautions), "Hoses"));
}

/// A quarter of the load on the dial is a quarter of the load.
TEST(Steps, TheDialOfAPullIsThatOfTheGauge) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_pull_two_bolt"));
    EXPECT_TRUE(has(joined(report.steps), show(report.gauge.front().load, report.preferred)));
    EXPECT_NEAR(report.gauge.front().load / report.load.total->high, 0.25, 1e-9);
}

TEST(Cautions, APackIsNotHeatedWithItsSprings) {
    jobfile::Tree tree = sampleTree("mill_lane_six_pin");
    EXPECT_FALSE(has(joined(quickCheck(tree).cautions), "DO NOT HEAT"));
    EXPECT_TRUE(has(joined(quickCheck(tree).cautions), "Do not heat springs"));
    tree.set("heat.part", "150 C");
    EXPECT_TRUE(has(joined(quickCheck(tree).cautions), "DO NOT HEAT A PACK WITH ITS SPRINGS IN PLACE"));
    tree = sampleTree("mill_lane_pull_ram_pulley");
    tree.set("heat.part", "150 C");
    EXPECT_TRUE(has(joined(quickCheck(tree).cautions), "hot ram"));
}

TEST(Cautions, HammeringIsWarnedOfWhereItIsMeant) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_two_bolt");
    EXPECT_FALSE(has(joined(quickCheck(tree).cautions), "blow"));
    tree.set("screw.hammering", true);
    EXPECT_TRUE(has(joined(quickCheck(tree).cautions), "A blow on a loaded tool"));
}

TEST(Words, LeaveNothingUnsaidOrUnfinished) {
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (!entry.path().string().ends_with(".plate.json"))
            continue;
        const job::Job job = jobOf(*jobfile::loadTree(entry.path()));
        const std::string words = engine::toWords(job, engine::check(job));
        for (const char* leftover : {"not checked", "nan", "inf ", " -0 ", "%1", "TODO", "..", " ,", "  ."})
            EXPECT_FALSE(has(words, leftover)) << entry.path() << ": " << leftover;
        // A step's number and its words stand apart: "10. Oil", never "10.Oil".
        for (std::size_t dot = words.find('.'); dot != std::string::npos && dot + 1 < words.size();
             dot = words.find('.', dot + 1)) {
            const std::size_t line = words.rfind('\n', dot) + 1;
            const std::string before = words.substr(line, dot - line);
            const bool isNumber = before.find_first_of("0123456789") != std::string::npos &&
                                  before.find_first_not_of(" 0123456789") == std::string::npos;
            EXPECT_FALSE(isNumber && std::isupper(static_cast<unsigned char>(words[dot + 1])))
                << entry.path();
        }
    }
}
