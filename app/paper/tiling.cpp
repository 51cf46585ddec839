#include "app/paper/tiling.h"

#include "core/units/quantity.h"
#include "core/util/require.h"

#include <algorithm>
#include <cmath>

namespace pw::paper {

namespace {

constexpr double kBeside = 2;      ///< mm, a join keeps from a hole's edge
constexpr double kStep = 0.5;      ///< mm, between places that are tried
constexpr double kRounding = 1e-9; ///< mm

/// How bad a join at `x` is: nothing beside all holes; through a hole the worse the nearer to its middle.
double badness(double x, const std::vector<Span>& holes) {
    double sum = 0;
    for (const Span& hole : holes) {
        const double half = (hole.high - hole.low) / 2 + kBeside;
        const double off = std::abs(x - hole.middle());
        if (off < half)
            sum += 1 + 10 * (1 - off / half);
        if (off < kBeside) // the centre mark is lost: worse than any number of edges
            sum += 1000;
    }
    return sum;
}

/// The best place within `room`, nearest its end among equals, so that later joins have more room.
double bestJoin(Span room, const std::vector<Span>& holes) {
    double best = room.high, least = badness(room.high, holes);
    for (double x = room.high - kStep; x >= room.low && least > 0; x -= kStep)
        if (const double bad = badness(x, holes); bad < least)
            best = x, least = bad;
    return best;
}

} // namespace

Sheet sheetOf(PaperSize size) {
    return size == PaperSize::A4 ? Sheet{210, 297} : Sheet{8.5 * units::kMmPerInch, 11 * units::kMmPerInch};
}

std::string_view nameOf(PaperSize size) {
    return size == PaperSize::A4 ? "A4" : "Letter";
}

std::vector<double> windowStarts(Span content, double length, double overlap,
                                 const std::vector<Span>& holes) {
    util::require(length > overlap && content.high >= content.low, "windowStarts: no room for a drawing");
    const double wanted = content.high - content.low;
    if (wanted <= length + kRounding)
        return {content.middle() - length / 2};
    const double pitch = length - overlap;
    const int count = 1 + static_cast<int>(std::ceil((wanted - length) / pitch - kRounding));
    // One more sheet than the fewest where every join of the fewest goes through the middle of a hole.
    std::vector<double> kept;
    double keptBad = 0;
    for (int n = count; n <= count + 1; ++n) {
        std::vector<double> starts{content.low};
        double bad = 0;
        for (int i = 1; i < n; ++i) {
            const double atMost = starts.back() + pitch;
            const double atLeast = content.high - length - (n - 1 - i) * pitch;
            const double join =
                bestJoin({std::min(std::max(atLeast, starts.back() + kStep), atMost), atMost}, holes);
            bad = std::max(bad, badness(join, holes));
            starts.push_back(join);
        }
        if (kept.empty() || bad < keptBad)
            kept = starts, keptBad = bad;
        if (keptBad < 1000)
            break;
    }
    return kept;
}

shape::Point Tiling::onPage(int row, int column, shape::Point plate) const {
    return {window.low.x + plate.x - left[static_cast<std::size_t>(column)],
            window.low.y + top[static_cast<std::size_t>(row)] - plate.y};
}

shape::Box Tiling::own(int row, int column) const {
    const auto r = static_cast<std::size_t>(row), c = static_cast<std::size_t>(column);
    return {{left[c], r + 1 < top.size() ? top[r + 1] : bottom},
            {c + 1 < left.size() ? left[c + 1] : right, top[r]}};
}

Tiling tile(const shape::Box& content, const std::vector<shape::Box>& holes, PaperSize size) {
    Tiling tiling;
    tiling.sheet = sheetOf(size);
    tiling.window = {{kBorder, kBorder + kHead},
                     {tiling.sheet.width - kBorder, tiling.sheet.height - kBorder - kFoot}};
    std::vector<Span> across, down; // down: y turned over
    for (const shape::Box& hole : holes) {
        across.push_back({hole.low.x, hole.high.x});
        down.push_back({-hole.high.y, -hole.low.y});
    }
    tiling.left = windowStarts({content.low.x, content.high.x}, tiling.window.width(), kOverlap, across);
    tiling.top = windowStarts({-content.high.y, -content.low.y}, tiling.window.height(), kOverlap, down);
    for (double& y : tiling.top)
        y = -y;
    tiling.right = tiling.left.back() + tiling.window.width();
    tiling.bottom = tiling.top.back() - tiling.window.height();
    return tiling;
}

} // namespace pw::paper
