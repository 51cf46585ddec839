#include "core/jobfile/sections.h"

#include "core/util/say.h"

#include <algorithm>
#include <cmath>

namespace pw::jobfile {

namespace {

constexpr std::size_t kMostReadings = 1000;

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

/// [1, 2], [2, 3]: which two pins the calipers lay on.
bool readPins(FieldReader& figures, job::PinReading& reading) {
    std::vector<double> pins;
    if (!figures.has("pins"))
        return figures.missing("pins");
    const std::size_t before = figures.problemCount();
    figures.numbers("pins", pins, 1, kMostStations, 2);
    if (figures.problemCount() != before)
        return false;
    if (pins.size() != 2 || pins[0] != std::floor(pins[0]) || pins[1] != std::floor(pins[1]) ||
        pins[0] == pins[1]) {
        figures.problem("pins", "must be the numbers of two pins, like [1, 2]");
        return false;
    }
    reading.first = static_cast<int>(pins[0]);
    reading.second = static_cast<int>(pins[1]);
    return true;
}

bool readPinReading(FieldReader& figures, job::PinReading& reading) {
    const bool named = readPins(figures, reading);
    figures.quantity("over", reading.over, kSize);
    figures.quantity("between", reading.between, kSize);
    if (reading.over && reading.between && *reading.between >= *reading.over) {
        figures.problem("between", "must be less than \"over\"; are the two swapped?");
        return false;
    }
    return named;
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
    figures.rows("readings", stations.readings, kMostReadings, readPinReading);
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
