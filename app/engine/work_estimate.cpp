#include "app/engine/work_estimate.h"

#include "app/engine/plate_field.h"
#include "core/job/station_places.h"
#include "core/material/stock.h"
#include "core/thread/thread.h"
#include "core/units/format.h"
#include "core/util/require.h"
#include "core/util/say.h"
#include "geometry/outline/build.h"
#include "geometry/outline/symmetry.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace pw::engine {

namespace {

/// Seconds of one processor for n unknowns, fitted to tests/bench/work on the machine of DEVELOPERS.md ("What
/// it costs"): whole checks of plates with 3,500, 5,200, 10,400, 22,000 and 30,300 unknowns took
/// 0.89, 1.48, 3.0, 6.4 and 9.6 s; one elastic solution with 10,000 and 64,000 took 0.03 and 0.6 s. Assembly
/// and yielding grow as n, the direct solver as n^1.5; under kSmall a plate fits the processor's cache and
/// each unknown costs less (300 and 2,400 unknowns followed past yield: 0.01 and 0.26 s). A path past yield
/// takes 40 factorisations as a rule; necks that yield first can take ten times as many, which nothing tells
/// before.
constexpr double kElasticLinear = 1e-5, kElasticSolver = 3e-8, kFoldingLinear = 1.6e-4,
                 kFoldingSolver = 2.6e-7;
constexpr double kSmall = 1000;
constexpr double kFixed = 0.03; ///< all that does not bend
/// The same checks came to 53, 69, 119, 232 and 318 MB, the whole program counted in.
constexpr double kMegabytes = 20, kMegabytesEach = 0.0097;

/// The elastic field's meshes, together, in unknowns of the first.
constexpr double kElasticMeshes = 3;
/// A folding with a station hung is followed on a coarser mesh, and not to the end.
constexpr double kHungMesh = 1 / (kCoarse * kCoarse), kHungPart = 0.5;
/// A pull that nobody states a load for is checked again until no set is left.
constexpr double kRatedChecks = 4;
/// Whole checks that a search for changes may cost (kMostWholeChecks of mend.cpp).
constexpr double kMostMendChecks = 14;
constexpr double kWorkers = 2;
/// A proposal is a search for the thinnest stock plate that holds; so many ideas, so many plates each.
constexpr double kIdeas = 5, kPlatesAnIdea = 5;
/// Kinds of thickness and steel that a rack is checked in at most (kMostKeys of rack.cpp).
constexpr std::size_t kMostPieces = 110;

double elastic(double n) {
    return kElasticLinear * n + kElasticSolver * n * std::sqrt(n);
}

double folding(double n) {
    return kFoldingLinear * n * n / (n + kSmall) + kFoldingSolver * n * std::sqrt(n);
}

/// Only what decides symmetry: the same place, the same share.
std::vector<outline::LoadedPlace> loadedPlaces(const job::Job& job) {
    std::vector<outline::LoadedPlace> places;
    const std::vector<shape::Point> centres = job::stationCentres(job.stations);
    for (std::size_t i = 0; i < centres.size(); ++i) {
        const bool loaded = i >= job.stations.loaded.size() || job.stations.loaded[i];
        const double share = i < job.load.share.size() ? job.load.share[i] : 1;
        places.push_back({centres[i], 1, loaded ? share : 0});
    }
    return places;
}

/// Loaded places that no symmetry maps onto one another.
int differentPlaces(const std::vector<outline::LoadedPlace>& places, const plate::Sector& sector) {
    std::vector<shape::Point> different;
    for (const outline::LoadedPlace& place : places) {
        const shape::Point folded = sector.fold(place.centre);
        const bool known = std::any_of(different.begin(), different.end(), [&](shape::Point p) {
            return shape::distance(p, folded) < 1e-6 * (1 + shape::norm(folded));
        });
        if (place.force > 0 && !known)
            different.push_back(folded);
    }
    return static_cast<int>(different.size());
}

/// Grey iron, or what the tests at the bench call brittle, is not followed past yield.
bool isBrittle(const job::Job& job) {
    return job.plate.tests.file == job::FileTest::Skates || job.plate.tests.bend == job::BendTest::Snapped ||
           (job.plate.steel && job.plate.steel->name == "cast iron");
}

} // namespace

WorkEstimate estimateWork(const job::Job& job, WorkOn what, std::size_t pieces) try {
    WorkEstimate work;
    std::optional<units::Length> tapped;
    if (const auto thread = thread::parse(job.plate.boreThread))
        tapped = thread::tappingDrill(*thread);
    const outline::Built built = outline::buildRegion(job, tapped);
    if (!built.ok() || !job.plate.thickness)
        return work;
    work.holes = static_cast<int>(built.region.holes.size());
    const std::vector<outline::LoadedPlace> places = loadedPlaces(job);
    const plate::Sector sector = outline::findSector(built.region, places);
    work.sectorOf = sector.count;
    const auto mesh = firstMesh(built.region, sector, 1, FieldOptions().mostTriangles);
    if (!mesh)
        return work; // too fine a plate: refused as soon as it is tried
    const double n = 3.0 * static_cast<double>(mesh->nodeCount());
    work.unknowns = static_cast<int>(n);

    double check = kFixed + elastic(kElasticMeshes * n);
    double largest = n;
    if (!isBrittle(job)) {
        check += folding(n);
        const int different = differentPlaces(places, sector);
        if (places.size() > 1 && different > 0) {
            // A missing station leaves one mirror line, or none.
            const double lopsided = sector.count == 1 ? n : n * sector.count / 2;
            const int tried = sector.count == 1 ? 1 : different;
            check += tried * kHungPart * folding(kHungMesh * lopsided) + elastic(kHungMesh * lopsided);
            largest = std::max(largest, kHungMesh * lopsided);
        }
    }
    const bool nobodysLoad = job.work == job::Work::Pull && !job.load.total && !job.hub && !job.ram &&
                             !(job.screw && job.screw->wrench);
    if (nobodysLoad)
        check *= kRatedChecks;
    work.megabytes = kMegabytes + kMegabytesEach * largest;
    switch (what) {
    case WorkOn::Check:
        work.seconds = check;
        work.mostSeconds = check * (1 + kMostMendChecks);
        return work;
    case WorkOn::Ladder:
        work.seconds =
            check * static_cast<double>(material::stockThicknesses(job.preferred).size()) / kWorkers;
        break;
    case WorkOn::Rack:
        work.seconds = check * static_cast<double>(std::min(pieces, kMostPieces)) / kWorkers;
        break;
    case WorkOn::Propose:
        work.seconds = check * kIdeas * kPlatesAnIdea / kWorkers;
        break;
    }
    work.mostSeconds = work.seconds;
    work.megabytes = kMegabytes + (work.megabytes - kMegabytes) * kWorkers;
    return work;
} catch (const util::Bug&) {
    return {}; // the check itself says what it tripped over
}

std::size_t kindsOf(const rack::Rack& rack) {
    std::set<std::pair<long, std::string>> kinds;
    for (const rack::Offcut& offcut : rack.offcuts)
        kinds.insert({std::lround(10 * rack::soundThickness(offcut).mm()),
                      offcut.steel ? offcut.steel->name : std::string()});
    return kinds.size();
}

namespace {

/// In the unit a person would say it in, to one or two figures.
std::string sayTime(double seconds) {
    constexpr double kMinute = 60, kHour = 3600;
    if (seconds < 100)
        return sayMany("%n seconds", "1 second", static_cast<int>(std::max(1.0, std::round(seconds))));
    if (seconds < 1.5 * kHour)
        return sayMany("%n minutes", "1 minute", static_cast<int>(std::round(seconds / kMinute)));
    return sayMany("%n hours", "1 hour", static_cast<int>(std::round(seconds / kHour)));
}

} // namespace

std::string foretold(const WorkEstimate& work) {
    if (work.mostSeconds <= kLongSeconds && work.megabytes <= kMuchMegabytes)
        return {};
    const std::string time = sayTime(work.seconds), most = sayTime(work.mostSeconds);
    std::string words =
        work.sectorOf == 1
            ? say("The plate has no symmetry and %1 holes: this takes about %2.", {work.holes, time})
            : say("The plate has %1 holes: this takes about %2.", {work.holes, time});
    if (most != time)
        words +=
            " " + say("If it does not hold, looking for changes that mend it can take up to %1.", {most});
    if (work.megabytes > kMuchMegabytes)
        words += " " + say("It needs about %1 GB of memory.", {units::number(work.megabytes / 1000, 2)});
    return words;
}

} // namespace pw::engine
