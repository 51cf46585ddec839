#include "app/gui/models/field_text.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/look.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <QPainter>

// The sizes written beside the plate.
namespace pw::gui {

QString PlanView::figure(double mm) const {
    return shortLength(mm, m_units);
}

std::optional<DimensionNote> PlanView::noteFor(const Grab& grab) const {
    if (isOneOfMany(grab.part))
        return noteForOne(grab);
    const auto at = [&](double radius, double angle) {
        return m_transform.toScreen(shape::polar(radius, angle));
    };
    DimensionNote note;
    // The leader runs on from the centre, so that it stays between the stations it was aimed between.
    const auto along = [&](double radius, double angle) {
        note.anchor = at(radius, angle);
        const QRectF outline = outlinePx();
        const double x = note.left ? outline.left() - 44 : outline.right() + 44;
        const QPointF o = m_transform.toScreen({});
        if (std::abs(std::cos(angle)) > 0.3 && (std::cos(angle) < 0) == note.left)
            note.shoulder = o.y() - std::tan(angle) * (x - o.x());
        else // steep: round the outside rather than across a station
            note.shoulder = std::sin(angle) < 0 ? outline.bottom() + Look::now().pxF(30)
                                                : outline.top() - Look::now().pxF(10);
    };
    switch (grab.part) {
    case PlanPart::Rim:
        if (m_shape.rimDiameter <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.rimDiameter));
        note.anchor = at(m_shape.rimDiameter / 2, std::numbers::pi * 1.13);
        break;
    case PlanPart::RimLength:
        if (m_shape.rimLength <= 0 || !m_shape.rim)
            return {};
        note.text = tr("%1 long").arg(figure(m_shape.rimLength));
        note.anchor = m_transform.toScreen(
            shape::nearestOn(*m_shape.rim, {m_shape.rimLength, -m_shape.rimWidth * 0.4}));
        note.left = false;
        break;
    case PlanPart::RimWidth:
        if (m_shape.rimWidth <= 0)
            return {};
        note.text = tr("%1 wide").arg(figure(m_shape.rimWidth));
        note.anchor = m_transform.toScreen({-m_shape.rimLength * 0.25, -m_shape.rimWidth / 2});
        note.shoulder = note.anchor.y() + Look::now().pxF(40);
        break;
    case PlanPart::Bore: {
        if (m_shape.bore <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.bore));
        note.left = false;
        along(m_shape.bore / 2, clearRay(m_shape.stations, -0.45));
        break;
    }
    case PlanPart::Circle:
        if (m_shape.circle <= 0)
            return {};
        note.text = QStringLiteral("Ø%1").arg(figure(m_shape.circle));
        along(m_shape.circle / 2, circleRay(m_shape, std::numbers::pi * 0.87));
        break;
    case PlanPart::Access: {
        if (m_shape.access <= 0 || m_shape.stations.empty())
            return {};
        const auto leftmost = std::ranges::min_element(
            m_shape.stations, {}, [](shape::Point p) { return p.x + 0.05 * std::abs(p.y); });
        note.text = m_shape.stations.size() > 1 ? QStringLiteral("%1\u00a0×\u00a0Ø%2")
                                                      .arg(m_shape.stations.size())
                                                      .arg(figure(m_shape.access))
                                                : QStringLiteral("Ø%1").arg(figure(m_shape.access));
        note.anchor =
            m_transform.toScreen(*leftmost + shape::polar(m_shape.access / 2, std::numbers::pi * 0.92));
        break;
    }
    case PlanPart::Start:
        if (m_shape.stations.empty())
            return {};
        note.text = tr("first at %1°").arg(local(units::number(figureOf(m_shape, PlanPart::Start), 4)));
        note.anchor = m_transform.toScreen(m_shape.stations[0] +
                                           shape::polar(std::max(m_shape.access, 4.0) / 2, m_shape.start));
        note.left = false;
        break;
    case PlanPart::Piece:
    case PlanPart::PieceTurn: {
        if (!m_shape.piece)
            return {};
        const PlanPiece& piece = *m_shape.piece;
        // What changes is where the plate lies on the piece: the plate's middle is what is measured to.
        note.text = grab.part == PlanPart::Piece
                        ? tr("Middle at %1, %2 on the piece").arg(figure(piece.at.x), figure(piece.at.y))
                        : tr("Turned %1° on the piece").arg(local(units::number(piece.turn, 4)));
        note.anchor = m_transform.toScreen(grab.part == PlanPart::Piece ? shape::Point{} : piece.knob);
        note.left = grab.part == PlanPart::PieceTurn && piece.knob.x < 0;
        break;
    }
    default:
        return {};
    }
    return note;
}

std::optional<DimensionNote> PlanView::noteForOne(const Grab& grab) const {
    const Setting setting = settingOf(m_shape, grab);
    DimensionNote note;
    const bool size = !isPlace(grab.part);
    note.text = size ? QStringLiteral("Ø%1").arg(figure(setting.figure))
                     : tr("%1 right, %2 up", "a place on the plan")
                           .arg(figure(setting.place.x), figure(setting.place.y));
    note.left = setting.place.x < 0;
    const double radius = size ? setting.figure / 2 : 0;
    note.anchor = m_transform.toScreen(setting.place + shape::Point{note.left ? -radius : radius, 0});
    return note;
}

void PlanView::paintNotes(QPainter& painter) {
    std::vector<DimensionNote> notes;
    const Grab inHand = lit();
    if (m_drag && m_drag->moved) {
        if (auto note = noteFor(m_drag->grab)) {
            note->active = true;
            notes.push_back(*note);
        }
    } else if (m_view == View::Fit) {
        // The widths of the steel are the notes here; a size only when it is in hand.
        if (auto note = noteFor(inHand)) {
            note->active = true;
            notes.push_back(*note);
        }
    } else {
        for (const PlanPart part : {PlanPart::Circle, PlanPart::Access, PlanPart::Rim, PlanPart::RimWidth,
                                    PlanPart::RimLength, PlanPart::Bore})
            if (auto note = noteFor({part, 0}); note && notes.size() < 5) {
                note->active = part == inHand.part;
                notes.push_back(*note);
            }
        if (isAngle(inHand.part) || inHand.part == PlanPart::Piece || isOneOfMany(inHand.part)) {
            // At most five notes: what is in hand comes before the last of them.
            if (notes.size() == 5)
                notes.pop_back();
            if (auto note = noteFor(inHand)) {
                note->active = true;
                notes.push_back(*note);
            }
        }
    }
    const Look& look = Look::now();
    drawNotes(painter, notes, outlinePx(),
              QRectF(rect()).adjusted(look.pxF(10), look.pxF(56), -look.pxF(10), -look.pxF(36)));
}

} // namespace pw::gui
