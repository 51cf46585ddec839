#pragma once

#include "core/shape/loop.h"

#include <string_view>
#include <vector>

/// Where things lie on sheets of paper. Nothing is painted here. mm; on a sheet x runs to the right and y
/// down from the upper left corner.
namespace pw::paper {

enum class PaperSize { A4, Letter };

/// A sheet, upright. Source: ISO 216 (A4, 210 x 297 mm); ANSI/ASME Y14.1 (A, 8.5 x 11 in).
struct Sheet {
    double width = 0, height = 0;
};
Sheet sheetOf(PaperSize size);
std::string_view nameOf(PaperSize size); ///< "A4", "Letter"

/// What every page of a template keeps clear round its drawing: the border no printer reaches (common
/// practice, no published source), the ruler above, the words below.
inline constexpr double kBorder = 10, kHead = 27, kFoot = 30;
/// Two neighbouring sheets both show at least this much.
inline constexpr double kOverlap = 10;

/// A stretch of one axis.
struct Span {
    double low = 0, high = 0;
    double middle() const { return (low + high) / 2; }
    bool operator==(const Span&) const = default;
};

/// Where the windows of `length` start that together show `content`: one in the middle when it is enough,
/// else the fewest, each reaching `overlap` or more past the start of the next. A start is where two sheets
/// are joined: it is put beside the `holes`, and where that cannot be, at least beside their middles.
std::vector<double> windowStarts(Span content, double length, double overlap, const std::vector<Span>& holes);

/// The sheets of a template, row by row from the top. A plate place is x to the right, y up.
struct Tiling {
    Sheet sheet;
    shape::Box window;            ///< of a page, in which the plate is drawn; y down
    std::vector<double> left;     ///< plate x at the window's left edge, a column each, rising
    std::vector<double> top;      ///< plate y at the window's upper edge, a row each, falling
    double right = 0, bottom = 0; ///< plate places where the last column and row end

    int columns() const { return static_cast<int>(left.size()); }
    int rows() const { return static_cast<int>(top.size()); }
    int pages() const { return rows() * columns(); }
    /// Number of a page as printed, from 1.
    int number(int row, int column) const { return row * columns() + column + 1; }
    /// A place of the plate on a page.
    shape::Point onPage(int row, int column, shape::Point plate) const;
    /// What a page shows that no later page lies over, in plate places.
    shape::Box own(int row, int column) const;
};

/// `content` is all that must be seen, `holes` their boxes; both in plate places.
Tiling tile(const shape::Box& content, const std::vector<shape::Box>& holes, PaperSize size);

} // namespace pw::paper
