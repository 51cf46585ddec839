#pragma once

#include "core/material/material.h"

/// What a metal is worth when hot (resources/hot_steel.csv, hot_bolts.csv).
namespace pw::material {

using units::Temperature;

/// Shares of the values at room temperature.
struct HotFactors {
    double ky = 1; ///< effective yield, reached at 2 % of strain: folding
    double kp = 1; ///< proportional limit, where straining stops being elastic: first yield and set
    double kE = 1; ///< slope of the elastic range

    bool operator==(const HotFactors&) const = default;
};

/// Linear between the rows of the table; 1 up to 100 C, 0 from 1200 C on. For S235 to S460.
/// Source: EN 1993-1-2:2005, 3.2.1 and Table 3.1.
HotFactors hotFactors(Temperature);

/// k_b, share of a bolt's or screw's strength in tension and shear. Linear between the rows; 1 up to 20 C, 0
/// from 1000 C on. It starts to fall at once, unlike the plate's.
/// Source: EN 1993-1-2:2005, Annex D, Table D.1 (from memory).
double hotBoltFactor(Temperature);

/// A material at a temperature. The three that an elastic-plastic solution asks for fall at different rates,
/// so they stand apart.
struct HotMaterial {
    Stress yieldForSet;      ///< kp x yield: first yield, permanent set
    Stress yieldForCollapse; ///< ky x yield
    Stress E;                ///< kE x E
    HotFactors factors;
    bool beyondStandard = false; ///< hotter than 100 C with a yield over 460 MPa: work-hardened or quenched
                                 ///< steel loses more, and for good, above what it was tempered at
    std::string source;          ///< empty where nothing is taken off

    bool operator==(const HotMaterial&) const = default;
};

/// Up to 100 C every metal is taken as it is at 20 C (aluminium 6061-T6 is then down by 5 %, EN 1999-1-2
/// Table 1a, from memory; not counted). Above it only plain and low-alloy steel has factors here; anything
/// else is a problem, which names no field.
util::Result<HotMaterial> atTemperature(const Material&, Temperature);

/// "steel", "grey iron", ... as it stands in a sentence.
std::string_view nameOf(Metal);

} // namespace pw::material
