#include "app/engine/check.h"
#include "app/paper/paint_paper.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/support/hostile_texts.h"
#include "tests/support/run.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <QImage>
#include <regex>

// Nothing on a shop sheet may lie over anything else, whatever the job. Looked at twice: by the boxes the
// sheet itself reckons with, and by what another program finds in the PDF.

using namespace pw;
using namespace pw::paper;
using shape::Box;

namespace {

constexpr double kKeptClear = 7; ///< mm that no printer reaches into (common practice, no published source)

job::Job sample(const std::string& name) {
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/" + name + ".plate.json");
    return jobfile::readJob(*tree).job;
}

engine::Report checked(const job::Job& job) {
    engine::CheckOptions options;
    options.mend = options.spread = false;
    return engine::check(job, options);
}

/// Stations on a ring in a disc that leaves a hole's width of steel all round.
job::Job ring(int count, double hole, units::System system) {
    job::Job job = sample("mill_lane_six_pin");
    job.preferred = system;
    job.stations.count = count;
    const double circle = std::max(110.0, count * hole * 1.6 / std::numbers::pi);
    job.stations.circle = units::Length::fromMm(circle);
    job.stations.accessHole = units::Length::fromMm(hole);
    job.stations.land = job.stations.retainer = units::Length::fromMm(hole * 1.5);
    job.plate.outline->diameter = units::Length::fromMm(circle + 2.2 * hole + 10);
    job.stations.keeper = units::Length::fromMm(hole * 0.7);
    job.stations.pin = units::Length::fromMm(hole * 0.45);
    return job;
}

struct Case {
    std::string name;
    job::Job job;
    engine::Report report;
    PaperChoices choices;
};

/// The report with its words as long as another language's.
engine::Report lengthened(engine::Report report) {
    const std::string more = " Größtmögliche Öffnungsweite für Übermaßfügung prüfen und überwachen.";
    for (auto* list : {&report.steps, &report.cautions, &report.assumptions, &report.card.notes})
        for (std::string& line : *list)
            line += more;
    for (verdict::Check& check : report.checks)
        check.title += ", Übermaßfügungsprüfung";
    for (engine::GaugeRow& row : report.gauge)
        row.what += ", Bemessungslast der Übermaßfügung";
    return report;
}

std::vector<Case> makeCases() {
    std::vector<Case> all;
    const auto add = [&](const std::string& name, const job::Job& job, const engine::Report& report,
                         PaperSize size, const std::optional<Offcut>& offcut = {}) {
        PaperChoices choices;
        choices.size = size;
        choices.anyway = true;
        choices.date = "14 March 2026";
        choices.file = "job_" + name + ".plate.json";
        choices.offcut = offcut;
        all.push_back({name, job, report, choices});
    };
    for (const int count : {2, 3, 4, 5, 8, 12, 17, 24}) {
        const bool inch = count % 2 == 1;
        const job::Job job =
            ring(count, count > 8 ? 14 : 24, inch ? units::System::Inch : units::System::Metric);
        add("ring " + std::to_string(count), job, checked(job), inch ? PaperSize::Letter : PaperSize::A4);
    }
    for (const char* name : {"mill_lane_eight_pin_inch", "mill_lane_pull_ram_pulley", "mill_lane_two_pin_bar",
                             "mill_lane_three_pin_polygon", "mill_lane_square_four",
                             "mill_lane_pull_jaws_inch", "mill_lane_backing_bar", "mill_lane_six_pin_thin"}) {
        const job::Job job = sample(name);
        const engine::Report report = checked(job);
        add(name, job, report, PaperSize::A4);
        add(std::string(name) + " on Letter, long words", job, lengthened(report), PaperSize::Letter);
    }
    job::Job odd = ring(24, 10, units::System::Inch);
    for (int i = 0; i < 6; ++i) {
        job::ExtraHole hole;
        const shape::Point at = shape::polar(22, 0.3 + i * 1.05);
        hole.at = {units::Length::fromMm(at.x), units::Length::fromMm(at.y)};
        hole.diameter = units::Length::fromMm(4 + 0.7 * i);
        odd.plate.holes.push_back(hole);
    }
    odd.title = "Kupplungsplatte für die Übergabewinde mit sehr langem Namen, gemessen an der Größe";
    odd.plate.steel->name = std::string(90, 'W');
    odd.plate.steel->yield = units::Stress::fromMpa(235);
    odd.plate.steel->ultimate = units::Stress::fromMpa(360);
    engine::CheckOptions quick; // a plate without symmetry takes minutes to fold
    quick.bend = quick.mend = quick.spread = false;
    add("many sizes", odd, engine::check(odd, quick), PaperSize::A4);
    const job::Job six = sample("mill_lane_six_pin");
    Offcut piece{
        "piece B", {{{{0, 0}, 0}, {{230, 0}, 0}, {{215, 190}, 0}, {{0, 170}, 0}}}, {}, {100, 90}, 0.4};
    piece.holes.push_back(shape::circleLoop({205, 20}, 9));
    add("on a piece", six, checked(six), PaperSize::A4, piece);
    return all;
}

const std::vector<Case>& cases() {
    static const std::vector<Case> all = makeCases();
    return all;
}

std::vector<Written> written(const Case& each, int* pages = nullptr) {
    QImage image(320, 320, QImage::Format_Grayscale8);
    QPainter painter(&image);
    std::vector<Written> log;
    const auto painted = paintShopSheet({painter, 1, [] {}, &log}, each.job, each.report, each.choices);
    EXPECT_TRUE(painted) << (painted ? "" : util::toText(painted.problem()));
    if (pages)
        *pages = painted ? *painted : 0;
    return log;
}

bool overlap(const Box& a, const Box& b) {
    constexpr double kTouch = 0.05; // mm
    return a.low.x + kTouch < b.high.x && b.low.x + kTouch < a.high.x && a.low.y + kTouch < b.high.y &&
           b.low.y + kTouch < a.high.y;
}

std::string overlapsIn(const std::vector<Written>& words) {
    std::string found;
    for (std::size_t i = 0; i < words.size(); ++i)
        for (std::size_t k = i + 1; k < words.size(); ++k)
            if (words[i].page == words[k].page && !words[i].across && !words[k].across &&
                overlap(words[i].box, words[k].box))
                found += "page " + std::to_string(words[i].page) + ": \"" + words[i].words.toStdString() +
                         "\" and \"" + words[k].words.toStdString() + "\"\n";
    return found;
}

/// The words another program finds in the PDF, each by the middle of its line's height: a font's line is
/// taller than its letters.
std::vector<Written> foundIn(const std::string& pdf, Sheet* sheet = nullptr) {
    const std::string text = pw::testing::run("pdftotext -bbox '" + pdf + "' -").output;
    static const std::regex word("<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" "
                                 "yMax=\"([-0-9.]+)\">([^<]*)</word>|"
                                 "<page width=\"([0-9.]+)\" height=\"([0-9.]+)\">");
    constexpr double kMmPerPoint = 25.4 / 72;
    std::vector<Written> words;
    int page = 0;
    for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at) {
        if ((*at)[6].matched) {
            ++page;
            if (sheet)
                *sheet = {std::stod((*at)[6]) * kMmPerPoint, std::stod((*at)[7]) * kMmPerPoint};
            continue;
        }
        Box box{{std::stod((*at)[1]) * kMmPerPoint, std::stod((*at)[2]) * kMmPerPoint},
                {std::stod((*at)[3]) * kMmPerPoint, std::stod((*at)[4]) * kMmPerPoint}};
        const std::string letters = (*at)[5];
        const Box whole = box;
        // A font's line is 1.6 times as high as its type. Of a short word nobody can tell which way it runs:
        // it counts by its middle both ways.
        const bool brief = letters.size() <= 5 && box.width() < 1.3 * box.height();
        const bool upright = box.height() > box.width();
        if (!upright || brief) {
            box.low.y = whole.low.y + 0.36 * whole.height();
            box.high.y = whole.low.y + 0.68 * whole.height();
        }
        if (upright || brief) {
            box.low.x = whole.low.x + 0.36 * whole.width();
            box.high.x = whole.low.x + 0.68 * whole.width();
        }
        words.push_back({page, box, QString::fromStdString(letters), false});
    }
    return words;
}

} // namespace

TEST(SheetWords, NoneLieOverOthersAndNoneLeaveThePage) {
    for (const Case& each : cases()) {
        SCOPED_TRACE(each.name);
        int pages = 0;
        const auto words = written(each, &pages);
        ASSERT_GT(words.size(), 40u);
        EXPECT_EQ(overlapsIn(words), "");
        const Sheet sheet = sheetOf(*each.choices.size);
        for (const Written& word : words) {
            EXPECT_TRUE(word.box.low.x >= kKeptClear && word.box.low.y >= kKeptClear &&
                        word.box.high.x <= sheet.width - kKeptClear &&
                        word.box.high.y <= sheet.height - kKeptClear)
                << "page " << word.page << ": " << word.words.toStdString();
            EXPECT_LE(word.page, pages);
        }
    }
}

TEST(SheetWords, AnotherProgramFindsNoneOverOthersEither) {
    for (const Case& each : cases()) {
        if (each.report.grade != verdict::Grade::Holds && each.report.grade != verdict::Grade::Thin)
            continue; // the warning lies under the words on purpose
        SCOPED_TRACE(each.name);
        const pw::testing::FileForTest file(".pdf", "");
        ASSERT_TRUE(writeShopSheet(each.job, each.report, file.path(), each.choices));
        Sheet sheet;
        const auto words = foundIn(file.path(), &sheet);
        ASSERT_GT(words.size(), 100u);
        EXPECT_EQ(overlapsIn(words), "");
        for (const Written& word : words)
            EXPECT_TRUE(word.box.low.x >= kKeptClear && word.box.low.y >= kKeptClear &&
                        word.box.high.x <= sheet.width - kKeptClear &&
                        word.box.high.y <= sheet.height - kKeptClear)
                << "page " << word.page << ": " << word.words.toStdString();
    }
}

TEST(SheetWords, BothWaysOfLookingNoticeWordsOverWords) {
    // First, since writing brings the fonts. As they stand in a PDF: two sheets printed on one another, the
    // second a hair lower.
    const Case each = cases().front();
    const pw::testing::FileForTest file(".pdf", "");
    ASSERT_TRUE(writeShopSheet(each.job, each.report, file.path(), each.choices));
    auto words = foundIn(file.path());
    ASSERT_FALSE(words.empty());
    Written lower = words[words.size() / 2];
    lower.box = {lower.box.low + shape::Point{0.4, 0.4}, lower.box.high + shape::Point{0.4, 0.4}};
    words.push_back(lower);
    EXPECT_NE(overlapsIn(words), "");
    // As the sheet's own ink notes them.
    QImage image(100, 100, QImage::Format_Grayscale8);
    QPainter painter(&image);
    std::vector<Written> log;
    Ink ink(painter, 1);
    ink.noteIn(&log);
    ink.text({10, 20}, QStringLiteral("one figure"), 3.1);
    ink.text({10, 26}, QStringLiteral("well below"), 3.1);
    EXPECT_EQ(overlapsIn(log), "");
    ink.text({14, 21}, QStringLiteral("over it"), 3.1);
    EXPECT_NE(overlapsIn(log), "");
    painter.end();
}

TEST(SheetWords, TwoPagesAreEnoughForAnOrdinaryJob) {
    for (const char* name : {"mill_lane_six_pin", "mill_lane_two_pin_bar", "mill_lane_pull_ram_pulley",
                             "mill_lane_two_at_a_time", "mill_lane_pull_three_bolt_inch"}) {
        const job::Job job = sample(name);
        PaperChoices choices;
        choices.anyway = true;
        choices.size = PaperSize::A4;
        int pages = 0;
        (void)written({name, job, checked(job), choices}, &pages);
        EXPECT_LE(pages, 2) << name;
    }
}

TEST(SheetWords, HostileTextsMoveNothingOverAnything) {
    Case each = cases()[2];
    for (const std::string& text : pw::testing::hostileTexts()) {
        SCOPED_TRACE(text.substr(0, 40));
        each.job.title = each.job.notes = text;
        each.job.plate.steel->name = text;
        each.job.plate.steel->yield = units::Stress::fromMpa(235);
        each.choices.file = text;
        EXPECT_EQ(overlapsIn(written(each)), "");
    }
}
