#include "geometry/mesh/mesher.h"

#include "core/job/station_places.h"
#include "geometry/mesh/quality.h"
#include "geometry/outline/sector.h"
#include "geometry/outline/symmetry.h"
#include "tests/geometry/outline/plates.h"

#include <cmath>
#include <future>
#include <gtest/gtest.h>
#include <map>
#include <numbers>

using namespace pw;
using namespace pw::testing;
using mesh::makeMesh;
using mesh::qualityOf;
using mesh::SizeField;
using outline::tagged;
using outline::TaggedRegion;
using std::numbers::pi;

namespace {

constexpr double kOnCurve = 1e-9; ///< of the piece's size: rounding only

shape::Region regionOf(const job::Job& job) {
    return outline::buildRegion(job).region;
}

TaggedRegion sectorOf(const job::Job& job, plate::Sector* sector = nullptr) {
    std::vector<outline::LoadedPlace> places;
    for (const shape::Point& p : job::stationCentres(job.stations))
        places.push_back({p, 17, 1250});
    const auto found = outline::findSector(regionOf(job), places);
    if (sector)
        *sector = found;
    return outline::cutSector(regionOf(job), found);
}

double distanceToEdge(const TaggedRegion& piece, const plate::MeshEdge& edge, shape::Point p) {
    double least = 1e9;
    for (const auto& loop : piece.loops)
        for (const auto& s : loop)
            if (s.kind == edge.kind && s.index == edge.index)
                least = std::min(least, s.side.distanceTo(p));
    return least;
}

/// All that must hold for any mesh of any piece.
void expectSound(const plate::Mesh& mesh, const TaggedRegion& piece) {
    const auto quality = qualityOf(mesh);
    EXPECT_GE(quality.leastJacobian, 0.2);
    EXPECT_GT(quality.leastAngle, 0);
    std::map<std::pair<int, int>, int> sides; // directed corner pairs, with their middle node
    for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
        for (int i = 0; i < 3; ++i) {
            const auto side = std::pair(mesh.triangles(i, t), mesh.triangles((i + 1) % 3, t));
            EXPECT_TRUE(sides.emplace(side, mesh.triangles(3 + i, t)).second)
                << "two triangles on one side of an edge";
        }
    std::size_t open = 0;
    for (const auto& [side, middle] : sides) {
        const auto twin = sides.find({side.second, side.first});
        open += twin == sides.end();
        if (twin != sides.end()) {
            EXPECT_EQ(twin->second, middle) << "neighbours share their middle node";
        }
    }
    EXPECT_EQ(open, mesh.edges.size());
    const double size = mesh.nodes.cwiseAbs().maxCoeff();
    std::map<int, int> into;
    for (const plate::MeshEdge& e : mesh.edges) {
        const auto side = sides.find({e.nodes[0], e.nodes[2]});
        ASSERT_NE(side, sides.end()) << "the material is on the left";
        EXPECT_EQ(side->second, e.nodes[1]);
        for (const int n : e.nodes)
            EXPECT_LT(distanceToEdge(piece, e, {mesh.nodes(0, n), mesh.nodes(1, n)}), kOnCurve * size);
        ++into[e.nodes[2]];
        --into[e.nodes[0]];
    }
    for (const auto& [node, surplus] : into)
        EXPECT_EQ(surplus, 0) << "the edges close";
}

} // namespace

TEST(Mesher, EveryShapeOfPlateIsMeshedSoundly) {
    std::vector<job::Job> jobs{
        discJob(),    discJob(1),        discJob(3, 34),         barJob(),
        barJob(true), polygonJob(3, 90), polygonJob(8, 90, 0.1), polygonJob(5, 90, -0.1)};
    job::Job job = discJob();
    job.stations.hole = {job::HoleShape::Slot, mm(30), mm(12), {}};
    jobs.push_back(job);
    job.stations.hole = {job::HoleShape::Open, {}, mm(16), {}};
    jobs.push_back(job);
    job.plate.bore = mm(0);
    jobs.push_back(job);
    job = barJob();
    job.stations.hole.shape = job::HoleShape::Open;
    jobs.push_back(job);
    for (std::size_t i = 0; i < jobs.size(); ++i) {
        SCOPED_TRACE(i);
        for (const double far : {20.0, 6.0})
            for (const auto& piece : {tagged(regionOf(jobs[i])), sectorOf(jobs[i])}) {
                const auto mesh = makeMesh(piece, {.far = far, .nearBore = far / 2, .nearAccess = far / 2});
                ASSERT_TRUE(mesh) << mesh.problem().message;
                expectSound(*mesh, piece);
                // Quadratic sides of 30 degrees leave 4e-5 of a circle's area; a plate is more than its
                // holes.
                EXPECT_NEAR(qualityOf(*mesh).area / outline::area(piece), 1, 1e-4);
                EXPECT_GT(qualityOf(*mesh).leastAngle, 18);
            }
    }
}

TEST(Mesher, AreaConvergesWithTheFourthPowerOfTheSize) {
    const auto piece = tagged(regionOf(discJob()));
    double last = 0;
    for (const double h : {4.0, 2.0, 1.0}) {
        const auto mesh = makeMesh(piece, {.far = h, .grade = 0.3});
        ASSERT_TRUE(mesh);
        const double error = std::abs(qualityOf(*mesh).area / outline::area(piece) - 1);
        if (last > 0) {
            EXPECT_LT(error, last / 9); // 16 in the limit; chords do not halve exactly
        }
        last = error;
    }
    EXPECT_LT(last, 1e-7);
}

TEST(Mesher, SectorTimesCountIsThePlate) {
    plate::Sector sector;
    const auto piece = sectorOf(discJob(), &sector);
    const auto mesh = makeMesh(piece, {.far = 2});
    ASSERT_TRUE(mesh);
    EXPECT_EQ(sector.count, 12);
    EXPECT_NEAR(qualityOf(*mesh).area * sector.count / shape::area(regionOf(discJob())), 1, 1e-6);
    for (const plate::MeshEdge& e : mesh->edges) {
        if (e.kind != plate::MeshEdge::Kind::Symmetry)
            continue;
        const shape::Point line = shape::polar(1, sector.line0 + e.index * sector.opening());
        for (const int n : e.nodes)
            EXPECT_NEAR(shape::cross(line, {mesh->nodes(0, n), mesh->nodes(1, n)}), 0, 1e-12);
    }
}

TEST(Mesher, ThinLigamentsAreMeshedThrough) {
    for (const double width : {3.0, 1.0, 0.5, 0.2}) {
        SCOPED_TRACE(width);
        std::vector<job::Job> jobs{discJob(6, 50 - width), discJob(), discJob(), barJob()};
        jobs[0].plate.outline->diameter = mm(160);
        jobs[1].plate.outline->diameter = mm(2 * (50 + 12 + width));
        jobs[2].plate.bore = mm(2 * (50 - 12 - width));
        jobs[3].plate.bore = mm(50 - 2 * width);
        for (std::size_t i = 0; i < jobs.size(); ++i) {
            SCOPED_TRACE(i);
            for (const auto& piece : {tagged(regionOf(jobs[i])), sectorOf(jobs[i])}) {
                const auto mesh = makeMesh(piece, {.far = 10, .nearBore = 5, .nearAccess = 5});
                ASSERT_TRUE(mesh) << mesh.problem().message;
                expectSound(*mesh, piece);
                EXPECT_NEAR(qualityOf(*mesh).area / outline::area(piece), 1, 1e-4);
                EXPECT_GT(qualityOf(*mesh).leastAngle, 15);
                EXPECT_LT(mesh->triangleCount(), 6000);
            }
        }
    }
}

TEST(Mesher, ThreeHundredRandomPlatesAreSound) {
    constexpr unsigned kSeed = 31;
    double leastAngle = 180;
    int number = 0, most = 0;
    for (const job::Job& job : soundRandomJobs(300, kSeed)) {
        SCOPED_TRACE(number++);
        for (const auto& piece : {tagged(regionOf(job)), sectorOf(job)}) {
            const auto mesh = makeMesh(piece, {.far = 12, .nearBore = 6, .nearAccess = 5});
            ASSERT_TRUE(mesh) << mesh.problem().message;
            expectSound(*mesh, piece);
            EXPECT_NEAR(qualityOf(*mesh).area / outline::area(piece), 1, 1e-4);
            leastAngle = std::min(leastAngle, qualityOf(*mesh).leastAngle);
            most = std::max(most, int(mesh->triangleCount()));
            if (HasFatalFailure() || HasNonfatalFailure())
                return;
        }
    }
    std::printf("least angle of 300 plates: %.1f degrees, most triangles %d\n", leastAngle, most);
}

TEST(Mesher, TheSameInputGivesTheSameMeshInEveryThread) {
    const auto piece = tagged(regionOf(discJob()));
    const auto other = tagged(regionOf(barJob()));
    const SizeField size{.far = 5, .nearAccess = 2};
    const auto first = makeMesh(piece, size);
    std::vector<std::future<bool>> runs;
    for (int i = 0; i < 8; ++i)
        runs.push_back(std::async(std::launch::async, [&, i] {
            (void)makeMesh(other, {.far = 4.0 + i});
            const auto again = makeMesh(piece, size);
            return again->nodes == first->nodes && again->triangles == first->triangles;
        }));
    for (auto& run : runs)
        EXPECT_TRUE(run.get());
}

TEST(Mesher, SidesFollowTheSizeField) {
    const auto piece = tagged(regionOf(discJob()));
    const SizeField size{.far = 12, .nearAccess = 1.5, .grade = 0.3};
    const auto mesh = makeMesh(piece, size);
    ASSERT_TRUE(mesh);
    const mesh::SizeAt wanted(size, piece);
    for (Eigen::Index t = 0; t < mesh->triangleCount(); ++t)
        for (int i = 0; i < 3; ++i) {
            const Eigen::Vector2d a = mesh->nodes.col(mesh->triangles(i, t)),
                                  b = mesh->nodes.col(mesh->triangles((i + 1) % 3, t));
            const Eigen::Vector2d m = 0.5 * (a + b);
            EXPECT_LT((b - a).norm(), 2 * wanted({m.x(), m.y()}));
        }
    // As many triangles as equilateral ones of the wanted size would be, within a third.
    double expected = 0;
    const shape::Region region = regionOf(discJob());
    for (double r = 10.25; r < 70; r += 0.5)
        for (double a = 0; a < 2 * pi; a += 0.5 / r) {
            const shape::Point p = shape::polar(r, a);
            if (shape::containsMaterial(region, p))
                expected += 0.25 / (std::sqrt(3.0) / 4 * std::pow(wanted(p), 2));
        }
    EXPECT_NEAR(double(mesh->triangleCount()) / expected, 1, 0.34);
}

TEST(Mesher, ABackgroundFieldRefinesWhereItSaysSo) {
    const auto piece = tagged(regionOf(discJob()));
    const auto coarse = makeMesh(piece, {.far = 8});
    std::vector<double> sizes;
    for (Eigen::Index i = 0; i < coarse->nodeCount(); ++i)
        sizes.push_back(std::max(1.0, 0.3 * (coarse->nodes.col(i) - Eigen::Vector2d(62, 0)).norm()));
    SizeField field{.far = 8};
    field.background = std::make_shared<const mesh::BackgroundSizes>(*coarse, sizes);
    EXPECT_NEAR(field.background->at({coarse->nodes(0, 5), coarse->nodes(1, 5)}), sizes[5], 1e-9);
    const auto fine = makeMesh(piece, field);
    ASSERT_TRUE(fine);
    expectSound(*fine, piece);
    const auto countNear = [](const plate::Mesh& mesh, Eigen::Vector2d p) {
        int count = 0;
        for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
            count += (mesh.nodes.col(mesh.triangles(0, t)) - p).norm() < 6;
        return count;
    };
    EXPECT_GT(countNear(*fine, {62, 0}), 5 * countNear(*coarse, {62, 0}));
    EXPECT_LT(countNear(*fine, {-62, 0}), 2 * countNear(*coarse, {-62, 0}) + 4);
}

TEST(Mesher, PlatesThatCannotBeMeshedAreProblemsNotCrashes) {
    const auto whole = shape::circleLoop({}, 70);
    const auto problem = [](const shape::Region& region, mesh::MeshLimits limits = {}) -> std::string {
        const auto mesh = makeMesh(tagged(region), {.far = 5}, limits);
        return mesh ? "" : mesh.problem().message;
    };
    const auto hole = [](shape::Loop loop) { return shape::Hole{std::move(loop), shape::Part::Extra, 0}; };
    EXPECT_NE(problem({whole, {hole(shape::circleLoop({60, 0}, 12))}}), "") << "over the rim";
    EXPECT_NE(problem({whole, {hole(shape::circleLoop({58, 0}, 12))}}), "") << "touching the rim";
    EXPECT_NE(problem({whole, {hole(shape::circleLoop({20, 0}, 12)), hole(shape::circleLoop({30, 0}, 12))}}),
              "");
    EXPECT_NE(problem({whole, {hole(shape::circleLoop({20, 0}, 12)), hole(shape::circleLoop({44, 0}, 12))}}),
              "");
    EXPECT_NE(problem({whole, {hole(whole)}}), "");
    EXPECT_NE(problem({whole, {hole(shape::circleLoop({200, 0}, 12))}}), "") << "outside";
    EXPECT_NE(problem({{{{{0, 0}, 0}, {{50, 50}, 0}, {{50, 0}, 0}, {{0, 50}, 0}}}, {}}), "") << "bow tie";
    EXPECT_NE(problem({{}, {}}), "");
    EXPECT_NE(problem({whole, {}}, {.mostTriangles = 50}).find("more than 50"), std::string::npos);
}
