#pragma once

#include "app/paper/ink.h"
#include "app/paper/write_paper.h"

#include <functional>

namespace pw::paper {

/// Where a paper is painted: `perMm` units of the painter in a mm, its origin at the corner of the paper.
struct Target {
    QPainter& painter;
    double perMm = 1;
    std::function<void()> nextPage;
    std::vector<Written>* log = nullptr; ///< every text that is written, with its place
};

/// What writeTemplate and writeShopSheet put into a file, on anything that is painted on, a printer for one.
/// The number of pages.
util::Result<int> paintTemplate(const Target& target, const job::Job& job, const engine::Report& report,
                                const PaperChoices& choices);
util::Result<int> paintShopSheet(const Target& target, const job::Job& job, const engine::Report& report,
                                 const PaperChoices& choices);

} // namespace pw::paper
