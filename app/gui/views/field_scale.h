#pragma once

#include "app/engine/report.h"
#include "app/gui/views/scale_legend.h"
#include "core/job/job.h"

#include <QPointF>

namespace pw::gui {

/// The scale by which a field is coloured, the same in every view: MPa or mm.
struct FieldScale {
    double top = 0;   ///< 0: there is no field
    double yield = 0; ///< of the steel; 0: not known, or not a stress
};

/// Round at the top in the user's unit.
FieldScale stressScale(const engine::Report& report, const job::Job& job, units::System system);
FieldScale deflectionScale(const engine::Report& report, units::System system);

ScaleLegend stressLegend(const FieldScale& scale, units::System system);
ScaleLegend deflectionLegend(const FieldScale& scale, units::System system);

/// The worst spot: a ring and a leader that says figure and place, its shoulder over the legend. `view` is
/// the whole view.
void drawWorstSpot(QPainter& painter, QPointF spot, const engine::FieldReport& field, units::System system,
                   const QRectF& view, const QRectF& legend);

} // namespace pw::gui
