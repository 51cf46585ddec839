#include "geometry/placement/spacing.h"

#include <algorithm>

namespace pw::placement {

namespace {

constexpr double kLeastWeb = 2; ///< mm

double outOfSquare(job::Process process, double t) {
    switch (process) {
    case job::Process::PlasmaTable:
    case job::Process::TorchTable:
        return 0.8 + 0.02 * t;
    case job::Process::HandTorch:
        return 1.2 + 0.035 * t;
    case job::Process::SawAndDrill:
        return 0.01 * t;
    case job::Process::Milled:
        return 0;
    }
    return 0;
}

} // namespace

Spacing spacingFor(const job::Job& job, units::Length thickness) {
    const job::Assumed assumed = job::assume(job);
    Spacing spacing;
    spacing.kerf = assumed.habits.kerf.mm();
    spacing.margin = job.cutting.edgeMargin
                         ? job.cutting.edgeMargin->mm()
                         : std::max(kLeastWeb, assumed.habits.layoutError.mm() +
                                                   outOfSquare(assumed.process, thickness.mm()));
    return spacing;
}

} // namespace pw::placement
