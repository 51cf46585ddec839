#include "core/jobfile/sections.h"

#include "core/util/say.h"

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
            figures.problem(
                other,
                say("both \"at\" and \"%1\" say where the stations are; take one of them out", {other}));
    if (stations.count && !stations.at.empty() &&
        static_cast<std::size_t>(*stations.count) != stations.at.size())
        figures.problem("count", say("%1 stations, but \"at\" lists %2; take \"count\" out or correct it",
                                     {*stations.count, stations.at.size()}));
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
        figures.problem("loaded", say("has %1 entries for %2 stations; one is needed for each",
                                      {stations.loaded.size(), *count}));
    else if (std::ranges::find(stations.loaded, true) == stations.loaded.end())
        figures.problem("loaded", say("no station is loaded; at least one must be true"));
    else
        return;
    stations.loaded.clear();
}

void readLoad(FieldReader& figures, job::Load& load) {
    figures.range("total", load.total, kForce);
    figures.numbers("share", load.share, 0, 1e6, kMostStations);
    if (!load.share.empty() && std::ranges::all_of(load.share, [](double share) { return share == 0; })) {
        figures.problem("share", say("every share is 0; at least one station must carry something"));
        load.share.clear();
    }
}

} // namespace pw::jobfile
