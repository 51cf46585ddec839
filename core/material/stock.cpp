#include "core/material/stock.h"

#include "core/util/csv.h"
#include "core/util/embedded.h"

namespace pw::material {

const std::vector<StockThickness>& stockThicknesses(units::System system) {
    static const auto read = [](std::string_view series) {
        std::vector<StockThickness> rows;
        for (const util::CsvRow& row : util::readCsv(util::embedded("stock_thicknesses.csv")))
            if (row.text("series") == series)
                rows.push_back({series == "in" ? units::Length::fromInch(row.number("thickness"))
                                               : units::Length::fromMm(row.number("thickness")),
                                row.text("label")});
        return rows;
    };
    static const std::vector<StockThickness> metric = read("mm"), inch = read("in");
    return system == units::System::Inch ? inch : metric;
}

} // namespace pw::material
