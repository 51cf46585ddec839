#pragma once

#include "app/gui/views/plan_geometry.h"

/// What of the plan can be grabbed: what is under the cursor, and what a drag or an arrow key makes of it.
namespace pw::gui {

/// Something that can be grabbed.
struct Grab {
    PlanPart part = PlanPart::None;
    std::size_t index = 0; ///< station, hole, corner or obstacle, as PlanShape counts them
    explicit operator bool() const { return part != PlanPart::None; }
    bool operator==(const Grab&) const = default;
};

/// Is it a place, with two figures, and not a size or an angle?
bool isPlace(PlanPart part);
/// Is its figure an angle in degrees?
bool isAngle(PlanPart part);
/// Does it tell one thing from others of its kind? (All access holes are one size.)
bool isOneOfMany(PlanPart part);

/// What lies under `p`, within `reach` mm. The edge of a hole is its size, its inside moves it (an access
/// hole turns the ring); of two edges the nearer one.
Grab grabAt(const PlanShape& shape, shape::Point p, double reach);

/// Everything that can be grabbed, in the order in which the keyboard goes through it.
std::vector<Grab> grabs(const PlanShape& shape);

/// Path in the job file of the size or angle that a grab changes; empty for places.
std::string pathOf(PlanPart part);

/// Steps that a drag or an arrow key snaps to: `coarse` mm, or when that is 0, 1 mm or 1/16 in; fine: 0.1 mm
/// or 1/64 in. Angles: 1 and 0.1 degree.
double stepMm(units::System system, bool fine, double coarse = 0);

/// What a handle stands at: a size (mm) or an angle (degrees), or a place (mm). The piece under the plate has
/// both: how it is turned and where the plate lies on it, in the piece's coordinates.
struct Setting {
    double figure = 0;
    shape::Point place;
    bool operator==(const Setting&) const = default;
};
Setting settingOf(const PlanShape& shape, const Grab& grab);

/// What the figure becomes when the grabbed thing is pulled to `p`: a length in mm, or an angle in degrees
/// for isAngle(). `grabbedAt` is where the drag began, `before` the figure then. Snapped; never below one
/// step.
double dragged(const PlanShape& shape, const Grab& grab, shape::Point grabbedAt, shape::Point p,
               double before, units::System system, bool fine, double coarse = 0);
/// The same for a place: both figures go to whole steps.
shape::Point draggedPlace(shape::Point grabbedAt, shape::Point p, shape::Point before, units::System system,
                          bool fine, double coarse = 0);

/// One step up or down from `value`, to the next multiple of the step.
double stepped(PlanPart part, double value, int direction, units::System system, bool fine,
               double coarse = 0);
/// One step right (1), left (-1), up, down.
shape::Point steppedPlace(shape::Point place, int right, int up, units::System system, bool fine,
                          double coarse = 0);

/// The size or angle that a grab changes, as it is now (mm or degrees).
double figureOf(const PlanShape& shape, PlanPart part);

/// As a person would type it: "131 mm", "5 3/16 in", "15 deg".
std::string typedFigure(PlanPart part, double value, units::System system);

/// The job with what a handle stands at changed; sizes and angles and places alike.
job::Job withSetting(job::Job job, const PlanShape& shape, const Grab& grab, const Setting& setting);

/// The side of a polygon nearest to `p`, when that is within `reach` mm.
std::optional<std::size_t> sideAt(const PlanShape& shape, shape::Point p, double reach);

} // namespace pw::gui
