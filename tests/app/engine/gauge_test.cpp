#include "app/engine/gauge.h"

#include "app/engine/check.h"
#include "tests/support/jobs.h"
#include "tests/support/quick_check.h"

#include <gtest/gtest.h>

using namespace pw;
using pw::testing::quickCheck;
using pw::testing::sampleTree;

TEST(Gauge, ReadingsGoWithTheLoad) {
    for (const char* name :
         {"mill_lane_six_pin", "mill_lane_pull_three_bolt_inch", "mill_lane_pull_ram_pulley"}) {
        const engine::Report report = quickCheck(sampleTree(name));
        ASSERT_GE(report.gauge.size(), 4u) << name;
        const double perNewton = report.gauge.front().reading.mm() / report.gauge.front().load.newton();
        EXPECT_GT(std::abs(perNewton), 0);
        double last = 0;
        for (const engine::GaugeRow& row : report.gauge) {
            EXPECT_NEAR(row.reading.mm() / row.load.newton(), perNewton, 1e-9 * std::abs(perNewton))
                << row.what;
            EXPECT_GT(row.load.newton(), last) << name << " " << row.what;
            last = row.load.newton();
        }
        ASSERT_TRUE(report.proof.load && report.proof.reading);
        EXPECT_NEAR(report.proof.reading->mm() / report.proof.load->newton(), perNewton,
                    1e-9 * std::abs(perNewton));
    }
}

/// By hand, sample six_pin: M20 oiled. Thread: 9.188 (2.5 + pi f 18.376 x 1.1547)/(57.730 - f 2.5 x 1.1547)
/// = 1.2517 at 0.08, 2.1123 at 0.16; nut face 0.95 x 30 (ISO 4032) to washer hole 21 (ISO 7089): mean 24.75,
/// + 0.99 and 1.98: 2.2416 and 4.0923 N.mm a newton. Springs 560..630 N and 51 N/mm: 3360..3780 N before,
/// 4278..4698 N squeezed 3 mm.
TEST(Card, OfASqueezeRunsFromTheFirstMoveToTheFullSqueeze) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_six_pin"));
    ASSERT_FALSE(report.card.rows.empty());
    const engine::CardRow &first = report.card.rows.front(), &last = report.card.rows.back();
    EXPECT_EQ(first.turns, 0);
    EXPECT_EQ(first.squeeze->mm(), 0);
    EXPECT_NEAR(first.load.low.newton(), 3360, 0.1);
    EXPECT_NEAR(first.load.high.newton(), 3780, 0.1);
    EXPECT_NEAR(first.torque.low.newtonMm(), 3360 * 2.2416, 20);
    EXPECT_NEAR(first.torque.high.newtonMm(), 3780 * 4.0923, 40);
    EXPECT_NEAR(last.squeeze->mm(), 3, 1e-9);
    EXPECT_NEAR(last.turns, 3 / 2.5, 1e-9);
    EXPECT_NEAR(last.load.high.newton(), 4698, 0.1);
    EXPECT_NEAR(last.torque.low.newtonMm(), 4278 * 2.2416, 25);
    EXPECT_NEAR(last.torque.high.newtonMm(), 4698 * 4.0923, 50);
    EXPECT_NEAR(last.load.high.newton(), report.load.total->high.newton(), 1e-6);
    EXPECT_NEAR(last.torque.high.newtonMm(), report.screw.torqueRange->high.newtonMm(), 1e-6);
    for (std::size_t i = 1; i < report.card.rows.size(); ++i) {
        EXPECT_GT(report.card.rows[i].turns, report.card.rows[i - 1].turns);
        EXPECT_GT(report.card.rows[i].load.high, report.card.rows[i - 1].load.high);
    }
}

TEST(Card, IsNeverLongerThanABenchCanRead) {
    for (double further : {0.0, 0.4, 3.0, 15.0, 16.2, 17.4, 31.0, 33.0, 90.0}) {
        jobfile::Tree tree = sampleTree("mill_lane_six_pin");
        tree.set("springs", pw::testing::treeOf(R"([{"per_station": 1, "assembled_length": "200 mm",
            "loads": [{"length": "200 mm", "force": "600 N"}], "rate": "1 N/mm", "solid_length": "60 mm"}])"));
        tree.set("travel.compress_further", further);
        tree.set("screw.usable_length", "900 mm");
        const engine::Report report = quickCheck(tree);
        ASSERT_FALSE(report.card.rows.empty()) << further;
        EXPECT_LE(report.card.rows.size(), 14u) << further;
        EXPECT_EQ(report.card.rows.front().squeeze->mm(), 0) << further;
        EXPECT_NEAR(report.card.rows.back().squeeze->mm(), further, 1e-9);
    }
}

/// The swell is squeeze that is there already: the card starts with it.
TEST(Card, OfASwollenPackStartsWithTheSwell) {
    jobfile::Tree tree = sampleTree("mill_lane_six_pin");
    tree.set("travel.swell", "2 mm");
    const engine::Report report = quickCheck(tree);
    EXPECT_NEAR(report.card.rows.front().load.low.newton(), 6 * (560 + 102), 0.1);
    EXPECT_NEAR(report.card.rows.back().load.high.newton(), report.load.total->high.newton(), 1e-6);
}

TEST(Card, OfAPullIsQuartersOfTheLoadInProportion) {
    const engine::Report report = quickCheck(sampleTree("mill_lane_pull_three_bolt_inch"));
    ASSERT_EQ(report.card.rows.size(), 4u);
    for (int i = 0; i < 4; ++i) {
        const engine::CardRow& row = report.card.rows[i];
        EXPECT_NEAR(row.load.high / report.load.total->high, 0.25 * (i + 1), 1e-9);
        EXPECT_NEAR(row.turns, report.card.rows[0].turns * (i + 1), 1e-9);
        EXPECT_GT(row.turns, 0);
        EXPECT_FALSE(row.squeeze);
    }
    EXPECT_NEAR(report.card.rows[3].torque.high.newtonMm(), report.screw.torqueRange->high.newtonMm(), 1e-6);
}

TEST(Card, WithoutAScrewThereIsNone) {
    EXPECT_TRUE(quickCheck(sampleTree("mill_lane_pull_ram_pulley")).card.rows.empty());
}
