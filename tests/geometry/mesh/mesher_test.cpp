#include "geometry/mesh/mesher.h"

#include "geometry/mesh/quality.h"

#include <chrono>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using shape::Part;
using std::numbers::pi;

namespace {

shape::Region sixHoles() {
    shape::Region region{shape::circleLoop({}, 70), {{shape::circleLoop({}, 10), Part::Bore, 0}}};
    for (int i = 0; i < 6; ++i)
        region.holes.push_back({shape::circleLoop(shape::polar(50, i * pi / 3), 12), Part::Access, i});
    return region;
}

} // namespace

TEST(Mesher, SixHolePlateTimes) {
    for (const double h : {20.0, 8.0, 4.0, 2.0}) {
        const auto start = std::chrono::steady_clock::now();
        const auto mesh =
            mesh::makeMesh(outline::tagged(sixHoles()), {.far = h, .nearBore = h / 2, .nearAccess = h / 2});
        const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - start;
        ASSERT_TRUE(mesh) << mesh.problem().message;
        const auto q = mesh::qualityOf(*mesh);
        std::printf("h %g: %d triangles, %d nodes, %.2f ms, least angle %.1f, least Jacobian %.2f, area "
                    "error %.2e, %.2f\n",
                    h, int(mesh->triangleCount()), int(mesh->nodeCount()), took.count(), q.leastAngle,
                    q.leastJacobian, q.area / shape::area(sixHoles()) - 1,
                    mesh->triangleCount() * 0.433 * h * h / q.area);
    }
    for (const double h : {20.0, 8.0, 4.0, 2.0}) {
        const auto mesh = mesh::makeMesh(outline::tagged(sixHoles()), {.far = h});
        const auto q = mesh::qualityOf(*mesh);
        std::printf("uniform h %g: %d triangles, %.2f\n", h, int(mesh->triangleCount()),
                    mesh->triangleCount() * 0.433 * h * h / q.area);
    }
}
