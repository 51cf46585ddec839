#pragma once

#include "core/material/material.h"
#include "core/units/format.h"
#include "core/verdict/check.h"

namespace pw::verdict {

/// What is known of the plate when it is judged. mm, N, MPa.
struct PlateFindings {
    double designLoad = 0;
    double span = 0; ///< largest distance between two loaded stations (or the rim's, with fewer than two)
    std::optional<double> peakStress; ///< elastic, largest anywhere on the face, without hammering
    std::optional<double> firstYieldFactor;
    std::optional<double> collapseFactor;
    bool collapseReached = true; ///< false: so much was carried, and what comes after could not be followed
    std::optional<double> set, setAtProof; ///< empty: that load was not carried, or see unloadingFailed
    bool followed = false;                 ///< the bending past yield was worked out
    bool unloadingFailed = false;          ///< a load was carried, but what it leaves behind is not known
    double peakErrorPercent = 0;           ///< how far the last mesh moved the peak
    bool sharpCorner = false; ///< the peak leaves out an inside corner, which has no end of stress
    std::string peakPlace;
    std::vector<shape::Point> peakAt;
};

/// What the user wants and has found out about the steel.
struct PlateDemands {
    double wantedMargin = 2;
    std::optional<double> setLimit; ///< mm
    bool loadIsStated = true;       ///< false: a pull whose load nobody states wants half as much again
    bool unknownSteel = false;
    double hammer = 1; ///< blows on the loaded plate; already in collapse factor, set and what they say
    job::ShopTests tests;
    units::System system = units::System::Metric;
};

/// Set allowed when the user states none: max(0.02 mm, span / 5000). Common practice, no published source.
double setLimit(const PlateFindings& findings, const PlateDemands& demands);

/// Cast iron, or a file that skates, or a strip that snaps.
bool isBrittle(const material::Material& steel, const PlateDemands& demands);

/// plate.collapse, plate.set and plate.steel.
///
/// Ductile, s = wanted margin / 2: collapse factor >= 3.0 s holds, 1.5 s .. 3.0 s thin, 1.1 .. 1.5 s sets,
/// under 1.1 breaks (3.0 is 2.0 on nominal bending yield, the design factor of ASME BTH-1 category A,
/// times 1.5, the plastic shape factor of a solid section; 4.5 by category B). Set under its limit at 1.25 x
/// the load holds, under it at the load thin, else sets. Brittle: elastic peak against ultimate, 4 holds, 2
/// .. 4 thin, under 2 breaks (common practice, no published source). Incomplete, with the reason and no
/// figure, where the load at which it folds or what the load leaves behind could not be followed, and for a
/// brittle plate whose peak is not known: a sharp inside corner, or a peak that the last mesh moved by more
/// than 10 %.
std::vector<Check> checkPlate(const PlateFindings& findings, const material::Material& steel,
                              const PlateDemands& demands);

} // namespace pw::verdict
