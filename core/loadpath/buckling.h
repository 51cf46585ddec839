#pragma once

#include "core/loadpath/judge.h"
#include "core/material/grades.h"
#include "core/thread/thread.h"

#include <optional>
#include <string>

namespace pw::loadpath {

/// A round column: diameter d, free length l, end factor K (1.0 both ends held in place, 2.0 one end free to
/// move), so that C = 1 / K^2 in Shigley's letters; k = d / 4 its radius of gyration.
struct Column {
    Length diameter, length;
    double endFactor = 1;
    Stress yield, E;
};

/// Critical stress. Long (l/k above (l/k)_1 = sqrt(2 pi^2 C E / Sy)): Euler, C pi^2 E / (l/k)^2. Short:
/// Johnson, Sy - (Sy l / (2 pi k))^2 / (C E). A column of no length carries Sy.
/// Source: Shigley 9th ed. eq. (4-43), (4-45), (4-48) (Euler, Johnson parabola).
Stress criticalStress(const Column& column);
/// Is it long enough for Euler?
bool isSlender(const Column& column);

struct BucklingInputs {
    thread::Thread thread;
    material::ScrewGrade strength;
    std::optional<Length> freeLength; ///< between the plate and the point
    double endFactor = 1;
    std::string endWords; ///< "both ends held: the plate is bolted to the part"
    Force load;
    double s = 1;
    units::System system = units::System::Metric;
};

/// `screw.buckling`: a screw that pushes, as a column of its root diameter. E = 207 GPa (Shigley 9th ed.
/// Table A-5).
Check bucklingCheck(const BucklingInputs& inputs);

} // namespace pw::loadpath
