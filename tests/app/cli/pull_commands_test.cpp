#include "app/cli/commands.h"
#include "core/jobfile/json.h"
#include "tests/support/jobs.h"
#include "tests/support/run.h"

#include <gtest/gtest.h>
#include <sstream>

using namespace pw;
using pw::testing::FileForTest;

namespace {

struct Outcome {
    int status = 0;
    std::string out, err;
};

Outcome run(std::vector<std::string> words) {
    words.insert(words.begin(), "platewright");
    std::vector<const char*> argv;
    for (const std::string& word : words)
        argv.push_back(word.c_str());
    std::ostringstream out, err;
    Outcome o;
    o.status = cli::run(static_cast<int>(argv.size()), argv.data(), out, err, [](const auto&) { return 0; });
    o.out = out.str();
    o.err = err.str();
    return o;
}

std::string sampleFile(const std::string& name) {
    return std::string(PW_SAMPLES) + "/" + name + ".plate.json";
}

Outcome checkWith(const std::string& sample, const std::string& field, jobfile::Tree value) {
    jobfile::Tree tree = pw::testing::sampleTree(sample);
    tree.set(field, std::move(value));
    const FileForTest file(".plate.json", jobfile::toJson(tree));
    return run({"check", file.path()});
}

} // namespace

TEST(BadFigures, OfTheLoadPathExitTwoAndNameTheField) {
    struct {
        const char *sample, *field;
        jobfile::Tree value;
    } const rows[] = {
        {"mill_lane_pull_two_bolt", "screw.engagement", "30 mm"}, // the plate is 25 mm
        {"mill_lane_pull_two_bolt", "screw.wrench", "0 mm"},
        {"mill_lane_pull_two_bolt", "screw.hand_pull", "0 N"},
        {"mill_lane_pull_two_bolt", "screw.thread_friction", 0},
        {"mill_lane_pull_two_bolt", "screw.collar_friction", 0},
        {"mill_lane_pull_two_bolt", "screw.thread", "M20x40"},
        {"mill_lane_pull_two_bolt", "screw.thread_length", "0 mm"},
        {"mill_lane_pull_two_bolt", "screw.free_length", "-5 mm"},
        {"mill_lane_pull_two_bolt", "hub.bolts.thread", "M0"},
        {"mill_lane_pull_two_bolt", "hub.bolts.count", 0},
        {"mill_lane_pull_two_bolt", "hub.bolts.engagement", "0 mm"},
        {"mill_lane_pull_two_bolt", "hub.bolts.thread_condition", "fine"},
        {"mill_lane_pull_two_bolt", "stations.count", 0},
        {"mill_lane_pull_two_bolt", "ram.area", "0 mm2"},
        {"mill_lane_pull_two_bolt", "legs.count", 0},
        {"mill_lane_pull_two_bolt", "load.total", "0 N"},
        {"mill_lane_pull_two_bolt", "heat.tool", "5000 C"},
        {"mill_lane_pull_ram_pulley", "hub.friction", 0},
        {"mill_lane_pull_ram_pulley", "ram.rod", "M30x20"},
        {"mill_lane_pull_ram_pulley", "ram.rod_grade", "toffee"},
        {"mill_lane_pull_stop_bolt", "back.kind", "stop-bolt"},
        {"mill_lane_pull_stop_bolt", "back.thread", "M16x9"},
        {"mill_lane_pull_stop_bolt", "back.engagement", "0 mm"},
        {"mill_lane_pull_taper", "hub.half_angle", "0 deg"},
        {"mill_lane_pull_jaws_inch", "hub.jaws.count", 0},
        {"mill_lane_pull_jaws_inch", "hub.flange.root", "7 in"},
    };
    for (const auto& row : rows) {
        const Outcome o = checkWith(row.sample, row.field, row.value);
        EXPECT_EQ(o.status, 2) << row.field << "\n" << o.out;
        EXPECT_NE(o.err.find(row.field), std::string::npos) << row.field << ": " << o.err;
        EXPECT_TRUE(o.out.empty()) << row.field;
    }
    const Outcome interference = checkWith("mill_lane_pull_ram_pulley", "hub.interference",
                                           pw::testing::treeOf(R"(["-0.03 mm", "0.08 mm"])"));
    EXPECT_EQ(interference.status, 2);
    EXPECT_NE(interference.err.find("hub.interference"), std::string::npos) << interference.err;
}

TEST(SampleCommands, ExitZeroButForThePlateThatIsTooThin) {
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        const std::string file = entry.path().string();
        if (!file.ends_with(".plate.json"))
            continue;
        const Outcome o = run({"check", file});
        EXPECT_EQ(o.status, file.find("_thin.") == std::string::npos ? 0 : 1) << file;
        EXPECT_TRUE(o.err.empty()) << file << ": " << o.err;
    }
}

TEST(ToolCommand, SaysWhatTheToolMayBeUsedForAndOnWhat) {
    const Outcome o = run({"tool", sampleFile("mill_lane_six_pin"), sampleFile("mill_lane_six_pin_thin"),
                           sampleFile("mill_lane_pull_two_bolt")});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_NE(o.out.find("May be used up to"), std::string::npos) << o.out;
    EXPECT_NE(o.out.find("that job pulls"), std::string::npos) << o.out;

    const Outcome json = run({"tool", sampleFile("mill_lane_six_pin"), PW_SAMPLES, "--json"});
    ASSERT_EQ(json.status, 0) << json.err;
    const auto tree = jobfile::fromJson(json.out);
    ASSERT_TRUE(tree) << json.out;
    ASSERT_TRUE(tree->find("rated_load_N") && tree->find("rated_load_N")->number());
    ASSERT_TRUE(tree->find("jobs") && tree->find("jobs")->items());
    EXPECT_GE(tree->find("jobs")->items()->size(), 14u) << "the folder's other jobs";
}

TEST(ToolCommand, ABadJobAmongTheOthersIsSaidAndTheRestAnswered) {
    const FileForTest bad(".plate.json", R"({"platewright": 1, "work": "dig"})");
    const Outcome o =
        run({"tool", sampleFile("mill_lane_six_pin"), bad.path(), sampleFile("mill_lane_six_pin_thin")});
    EXPECT_EQ(o.status, 0);
    EXPECT_NE(o.err.find("work"), std::string::npos) << o.err;
    EXPECT_NE(o.out.find("six_pin_thin"), std::string::npos) << o.out;
    EXPECT_EQ(run({"tool", bad.path()}).status, 2);
    EXPECT_EQ(run({"tool", sampleFile("no_such_tool")}).status, 2);
}
