#include "core/jobfile/json.h"
#include "core/rack/rack_file.h"
#include "core/rack/read_rack.h"
#include "geometry/placement/stock.h"
#include "tests/fuzz/json_mutator.h"

#include <cmath>
#include <set>

/// Rack files: every piece is read, or refused by name and field; a piece that was read has a shape or says
/// why not.

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pw;
    const auto tree = jobfile::fromJson(fuzz::textOf(data, size));
    if (!tree)
        return 0;
    const rack::RackReading reading = rack::readRack(*tree);
    const rack::RackReading again = rack::readRack(*jobfile::fromJson(jobfile::toJson(*tree)));
    PW_HOLDS(reading.rack == again.rack && reading.refused == again.refused, jobfile::toJson(*tree));
    for (const util::Problem& problem : reading.problems)
        PW_HOLDS(fuzz::isFitToShow(problem.message), problem.message);
    const jobfile::Tree* list = tree->find("offcuts");
    const std::size_t rows = list && list->items() ? list->items()->size() : 0;
    std::set<std::size_t> accounted; // no piece is dropped without a word
    for (const rack::Remark& remark : reading.refused) {
        PW_HOLDS(fuzz::isFitToShow(remark.message), remark.message);
        PW_HOLDS(!remark.name.empty() && !remark.field.empty(), remark.message);
        PW_HOLDS(remark.row < rows, remark.message);
        accounted.insert(remark.row);
    }
    for (const rack::Remark& remark : reading.mended) {
        PW_HOLDS(fuzz::isFitToShow(remark.message), remark.message);
        accounted.insert(remark.row);
    }
    std::set<std::string> names;
    for (const rack::Offcut& offcut : reading.rack.offcuts) {
        accounted.insert(offcut.row);
        PW_HOLDS(names.insert(offcut.name).second, offcut.name + " stands twice");
        PW_HOLDS(offcut.thickness.low <= offcut.thickness.high && rack::soundThickness(offcut).mm() > 0,
                 offcut.name);
        // As the file keeps it, read back, it is the same piece to the last figure that is kept.
        const placement::BuiltStock built = placement::buildStock(offcut);
        for (const util::Problem& problem : built.problems)
            PW_HOLDS(fuzz::isFitToShow(problem.message), problem.message);
        if (built.problems.empty()) {
            PW_HOLDS(shape::signedArea(built.stock.rim) > 0, offcut.name);
            const double area = placement::area(built.stock);
            PW_HOLDS(std::isfinite(area) && area <= shape::signedArea(built.stock.rim) * (1 + 1e-9),
                     offcut.name);
        }
        jobfile::Tree written = rack::newRackTree();
        written["offcuts"].push(rack::toTree(offcut));
        const rack::RackReading back = rack::readRack(written);
        PW_HOLDS(back.refused.empty() && back.problems.empty(),
                 jobfile::toJson(written) +
                     (back.refused.empty() ? "" : back.refused[0].field + ": " + back.refused[0].message));
    }
    PW_HOLDS(!reading.problems.empty() || accounted.size() == rows, "a piece is neither read nor refused");
    return 0;
}
