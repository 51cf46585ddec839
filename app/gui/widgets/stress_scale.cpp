#include "app/gui/widgets/stress_scale.h"

#include "app/gui/widgets/colour.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

const std::array<QColor, 7>& scaleStops(Tone tone) {
    static const std::array<QColor, 7> kLight{"#D6E1E8", "#B3BCD9", "#B698BF", "#C1799C",
                                              "#C16070", "#A1403F", "#692420"};
    static const std::array<QColor, 7> kDark{"#3B464D", "#636182", "#A26A90", "#D17383",
                                             "#E88B70", "#F6B474", "#FEE7A3"};
    return tone == Tone::Dark ? kDark : kLight;
}

QColor scaleColour(Tone tone, double share) {
    const auto& stops = scaleStops(tone);
    const double place = std::clamp(share, 0.0, 1.0) * static_cast<double>(stops.size() - 1);
    const auto low = std::min(static_cast<std::size_t>(place), stops.size() - 2);
    const double part = place - static_cast<double>(low);
    const Lab a = toLab(stops[low]), b = toLab(stops[low + 1]);
    return fromLab({a.L + (b.L - a.L) * part, a.a + (b.a - a.a) * part, a.b + (b.b - a.b) * part});
}

QColor bandColour(Tone tone, int band) {
    return scaleColour(tone, static_cast<double>(band) / (kScaleBands - 1));
}

double scaleTop(double worst) {
    if (!(worst > 0) || !std::isfinite(worst))
        return 1;
    const double decade = std::pow(10.0, std::floor(std::log10(worst)));
    for (const double step : {1.0, 1.6, 2.0, 2.4, 3.2, 4.0, 6.0, 8.0})
        if (worst <= step * decade * (1 + 1e-12))
            return step * decade;
    return 10 * decade;
}

} // namespace pw::gui
