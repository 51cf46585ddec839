#include "core/verdict/check.h"

#include "core/util/require.h"
#include "core/util/say.h"

namespace pw::verdict {

namespace {

/// Incomplete ranks between thin and sets: a plate nobody could judge must not pass, and what is known to
/// fail must not be hidden behind what is not known.
int rankOf(Grade grade) {
    switch (grade) {
    case Grade::Holds:
        return 0;
    case Grade::Thin:
        return 1;
    case Grade::Incomplete:
        return 2;
    case Grade::Sets:
        return 3;
    case Grade::Breaks:
        return 4;
    }
    util::require(false, "unknown grade");
    return 0;
}

bool dragsDown(const Check& check) {
    return check.grade != Grade::Incomplete ||
           (check.member == "plate" && (check.kind == CheckKind::Force || check.id == "plate.set"));
}

} // namespace

std::string_view wordOf(Grade grade) {
    switch (grade) {
    case Grade::Holds:
        return PW_SAY("holds");
    case Grade::Thin:
        return PW_SAY("thin");
    case Grade::Sets:
        return PW_SAY("sets");
    case Grade::Breaks:
        return PW_SAY("breaks");
    case Grade::Incomplete:
        return PW_SAY("incomplete");
    }
    util::require(false, "unknown grade");
    return {};
}

std::string sayMember(const std::string& member) {
    static constexpr const char* kMembers[] = {
        PW_SAY("access holes"),   PW_SAY("backing bar"),  PW_SAY("bolts"),        PW_SAY("bar thread"),
        PW_SAY("centre bearing"), PW_SAY("flange"),       PW_SAY("hub"),          PW_SAY("lands"),
        PW_SAY("legs"),           PW_SAY("nut"),          PW_SAY("pins"),         PW_SAY("plate"),
        PW_SAY("plate thread"),   PW_SAY("puller bolts"), PW_SAY("ram"),          PW_SAY("rod"),
        PW_SAY("screw"),          PW_SAY("screw point"),  PW_SAY("shaft thread"), PW_SAY("springs"),
        PW_SAY("stop block"),     PW_SAY("stop bolt"),    PW_SAY("strongback"),   PW_SAY("tool"),
        PW_SAY("washer")};
    for (const char* known : kMembers)
        if (member == known)
            return say(known);
    return member;
}

std::optional<double> Check::marginOverWanted() const {
    if (!margin || !wanted || *wanted <= 0)
        return std::nullopt;
    return *margin / *wanted;
}

Grade worst(const std::vector<Check>& checks) {
    std::optional<Grade> found;
    for (const Check& check : checks)
        if (dragsDown(check) && (!found || rankOf(check.grade) > rankOf(*found)))
            found = check.grade;
    return found.value_or(Grade::Incomplete);
}

int weakestLink(const std::vector<Check>& checks) {
    int force = -1, fit = -1;
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const Check& check = checks[i];
        const auto ratio = check.marginOverWanted();
        if (check.grade == Grade::Incomplete)
            continue;
        if (check.kind == CheckKind::Force && ratio) {
            if (force < 0 || *ratio < *checks[static_cast<std::size_t>(force)].marginOverWanted())
                force = static_cast<int>(i);
        } else if (check.kind == CheckKind::Fit) {
            if (fit < 0) {
                fit = static_cast<int>(i);
                continue;
            }
            const Check& best = checks[static_cast<std::size_t>(fit)];
            const int rank = rankOf(check.grade), bestRank = rankOf(best.grade);
            if (rank > bestRank ||
                (rank == bestRank && ratio && best.marginOverWanted() && *ratio < *best.marginOverWanted()))
                fit = static_cast<int>(i);
        }
    }
    if (force < 0)
        return fit;
    if (fit >= 0 && rankOf(checks[static_cast<std::size_t>(fit)].grade) >
                        rankOf(checks[static_cast<std::size_t>(force)].grade))
        return fit;
    return force;
}

} // namespace pw::verdict
