#pragma once

#include "app/gui/models/fields.h"
#include "core/job/job.h"
#include "core/shape/loop.h"
#include "core/units/format.h"

#include <optional>
#include <QPointF>
#include <QRectF>
#include <string>
#include <vector>

/// The plan's arithmetic, without painting: where a place of the plate lies on the screen, and what is drawn.
namespace pw::gui {

/// Plate millimetres (y up) to screen pixels (y down).
struct PlanTransform {
    double scale = 1; ///< px per mm
    QPointF origin;   ///< where the plate's origin lies, px

    QPointF toScreen(shape::Point p) const { return {origin.x() + p.x * scale, origin.y() - p.y * scale}; }
    shape::Point toPlate(QPointF s) const {
        return {(s.x() - origin.x()) / scale, (origin.y() - s.y()) / scale};
    }

    static constexpr double kLeastScale = 0.05, kMostScale = 400;
    /// The place under `at` stays under it. The scale stays between kLeastScale and kMostScale.
    void zoom(QPointF at, double factor);
    void pan(QPointF by) { origin += by; }
    /// The whole of `box` (mm) in the middle of `view` (px).
    static PlanTransform fit(const shape::Box& box, const QRectF& view);
};

/// The piece of steel under the plate, mm, in the plate's coordinates.
struct PlanPiece {
    shape::Loop rim;
    std::vector<shape::Loop> holes, badAreas;
    shape::Point at;   ///< the plate's origin in the piece's own coordinates
    double turn = 0;   ///< degrees; of the plate on the piece, counter-clockwise
    shape::Point knob; ///< where it is taken hold of to turn it
};

/// What the plan draws and what can be grabbed, in mm; made from the job alone, so that a drag shows at once.
struct PlanShape {
    std::optional<shape::Loop> rim;
    job::OutlineShape outline = job::OutlineShape::Disc;
    double rimDiameter = 0, rimLength = 0, rimWidth = 0; ///< 0: not of this outline
    double bore = 0;                                     ///< diameters; 0: not known
    double circle = 0;
    double start = 0;     ///< radians
    bool onCircle = true; ///< stations lie on the pin circle (not listed one by one)
    double access = 0, land = 0, keeper = 0, pin = 0, bearing = 0;
    job::HoleForm hole;
    std::vector<shape::Point> stations;
    std::vector<bool> idle;             ///< stations that carry nothing; empty: all carry
    std::vector<shape::Vertex> corners; ///< of a polygon
    struct Extra {
        shape::Loop loop;
        std::size_t row = 0; ///< in job.plate.holes
        shape::Point at{};
        double diameter = 0; ///< 0: not round
        bool drilled = false;
    };
    std::vector<Extra> extra;
    struct Obstacle {
        shape::Circle circle;
        std::string note;
    };
    std::vector<Obstacle> keepClear;
    std::optional<PlanPiece> piece; ///< laid under it by who knows the rack

    /// The loop of access hole `i`; empty when its size is not known.
    std::optional<shape::Loop> accessLoop(std::size_t i) const;
    /// The plate, or a default sheet of 160 mm when nothing is known yet.
    shape::Box plateBounds() const;
    /// The plate, the piece under it, and what stands close to it.
    shape::Box bounds() const;
};

/// `boreOfThread`: diameter to draw for a tapped bore, mm.
PlanShape planShape(const job::Job& job, std::optional<double> boreOfThread = {});

/// A round length for a scale bar that is at most `most` px long: 1, 2 or 5 times a power of ten mm, or
/// inches.
double scaleBarMm(double scale, double most, units::System system);

/// Angle (radians) at which a leader from the bore meets the fewest holes, looked for around `around`.
double clearRay(const std::vector<shape::Point>& stations, double around);

/// Angle at which the note of the pin circle points: on the steel, clear of the stations, as near to `around`
/// as that allows.
double circleRay(const PlanShape& shape, double around);

/// Pushes labels of height `height` apart so that none overlaps, keeping their order; `places` are the wanted
/// middles, from top to bottom after sorting. Returns the middles in the order given.
std::vector<double> spread(const std::vector<double>& places, double height, double top, double bottom);

} // namespace pw::gui
