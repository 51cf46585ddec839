#include "core/verdict/check.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::verdict;

Check check(CheckKind kind, Grade grade, double margin, double wanted, const std::string& member = "screw") {
    Check made;
    made.kind = kind;
    made.grade = grade;
    made.margin = margin;
    made.wanted = wanted;
    made.member = member;
    return made;
}

TEST(Verdict, WordsAreThoseOfTheFilePromise) {
    EXPECT_EQ(wordOf(Grade::Holds), "holds");
    EXPECT_EQ(wordOf(Grade::Thin), "thin");
    EXPECT_EQ(wordOf(Grade::Sets), "sets");
    EXPECT_EQ(wordOf(Grade::Breaks), "breaks");
    EXPECT_EQ(wordOf(Grade::Incomplete), "incomplete");
}

TEST(Verdict, TheWorstCheckIsTheVerdict) {
    std::vector<Check> checks = {check(CheckKind::Force, Grade::Holds, 3, 2),
                                 check(CheckKind::Fit, Grade::Thin, 0.5, 1)};
    EXPECT_EQ(worst(checks), Grade::Thin);
    checks.push_back(check(CheckKind::Force, Grade::Sets, 0.9, 2));
    EXPECT_EQ(worst(checks), Grade::Sets);
    checks.push_back(check(CheckKind::Fit, Grade::Breaks, -1, 1));
    EXPECT_EQ(worst(checks), Grade::Breaks);
}

TEST(Verdict, AnIncompleteMemberDoesNotDragTheOthersDown) {
    const std::vector<Check> checks = {check(CheckKind::Force, Grade::Holds, 4, 3, "plate"),
                                       check(CheckKind::Force, Grade::Incomplete, 0, 2, "shaft thread")};
    EXPECT_EQ(worst(checks), Grade::Holds);
}

TEST(Verdict, AnIncompletePlateIsIncompleteUnlessSomethingIsKnownToFail) {
    std::vector<Check> checks = {check(CheckKind::Force, Grade::Incomplete, 0, 3, "plate"),
                                 check(CheckKind::Fit, Grade::Thin, 0.5, 1)};
    EXPECT_EQ(worst(checks), Grade::Incomplete);
    checks.push_back(check(CheckKind::Fit, Grade::Breaks, -1, 1));
    EXPECT_EQ(worst(checks), Grade::Breaks);
}

TEST(Verdict, NothingCheckedIsIncomplete) {
    EXPECT_EQ(worst({}), Grade::Incomplete);
    EXPECT_EQ(weakestLink({}), -1);
}

TEST(Verdict, TheWeakestLinkIsTheLeastMarginOverWantedAmongForceChecks) {
    const std::vector<Check> checks = {check(CheckKind::Force, Grade::Holds, 3.3, 3.0), // 1.1
                                       check(CheckKind::Force, Grade::Holds, 2.1, 2.0), // 1.05
                                       check(CheckKind::Fit, Grade::Holds, 1.0, 1.0), // 1.0, but a fit check
                                       check(CheckKind::Note, Grade::Holds, 0.1, 1.0)};
    EXPECT_EQ(weakestLink(checks), 1);
}

TEST(Verdict, AFitCheckTakesTheWeakestPlaceOnlyWhenItsGradeIsWorse) {
    std::vector<Check> checks = {check(CheckKind::Force, Grade::Thin, 1.5, 2.0),
                                 check(CheckKind::Fit, Grade::Thin, 0.2, 1.0)};
    EXPECT_EQ(weakestLink(checks), 0);
    checks[1].grade = Grade::Breaks;
    EXPECT_EQ(weakestLink(checks), 1);
}

TEST(Verdict, MarginOverWantedNeedsBoth) {
    Check made = check(CheckKind::Force, Grade::Holds, 3.0, 2.0);
    EXPECT_DOUBLE_EQ(*made.marginOverWanted(), 1.5);
    made.wanted.reset();
    EXPECT_FALSE(made.marginOverWanted());
    made.wanted = 2.0;
    made.margin.reset();
    EXPECT_FALSE(made.marginOverWanted());
}

} // namespace
