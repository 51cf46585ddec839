#include "geometry/solid/plate_solid.h"

#include "core/util/require.h"
#include "tests/support/comma_desktop.h"
#include "tests/support/hostile_texts.h"
#include "tests/support/plates.h"
#include "tests/support/run.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <map>
#include <sstream>
#include <thread>

namespace pw::solid {
namespace {

using units::Length;

/// What the outside reader prints: values by key, in the order of the file.
using Facts = std::map<std::string, std::vector<std::string>>;

Facts readBack(const std::string& step) {
    const testing::FileForTest file(".step", step);
    const testing::Ran ran = testing::run("'" PW_STEP_CHECK "' '" + file.path() + "'");
    EXPECT_EQ(ran.status, 0);
    Facts facts;
    std::istringstream lines(ran.output);
    for (std::string line; std::getline(lines, line);)
        facts[line.substr(0, line.find(' '))].push_back(line.substr(line.find(' ') + 1));
    return facts;
}

std::string stepOf(const testing::KnownPlate& plate, const StepOptions& options = {}) {
    const auto step = toStep(plate.region, Length::fromMm(plate.thickness), options);
    EXPECT_TRUE(step.ok()) << (step.ok() ? "" : toText(step.problem()));
    return step.ok() ? *step : std::string();
}

std::vector<double> numbers(const std::string& text) {
    std::istringstream in(text);
    std::vector<double> all;
    for (double each = 0; in >> each;)
        all.push_back(each);
    return all;
}

class StepInUnits : public ::testing::TestWithParam<units::System> {};

TEST_P(StepInUnits, TheSolidHasTheVolumeFacesAndSizeOfThePlate) {
    StepOptions options;
    options.units = GetParam();
    for (const testing::KnownPlate& plate : testing::knownPlates()) {
        SCOPED_TRACE(plate.name);
        Facts facts = readBack(stepOf(plate, options));
        EXPECT_EQ(facts["solid"].size(), 1u);
        EXPECT_EQ(facts["sound"], std::vector<std::string>{"1"});
        ASSERT_EQ(facts["volume"].size(), 1u);
        const double volume = plate.area * plate.thickness;
        EXPECT_NEAR(numbers(facts["volume"][0]).at(0), volume, 1e-6 * volume); // asked for by the design
        EXPECT_EQ(facts["cylinder"].size(), static_cast<std::size_t>(plate.cylinders));
        EXPECT_EQ(facts["plane"].size(), static_cast<std::size_t>(plate.planes));
        EXPECT_TRUE(facts["other"].empty());
        const std::vector<double> box = numbers(facts["box"].at(0));
        const std::vector<double> wanted = {plate.box.low.x,  plate.box.low.y,  0,
                                            plate.box.high.x, plate.box.high.y, plate.thickness};
        ASSERT_EQ(box.size(), wanted.size());
        for (std::size_t i = 0; i < box.size(); ++i)
            EXPECT_NEAR(box[i], wanted[i],
                        1e-5); // the reader's box is loose by its tolerance of 1e-7 and more
    }
}

TEST_P(StepInUnits, TheFileStatesItsUnit) {
    StepOptions options;
    options.units = GetParam();
    Facts facts = readBack(stepOf(testing::ringOfSix(), options));
    ASSERT_EQ(facts["unit"].size(), 1u);
    EXPECT_EQ(facts["unit"][0], GetParam() == units::System::Inch ? "INCH" : "millimetre");
}

INSTANTIATE_TEST_SUITE_P(Units, StepInUnits, ::testing::Values(units::System::Metric, units::System::Inch));

TEST(Step, AHoleIsACylinderWhereItBelongs) {
    Facts facts = readBack(stepOf(testing::ringOfSix()));
    for (const shape::Hole& hole : testing::ringOfSix().region.holes) {
        const auto circle = asCircle(hole.loop);
        if (!circle)
            continue;
        const auto same = [&](const std::string& text) {
            const std::vector<double> found = numbers(text);
            return std::abs(found.at(0) - circle->centre.x) < 1e-7 &&
                   std::abs(found.at(1) - circle->centre.y) < 1e-7 &&
                   std::abs(found.at(2) - circle->radius) < 1e-7;
        };
        EXPECT_EQ(std::count_if(facts["cylinder"].begin(), facts["cylinder"].end(), same), 1)
            << circle->centre.x << " " << circle->centre.y;
    }
}

TEST(Step, CarriesTheProductsNameAndColour) {
    StepOptions options;
    options.product = "Bench plate 7";
    options.colour = {0.25, 0.5, 0.75};
    Facts facts = readBack(stepOf(testing::ringOfSix(), options));
    EXPECT_EQ(facts["name"], std::vector<std::string>{"Bench plate 7"});
    ASSERT_EQ(facts["colour"].size(), 1u);
    const std::vector<double> colour = numbers(facts["colour"][0]);
    EXPECT_NEAR(colour.at(0), 0.25, 1e-3); // single precision, through two conversions
    EXPECT_NEAR(colour.at(1), 0.5, 1e-3);
    EXPECT_NEAR(colour.at(2), 0.75, 1e-3);
}

TEST(Step, APlateWithoutANameIsCalledPlate) {
    Facts facts = readBack(stepOf(testing::ringOfSix()));
    EXPECT_EQ(facts["name"], std::vector<std::string>{"Plate"});
}

TEST(Step, SpellsNamesAsTheStandardWants) {
    StepOptions options;
    options.product = "It's \\ ½ Ж";
    // ISO 10303-21: quote and backslash doubled; other signs in the \X2\ form.
    EXPECT_NE(
        stepOf(testing::ringOfSix(), options).find("PRODUCT('It''s \\\\ \\X2\\00BD\\X0\\ \\X2\\0416\\X0\\'"),
        std::string::npos);
}

TEST(Step, AnotherProgramReadsTheNameAsItWasTyped) {
    // A quote before a comma or a bracket once ended the string in the reader and lost the solid.
    for (const std::string name : {"It's ½ Ж \\ \"six\"", "the shop's', (mine') 'n'", "''''",
                                   "\\X2\\0041\\X0\\", "'');ENDSEC; /* ' */"}) {
        StepOptions options;
        options.product = name;
        Facts facts = readBack(stepOf(testing::threeQuarterPie(), options));
        EXPECT_EQ(facts["name"], std::vector<std::string>{name});
    }
}

TEST(Step, HostileNamesLeaveASoundFileOfPrintableAscii) {
    const testing::KnownPlate plate = testing::threeQuarterPie();
    for (const std::string& text : testing::hostileTexts()) {
        StepOptions options;
        options.product = text;
        options.description = text;
        const std::string step = stepOf(plate, options);
        EXPECT_TRUE(std::all_of(step.begin(), step.end(), [](char c) {
            return c == '\n' || (c >= ' ' && c <= '~');
        })) << text;
        Facts facts = readBack(step);
        EXPECT_EQ(facts["solid"].size(), 1u) << text;
        ASSERT_EQ(facts["volume"].size(), 1u) << text;
        EXPECT_NEAR(numbers(facts["volume"][0]).at(0), plate.area * plate.thickness, 1e-2);
    }
}

TEST(Step, TheDescriptionStandsInTheHead) {
    StepOptions options;
    options.description = "Does not hold. Do not use.";
    const std::string step = stepOf(testing::ringOfSix(), options);
    EXPECT_NE(step.substr(0, step.find("DATA;")).find("Does not hold. Do not use."), std::string::npos);
}

TEST(Step, TheSamePlateGivesTheSameBytesInAnyThread) {
    const std::string first = stepOf(testing::ringOfSix());
    std::vector<std::string> others(4);
    std::vector<std::thread> threads;
    for (std::size_t i = 0; i < others.size(); ++i)
        threads.emplace_back([&others, i] {
            StepOptions inches;
            inches.units = units::System::Inch;
            (void)toStep(testing::barWithOpenSlots().region, Length::fromMm(5), inches);
            others[i] = *toStep(testing::ringOfSix().region, Length::fromMm(12));
        });
    for (std::thread& thread : threads)
        thread.join();
    for (const std::string& other : others)
        EXPECT_TRUE(other == first);
}

TEST(Step, ReadsTheSameOnADesktopWithADecimalComma) {
    const std::string before = stepOf(testing::barWithOpenSlots());
    const testing::CommaDesktop comma;
    EXPECT_TRUE(stepOf(testing::barWithOpenSlots()) == before);
}

TEST(Step, SaysNothingOnStandardOutput) {
    ::testing::internal::CaptureStdout();
    (void)stepOf(testing::ringOfSix());
    EXPECT_EQ(::testing::internal::GetCapturedStdout(), "");
}

TEST(Step, AnArcAsFlatAsALineIsALine) {
    testing::KnownPlate plate{"nearly square", {}, 10, 400, 0, 6, {}};
    plate.region.rim = shape::rectangleLoop(20, 20);
    plate.region.rim.vertices[0].bulge = 1e-12;
    Facts facts = readBack(stepOf(plate));
    EXPECT_EQ(facts["plane"].size(), 6u);
    EXPECT_NEAR(numbers(facts["volume"].at(0)).at(0), 4000, 4e-3);
}

TEST(Step, AShapeThatIsNoSolidIsAProblemNotACrash) {
    shape::Region bowTie;
    bowTie.rim.vertices = {{{0, 0}, 0}, {{20, 20}, 0}, {{20, 0}, 0}, {{0, 20}, 0}};
    const auto step = toStep(bowTie, Length::fromMm(5));
    ASSERT_FALSE(step.ok());
    EXPECT_NE(step.problem().message.find("solid"), std::string::npos);

    shape::Region point;
    point.rim.vertices = {{{0, 0}, 0}, {{0, 0}, 0}, {{0, 0}, 0}};
    EXPECT_FALSE(toStep(point, Length::fromMm(5)).ok());
}

TEST(Step, AThicknessOfZeroIsABugOfTheCaller) {
    EXPECT_THROW((void)toStep(testing::ringOfSix().region, Length::fromMm(0)), util::Bug);
}

} // namespace
} // namespace pw::solid
