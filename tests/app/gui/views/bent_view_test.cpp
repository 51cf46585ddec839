#include "app/gui/views/bent_raster.h"
#include "app/gui/views/bent_shape.h"
#include "app/gui/views/camera.h"
#include "geometry/mesh/mesher.h"
#include "geometry/outline/sector.h"
#include "geometry/outline/tagged_region.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <random>

namespace pw::gui {
namespace {

constexpr double kPi = std::numbers::pi;

TEST(Camera, sees_the_plan_from_straight_above) {
    Camera camera;
    camera.elevation = kPi / 2;
    camera.scale = 2;
    camera.centre = {100, 50};
    const auto seen = camera.see(10, 20, 7);
    EXPECT_NEAR(seen.x, 120, 1e-9);
    EXPECT_NEAR(seen.y, 10, 1e-9);
    EXPECT_NEAR(seen.depth, 7, 1e-9); // what stands up is nearer
}

TEST(Camera, sees_only_height_from_the_edge_and_the_near_side_first) {
    Camera camera;
    camera.elevation = 0;
    const auto low = camera.see(5, -30, 0), high = camera.see(5, -30, 4), far = camera.see(5, 30, 0);
    EXPECT_NEAR(low.y - high.y, 4, 1e-9);
    EXPECT_NEAR(low.y, far.y, 1e-9);
    EXPECT_GT(low.depth, far.depth);
}

TEST(Camera, keeps_lengths_true_and_turns_without_stretching) {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> any(-50, 50);
    for (int i = 0; i < 50; ++i) {
        Camera camera;
        camera.yaw = any(random);
        camera.elevation = std::abs(any(random)) / 40;
        const double x = any(random), y = any(random), z = any(random);
        const auto seen = camera.see(x, y, z);
        EXPECT_NEAR(std::hypot(seen.x, seen.y, seen.depth), std::hypot(x, y, z), 1e-9);
    }
}

TEST(Camera, stays_above_the_plate_however_far_it_is_dragged) {
    Camera camera = Camera::first();
    camera.turn({0, -5000});
    EXPECT_DOUBLE_EQ(camera.elevation, Camera::kLeastElevation);
    camera.turn({0, 90000});
    EXPECT_DOUBLE_EQ(camera.elevation, Camera::kMostElevation);
    camera.turn({1e6, 0});
    EXPECT_LE(std::abs(camera.yaw), kPi + 1e-9);
}

TEST(Camera, fits_the_plate_into_the_view_at_any_turn) {
    const QRectF view(20, 60, 500, 300);
    for (double elevation : {0.06, 0.5, 1.2, kPi / 2})
        for (double yaw = 0; yaw < 6; yaw += 0.7) {
            Camera camera;
            camera.elevation = elevation;
            camera.yaw = yaw;
            camera.fit(90, -5, 25, view);
            for (double turn = 0; turn < 2 * kPi; turn += 0.1)
                for (const double z : {-5.0, 25.0}) {
                    const auto seen = camera.see(90 * std::cos(turn), 90 * std::sin(turn), z);
                    EXPECT_TRUE(view.adjusted(-1e-6, -1e-6, 1e-6, 1e-6).contains(QPointF(seen.x, seen.y)));
                }
        }
}

/// A ring of 40 and 100 mm, or one sixth of it, lifted by r^2 / 1e4.
engine::Picture ring(int sectors) {
    engine::Picture picture;
    shape::Region region;
    region.rim = shape::circleLoop({0, 0}, 100);
    region.holes.push_back({shape::circleLoop({0, 0}, 40), shape::Part::Bore, 0});
    picture.sector = {sectors, 0};
    auto tagged = outline::tagged(region);
    if (sectors > 1)
        tagged = outline::cutSector(region, picture.sector);
    auto mesh = mesh::makeMesh(tagged, {.far = 12, .nearBore = 8, .nearAccess = 8});
    picture.mesh = std::move(*mesh);
    const auto count = picture.mesh.nodeCount();
    picture.deflection.resize(count);
    picture.vonMises.resize(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        picture.deflection[i] = picture.mesh.nodes.col(i).squaredNorm() / 1e4;
        picture.vonMises[i] = picture.mesh.nodes.col(i).norm();
    }
    return picture;
}

double areaOf(const BentShape& shape) {
    double area = 0;
    for (const auto& t : shape.triangles) {
        const auto &a = shape.points[t.a], &b = shape.points[t.b], &c = shape.points[t.c];
        const double twice = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
        EXPECT_GT(twice, 0); // all turn the same way, mirrored or not
        area += twice / 2;
    }
    return area;
}

TEST(BentShape, covers_the_plate_once_whole_or_from_a_sector) {
    for (const int sectors : {1, 12}) {
        const BentShape shape = bentShape(ring(sectors));
        EXPECT_NEAR(areaOf(shape), kPi * (100 * 100 - 40 * 40), 0.004 * kPi * 8400) << sectors;
        EXPECT_NEAR(shape.radius, 100, 1e-3);
        EXPECT_NEAR(shape.high, 1, 1e-4);
        for (const auto& p : shape.points) {
            EXPECT_NEAR(p.w, (p.x * p.x + p.y * p.y) / 1e4, 2e-3);
            EXPECT_LT(std::abs(p.value - std::hypot(p.x, p.y)), 0.5);
        }
    }
}

TEST(BentShape, walls_its_edges_and_not_the_lines_of_symmetry) {
    const BentShape shape = bentShape(ring(12));
    double rim = 0, hole = 0;
    for (const auto& e : shape.edges) {
        const auto &a = shape.rim[e.a], &b = shape.rim[e.b];
        (e.hole ? hole : rim) += std::hypot(b.x - a.x, b.y - a.y);
    }
    EXPECT_NEAR(rim, 2 * kPi * 100, 1);
    EXPECT_NEAR(hole, 2 * kPi * 40, 1);
}

TEST(BentShape, is_drawn_larger_by_the_last_round_factor_within_a_fifth_of_the_radius) {
    EXPECT_DOUBLE_EQ(exaggeration(0), 1);
    EXPECT_DOUBLE_EQ(exaggeration(4), 20);
    BentShape shape;
    shape.radius = 100;
    shape.most = 0.93; // 20 x 0.93 is 18.6 of at most 20 mm
    EXPECT_DOUBLE_EQ(exaggeration(clearStep(shape)), 20);
    shape.most = 50;
    EXPECT_DOUBLE_EQ(exaggeration(clearStep(shape)), 1);
    shape.most = 0;
    EXPECT_DOUBLE_EQ(exaggeration(clearStep(shape)), 1);
}

TEST(BentRaster, shows_face_holes_and_walls_where_they_are) {
    const BentShape shape = bentShape(ring(1));
    Camera camera;
    camera.elevation = 0.6;
    camera.fit(100, -5, 6, QRectF(0, 0, 300, 200));
    BentRaster raster;
    raster.draw(shape, camera, 10, 1, {300, 200});
    const auto at = [&](double x, double y, double z) {
        const auto seen = camera.see(x, y, z);
        return raster.surfaceAt(static_cast<int>(seen.x), static_cast<int>(seen.y));
    };
    EXPECT_EQ(at(0, -70, 5.5), BentRaster::Top);
    EXPECT_EQ(at(70, 0, 5.5), BentRaster::Top);
    EXPECT_EQ(at(0, -100, 1), BentRaster::RimWall);
    EXPECT_EQ(at(0, 40, 2), BentRaster::HoleWall); // the far side of the bore is seen through it
    EXPECT_EQ(raster.surfaceAt(2, 2), BentRaster::Nothing);
    const auto seen = camera.see(70, 0, 5.49);
    EXPECT_NEAR(raster.valueAt(static_cast<int>(seen.x), static_cast<int>(seen.y)), 70, 2);
}

TEST(BentRaster, from_above_covers_as_many_pixels_as_the_plate_has_area) {
    const BentShape shape = bentShape(ring(12));
    Camera camera;
    camera.elevation = kPi / 2;
    camera.fit(100, 0, 0, QRectF(0, 0, 400, 400));
    BentRaster raster;
    raster.draw(shape, camera, 0, 1, {400, 400});
    int steel = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 400; ++x)
            steel += raster.surfaceAt(x, y) == BentRaster::Top;
    const double pixel = 1 / (camera.scale * camera.scale);
    EXPECT_NEAR(steel * pixel, kPi * 8400, 0.01 * kPi * 8400);
}

TEST(BentRaster, paints_bands_by_value_and_hatches_past_yield) {
    const BentShape shape = bentShape(ring(1));
    Camera camera;
    camera.elevation = kPi / 2;
    camera.fit(100, 0, 0, QRectF(0, 0, 400, 400));
    BentRaster raster;
    raster.draw(shape, camera, 0, 1, {400, 400});
    BentRaster::Paint paint;
    paint.bands = {qRgb(10, 0, 0), qRgb(20, 0, 0), qRgb(30, 0, 0), qRgb(40, 0, 0)};
    paint.top = 100;
    paint.yield = 75;
    paint.hatch = qRgb(0, 0, 99);
    paint.line = qRgb(0, 99, 0);
    const QImage image = raster.image(paint, 1);
    const auto colour = [&](double r) {
        const auto seen = camera.see(r, 0, 0);
        return image.pixel(static_cast<int>(seen.x), static_cast<int>(seen.y));
    };
    EXPECT_EQ(qRed(colour(45)), 20); // 25 to 50
    EXPECT_EQ(qRed(colour(60)), 30);
    int hatched = 0, plain = 0;
    for (double r = 80; r < 97; r += 0.5)
        (qBlue(colour(r)) == 99 ? hatched : plain)++;
    EXPECT_GT(hatched, 0);
    EXPECT_GT(plain, hatched);                   // 1.6 of every 6 px
    EXPECT_EQ(qAlpha(image.pixel(200, 200)), 0); // the bore
}

} // namespace
} // namespace pw::gui
