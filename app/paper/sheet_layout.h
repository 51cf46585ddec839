#pragma once

#include "app/paper/ink.h"

#include <functional>
#include <vector>

/// Blocks of a sheet in bands one below the other, and bands on pages. Nothing here knows what is in them.
namespace pw::paper {

/// Something of a known height, painted with its upper left corner somewhere.
struct Row {
    double height = 0; ///< mm
    std::function<void(Ink&, shape::Point corner)> paint;
};

/// A heading and rows that may go on at the top of another page, after the heading said once more.
struct Block {
    QString heading; ///< may be empty
    std::vector<Row> rows;
};

/// Blocks beside each other: columns, each a stack of blocks. Ruled off above unless it is the first.
struct Band {
    struct Column {
        double x = 0; ///< from the left of the text area, mm
        std::vector<Block> blocks;
    };
    std::vector<Column> columns;
    bool ruled = true;
};

double heightOf(const Block& block);
double heightOf(const Band& band);

/// A band, or a part of one, on a page.
struct Placed {
    int page = 1;
    double y = 0; ///< of its upper edge, mm from the top of the text area
    Band band;
};

/// Bands on pages of this height: each on the first page with room for it, in their order; one that is higher
/// than a page is first set out as its columns one after the other, and then torn between rows.
std::vector<Placed> paginate(const std::vector<Band>& bands, double pageHeight);

int pagesOf(const std::vector<Placed>& placed);

/// `corner`: of the text area; `wide`: its width, for the rules.
void paintBand(Ink& ink, const Band& band, shape::Point corner, double wide);

/// Type of headings, and the room they take.
inline constexpr double kHeadingRoom = 6.6, kBandGap = 5.2, kBlockGap = 3.2;

} // namespace pw::paper
