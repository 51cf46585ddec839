#pragma once

#include "core/material/material.h"
#include "core/plate/held_edge.h"
#include "core/shape/loop.h"
#include "core/util/result.h"

#include <functional>
#include <optional>

namespace pw::engine {

/// A flange clamped at the hub it stands on, and the jaws that pull at its rim. mm, N.
struct FlangeTask {
    double outside = 0, root = 0; ///< diameters: the rim, and where the flange leaves the hub
    double thickness = 0;
    material::Material material;
    int jaws = 0;
    double width = 0;   ///< of a jaw along the rim
    double overlap = 0; ///< how far a jaw reaches inwards from the rim
    double force = 0;   ///< all jaws together
};

/// What one jaw is taken to carry.
struct JawShare {
    double force = 0;      ///< N
    bool oneSlack = false; ///< four or more: one may not bear, each of the rest takes F / (n - 1)
};

/// Two or three jaws find their own balance about the screw: F / n. With four or more one may be slack:
/// F / (n - 1). Common practice, no published source.
JawShare jawShare(int jaws, double force);

/// Jaws that leave no more than a twentieth of the circle through their middle free pull all round.
bool isFullRing(const FlangeTask& task);

struct FlangeOptions {
    double settledPercent = 2; ///< the peaks have settled when a finer mesh moves them by less
    int mostLevels = 6;
    int mostTriangles = 20000;
    bool useSymmetry = true;              ///< false: the whole ring instead of half a jaw's part
    bool collapse = false;                ///< follow a ductile flange past yield as well
    std::function<bool(double)> progress; ///< 0..1; false stops (Stopped is thrown)
};

/// The elastic answer. MPa on the faces, bending only, no notch at the root.
struct FlangeField {
    double vonMises = 0;   ///< largest anywhere
    double principal = 0;  ///< largest of either sign anywhere: what a brittle flange breaks by
    double rootRadial = 0; ///< largest across the root circle
    shape::Point peakAt;   ///< of vonMises; the first jaw (the slack one, if any) lies along x
    shape::Point rootAt;
    double deflection = 0;   ///< largest, mm, shear counted
    double clampForce = 0;   ///< N that the root gives back, whole flange; equals what was put on
    double appliedForce = 0; ///< N on the whole flange
    double errorPercent = 0; ///< by how much the last finer mesh moved the peaks; 0 for the closed form
    bool settled = false;
    int levels = 0, unknowns = 0;
    int sectorOf = 1;      ///< 1: the whole ring, 2: half; else half a jaw's part or, on a narrow one, less
    bool fullRing = false; ///< closed form: the jaws pull all round
    JawShare jaw;
    /// Radial stress at the root were the same force spread all round the rim: less than the truth.
    double rootRadialSpread = 0;
    std::optional<double> collapseFactor; ///< load factor; ductile, when asked for
    bool collapseReached = true;          ///< false: that factor was carried
};

/// Mindlin plate (core/plate), root circle clamped in deflection and both rotations, even pressure under each
/// jaw (a piece of a ring, width x overlap), meshed ever finer until the peaks have settled. A full ring
/// takes the exact annular solution (core/plate/annular; Roark, 7th ed., Table 11.2, inner edge fixed, outer
/// free). A slack jaw pulls nothing: on a small root it would relieve the jaw across from it. On a narrow
/// flange (overhang up to a fifth of the root's radius) a neighbour can only add, and all jaws are given
/// their share so that symmetry stays. A clamp that gives way a little, as a hub does, has lower stress at
/// the root. Problems: figures that cannot be, each with its job field.
util::Result<FlangeField> solveFlange(const FlangeTask& task, const FlangeOptions& options = {});

} // namespace pw::engine
