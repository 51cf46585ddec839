#include "app/engine/rack.h"

#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"
#include "tests/support/jobs.h"
#include "tests/support/sanitized.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <numbers>

namespace pw::engine {
namespace {

using jobfile::Tree;
using verdict::Grade;

using testing::sampleJob;

Tree rackTree(const std::string& offcuts) {
    return *jobfile::fromJson(R"({"platewright_rack": 1, "offcuts": [)" + offcuts + "]}");
}

rack::RackReading rackOf(const std::string& offcuts) {
    return rack::readRack(rackTree(offcuts));
}

const PieceAnswer& find(const RackAnswer& answer, const std::string& name) {
    const auto piece = std::ranges::find(answer.pieces, name, &PieceAnswer::name);
    if (piece == answer.pieces.end())
        throw std::runtime_error("no piece " + name);
    return *piece;
}

std::string plate(const std::string& name, const std::string& thickness, const std::string& steel,
                  double side, const std::string& more = "") {
    return R"({"name": ")" + name + R"(", "thickness": ")" + thickness + R"(", "steel": ")" + steel +
           R"(", "outline": {"shape": "rectangle", "length": )" + std::to_string(side) + R"(, "width": )" +
           std::to_string(side) + "}" + more + "}";
}

TEST(RankRack, TheVerdictIsThatOfTheWholeCheckInThePiecesOwnThicknessAndSteel) {
    const job::Job job = sampleJob("mill_lane_six_pin");
    const auto rack =
        rackOf(plate("thin", "5 mm", "S235", 200) + "," + plate("thick", "14.3 mm", "S355", 200));
    const RackAnswer answer = rankRack(job, rack);
    for (const char* name : {"thin", "thick"}) {
        const PieceAnswer& piece = find(answer, name);
        ASSERT_TRUE(piece.fits) << name;
        job::Job own = job;
        own.plate.thickness = piece.thickness;
        own.plate.steel.emplace().name = piece.steel;
        own.plate.tests = {};
        const Report report = check(own);
        EXPECT_EQ(piece.grade, report.grade) << name;
        EXPECT_EQ(piece.weakest, report.weakest) << name;
        EXPECT_NEAR(*piece.margin, *report.find(report.weakest)->marginOverWanted(), 1e-9) << name;
    }
    EXPECT_EQ(answer.best, "thick");
}

TEST(RankRack, OwnedBeforeBoughtAndTheFitBeforeTheRest) {
    const auto rack = rackOf(plate("new", "12 mm", "S235", 250, R"(, "owned": false)") + "," +
                             plate("small", "12 mm", "S235", 163) + "," + plate("foil", "2 mm", "S235", 250) +
                             "," + plate("mine", "12 mm", "S235", 250));
    const RackAnswer answer = rankRack(sampleJob("mill_lane_six_pin"), rack);
    ASSERT_EQ(answer.pieces.size(), 4u);
    EXPECT_EQ(answer.pieces[0].name, "mine");
    EXPECT_EQ(answer.pieces[1].name, "new");
    EXPECT_EQ(answer.pieces[2].name, "foil");
    EXPECT_EQ(answer.pieces[2].grade, Grade::Breaks);
    EXPECT_EQ(answer.pieces[3].name, "small");
    EXPECT_FALSE(answer.pieces[3].fits);
    // 160 mm of plate with 1.5 mm of kerf and 2 mm of margin on either side.
    EXPECT_NE(answer.pieces[3].shortOf.find("4"), std::string::npos) << answer.pieces[3].shortOf;
    EXPECT_NE(answer.pieces[3].shortOf.find("too narrow"), std::string::npos) << answer.pieces[3].shortOf;
}

TEST(RankRack, PreferenceOrdersWhatHoldsAlike) {
    const auto rack =
        rackOf(plate("heavy", "20 mm", "S235", 174) + "," + plate("light", "12 mm", "S235", 300));
    const auto first = [&](Prefer prefer) {
        RackOptions options;
        options.prefer = prefer;
        return rankRack(sampleJob("mill_lane_six_pin"), rack, options).pieces.front().name;
    };
    EXPECT_EQ(first(Prefer::Lightest), "light");
    EXPECT_EQ(first(Prefer::QuickestCut), "light");
    EXPECT_EQ(first(Prefer::ThickestMargin), "heavy");
}

TEST(RankRack, AGuessedSteelIsJudgedAsScrap) {
    const auto rack = rackOf(plate("guess", "12 mm", "S355", 200, R"(, "steel_is": "guessed")") + "," +
                             plate("scrap", "12 mm", "unknown scrap", 200));
    const RackAnswer answer = rankRack(sampleJob("mill_lane_six_pin"), rack);
    EXPECT_EQ(find(answer, "guess").grade, find(answer, "scrap").grade);
    EXPECT_EQ(find(answer, "guess").margin, find(answer, "scrap").margin);
    EXPECT_EQ(find(answer, "guess").remarks.size(), 1u);
}

TEST(RankRack, SaysWhatGoesWithFewerStationsAtATime) {
    // Folds under six springs; the half or third of the load must then be tried, and hold, for it to be said.
    job::Job job = sampleJob("mill_lane_six_pin");
    const auto rack = rackOf(plate("weak", "3.5 mm", "S235", 200));
    const RackAnswer answer = rankRack(job, rack);
    const PieceAnswer& piece = answer.pieces.front();
    ASSERT_TRUE(piece.fits);
    ASSERT_TRUE(piece.grade == Grade::Sets || piece.grade == Grade::Breaks) << verdict::wordOf(piece.grade);
    ASSERT_NE(piece.shortOf.find("stations at a time"), std::string::npos) << piece.shortOf;
    job.plate.thickness = piece.thickness;
    job.plate.steel.emplace().name = "S235";
    job.plate.tests = {};
    const int atATime = piece.shortOf.find("if 3") != std::string::npos ? 3 : 2;
    job.stations.loaded.assign(6, false);
    for (int i = 0; i < 6; i += 6 / atATime)
        job.stations.loaded[static_cast<std::size_t>(i)] = true;
    const Grade grade = check(job).grade;
    EXPECT_TRUE(grade == Grade::Holds || grade == Grade::Thin);
}

TEST(RankRack, WrongPiecesAreNamedAndTheRestIsRanked) {
    const auto rack =
        rackOf(plate("zero", "0 mm", "S235", 200) + "," + plate("good", "12 mm", "S235", 200) + "," +
               plate("odd", "12 mm", "S235", 200, R"(, "holes": [{"at": [900, 0], "diameter": 10}])"));
    const RackAnswer answer = rankRack(sampleJob("mill_lane_six_pin"), rack);
    ASSERT_EQ(answer.refused.size(), 1u);
    EXPECT_EQ(answer.refused[0].name, "zero");
    EXPECT_TRUE(find(answer, "good").fits);
    EXPECT_EQ(find(answer, "odd").remarks.size(), 1u) << "a hole off the piece is passed over with a word";
}

TEST(RankRack, AJobWithoutAPlateSaysWhatItNeeds) {
    job::Job job = sampleJob("mill_lane_six_pin");
    job.plate.outline.reset();
    const RackAnswer answer = rankRack(job, rackOf(plate("good", "12 mm", "S235", 200)));
    EXPECT_TRUE(answer.pieces.empty());
    ASSERT_FALSE(answer.missing.empty());
    EXPECT_EQ(answer.missing.front().field, "plate.outline");
}

TEST(RankRack, StopsWhenAsked) {
    RackOptions options;
    int asked = 0;
    options.progress = [&](double part, std::string_view) {
        EXPECT_GE(part, 0);
        EXPECT_LE(part, 1);
        return ++asked < 3;
    };
    EXPECT_THROW(
        (void)rankRack(sampleJob("mill_lane_six_pin"), rackOf(plate("good", "12 mm", "S235", 200)), options),
        Stopped);
}

TEST(RankRack, AStackTakesSeveralPlatesFromOnePiece) {
    job::Job job = sampleJob("mill_lane_six_pin");
    job.plate.stacked = 2;
    const auto rack = rackOf(plate("one", "12 mm", "S235", 200) + "," + plate("both", "12 mm", "S235", 340) +
                             "," + plate("pair", "12 mm", "S235", 200, R"(, "count": 2)"));
    const RackAnswer answer = rankRack(job, rack);
    EXPECT_FALSE(find(answer, "one").fits);
    EXPECT_TRUE(find(answer, "both").fits);
    EXPECT_EQ(find(answer, "both").others.size(), 1u);
    EXPECT_TRUE(find(answer, "pair").fits);
    EXPECT_TRUE(find(answer, "pair").others.empty());
}

TEST(AfterCutting, AreaIsConservedAndTheOldRackStands) {
    for (const char* name : {"mill_lane_six_pin", "mill_lane_two_pin_bar", "mill_lane_three_pin_polygon"}) {
        const job::Job job = sampleJob(name);
        const Tree before = rackTree(plate("piece", "12 mm", "S235", 420,
                                           R"(, "count": 2, "holes": [{"at": [150, 150], "diameter": 30}])"));
        const Tree kept = before;
        const rack::RackReading reading = rack::readRack(before);
        const RackAnswer answer = rankRack(job, reading);
        const PieceAnswer& piece = find(answer, "piece");
        ASSERT_TRUE(piece.fits) << name;
        const Cutting cutting = cutFrom(before, reading.rack.offcuts[0], answer.plate, piece);
        const Tree& after = cutting.rack;
        EXPECT_EQ(before, kept);
        const rack::RackReading left = rack::readRack(after);
        EXPECT_TRUE(left.refused.empty()) << name << (left.refused.empty() ? "" : left.refused[0].message);
        ASSERT_EQ(left.rack.offcuts.size(), 2u) << name;
        EXPECT_EQ(left.rack.offcuts[0].count, 1);
        const placement::BuiltStock rest = placement::buildStock(left.rack.offcuts[1]);
        ASSERT_TRUE(rest.problems.empty()) << name;
        const double cut = shape::signedArea(placement::cutLoop(answer.plate, piece.spacing.kerf));
        // Coordinates are kept to a hundred-thousandth of a millimetre.
        EXPECT_NEAR(placement::area(rest.stock) + cut + cutting.droppedMm2,
                    420.0 * 420 - std::numbers::pi * 225, 0.05)
            << name;
        EXPECT_GT(cut, shape::signedArea(answer.plate.rim)) << name;
        // And what is left can be laid out again, beside the cut.
        const RackAnswer again = rankRack(job, left);
        EXPECT_EQ(again.pieces.size(), 2u);
    }
}

TEST(AfterCutting, KeepsThePieceAsTypedAndWhatTheProgramDoesNotKnow) {
    const job::Job job = sampleJob("mill_lane_six_pin");
    const auto before = jobfile::fromJson(R"({"platewright_rack": 1, "paint": "red", "offcuts": [
        {"name": "piece", "thickness": "1/2 in", "steel": {"name": "S235", "mill": "lot 7"}, "heard": {"of": ["a", "b"]},
         "outline": {"shape": "rectangle", "length": "500 mm", "width": "500 mm", "drawn": "by hand"},
         "holes": [{"at": ["40 mm", "0 mm"], "diameter": "5/8 in", "burr": true}],
         "bad_areas": [{"points": [[-10, -10], [0, -10], [0, 0]], "seen_by": "us"}],
         "tests": {"file": "bites", "when": "May"}},
        {"name": "other", "thickness": "6 mm", "outline": {"shape": "disc", "diameter": "90 mm"}, "shelf": 2}]})");
    ASSERT_TRUE(before.ok());
    const rack::RackReading reading = rack::readRack(*before);
    ASSERT_TRUE(reading.refused.empty()) << reading.refused[0].message;
    const RackAnswer answer = rankRack(job, reading);
    const PieceAnswer& piece = find(answer, "piece");
    ASSERT_TRUE(piece.fits) << piece.shortOf;
    for (const int count : {1, 3}) {
        Tree rack = *before;
        rack::Offcut offcut = reading.rack.offcuts[0];
        offcut.count = count;
        if (count > 1)
            rack["offcuts"] = Tree::List{before->find("offcuts")->items()->front()},
            rack.set("offcuts[0].count", count);
        const Tree after = afterCutting(rack, offcut, answer.plate, piece);
        const std::string left = count > 1 ? "offcuts[1]" : "offcuts[0]";
        for (const char* path :
             {".thickness", ".steel", ".heard", ".outline.drawn", ".holes[0]", ".bad_areas[0]", ".tests"}) {
            ASSERT_TRUE(after.at(left + path)) << path;
            EXPECT_EQ(*after.at(left + path), *before->at(std::string("offcuts[0]") + path)) << path;
        }
        // The plate is gone from it: as a hole, or with its corner as a notch.
        EXPECT_TRUE(after.at(left + ".holes")->items()->size() > 1 || after.at(left + ".outline.points"));
        EXPECT_EQ(after.at("paint"), after.find("paint"));
        EXPECT_TRUE(after.find("paint"));
        if (count == 1) {
            EXPECT_EQ(*after.at("offcuts[1]"), *before->at("offcuts[1]"));
        }
        EXPECT_TRUE(rack::readRack(after).refused.empty());
    }
}

TEST(PieceUnder, TakesThePlaceOfAnotherAndLeavesWhatTheProgramDoesNotKnow) {
    const rack::RackReading reading =
        rackOf(plate("piece", "12 mm", "S235", 300, R"(, "tests": {"bend": "bent"})"));
    Tree tree = pw::testing::sampleTree("mill_lane_six_pin");
    tree.erase("plate.tests");
    tree.set("plate.tests.file", "skates");
    tree.set("plate.tests.tried_by", "the apprentice");
    tree.set("piece.name", "another");
    tree.set("piece.at", Tree::List{Tree("1 mm"), Tree("2 mm")});
    tree.set("piece.chalk", "white");
    PieceAnswer answer; // nowhere yet
    answer.name = "piece";
    for (const auto& [path, value] : changesFor(answer, reading.rack.offcuts[0]))
        value.isNull() ? (void)tree.erase(path) : tree.set(path, value);
    EXPECT_EQ(*tree.at("piece"), pw::testing::treeOf(R"({"name": "piece", "chalk": "white"})"));
    EXPECT_EQ(*tree.at("plate.tests"),
              pw::testing::treeOf(R"({"tried_by": "the apprentice", "bend": "bent"})"));
}

TEST(PieceUnder, LiesUnderThePlateWhereTheAnswerPutIt) {
    const job::Job job = sampleJob("mill_lane_six_pin");
    const rack::RackReading reading =
        rackOf(plate("piece", "12 mm", "S235", 300, R"(, "holes": [{"at": [100, 100], "diameter": 22}])"));
    const RackAnswer answer = rankRack(job, reading);
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES) + "/mill_lane_six_pin.plate.json");
    Tree chosen = *tree;
    for (const auto& [path, value] : changesFor(answer.pieces.front(), reading.rack.offcuts[0]))
        value.isNull() ? (void)chosen.erase(path) : chosen.set(path, value);
    const jobfile::Reading made = jobfile::readJob(chosen);
    ASSERT_TRUE(made.problems.empty()) << util::toText(made.problems);
    EXPECT_TRUE(made.unknownKeys.empty());
    const auto under = pieceUnder(made.job, reading);
    ASSERT_TRUE(under);
    EXPECT_TRUE(under->fits) << under->trouble;
    EXPECT_NEAR(shape::signedArea(under->stock.rim), 90000, 1e-6);
    Report report = check(made.job);
    const Grade before = report.grade;
    addStockFit(report, *under);
    EXPECT_EQ(report.grade, before);
    ASSERT_TRUE(report.find("stock.fit"));
    // Pushed over the edge it cannot be cut.
    job::Job moved = made.job;
    moved.piece->at->x = moved.piece->at->x + units::Length::fromMm(60);
    moved.piece->at->y = moved.piece->at->y + units::Length::fromMm(60);
    const auto off = pieceUnder(moved, reading);
    ASSERT_TRUE(off);
    EXPECT_FALSE(off->fits);
    addStockFit(report, *off);
    EXPECT_EQ(report.grade, Grade::Breaks);
    moved.piece->name = "nothing of the kind";
    EXPECT_FALSE(pieceUnder(moved, reading)->trouble.empty());
}

TEST(SampleRack, AnswersEverySampleJob) {
    const auto tree = rack::loadRackTree(std::string(PW_SAMPLES) + "/rack.json");
    ASSERT_TRUE(tree.ok());
    const rack::RackReading reading = rack::readRack(*tree);
    std::vector<std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES))
        if (entry.path().string().ends_with(".plate.json"))
            files.push_back(entry.path().string());
    std::ranges::sort(files);
    ASSERT_FALSE(files.empty());
    for (std::size_t i = 0; i < files.size(); i += testing::kSanitized ? 3 : 1) {
        const std::string& file = files[i];
        const job::Job job = jobfile::readJob(*jobfile::loadTree(file)).job;
        EXPECT_EQ(rackFileOf(job, file).string(), std::string(PW_SAMPLES) + "/rack.json") << file;
        RackOptions options;
        options.best = 3;
        const RackAnswer answer = rankRack(job, reading, options);
        EXPECT_EQ(answer.pieces.size(), reading.rack.offcuts.size()) << file;
        const auto fitting = std::ranges::count(answer.pieces, true, &PieceAnswer::fits);
        EXPECT_GT(fitting, 0) << file;
        for (const PieceAnswer& piece : answer.pieces)
            if (piece.fits)
                EXPECT_TRUE(piece.place) << file;
            else
                EXPECT_FALSE(piece.shortOf.empty()) << file;
    }
}

} // namespace
} // namespace pw::engine
