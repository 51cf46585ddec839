#include "app/paper/write_paper.h"

#include "app/engine/check.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/app/paper/rendered.h"
#include "tests/support/comma_desktop.h"
#include "tests/support/hostile_texts.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using namespace pw::paper;
using pw::testing::RenderedPage;
namespace fs = std::filesystem;

namespace {

/// A rule is read to a tenth of a millimetre: what the ruler on paper may be off.
constexpr double kRulerTolerance = 0.1;
/// Two dots of the drawn page.
constexpr double kPlaceTolerance = 0.2;

job::Job sample(const std::string& name) {
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json");
    return jobfile::readJob(*tree).job;
}

/// The six-pin sample with another rim and circle, checked quickly.
job::Job largePlate(double rim, double circle) {
    job::Job job = sample("mill_lane_six_pin");
    job.plate.outline->diameter = units::Length::fromMm(rim);
    job.stations.circle = units::Length::fromMm(circle);
    return job;
}

engine::Report checked(const job::Job& job) {
    engine::CheckOptions options;
    options.bend = options.mend = options.spread = false;
    engine::Report report = engine::check(job, options);
    return report;
}

/// A template in a file that goes away again.
class Template {
public:
    explicit Template(const job::Job& job, PaperSize size = PaperSize::A4,
                      std::optional<verdict::Grade> grade = verdict::Grade::Holds)
        : m_file(".pdf", "") {
        engine::Report report = checked(job);
        if (grade)
            report.grade = *grade;
        PaperChoices choices;
        choices.size = size;
        choices.anyway = true;
        choices.date = "14 March 2026";
        const auto written = writeTemplate(job, report, path(), choices);
        if (!written)
            throw std::runtime_error(util::toText(written.problem()));
        sentences = *written;
    }
    std::string path() const { return m_file.path(); }
    std::string info() const { return pw::testing::run("pdfinfo '" + path() + "' 2>&1").output; }
    std::string words(int page) const {
        const std::string n = std::to_string(page);
        return pw::testing::run("pdftotext -layout -f " + n + " -l " + n + " '" + path() + "' - 2>&1").output;
    }
    int pages() const {
        const std::string text = info();
        return std::stoi(text.substr(text.find("Pages:") + 6));
    }
    std::vector<std::string> sentences;

private:
    pw::testing::FileForTest m_file;
};

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

/// The ruler stands at 10 mm from the left, its line 23.5 mm from the top; long ticks reach 5 mm down and the
/// short ones half of that, inches 2.5 mm up.
void expectTrueRuler(const RenderedPage& page) {
    const auto tens = page.across(27.5, 9, 115);
    ASSERT_EQ(tens.size(), 11u);
    EXPECT_NEAR(tens.back() - tens.front(), 100, kRulerTolerance);
    for (std::size_t i = 1; i < tens.size(); ++i)
        EXPECT_NEAR(tens[i] - tens[i - 1], 10, kRulerTolerance);
    const auto inches = page.across(21.5, 9, 115);
    ASSERT_EQ(inches.size(), 5u);
    EXPECT_NEAR(inches.back() - inches.front(), 4 * 25.4, kRulerTolerance);
}

} // namespace

TEST(PaperTemplate, RulerAndPlateAreFullSizeOnThePage) {
    const Template written(largePlate(160, 110));
    ASSERT_EQ(written.pages(), 1);
    const RenderedPage page(written.path(), 1);
    EXPECT_NEAR(page.width(), 2100, 4); // PDF's own size of A4 is in whole points
    EXPECT_NEAR(page.height(), 2970, 4);
    expectTrueRuler(page);
    // A disc of 160 in the middle of the window: its rim 80 mm to either hand of the axis, along a level line
    // 70 mm above the bore at sqrt(80^2 - 70^2) = 38.73.
    const double x = 105, y = 37 + 220.0 / 2;
    const auto chord = page.across(y - 70, 20, 190);
    const double half = std::sqrt(80.0 * 80 - 70 * 70);
    ASSERT_GE(chord.size(), 2u);
    EXPECT_NEAR(chord.front(), x - half, kPlaceTolerance);
    EXPECT_NEAR(chord.back(), x + half, kPlaceTolerance);
}

TEST(PaperTemplate, HolesAreWhereTheyShouldBeAndAsLarge) {
    const Template written(largePlate(160, 110));
    const RenderedPage page(written.path(), 1);
    for (int i = 0; i < 6; ++i) {
        // Six on a circle of 110, the first along x, 24 mm wide; page y runs down.
        const double angle = i * std::numbers::pi / 3;
        const double x = 105 + 55 * std::cos(angle), y = 147 - 55 * std::sin(angle);
        SCOPED_TRACE(i + 1);
        EXPECT_GT(page.inkIn(x - 0.1, y - 0.1, x + 0.1, y + 0.1), 2) << "the dot of the centre mark";
        // Clear paper round the dot, where the punch stands.
        EXPECT_EQ(page.inkIn(x + 0.35, y + 0.35, x + 0.5, y + 0.5), 0);
        // Off the centre mark and the circle, a level chord of the hole 9 mm above its middle: 12 mm radius.
        const double half = std::sqrt(12.0 * 12 - 9 * 9);
        const auto chord = page.across(y - 9, x - half - 0.4, x + half + 0.6);
        ASSERT_GE(chord.size(), 2u);
        EXPECT_NEAR(chord.front(), x - half, kPlaceTolerance);
        EXPECT_NEAR(chord.back(), x + half, kPlaceTolerance);
    }
}

TEST(PaperTemplate, SaysWhatItIsAndHowToTryIt) {
    const Template written(largePlate(160, 110));
    const std::string words = written.words(1);
    for (const char* part :
         {"Measure this first", "Hang it on the pins before you cut", "No-go", "12 mm thick", "unknown scrap",
          "14 March 2026", "Clutch plate for the bank winch", "burn 24 mm", "bore", "Full size", "55 mm"})
        EXPECT_TRUE(has(words, part)) << part << "\n" << words;
    EXPECT_FALSE(has(words, "DO NOT USE"));
}

TEST(PaperTemplate, ALargePlateTakesAsManySheetsAsTheTilingSays) {
    // Rim 600 and 4 mm beyond it each side; A4 shows 190 x 220, Letter 195.9 x 202.4, overlap 10.
    const auto count = [](double window) { return static_cast<int>(std::ceil((608 - 10) / (window - 10))); };
    for (const auto& [size, wide, high] :
         {std::tuple(PaperSize::A4, 190.0, 220.0), std::tuple(PaperSize::Letter, 195.9, 202.4)}) {
        const Template written(largePlate(600, 420), size);
        EXPECT_EQ(written.pages(), count(wide) * count(high));
        for (const int number : {1, written.pages()}) {
            const RenderedPage page(written.path(), number);
            expectTrueRuler(page);
            EXPECT_TRUE(has(written.words(number), "sheet " + std::to_string(number) + " of "));
        }
        EXPECT_TRUE(has(written.words(1), "row 1 of " + std::to_string(count(high)) + ", column 1 of"));
        EXPECT_TRUE(has(written.words(1), "sheet 2 lies on here"));
    }
}

TEST(PaperTemplate, NothingIsDrawnWhereNoPrinterReaches) {
    for (const double rim : {160.0, 600.0}) {
        const Template written(largePlate(rim, 110), PaperSize::A4, verdict::Grade::Breaks);
        for (int number = 1; number <= written.pages(); ++number) {
            const RenderedPage page(written.path(), number);
            // "cut here" stands in the border, as it is cut away; 5 mm is what printers keep (common
            // practice).
            const double w = page.width() / 10.0, h = page.height() / 10.0;
            EXPECT_EQ(page.inkIn(0, 0, 5, h), 0) << number;
            EXPECT_EQ(page.inkIn(w - 5, 0, w, h), 0) << number;
            EXPECT_EQ(page.inkIn(0, 0, w, 5), 0) << number;
            EXPECT_EQ(page.inkIn(0, h - 5, w, h), 0) << number;
        }
    }
}

TEST(PaperTemplate, AVerdictThatMayNotBeMadeIsMarkedAcrossEverySheetOrNotWritten) {
    const job::Job job = largePlate(300, 110);
    const Template written(job, PaperSize::A4, verdict::Grade::Breaks);
    const Template sound(job);
    ASSERT_GT(written.pages(), 1);
    for (int number = 1; number <= written.pages(); ++number) {
        const std::string words = written.words(number);
        EXPECT_TRUE(has(words, "DO NOT USE: BREAKS - ")) << "at the foot\n" << words;
        // Words across the face are pale and large, within the drawing's window: 18 mm high type.
        const RenderedPage marked(written.path(), number), plain(sound.path(), number);
        EXPECT_GT(marked.inkIn(10, 37, 200, 257), plain.inkIn(10, 37, 200, 257) + 5000) << number;
    }
    engine::Report report = checked(job);
    report.grade = verdict::Grade::Breaks;
    const fs::path file = fs::temp_directory_path() / "pw_paper_not_written.pdf";
    fs::remove(file);
    EXPECT_FALSE(writeTemplate(job, report, file, {}));
    EXPECT_FALSE(fs::exists(file));
}

TEST(PaperTemplate, AnyTitleLeavesAWholePageInItsPlace) {
    for (const std::string& title : pw::testing::hostileTexts()) {
        job::Job job = largePlate(160, 110);
        job.title = title;
        const Template written(job);
        SCOPED_TRACE(title);
        EXPECT_EQ(written.pages(), 1);
        EXPECT_FALSE(has(written.info(), "Error")) << written.info();
        const RenderedPage page(written.path(), 1);
        EXPECT_EQ(page.inkIn(page.width() / 10.0 - 9.5, 0, page.width() / 10.0, page.height() / 10.0), 0);
        EXPECT_TRUE(has(written.words(1), "Hang it on the pins"));
    }
}

TEST(PaperTemplate, ADesktopWithADecimalCommaChangesNothing) {
    const pw::testing::CommaDesktop comma;
    job::Job job = sample("mill_lane_three_pin_polygon");
    const Template written(job, PaperSize::Letter);
    expectTrueRuler(RenderedPage(written.path(), 1));
    const std::string words = written.words(1);
    EXPECT_TRUE(has(words, "drill 7/8 in")) << words;
    EXPECT_TRUE(has(words, "1/2 in thick")) << words;
}

TEST(PaperTemplate, WhatTakesTooManySheetsIsRefused) {
    const job::Job job = largePlate(5000, 110);
    engine::Report report = checked(job);
    report.grade = verdict::Grade::Holds;
    const fs::path file = fs::temp_directory_path() / "pw_paper_too_large.pdf";
    const auto written = writeTemplate(job, report, file, {});
    ASSERT_FALSE(written);
    EXPECT_EQ(written.problem().field, "plate.outline");
    EXPECT_FALSE(fs::exists(file));
}

TEST(PaperTemplate, EverySampleIsDrawn) {
    int drawn = 0;
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES)) {
        const std::string name = entry.path().filename().string();
        const std::size_t ending = name.find(".plate.json");
        if (ending == std::string::npos)
            continue;
        SCOPED_TRACE(name);
        const Template written(sample(name.substr(0, ending)));
        EXPECT_GE(written.pages(), 1);
        ++drawn;
    }
    EXPECT_GE(drawn, 10);
}
