#pragma once

#include "core/job/job.h"
#include "core/loadpath/judge.h"
#include "core/material/material.h"

#include <optional>

/// A hub's flange that jaws pull on: what its bending stress, which the engine works out, and the jaws'
/// pressure are worth.
namespace pw::loadpath {

/// What is known of the flange when it is judged.
struct FlangeFindings {
    Stress vonMises, principal; ///< elastic, largest anywhere
    double errorPercent = 0;
    bool settled = true;
    bool atRoot = true; ///< the largest stands at the root
    bool fullRing = false;
    bool oneSlack = false;
    int jaws = 0;
    Force perJaw;
    std::optional<double> collapseFactor;
    bool collapseReached = true;
};

/// How it is judged. The factors are on strength only (a hot part): yield, and ultimate where that decides.
struct FlangeDemands {
    double s = 1; ///< wanted margin / 2
    double strengthFactor = 1;
    bool hammering = false; ///< the user means to hammer while loaded
    units::System system = units::System::Metric;
};

/// `flange.bending`. Ductile: largest von Mises stress against yield, judged by Rule::Ductile. Brittle:
/// largest principal stress against ultimate, >= 4 s holds, 2 .. 4 s thin, under 2 breaks (common practice,
/// no published source), and no hammering: that alone breaks it.
Check flangeBendingCheck(const FlangeFindings& flange, const material::Material& material,
                         const FlangeDemands& demands);

/// `jaws.bearing`: force of one jaw over width x overlap. Ductile: against 1.8 x yield (AISC 360 J7, from
/// memory). Brittle: against ultimate by the same 4 and 2; grey iron takes three to four times that in
/// compression (EN 1561, from memory), which is left for jaws that bear on their edge.
Check jawBearingCheck(Force perJaw, Length width, Length overlap, const material::Material& material,
                      const FlangeDemands& demands);

/// `flange.shear`: force of one jaw over the thickness round its three sides in the flange, t (width + 2
/// overlap), or over its part of the root circle where that is less. Ductile: against 0.6 x yield (AISC 360
/// J4, from memory). Brittle: against ultimate by 4 and 2 (grey iron shears at or above its tensile strength:
/// from memory).
Check flangeShearCheck(Force perJaw, int jaws, Length root, Length thickness, Length width, Length overlap,
                       const material::Material& material, const FlangeDemands& demands);

/// What is still to be measured for these checks, in one line with how; none when nothing is missing.
std::optional<std::string> missingForFlange(const job::Hub& hub);
std::optional<std::string> missingForJaws(const job::Hub& hub);

} // namespace pw::loadpath
