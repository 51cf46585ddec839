#pragma once

#include "core/plate/model.h"
#include "core/plate/ring.h"

namespace pw::plate {

/// What the centre bearing answers to the stations' forces. It pushes and never pulls.
struct Reaction {
    Eigen::VectorXd forces; ///< on w, one a node; added to the stations' forces they balance to rounding
    double lifted = 0;      ///< part of the ring's area that bears nothing, 0 .. 1
    double offset = 0;      ///< mm from the ring's centre to the line of the load's resultant
    double screwMoment = 0; ///< N.mm, whole plate: what pushing cannot balance and the screw's bending takes
};

/// Farther out than this part of the ring's outer radius the push is not let go: the last sliver of the ring
/// would have to carry everything.
inline constexpr double kFarthestPush = 0.85;

/// `uniform`: an even pressure, with a slant when the load is off the middle. Where the slant would pull, the
/// ring lifts and the rest pushes more (pressure linear over what bears). A resultant beyond kFarthestPush of
/// the radius leaves a moment to the screw's bending, which comes into the plate through the clamped centre
/// as a linear pressure.
Reaction balance(const Mesh& mesh, const Sector& sector, const Eigen::VectorXd& forces,
                 const PressureRing& bearing);

/// `hard`: a rigid flat washer, square to the screw, that pushes where it touches and lifts where it must;
/// the screw takes the moment that makes. The contact is a bed of springs 10 E / t per mm2, far stiffer than
/// the plate's own thickness squeezed (about 2 E / t). Errors: the load tips the plate off the washer.
util::Result<Reaction> hardReaction(const Mesh& mesh, const Sector& sector, const Section& section,
                                    const Eigen::VectorXd& forces, const PressureRing& bearing);

} // namespace pw::plate
