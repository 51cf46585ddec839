#include "core/loadpath/judge.h"

#include <gtest/gtest.h>

namespace {

using namespace pw::loadpath;

TEST(Judge, MembersThatFailWithoutWarningMustOutliveTheirProof) {
    EXPECT_EQ(gradeOf(Rule::Sudden, 2.0, 1), Grade::Holds);
    EXPECT_EQ(gradeOf(Rule::Sudden, 1.99, 1), Grade::Thin);
    EXPECT_EQ(gradeOf(Rule::Sudden, 1.25, 1), Grade::Thin);
    EXPECT_EQ(gradeOf(Rule::Sudden, 1.24, 1), Grade::Breaks);
}

TEST(Judge, DuctileMembersYieldFirst) {
    EXPECT_EQ(gradeOf(Rule::Ductile, 2.0, 1), Grade::Holds);
    EXPECT_EQ(gradeOf(Rule::Ductile, 1.0, 1), Grade::Thin);
    EXPECT_EQ(gradeOf(Rule::Ductile, 0.99, 1), Grade::Sets);
}

TEST(Judge, TheWantedMarginScalesWhatHoldsAndNotWhatBreaks) {
    EXPECT_EQ(gradeOf(Rule::Sudden, 2.9, 1.5), Grade::Thin);
    EXPECT_EQ(gradeOf(Rule::Sudden, 3.0, 1.5), Grade::Holds);
    EXPECT_EQ(gradeOf(Rule::Sudden, 1.3, 1.5), Grade::Thin);
}

TEST(Judge, ARoundingErrorDecidesNothing) {
    EXPECT_EQ(gradeOf(Rule::Sudden, 2.0 - 1e-12, 1), Grade::Holds);
}

} // namespace
