#pragma once

#include "core/units/quantity.h"
#include "core/util/result.h"

#include <optional>
#include <string>
#include <string_view>

/// Screw threads by name, and what follows from their geometry. Nothing about material or friction.
namespace pw::thread {

using units::Angle;
using units::Area;
using units::Length;

enum class Form { Unified, Metric, Whitworth, Acme, Trapezoidal };

struct Thread {
    Form form = Form::Metric;
    std::string series; ///< "UNC", "UNF", "UNEF", "UN", "UNS", "M", "BSW", "BSF", "ACME", "Tr"
    std::string name;   ///< the one way we write it: "5/8-18 UNF", "M20", "M20x1.5", "1-5 ACME", "Tr 24x5"
    Length diameter;    ///< nominal (basic major)
    Length pitch;
    int starts = 1;
    bool leftHand = false;

    Length lead() const { return pitch * starts; }
    bool operator==(const Thread&) const = default;
};

/// "5/8-18 UNF", "5/8-11", "1-1/4-7", "M20" (coarse), "M20x1.5", "1-5 ACME", "Tr 24x5", "Tr 40x14 P7", "5/8
/// BSW", "5/8 BSF". A series without a pitch takes its standard one; an inch size without either is a
/// problem. A tolerance class ("-2A", "6g") may follow and is not kept; "LH" may follow. The problem names no
/// field.
util::Result<Thread> parse(std::string_view text);

/// What a right answer looks like, for messages: "5/8-11 UNC or M20".
std::string_view example();

/// Basic pitch diameter: D - 0.649519 P (60 deg), D - 0.640327 P (Whitworth), D - P/2 (ACME, Tr).
/// Source: ASME B1.1, ISO 724, BS 84 (from memory), ASME B1.5, ISO 2904.
Length pitchDiameter(const Thread& thread);

/// Basic minor diameter of the nut: D - 1.082532 P (60 deg), D - 1.280654 P (Whitworth), D - P (ACME, Tr).
Length minorDiameter(const Thread& thread);

/// Diameter at the root of the screw, for buckling and for torsion: D - 1.299038 P (Unified, ASME B1.1),
/// D - 1.226869 P (Metric d3, ISO 898-1), D - 1.280654 P (Whitworth), D - P - clearance (ACME: 0.020 in,
/// 0.010 in from 12 threads per inch up, with the 2G tolerance off, ASME B1.5; Tr: d3 of ISO 2904).
Length rootDiameter(const Thread& thread);
Area rootArea(const Thread& thread);

/// Tensile stress area: pi/4 (D - 0.974279 P)^2 (Unified, ASME B1.1), pi/4 ((d2+d3)/2)^2 (Metric, ISO 898-1;
/// the same rule for Whitworth and Tr, common practice), of the least pitch and root diameters for ACME (ASME
/// B1.5, class 2G).
Area tensileStressArea(const Thread& thread);

/// Between a flank and the plane across the axis: 30, 27.5, 14.5 or 15 deg.
Angle flankAngle(const Thread& thread);

/// Of the helix: atan(lead / (pi d2)), at the basic pitch diameter, for ACME at the least one of class 2G.
Angle leadAngle(const Thread& thread);

/// Hole to tap: D - P to 0.1 mm (Metric, ISO 2306), three quarters of the full thread to the nearest 1/64 in
/// (Unified and Whitworth from 1/4 in up, common practice), the nut's minor diameter (ACME, Tr).
Length tappingDrill(const Thread& thread);

/// The diameters that decide where threads strip, at the limits of size that leave least metal.
struct StripLimits {
    Length nutMinorMost, nutPitchMost, screwMajorLeast, screwPitchLeast;
    std::string basis; ///< the tolerance class, or "basic sizes"
};

/// Classes 2A/2B (ASME B1.1), 6g/6H (ISO 965-1, not rounded to the table's steps), medium (BS 84, from
/// memory), 2G (ASME B1.5; the nut's minor diameter stays basic, as in its table of shear areas); Tr at basic
/// sizes.
StripLimits stripLimits(const Thread& thread);

/// Area on which the screw's threads shear off, at the nut's minor diameter Kn over the engagement Le:
///   pi Le Kn / P [P/2 + (Es - Kn) tan(flank angle)].
/// Source: ASME B1.1 appendix B, FED-STD-H28/2B; limits as in stripLimits.
Area screwShearArea(const Thread& thread, Length engagement);

/// Area on which the nut's threads shear off, at the screw's major diameter Ds:
///   pi Le Ds / P [P/2 + (Ds - En) tan(flank angle)].
Area nutShearArea(const Thread& thread, Length engagement);

/// Hexagon and thread height of the standard nut: ISO 4032, ASME B18.2.2, BS 1083.
struct Hexagon {
    Length nutAcrossFlats, boltAcrossFlats;
    Length nutHeight; ///< least
    std::string source;
};
/// Nothing for a size that is not in the table, and for ACME and Tr.
std::optional<Hexagon> standardHexagon(const Thread& thread);

/// Plain washer: ISO 7089, or ASME B18.21.1 type A narrow (Whitworth too, common practice).
struct Washer {
    Length inside, outside, thickness;
    std::string source;
};
/// The washer of the next size up for a diameter between two; nothing beyond the table.
std::optional<Washer> standardWasher(const Thread& thread);

} // namespace pw::thread
