#include "core/job/station_places.h"
#include "core/plate/bearing.h"
#include "core/plate/elastic.h"
#include "core/plate/pressure.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/sector.h"
#include "geometry/outline/symmetry.h"
#include "tests/geometry/outline/plates.h"

#include <gtest/gtest.h>

using namespace pw;
using namespace pw::testing;

namespace {

/// Strain energy of the whole plate under its stations' forces and the centre bearing.
double energy(const shape::Region& region, const std::vector<outline::LoadedPlace>& places,
              const plate::Sector& sector, double far) {
    const auto mesh = mesh::makeMesh(outline::cutSector(region, sector),
                                     {.far = far, .nearBore = far / 2, .nearAccess = far / 2});
    EXPECT_TRUE(mesh) << mesh.problem().message;
    std::vector<plate::PressureRing> rings;
    for (const auto& p : places)
        rings.push_back({p.centre, 0, p.outside, p.force});
    const plate::PressureRing bearing{{}, 0, 22, 0};
    const Eigen::VectorXd forces = plate::pressureForces(*mesh, sector, rings);
    const plate::PlateModel model(*mesh, sector);
    const auto solution = plate::solveElastic(model, {12, 205000, 0.3},
                                              forces + plate::balance(*mesh, sector, forces, bearing).forces);
    EXPECT_TRUE(solution) << solution.problem().message;
    return solution->strainEnergy * sector.count;
}

/// Both meshes carry their own error of discretisation; at this size each is well under this.
constexpr double kSameEnergy = 3e-3;

void expectSectorServes(const job::Job& job, int count, int unloaded = -1) {
    const auto region = outline::buildRegion(job).region;
    std::vector<outline::LoadedPlace> places;
    for (const shape::Point& p : job::stationCentres(job.stations))
        places.push_back({p, 17, int(places.size()) == unloaded ? 0.0 : 1250.0});
    if (unloaded >= 0)
        places.erase(places.begin() + unloaded);
    const auto sector = outline::findSector(region, places);
    ASSERT_EQ(sector.count, count);
    const double part = energy(region, places, sector, 4), whole = energy(region, places, {}, 4);
    EXPECT_GT(whole, 0);
    EXPECT_NEAR(part / whole, 1, kSameEnergy);
}

} // namespace

TEST(SolvedSector, StoresItsShareOfTheWholePlatesEnergy) {
    expectSectorServes(discJob(), 12);
    expectSectorServes(barJob(), 4);
    job::Job job = discJob(3);
    job.plate.bore = mm(0);
    expectSectorServes(job, 6);
    job = discJob();
    job.stations.hole = {job::HoleShape::Open, {}, mm(16), {}};
    expectSectorServes(job, 12);
}

TEST(SolvedSector, AHalfPlateServesForAMissingStation) {
    expectSectorServes(discJob(), 2, 2);
}
