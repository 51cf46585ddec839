#include "app/engine/check.h"

#include "app/engine/report_json.h"
#include "app/engine/words.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/support/jobs.h"

#include <cmath>
#include <filesystem>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::jobOf;
using pw::testing::sampleTree;
using pw::testing::treeOf;
using verdict::Grade;

namespace {

/// A plain job with invented figures; tests change what they are about.
jobfile::Tree plainDisc() {
    return treeOf(R"({"platewright": 1, "work": "compress",
        "stations": {"count": 6, "circle": "100 mm", "access_hole": "24 mm", "land": "34 mm", "keeper": "18 mm"},
        "load": {"total": "7500 N"},
        "plate": {"outline": {"shape": "disc", "diameter": "140 mm"}, "thickness": "12 mm", "bore": "20 mm",
                  "steel": {"name": "test steel", "yield": "250 MPa", "ultimate": "400 MPa", "E": "200000 MPa", "nu": 0.3}},
        "centre": {"bearing_outside": "44 mm", "bearing_inside": "20 mm"}})");
}

} // namespace

/// Common practice, no published source: the one check against what is known to work in the trade. Its
/// figures stand nowhere else. The 4 in pin circle is our assumption.
TEST(TradePractice, AHalfInchDiscHoldsTheFullRingAndAQuarterInchDiscOnlyTwoStationsAtATime) {
    const auto disc = [](const std::string& thickness, const std::string& stations) {
        return jobOf(treeOf(R"({"platewright": 1, "work": "compress", "stations": {)" + stations + R"(,
            "access_hole": "15/16 in", "land": "1 3/8 in"},
            "springs": [
              {"name": "outer", "per_station": 1, "assembled_length": "2 in",
               "loads": [{"length": "2 in", "force": "147-163 lbf"}], "rate": "100 lb/in", "solid_length": "1.4 in"},
              {"name": "inner", "per_station": 1, "assembled_length": "2 in",
               "loads": [{"length": "2 in", "force": "113-125 lbf"}], "rate": "80 lb/in", "solid_length": "1.4 in"}],
            "travel": {"compress_further": "0 in"},
            "plate": {"outline": {"shape": "disc", "diameter": "5 1/2 in"}, "thickness": ")" +
                            thickness +
                            R"(", "bore": "3/4 in", "steel": "unknown scrap"},
            "centre": {"bearing_outside": "34 mm"}})"));
    };
    const std::string six = R"("count": 6, "circle": "4 in")";
    const std::string twoOfSix = six + R"(, "loaded": [true, false, false, true, false, false])";

    const engine::Report half = engine::check(disc("1/2 in", six));
    ASSERT_TRUE(half.load.total && half.plate.collapseFactor);
    EXPECT_NEAR(half.load.total->low.lbf(), 1560, 0.5);
    EXPECT_NEAR(half.load.total->high.lbf(), 1728, 0.5);
    EXPECT_NEAR(half.load.perStation->low.lbf(), 260, 0.1);
    EXPECT_NEAR(half.load.perStation->high.lbf(), 288, 0.1);
    EXPECT_EQ(half.grade, Grade::Holds) << half.reason;
    EXPECT_EQ(half.find("plate.collapse")->grade, Grade::Holds);
    EXPECT_EQ(half.find("plate.set")->grade, Grade::Holds);
    EXPECT_GT(*half.plate.collapseFactor, 5);

    const engine::Report quarter = engine::check(disc("1/4 in", six));
    ASSERT_TRUE(quarter.plate.collapseFactor);
    EXPECT_NE(quarter.find("plate.collapse")->grade, Grade::Holds);
    EXPECT_GT(*quarter.plate.collapseFactor, 1.5);
    EXPECT_LT(*quarter.plate.collapseFactor, 2.4);
    EXPECT_NE(quarter.grade, Grade::Holds);

    const engine::Report pair = engine::check(disc("1/4 in", twoOfSix));
    EXPECT_EQ(pair.find("plate.collapse")->grade, Grade::Holds) << pair.find("plate.collapse")->basis;
    EXPECT_EQ(pair.find("plate.set")->grade, Grade::Holds) << pair.find("plate.set")->basis;
}

TEST(Check, SamplesGiveTheVerdictTheirNamesSay) {
    EXPECT_EQ(engine::check(jobOf(sampleTree("mill_lane_six_pin"))).grade, Grade::Holds);
    const Grade thin = engine::check(jobOf(sampleTree("mill_lane_six_pin_thin"))).grade;
    EXPECT_TRUE(thin == Grade::Sets || thin == Grade::Breaks) << verdict::wordOf(thin);
}

TEST(Check, EverySampleHasAFullAnswer) {
    int samples = 0;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (entry.path().string().find(".plate.json") == std::string::npos)
            continue;
        ++samples;
        const engine::Report report = engine::check(jobOf(*jobfile::loadTree(entry.path())));
        EXPECT_NE(report.grade, Grade::Incomplete) << entry.path() << " " << report.reason;
        EXPECT_TRUE(report.plate.field && report.plate.collapseFactor && report.plate.setMm) << entry.path();
        EXPECT_TRUE(report.plate.field->settled) << entry.path();
        EXPECT_FALSE(report.reason.empty());
        EXPECT_FALSE(report.cautions.empty());
        for (const verdict::Check& check : report.checks) {
            EXPECT_FALSE(check.basis.empty()) << entry.path() << " " << check.id;
            if (check.grade != Grade::Incomplete) {
                EXPECT_FALSE(check.source.empty()) << entry.path() << " " << check.id;
            }
        }
    }
    EXPECT_GE(samples, 4);
}

TEST(Check, AThickerPlateNeverSetsMoreNorFoldsEarlier) {
    double collapse = 0, set = 1e9, deflection = 1e9;
    for (double t : {5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0}) {
        jobfile::Tree tree = plainDisc();
        tree.set("plate.thickness", t);
        const engine::Report report = engine::check(jobOf(tree));
        ASSERT_TRUE(report.plate.collapseFactor) << t;
        EXPECT_GT(*report.plate.collapseFactor, collapse) << t;
        EXPECT_LE(report.plate.setMm.value_or(1e8), set) << t;
        EXPECT_LT(*report.plate.field->deflectionMm, deflection) << t;
        collapse = *report.plate.collapseFactor;
        set = report.plate.setMm.value_or(1e8);
        deflection = *report.plate.field->deflectionMm;
    }
}

TEST(Check, UnitsDoNotChangeTheAnswer) {
    jobfile::Tree inch = plainDisc();
    const auto text = [](double value, const char* unit) {
        char buffer[40];
        std::snprintf(buffer, sizeof buffer, "%.15g %s", value, unit);
        return std::string(buffer);
    };
    inch.set("stations.circle", text(100 / 25.4, "in"));
    inch.set("plate.outline.diameter", text(140 / 25.4, "in"));
    inch.set("plate.thickness", text(12 / 25.4, "in"));
    inch.set("load.total", text(7500 / 4.4482216152605, "lbf"));
    const engine::Report a = engine::check(jobOf(plainDisc())), b = engine::check(jobOf(inch));
    EXPECT_NEAR(*a.plate.collapseFactor, *b.plate.collapseFactor, 1e-3 * *a.plate.collapseFactor);
    EXPECT_NEAR(*a.plate.field->deflectionMm, *b.plate.field->deflectionMm,
                1e-3 * *a.plate.field->deflectionMm);
}

TEST(Check, TwoLoosePlatesCarryTwiceWhatOneDoes) {
    jobfile::Tree two = plainDisc();
    two.set("plate.stacked", 2);
    const engine::Report a = engine::check(jobOf(plainDisc())), b = engine::check(jobOf(two));
    EXPECT_NEAR(*b.plate.collapseFactor, 2 * *a.plate.collapseFactor, 0.01 * *b.plate.collapseFactor);
    EXPECT_NEAR(*b.plate.field->deflectionMm, *a.plate.field->deflectionMm / 2,
                1e-3 * *a.plate.field->deflectionMm);
}

TEST(Check, FieldAtAPlaceIsTheSameInEverySector) {
    engine::CheckOptions options;
    const double r = 33;
    for (int i = 0; i < 6; ++i)
        options.at.push_back(shape::polar(r, 0.2 + i * M_PI / 3));
    options.at.push_back({500, 0}); // no steel there
    options.at.push_back({0, 0});   // the bore
    const engine::Report report = engine::check(jobOf(plainDisc()), options);
    ASSERT_EQ(report.plate.points.size(), 8u);
    const auto& first = report.plate.points[0];
    for (int i = 0; i < 6; ++i) {
        const auto& p = report.plate.points[i];
        EXPECT_TRUE(p.inside);
        EXPECT_NEAR(p.w, first.w, 1e-9);
        EXPECT_NEAR(p.vonMises, first.vonMises, 1e-6);
        EXPECT_NEAR(p.Mx + p.My, first.Mx + first.My, 1e-6 * std::abs(first.Mx + first.My)); // does not turn
    }
    EXPECT_FALSE(report.plate.points[6].inside);
    EXPECT_FALSE(report.plate.points[7].inside);
}

TEST(Check, BrittlePlatesAreJudgedOnTheirWorstStress) {
    jobfile::Tree tree = plainDisc();
    tree.set("plate.tests.file", "skates");
    const engine::Report report = engine::check(jobOf(tree));
    const verdict::Check* check = report.find("plate.collapse");
    ASSERT_TRUE(check && check->margin);
    EXPECT_EQ(check->unit, "MPa");
    EXPECT_NEAR(*check->margin, 400 / report.plate.field->peakStressMpa, 1e-9);
    EXPECT_FALSE(report.plate.collapseFactor);
    tree.set("plate.tests.cracks", "seen");
    EXPECT_EQ(engine::check(jobOf(tree)).grade, Grade::Breaks);
}

struct Spoiled {
    const char* name;
    const char* path;
    jobfile::Tree value;
};

class ShapesThatCannotBe : public ::testing::TestWithParam<Spoiled> {};

TEST_P(ShapesThatCannotBe, GiveAReasonAndNoNumber) {
    jobfile::Tree tree = plainDisc();
    tree.set(GetParam().path, GetParam().value);
    const engine::Report report = engine::check(jobOf(tree));
    EXPECT_TRUE(report.grade == Grade::Incomplete || report.grade == Grade::Breaks)
        << verdict::wordOf(report.grade);
    EXPECT_FALSE(report.reason.empty());
    EXPECT_FALSE(report.plate.collapseFactor);
    const std::string json = jobfile::toJson(engine::toTree(report));
    EXPECT_EQ(json.find("nan"), std::string::npos);
    EXPECT_EQ(json.find("tripped"), std::string::npos) << report.reason;
}

INSTANTIATE_TEST_SUITE_P(BadInput, ShapesThatCannotBe,
                         ::testing::Values(Spoiled{"holes over the rim", "stations.circle", "130 mm"},
                                           Spoiled{"holes into each other", "stations.count", 20},
                                           Spoiled{"holes into the bore", "stations.circle", "40 mm"},
                                           Spoiled{"hole outside", "stations.circle", "900 mm"},
                                           Spoiled{"bore larger than the washer", "plate.bore", "46 mm"},
                                           Spoiled{"bore larger than the plate", "plate.bore", "200 mm"},
                                           Spoiled{"no land", "stations.land", "24 mm"},
                                           Spoiled{"a hair of land", "stations.land", "24.1 mm"}),
                         [](const auto& spoiled) {
                             std::string name = spoiled.param.name;
                             for (char& c : name)
                                 if (c == ' ')
                                     c = '_';
                             return name;
                         });

TEST(Check, ASolutionOutOfBoundsGivesItsReasonAndNoNumber) {
    const job::Job job = jobOf(sampleTree("mill_lane_six_pin"));
    const engine::Report sound = engine::check(job);
    ASSERT_TRUE(sound.plate.field);
    EXPECT_GT(sound.plate.field->trust.residual, 0); // measured, not put in
    EXPECT_LT(sound.plate.field->trust.residual, 1e-6);
    for (double plate::TrustBounds::*bound :
         {&plate::TrustBounds::residual, &plate::TrustBounds::meshPercent}) {
        engine::CheckOptions options;
        options.trust.*bound = 0; // no solution is as good as that
        const engine::Report report = engine::check(job, options);
        EXPECT_EQ(report.grade, verdict::Grade::Incomplete);
        ASSERT_EQ(report.problems.size(), 1u);
        EXPECT_NE(report.reason.find(report.problems[0].message.substr(0, 40)), std::string::npos)
            << report.reason;
        EXPECT_FALSE(report.plate.field || report.plate.collapseFactor || report.plate.setMm);
        EXPECT_FALSE(report.screw.ratedLoad || report.screw.stamp || report.screw.stopTorque ||
                     report.proof.load);
        EXPECT_TRUE(report.gauge.empty() && report.card.rows.empty() && report.weakest.empty());
        EXPECT_EQ(report.picture, nullptr);
        for (const verdict::Check& row : report.checks) {
            const bool plate = row.id == "plate.collapse" || row.id == "plate.set";
            EXPECT_FALSE(plate && (row.margin || row.demand == 0.0)) << row.id;
        }
    }
}

TEST(Check, AStatedLoadNeedsNoSpringsForItsAnswer) {
    const engine::Report report = engine::check(jobOf(plainDisc()));
    EXPECT_TRUE(report.missing.empty());
    EXPECT_EQ(report.grade, Grade::Holds) << report.reason;
    EXPECT_FALSE(report.load.energy); // not known, so not a number
}

TEST(Check, MissingFiguresAreAllNamed) {
    jobfile::Tree tree = treeOf(R"({"platewright": 1, "work": "compress", "stations": {}, "plate": {}})");
    const engine::Report report = engine::check(jobfile::readJob(tree).job);
    EXPECT_EQ(report.grade, Grade::Incomplete);
    std::vector<std::string> fields;
    for (const engine::Missing& m : report.missing) {
        fields.push_back(m.field);
        EXPECT_EQ(m.how.rfind("Needed", 0), 0u) << m.field << ": " << m.how;
    }
    for (const char* wanted : {"stations.count", "stations.circle", "plate.thickness", "plate.bore", "screw.thread"})
        EXPECT_NE(std::find(fields.begin(), fields.end(), wanted), fields.end()) << wanted;
}

TEST(Check, AMissingScrewThreadIsAFigureThatIsNeededLikeAnyOther) {
    jobfile::Tree tree = sampleTree("mill_lane_six_pin");
    tree.erase("screw.thread");
    tree.erase("centre");
    const engine::Report report = engine::check(jobOf(tree));
    EXPECT_EQ(report.grade, Grade::Incomplete);
    ASSERT_EQ(report.missing.size(), 1u);
    EXPECT_EQ(report.missing[0].field, "screw.thread");
    EXPECT_EQ(report.reason, report.missing[0].how);
    EXPECT_TRUE(report.problems.empty()) << util::toText(report.problems);
}

TEST(Check, AHungStationAStuckOneAndTippingAreJudged) {
    const engine::Report report = engine::check(jobOf(plainDisc()));
    for (const char* id : {"plate.hung_station", "plate.tip", "plate.stuck_station", "land.tilt"})
        EXPECT_TRUE(report.find(id)) << id;
    // One of six missing: the resultant stands R / (N - 1) off the middle.
    EXPECT_NEAR(*report.find("plate.tip")->demand, 50.0 / 5, 1e-9);
    EXPECT_LT(*report.find("plate.hung_station")->margin, *report.plate.collapseFactor);
    EXPECT_EQ(report.plate.spread.size(),
              3u); // inner and outer half, hard washer (the nut's face is not known)
    EXPECT_LT(report.plate.spread[0].peakStressMpa,
              report.plate.field->peakStressMpa); // the inner half is kinder
    EXPECT_GT(report.plate.spread[1].peakStressMpa, report.plate.field->peakStressMpa);
    EXPECT_LT(report.plate.spread[2].peakStressMpa, report.plate.field->peakStressMpa);
}

TEST(Check, ASoundTwoStationBarIsNotCondemnedByOneHangingStation) {
    const engine::Report report = engine::check(jobOf(sampleTree("mill_lane_two_pin_bar")));
    for (const char* id : {"plate.hung_station", "plate.tip", "plate.stuck_station"}) {
        ASSERT_TRUE(report.find(id)) << id;
        EXPECT_NE(report.find(id)->grade, Grade::Breaks) << id;
        EXPECT_NE(report.find(id)->grade, Grade::Sets) << id;
    }
}

TEST(Check, WordsNameVerdictWeakestLinkAndCautions) {
    const job::Job job = jobOf(sampleTree("mill_lane_six_pin"));
    const std::string words = engine::toWords(job, engine::check(job));
    for (const char* part :
         {"holds", "Weakest link", "Stop at", "Assumed", "Order of work", "Cautions", "Stand out of line"})
        EXPECT_NE(words.find(part), std::string::npos) << part << "\n" << words;
}

TEST(Check, StopsWhenProgressSaysSo) {
    engine::CheckOptions options;
    options.progress = [](double, std::string_view) { return false; };
    EXPECT_THROW(engine::check(jobOf(plainDisc()), options), engine::Stopped);
}

TEST(Check, OffersAThicknessOnlyAfterItWasFoundToMend) {
    jobfile::Tree tree = plainDisc();
    tree.set("plate.thickness", 4);
    const job::Job job = jobOf(tree);
    const engine::Report report = engine::check(job);
    ASSERT_NE(report.grade, Grade::Holds);
    ASSERT_FALSE(report.changes.empty());
    EXPECT_EQ(report.changes[0].field, "plate.thickness");
    tree.set(report.changes[0].field, report.changes[0].value);
    EXPECT_EQ(engine::check(jobOf(tree)).grade, Grade::Holds);
}

/// EN 1993-1-2 Table 3.1 at 350 C, between 300 (kp 0.613, kE 0.8) and 400 (kp 0.42, kE 0.7); ky is 1 to 400
/// C.
TEST(Check, AHotToolSetsEarlierFoldsAsBeforeAndBendsMore) {
    jobfile::Tree tree = plainDisc();
    const engine::Report cold = engine::check(jobOf(tree));
    tree.set("heat.tool", "350 C");
    const engine::Report hot = engine::check(jobOf(tree));
    EXPECT_NEAR(*hot.plate.firstYieldFactor / *cold.plate.firstYieldFactor, (0.613 + 0.42) / 2, 0.01);
    EXPECT_NEAR(*hot.plate.collapseFactor / *cold.plate.collapseFactor, 1.0, 0.01);
    EXPECT_NEAR(*hot.plate.field->deflectionMm / *cold.plate.field->deflectionMm, 1 / 0.75, 0.01);
    tree.set("heat.tool", "60 C");
    EXPECT_EQ(*engine::check(jobOf(tree)).plate.firstYieldFactor, *cold.plate.firstYieldFactor);
}
