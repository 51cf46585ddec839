#include "app/cli/commands.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

using namespace pw;
namespace fs = std::filesystem;

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
    const int status =
        cli::run(static_cast<int>(argv.size()), argv.data(), out, err, [](const auto&) { return 0; });
    return {status, out.str(), err.str()};
}

std::string sample(const std::string& name) {
    return std::string(PW_SAMPLES) + "/" + name;
}

const std::string kJob = sample("mill_lane_six_pin.plate.json");

TEST(RackCommand, TheRackThatTheJobNames) {
    const Outcome o = run({"rack", kJob});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_NE(o.out.find("Take: "), std::string::npos);
    EXPECT_NE(o.out.find("too narrow"), std::string::npos);
}

TEST(RackCommand, JsonHasWhatThePromiseSays) {
    const Outcome o = run({"rack", kJob, "--json", "--prefer", "lightest"});
    EXPECT_EQ(o.status, 0);
    const auto tree = jobfile::fromJson(o.out);
    ASSERT_TRUE(tree.ok());
    ASSERT_TRUE(tree->find("best")->text());
    double lightest = 0;
    for (const jobfile::Tree& piece : *tree->find("offcuts")->items()) {
        for (const char* key :
             {"name", "fits", "verdict", "margin", "place", "waste_mm2", "remainder_mm2", "short_of"})
            EXPECT_TRUE(piece.find(key)) << key;
        if (!*piece.find("fits")->boolean() || *piece.find("verdict")->text() != "holds" ||
            !*piece.find("owned")->boolean())
            continue;
        for (const char* key : {"x_mm", "y_mm", "turn_deg"})
            EXPECT_TRUE(piece.at("place")->find(key)->number()) << key;
        EXPECT_GE(*piece.find("mass_kg")->number(), lightest - 1e-9);
        lightest = *piece.find("mass_kg")->number();
    }
    EXPECT_GT(lightest, 0);
}

TEST(RackCommand, AnotherRackAndNone) {
    const fs::path folder = fs::temp_directory_path() / "platewright_rack_command";
    fs::create_directories(folder);
    const std::string small = (folder / "small.json").string(), broken = (folder / "broken.json").string();
    std::ofstream(small) << R"({"platewright_rack": 1, "offcuts": [
        {"name": "scrap", "thickness": "12 mm", "outline": {"shape": "disc", "diameter": "90 mm"}},
        {"name": "wrong", "thickness": "12 blinks", "outline": {"shape": "disc", "diameter": "90 mm"}}]})";
    std::ofstream(broken) << "{";
    const Outcome none = run({"rack", kJob, "--rack", small});
    EXPECT_EQ(none.status, 1);
    EXPECT_NE(none.out.find("No piece will do."), std::string::npos);
    EXPECT_NE(none.out.find("Left out: wrong"), std::string::npos);
    EXPECT_EQ(run({"rack", kJob, "--rack", broken}).status, 2);
    EXPECT_EQ(run({"rack", kJob, "--rack", kJob}).status, 2) << "a job is no rack";
    EXPECT_EQ(run({"rack", kJob, "--rack", (folder / "not there.json").string()}).status, 2);
    EXPECT_EQ(run({"rack", kJob, "--prefer", "shiniest"}).status, 2);
    fs::remove_all(folder);
}

TEST(RackCommand, ARackOutsideTheJobsFolderIsReadOnlyWhenGiven) {
    const fs::path folder = fs::temp_directory_path() / "platewright_rack_outside";
    fs::create_directories(folder / "jobs");
    const std::string rack = (folder / "rack.json").string(), job = (folder / "jobs/job.plate.json").string(),
                      sheet = (folder / "sheet.pdf").string();
    std::ofstream(rack) << R"({"platewright_rack": 1, "offcuts": [
        {"name": "slab", "thickness": "16 mm", "steel": "S235",
         "outline": {"shape": "rectangle", "length": "300 mm", "width": "300 mm"}}]})";
    auto tree = jobfile::loadTree(kJob);
    ASSERT_TRUE(tree.ok());
    tree->set("piece.name", "slab");
    for (const std::string& named : {std::string("../rack.json"), rack}) {
        tree->set("rack", named);
        std::ofstream(job) << jobfile::toJson(*tree);
        for (const std::vector<std::string>& words : {std::vector<std::string>{"rack", job},
                                                      {"check", job},
                                                      {"ladder", job},
                                                      {"sheet", job, "-o", sheet}}) {
            const Outcome refused = run(words);
            EXPECT_EQ(refused.status, 2) << words[0];
            EXPECT_EQ(refused.out, "") << words[0];
            EXPECT_NE(refused.err.find("outside the job's folder"), std::string::npos)
                << words[0] << refused.err;
            EXPECT_NE(refused.err.find("--rack FILE"), std::string::npos) << words[0];
            EXPECT_FALSE(fs::exists(sheet));
            if (named == rack)
                continue; // the same question again, and it takes its time
            std::vector<std::string> asked = words;
            asked.insert(asked.end(), {"--rack", rack});
            const Outcome given = run(asked);
            EXPECT_NE(given.status, 2) << words[0] << given.err;
            fs::remove(sheet);
        }
    }
    fs::remove_all(folder);
}

TEST(ProposeCommand, WordsAndJson) {
    const Outcome words = run({"propose", kJob});
    EXPECT_EQ(words.status, 0) << words.err;
    EXPECT_NE(words.out.find("Full ring"), std::string::npos);
    const Outcome o = run({"propose", kJob, "--json"});
    const auto tree = jobfile::fromJson(o.out);
    ASSERT_TRUE(tree.ok());
    EXPECT_GE(tree->find("proposals")->items()->size(), 2u);
    EXPECT_TRUE(tree->at("proposals[0].changes[0].field")->text());
}

} // namespace
