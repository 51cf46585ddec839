#include "app/gui/views/curve_geometry.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace pw::gui {
namespace {

engine::Report bent() {
    engine::Report r;
    r.load.total = units::Range<units::Force>{units::Force::fromN(900), units::Force::fromN(1000)};
    r.plate.curve = {{0, 0}, {1, 0.1}, {2, 0.3}, {2.5, 1.3}};
    r.plate.firstYieldFactor = 1.5;
    r.plate.collapseFactor = 2.5;
    return r;
}

TEST(LoadCurve, marks_full_load_proof_first_yield_and_folding_by_rising_load) {
    const LoadCurve curve = loadCurve(bent());
    ASSERT_EQ(curve.marks.size(), 4u);
    EXPECT_EQ(curve.marks[0].kind, CurveMark::Kind::Design);
    EXPECT_DOUBLE_EQ(curve.marks[0].deflectionMm, 0.1);
    EXPECT_EQ(curve.marks[1].kind, CurveMark::Kind::Proof);
    EXPECT_DOUBLE_EQ(curve.marks[1].deflectionMm, 0.15); // a quarter of the way from 1 to 2
    EXPECT_EQ(curve.marks[2].kind, CurveMark::Kind::Yield);
    EXPECT_DOUBLE_EQ(curve.marks[2].deflectionMm, 0.2);
    EXPECT_EQ(curve.marks[3].kind, CurveMark::Kind::Folding);
    EXPECT_DOUBLE_EQ(curve.marks[3].deflectionMm, 1.3);
    EXPECT_DOUBLE_EQ(curve.designN, 1000); // the high end counts
    EXPECT_GE(curve.mostFactor, 2.5);
    EXPECT_GE(curve.mostMm, 1.3);
}

TEST(LoadCurve, says_when_a_load_lies_past_its_end) {
    engine::Report r = bent();
    r.plate.curve = {{0, 0}, {0.8, 1}};
    r.plate.collapseFactor = 0.8;
    const LoadCurve curve = loadCurve(r);
    for (const auto& mark : curve.marks)
        EXPECT_EQ(mark.onCurve, mark.factor <= 0.8);
    EXPECT_GE(curve.mostFactor, 1.25); // and still shows where full load and proof would be
}

TEST(LoadCurve, goes_both_ways_between_its_points) {
    const LoadCurve curve = loadCurve(bent());
    for (const double factor : {0.3, 1.0, 1.7, 2.4})
        EXPECT_NEAR(*curve.factorAt(*curve.deflectionAt(factor)), factor, 1e-12);
    EXPECT_FALSE(curve.deflectionAt(3));
    EXPECT_FALSE(curve.factorAt(2));
}

TEST(LoadCurve, shows_a_set_only_when_there_is_one_to_see) {
    engine::Report r = bent();
    EXPECT_FALSE(loadCurve(r).setMm);
    r.plate.setMm = 0.001;
    EXPECT_FALSE(loadCurve(r).setMm);
    r.plate.setMm = 0.37;
    EXPECT_DOUBLE_EQ(*loadCurve(r).setMm, 0.37);
}

TEST(LoadCurve, is_empty_without_a_field) {
    EXPECT_TRUE(loadCurve(engine::Report{}).isEmpty());
}

TEST(RoundStep, cuts_into_at_most_so_many_round_parts) {
    EXPECT_DOUBLE_EQ(roundStep(60, 6), 10);
    EXPECT_DOUBLE_EQ(roundStep(61, 6), 20);
    EXPECT_DOUBLE_EQ(roundStep(1.2, 8), 0.2);
    EXPECT_DOUBLE_EQ(roundStep(0, 4), 1);
    for (const double most : {0.0031, 0.7, 9.9, 123.0, 4567.0})
        for (const int parts : {2, 4, 7})
            EXPECT_LE(most / roundStep(most, parts), parts + 1e-6);
}

} // namespace
} // namespace pw::gui
