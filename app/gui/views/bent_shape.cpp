#include "app/gui/views/bent_shape.h"

#include "app/gui/views/field_bands.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

namespace {

/// Flat triangles that a frame may cost; an element is cut finer as long as the plate stays below.
constexpr Eigen::Index kMostTriangles = 7000;
/// Share of the radius that the bend takes up when it is plain to see.
constexpr double kClearShare = 0.2;

/// Quadratic shape functions of the six-node triangle at the area coordinates (1 - b - c, b, c).
std::array<double, 6> shapeAt(double b, double c) {
    const double a = 1 - b - c;
    return {a * (2 * a - 1), b * (2 * b - 1), c * (2 * c - 1), 4 * a * b, 4 * b * c, 4 * c * a};
}

BentShape::Point placed(const SectorImage& image, double x, double y, double w, double value) {
    const QPointF at = image.of(x, y);
    return {static_cast<float>(at.x()), static_cast<float>(at.y()), static_cast<float>(w),
            static_cast<float>(value)};
}

void addElement(BentShape& shape, const engine::Picture& picture, Eigen::Index t, const SectorImage& image,
                int cuts) {
    const auto& mesh = picture.mesh;
    const auto first = static_cast<std::uint32_t>(shape.points.size());
    for (int j = 0; j <= cuts; ++j)
        for (int i = 0; i + j <= cuts; ++i) {
            const auto n = shapeAt(static_cast<double>(i) / cuts, static_cast<double>(j) / cuts);
            double x = 0, y = 0, w = 0, value = 0;
            for (int k = 0; k < 6; ++k) {
                const int node = mesh.triangles(k, t);
                const double share = n[static_cast<std::size_t>(k)];
                x += share * mesh.nodes(0, node);
                y += share * mesh.nodes(1, node);
                w += share * picture.deflection[node];
                value += share * picture.vonMises[node];
            }
            shape.points.push_back(placed(image, x, y, w, value));
        }
    const auto at = [&](int i, int j) {
        return first + static_cast<std::uint32_t>(j * (cuts + 1) - j * (j - 1) / 2 + i);
    };
    const auto add = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c) {
        if (image.mirror)
            std::swap(b, c);
        shape.triangles.push_back({a, b, c});
    };
    for (int j = 0; j < cuts; ++j)
        for (int i = 0; i + j < cuts; ++i) {
            add(at(i, j), at(i + 1, j), at(i, j + 1));
            if (i + j + 1 < cuts)
                add(at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
        }
}

void addEdge(BentShape& shape, const engine::Picture& picture, const plate::MeshEdge& edge,
             const SectorImage& image) {
    constexpr int kCuts = 4;
    const auto& mesh = picture.mesh;
    for (int i = 0; i <= kCuts; ++i) {
        const double s = static_cast<double>(i) / kCuts;
        const double n[3] = {(1 - s) * (1 - 2 * s), 4 * s * (1 - s), s * (2 * s - 1)};
        double x = 0, y = 0, w = 0;
        for (std::size_t k = 0; k < 3; ++k) {
            x += n[k] * mesh.nodes(0, edge.nodes[k]);
            y += n[k] * mesh.nodes(1, edge.nodes[k]);
            w += n[k] * picture.deflection[edge.nodes[k]];
        }
        shape.rim.push_back(placed(image, x, y, w, 0));
        const auto last = static_cast<std::uint32_t>(shape.rim.size() - 1);
        if (i > 0)
            shape.edges.push_back({last - 1, last, edge.kind != plate::MeshEdge::Kind::Rim});
    }
}

} // namespace

BentShape bentShape(const engine::Picture& picture) {
    BentShape shape;
    const auto& mesh = picture.mesh;
    if (mesh.triangleCount() == 0 || picture.deflection.size() != mesh.nodeCount() ||
        picture.vonMises.size() != mesh.nodeCount())
        return shape;
    const auto images = sectorImages(picture.sector);
    const Eigen::Index all = mesh.triangleCount() * static_cast<Eigen::Index>(images.size());
    int cuts = 4;
    while (cuts > 1 && all * cuts * cuts > kMostTriangles)
        --cuts;
    for (const SectorImage& image : images) {
        for (Eigen::Index t = 0; t < mesh.triangleCount(); ++t)
            addElement(shape, picture, t, image, cuts);
        for (const auto& edge : mesh.edges)
            if (edge.kind != plate::MeshEdge::Kind::Symmetry)
                addEdge(shape, picture, edge, image);
    }
    for (const auto& p : shape.points) {
        shape.radius = std::max(shape.radius, std::hypot(static_cast<double>(p.x), static_cast<double>(p.y)));
        shape.low = std::min(shape.low, static_cast<double>(p.w));
        shape.high = std::max(shape.high, static_cast<double>(p.w));
    }
    shape.most = std::max(-shape.low, shape.high);
    return shape;
}

double exaggeration(int step) {
    static constexpr double kSteps[3] = {1, 2, 5};
    step = std::clamp(step, 0, 27);
    return kSteps[step % 3] * std::pow(10.0, step / 3);
}

int clearStep(const BentShape& shape) {
    int step = 0;
    if (shape.most > 0)
        while (step < 27 && exaggeration(step + 1) * shape.most <= kClearShare * shape.radius)
            ++step;
    return step;
}

} // namespace pw::gui
