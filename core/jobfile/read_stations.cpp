#include "core/jobfile/sections.h"

#include <algorithm>

namespace pw::jobfile {

namespace {

/// How many stations the figures speak of, if they say.
std::optional<std::size_t> countOf(const job::Stations& stations) {
    if (!stations.at.empty())
        return stations.at.size();
    if (stations.count)
        return static_cast<std::size_t>(*stations.count);
    return {};
}

void readAt(FieldReader& figures, job::Stations& stations) {
    figures.points("at", stations.at, kMostStations);
    if (stations.at.empty())
        return;
    for (const std::string_view other : {"circle", "start"})
        if (figures.has(other))
            figures.problem(other, "both \"at\" and \"" + std::string(other) +
                                       "\" say where the stations are; take one of them out");
    if (stations.count && !stations.at.empty() &&
        static_cast<std::size_t>(*stations.count) != stations.at.size())
        figures.problem("count", std::to_string(*stations.count) + " stations, but \"at\" lists " +
                                     std::to_string(stations.at.size()) +
                                     "; take \"count\" out or correct it");
}

} // namespace

void readStations(FieldReader& figures, job::Stations& stations) {
    figures.whole("count", stations.count, 1, kMostStations);
    figures.quantity("circle", stations.circle, kSize);
    figures.quantity("start", stations.start, kTurn);
    readAt(figures, stations);
    figures.quantity("access_hole", stations.accessHole, kSize);
    figures.part("hole", stations.hole, readHoleForm);
    figures.quantity("land", stations.land, kSize);
    figures.quantity("retainer", stations.retainer, kSize);
    figures.quantity("keeper", stations.keeper, kSize);
    figures.quantity("pin", stations.pin, kSize);
    figures.quantity("pin_end", stations.pinEnd, kSizeOrZero);
    figures.flags("loaded", stations.loaded, kMostStations);
    const auto count = countOf(stations);
    if (stations.loaded.empty())
        return;
    if (count && stations.loaded.size() != *count)
        figures.problem("loaded", "has " + std::to_string(stations.loaded.size()) + " entries for " +
                                      std::to_string(*count) + " stations; one is needed for each");
    else if (std::ranges::find(stations.loaded, true) == stations.loaded.end())
        figures.problem("loaded", "no station is loaded; at least one must be true");
    else
        return;
    stations.loaded.clear();
}

void readLoad(FieldReader& figures, job::Load& load) {
    figures.range("total", load.total, kForce);
    figures.numbers("share", load.share, 0, 1e6, kMostStations);
    if (!load.share.empty() && std::ranges::all_of(load.share, [](double share) { return share == 0; })) {
        figures.problem("share", "every share is 0; at least one station must carry something");
        load.share.clear();
    }
}

} // namespace pw::jobfile
