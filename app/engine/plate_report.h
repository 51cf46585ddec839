#pragma once

#include "app/engine/plate_field.h"
#include "core/verdict/plate_checks.h"

namespace pw::engine {

/// The field in the report's words. `stacked` loose plates share the load the task was made with.
FieldReport fieldReport(const PlateField& field, const PlateTask& task, double startAngle, double solveMs);

/// The rim against the bore's edge (or the middle), on the ray at this angle, mm; positive when the rim gives
/// way.
Found<double> rimDeflection(const PlateField& field, const PlateTask& task, double startAngle);

/// The field at places asked for.
std::vector<PointReport> pointReports(const PlateField& field, const PlateTask& task,
                                      const std::vector<shape::Point>& places);

Picture pictureOf(const PlateField& field, const PlateTask& task);

/// What a dial shows at a load `factor` times the task's: from just outside the bearing to the rim, along the
/// ray through station 1.
struct DialReading {
    units::Length deflection, inner; ///< inner: where the one foot stands, from the middle
};
Found<DialReading> dialReading(const PlateField& field, const PlateTask& task, double startAngle,
                               double factor);

/// Where a ray from the middle leaves the plate.
Found<shape::Point> rayExit(const shape::Region& region, double angle);

} // namespace pw::engine
