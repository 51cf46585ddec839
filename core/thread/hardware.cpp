#include "core/thread/series.h"
#include "core/thread/thread.h"
#include "core/util/csv.h"
#include "core/util/embedded.h"
#include "core/util/say.h"

#include <vector>

/// Standard nuts and washers, from resources/hexagons.csv and washers.csv.
namespace pw::thread {

namespace {

Length inUnit(const util::CsvRow& row, std::string_view column) {
    const double value = row.number(column);
    return row.text("unit") == "in" ? Length::fromInch(value) : Length::fromMm(value);
}

const std::vector<util::CsvRow>& hexagonRows() {
    static const std::vector<util::CsvRow> kRows = util::readCsv(util::embedded("hexagons.csv"));
    return kRows;
}

const std::vector<util::CsvRow>& washerRows() {
    static const std::vector<util::CsvRow> kRows = util::readCsv(util::embedded("washers.csv"));
    return kRows;
}

} // namespace

std::optional<Hexagon> standardHexagon(const Thread& thread) {
    const std::string_view family = thread.form == Form::Unified     ? "inch"
                                    : thread.form == Form::Metric    ? "metric"
                                    : thread.form == Form::Whitworth ? "whitworth"
                                                                     : "none";
    for (const util::CsvRow& row : hexagonRows())
        if (row.text("family") == family && same(inUnit(row, "diameter"), thread.diameter))
            return Hexagon{inUnit(row, "nut_across_flats"), inUnit(row, "bolt_across_flats"),
                           inUnit(row, "nut_height_min"), say(row.text("source").c_str())};
    return std::nullopt;
}

std::optional<Washer> standardWasher(const Thread& thread) {
    const bool metric = thread.form == Form::Metric || thread.form == Form::Trapezoidal;
    for (const util::CsvRow& row : washerRows()) // in order of size
        if (row.text("family") == (metric ? "metric" : "inch") &&
            (inUnit(row, "diameter") >= thread.diameter || same(inUnit(row, "diameter"), thread.diameter)))
            return Washer{inUnit(row, "inside"), inUnit(row, "outside"), inUnit(row, "thickness"),
                          say(row.text("source").c_str())};
    return std::nullopt;
}

} // namespace pw::thread
