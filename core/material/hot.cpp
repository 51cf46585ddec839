#include "core/material/hot.h"

#include "core/util/csv.h"
#include "core/util/embedded.h"
#include "core/util/say.h"

#include <algorithm>

namespace pw::material {

namespace {

/// Table 3.1: all three factors are 1 up to here.
constexpr double kCoolCelsius = 100;
/// EN 1993-1-2 covers the steels of EN 1993-1-1.
constexpr double kStrongestMpa = 460;

struct HotRow {
    double celsius;
    HotFactors factors;
};

const std::vector<HotRow>& steelTable() {
    static const std::vector<HotRow> kRows = [] {
        std::vector<HotRow> rows;
        for (const util::CsvRow& csv : util::readCsv(util::embedded("hot_steel.csv")))
            rows.push_back({csv.number("celsius"), {csv.number("ky"), csv.number("kp"), csv.number("ke")}});
        return rows;
    }();
    return kRows;
}

const std::vector<HotRow>& boltTable() {
    static const std::vector<HotRow> kRows = [] {
        std::vector<HotRow> rows;
        for (const util::CsvRow& csv : util::readCsv(util::embedded("hot_bolts.csv")))
            rows.push_back({csv.number("celsius"), {csv.number("kb"), 1, 1}});
        return rows;
    }();
    return kRows;
}

HotFactors between(const std::vector<HotRow>& rows, double celsius) {
    if (celsius <= rows.front().celsius)
        return rows.front().factors;
    if (celsius >= rows.back().celsius)
        return rows.back().factors;
    const auto above = std::ranges::lower_bound(rows, celsius, {}, &HotRow::celsius);
    const HotRow &hot = *above, &cool = *(above - 1);
    const double share = (celsius - cool.celsius) / (hot.celsius - cool.celsius);
    const auto mix = [&](double a, double b) { return a + share * (b - a); };
    return {mix(cool.factors.ky, hot.factors.ky), mix(cool.factors.kp, hot.factors.kp),
            mix(cool.factors.kE, hot.factors.kE)};
}

} // namespace

HotFactors hotFactors(Temperature temperature) {
    return between(steelTable(), temperature.celsius());
}

double hotBoltFactor(Temperature temperature) {
    return between(boltTable(), temperature.celsius()).ky;
}

util::Result<HotMaterial> atTemperature(const Material& material, Temperature temperature) {
    const bool hot = temperature.celsius() > kCoolCelsius;
    if (hot && material.metal != Metal::Steel)
        return util::Problem{
            "", say("No figures here for hot %1 (%2): let it cool to 100 C before it carries a load.",
                    {say(nameOf(material.metal).data()), material.name})};
    HotMaterial result{material.yield, material.yield, material.E, {}, false, {}};
    if (!hot)
        return result;
    result.factors = hotFactors(temperature);
    result.yieldForSet = material.yield * result.factors.kp;
    result.yieldForCollapse = material.yield * result.factors.ky;
    result.E = material.E * result.factors.kE;
    result.beyondStandard = material.yield.mpa() > kStrongestMpa;
    result.source = "EN 1993-1-2:2005 Table 3.1";
    return result;
}

std::string_view nameOf(Metal metal) {
    switch (metal) {
    case Metal::Steel:
        return PW_SAY("steel");
    case Metal::Stainless:
        return PW_SAY("stainless steel");
    case Metal::GreyIron:
        return PW_SAY("grey iron");
    case Metal::DuctileIron:
        return PW_SAY("ductile iron");
    case Metal::Aluminium:
        return PW_SAY("aluminium");
    case Metal::CopperAlloy:
        return PW_SAY("bronze or brass");
    }
    return {};
}

} // namespace pw::material
