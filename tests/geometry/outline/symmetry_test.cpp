#include "geometry/outline/symmetry.h"

#include "core/job/station_places.h"
#include "geometry/outline/sector.h"
#include "tests/geometry/outline/plates.h"

#include <gtest/gtest.h>

using namespace pw;
using namespace pw::testing;
using outline::LoadedPlace;
using std::numbers::pi;

namespace {

std::vector<LoadedPlace> evenLoads(const job::Job& job) {
    std::vector<LoadedPlace> places;
    for (const shape::Point& p : job::stationCentres(job.stations))
        places.push_back({p, 17, 1250});
    return places;
}

plate::Sector sectorOf(const job::Job& job) {
    return outline::findSector(outline::buildRegion(job).region, evenLoads(job));
}

bool onALineOf(const plate::Sector& sector, shape::Point p) {
    return std::abs(shape::cross(shape::polar(1, sector.line0), p)) < 1e-9;
}

} // namespace

TEST(Symmetry, NEvenHolesGiveASectorOfOneInTwoN) {
    for (const int n : {2, 3, 4, 5, 6, 8}) {
        job::Job job = discJob(n, 20);
        job.stations.start = Angle::fromDegree(17);
        const auto sector = sectorOf(job);
        EXPECT_EQ(sector.count, 2 * n);
        EXPECT_NEAR(sector.line0, 17 * pi / 180, 1e-12) << "line 0 runs through station 1";
    }
}

TEST(Symmetry, OutlineAndHolesShareTheirSymmetry) {
    EXPECT_EQ(sectorOf(barJob()).count, 4);
    EXPECT_EQ(sectorOf(barJob(true)).count, 4);
    job::Job square = discJob(4);
    square.plate.outline->shape = job::OutlineShape::Rectangle;
    square.plate.outline->length = square.plate.outline->width = mm(140);
    EXPECT_EQ(sectorOf(square).count, 8);
    square.stations.start = Angle::fromDegree(45);
    EXPECT_EQ(sectorOf(square).count, 8);
    square.stations.start = Angle::fromDegree(20);
    EXPECT_EQ(sectorOf(square).count, 1)
        << "turned by 90 degrees it maps onto itself, but no mirror line does it";
    square.stations.count = 3;
    square.stations.start = Angle::fromDegree(90);
    EXPECT_EQ(sectorOf(square).count, 2);
    EXPECT_EQ(sectorOf(polygonJob(6, 90)).count, 6) << "three holes on the corners of a hexagon";
    EXPECT_EQ(sectorOf(polygonJob(4, 90)).count, 2);
}

TEST(Symmetry, OneLopsidedLoadLeavesOnlyTheMirrorThroughIt) {
    const job::Job job = discJob();
    const auto region = outline::buildRegion(job).region;
    auto places = evenLoads(job);
    places[2].force = 0;
    const auto sector = outline::findSector(region, places);
    EXPECT_EQ(sector.count, 2);
    EXPECT_TRUE(onALineOf(sector, places[2].centre));
    places[2].force = 1250 * (1 + 1e-6);
    EXPECT_EQ(outline::findSector(region, places).count, 2);
    places[3].force = 900;
    EXPECT_EQ(outline::findSector(region, places).count, 1);
    places = evenLoads(job);
    places[0].outside = 18;
    EXPECT_EQ(outline::findSector(region, places).count, 2);
}

TEST(Symmetry, AnExtraHoleBreaksIt) {
    job::Job job = discJob();
    job.plate.holes.push_back({{mm(20), mm(3)}, mm(5), {}});
    EXPECT_EQ(sectorOf(job).count, 1);
    job.plate.holes.back().at = {mm(25), mm(0)};
    const auto sector = sectorOf(job);
    EXPECT_EQ(sector.count, 2);
    EXPECT_TRUE(onALineOf(sector, {1, 0}));
}

TEST(Symmetry, SlotsTurnedAllOneWayHaveNoMirror) {
    job::Job job = discJob();
    job.stations.hole = {job::HoleShape::Slot, mm(24), mm(10), Angle::fromDegree(25)};
    EXPECT_EQ(sectorOf(job).count, 1);
    job.stations.hole.turn = Angle::fromDegree(90);
    EXPECT_EQ(sectorOf(job).count, 12);
    job.stations.hole = {job::HoleShape::Open, {}, mm(10), {}};
    EXPECT_EQ(sectorOf(job).count, 12);
}

TEST(Symmetry, ASolidCentreIsNotCutIntoNeedles) {
    job::Job job = discJob(8, 14);
    job.plate.bore = mm(0);
    EXPECT_EQ(sectorOf(job).count, 8);
    const shape::Region ring{shape::circleLoop({}, 70), {{shape::circleLoop({}, 10), shape::Part::Bore, 0}}};
    EXPECT_GT(outline::findSector(ring, {}).count, 1);
}

TEST(Symmetry, FoundSectorsAreTrueOnRandomPlates) {
    constexpr unsigned kSeed = 11;
    std::mt19937 random(12);
    int symmetric = 0;
    for (const job::Job& job : soundRandomJobs(300, kSeed)) {
        const auto region = outline::buildRegion(job).region;
        const auto sector = outline::findSector(region, evenLoads(job));
        symmetric += sector.count > 1;
        // Material is where the folded point has material.
        for (int i = 0; i < 50; ++i) {
            const shape::Point p = shape::polar(0.1 + double(random() % 1000) / 10, double(random() % 1000));
            double edge = shape::distanceTo(region.rim, p);
            for (const auto& hole : region.holes)
                edge = std::min(edge, shape::distanceTo(hole.loop, p));
            if (edge > 1e-4) {
                EXPECT_EQ(shape::containsMaterial(region, p),
                          shape::containsMaterial(region, sector.fold(p)));
            }
        }
    }
    EXPECT_GT(symmetric, 50) << "the sample must exercise the search";
}

TEST(CutSector, SectorTimesCountIsThePlate) {
    int cut = 0;
    for (const job::Job& job : soundRandomJobs(300, 11)) {
        const auto region = outline::buildRegion(job).region;
        const auto sector = outline::findSector(region, evenLoads(job));
        const auto piece = outline::cutSector(region, sector);
        cut += sector.count > 1;
        EXPECT_NEAR(outline::area(piece) * sector.count, shape::area(region), 1e-7 * shape::area(region));
        for (const auto& loop : piece.loops)
            for (std::size_t i = 0; i < loop.size(); ++i) {
                EXPECT_EQ(loop[i].side.to, loop[(i + 1) % loop.size()].side.from);
                // Every piece is on the plate's own edge or on a line of the sector.
                const shape::Point p = loop[i].side.pointAt(0.3);
                double away = 1e9;
                if (loop[i].kind == plate::MeshEdge::Kind::Symmetry)
                    away = std::abs(
                        shape::cross(shape::polar(1, sector.line0 + loop[i].index * sector.opening()), p));
                else if (loop[i].kind == plate::MeshEdge::Kind::Rim)
                    away = shape::distanceTo(region.rim, p);
                else
                    for (const auto& hole : region.holes)
                        away = std::min(away, shape::distanceTo(hole.loop, p));
                EXPECT_LT(away, 1e-5);
            }
    }
    EXPECT_GT(cut, 50);
}

TEST(CutSector, ATwelfthOfTheSixHoleDiscHasItsSevenSides) {
    const job::Job job = discJob();
    const auto region = outline::buildRegion(job).region;
    const auto piece = outline::cutSector(region, sectorOf(job));
    ASSERT_EQ(piece.loops.size(), 1u);
    double symmetry[2] = {0, 0}, rim = 0, access = 0, bore = 0;
    for (const auto& s : piece.loops.front())
        switch (s.kind) {
        case plate::MeshEdge::Kind::Symmetry:
            symmetry[s.index] += s.side.length();
            break;
        case plate::MeshEdge::Kind::Rim:
            rim += s.side.length();
            break;
        case plate::MeshEdge::Kind::Bore:
            bore += s.side.length();
            break;
        default:
            access += s.side.length();
            EXPECT_EQ(s.index, 0);
        }
    EXPECT_NEAR(symmetry[0], 60 - 24, 1e-9);
    EXPECT_NEAR(symmetry[1], 60, 1e-9);
    EXPECT_NEAR(rim, 70 * pi / 6, 1e-9);
    EXPECT_NEAR(bore, 10 * pi / 6, 1e-9);
    EXPECT_NEAR(access, 12 * pi, 1e-9);
}

TEST(CutSector, WithoutABoreTheLinesMeetAtTheOrigin) {
    for (const int n : {1, 2, 3}) {
        job::Job job = discJob(n);
        job.plate.bore = mm(0);
        const auto sector = sectorOf(job);
        ASSERT_EQ(sector.count, 2 * n);
        const auto region = outline::buildRegion(job).region;
        const auto piece = outline::cutSector(region, sector);
        EXPECT_NEAR(outline::area(piece) * sector.count, shape::area(region), 1e-8);
        int atOrigin = 0;
        for (const auto& s : piece.loops.front())
            atOrigin += shape::norm(s.side.from) < 1e-9;
        EXPECT_EQ(atOrigin, 1);
    }
}
