#pragma once

#include "core/units/quantity.h"

#include <optional>
#include <string_view>

/// Formulas of a helical compression spring of round wire. D is the mean coil diameter (outside less one
/// wire), d the wire, n the active coils, C = D/d the spring index.
namespace pw::spring {

using units::Force;
using units::Length;
using units::Rate;
using units::Stress;

/// How the end coils are made.
enum class Ends { ClosedGround, Closed, PlainGround, Plain };

/// "closed ground", "closed", "plain ground", "plain" (the words of the job file); none for anything else.
std::optional<Ends> endsFrom(std::string_view words);

/// k = G d^4 / (8 D^3 n). Source: Shigley's Mechanical Engineering Design, 9th ed., eq. (10-9).
Rate rateOf(Length wire, Length meanCoil, double activeCoils, Stress shearModulus);

/// K_W = (4C - 1)/(4C - 4) + 0.615/C. Source: Wahl, Mechanical Springs; Shigley 9th ed., eq. (10-4).
double wahlFactor(double index);

/// K_B = (4C + 2)/(4C - 3), also written (C + 0.5)/(C - 0.75). Source: Shigley 9th ed., eq. (10-5); EN
/// 13906-1 takes the same one.
double bergstraesserFactor(double index);

/// tau = K_B 8 F D / (pi d^3), at the inside of the coil. Source: Shigley 9th ed., eq. (10-7).
Stress shearStress(Force force, Length wire, Length meanCoil);

/// P = pi tau d^3 / (8 D), no curvature factor. Source: Machinery's Handbook, 31st ed., p. 318, Table 4.
Force forceAtUncorrectedStress(Stress stress, Length wire, Length meanCoil);

/// f = pi tau D^2 / (G d), per active coil, no curvature factor. Source: Machinery's Handbook, 31st ed., p.
/// 318.
Length deflectionPerCoil(Stress stress, Length wire, Length meanCoil, Stress shearModulus);

/// Coils that do not work: 2 with closed ends, 1 plain ground, 0 plain.
/// Source: Machinery's Handbook, 31st ed., p. 318, Table 3; Shigley 9th ed., Table 10-1.
double deadCoils(Ends ends);

/// Coils touching: N d with ground ends, (N + 1) d otherwise, N the total coils. Source: as deadCoils.
Length solidLength(Length wire, double totalCoils, Ends ends);

/// Least sum of gaps between coils at the greatest load, cold-coiled: S_a = n (0.0015 D^2/d + 0.1 d).
/// Source: EN 13906-1 (from memory).
Length sumOfLeastGaps(Length wire, Length meanCoil, double activeCoils);

/// What a wire's name tells: strength by wire size and shear modulus.
struct Wire {
    std::string_view name;
    double a, m;         ///< S_ut = a / d^m, MPa and mm
    double shearModulus; ///< MPa
    double allowable;    ///< static shear stress over S_ut, before set is removed

    /// Source: Shigley 9th ed., eq. (10-14) and Table 10-4.
    Stress strength(Length wire) const;
};

/// By the trade name or the ASTM number, "music wire", "A228"; none when unknown.
/// Source: Shigley 9th ed., Tables 10-4, 10-5, 10-6 (A229 and A401 strengths from memory).
std::optional<Wire> wireNamed(std::string_view name);

/// Taken when nobody says what the wire is: 79.3 GPa, the middle of Shigley's Table 10-5 (77.2 to 82.7).
inline constexpr Stress kUsualShearModulus = Stress::fromMpa(79300);

} // namespace pw::spring
