#pragma once

#include "core/hub/heat.h"
#include "core/hub/press_fit.h"
#include "core/job/job.h"
#include "core/material/material.h"
#include "core/util/result.h"

#include <string>
#include <vector>

namespace pw::hub {

using job::Given;
using units::Energy;
using units::Range;
using units::Rate;

/// Friction of hub on shaft when it is pulled off. Common practice, no published source; the design values of
/// DIN 7190-1 lie lower because they protect holding.
inline constexpr Range<double> kPullingFriction{0.10, 0.35};

/// What rust does to the friction. Common practice, no published source.
struct RustWord {
    std::string_view words;
    double multiplier;
};
inline constexpr RustWord kRust[] = {{"clean", 1}, {"rusty", 1.5}, {"rusted fast", 2.5}};

/// What the fit asks of a member at the tightest, cold.
struct FitStress {
    Stress stress;
    Stress limit;      ///< yield, or ultimate of a brittle metal
    bool over = false; ///< the fit is no longer elastic: the pressure and the pull come out too high
    bool operator==(const FitStress&) const = default;
};

enum class PullFrom {
    Nothing,
    Fit,   ///< pressure and friction
    Stated ///< `hub.force`
};

/// What a hub may ask for, as far as its figures tell. Low ends from the loosest fit and the least friction,
/// high ends from the tightest and the most. What is not known is empty.
struct HubForces {
    bool told = false;  ///< the job says something of the fit or of the force
    bool known = false; ///< there is a pull
    PullFrom from = PullFrom::Nothing;

    Given<Range<Force>> pull; ///< with the hub at heat.part and the shaft at 20 C
    /// The same when the shaft has got as warm as the hub; only when the part is heated. A shaft that is not
    /// kept cold ends here, so the design load is safe with this one.
    Given<Range<Force>> pullShaftWarm;
    Given<Range<Force>> pullOfFit; ///< what the figures of the fit say where a stated force goes before them
    Given<Range<Stress>> pressure; ///< with the hub at heat.part
    Given<Range<Length>> interference;    ///< on the diameter, at 20 C
    Given<Range<Temperature>> heatToFree; ///< hub alone heated until nothing is left of the interference
    Given<Range<Temperature>>
        heatToFreeTogether;    ///< hub and shaft equally hot; empty when that never frees it
    Given<Length> roomToSlide; ///< clearance that lets it slide off by hand, d/1000 (DIN 7190-1, from memory)
    Range<double> friction;    ///< without rust
    double rust = 1;

    bool letsGoByItself = false;             ///< taper: even at the high friction
    bool mayLetGoByItself = false;           ///< taper: at the low friction
    Given<FitStress> hubStress, shaftStress; ///< empty where the metal is not known
    material::Metal hubMetal = material::Metal::Steel;

    std::vector<std::string> assumptions;
    std::vector<std::string> remarks; ///< what the figures mean, in plain words
    util::Problems missing;           ///< field, what it is for and how to measure it
    util::Problems problems;          ///< figures that contradict each other or make no sense
};

/// Straight fit:  pull = rust mu p pi d L.
/// Taper:         pull = pi dm L p (rust mu - tan b); `shaft` is dm, the diameter halfway along the fit.
/// Rust multiplies the friction, not the force: the spring-out of a taper does not grow with it.
/// A stated `hub.force` goes before every fit, and stands as it is: no rust, no heat. `rust only` has no
/// other. The tightest of interference and draw is taken where both are given and do not agree. A job without
/// a hub, or a hub that says nothing of its fit, is not an error: `known` is false. Source: see press_fit.h,
/// taper.h and heat.h.
HubForces hubForces(const job::Job& job);

/// Energy that jumps out when the hub lets go: F^2/(2 K), K the stiffness of all that is stretched and bent.
/// Source: work of a linear spring.
Energy jumpEnergy(Force pull, Rate stiffness);

} // namespace pw::hub
