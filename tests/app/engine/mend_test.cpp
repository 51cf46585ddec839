#include "app/engine/mend.h"

#include "core/loadpath/setup.h"
#include "core/thread/thread.h"
#include "tests/support/chance.h"
#include "tests/support/jobs.h"
#include "tests/support/sanitized.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>

using namespace pw;
using pw::testing::jobOf;
using pw::testing::putTyped;
using pw::testing::sampleTree;
using verdict::Grade;

namespace {

/// Offers to try on weakened jobs; under sanitizers each takes ten times as long, and a few show what they
/// are after.
constexpr int kOffers = pw::testing::kSanitized ? 10 : 100;
constexpr int kVariants = 90; ///< weakened jobs to look for them in, at most

/// From good to bad, as JOB.md lists them.
int rankOf(Grade grade) {
    switch (grade) {
    case Grade::Holds:
        return 0;
    case Grade::Thin:
        return 1;
    case Grade::Sets:
        return 2;
    case Grade::Breaks:
        return 3;
    case Grade::Incomplete:
        break;
    }
    return 4;
}

std::vector<std::string> sampleNames() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        const std::string file = entry.path().filename().string();
        if (const auto end = file.find(".plate.json"); end != std::string::npos)
            names.push_back(file.substr(0, end));
    }
    std::sort(names.begin(), names.end());
    return names;
}

/// What a changed access hole must still let through. mm.
double leastHole(const job::Job& job) {
    double least = std::max(job.stations.keeper.value_or(units::Length()).mm(),
                            job.stations.pin.value_or(units::Length()).mm());
    for (const std::string& name : {job.hub && job.hub->bolts ? job.hub->bolts->thread : std::string(),
                                    job.legs ? job.legs->thread : std::string()})
        if (const auto rod = thread::parse(name); !name.empty() && rod)
            least = std::max(least, rod->diameter.mm());
    return least;
}

/// Every change offered, put into the file and checked again, mends what it says and leaves the whole no
/// worse. Returns how many there were.
int expectHonest(const jobfile::Tree& tree, const std::string& name) {
    const engine::Report report = engine::check(jobOf(tree));
    EXPECT_EQ(util::toText(report.problems).find("tripped"), std::string::npos) << name;
    if (report.grade == Grade::Holds || report.grade == Grade::Incomplete) {
        EXPECT_TRUE(report.changes.empty()) << name;
    }
    for (const engine::Change& change : report.changes) {
        SCOPED_TRACE(name + ": " + change.check + " by " + change.field + " = " + change.value);
        jobfile::Tree changed = tree;
        putTyped(changed, change.field, change.value);
        const jobfile::Reading reading = jobfile::readJob(changed);
        EXPECT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
        if (!reading.problems.empty())
            continue;
        engine::CheckOptions options;
        options.mend = options.spread = false;
        const engine::Report after = engine::check(reading.job, options);
        const verdict::Check* mended = after.find(change.check);
        EXPECT_TRUE(!mended || mended->grade == Grade::Holds)
            << (mended ? std::string(verdict::wordOf(mended->grade)) + " " + mended->basis : "");
        EXPECT_LE(rankOf(after.grade), rankOf(report.grade)) << after.reason;
        EXPECT_EQ(verdict::wordOf(after.grade), verdict::wordOf(change.leaves)) << after.reason;
        if (change.field == "stations.access_hole") {
            EXPECT_GT(reading.job.stations.accessHole->mm(), leastHole(reading.job));
        }
        EXPECT_NE(change.what.find("Then"), std::string::npos) << change.what;
    }
    return static_cast<int>(report.changes.size());
}

} // namespace

TEST(Mends, OfEverySampleDoWhatTheySay) {
    for (const std::string& name : sampleNames())
        expectHonest(sampleTree(name), name);
}

TEST(Mends, OfWeakenedSamplesDoWhatTheySay) {
    pw::testing::Chance chance(411);
    const std::vector<std::string> names = sampleNames();
    const auto scaled = [](jobfile::Tree& tree, const char* field, double factor, auto get) {
        const jobfile::Reading reading = jobfile::readJob(tree);
        if (const auto now = get(reading.job))
            tree.set(field, now->mm() * factor);
    };
    int offered = 0;
    for (int i = 0; i < kVariants && offered < kOffers; ++i) {
        const std::string& name = names[static_cast<std::size_t>(i) % names.size()];
        jobfile::Tree tree = sampleTree(name);
        std::string what = name;
        for (int k = 0; k < 1 + i % 2; ++k) {
            const int way = static_cast<int>(chance.between(0, 13));
            const double factor = chance.between(0.35, 0.85);
            what += ", " + std::to_string(way);
            const job::Job now = jobfile::readJob(tree).job;
            switch (way) {
            case 0:
            case 1:
                scaled(tree, "plate.thickness", factor, [](const job::Job& j) { return j.plate.thickness; });
                if (now.screw && now.screw->engagement && !now.plate.boreThread.empty())
                    scaled(tree, "screw.engagement", factor,
                           [](const job::Job& j) { return j.screw->engagement; });
                break;
            case 2:
                tree.set("plate.steel", "unknown scrap");
                break;
            case 3:
                if (now.screw)
                    tree.set("screw.grade", "4.6");
                break;
            case 4:
                if (now.screw && now.screw->engagement)
                    scaled(tree, "screw.engagement", factor * 0.6,
                           [](const job::Job& j) { return j.screw->engagement; });
                break;
            case 5:
                if (now.screw && !now.ram)
                    tree.set("screw.hammering", true);
                break;
            case 6:
                scaled(tree, "stations.access_hole", 0.85 + 0.5 * factor,
                       [](const job::Job& j) { return j.stations.accessHole; });
                break;
            case 7:
                if (now.screw && now.screw->usableLength)
                    scaled(tree, "screw.usable_length", factor,
                           [](const job::Job& j) { return j.screw->usableLength; });
                break;
            case 8:
                if (now.screw && now.screw->wrench)
                    scaled(tree, "screw.wrench", 1 / factor,
                           [](const job::Job& j) { return j.screw->wrench; });
                break;
            case 9:
                tree.set("heat.tool", "300 C");
                break;
            case 10:
                if (now.hub && now.hub->bolts) {
                    tree.set("hub.bolts.grade", "4.6");
                    if (now.hub->bolts->engagement)
                        scaled(tree, "hub.bolts.engagement", factor,
                               [](const job::Job& j) { return j.hub->bolts->engagement; });
                }
                if (now.legs)
                    tree.set("legs.grade", "4.6");
                if (now.ram)
                    tree.set("ram.rod_grade", "4.6");
                break;
            case 11:
                if (now.back && now.back->thickness)
                    scaled(tree, "back.thickness", factor,
                           [](const job::Job& j) { return j.back->thickness; });
                if (now.screw && now.screw->pointDiameter)
                    scaled(tree, "screw.point_diameter", factor,
                           [](const job::Job& j) { return j.screw->pointDiameter; });
                break;
            default:
                if (now.screw && now.screw->freeLength)
                    scaled(tree, "screw.free_length", 4 / factor,
                           [](const job::Job& j) { return j.screw->freeLength; });
                break;
            }
        }
        if (jobfile::readJob(tree).problems.empty())
            offered += expectHonest(tree, what);
    }
    EXPECT_GE(offered, kOffers) << "few weak tools, nothing tested";
}

namespace {

bool offers(const engine::Report& report, const std::string& check, const std::string& field) {
    return std::any_of(report.changes.begin(), report.changes.end(), [&](const engine::Change& change) {
        return change.check == check && change.field == field;
    });
}

std::string said(const engine::Report& report) {
    std::string text = std::string(verdict::wordOf(report.grade)) + " " + report.reason + "\n";
    for (const verdict::Check& check : report.checks)
        if (check.grade != Grade::Holds)
            text += check.id + " " + check.basis + "\n";
    for (const engine::Change& change : report.changes)
        text += change.check + ": " + change.field + " = " + change.value + "\n";
    return text;
}

TEST(Mends, AreWrittenAsTheJobFileKeepsThem) {
    const auto kept = [](const char* field, const char* value) {
        engine::Change change;
        change.field = field;
        change.value = value;
        return engine::valueOf(change);
    };
    EXPECT_EQ(kept("screw.hammering", "false"), jobfile::Tree(false));
    EXPECT_EQ(kept("hub.jaws.count", "3"), jobfile::Tree(3));
    EXPECT_EQ(kept("screw.nut_grade", "10"), jobfile::Tree("10")); // a grade, not a number
    EXPECT_EQ(kept("stations.loaded", "[true, false]"), (jobfile::Tree(jobfile::Tree::List{true, false})));
    EXPECT_EQ(kept("plate.thickness", "3/8 in"), jobfile::Tree("3/8 in"));
}

} // namespace

/// The trial with wider jaws was held against the flange's old check.
TEST(Mends, AWeakFlangeIsOfferedWiderJaws) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_jaws_inch");
    tree.set("hub.flange.thickness", "9/16 in");
    const engine::Report report = engine::check(jobOf(tree));
    ASSERT_NE(report.find("flange.bending")->grade, Grade::Holds);
    EXPECT_TRUE(offers(report, "flange.bending", "hub.jaws.width") ||
                offers(report, "flange.bending", "hub.jaws.count") ||
                offers(report, "flange.bending", "screw.wrench"))
        << said(report);
    EXPECT_TRUE(offers(report, "flange.bending", "hub.jaws.width") ||
                offers(report, "flange.bending", "hub.jaws.count"))
        << said(report);
}

/// The trial with a better screw was held against the old check of the hung station.
TEST(Mends, AScrewThatBendsWhenAStationHangsIsOfferedABetterOne) {
    jobfile::Tree tree = sampleTree("mill_lane_pull_stop_bolt");
    tree.set("screw.grade", "4.6"); // 240 MPa, of class 8.8 660 MPa (ISO 898-1)
    for (const char* load : {"16 kN", "20 kN", "24 kN", "28 kN", "34 kN", "40 kN"}) {
        tree.set("load.total", load);
        const engine::Report report = engine::check(jobOf(tree));
        const verdict::Check* hung = report.find("screw.hung_station");
        ASSERT_TRUE(hung && hung->margin);
        if (hung->grade == Grade::Holds || *hung->margin * 660 / 240 < 1.6)
            continue;
        EXPECT_TRUE(offers(report, "screw.hung_station", "screw.grade")) << load << "\n" << said(report);
        return;
    }
    FAIL() << "no load at which a better screw would do";
}

/// Deeper than the bar is thick the file cannot be read.
TEST(Mends, AScrewInABarIsNotOfferedMoreThreadThanTheBarHas) {
    jobfile::Tree tree = sampleTree("mill_lane_backing_bar");
    tree.set("screw.into", "bar");
    tree.set("screw.engagement", "5 mm");
    tree.set("back.thickness", "6 mm");
    tree.set("springs", pw::testing::treeOf(R"([{"per_station": 1, "assembled_length": "50 mm",
            "loads": [{"length": "50 mm", "force": "4000 N"}], "rate": "20 N/mm", "solid_length": "20 mm"}])"));
    expectHonest(tree, "bar");
}

/// A nut is no deeper than it is: what is offered is a longer bolt.
TEST(Mends, AShortBoltTurnedThroughANutIsOfferedALongerOne) {
    jobfile::Tree tree = sampleTree("mill_lane_backing_bar");
    tree.set("screw.turns", "screw");
    tree.set("screw.usable_length", "50 mm");
    tree.set("screw.engagement", "13 mm");
    tree.set("screw.nut_height", "14 mm");
    expectHonest(tree, "through");
    const engine::Report report = engine::check(jobOf(tree));
    ASSERT_EQ(report.find("travel.thread")->grade, Grade::Breaks);
    EXPECT_TRUE(offers(report, "travel.thread", "screw.usable_length")) << said(report);
}
