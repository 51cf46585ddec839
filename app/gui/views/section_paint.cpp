#include "app/gui/views/section_paint.h"

#include "app/gui/views/plan_geometry.h"
#include "app/gui/views/strip_pane.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <QFontMetricsF>
#include <QPainter>

namespace pw::gui {

namespace {

using Role = SectionPart::Role;

QPen dashed(const QColor& colour, double width, const QList<qreal>& px) {
    QPen pen(colour, width);
    pen.setCapStyle(Qt::FlatCap);
    QList<qreal> pattern;
    for (const qreal dash : px)
        pattern << dash / width;
    pen.setDashPattern(pattern);
    return pen;
}

void hatch(QPainter& painter, const QRectF& box, bool rising, double pitch, const QColor& colour) {
    painter.save();
    painter.setClipRect(box, Qt::IntersectClip);
    painter.setPen(QPen(colour, 1));
    const double h = box.height();
    // From one grid for the whole drawing, so that the pieces of one part go on in one another.
    for (double x = std::floor((box.left() - h) / pitch) * pitch; x < box.right() + h; x += pitch)
        if (rising)
            painter.drawLine(QPointF(x, box.bottom()), QPointF(x + h, box.top()));
        else
            painter.drawLine(QPointF(x, box.top()), QPointF(x + h, box.bottom()));
    painter.restore();
}

bool isRound(Role role) { // turned or bought, not cut: left white, as is usual for shafts and screws
    return role == Role::Screw || role == Role::Pin || role == Role::Bolt || role == Role::Leg;
}

void drawPart(QPainter& painter, const SectionPart& part, const QRectF& box) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    painter.setPen(Qt::NoPen);
    QColor fill = c.steel;
    if (isRound(part.role))
        fill = c.tone == Tone::Dark ? c.panel : c.field;
    if (!part.known)
        fill.setAlphaF(part.role == Role::Screw ? 1.0F : 0.55F);
    painter.setBrush(fill);
    painter.drawRect(box);
    if (part.hatch != SectionPart::Hatch::None && part.known) {
        QColor line = c.steelEdge;
        line.setAlphaF(0.4F);
        hatch(painter, box, part.hatch == SectionPart::Hatch::Rising, look.pxF(6), line);
    }
    const double width = part.role == Role::Plate ? 2.0 : 1.4;
    painter.setBrush(Qt::NoBrush);
    painter.setPen(part.known ? QPen(c.steelEdge, width) : dashed(c.muted, 1.2, {5, 3}));
    painter.drawRect(box);
    if (part.role == Role::Screw && box.height() > 9) { // the root of its thread
        painter.setPen(QPen(c.steelEdge, 0.8));
        const double in = std::max(box.height() * 0.08, 2.0);
        painter.drawLine(QPointF(box.left(), box.top() + in), QPointF(box.right(), box.top() + in));
        painter.drawLine(QPointF(box.left(), box.bottom() - in), QPointF(box.right(), box.bottom() - in));
    }
}

} // namespace

SectionTransform SectionTransform::fit(const QRectF& bounds, const QRectF& area, double smallestWhole) {
    SectionTransform t;
    const double wide = std::max(bounds.width(), 1.0), high = std::max(bounds.height(), 1.0);
    const double whole = std::min(area.width() / wide, area.height() / high);
    const double half = std::min(area.width() / wide, area.height() / (high / 2));
    t.half = whole < half * 0.95 && whole < smallestWhole;
    t.scale = t.half ? half : whole;
    const double x = area.left() + (area.width() - wide * t.scale) / 2 - bounds.left() * t.scale;
    const double y = t.half ? area.bottom() - (area.height() - high / 2 * t.scale) / 2 : area.center().y();
    t.origin = {x, y};
    return t;
}

void drawSection(QPainter& painter, const Section& section, const SectionTransform& at,
                 const QColor& solidColour) {
    const Palette& c = Look::now().colours();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (at.half) {
        // The half above the axis; a little of the line itself stays to be seen.
        const QPointF a = at.toScreen(section.left - 50, section.high + 50);
        const QPointF b = at.toScreen(section.right + 50, 0);
        painter.setClipRect(QRectF(a, b).adjusted(0, 0, 0, 1), Qt::IntersectClip);
    }
    for (const SectionPart& part : section.parts) {
        const QPointF topLeft = at.toScreen(part.x0, part.high), bottom = at.toScreen(part.x1, part.low);
        if (part.low <= 0) { // through the axis: one piece
            drawPart(painter, part, QRectF(topLeft, at.toScreen(part.x1, -part.high)));
            continue;
        }
        drawPart(painter, part, QRectF(topLeft, bottom));
        drawPart(painter, part, QRectF(at.toScreen(part.x0, -part.low), at.toScreen(part.x1, -part.high)));
    }
    for (const SectionCoil& coil : section.coils) {
        const bool solid = coil.spring < section.springSolid.size() && section.springSolid[coil.spring];
        painter.setPen(QPen(solid ? solidColour : c.steelEdge, 1.2));
        painter.setBrush(solid ? solidColour : c.steel);
        const double r = coil.wire / 2 * at.scale;
        for (const int side : {1, -1})
            painter.drawEllipse(at.toScreen(coil.x, side * coil.high), r, r);
    }
    painter.restore();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(dashed(c.ink, 1, {14, 4, 3, 4}));
    painter.drawLine(at.toScreen(section.left, 0) - QPointF(10, 0),
                     at.toScreen(section.right, 0) + QPointF(10, 0));
    if (const auto* pin = section.find(Role::Pin); pin && section.stationAt > 0)
        for (const int side : {1, -1})
            if (side > 0 || !at.half)
                painter.drawLine(at.toScreen(pin->x0, side * section.stationAt) - QPointF(8, 0),
                                 at.toScreen(pin->x1, side * section.stationAt) + QPointF(8, 0));
    painter.restore();
}

QString partName(SectionPart::Role role, bool isPull) {
    switch (role) {
    case Role::Plate:
        return StripPane::tr("plate");
    case Role::Retainer:
        return StripPane::tr("retainer");
    case Role::Pin:
        return StripPane::tr("pin");
    case Role::Keeper:
        return StripPane::tr("keeper");
    case Role::Hub:
        return StripPane::tr("hub");
    case Role::Shaft:
        return StripPane::tr("shaft");
    case Role::Bar:
        return StripPane::tr("backing bar");
    case Role::Screw:
        return StripPane::tr("screw");
    case Role::Nut:
        return isPull ? StripPane::tr("screw head") : StripPane::tr("nut");
    case Role::Washer:
        return StripPane::tr("washer");
    case Role::Bolt:
        return StripPane::tr("bolt");
    case Role::Leg:
        return StripPane::tr("leg");
    case Role::Jaw:
        return StripPane::tr("jaw");
    }
    return {};
}

void drawSectionLit(QPainter& painter, const Section& section, const SectionTransform& at,
                    const std::vector<Role>& roles, bool springs) {
    const Palette& c = Look::now().colours();
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(c.touch, 2.3));
    for (const SectionPart& part : section.parts) {
        if (std::ranges::find(roles, part.role) == roles.end())
            continue;
        if (part.low <= 0) {
            painter.drawRect(
                QRectF(at.toScreen(part.x0, part.high), at.toScreen(part.x1, at.half ? 0 : -part.high)));
            continue;
        }
        painter.drawRect(QRectF(at.toScreen(part.x0, part.high), at.toScreen(part.x1, part.low)));
        if (!at.half)
            painter.drawRect(QRectF(at.toScreen(part.x0, -part.low), at.toScreen(part.x1, -part.high)));
    }
    if (springs)
        for (const SectionCoil& coil : section.coils) {
            const double r = coil.wire / 2 * at.scale;
            painter.drawEllipse(at.toScreen(coil.x, coil.high), r, r);
            if (!at.half)
                painter.drawEllipse(at.toScreen(coil.x, -coil.high), r, r);
        }
    painter.restore();
}

void drawSectionNames(QPainter& painter, const Section& section, const SectionTransform& at,
                      const QRectF& area, bool isPull) {
    const Look& look = Look::now();
    const Palette& c = look.colours();
    struct Name {
        QString words;
        QPointF anchor;
        double wanted = 0;
    };
    std::vector<Name> names;
    for (const Role role :
         {Role::Plate, Role::Retainer, Role::Keeper, Role::Pin, Role::Bolt, Role::Leg, Role::Jaw, Role::Hub,
          Role::Bar, Role::Shaft, Role::Washer, Role::Nut, Role::Screw}) {
        // The outermost piece of it that is drawn, so that leaders stay off one another.
        const SectionPart* piece = nullptr;
        for (const auto& part : section.parts)
            if (part.role == role && (!piece || part.high > piece->high))
                piece = &part;
        if (!piece)
            continue;
        double x = (piece->x0 + piece->x1) / 2, up = (std::max(piece->low, 0.0) + piece->high) / 2;
        if (role == Role::Screw)
            x = piece->x0 + (piece->x1 - piece->x0) * 0.06, up = piece->high * 0.5;
        if (role == Role::Shaft)
            x = piece->x0 + (piece->x1 - piece->x0) * 0.85, up = piece->high * 0.7;
        if (role == Role::Hub)
            up = piece->low + (piece->high - piece->low) * 0.35;
        if (role == Role::Pin)
            x = piece->x0 + (piece->x1 - piece->x0) * 0.04;
        names.push_back({partName(role, isPull), at.toScreen(x, up), 0});
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font(Type::Label));
    const QFontMetricsF metrics(painter.font());
    const double line = look.pxF(22);
    const QRectF drawn(at.toScreen(section.left, section.high), at.toScreen(section.right, 0));
    const SectionPart* hub = section.find(Role::Hub);
    const double middle = hub ? at.toScreen(hub->x0, 0).x() - 1 : drawn.center().x();
    for (const bool left : {true, false}) {
        std::vector<Name*> column;
        double widest = 0;
        for (auto& name : names)
            if ((name.anchor.x() < middle) == left) {
                column.push_back(&name);
                widest = std::max(widest, metrics.horizontalAdvance(name.words));
            }
        const double room = left ? drawn.left() - area.left() : area.right() - drawn.right();
        // Where the screw's free end leaves the left side empty, names stand over it.
        const SectionPart* screw = section.find(Role::Screw);
        double x = left ? area.left() : area.right() - widest;
        double top = area.top(), bottom = area.bottom();
        if (room < widest + look.pxF(26)) {
            const auto* plate = section.find(Role::Plate);
            if (!left || !screw || !plate)
                continue;
            const double inner = at.toScreen(plate->x0, 0).x() - drawn.left();
            if (inner + room < widest + look.pxF(30))
                continue;
            const auto* nut = section.find(Role::Nut);
            bottom = at.toScreen(0, nut ? nut->high : screw->high).y() - look.pxF(4);
        } else if (left) {
            x = drawn.left() - widest - look.pxF(22);
        } else {
            x = drawn.right() + look.pxF(22);
        }
        const auto fits = static_cast<std::size_t>(std::max(0.0, (bottom - top) / line));
        if (column.size() > fits)
            column.resize(fits);
        std::vector<double> wanted;
        for (const Name* name : column)
            wanted.push_back(name->anchor.y());
        const auto middles = spread(wanted, line, top + line / 2, bottom - line / 2);
        for (std::size_t i = 0; i < column.size(); ++i) {
            const Name& name = *column[i];
            const double wide = metrics.horizontalAdvance(name.words), y = middles[i];
            const double from = left ? x + widest - wide : x;
            const QPointF elbow(left ? x + widest + look.pxF(4) : x - look.pxF(4), y + look.pxF(8));
            painter.setPen(QPen(c.ink, 1));
            painter.drawLine(QPointF(left ? from : from + wide, elbow.y()), elbow);
            painter.drawLine(elbow, name.anchor);
            painter.setBrush(c.ink);
            painter.drawEllipse(name.anchor, 2.2, 2.2);
            drawLine(painter, QRectF(from, y - look.pxF(10), wide + 1, look.pxF(18)), Qt::AlignLeft,
                     name.words, false);
        }
    }
    painter.restore();
}

} // namespace pw::gui
