#pragma once

#include <QPointF>
#include <QRectF>

namespace pw::gui {

/// Looks at the plate from aside, without perspective: lengths along one direction stay true to one another.
/// x and y lie in the plate, z stands up from it towards the nut, in mm; the middle is looked at.
struct Camera {
    double yaw = 0;       ///< radians, turn of the plate about z
    double elevation = 1; ///< radians over the plate's plane: 0 from its edge, pi/2 straight from above
    double scale = 1;     ///< px a mm
    QPointF centre;       ///< px, where the origin is seen

    struct Seen {
        double x = 0, y = 0; ///< px
        double depth = 0;    ///< mm towards the eye
    };
    Seen see(double x, double y, double z) const;

    /// As a hand drags it: across turns the plate, up and down tips it. The elevation stays within
    /// kLeastElevation and straight from above; below is not looked at.
    void turn(QPointF byPx);
    static constexpr double kLeastElevation = 0.06, kMostElevation = 1.5707963267948966;

    /// Scale and centre so that a disc of `radius` mm that reaches from `low` to `high` (z) fills `view` from
    /// any yaw.
    void fit(double radius, double low, double high, const QRectF& view);

    /// As it is first shown.
    static Camera first();
};

} // namespace pw::gui
