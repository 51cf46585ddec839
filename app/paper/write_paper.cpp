#include "app/paper/write_paper.h"

#include "app/engine/output.h"
#include "app/paper/paint_paper.h"
#include "app/paper/shop_sheet.h"
#include "app/paper/template_page.h"
#include "app/paper/words.h"
#include "app/tongues/tongues.h"
#include "core/util/say.h"
#include "core/util/write_file.h"
#include "geometry/exchange/signs.h"

#include <functional>
#include <QBuffer>
#include <QGuiApplication>
#include <QLocale>
#include <QPageSize>
#include <QPdfWriter>

namespace pw::paper {

namespace {

constexpr int kPerMm = 100; ///< units of the page in one mm
constexpr int kMostPages = 100;

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

/// Everything `paint` puts on pages of this size.
util::Result<QByteArray> pdfOf(const std::string& title, PaperSize size,
                               const std::function<util::Result<int>(const Target&)>& paint) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(toQt(exchange::cleanText(title, 120)));
    writer.setCreator(QStringLiteral("platewright"));
    writer.setResolution(static_cast<int>(kPerMm * units::kMmPerInch));
    writer.setPageSize(QPageSize(size == PaperSize::A4 ? QPageSize::A4 : QPageSize::Letter));
    writer.setPageMargins(QMarginsF());
    QPainter painter(&writer);
    const auto painted = paint({painter, kPerMm, [&] { writer.newPage(); }});
    painter.end();
    if (!painted)
        return painted.problem();
    return bytes;
}

std::vector<std::string> sentencesOf(const Tiling& tiling, PaperSize size) {
    const int pages = tiling.pages();
    const QString paper = toQt(std::string(nameOf(size)));
    if (pages == 1)
        return {
            Paper::tr("%1, one sheet. Print at 100 %, not fitted to the page, and measure the ruler first.")
                .arg(paper)
                .toStdString()};
    return {
        Paper::tr("%1, %2 sheets: %3 down, %4 across. Print at 100 %, not fitted to the page, and measure "
                  "the ruler on every sheet first.")
            .arg(paper)
            .arg(pages)
            .arg(tiling.rows())
            .arg(tiling.columns())
            .toStdString(),
        Paper::tr("Cut each sheet at its dashed left and upper line and lay it on the one before, the "
                  "diamonds closed.")
            .toStdString()};
}

/// Why there is no paper of this plate, if there is none.
std::optional<util::Problem> refusal(const job::Job& job, const engine::Report& report,
                                     const PaperChoices& choices) {
    if (auto problem = engine::refusalOf(job, report, choices.anyway))
        return problem;
    if (!haveType())
        return util::Problem{"",
                             Paper::tr("not written: this program has no type to write with").toStdString()};
    return std::nullopt;
}

std::optional<util::Problem> wrongName(const std::filesystem::path& file) {
    if (engine::suffixOf(file) == ".pdf")
        return std::nullopt;
    return util::Problem{
        file.string(),
        Paper::tr("not a kind of paper this version writes; name it like plate.pdf").toStdString()};
}

PaperSize sizeFor(const job::Job& job, const PaperChoices& choices) {
    return choices.size.value_or(job.preferred == units::System::Inch ? PaperSize::Letter : PaperSize::A4);
}

std::string dateOf(const PaperChoices& choices) {
    return choices.date.empty() ? today() : choices.date;
}

Tiling tilingOf(const TemplatePlan& plan, const job::Job& job, const PaperChoices& choices) {
    return tile(plan.content, boxesOf(plan.holes), sizeFor(job, choices));
}

util::Status writeBytes(const std::filesystem::path& file, const util::Result<QByteArray>& bytes) {
    if (!bytes)
        return bytes.problem();
    return util::writeFileWhole(file, {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

} // namespace

struct InLanguage::Before {
    QLocale locale;
    Tongue tongue = pw::tongue();
};

InLanguage::InLanguage(const std::string& code) {
    if (!haveType())
        return;
    m_before = std::make_unique<Before>();
    QLocale::setDefault(QLocale(toQt(code)));
    m_known = tongues::speak(toQt(code));
}

InLanguage::~InLanguage() {
    if (!m_before)
        return;
    (void)tongues::speak(QStringLiteral("en"));
    QLocale::setDefault(m_before->locale);
    setTongue(m_before->tongue);
}

std::vector<std::string> InLanguage::all() {
    std::vector<std::string> codes;
    if (haveType())
        for (const QString& code : tongues::languages())
            codes.push_back(code.toStdString());
    return codes;
}

util::Result<int> paintTemplate(const Target& target, const job::Job& job, const engine::Report& report,
                                const PaperChoices& choices) {
    if (auto problem = refusal(job, report, choices))
        return *std::move(problem);
    const TemplatePlan plan = planTemplate(job, report, dateOf(choices));
    const Tiling tiling = tilingOf(plan, job, choices);
    if (tiling.pages() > kMostPages)
        return util::Problem{
            "plate.outline",
            Paper::tr("not written: at full size this takes %1 sheets of %2, more than %3; lay it out by its "
                      "figures instead")
                .arg(tiling.pages())
                .arg(toQt(std::string(nameOf(sizeFor(job, choices)))))
                .arg(kMostPages)
                .toStdString()};
    const std::vector<Label> labels = placeLabels(plan, tiling);
    Ink ink(target.painter, target.perMm);
    ink.noteIn(target.log);
    for (int row = 0; row < tiling.rows(); ++row)
        for (int column = 0; column < tiling.columns(); ++column) {
            if (row + column > 0)
                target.nextPage();
            ink.onPage(tiling.number(row, column));
            paintTemplatePage(ink, plan, labels, tiling, row, column);
        }
    return tiling.pages();
}

util::Result<int> paintShopSheet(const Target& target, const job::Job& job, const engine::Report& report,
                                 const PaperChoices& choices) {
    if (auto problem = refusal(job, report, choices))
        return *std::move(problem);
    const std::string date = dateOf(choices);
    const TemplatePlan plan = planTemplate(job, report, date);
    Ink ink(target.painter, target.perMm);
    ink.noteIn(target.log);
    return paintShopSheet(
        ink, target.nextPage,
        {job, report, plan, sheetOf(sizeFor(job, choices)), date, choices.file, choices.offcut});
}

util::Result<std::vector<std::string>> writeTemplate(const job::Job& job, const engine::Report& report,
                                                     const std::filesystem::path& file,
                                                     const PaperChoices& choices) {
    if (auto problem = wrongName(file))
        return *std::move(problem);
    if (auto problem = refusal(job, report, choices))
        return *std::move(problem);
    const PaperSize size = sizeFor(job, choices);
    const auto bytes = pdfOf(
        job.title, size, [&](const Target& target) { return paintTemplate(target, job, report, choices); });
    if (const auto status = writeBytes(file, bytes); !status)
        return status.problem();
    return sentencesOf(tilingOf(planTemplate(job, report, {}), job, choices), size);
}

util::Result<std::vector<std::string>> writeShopSheet(const job::Job& job, const engine::Report& report,
                                                      const std::filesystem::path& file,
                                                      const PaperChoices& choices) {
    if (auto problem = wrongName(file))
        return *std::move(problem);
    if (auto problem = refusal(job, report, choices))
        return *std::move(problem);
    int pages = 0;
    const auto bytes = pdfOf(job.title, sizeFor(job, choices), [&](const Target& target) {
        auto painted = paintShopSheet(target, job, report, choices);
        pages = painted ? *painted : 0;
        return painted;
    });
    if (const auto status = writeBytes(file, bytes); !status)
        return status.problem();
    return std::vector<std::string>{
        pages == 1
            ? Paper::tr("%1, one page.").arg(toQt(std::string(nameOf(sizeFor(job, choices))))).toStdString()
            : Paper::tr("%1, %2 pages.")
                  .arg(toQt(std::string(nameOf(sizeFor(job, choices)))))
                  .arg(pages)
                  .toStdString()};
}

} // namespace pw::paper
