#include "core/job/station_places.h"
#include "core/plate/bearing.h"
#include "core/plate/elastic.h"
#include "core/plate/pressure.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/build.h"
#include "geometry/outline/tagged_region.h"
#include "tests/fuzz/fuzz.h"
#include "tests/fuzz/plate_bytes.h"

/// The bending of small meshes of whole plates: finite and in balance, or honestly refused.

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    using namespace pw;
    FuzzedDataProvider bytes(data, size);
    fuzz::PlateBytes figures(bytes);
    const plate::Section section{figures.between(1, 60), figures.between(60000, 210000),
                                 figures.between(0.2, 0.4)};
    const double far = figures.between(10, 60), land = figures.between(3, 25),
                 bearing = figures.between(5, 40);
    const bool hard = figures.pick(3) == 0;
    const job::Job job = figures.plate();
    const outline::Built built = outline::buildRegion(job);
    if (!built.ok())
        return 0;
    const auto mesh = mesh::makeMesh(outline::tagged(built.region), {.far = far}, {.mostTriangles = 250});
    if (!mesh)
        return 0;
    // Only lands that have steel under them are loaded; the check looks at that before.
    std::vector<plate::PressureRing> rings;
    for (const shape::Point& p : job::stationCentres(job.stations)) {
        const plate::PressureRing ring{p, 0, land, 1000};
        if (plate::ringIntegrals(*mesh, ring).col(0).sum() > 1)
            rings.push_back(ring);
    }
    const plate::PressureRing centre{{}, 0, bearing, 0};
    if (rings.empty() || plate::ringIntegrals(*mesh, centre).col(0).sum() < 1)
        return 0;
    const Eigen::VectorXd lifting = plate::pressureForces(*mesh, {}, rings);
    PW_HOLDS(std::abs(lifting.sum() - 1000.0 * double(rings.size())) < 1e-6 * 1000 * double(rings.size()),
             "lifting");
    plate::Reaction reaction;
    if (hard) {
        const auto found = plate::hardReaction(*mesh, {}, section, lifting, centre);
        if (!found) {
            PW_HOLDS(fuzz::isFitToShow(found.problem().message), found.problem().message);
            return 0;
        }
        reaction = *found;
    } else {
        reaction = plate::balance(*mesh, {}, lifting, centre);
    }
    const Eigen::VectorXd forces = lifting + reaction.forces;
    PW_HOLDS(forces.allFinite(), "forces");
    const double most = 1000.0 * double(rings.size());
    PW_HOLDS(std::abs(forces.sum()) < 1e-6 * most, "up and down: " + std::to_string(forces.sum()));
    const plate::PlateModel model(*mesh, {});
    const auto solution = plate::solveElastic(model, section, forces);
    if (!solution) {
        PW_HOLDS(fuzz::isFitToShow(solution.problem().message), solution.problem().message);
        return 0;
    }
    PW_HOLDS(solution->nodes.allFinite() && solution->strainEnergy >= 0,
             std::to_string(solution->strainEnergy));
    PW_HOLDS(solution->residual < 1e-5, "residual " + std::to_string(solution->residual));
    PW_HOLDS(solution->pinReaction < 1e-4, "pins carry " + std::to_string(solution->pinReaction));
    return 0;
}
