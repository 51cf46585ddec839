// What is said of a plate when a figure is not known well enough. The factors themselves: MODEL, "verdict".
#include "core/verdict/plate_checks.h"

#include <gtest/gtest.h>

using namespace pw::verdict;

namespace {

PlateFindings sound() {
    PlateFindings f;
    f.designLoad = 6000;
    f.span = 100;
    f.peakStress = 60;
    f.firstYieldFactor = 3;
    f.collapseFactor = 4;
    f.set = f.setAtProof = 0.001;
    f.followed = true;
    f.peakErrorPercent = 1;
    return f;
}

pw::material::Material steel(bool brittle = false) {
    pw::material::Material m;
    m.name = "test steel";
    m.yield = pw::units::Stress::fromMpa(205);
    m.ultimate = pw::units::Stress::fromMpa(300);
    m.brittle = brittle;
    return m;
}

Check find(const PlateFindings& findings, const std::string& id, bool brittle = false) {
    for (const Check& check : checkPlate(findings, steel(brittle), {}))
        if (check.id == id)
            return check;
    ADD_FAILURE() << id;
    return {};
}

void expectNoAnswer(const Check& check) {
    EXPECT_EQ(check.grade, Grade::Incomplete) << check.basis;
    EXPECT_FALSE(check.margin) << check.basis;
    EXPECT_FALSE(check.capacity && check.id == "plate.collapse") << check.basis;
    EXPECT_FALSE(check.basis.empty());
}

} // namespace

TEST(PlateChecks, SoundFindingsHold) {
    EXPECT_EQ(find(sound(), "plate.collapse").grade, Grade::Holds);
    EXPECT_EQ(find(sound(), "plate.set").grade, Grade::Holds);
    EXPECT_EQ(find(sound(), "plate.collapse", true).grade, Grade::Holds);
}

TEST(PlateChecks, ALowerBoundThatIsEnoughHoldsAndOneThatIsNotIsNoBreak) {
    PlateFindings f = sound();
    f.collapseReached = false;
    EXPECT_EQ(find(f, "plate.collapse").grade, Grade::Holds);
    for (double carried : {0.5, 1.05, 1.4, 2.9}) {
        f.collapseFactor = carried;
        expectNoAnswer(find(f, "plate.collapse"));
    }
}

TEST(PlateChecks, ASetThatCouldNotBeFollowedIsNotCalledAFold) {
    PlateFindings f = sound();
    f.set = f.setAtProof = std::nullopt;
    f.unloadingFailed = true;
    expectNoAnswer(find(f, "plate.set"));
    EXPECT_EQ(worst(checkPlate(f, steel(), {})), Grade::Incomplete); // and nobody may miss it
    f.unloadingFailed = false;
    f.collapseFactor = 0.9;
    EXPECT_EQ(find(f, "plate.set").grade, Grade::Sets);
}

TEST(PlateChecks, ABrittlePlateIsNotJudgedOnAPeakThatIsNotKnown) {
    PlateFindings f = sound();
    f.sharpCorner = true;
    expectNoAnswer(find(f, "plate.collapse", true));
    EXPECT_EQ(find(f, "plate.collapse").grade, Grade::Holds); // ductile steel yields there and goes on
    f.sharpCorner = false;
    f.peakErrorPercent = 12;
    expectNoAnswer(find(f, "plate.collapse", true));
}
