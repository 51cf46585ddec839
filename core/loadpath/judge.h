#pragma once

#include "core/units/format.h"
#include "core/units/quantity.h"
#include "core/util/result.h"
#include "core/verdict/check.h"

#include <string>
#include <vector>

/// How a margin becomes a verdict, and how a check of a member's strength is filled in.
namespace pw::loadpath {

using units::Force;
using units::Length;
using units::Stress;
using units::Torque;
using verdict::Check;
using verdict::Grade;

/// Rounding in a margin must not decide a verdict.
constexpr double kRounding = 1e-9;

/// Two ways to go: Sudden (thread strip, screw tension, brittle parts) fails without warning and must outlive
/// its own proof; Ductile (bending, bearing) yields first.
enum class Rule { Sudden, Ductile };

/// Margin on the governing limit, s = wanted margin / 2:
///   Sudden:  >= 2.0 s holds, 1.25 .. 2.0 s thin, under 1.25 breaks.
///   Ductile: >= 2.0 s holds, 1.0 .. 2.0 s thin, under 1.0 sets.
/// Source: design factor 2.0 of ASME BTH-1 category A; 1.25 is the proof load.
Grade gradeOf(Rule rule, double margin, double s);

/// The margin at which the member just holds: 2 s.
double wantedOf(double s);

/// The margin under which it sets or breaks: 1.25 or 1.0.
double limitOf(Rule rule);

/// A strength check with everything but basis and source; margin = capacity / demand.
Check strengthCheck(const std::string& id, const std::string& member, const std::string& title, Rule rule,
                    double demand, double capacity, const std::string& unit, double s);

/// A check that cannot be made: which figure is missing and how to get it.
Check incompleteCheck(const std::string& id, const std::string& member, const std::string& title,
                      verdict::CheckKind kind, const std::string& what);

/// What one member (or a few of a kind) had to say.
struct MemberChecks {
    std::vector<Check> checks;
    std::vector<std::string> assumptions;
    util::Problems problems;

    void take(MemberChecks other);
};

} // namespace pw::loadpath
