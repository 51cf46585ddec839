#pragma once

#include "core/material/material.h"
#include "core/units/format.h"
#include "core/units/quantity.h"

#include <optional>
#include <string>
#include <vector>

namespace pw::hub {

using units::Length;
using units::Temperature;

/// Where hub and shaft were when they were measured and fitted.
inline constexpr Temperature kRoom = Temperature::fromCelsius(20);

/// Temperature difference, in kelvin, that opens a fit by heating the hub alone:
///   dT = (delta + clearance) / (alpha d).
/// delta on the diameter, alpha the hub's. Source: DIN 7190-1 and any text (from memory).
double kelvinToOpen(Length interference, Length clearance, Length shaft, double hubExpansion);

/// Room temperature and the difference above: the hub is heated, the shaft stays cold.
Temperature temperatureToOpen(Length interference, Length clearance, Length shaft, double hubExpansion);

/// The same when the shaft gets as hot as the hub: only the difference of the two expansions works. None when
/// the shaft grows as much as the hub or more; heating the whole then never frees it.
std::optional<Temperature> temperatureToOpenTogether(Length interference, Length clearance, Length shaft,
                                                     double hubExpansion, double shaftExpansion);

/// Interference left when hub and shaft are at these temperatures:
///   delta - d (alpha_h (Th - 20 C) - alpha_s (Ts - 20 C)).
/// Under 0 it is play. Expansion near room temperature; it rises a little with heat, so the truth opens
/// sooner.
Length interferenceAt(Length atRoom, Length shaft, double hubExpansion, Temperature hub,
                      double shaftExpansion, Temperature shaftTemperature);

/// One thing that heat does (resources/heat_effects.csv).
struct HeatEffect {
    std::string on;   ///< "grease", "spring", or a metal by the name of `material::nameOf`
    Temperature from; ///< it starts about here
    std::string says; ///< one sentence; in the table {200} stands for 200 C
    std::string source;

    bool operator==(const HeatEffect&) const = default;
};

/// All that is known, in the order of the table, as it stands there.
const std::vector<HeatEffect>& heatEffects();

/// What to say about a part of this metal heated so far: what lies about every hub, and what the metal itself
/// does. Lowest temperature first, temperatures written out in these units.
std::vector<HeatEffect> heatAdvice(Temperature reached, material::Metal metal, units::System system);

} // namespace pw::hub
