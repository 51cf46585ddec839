#include "core/job/station_places.h"

#include <numbers>

namespace pw::job {

std::vector<shape::Point> stationCentres(const Stations& stations) {
    std::vector<shape::Point> centres;
    for (const PointXY& p : stations.at)
        centres.push_back({p.x.mm(), p.y.mm()});
    if (!centres.empty() || !stations.count || !stations.circle)
        return centres;
    const double start = stations.start.value_or(Angle::fromRadian(0)).radian();
    for (int i = 0; i < *stations.count; ++i)
        centres.push_back(
            shape::polar(stations.circle->mm() / 2, start + 2 * std::numbers::pi * i / *stations.count));
    return centres;
}

} // namespace pw::job
