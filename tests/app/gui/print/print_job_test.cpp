#include "app/gui/print/print_job.h"

#include "app/gui/print/outputs.h"
#include "app/gui/settings/settings.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>
#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QTemporaryDir>

namespace pw::gui {
namespace {

PrintJob eightPins() {
    PrintJob print;
    print.job = jobfile::readJob(testing::eightPinJob()).job;
    print.report = std::make_shared<engine::Report>(testing::fakeCheck(print.job));
    print.title = "Clutch pack, 8 pins";
    print.file = "pack.plate.json";
    return print;
}

/// What another program reads in it.
QString wordsOf(const QString& file, const QString& program, const QStringList& words) {
    QProcess reader;
    QStringList all = words + QStringList{file};
    if (program == QLatin1String("pdftotext"))
        all << QStringLiteral("-");
    reader.start(program, all);
    EXPECT_TRUE(reader.waitForFinished(20000)) << "poppler-utils is needed to read the page";
    return QString::fromUtf8(reader.readAllStandardOutput()).replace(QChar(0xA0), QLatin1Char(' '));
}

util::Result<int> printed(const PrintJob& print, const QString& file) {
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, print);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(file);
    return paintJob(printer, print);
}

TEST(PrintJob, prints_the_shop_sheet_on_either_paper) {
    QTemporaryDir folder;
    const QString file = folder.filePath("sheet.pdf");
    for (const auto paper : {settings::Paper::A4, settings::Paper::Letter}) {
        settings::setPaper(paper);
        const auto pages = printed(eightPins(), file);
        ASSERT_TRUE(pages) << util::toText(pages.problem());
        const QString text = wordsOf(file, "pdftotext", {"-layout"});
        for (const char* words : {"Clutch pack, 8 pins", "pack.plate.json", "holds", "Stamp this",
                                  "Hole centres", "page 1 of", "Checks, weakest first"})
            EXPECT_TRUE(text.contains(words, Qt::CaseInsensitive)) << words << " not in\n"
                                                                   << text.toStdString();
        // ISO 216: 210 x 297 mm is 595 x 842 points; ANSI/ASME Y14.1 size A: 8.5 x 11 in is 612 x 792.
        const QString info = wordsOf(file, "pdfinfo", {});
        EXPECT_TRUE(info.contains(paper == settings::Paper::A4 ? "595" : "612 x 792")) << info.toStdString();
    }
    settings::setPaper(settings::Paper::A4);
}

TEST(PrintJob, a_template_is_as_large_by_the_printer_as_in_the_file) {
    QTemporaryDir folder;
    settings::setPaper(settings::Paper::A4);
    PrintJob print = eightPins();
    print.asTemplate = true;
    const QString file = folder.filePath("printer.pdf");
    ASSERT_TRUE(printed(print, file));
    // The ruler's inches: the middles of their figures are an inch apart. In points of 1/72 in.
    const QString text = wordsOf(file, "pdftotext", {"-bbox", "-l", "1"});
    const auto middleOf = [&](const QString& word) {
        const auto at = text.indexOf(">" + word + "</word>");
        EXPECT_GT(at, 0) << word.toStdString();
        const auto figure = [&](const QString& name) {
            const auto start = text.lastIndexOf(name + "=\"", at) + name.size() + 2;
            return text.mid(start, text.indexOf('"', start) - start).toDouble();
        };
        return (figure("xMin") + figure("xMax")) / 2 * 25.4 / 72;
    };
    EXPECT_NEAR(middleOf("2") - middleOf("1"), 25.4, 0.1);
    EXPECT_NEAR(middleOf("3") - middleOf("1"), 50.8, 0.1);
}

TEST(PrintJob, what_has_no_plate_is_a_problem_not_an_empty_page) {
    QTemporaryDir folder;
    PrintJob print = eightPins();
    print.job.plate.thickness.reset();
    print.anyway = true;
    EXPECT_FALSE(printed(print, folder.filePath("none.pdf")));
}

TEST(PrintJob, a_verdict_that_may_not_be_made_is_marked_or_refused) {
    QTemporaryDir folder;
    PrintJob print = eightPins();
    auto report = std::make_shared<engine::Report>(*print.report);
    report->grade = verdict::Grade::Breaks;
    print.report = report;
    EXPECT_FALSE(printed(print, folder.filePath("no.pdf")));
    print.anyway = true;
    ASSERT_TRUE(printed(print, folder.filePath("yes.pdf")));
    EXPECT_TRUE(wordsOf(folder.filePath("yes.pdf"), "pdftotext", {"-raw"}).contains("DO NOT USE: BREAKS"));
}

TEST(Outputs, the_window_writes_a_file_of_every_kind) {
    QTemporaryDir folder;
    const PrintJob print = eightPins();
    for (const OutputKind& kind : outputKinds()) {
        const QString file = folder.filePath("out" + kind.suffix);
        QFile::remove(file);
        const auto written = writeOutput(kind.output, print.job, *print.report, file.toStdString(), {});
        EXPECT_TRUE(written) << kind.menu.toStdString() << ": "
                             << (written ? "" : util::toText(written.problem()));
        EXPECT_GT(QFile(file).size(), 500) << kind.menu.toStdString();
    }
}

} // namespace
} // namespace pw::gui
