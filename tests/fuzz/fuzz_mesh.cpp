#include "core/job/station_places.h"
#include "geometry/mesh/mesher.h"
#include "geometry/mesh/quality.h"
#include "geometry/outline/build.h"
#include "geometry/outline/clearance.h"
#include "geometry/outline/offset.h"
#include "geometry/outline/sector.h"
#include "geometry/outline/symmetry.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/plate_bytes.h"

/// From figures to a mesh: outline, holes, parallel curves, symmetry, one sector, its triangles.

namespace {

using namespace pw;

/// Every point of the parallel curve is as far from the original as was asked (offset.h: to 3e-7 of the
/// distance, and an arc may be taken as its chord within 1e-8 of the size).
void expectParallel(const shape::Loop& loop, double distance) {
    const auto offset = outline::offsetLoop(loop, distance);
    if (!offset) {
        PW_HOLDS(fuzz::isFitToShow(offset.problem().message), offset.problem().message);
        return;
    }
    const shape::Box box = shape::bounds(loop);
    const double slack = 1e-6 * std::abs(distance) + 3e-8 * (box.width() + box.height());
    for (const shape::Loop& made : offset->loops)
        for (std::size_t i = 0; i < made.size(); ++i)
            for (const double t : {0.0, 0.3, 0.7}) {
                const double away = shape::distanceTo(loop, made.side(i).pointAt(t));
                PW_HOLDS(std::abs(away - std::abs(distance)) <= slack,
                         std::to_string(away) + " for " + std::to_string(distance));
            }
}

void expectSound(const outline::TaggedRegion& piece, double far) {
    const auto mesh = mesh::makeMesh(piece, {.far = far, .nearBore = far / 2, .nearAccess = far / 2},
                                     {.mostTriangles = 1500});
    if (!mesh) {
        PW_HOLDS(fuzz::isFitToShow(mesh.problem().message), mesh.problem().message);
        return;
    }
    PW_HOLDS(mesh->triangleCount() <= 1500, std::to_string(mesh->triangleCount()));
    const mesh::Quality quality = mesh::qualityOf(*mesh);
    PW_HOLDS(quality.leastJacobian > 0, std::to_string(quality.leastJacobian));
    const double area = outline::area(piece);
    // Quadratic sides of 30 degrees leave 4e-5 of a circle's area, and thin rests of a plate have more edge
    // for their area than a plate.
    PW_HOLDS(std::abs(quality.area - area) <= 1e-3 * area + 1e-3,
             std::to_string(quality.area) + " for " + std::to_string(area));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    FuzzedDataProvider bytes(data, size);
    fuzz::PlateBytes figures(bytes);
    const double far = figures.between(4, 40), distance = figures.between(0.5, 30);
    const bool grow = figures.pick(2) == 0;
    const job::Job job = figures.plate();
    const outline::Built built = outline::buildRegion(job);
    for (const util::Problem& problem : built.problems)
        PW_HOLDS(!problem.field.empty() && fuzz::isFitToShow(problem.message), problem.message);
    if (!built.ok())
        return 0;
    const shape::Region& region = built.region;
    const double area = shape::area(region);
    PW_HOLDS(area > 0, std::to_string(area));
    for (const outline::Ligament& ligament : outline::ligaments(region))
        PW_HOLDS(ligament.width >= 0 && std::isfinite(ligament.width), std::to_string(ligament.width));
    expectParallel(region.rim, grow ? distance : -distance);

    std::vector<outline::LoadedPlace> places;
    for (const shape::Point& p : job::stationCentres(job.stations))
        places.push_back({p, 17, 1250});
    const plate::Sector sector = outline::findSector(region, places);
    const outline::TaggedRegion piece = outline::cutSector(region, sector);
    PW_HOLDS(std::abs(outline::area(piece) * sector.count - area) <= 1e-6 * area,
             std::to_string(outline::area(piece)) + " times " + std::to_string(sector.count) + " for " +
                 std::to_string(area));
    expectSound(piece, far);
    if (sector.count > 1)
        expectSound(outline::tagged(region), far);
    return 0;
}
