#include "core/thread/series.h"

#include "core/util/csv.h"
#include "core/util/embedded.h"

#include <cmath>

namespace pw::thread {

using units::Length;

const std::vector<StandardSize>& standardSizes() {
    static const std::vector<StandardSize> kSizes = [] {
        std::vector<StandardSize> sizes;
        for (const util::CsvRow& row : util::readCsv(util::embedded("threads.csv"))) {
            const bool inch = row.text("unit") == "in";
            sizes.push_back(
                {row.text("series"), row.text("size"),
                 inch ? Length::fromInch(row.number("diameter")) : Length::fromMm(row.number("diameter")),
                 inch ? Length::fromInch(1 / row.number("per_inch"))
                      : Length::fromMm(row.number("pitch_mm"))});
        }
        return sizes;
    }();
    return kSizes;
}

std::optional<Length> standardPitch(std::string_view series, Length diameter) {
    for (const StandardSize& size : standardSizes())
        if (size.series == series && same(size.diameter, diameter))
            return size.pitch;
    return std::nullopt;
}

std::string standardSeries(const std::vector<std::string_view>& series, Length diameter, Length pitch) {
    for (const std::string_view one : series) {
        const auto standard = standardPitch(one, diameter);
        if (standard && same(*standard, pitch))
            return std::string(one);
    }
    return {};
}

bool same(Length a, Length b) {
    return std::abs(a.mm() - b.mm()) < 1e-4;
}

} // namespace pw::thread
