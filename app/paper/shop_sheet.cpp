#include "app/paper/shop_sheet.h"

#include "app/engine/output.h"
#include "app/paper/sheet_blocks.h"
#include "app/paper/template_page.h"
#include "app/paper/words.h"
#include "app/version/version.h"
#include "core/job/assumed.h"
#include "geometry/exchange/signs.h"

#include <algorithm>
#include <initializer_list>
#include <memory>
#include <utility>

namespace pw::paper {

using shape::Point;

namespace {

constexpr double kEdge = 15, kTop = 12, kFootRoom = 14, kTitle = 9, kTitleRoom = 27;
constexpr double kGap = 6;        ///< between columns
constexpr double kTableWide = 55; ///< beside the drawing
constexpr double kStampWide = 66; ///< beside the checks
constexpr int kLeastLog = 2, kMostLog = 30;
constexpr double kLogLine = 7;
const QColor kGrey(0x60, 0x60, 0x60);

std::vector<Block> said(std::initializer_list<Block> blocks) {
    std::vector<Block> some;
    for (const Block& block : blocks)
        if (!block.rows.empty())
            some.push_back(block);
    return some;
}

class ShopSheet {
public:
    ShopSheet(Ink& ink, const std::function<void()>& nextPage, const SheetData& data)
        : m_ink(ink), m_nextPage(nextPage), m_data(data), m_wide(data.sheet.width - 2 * kEdge),
          m_high(data.sheet.height - kTop - kFootRoom) {}

    int paint() {
        // The largest drawing that costs no page.
        std::vector<Placed> best;
        for (const double room : {122.0, 104.0, 94.0}) {
            auto placed = layOut(room);
            if (best.empty() || pagesOf(placed) < pagesOf(best))
                best = std::move(placed);
        }
        m_pages = pagesOf(best);
        for (m_page = 1; m_page <= m_pages; ++m_page) {
            if (m_page > 1)
                m_nextPage();
            m_ink.onPage(m_page);
            paintFrame();
            for (const Placed& each : best)
                if (each.page == m_page)
                    paintBand(m_ink, each.band, {kEdge, kTop + each.y}, m_wide);
        }
        return m_pages;
    }

private:
    std::vector<Placed> layOut(double drawingRoom) {
        auto bands = bandsFor(drawingRoom, kLeastLog);
        auto placed = paginate(bands, m_high);
        // What is left of the log's page is log: as many lines as cost no page.
        int least = kLeastLog, most = useLog(m_data, m_wide, 1).rows.empty() ? kLeastLog : kMostLog;
        while (least < most) {
            const int lines = (least + most + 1) / 2;
            auto more = paginate(bandsFor(drawingRoom, lines), m_high);
            if (pagesOf(more) > pagesOf(placed)) {
                most = lines - 1;
                continue;
            }
            placed = std::move(more);
            least = lines;
        }
        return placed;
    }

    Band titleBand() {
        return {{{0, {{{}, {{kTitleRoom - kBandGap, [this](Ink&, Point) { paintTitle(); }}}}}}}, false};
    }

    std::vector<Band> bandsFor(double drawingRoom, int logLines) {
        const double left = m_wide - kTableWide - kGap;
        auto drawing = std::make_shared<PlanDrawing>(m_data, left, drawingRoom);
        const double drawn = drawing->height() + 6;
        Block plan{{}, {{drawn, [this, drawing](Ink& ink, Point at) {
                             drawing->paint(ink, at);
                             paintUnderDrawing(*drawing, at);
                         }}}};
        std::vector<Block> tables = said({holeTable(m_data, *drawing, kTableWide),
                                          dividers(m_data, kTableWide), makeThem(m_data, kTableWide)});
        std::vector<Band> bands;
        const auto add = [&](std::vector<Band::Column> columns, bool ruled = true) {
            columns.erase(std::remove_if(columns.begin(), columns.end(),
                                         [](const Band::Column& column) { return column.blocks.empty(); }),
                          columns.end());
            if (!columns.empty())
                bands.push_back({std::move(columns), ruled});
        };
        bands.push_back(titleBand());
        // What of the tables does not stand beside the drawing goes on below it in columns.
        std::vector<Block> beside, under;
        double used = 0;
        for (Block& block : tables) {
            const double high = heightOf(block) + kBlockGap;
            (used + high <= std::max(drawn, 112.0) && under.empty() ? beside : under).push_back(block);
            used += high;
        }
        add({{0, {plan}}, {left + kGap, beside}});
        addTables(under, bands);
        const double half = (m_wide - kGap) / 2, right = m_wide - kStampWide - kGap;
        const bool mayBeMade = engine::mayBeMade(m_data.report.grade);
        add({{0, mayBeMade ? said({stamp(m_data, kStampWide), proof(m_data, kStampWide),
                                   threadInHand(m_data, kStampWide)})
                           : said({stamp(m_data, kStampWide), cautions(m_data, kStampWide)})},
             {kStampWide + kGap, said({checks(m_data, right)})}});
        add({{0, said({firstSteps(m_data, half)})},
             {half + kGap,
              said({lastSteps(m_data, half), keepersCounted(m_data, half), gaugeTable(m_data, half)})}});
        if (mayBeMade)
            add({{0, said({cautions(m_data, m_wide)})}}, false);
        const double card = 96, notes = m_wide - card - kGap;
        add({{0, said({turnsCard(m_data, card)})}, {card + kGap, said({cardNotes(m_data, notes)})}});
        add({{0, said({useLog(m_data, m_wide, logLines)})}});
        addInTwo(assumptions(m_data, half), half, add);
        // A lone column that was meant to stand on the right has the whole width to itself.
        for (Band& band : bands)
            if (band.columns.size() == 1)
                band.columns.front().x = 0;
        return bands;
    }

    /// The rows of a block in two columns, as even as can be.
    template<class Add>
    void addInTwo(const Block& block, double half, const Add& add) {
        double sum = 0;
        Block left{block.heading, {}}, right{block.rows.size() > 1 ? QStringLiteral(" ") : QString(), {}};
        for (const Row& row : block.rows) {
            (2 * sum < heightOf(block) - kHeadingRoom ? left : right).rows.push_back(row);
            sum += row.height;
        }
        add({{0, said({left})}, {half + kGap, said({right})}}, true);
    }

    /// A long table in as many columns as there is room for.
    void addTables(const std::vector<Block>& blocks, std::vector<Band>& bands) {
        const std::size_t columns = 3;
        const double pitch = kTableWide + (m_wide - 3 * kTableWide) / 2;
        for (const Block& block : blocks) {
            const std::size_t head = block.rows.size() > 12 ? 1 : 0; // the row of column names
            const std::size_t each = (block.rows.size() - head + columns - 1) / columns;
            Band band;
            if (head == 0) {
                // Short ones share a band.
                if (bands.back().columns.size() < columns && bands.back().ruled &&
                    bands.back().columns.front().blocks.front().rows.size() <= 12 && bands.size() > 2) {
                    bands.back().columns.push_back(
                        {pitch * static_cast<double>(bands.back().columns.size()), {block}});
                    continue;
                }
                band.columns.push_back({0, {block}});
            } else {
                for (std::size_t from = 1, column = 0; from < block.rows.size(); from += each, ++column) {
                    Block part{block.heading, {block.rows.front()}};
                    for (std::size_t i = from; i < std::min(from + each, block.rows.size()); ++i)
                        part.rows.push_back(block.rows[i]);
                    band.columns.push_back({pitch * static_cast<double>(column), {part}});
                }
            }
            bands.push_back(std::move(band));
        }
    }

    void paintFrame() {
        const double right = kEdge + m_wide, base = m_data.sheet.height - 9;
        if (!m_data.plan.warning.empty())
            paintWarning(m_ink, {{kEdge, kTop}, {right, m_data.sheet.height - kFootRoom}},
                         m_data.plan.warning);
        const QString page = QStringLiteral("Platewright %1, ").arg(QLatin1String(versionText())) +
                             Paper::tr("page %1 of %2").arg(m_page).arg(m_pages);
        const double room = m_wide - Ink::widthOf(page, kSmall) - 5;
        QStringList foot;
        if (!m_data.plan.warning.empty())
            foot << toQt(m_data.plan.warning);
        foot << toQt(m_data.date);
        if (!m_data.file.empty())
            foot << toQt(exchange::cleanText(m_data.file, 60));
        foot << toQt(m_data.plan.title);
        m_ink.text({kEdge, base}, Ink::cut(foot.join(QStringLiteral(", ")), room, kSmall), kSmall, false,
                   Side::Left, kGrey);
        m_ink.text({right, base}, page, kSmall, false, Side::Right, kGrey);
    }

    void paintTitle() {
        const double right = kEdge + m_wide;
        const QString word = gradeWord(m_data.report.grade);
        const double wide = Ink::widthOf(word, kTitle, true);
        m_ink.text({right, kTop + 8.5}, word, kTitle, true, Side::Right);
        drawMark(m_ink, {right - wide - 11, kTop + 5.5}, 16, m_data.report.grade);
        // A long title gets smaller first, and is cut only below half the size.
        const QString title = toQt(m_data.plan.title);
        const double room = m_wide - wide - 24;
        const double size =
            std::clamp(kTitle * room / std::max(1.0, Ink::widthOf(title, kTitle, true)), kTitle / 2, kTitle);
        m_ink.text({kEdge, kTop + 8.5}, Ink::cut(title, room * 1.01, size, true), size, true);
        const QString date = toQt(m_data.date);
        m_ink.text({kEdge, kTop + 16.5}, Ink::cut(facts(), m_wide - Ink::widthOf(date, kWords) - 4, kWords),
                   kWords);
        m_ink.text({right, kTop + 16.5}, date, kWords, false, Side::Right);
        m_ink.text({kEdge, kTop + 22.5}, Ink::cut(toQt(m_data.report.reason), m_wide, kWords, true), kWords,
                   true);
    }

    QString facts() const {
        const units::System system = m_data.job.preferred;
        const QString thick = toQt(asMarked(*m_data.job.plate.thickness, system)),
                      steel = steelWord(job::assume(m_data.job).steel.name);
        const bool pull = m_data.job.work == job::Work::Pull;
        QStringList parts{pull ? Paper::tr("Puller plate, %1, %2").arg(thick, steel)
                               : Paper::tr("Compressor plate, %1, %2").arg(thick, steel)};
        if (m_data.offcut && !m_data.offcut->name.empty())
            parts << Paper::tr("from %1").arg(toQt(exchange::cleanText(m_data.offcut->name, 40)));
        if (m_data.report.plate.massKg)
            parts << Paper::tr("weighs %1")
                         .arg(toQt(units::show(units::Mass::fromKg(*m_data.report.plate.massKg), system)));
        return parts.join(QStringLiteral(", "));
    }

    void paintUnderDrawing(const PlanDrawing& drawing, Point at) {
        const QString scale = toQt(units::number(drawing.scale(), 6));
        const QString unit =
            m_data.job.preferred == units::System::Inch ? Paper::tr("inch") : Paper::tr("mm");
        m_ink.text(
            {at.x, at.y + drawing.height() + 3.6},
            drawing.fromOffcut()
                ? Paper::tr("Drawn 1:%1, sizes in %2. Measure from the two thick edges of the piece.")
                      .arg(scale, unit)
                : Paper::tr("Drawn 1:%1, sizes in %2. Measure from the thick edges, which touch the rim.")
                      .arg(scale, unit),
            kSmall);
    }

    Ink& m_ink;
    const std::function<void()>& m_nextPage;
    const SheetData& m_data;
    const double m_wide, m_high;
    int m_page = 1, m_pages = 1;
};

} // namespace

int paintShopSheet(Ink& ink, const std::function<void()>& nextPage, const SheetData& data) {
    return ShopSheet(ink, nextPage, data).paint();
}

} // namespace pw::paper
