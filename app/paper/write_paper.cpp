#include "app/paper/write_paper.h"

#include "app/engine/write.h"
#include "app/paper/shop_sheet.h"
#include "app/paper/template_page.h"
#include "core/util/write_file.h"

#include <algorithm>
#include <cctype>
#include <functional>
#include <QBuffer>
#include <QGuiApplication>
#include <QPageSize>
#include <QPdfWriter>

namespace pw::paper {

namespace {

constexpr int kPerMm = 100; ///< units of the page in one mm
constexpr int kMostPages = 100;

bool isPdf(const std::filesystem::path& file) {
    std::string suffix = file.extension().string();
    std::transform(suffix.begin(), suffix.end(), suffix.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return suffix == ".pdf";
}

/// Kept to the program's end: type that was loaded through it may still be in use then.
bool haveType() {
    if (!QCoreApplication::instance()) {
        static int count = 3;
        static char name[] = "platewright", option[] = "-platform", platform[] = "offscreen";
        static char* words[] = {name, option, platform, nullptr};
        // Qt remarks on a missing desktop session, which a command line does not need.
        const QtMessageHandler before =
            qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
        static const auto* application = new QGuiApplication(count, words);
        (void)application;
        qInstallMessageHandler(before);
    }
    return qobject_cast<QGuiApplication*>(QCoreApplication::instance()) != nullptr;
}

/// Everything `paint` puts on pages of this size; it gets the paint and what turns the page.
QByteArray pdfOf(const std::string& title, PaperSize size,
                 const std::function<void(Ink&, const std::function<void()>&)>& paint) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(QString::fromStdString(title));
    writer.setCreator(QStringLiteral("platewright"));
    writer.setResolution(static_cast<int>(kPerMm * units::kMmPerInch));
    writer.setPageSize(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF());
    QPainter painter(&writer);
    Ink ink(painter, kPerMm);
    paint(ink, [&] { writer.newPage(); });
    painter.end();
    return bytes;
}

std::vector<std::string> sentencesOf(const Tiling& tiling, PaperSize size) {
    const int pages = tiling.pages();
    const std::string many = std::to_string(pages) + " sheets, " + std::to_string(tiling.rows()) +
                             (tiling.rows() == 1 ? " row of " : " rows of ") +
                             std::to_string(tiling.columns());
    std::vector<std::string> lines{
        std::string(nameOf(size)) + ", " + (pages == 1 ? std::string("one sheet") : many) +
        ". Print at 100 %, not fitted to the page, and measure the ruler on every sheet first."};
    if (pages > 1)
        lines.push_back("Cut each sheet at its dashed left and upper line and lay it on the one before, the "
                        "diamonds closed.");
    return lines;
}

/// Why there is no paper of this plate, if there is none.
std::optional<util::Problem> refusal(const job::Job& job, const engine::Report& report,
                                     const std::filesystem::path& file, const PaperChoices& choices) {
    if (!isPdf(file))
        return util::Problem{file.string(),
                             "not a kind of paper this version writes; name it like plate.pdf"};
    if (!engine::mayBeMade(report.grade) && !choices.anyway)
        return util::Problem{"", "not written: the verdict is " + std::string(verdict::wordOf(report.grade)) +
                                     ". " + report.reason + " Add --anyway to write it all the same, marked"};
    if (!report.region || !job.plate.thickness || !report.problems.empty())
        return util::Problem{"plate", "not written: there is no whole plate to draw. " + report.reason};
    if (!haveType())
        return util::Problem{"", "not written: this program has no type to write with"};
    return std::nullopt;
}

PaperSize sizeFor(const job::Job& job, const PaperChoices& choices) {
    return choices.size.value_or(job.preferred == units::System::Inch ? PaperSize::Letter : PaperSize::A4);
}

util::Status writeBytes(const std::filesystem::path& file, const QByteArray& bytes) {
    return util::writeFileWhole(file, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

} // namespace

util::Result<std::vector<std::string>> writeTemplate(const job::Job& job, const engine::Report& report,
                                                     const std::filesystem::path& file,
                                                     const PaperChoices& choices) {
    if (auto problem = refusal(job, report, file, choices))
        return *std::move(problem);
    const PaperSize size = sizeFor(job, choices);
    const TemplatePlan plan = planTemplate(job, report, choices.date.empty() ? today() : choices.date);
    const Tiling tiling = tile(plan.content, boxesOf(plan.holes), size);
    if (tiling.pages() > kMostPages)
        return util::Problem{"plate.outline",
                             "not written: at full size this takes " + std::to_string(tiling.pages()) +
                                 " sheets of " + std::string(nameOf(size)) + ", more than " +
                                 std::to_string(kMostPages) + "; lay it out by its figures instead"};
    const std::vector<Label> labels = placeLabels(plan, tiling);
    const QByteArray bytes = pdfOf(plan.title, size, [&](Ink& ink, const std::function<void()>& nextPage) {
        for (int row = 0; row < tiling.rows(); ++row)
            for (int column = 0; column < tiling.columns(); ++column) {
                if (row + column > 0)
                    nextPage();
                paintTemplatePage(ink, plan, labels, tiling, row, column);
            }
    });
    if (const auto status = writeBytes(file, bytes); !status)
        return status.problem();
    return sentencesOf(tiling, size);
}

util::Result<std::vector<std::string>> writeShopSheet(const job::Job& job, const engine::Report& report,
                                                      const std::filesystem::path& file,
                                                      const PaperChoices& choices) {
    if (auto problem = refusal(job, report, file, choices))
        return *std::move(problem);
    const PaperSize size = sizeFor(job, choices);
    const std::string date = choices.date.empty() ? today() : choices.date;
    const TemplatePlan plan = planTemplate(job, report, date);
    const QByteArray bytes = pdfOf(plan.title, size, [&](Ink& ink, const std::function<void()>& nextPage) {
        paintShopSheet(ink, nextPage, job, report, plan, sheetOf(size), date);
    });
    if (const auto status = writeBytes(file, bytes); !status)
        return status.problem();
    return std::vector<std::string>();
}

} // namespace pw::paper
