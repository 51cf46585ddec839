#include "app/gui/views/stock_picture.h"

#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QPainter>

namespace pw::gui {

QPainterPath loopPath(const shape::Loop& loop, const PlanTransform& transform) {
    QPainterPath path;
    if (loop.size() < 2)
        return path;
    path.moveTo(transform.toScreen(loop.vertices[0].at));
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const shape::Side side = loop.side(i);
        if (!side.isArc()) {
            path.lineTo(transform.toScreen(side.to));
            continue;
        }
        const shape::Circle circle = side.circle();
        const QPointF c = transform.toScreen(circle.centre);
        const double r = circle.radius * transform.scale;
        const double from = std::atan2(side.from.y - circle.centre.y, side.from.x - circle.centre.x);
        path.arcTo(QRectF(c.x() - r, c.y() - r, 2 * r, 2 * r), from * 180 / std::numbers::pi,
                   side.sweep() * 180 / std::numbers::pi);
    }
    path.closeSubpath();
    return path;
}

void paintStock(QPainter& painter, const StockPicture& picture, const PlanTransform& transform) {
    const Palette& c = Look::now().colours();
    QPainterPath holes, bad;
    holes.setFillRule(Qt::WindingFill);
    bad.setFillRule(Qt::WindingFill);
    for (const placement::Obstacle& thing : picture.stock.obstacles)
        (thing.isHole ? holes : bad).addPath(loopPath(thing.loop, transform));
    const QPainterPath rim = loopPath(picture.stock.rim, transform);
    const QPainterPath steel = rim.subtracted(holes);
    painter.setPen(QPen(c.scrapEdge, 1.3));
    painter.setBrush(c.scrap);
    painter.drawPath(steel);
    painter.setBrush(QBrush(c.scrapEdge, Qt::BDiagPattern));
    painter.drawPath(bad.intersected(steel));
    for (const shape::Region& plate : picture.plates) {
        QPainterPath cut;
        for (const shape::Hole& hole : plate.holes)
            cut.addPath(loopPath(hole.loop, transform));
        painter.setPen(QPen(c.steelEdge, 1.5));
        painter.setBrush(c.steel);
        painter.drawPath(loopPath(plate.rim, transform).subtracted(cut));
    }
    painter.setBrush(Qt::NoBrush);
}

void paintStockIn(QPainter& painter, const StockPicture& picture, const QRectF& box, double scale) {
    if (picture.stock.rim.size() < 2)
        return;
    const shape::Box all = shape::bounds(picture.stock.rim);
    shape::Point middle = (all.low + all.high) * 0.5;
    if (!picture.plates.empty()) {
        // As much of the piece as there is room for, and the plate in any case.
        const shape::Box plate = shape::bounds(picture.plates.front().rim);
        const shape::Point on = (plate.low + plate.high) * 0.5;
        const auto held = [](double wanted, double low, double high, double room) {
            return high - low <= room ? (low + high) / 2
                                      : std::clamp(wanted, low + room / 2, high - room / 2);
        };
        middle = {held(on.x, all.low.x, all.high.x, box.width() / scale),
                  held(on.y, all.low.y, all.high.y, box.height() / scale)};
    }
    PlanTransform transform;
    transform.scale = scale;
    transform.origin = box.center() - QPointF(middle.x * scale, -middle.y * scale);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(box.adjusted(-1, -1, 1, 1), Qt::IntersectClip);
    paintStock(painter, picture, transform);
    painter.restore();
}

} // namespace pw::gui
