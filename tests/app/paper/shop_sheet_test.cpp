#include "app/paper/plan_drawing.h"

#include "app/engine/check.h"
#include "app/paper/write_paper.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/app/paper/rendered.h"
#include "tests/support/hostile_texts.h"

#include <gtest/gtest.h>

using namespace pw;
using namespace pw::paper;
namespace fs = std::filesystem;

namespace {

job::Job sample(const std::string& name) {
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json");
    return jobfile::readJob(*tree).job;
}

engine::Report checked(const job::Job& job) {
    engine::CheckOptions options;
    options.mend = options.spread = false;
    return engine::check(job, options);
}

struct Printed {
    std::string words;
    int pages = 0;
};

/// All words of the sheet, without line ends and runs of blanks; fails where ink comes near the paper's edge.
Printed printed(const job::Job& job, const engine::Report& report, PaperSize size) {
    const pw::testing::FileForTest file(".pdf", "");
    PaperChoices choices;
    choices.size = size;
    choices.anyway = true;
    choices.date = "14 March 2026";
    const auto written = writeShopSheet(job, report, file.path(), choices);
    EXPECT_TRUE(written) << util::toText(written.problem());
    Printed all;
    const std::string info = pw::testing::run("pdfinfo '" + file.path() + "'").output;
    all.pages = std::stoi(info.substr(info.find("Pages:") + 6));
    for (const char c : pw::testing::run("pdftotext -raw '" + file.path() + "' -").output)
        if (const char plain = c == '\n' || c == '\f' ? ' ' : c; plain != ' ' || !all.words.ends_with(' '))
            all.words += plain;
    all.words = units::plainBlanks(all.words);
    for (int number = 1; number <= all.pages; ++number) {
        const pw::testing::RenderedPage page(file.path(), number);
        const double w = page.width() / 10.0, h = page.height() / 10.0;
        EXPECT_EQ(page.inkIn(0, 0, 8, h), 0) << number;
        EXPECT_EQ(page.inkIn(w - 8, 0, w, h), 0) << number;
        EXPECT_EQ(page.inkIn(0, 0, w, 8), 0) << number;
        EXPECT_EQ(page.inkIn(0, h - 7, w, h), 0) << number;
    }
    return all;
}

bool has(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST(ShopSheet, IsDrawnAtAScaleOfTheTrade) {
    const shape::Box disc{{-80, -80}, {80, 80}};
    EXPECT_EQ(scaleFor(disc, 160, 160, units::System::Metric), 1);
    EXPECT_EQ(scaleFor(disc, 159, 200, units::System::Metric), 2);
    EXPECT_EQ(scaleFor(disc, 70, 70, units::System::Metric), 2.5);
    EXPECT_EQ(scaleFor(disc, 60, 60, units::System::Metric), 5);
    EXPECT_EQ(scaleFor(disc, 60, 60, units::System::Inch), 4);
}

TEST(ShopSheet, SaysEverythingTheBenchNeeds) {
    const job::Job job = sample("mill_lane_six_pin");
    const engine::Report report = checked(job);
    const std::string words = printed(job, report, PaperSize::A4).words;
    // Six holes on a circle of 110 in a disc of 160: hole 2 at 80 + 55 cos 60 = 107.5 and 80 + 55 sin 60 =
    // 127.63; chords 55 and 110 sin 60 = 95.26.
    for (const char* part : {"holds",
                             "Stamp this on the plate",
                             "135.0",
                             "107.5",
                             "127.6",
                             "95.3",
                             "6 × Ø24",
                             "Ø160",
                             "Ø110",
                             "A–A",
                             "12 thick",
                             "burn 24 mm",
                             "To squeeze",
                             "To let up",
                             "Keepers out",
                             "can kill",
                             "Log of uses",
                             "14 March 2026",
                             "Drawn 1:2",
                             "The plate as a gauge",
                             "Turns and torque",
                             "Thread in hand",
                             "Prove it once",
                             "Taken for granted",
                             "Platewright",
                             "page 1 of 2"})
        EXPECT_TRUE(has(words, part)) << part << "\n" << words;
    for (const verdict::Check& check : report.checks)
        EXPECT_TRUE(has(words, check.title)) << check.title;
    for (const auto& list : {report.steps, report.cautions, report.assumptions})
        for (const std::string& line : list)
            EXPECT_TRUE(has(words, units::plainBlanks(line).substr(0, 20))) << line;
    EXPECT_FALSE(has(words, "DO NOT USE"));
}

TEST(ShopSheet, EverySampleStaysOnItsPaper) {
    for (const char* name : {"mill_lane_eight_pin_inch", "mill_lane_pull_ram_pulley", "mill_lane_two_pin_bar",
                             "mill_lane_three_pin_polygon"}) {
        SCOPED_TRACE(name);
        const job::Job job = sample(name);
        EXPECT_LE(printed(job, checked(job), PaperSize::Letter).pages, 3);
    }
}

TEST(ShopSheet, ManyHolesAreListedInColumnsBelow) {
    job::Job job = sample("mill_lane_six_pin");
    job.stations.count = 40;
    job.stations.circle = units::Length::fromMm(600);
    job.plate.outline->diameter = units::Length::fromMm(700);
    engine::CheckOptions options;
    options.bend = options.mend = options.spread = false;
    const Printed all = printed(job, engine::check(job, options), PaperSize::A4);
    EXPECT_TRUE(has(all.words, " 40 ")) << all.words;
}

TEST(ShopSheet, AVerdictThatMayNotBeMadeIsMarked) {
    const job::Job job = sample("mill_lane_six_pin_thin");
    const std::string words = printed(job, checked(job), PaperSize::A4).words;
    EXPECT_TRUE(has(words, "Nothing to stamp: do not use")) << words;
    EXPECT_FALSE(has(words, "Stamp this"));
    EXPECT_TRUE(has(words, "USE: SETS")) << words;
    const fs::path file = fs::temp_directory_path() / "pw_shop_sheet_not_written.pdf";
    EXPECT_FALSE(writeShopSheet(job, checked(job), file, {}));
    EXPECT_FALSE(fs::exists(file));
}

TEST(ShopSheet, AnyTitleStaysOnTheSheet) {
    job::Job job = sample("mill_lane_six_pin");
    const engine::Report report = checked(job);
    job.title = std::string(400, 'W') + " \xE2\x80\xAE \xFF";
    job.plate.steel->name = job.title;
    EXPECT_TRUE(has(printed(job, report, PaperSize::A4).words, "WWWW"));
}
