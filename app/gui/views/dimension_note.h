#pragma once

#include <optional>
#include <QPointF>
#include <QRectF>
#include <QString>
#include <vector>

class QPainter;

namespace pw::gui {

/// A size written beside the outline, with a leader to what it measures.
struct DimensionNote {
    QString text;
    QPointF anchor; ///< px, where the arrow points
    /// Height the shoulder would like, px; as the anchor when there is none.
    std::optional<double> shoulder;
    bool left = true;    ///< in which column the shoulder stands
    bool active = false; ///< being changed: bold, in touch blue
};

/// Draws them with their shoulders lined up in a column left and right of `outline` (px) and inside `view`.
/// Where there is no room beside the outline only the active ones are drawn.
void drawNotes(QPainter& painter, const std::vector<DimensionNote>& notes, const QRectF& outline,
               const QRectF& view);

/// Closed slim arrow head, its tip at `tip`, coming from `from`.
void drawArrowHead(QPainter& painter, QPointF tip, QPointF from);

} // namespace pw::gui
