#pragma once

#include "core/util/result.h"

#include <optional>
#include <vector>

/// Exact axisymmetric bending of a thin annular or solid round plate.
///
/// Kirchhoff theory (no shear strain, deflection small beside the thickness). With theta = dy/dr:
///   Mr = D (theta' + nu theta/r),  Mt = D (theta/r + nu theta'),  d/dr[(1/r) d(r theta)/dr] = Q/D,
///   d(r Q)/dr = -q r.
/// Signs are those of Roark: y up, loads (w, q) down, M positive when it compresses the top face, Q positive
/// when it acts up on the inner face of the part that lies outside r. Lengths mm, forces N, rigidity D = E
/// t^3 / (12 (1 - nu^2)) in N.mm, moments N.mm per mm, shear N per mm. Source: Young, Budynas, Roark's
/// Formulas for Stress and Strain, 7th ed., Table 11.2 (restraints and signs); Timoshenko, Woinowsky-Krieger,
/// Theory of Plates and Shells, 2nd ed., art. 15-17 (equations).
namespace pw::plate {

/// How an edge is held. Guided: slope 0, free to move up and down, so no shear.
enum class Edge { Free, Supported, Guided, Fixed };

/// A load spread evenly round one circle. Down positive. Radius 0 is a point load on a solid plate: the
/// deflection is finite there, the moments are not.
struct LineLoad {
    double radius = 0; ///< mm
    double total = 0;  ///< N, round the whole circle
    bool operator==(const LineLoad&) const = default;
};

/// Even pressure over a ring, down positive.
struct RingPressure {
    double from = 0, to = 0; ///< mm
    double pressure = 0;     ///< MPa
    bool operator==(const RingPressure&) const = default;
};

/// A ring where the plate is weaker than the rest: rigidity times `factor`. Rings may not overlap.
struct SoftRing {
    double from = 0, to = 0; ///< mm
    double factor = 1;
    bool operator==(const SoftRing&) const = default;
};

struct AnnularPlate {
    double outer = 0; ///< radius a, mm
    double inner = 0; ///< radius b, mm; 0 is a solid plate, and its inner edge is then no edge
    double rigidity = 0;
    double poisson = 0.3;
    Edge outerEdge = Edge::Free, innerEdge = Edge::Free;
    std::vector<LineLoad> lines;
    std::vector<RingPressure> rings;
    std::vector<SoftRing> soft;
    /// Where the deflection is called 0 when no edge holds the plate up (the loads must then balance);
    /// default: the outer edge.
    std::optional<double> datum;
};

struct AnnularState {
    double deflection = 0, slope = 0;              ///< mm, rad
    double radialMoment = 0, tangentialMoment = 0; ///< N.mm per mm
    double shear = 0;                              ///< N per mm
};

/// A value and the radius where it stands.
struct AnnularExtreme {
    double value = 0, radius = 0;
};

class AnnularSolution {
public:
    /// At any radius from the inner to the outer edge. At a line load: just outside it, but at the outer edge
    /// just inside. Ends are taken as the edges when r is beyond them by no more than rounding.
    AnnularState at(double radius) const;
    AnnularState inner() const { return at(m_inner); }
    AnnularState outer() const { return at(m_outer); }

    /// What the edges' supports push up with, N per mm of edge, loads that stand on the edge included.
    double innerReaction() const { return m_innerReaction; }
    double outerReaction() const { return m_outerReaction; }

    /// The largest in magnitude, with its sign.
    AnnularExtreme largestDeflection() const;
    AnnularExtreme largestRadialMoment() const;
    AnnularExtreme largestTangentialMoment() const;
    /// The most positive, which is Roark's "max" where a clamped edge carries a larger negative one.
    AnnularExtreme highestRadialMoment() const;

    /// Integral of Q dr, N. Shear strain adds -shearIntegral / (k G t) to the deflection between the two
    /// radii (k = 5/6); where the shear follows from balance alone this is exact in Mindlin's theory too.
    double shearIntegral(double from, double to) const;

    /// Internal: one stretch with constant pressure and rigidity, and the state at its inner end.
    struct Piece {
        double from = 0, to = 0, rigidity = 0, pressure = 0;
        double deflection = 0, slope = 0,
               moment = 0; ///< at `from`; a disc's middle: slope is per mm (curvature)
        double shearTimesRadius = 0;
    };

private:
    friend util::Result<AnnularSolution> solveAnnular(const AnnularPlate&);
    template<class Pick, class Rank>
    AnnularExtreme extreme(Pick pick, Rank rank) const;

    double m_inner = 0, m_outer = 0, m_poisson = 0;
    double m_innerReaction = 0, m_outerReaction = 0;
    std::vector<Piece> m_pieces;
};

/// Solves for any mix of restraints; when neither edge holds the plate up the loads must balance to 1e-9 of
/// their sum. Relative accuracy about 1e-12 of the largest value, also for rings as narrow as b/a = 0.99.
util::Result<AnnularSolution> solveAnnular(const AnnularPlate& plate);

} // namespace pw::plate
