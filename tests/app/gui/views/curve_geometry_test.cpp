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

TEST(LoadCurve, is_taken_hold_of_at_the_place_nearest_to_the_hand) {
    const LoadCurve curve = loadCurve(bent());
    // 100 px a mm, 10 px a full load: the point of 2 x full load lies at 30 across and 20 up.
    EXPECT_NEAR(curve.nearestFactor(30, 20, 100, 10), 2, 1e-9);
    EXPECT_NEAR(curve.nearestFactor(-50, -50, 100, 10), 0, 1e-9);
    EXPECT_NEAR(curve.nearestFactor(1000, 30, 100, 10), 2.5, 1e-9);
    // Halfway along the flat end, from below it.
    EXPECT_NEAR(curve.nearestFactor(80.25, 20.0, 100, 10), 2.25, 0.01);
}

TEST(LoadCurve, goes_from_mark_to_mark) {
    const LoadCurve curve = loadCurve(bent());
    EXPECT_DOUBLE_EQ(curve.nextMark(1, true), 1.25);
    EXPECT_DOUBLE_EQ(curve.nextMark(1.25, true), 1.5);
    EXPECT_DOUBLE_EQ(curve.nextMark(1.5, true), 2.5);
    EXPECT_DOUBLE_EQ(curve.nextMark(2.5, true), 2.5);
    EXPECT_DOUBLE_EQ(curve.nextMark(1, false), 0);
}

TEST(LoadCurve, bends_as_the_load_until_it_yields_and_more_from_then_on) {
    const LoadCurve curve = loadCurve(bent());
    EXPECT_NEAR(curve.bendShare(0.5), 0.5, 1e-12);
    EXPECT_NEAR(curve.bendShare(1), 1, 1e-12);
    EXPECT_NEAR(curve.bendShare(2), 3, 1e-12); // 0.3 mm where 0.1 mm a full load would be 0.2
    EXPECT_DOUBLE_EQ(curve.bendShare(4), 4);   // it has folded long before: as solved
    EXPECT_DOUBLE_EQ(LoadCurve{}.bendShare(1), 1);
}

TEST(LoadCurve, shows_a_set_only_when_there_is_one_to_see) {
    engine::Report r = bent();
    EXPECT_FALSE(loadCurve(r).setMm);
    r.plate.setMm = 0.001;
    EXPECT_FALSE(loadCurve(r).setMm);
    r.plate.setMm = 0.37;
    EXPECT_DOUBLE_EQ(*loadCurve(r).setMm, 0.37);
    // Let go it runs back as steeply as it began: 0.16 mm at full load, of which 0.1 mm a full load is
    // elastic.
    r.plate.curve = {{0, 0}, {0.5, 0.05}, {1, 0.16}, {2, 2}};
    EXPECT_NEAR(*loadCurve(r).restMm, 0.06, 1e-12);
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
