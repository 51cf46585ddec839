#include "app/gui/views/field_bands.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::gui {
namespace {

/// One straight-sided triangle with its middle nodes.
plate::Mesh triangle(double ax, double ay, double bx, double by, double cx, double cy) {
    plate::Mesh mesh;
    mesh.nodes.resize(2, 6);
    mesh.nodes << ax, bx, cx, (ax + bx) / 2, (bx + cx) / 2, (cx + ax) / 2, ay, by, cy, (ay + by) / 2,
        (by + cy) / 2, (cy + ay) / 2;
    mesh.triangles.resize(6, 1);
    mesh.triangles << 0, 1, 2, 3, 4, 5;
    return mesh;
}

double areaOf(const Band& band) {
    double area = 0;
    for (const auto& polygon : band.polygons) {
        double twice = 0;
        for (qsizetype i = 0; i < polygon.size(); ++i) {
            const QPointF a = polygon[i], b = polygon[(i + 1) % polygon.size()];
            twice += a.x() * b.y() - a.y() * b.x();
        }
        area += std::abs(twice) / 2;
    }
    return area;
}

constexpr double kAreaTolerance = 1e-9; // straight cuts of a linear field are exact

TEST(FieldBands, share_out_the_whole_steel_with_nothing_over) {
    const auto mesh = triangle(0, 0, 4, 0, 0, 4);
    Eigen::VectorXd values = mesh.nodes.row(0).transpose(); // value = x
    const auto bands = fieldBands(mesh, {}, values, {0, 1, 2, 4});
    // The strip of this triangle between x = a and x = b has (8 - (4-b)^2/2 ...): areas 3.5, 2.5, 2.
    EXPECT_NEAR(areaOf(bands[0]), 3.5, kAreaTolerance);
    EXPECT_NEAR(areaOf(bands[1]), 2.5, kAreaTolerance);
    EXPECT_NEAR(areaOf(bands[2]), 2.0, kAreaTolerance);
}

TEST(FieldBands, put_values_beyond_the_scale_into_its_ends) {
    const auto mesh = triangle(0, 0, 4, 0, 0, 4);
    Eigen::VectorXd values = mesh.nodes.row(0).transpose();
    values.array() -= 2; // from -2 to 2 on a scale from 0 to 1
    const auto bands = fieldBands(mesh, {}, values, {0, 0.5, 1});
    EXPECT_NEAR(areaOf(bands[0]) + areaOf(bands[1]), 8.0, kAreaTolerance);
}

TEST(FieldBands, mirror_a_sector_into_the_whole_plate) {
    // A twelfth of a twelve-sided plate, as one triangle.
    const double open = 2 * std::numbers::pi / 12, line0 = 0.3;
    const auto p = shape::polar(10, line0), q = shape::polar(10, line0 + open);
    const auto mesh = triangle(0, 0, p.x, p.y, q.x, q.y);
    const Eigen::VectorXd values = Eigen::VectorXd::Constant(6, 0.5);
    const auto bands = fieldBands(mesh, {12, line0}, values, {0, 1});
    ASSERT_EQ(bands[0].polygons.size(), 16u * 12u);
    EXPECT_NEAR(areaOf(bands[0]), 12 * 50 * std::sin(open), 1e-9);
    // Every direction is covered once: the images of the sector's middle are 30 degrees apart.
    const auto images = imagesOf(shape::polar(5, line0 + open / 2), {12, line0});
    ASSERT_EQ(images.size(), 12u);
    for (const auto& image : images) {
        const double turned = (std::atan2(image.y, image.x) - line0 - open / 2) / open;
        EXPECT_NEAR(turned, std::round(turned), 1e-9);
    }
}

} // namespace
} // namespace pw::gui
