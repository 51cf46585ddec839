#include "app/paper/sheet_layout.h"

#include "app/paper/template_plan.h"

#include <algorithm>
#include <optional>

namespace pw::paper {

namespace {

constexpr double kSlack = 1e-6; ///< mm

double headingOf(const Block& block) {
    return block.heading.isEmpty() ? 0 : kHeadingRoom;
}

/// As many of the rows from `from` on as fit into `room`, with the heading; at least one.
Block partOf(const Block& block, std::size_t& from, double room) {
    Block part{block.heading, {}};
    double used = headingOf(block);
    do {
        used += block.rows[from].height;
        part.rows.push_back(block.rows[from++]);
    } while (from < block.rows.size() && used + block.rows[from].height <= room + kSlack);
    return part;
}

std::vector<Band> torn(const Band& band, double pageHeight) {
    std::vector<Band> parts;
    for (const Band::Column& column : band.columns)
        for (const Block& block : column.blocks)
            for (std::size_t from = 0; from < block.rows.size();)
                parts.push_back({{{0, {partOf(block, from, pageHeight - kBandGap)}}}, band.ruled});
    return parts;
}

/// Which of two pages each band goes on, the first two on the first, as little out of their order as can be;
/// nothing when there is no way.
std::optional<std::vector<std::size_t>> onTwoPages(const std::vector<Band>& bands, double pageHeight) {
    constexpr std::size_t kFixed = 2, kMost = 14;
    if (bands.size() <= kFixed || bands.size() > kMost)
        return std::nullopt;
    std::vector<double> heights;
    for (const Band& band : bands)
        heights.push_back(heightOf(band));
    std::optional<std::vector<std::size_t>> best;
    int least = 0;
    for (unsigned ways = 0; ways < 1u << (bands.size() - kFixed); ++ways) {
        std::vector<std::size_t> page(bands.size(), 0);
        double used[2] = {0, 0};
        int disorder = 0, onSecond = 0;
        for (std::size_t i = 0; i < bands.size(); ++i) {
            page[i] = i < kFixed ? 0 : (ways >> (i - kFixed)) & 1u;
            used[page[i]] += heights[i];
            onSecond += static_cast<int>(page[i]);
            disorder += page[i] == 0 ? onSecond : 0;
        }
        if (used[0] > pageHeight + kSlack || used[1] > pageHeight + kSlack || (best && disorder >= least))
            continue;
        best = page;
        least = disorder;
    }
    return best;
}

} // namespace

double heightOf(const Block& block) {
    double sum = headingOf(block);
    for (const Row& row : block.rows)
        sum += row.height;
    return sum;
}

double heightOf(const Band& band) {
    double most = 0;
    for (const Band::Column& column : band.columns) {
        double sum = 0;
        for (const Block& block : column.blocks)
            sum += heightOf(block) + (sum > 0 ? kBlockGap : 0);
        most = std::max(most, sum);
    }
    return most + kBandGap;
}

std::vector<Placed> paginate(const std::vector<Band>& bands, double pageHeight) {
    std::vector<Placed> placed;
    std::vector<double> used; // of each page
    const auto putOn = [&](std::size_t page, const Band& band) {
        while (page >= used.size())
            used.push_back(0);
        placed.push_back({static_cast<int>(page) + 1, used[page], band});
        used[page] += heightOf(band);
    };
    const auto put = [&](const Band& band) {
        std::size_t page = 0;
        while (page < used.size() && used[page] + heightOf(band) > pageHeight + kSlack)
            ++page;
        putOn(page, band);
    };
    for (const Band& band : bands) {
        if (heightOf(band) <= pageHeight + kSlack)
            put(band);
        else
            for (const Band& part : torn(band, pageHeight))
                put(part);
    }
    if (used.size() < 3)
        return placed;
    if (const auto pages = onTwoPages(bands, pageHeight)) {
        placed.clear();
        used.clear();
        for (std::size_t i = 0; i < bands.size(); ++i)
            putOn((*pages)[i], bands[i]);
    }
    return placed;
}

int pagesOf(const std::vector<Placed>& placed) {
    int pages = 0;
    for (const Placed& each : placed)
        pages = std::max(pages, each.page);
    return pages;
}

void paintBand(Ink& ink, const Band& band, shape::Point corner, double wide) {
    if (band.ruled)
        ink.line({corner.x, corner.y + 2}, {corner.x + wide, corner.y + 2}, {0.5});
    for (const Band::Column& column : band.columns) {
        double y = corner.y + kBandGap;
        for (const Block& block : column.blocks) {
            const double x = corner.x + column.x;
            if (!block.heading.isEmpty())
                ink.text({x, y + kHeading}, block.heading, kHeading, true);
            y += headingOf(block);
            for (const Row& row : block.rows) {
                row.paint(ink, {x, y});
                y += row.height;
            }
            y += kBlockGap;
        }
    }
}

} // namespace pw::paper
