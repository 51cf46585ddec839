#include "core/job/process.h"
#include "geometry/exchange/cut_plan.h"

#include "core/util/require.h"
#include "tests/support/plates.h"

#include <gtest/gtest.h>

namespace pw::exchange {
namespace {

using job::Process;

shape::Region discWithHole(double diameter, shape::Part part = shape::Part::Extra) {
    shape::Region region;
    region.rim = shape::circleLoop({0, 0}, 70);
    region.holes.push_back({shape::circleLoop({30, -5}, diameter / 2), part, 3});
    return region;
}

CutSettings plate12(Process process) {
    CutSettings settings;
    settings.process = process;
    settings.thickness = Length::fromMm(12);
    return settings;
}

TEST(CutPlan, BurnsAHoleAsLargeAsThePlateIsThickOnAPlasmaTable) {
    // Common practice, no published source: about the thickness on plasma.
    const CutPlan plan = makeCutPlan(discWithHole(12), plate12(Process::PlasmaTable));
    EXPECT_EQ(plan.inside.size(), 1u);
    EXPECT_TRUE(plan.drilled.empty());
}

TEST(CutPlan, DrillsASmallerHoleWhereItIs) {
    const CutPlan plan = makeCutPlan(discWithHole(11.9), plate12(Process::PlasmaTable));
    ASSERT_EQ(plan.drilled.size(), 1u);
    EXPECT_TRUE(plan.inside.empty());
    EXPECT_NEAR(plan.drilled[0].centre.x, 30, 1e-9);
    EXPECT_NEAR(plan.drilled[0].centre.y, -5, 1e-9);
    EXPECT_NEAR(plan.drilled[0].diameter.mm(), 11.9, 1e-9);
    EXPECT_EQ(plan.drilled[0].index, 3);
    EXPECT_EQ(plan.drilled[0].note, "too small to burn");
}

TEST(CutPlan, DrillsAWideHoleThatIsSaidToBeDrilledAndNoOther) {
    CutSettings settings = plate12(Process::PlasmaTable);
    settings.drilledExtras = {3};
    const CutPlan extra = makeCutPlan(discWithHole(30), settings);
    ASSERT_EQ(extra.drilled.size(), 1u);
    EXPECT_TRUE(extra.inside.empty());
    // Station 3's access hole has the same number and another name.
    const CutPlan access = makeCutPlan(discWithHole(30, shape::Part::Access), settings);
    EXPECT_TRUE(access.drilled.empty());
}

TEST(CutPlan, AHandTorchNeedsALargerHoleThanATable) {
    // Common practice, no published source: "more by hand torch".
    const Length t = Length::fromMm(12);
    EXPECT_LT(pw::job::leastBurnedHole(Process::PlasmaTable, t)->mm(), pw::job::leastBurnedHole(Process::TorchTable, t)->mm());
    EXPECT_LT(pw::job::leastBurnedHole(Process::TorchTable, t)->mm(), pw::job::leastBurnedHole(Process::HandTorch, t)->mm());
}

TEST(CutPlan, AnInchFractionAtTheLimitIsNotLostToRounding) {
    CutSettings settings;
    settings.thickness = Length::fromInch(15.0 / 16);
    const CutPlan plan = makeCutPlan(discWithHole(25.4 * 15 / 16), settings);
    EXPECT_EQ(plan.inside.size(), 1u);
}

TEST(CutPlan, SawnAndMilledPlatesHaveAllTheirRoundHolesDrilled) {
    for (const Process process : {Process::SawAndDrill, Process::Milled}) {
        const CutPlan plan = makeCutPlan(testing::ringOfSix().region, plate12(process));
        EXPECT_EQ(plan.drilled.size(), 8u); // bore, six access holes, bolt hole
        ASSERT_EQ(plan.inside.size(), 1u);  // the slot
        EXPECT_EQ(plan.inside[0].part, shape::Part::Extra);
        EXPECT_EQ(plan.inside[0].index, 1);
    }
}

TEST(CutPlan, ATappedBoreIsDrilledToTheTappingSizeHoweverThePlateIsCut) {
    // ISO 2306 tap drill for M20 coarse: 17.5 mm.
    for (const Process process : {Process::PlasmaTable, Process::HandTorch, Process::Milled}) {
        CutSettings settings = plate12(process);
        settings.tappedBore = TappedBore{"M20", Length::fromMm(17.5)};
        const CutPlan plan = makeCutPlan(discWithHole(20, shape::Part::Bore), settings);
        ASSERT_EQ(plan.drilled.size(), 1u);
        EXPECT_EQ(plan.drilled[0].diameter, Length::fromMm(17.5));
        EXPECT_EQ(plan.drilled[0].note, "tap M20");
    }
}

TEST(CutPlan, ASlotTooNarrowToBurnStaysALineAndSaysSo) {
    shape::Region region = discWithHole(30);
    region.holes[0].loop = shape::slotLoop({0, 20}, 40, 11, 0.5);
    const CutPlan narrow = makeCutPlan(region, plate12(Process::PlasmaTable));
    ASSERT_EQ(narrow.inside.size(), 1u);
    EXPECT_FALSE(narrow.inside[0].note.empty());
    region.holes[0].loop = shape::slotLoop({0, 20}, 40, 12, 0.5);
    const CutPlan wide = makeCutPlan(region, plate12(Process::PlasmaTable));
    EXPECT_TRUE(wide.inside[0].note.empty());
}

TEST(CutPlan, NarrowWidthOfASlotIsItsWidth) {
    EXPECT_NEAR(narrowWidth(shape::slotLoop({3, 4}, 50, 8, 1)), 8, 1e-9);
    EXPECT_NEAR(narrowWidth(shape::circleLoop({3, 4}, 8)), 16, 1e-6); // square root of a rounding error
    EXPECT_LT(narrowWidth(shape::rectangleLoop(30, 10)), 10);
}

TEST(CutPlan, TheOutsideIsTheRimAndNoLineIsMovedForTheKerf) {
    const shape::Region region = testing::barWithOpenSlots().region;
    CutSettings settings = plate12(Process::PlasmaTable);
    settings.kerf = Length::fromMm(1.5);
    settings.growth = Length::fromMm(0.3);
    const CutPlan plan = makeCutPlan(region, settings);
    EXPECT_EQ(plan.outside.loop, region.rim);
    ASSERT_EQ(plan.inside.size(), 1u);
    EXPECT_EQ(plan.inside[0].loop, region.holes[0].loop);
    EXPECT_EQ(plan.settings, settings);
}

TEST(CutPlan, AThicknessOfZeroIsABugOfTheCaller) {
    EXPECT_THROW(makeCutPlan(discWithHole(12), CutSettings{}), util::Bug);
}

} // namespace
} // namespace pw::exchange
