#pragma once

#include "app/engine/report.h"
#include "core/loadpath/rating.h"
#include "core/loadpath/torque.h"
#include "core/spring/pack.h"

/// The two tables a mechanic works by: dial against load, and turns against torque.
namespace pw::engine {

/// What a dial shows for a newton on the tool, where its foot stands; the plate bends in proportion.
struct Dial {
    units::Length perNewton; ///< mm a newton
    units::Length at;        ///< of the foot, from the middle
};

/// A quarter, half, three quarters and all of the design load, then rated load, stamp and proof where they
/// differ from it; in ascending order.
std::vector<GaugeRow> gaugeRows(units::Force design, const ScrewReport& screw, const ProofReport& proof,
                                const Dial& dial);

/// Squeezing: every half turn from where the retainers begin to move, to the end of the squeeze. Pulling: a
/// quarter, half, three quarters and all of the load, with the turns that tool and screw take up, when
/// `stiffness` (N/mm) is known. Empty without a screw.
Card turnsAndTorque(const job::Job& job, const spring::PackLoads& pack,
                    const Found<loadpath::TorqueInputs>& torque, const Found<Dial>& dial,
                    const Found<units::Rate>& stiffness);

/// As a dial is read: to 0.001 mm or 0.0001 in.
std::string dialWords(units::Length reading, units::System system);

} // namespace pw::engine
