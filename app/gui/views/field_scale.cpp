#include "app/gui/views/field_scale.h"

#include "app/gui/models/field_text.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/stress_scale.h"
#include "core/job/assumed.h"
#include "core/material/material.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

double stressUnit(units::System system) {
    return system == units::System::Inch ? units::Stress::fromKsi(1).mpa() : 1.0;
}

double lengthUnit(units::System system) {
    return system == units::System::Inch ? units::kMmPerInch : 1.0;
}

} // namespace

FieldScale stressScale(const engine::Report& report, const job::Job& job, units::System system) {
    FieldScale scale;
    if (!report.picture || report.picture->vonMises.size() == 0)
        return scale;
    const double worst = std::max(report.plate.field ? report.plate.field->peakStressMpa : 0.0,
                                  report.picture->vonMises.maxCoeff());
    scale.top = scaleTop(worst / stressUnit(system)) * stressUnit(system);
    const auto steel =
        material::resolve(job::assume(job).steel, job.plate.thickness.value_or(units::Length()));
    if (steel)
        scale.yield = steel->yield.mpa();
    return scale;
}

FieldScale deflectionScale(const engine::Report& report, units::System system) {
    FieldScale scale;
    if (report.picture && report.picture->deflection.size() > 0)
        scale.top = scaleTop(report.picture->deflection.cwiseAbs().maxCoeff() / lengthUnit(system)) *
                    lengthUnit(system);
    return scale;
}

ScaleLegend stressLegend(const FieldScale& scale, units::System system) {
    ScaleLegend legend;
    legend.title = system == units::System::Inch ? PlanView::tr("Stress, ksi") : PlanView::tr("Stress, MPa");
    legend.top = scale.top / stressUnit(system);
    if (scale.yield > 0) {
        legend.mark = scale.yield / stressUnit(system);
        legend.markWords = PlanView::tr("yields %1").arg(local(units::number(legend.mark)));
        legend.hatched = true;
    }
    return legend;
}

ScaleLegend deflectionLegend(const FieldScale& scale, units::System system) {
    ScaleLegend legend;
    legend.title =
        system == units::System::Inch ? PlanView::tr("Deflection, in") : PlanView::tr("Deflection, mm");
    legend.top = scale.top / lengthUnit(system);
    return legend;
}

void drawWorstSpot(QPainter& painter, QPointF spot, const engine::FieldReport& field, units::System system,
                   const QRectF& view, const QRectF& legend) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    const QColor halo = c.tone == Tone::Dark ? c.ground : c.field;
    const QString figureWords =
        PlanView::tr("Worst: %1")
            .arg(local(units::show(units::Stress::fromMpa(field.peakStressMpa), system)));
    const QString placeWords = QString::fromStdString(field.peakPlace);
    const double ring = look.pxF(9);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(halo, 5));
    painter.drawEllipse(spot, ring, ring);
    painter.setPen(QPen(c.ink, 2.2));
    painter.drawEllipse(spot, ring, ring);

    // The shoulder stands above the legend, clear of the plate's middle.
    const QFontMetricsF bold(look.font(Type::ButtonBold)), plain(look.font(Type::Button));
    const double wide = std::max(bold.horizontalAdvance(figureWords), plain.horizontalAdvance(placeWords));
    const double right = view.right() - look.pxF(14);
    const double x = std::max(right - wide, view.left() + look.pxF(16)),
                 y = std::min(view.top() + look.pxF(84), legend.top() - look.pxF(34));
    const QPointF elbow(x - look.pxF(6), y);
    const QPointF way = elbow - spot;
    const double length = std::hypot(way.x(), way.y());
    if (length > ring) {
        painter.setPen(QPen(halo, 4));
        painter.drawLine(spot + way * (ring / length), elbow);
        painter.setPen(QPen(c.ink, 1.3));
        painter.drawLine(spot + way * (ring / length), elbow);
    }
    painter.setPen(QPen(c.ink, 1.3));
    painter.drawLine(elbow, QPointF(x + wide, y));
    painter.setPen(c.ink);
    painter.setFont(look.font(Type::ButtonBold));
    drawLine(painter, QRectF(x, y - look.pxF(24), wide + 1, look.pxF(22)), Qt::AlignLeft, figureWords, false);
    painter.setFont(look.font(Type::Button));
    drawLine(painter, QRectF(x, y + look.pxF(3), wide + 1, look.pxF(22)), Qt::AlignLeft, placeWords, false);
}

} // namespace pw::gui
