#include "geometry/exchange/cut_rates.h"

#include "core/util/require.h"

#include <algorithm>
#include <cmath>

namespace pw::exchange {

CutRates usualRates(job::Process process, units::Length thickness) {
    const double t = thickness.mm();
    util::require(t > 0, "usualRates: thickness must be above zero");
    CutRates rates;
    if (process == job::Process::PlasmaTable) {
        rates.feed = std::clamp(7000 / t, 150.0, 5000.0);
        rates.pierceSeconds = std::max(0.3, t / 12);
    } else {
        rates.feed = 800 / std::pow(t, 0.25);
        rates.pierceSeconds = 5 + t / 2;
    }
    // What a person would set: two figures are plenty for a guess.
    rates.feed = std::round(rates.feed / 10) * 10;
    rates.pierceSeconds = std::round(rates.pierceSeconds * 10) / 10;
    return rates;
}

} // namespace pw::exchange
