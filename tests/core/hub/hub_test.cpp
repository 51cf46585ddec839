#include "core/hub/hub.h"

#include "core/jobfile/json.h"
#include "core/jobfile/read.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

using namespace pw;
using namespace pw::hub;

namespace {

using units::Angle;

/// Mott, Machine Elements in Mechanical Design, 4th ed., Example 13-2, as a hub: bronze bush 2.0/2.5 in in a
/// steel sleeve of 3.5 in, 0.0032 in on the diameter; 3518 psi (tests/reference/press_fits.csv, PF-M-p).
job::Job mott() {
    job::Job job;
    job.hub.emplace();
    job::Hub& hub = *job.hub;
    hub.shaft = Length::fromInch(2.5);
    hub.shaftBore = Length::fromInch(2);
    hub.outside = Length::fromInch(3.5);
    hub.length = Length::fromInch(2);
    hub.interference = Range<Length>::exactly(Length::fromInch(0.0032));
    job::Material steel, bronze;
    steel.name = "sleeve";
    steel.yield = Stress::fromKsi(60);
    steel.E = Stress::fromPsi(30e6);
    bronze.name = "bush";
    bronze.yield = Stress::fromKsi(30);
    bronze.E = Stress::fromPsi(17e6);
    steel.nu = bronze.nu = 0.27;
    hub.hubMaterial = steel;
    hub.shaftMaterial = bronze;
    return job;
}
constexpr double kMottPsi = 3518, kFourFigures = 2e-4;

job::Job plain() {
    job::Job job;
    job.hub.emplace();
    job::Hub& hub = *job.hub;
    hub.shaft = Length::fromMm(60);
    hub.outside = Length::fromMm(110);
    hub.length = Length::fromMm(70);
    hub.interference = Range<Length>{Length::fromMm(0.03), Length::fromMm(0.08)};
    hub.hubMaterial = job::Material{};
    hub.hubMaterial->name = "cast iron";
    hub.shaftMaterial = job::Material{};
    hub.shaftMaterial->name = "1045";
    return job;
}

job::Job taper(double halfAngleDegree) {
    job::Job job = plain();
    job.hub->fit = job::Fit::Taper;
    job.hub->halfAngle = Angle::fromDegree(halfAngleDegree);
    return job;
}

bool names(const util::Problems& problems, std::string_view field) {
    return std::ranges::find(problems, field, &util::Problem::field) != problems.end();
}

bool says(const std::vector<std::string>& texts, std::string_view words) {
    return std::ranges::any_of(texts,
                               [&](const std::string& t) { return t.find(words) != std::string::npos; });
}

void expectNear(Range<Force> ours, Range<Force> wanted, double share) {
    EXPECT_NEAR(ours.low.newton(), wanted.low.newton(), share * wanted.low.newton());
    EXPECT_NEAR(ours.high.newton(), wanted.high.newton(), share * wanted.high.newton());
}

TEST(Hub, PullsOffAtTheHandbooksPressureTimesFriction) {
    const HubForces hub = hubForces(mott());
    ASSERT_TRUE(hub.known) << util::toText(hub.missing) << util::toText(hub.problems);
    EXPECT_EQ(hub.from, PullFrom::Fit);
    EXPECT_NEAR(hub.pressure->high.ksi() * 1000, kMottPsi, kFourFigures * kMottPsi);
    // mu p pi d L (DIN 7190-1), mu 0.10 to 0.35 (common practice, no published source).
    const double face = kMottPsi * std::numbers::pi * 2.5 * 2;
    expectNear(*hub.pull, {Force::fromLbf(0.10 * face), Force::fromLbf(0.35 * face)}, kFourFigures);
    EXPECT_TRUE(says(hub.assumptions, "0.10 to 0.35"));
    EXPECT_TRUE(hub.missing.empty());
    EXPECT_TRUE(hub.problems.empty());
}

TEST(Hub, LowEndsGoTogetherAndSoDoHighOnes) {
    job::Job job = plain();
    job.hub->friction = Range<double>{0.12, 0.20};
    const HubForces both = hubForces(job);
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.03));
    job.hub->friction = Range<double>::exactly(0.12);
    EXPECT_EQ(both.pull->low, hubForces(job).pull->low);
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.08));
    job.hub->friction = Range<double>::exactly(0.20);
    EXPECT_EQ(both.pull->high, hubForces(job).pull->high);
    EXPECT_LT(both.pressure->low, both.pressure->high);
}

TEST(Hub, RustMultipliesTheFriction) {
    job::Job job = plain();
    const HubForces clean = hubForces(job);
    job.hub->rust = 2.5;
    const HubForces rusted = hubForces(job);
    expectNear(*rusted.pull, *clean.pull * 2.5, 1e-12);
    EXPECT_EQ(rusted.pressure, clean.pressure);
    EXPECT_TRUE(says(rusted.assumptions, "rust"));
}

TEST(Hub, WithoutAMetalIsTakenAsSteelWhichGripsHarderThanIron) {
    job::Job job = plain();
    const HubForces iron = hubForces(job);
    job.hub->hubMaterial.reset();
    const HubForces steel = hubForces(job);
    ASSERT_TRUE(steel.known);
    EXPECT_GT(steel.pull->high, iron.pull->high);
    EXPECT_TRUE(says(steel.assumptions, "hub taken as steel"));
    EXPECT_TRUE(says(steel.assumptions, "taken as solid"));
    EXPECT_FALSE(steel.hubStress);
}

TEST(Hub, AStatedForceStandsAsItIs) {
    job::Job job = plain();
    const HubForces fit = hubForces(job);
    const Range<Force> stated{Force::fromN(20000), Force::fromN(30000)};
    job.hub->force = stated;
    job.hub->rust = 2.5;
    job.heat.part = Temperature::fromCelsius(300);
    const HubForces hub = hubForces(job);
    EXPECT_EQ(hub.pull, stated);
    EXPECT_EQ(hub.from, PullFrom::Stated);
    EXPECT_EQ(hub.heatToFree, fit.heatToFree);
    EXPECT_TRUE(hub.pullOfFit);
    EXPECT_TRUE(says(hub.assumptions, "as stated"));
    EXPECT_TRUE(says(hub.assumptions, "not counted on top"));
    EXPECT_FALSE(says(hub.assumptions, "multiplies"));
    job.hub->rust.reset();
    job.heat.part = Temperature::fromCelsius(20);
    EXPECT_FALSE(says(hubForces(job).assumptions, "on top"));
}

TEST(Hub, RustOnlyTakesTheGuessAndAsksForItWhenThereIsNone) {
    job::Job job;
    job.hub.emplace();
    job.hub->fit = job::Fit::RustOnly;
    const HubForces none = hubForces(job);
    EXPECT_TRUE(none.told);
    EXPECT_FALSE(none.known);
    EXPECT_FALSE(none.pull);
    EXPECT_TRUE(names(none.missing, "hub.force"));
    job.hub->force = Range<Force>::exactly(Force::fromN(25000));
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.05));
    const HubForces guessed = hubForces(job);
    EXPECT_TRUE(guessed.known);
    EXPECT_EQ(guessed.pull->high, Force::fromN(25000));
    EXPECT_FALSE(guessed.pressure);
    EXPECT_FALSE(guessed.heatToFree);
    EXPECT_TRUE(says(guessed.assumptions, "not used"));
}

TEST(Hub, ThatSaysNothingOfItsFitIsNoError) {
    EXPECT_FALSE(hubForces({}).told);
    EXPECT_TRUE(hubForces({}).missing.empty());
    job::Job job;
    job.hub.emplace().bolts.emplace().count = 3;
    const HubForces hub = hubForces(job);
    EXPECT_FALSE(hub.told);
    EXPECT_FALSE(hub.known);
    EXPECT_TRUE(hub.problems.empty());
    for (const char* field : {"hub.shaft", "hub.length", "hub.outside", "hub.interference"})
        EXPECT_TRUE(names(hub.missing, field)) << field;
    job.hub->fit = job::Fit::Taper;
    for (const char* field : {"hub.shaft", "hub.length", "hub.outside", "hub.half_angle", "hub.draw"})
        EXPECT_TRUE(names(hubForces(job).missing, field)) << field;
}

TEST(Hub, HalfAFitNamesWhatIsMissingAndHasNoFigure) {
    job::Job job = plain();
    job.hub->outside.reset();
    const HubForces hub = hubForces(job);
    EXPECT_FALSE(hub.known);
    EXPECT_FALSE(hub.pressure || hub.pull || hub.heatToFree || hub.hubStress);
    ASSERT_EQ(hub.missing.size(), 1u);
    EXPECT_EQ(hub.missing[0].field, "hub.outside");
    EXPECT_NE(hub.missing[0].message.find("boss"), std::string::npos);
}

TEST(Hub, FiguresThatCannotBeAreProblems) {
    const auto problemOf = [](auto change, job::Job job = plain()) {
        change(*job.hub);
        const HubForces hub = hubForces(job);
        EXPECT_FALSE(hub.known || hub.pull || hub.pressure);
        EXPECT_EQ(hub.problems.size(), 1u) << util::toText(hub.problems);
        return hub.problems.empty() ? std::string() : hub.problems[0].field;
    };
    const auto mm = [](double value) { return Length::fromMm(value); };
    EXPECT_EQ(problemOf([&](job::Hub& h) {
                  h.interference = Range<Length>{mm(-0.02), mm(0.03)};
              }),
              "hub.interference");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.friction = Range<double>{0, 0.2}; }), "hub.friction");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.rust = 0; }), "hub.rust");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.shaftBore = mm(60); }), "hub.shaft_bore");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.outside = mm(60); }), "hub.outside");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.length = mm(0); }), "hub.length");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.halfAngle = Angle(); }, taper(3)), "hub.half_angle");
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.halfAngle = Angle::fromDegree(90); }, taper(3)),
              "hub.half_angle");
    EXPECT_EQ(
        problemOf([&](job::Hub& h) { h.length = mm(70), h.halfAngle = Angle::fromDegree(42); }, taper(3)),
        "hub.half_angle"); // runs to a point
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.outside = mm(63); }, taper(3)), "hub.outside"); // thick end 67
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.shaftBore = mm(57); }, taper(3)),
              "hub.shaft_bore"); // thin end 53
    EXPECT_EQ(problemOf([&](job::Hub& h) { h.hubMaterial->name = "unobtainium"; }), "hub.hub_material");
}

TEST(Hub, ATaperOfNextToNothingIsAStraightFit) {
    const HubForces straight = hubForces(plain()), slight = hubForces(taper(1e-6));
    EXPECT_EQ(slight.pressure, straight.pressure);
    expectNear(*slight.pull, *straight.pull, 1e-6);
    EXPECT_TRUE(says(slight.assumptions, "halfway along"));
}

TEST(Hub, ATaperIsAsTightAsItWasDrawnUp) {
    job::Job job = taper(std::atan(0.05) * 180 / std::numbers::pi); // 1:10 on the diameter
    job.hub->interference.reset();
    job.hub->draw = Length::fromMm(0.6);
    const HubForces drawn = hubForces(job);
    ASSERT_TRUE(drawn.known);
    EXPECT_NEAR(drawn.interference->low.mm(), 0.06, 1e-12); // 0.6 mm at 1:10
    EXPECT_TRUE(drawn.interference->isOne());
    // Given both, they must agree; the tighter counts.
    job.hub->interference = Range<Length>{Length::fromMm(0.05), Length::fromMm(0.065)};
    EXPECT_TRUE(hubForces(job).problems.empty());
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.03));
    const HubForces torn = hubForces(job);
    EXPECT_TRUE(names(torn.problems, "hub.draw"));
    EXPECT_NEAR(torn.interference->high.mm(), 0.06, 1e-12);
    EXPECT_EQ(torn.pressure->high, drawn.pressure->high);
}

TEST(Hub, ATaperSteeperThanItsFrictionLetsGoByItself) {
    const HubForces sticks = hubForces(taper(3)); // tan 0.052, friction from 0.10
    EXPECT_FALSE(sticks.letsGoByItself || sticks.mayLetGoByItself);
    EXPECT_GT(sticks.pull->low, Force());
    const HubForces may = hubForces(taper(10)); // tan 0.176
    EXPECT_TRUE(may.mayLetGoByItself);
    EXPECT_FALSE(may.letsGoByItself);
    EXPECT_EQ(may.pull->low, Force());
    EXPECT_GT(may.pull->high, Force());
    const HubForces goes = hubForces(taper(20)); // tan 0.364
    EXPECT_TRUE(goes.letsGoByItself);
    EXPECT_TRUE(goes.known);
    EXPECT_EQ(goes.pull, (Range<Force>{Force(), Force()}));
    EXPECT_TRUE(says(goes.remarks, "lets go by itself"));
    job::Job rusted = taper(20);
    rusted.hub->rust = 2.5;
    EXPECT_FALSE(hubForces(rusted).letsGoByItself);
    EXPECT_TRUE(hubForces(rusted).mayLetGoByItself); // once the rust has broken
}

TEST(Hub, HeatedToFreeNothingHoldsIt) {
    job::Job job = plain();
    const HubForces cold = hubForces(job);
    // 20 C and interference over expansion times diameter (PF-dT); grey iron 10.5e-6 (PF-al-grey cast iron).
    EXPECT_NEAR(cold.heatToFree->low.celsius(), 20 + 0.03 / (10.5e-6 * 60), 1e-9);
    EXPECT_NEAR(cold.heatToFree->high.celsius(), 20 + 0.08 / (10.5e-6 * 60), 1e-9);
    EXPECT_FALSE(cold.heatToFreeTogether); // iron grows less than its shaft
    EXPECT_FALSE(cold.pullShaftWarm);
    job.heat.part = cold.heatToFree->high;
    const HubForces free = hubForces(job);
    EXPECT_NEAR(free.pressure->high.mpa(), 0, 1e-9);
    EXPECT_EQ(free.pressure->low, Stress());
    EXPECT_NEAR(free.pull->high.newton(), 0, 1e-6);
    EXPECT_GT(free.pullShaftWarm->high, cold.pull->high); // the steel shaft grows more than the iron hub
    job.heat.part = cold.heatToFree->low;
    EXPECT_NEAR(hubForces(job).pressure->low.mpa(), 0, 1e-9);
    EXPECT_GT(hubForces(job).pressure->high, Stress());
    EXPECT_LT(hubForces(job).pressure->high, cold.pressure->high);
    EXPECT_TRUE(says(hubForces(job).assumptions, "shaft still at 20"));
    // Nothing about the cold fit depends on the heat.
    EXPECT_EQ(free.heatToFree, cold.heatToFree);
    EXPECT_EQ(free.interference, cold.interference);
}

TEST(Hub, AFitThatNoHeatOpensIsSaidToBe) {
    job::Job job = plain();
    EXPECT_FALSE(says(hubForces(job).remarks, "heat alone"));
    job.hub->interference = Range<Length>::exactly(Length::fromMm(1)); // 1600 K over 60 mm of iron
    EXPECT_TRUE(says(hubForces(job).remarks, "heat alone"));
}

TEST(Hub, HalfTheWayToFreeLeavesHalfTheGrip) {
    job::Job job = plain();
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.08));
    const HubForces cold = hubForces(job);
    job.heat.part = Temperature::fromCelsius((20 + cold.heatToFree->high.celsius()) / 2);
    expectNear(*hubForces(job).pull, *cold.pull * 0.5, 1e-9);
}

TEST(Hub, ColdComesToBothParts) {
    job::Job job = plain();
    job.hub->hubMaterial->name = "S235"; // as the shaft: nothing changes
    const HubForces room = hubForces(job);
    job.heat.part = Temperature::fromCelsius(-30);
    expectNear(*hubForces(job).pull, *room.pull, 1e-12);
    job.hub->hubMaterial->name = "aluminium";
    const HubForces cold = hubForces(job);
    job.heat.part.reset();
    EXPECT_GT(cold.pull->high, hubForces(job).pull->high);
    EXPECT_TRUE(hubForces(job).heatToFreeTogether);
}

TEST(Hub, AFitTighterThanTheMetalBearsIsSaidToBe) {
    job::Job job = plain();
    EXPECT_FALSE(hubForces(job).hubStress->over);
    EXPECT_FALSE(hubForces(job).shaftStress->over);
    // Grey iron of 150 MPa (EN 1561) parts by its hoop tension.
    job.hub->interference = Range<Length>::exactly(Length::fromMm(0.3));
    const HubForces tight = hubForces(job);
    EXPECT_TRUE(tight.hubStress->over);
    EXPECT_EQ(tight.hubStress->limit, Stress::fromMpa(150));
    EXPECT_TRUE(says(tight.remarks, "cracked"));
    job.hub->hubMaterial->name = "S235";
    EXPECT_TRUE(says(hubForces(job).remarks, "given way"));
}

TEST(Hub, AnOwnMetalWithoutExpansionIsSaidToHaveSteels) {
    job::Job job = mott();
    EXPECT_TRUE(says(hubForces(job).assumptions, "thermal expansion of the hub"));
    job.hub->hubMaterial->expansion = 12e-6;
    job.hub->shaftMaterial->expansion = 18e-6;
    EXPECT_FALSE(says(hubForces(job).assumptions, "thermal expansion"));
}

TEST(Hub, JumpsWithTheEnergyOfWhatWasStretched) {
    // 10 kN stretch a spring of 100 N/mm by 100 mm: half force times way, 500 J.
    EXPECT_NEAR(jumpEnergy(Force::fromN(10000), Rate::fromNPerMm(100)).joule(), 500, 1e-9);
}

TEST(Hub, TheExampleOfTheFileFormatHasAnAnswer) {
    const auto tree = jobfile::fromJson(R"({"platewright": 1, "work": "pull",
        "hub": {"fit": "straight", "shaft": "60 mm", "shaft_bore": "0 mm", "length": "70 mm", "outside": "110 mm",
                "interference": ["0.03 mm", "0.08 mm"], "hub_material": "cast iron", "shaft_material": "1045",
                "friction": [0.12, 0.20], "rust": 1.5}, "heat": {"part": "20 C", "tool": "20 C"}})");
    ASSERT_TRUE(tree);
    const HubForces hub = hubForces(jobfile::readJob(*tree).job);
    ASSERT_TRUE(hub.known) << util::toText(hub.missing) << util::toText(hub.problems);
    // Shigley eq. (3-56) by hand: grey iron 90 GPa and 0.26 (EN 1561), 1045 207 GPa and 0.292 (Table A-5),
    // solid.
    const double hubSide = ((110. * 110 + 3600) / (110. * 110 - 3600) + 0.26) / 90000,
                 shaftSide = (1 - 0.292) / 207000;
    EXPECT_NEAR(hub.pressure->low.mpa(), 0.03 / 60 / (hubSide + shaftSide), 1e-9);
    EXPECT_NEAR(hub.pressure->high.mpa(), 0.08 / 60 / (hubSide + shaftSide), 1e-9);
    const double face = std::numbers::pi * 60 * 70;
    EXPECT_NEAR(hub.pull->low.newton(), 1.5 * 0.12 * hub.pressure->low.mpa() * face, 1e-6);
    EXPECT_NEAR(hub.pull->high.newton(), 1.5 * 0.20 * hub.pressure->high.mpa() * face, 1e-6);
}

} // namespace
