#include "app/gui/views/camera.h"

#include <algorithm>
#include <cmath>

namespace pw::gui {

namespace {

constexpr double kRadianAPx = 0.008;

} // namespace

Camera Camera::first() {
    Camera camera;
    camera.yaw = 0.35;
    camera.elevation = 0.52;
    return camera;
}

Camera::Seen Camera::see(double x, double y, double z) const {
    const double c = std::cos(yaw), s = std::sin(yaw);
    const double across = c * x - s * y, away = s * x + c * y;
    const double se = std::sin(elevation), ce = std::cos(elevation);
    return {centre.x() + scale * across, centre.y() - scale * (away * se + z * ce), z * se - away * ce};
}

void Camera::turn(QPointF byPx) {
    constexpr double kWhole = 2 * kMostElevation * 2;
    yaw = std::remainder(yaw + byPx.x() * kRadianAPx, kWhole);
    elevation = std::clamp(elevation + byPx.y() * kRadianAPx, kLeastElevation, kMostElevation);
}

void Camera::fit(double radius, double low, double high, const QRectF& view) {
    const double se = std::sin(elevation), ce = std::cos(elevation);
    const double top = radius * se + std::max(high, 0.0) * ce, foot = radius * se - std::min(low, 0.0) * ce;
    const double wide = 2 * std::max(radius, 1e-6), tall = std::max(top + foot, 1e-6);
    scale = std::max(1e-6, std::min(view.width() / wide, view.height() / tall));
    centre = {view.center().x(), view.center().y() + (top - foot) / 2 * scale};
}

} // namespace pw::gui
