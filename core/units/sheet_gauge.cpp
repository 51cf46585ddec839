#include "core/units/sheet_gauge.h"

#include "core/util/csv.h"
#include "core/util/embedded.h"

#include <map>

namespace pw::units {

std::optional<Length> sheetGauge(double number) {
    static const std::map<double, Length> kGauges = [] {
        std::map<double, Length> gauges;
        for (const util::CsvRow& row : util::readCsv(util::embedded("sheet_gauges.csv")))
            gauges.emplace(row.number("gauge"), Length::fromInch(row.number("thickness_in")));
        return gauges;
    }();
    const auto found = kGauges.find(number);
    return found == kGauges.end() ? std::nullopt : std::optional(found->second);
}

} // namespace pw::units
