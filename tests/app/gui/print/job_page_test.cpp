#include "app/gui/print/job_page.h"

#include "app/gui/print/print_job.h"
#include "app/gui/settings/settings.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QPrinter>
#include <QProcess>
#include <QStandardPaths>
#include <QTemporaryDir>

namespace pw::gui {
namespace {

PageData eightPins() {
    PageData data;
    data.tree = testing::eightPinJob();
    data.job = jobfile::readJob(data.tree).job;
    auto report = std::make_shared<engine::Report>(testing::fakeCheck(data.job));
    report->steps = {"Lay the plate over the screw.", "Turn the nut down to 35 N·m."};
    data.report = report;
    data.title = "Clutch pack, 8 pins";
    data.file = "pack.plate.json";
    return data;
}

shape::Box square(double side) {
    return {{-side / 2, -side / 2}, {side / 2, side / 2}};
}

// ISO 5455:1979, table of recommended scales: 1:1, 1:2, 1:5, 1:10, 1:20, 1:50, 1:100.
TEST(JobPage, draws_at_the_largest_scale_of_iso_5455_that_fits) {
    const QSizeF room(90, 80);
    EXPECT_DOUBLE_EQ(drawingScale(square(80), room), 1);
    EXPECT_DOUBLE_EQ(drawingScale(square(81), room), 0.5);
    EXPECT_DOUBLE_EQ(drawingScale(square(180), room), 0.2);
    EXPECT_DOUBLE_EQ(drawingScale(square(410), room), 0.1);
    EXPECT_DOUBLE_EQ(drawingScale(square(900), room), 0.05);
    EXPECT_DOUBLE_EQ(drawingScale({{0, 0}, {90, 10}}, room), 1); // the wide way
}

TEST(JobPage, says_everything_that_is_needed_at_the_bench_on_one_page_of_either_paper) {
    ASSERT_FALSE(QStandardPaths::findExecutable("pdftotext").isEmpty())
        << "poppler-utils is needed to read the page";
    QTemporaryDir folder;
    const PageData data = eightPins();
    for (const auto paper : {settings::Paper::A4, settings::Paper::Letter}) {
        settings::setPaper(paper);
        const QString file = folder.filePath("sheet.pdf");
        {
            QPrinter printer(QPrinter::HighResolution);
            setUp(printer, data);
            printer.setOutputFormat(QPrinter::PdfFormat);
            printer.setOutputFileName(file);
            EXPECT_EQ(paintJob(printer, data), 1);
            // ISO 216: 210 x 297; ANSI/ASME Y14.1 size A: 8.5 x 11 in.
            const QSizeF whole = printer.paperRect(QPrinter::Millimeter).size();
            EXPECT_NEAR(whole.width(), paper == settings::Paper::A4 ? 210 : 215.9, 0.5);
            EXPECT_NEAR(whole.height(), paper == settings::Paper::A4 ? 297 : 279.4, 0.5);
        }
        QProcess reader;
        reader.start("pdftotext", {"-layout", file, "-"});
        ASSERT_TRUE(reader.waitForFinished(20000));
        const QString text =
            QString::fromUtf8(reader.readAllStandardOutput()).replace(QChar(0xA0), QLatin1Char(' '));
        for (const char* words :
             {"Clutch pack, 8 pins", "pack.plate.json", "Holds", "44 N·m", "9.4 kN", "Scale 1:2",
              "Plate, folding", "Washer dishing", "170 J is stored", "Order of work",
              "Lay the plate over the screw", "Turn the nut down to 35 N·m"})
            EXPECT_TRUE(text.contains(words, Qt::CaseInsensitive)) << words << " not in\n"
                                                                   << text.toStdString();
    }
    settings::setPaper(settings::Paper::A4);
}

TEST(JobPage, goes_on_to_another_page_rather_than_leave_a_step_out) {
    PageData data = eightPins();
    auto report = std::make_shared<engine::Report>(*data.report);
    for (int i = 0; i < 60; ++i)
        report->steps.push_back("Turn the nut a quarter and look at the dial before the next one.");
    data.report = report;
    QImage image(1860, 2730, QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    int turned = 0;
    const int pages = drawJobPage(painter, {186, 273}, data, [&] { ++turned; });
    EXPECT_EQ(pages, turned + 1);
    EXPECT_GE(pages, 2);
}

TEST(JobPage, draws_the_rim_as_large_as_the_scale_says) {
    PageData data = eightPins();
    QImage image(1860, 2730, QImage::Format_RGB32); // a pixel is 0.1 mm
    image.fill(Qt::white);
    QPainter painter(&image);
    drawJobPage(painter, {186, 273}, data, [] {});
    painter.end();
    // The widest dark row of pixels in the left half that is not the line under the title: 180 mm at 1:2.
    int widest = 0;
    for (int y = 700; y < 1200; ++y) {
        int first = -1, last = -1;
        for (int x = 0; x < 930; ++x)
            if (qGray(image.pixel(x, y)) < 128) {
                first = first < 0 ? x : first;
                last = x;
            }
        if (first >= 0)
            widest = std::max(widest, last - first + 1);
    }
    constexpr double kLinePx = 5, kRoundingPx = 2;
    EXPECT_NEAR(widest, 900 + kLinePx, kRoundingPx);
}

TEST(JobPage, prints_a_job_that_is_not_complete_without_figures_that_nobody_knows) {
    PageData data = eightPins();
    data.tree.erase("plate.thickness");
    data.job = jobfile::readJob(data.tree).job;
    data.report = std::make_shared<engine::Report>(testing::fakeCheck(data.job));
    QImage image(1860, 2730, QImage::Format_RGB32);
    QPainter painter(&image);
    EXPECT_EQ(drawJobPage(painter, {186, 273}, data, [] {}), 1);
}

} // namespace
} // namespace pw::gui
