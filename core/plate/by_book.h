#pragma once

#include "core/job/job.h"
#include "core/util/result.h"

#include <string>

namespace pw::plate {

using units::Force;
using units::Length;
using units::Stress;

/// What the estimate is made from. Radii and diameters as named.
struct ByBookInputs {
    job::OutlineShape shape = job::OutlineShape::Disc; ///< Disc or Bar
    Length across;                                     ///< disc: diameter; bar: overall length
    Length width;                                      ///< bar only
    Length thickness;                                  ///< of one plate
    int stacked = 1; ///< loose plates on top of each other: n t^2 in strength, n t^3 in stiffness
    Length bore;     ///< diameter; 0 is none
    int stations = 0;
    Length pinCircle, accessHole; ///< diameters; access hole 0 is none
    Length land; ///< outer diameter of the ring that bears; 0: the force stands on the pin circle
    Length bearingInside, bearingOutside;
    Force load; ///< of all stations together
    Stress modulus = Stress::fromMpa(205000);
    double poisson = 0.3;
    units::System system = units::System::Metric;
};

/// The by-the-book estimate: quick, explains itself, never decides alone.
struct ByBook {
    double moment = 0;             ///< N.mm per mm of section, where it governs
    Stress stress;                 ///< bending, at the governing section
    Length deflection;             ///< bore edge against the rim (bar: against its end), bending only
    Length shearDeflection;        ///< what shear strain adds, shear factor 5/6
    double ligamentEfficiency = 1; ///< of the station circle (bar: of the governing section)
    std::string where;             ///< "at the bore", "between the access holes"
    std::string text;              ///< the formula with the numbers put in, one line
    std::string source;
};

/// Disc: annular plate, free edges, station force as even pressure over the radial width of the lands,
/// balanced by even pressure over the centre bearing; the ring of the access holes has its rigidity times
///   eta = 1 - N d / (2 pi R),
/// and the stress there is divided by eta. Bar, stations at both ends: cantilever from the middle of the half
/// bearing, net width at every section. Fails when figures are missing or make no plate, and for other
/// outlines. An estimate: bore stress and deflection within about a quarter of a three-dimensional solution.
/// Source: Roark 7th ed. Table 11.2 (signs and equations); Timoshenko, Woinowsky-Krieger art. 17; ligament
/// efficiency as in pressure-vessel practice for rows of holes, (p - d)/p.
util::Result<ByBook> byBook(const ByBookInputs& inputs);

/// From the job; the centre bearing comes from the load path. The problem names the missing job field.
util::Result<ByBook> byBook(const job::Job& job, Force load, Length bearingInside, Length bearingOutside,
                            Stress modulus, double poisson);

} // namespace pw::plate
