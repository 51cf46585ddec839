#include "core/loadpath/judge.h"

#include "core/util/require.h"

#include <cmath>

namespace pw::loadpath {

namespace {

/// Capacity over demand for a member that is not asked for anything.
constexpr double kPlenty = 1000;

} // namespace

double wantedOf(double s) {
    return 2 * s;
}

double limitOf(Rule rule) {
    return rule == Rule::Sudden ? 1.25 : 1.0;
}

Grade gradeOf(Rule rule, double margin, double s) {
    util::require(std::isfinite(margin) && s > 0,
                  "margin " + std::to_string(margin) + ", s " + std::to_string(s));
    if (margin < limitOf(rule) * (1 - kRounding))
        return rule == Rule::Sudden ? Grade::Breaks : Grade::Sets;
    return margin < wantedOf(s) * (1 - kRounding) ? Grade::Thin : Grade::Holds;
}

Check strengthCheck(const std::string& id, const std::string& member, const std::string& title, Rule rule,
                    double demand, double capacity, const std::string& unit, double s) {
    Check check;
    check.id = id;
    check.member = member;
    check.title = title;
    check.kind = verdict::CheckKind::Force;
    check.demand = demand;
    check.capacity = capacity;
    check.unit = unit;
    check.margin = demand > 0 ? std::min(kPlenty, capacity / demand) : kPlenty;
    check.wanted = wantedOf(s);
    check.grade = gradeOf(rule, *check.margin, s);
    return check;
}

Check incompleteCheck(const std::string& id, const std::string& member, const std::string& title,
                      verdict::CheckKind kind, const std::string& what) {
    Check check;
    check.id = id;
    check.member = member;
    check.title = title;
    check.kind = kind;
    check.grade = Grade::Incomplete;
    check.basis = what;
    return check;
}

void MemberChecks::take(MemberChecks other) {
    checks.insert(checks.end(), other.checks.begin(), other.checks.end());
    assumptions.insert(assumptions.end(), other.assumptions.begin(), other.assumptions.end());
    problems.insert(problems.end(), other.problems.begin(), other.problems.end());
}

} // namespace pw::loadpath
