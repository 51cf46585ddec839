#pragma once

#include "app/gui/views/section_geometry.h"

#include <QColor>
#include <QString>

class QPainter;

namespace pw::gui {

/// Section millimetres (x along the axis, up from it) to pixels.
struct SectionTransform {
    double scale = 1;
    QPointF origin; ///< where x = 0 crosses the axis
    bool half = false;

    QPointF toScreen(double x, double up) const { return {origin.x() + x * scale, origin.y() - up * scale}; }
    /// The whole of `bounds` (mm) in `area` (px); half of it above the axis where the whole would get too
    /// small.
    static SectionTransform fit(const QRectF& bounds, const QRectF& area, double smallestWhole);
};

/// Parts, coils and centre lines. Coils that touch are filled with `solidColour`.
void drawSection(QPainter& painter, const Section& section, const SectionTransform& at,
                 const QColor& solidColour);

/// Outlines, in touch blue, the parts of these roles, and the coils when `springs` says so.
void drawSectionLit(QPainter& painter, const Section& section, const SectionTransform& at,
                    const std::vector<SectionPart::Role>& roles, bool springs);

/// Names with leaders, in columns beside the drawing; only as many as there is room for.
void drawSectionNames(QPainter& painter, const Section& section, const SectionTransform& at,
                      const QRectF& area, bool isPull);

QString partName(SectionPart::Role role, bool isPull);

} // namespace pw::gui
