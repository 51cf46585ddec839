#include "core/rack/read_rack.h"

#include "core/jobfile/json.h"
#include "core/rack/rack_file.h"
#include "core/util/write_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <unistd.h>

namespace pw::rack {
namespace {

RackReading read(const std::string& offcuts) {
    const auto tree = jobfile::fromJson(R"({"platewright_rack": 1, "offcuts": [)" + offcuts + "]}");
    EXPECT_TRUE(tree.ok()) << (tree.ok() ? "" : tree.problem().message);
    return readRack(*tree);
}

const std::string kGood =
    R"({"name": "good", "thickness": "12 mm", "outline": {"shape": "disc", "diameter": "200 mm"}})";

/// What is said about a piece with this in it; the good one beside it must stand.
std::string refusal(const std::string& offcut) {
    const RackReading reading = read(offcut + "," + kGood);
    EXPECT_EQ(reading.rack.offcuts.size(), 1u) << offcut;
    if (!reading.rack.offcuts.empty()) {
        EXPECT_EQ(reading.rack.offcuts[0].name, "good");
    }
    std::string all;
    for (const Remark& remark : reading.refused)
        all += remark.name + ": " + remark.field + ": " + remark.message + "\n";
    return all;
}

bool says(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

TEST(ReadRack, EveryFigureOfAPiece) {
    const RackReading reading =
        read(R"({"name": "door", "thickness": ["11.5 mm", "12.2 mm"], "pitting": "0.5 mm",
        "steel": "S355", "steel_is": "guessed", "tests": {"file": "bites"}, "count": 3, "owned": false,
        "outline": {"shape": "rectangle", "length": "16 in", "width": "10 in"}, "where": "loft", "note": "bent",
        "holes": [{"at": ["1 in", "2 in"], "diameter": "1/2 in"},
                  {"at": [0, 0], "shape": "slot", "length": "30 mm", "width": "10 mm"},
                  {"points": [[50, 0], [60, 0], [55, 10]]}],
        "bad_areas": [{"points": [[0, 0], [10, 0], [0, 10]], "note": "rust"}]})");
    EXPECT_TRUE(reading.refused.empty() && reading.mended.empty() && reading.unknownKeys.empty());
    ASSERT_EQ(reading.rack.offcuts.size(), 1u);
    const Offcut& piece = reading.rack.offcuts[0];
    EXPECT_NEAR(soundThickness(piece).mm(), 11.0, 1e-12);
    EXPECT_EQ(piece.steelIs, SteelIs::Guessed);
    EXPECT_EQ(piece.count, 3);
    EXPECT_FALSE(piece.owned);
    EXPECT_EQ(piece.holes.size(), 3u);
    EXPECT_EQ(piece.holes[2].points.size(), 3u);
    EXPECT_EQ(piece.badAreas[0].note, "rust");
    // What is written reads back as the same.
    jobfile::Tree tree = newRackTree();
    tree["offcuts"].push(toTree(piece));
    const RackReading again = readRack(tree);
    ASSERT_EQ(again.rack.offcuts.size(), 1u);
    EXPECT_EQ(again.rack.offcuts[0], piece);
}

TEST(ReadRack, WrongFiguresAreNamedAndTheRestStands) {
    const std::string disc = R"("outline": {"shape": "disc", "diameter": "200 mm"})";
    EXPECT_TRUE(says(refusal(R"({"name": "a", )" + disc + "}"), "a: offcuts[0].thickness: Is missing"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "0 mm", )" + disc + "}"), "piece 1: offcuts[0].thickness"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "12 furlong", )" + disc + "}"), "furlong"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "12", )" + disc + "}"), "thickness"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "3 mm", "pitting": "3 mm", )" + disc + "}"), "nothing sound"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "3 mm", "steel": "unobtainium", )" + disc + "}"), "steel"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "3 mm"})"), "outline: Is missing"));
    EXPECT_TRUE(says(refusal("7"), "piece 1"));
    EXPECT_TRUE(says(refusal(R"({"thickness": "3 mm", "outline": {"shape": "polygon", "points":
        [[0, 0], [100, 100], [100, 0], [0, 100]]}})"),
                     "crosses itself"));
    EXPECT_TRUE(says(
        refusal(R"({"thickness": "3 mm", "holes": [{"at": [0, 0], "diameter": "-3 mm"}], )" + disc + "}"),
        "holes[0].diameter"));
}

TEST(ReadRack, MendsWithAWord) {
    const RackReading reading = read(R"({"name": "twin", "thickness": 12, "outline": {"shape": "polygon",
        "points": [[0, 0], [100, 0], [100, 0], [100, 100], [0, 0]]}},
        {"name": "twin", "thickness": 12, "outline": {"shape": "disc", "diameter": 100}},
        {"name": "gone", "thickness": 12, "count": 0, "outline": {"shape": "disc", "diameter": 100}})");
    EXPECT_TRUE(reading.refused.empty());
    ASSERT_EQ(reading.rack.offcuts.size(), 2u);
    EXPECT_EQ(reading.rack.offcuts[0].outline.points.size(), 3u);
    EXPECT_EQ(reading.rack.offcuts[1].name, "twin (2)");
    EXPECT_EQ(reading.rack.offcuts[1].row, 1u);
    EXPECT_EQ(reading.mended.size(), 3u);
}

TEST(ReadRack, OtherFilesAreRefused) {
    EXPECT_TRUE(rackVersionTrouble(*jobfile::fromJson(R"({"platewright": 1})")));
    EXPECT_TRUE(rackVersionTrouble(*jobfile::fromJson(R"({"platewright_rack": 2})")));
    EXPECT_TRUE(rackVersionTrouble(*jobfile::fromJson(R"([])")));
    EXPECT_FALSE(rackVersionTrouble(newRackTree()));
}

TEST(RackFile, TheLastGoodOneIsKept) {
    namespace fs = std::filesystem;
    std::string name = (fs::temp_directory_path() / "pw-rack-XXXXXX").string();
    ASSERT_NE(mkdtemp(name.data()), nullptr);
    const fs::path file = fs::path(name) / "rack.json", copy = fs::path(name) / "rack.json~";
    jobfile::Tree first = newRackTree(), second = first;
    second["notes"] = "changed";
    ASSERT_TRUE(saveRackTree(first, file).ok());
    EXPECT_FALSE(fs::exists(copy));
    ASSERT_TRUE(saveRackTree(second, file).ok());
    ASSERT_TRUE(loadRackTree(copy).ok());
    EXPECT_EQ(*loadRackTree(copy), first);
    // A broken file does not push the good copy out.
    ASSERT_TRUE(util::writeFileWhole(file, "{ broken").ok());
    EXPECT_FALSE(loadRackTree(file).ok());
    ASSERT_TRUE(saveRackTree(second, file).ok());
    EXPECT_EQ(*loadRackTree(copy), first);
    EXPECT_EQ(*loadRackTree(file), second);
    fs::remove_all(name);
}

TEST(RackFile, TheSampleRackReads) {
    const auto tree = loadRackTree(std::string(PW_SAMPLES) + "/rack.json");
    ASSERT_TRUE(tree.ok()) << tree.problem().message;
    const RackReading reading = readRack(*tree);
    for (const Remark& remark : reading.refused)
        ADD_FAILURE() << remark.name << ": " << remark.field << ": " << remark.message;
    EXPECT_TRUE(reading.unknownKeys.empty());
    EXPECT_GE(reading.rack.offcuts.size(), 15u);
}

} // namespace
} // namespace pw::rack
