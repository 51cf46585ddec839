#pragma once

#include "app/gui/views/plan_handles.h"
#include "geometry/placement/stock.h"

/// The piece of steel under the plate. The plate stays where it is on the plan and the piece moves under it;
/// what changes in the job is where the plate lies on the piece.
namespace pw::gui {

/// `stock` in its own coordinates, laid under the plate as the job says.
PlanPiece pieceUnderPlate(const placement::Stock& stock, const job::PieceChoice& choice);

/// Where the plate lies on the piece (mm, the piece's coordinates) when the piece is pulled from `grabbedAt`
/// to `p`. Both figures go to whole steps.
shape::Point draggedPiece(shape::Point grabbedAt, shape::Point p, const Setting& before, units::System system,
                          bool fine, double coarse = 0);

/// One step of the piece to the right (1) or left (-1), up or down on the plan; on a turned piece along
/// whichever of its own axes lies nearest to that.
shape::Point steppedPiece(const Setting& before, int right, int up, units::System system, bool fine,
                          double coarse = 0);

/// Is `p` on the piece where the plate does not cover it?
bool isOnPiece(const PlanShape& shape, shape::Point p, double reach);

} // namespace pw::gui
