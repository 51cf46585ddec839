#include "app/cli/commands.h"

#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"
#include "tests/support/run.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <regex>
#include <sstream>

using namespace pw;
namespace fs = std::filesystem;

namespace {

struct Outcome {
    int status = 0;
    std::string out, err;
    bool windowOpened = false;
};

Outcome run(std::vector<std::string> words) {
    words.insert(words.begin(), "platewright");
    std::vector<const char*> argv;
    for (const std::string& word : words)
        argv.push_back(word.c_str());
    Outcome o;
    std::ostringstream out, err;
    o.status = cli::run(static_cast<int>(argv.size()), argv.data(), out, err, [&](const auto&) {
        o.windowOpened = true;
        return 0;
    });
    o.out = out.str();
    o.err = err.str();
    return o;
}

/// A folder of its own for each test, gone afterwards.
class Commands : public ::testing::Test {
protected:
    void SetUp() override {
        m_folder =
            fs::temp_directory_path() /
            (std::string("platewright_") + ::testing::UnitTest::GetInstance()->current_test_info()->name());
        fs::remove_all(m_folder);
        fs::create_directories(m_folder);
    }
    void TearDown() override { fs::remove_all(m_folder); }

    std::string path(const std::string& name) const { return (m_folder / name).string(); }
    std::string write(const std::string& name, const std::string& content) const {
        std::ofstream(path(name), std::ios::binary) << content;
        return path(name);
    }
    static std::string read(const std::string& file) { return *util::readFile(file); }
    static std::string sample(const std::string& name) {
        return std::string(PW_SAMPLES) + "/" + name + ".plate.json";
    }
    int filesIn() const { return static_cast<int>(std::distance(fs::directory_iterator(m_folder), {})); }

    fs::path m_folder;
};

} // namespace

TEST_F(Commands, SaysBeforeItStartsThatACheckMayTakeLongAndKeepsJsonClean) {
    jobfile::Tree tree = *jobfile::loadTree(sample("mill_lane_six_pin"));
    for (int i = 0; i < 3; ++i) { // off every line of symmetry
        const std::string hole = "plate.holes[" + std::to_string(i) + "]";
        tree.set(hole + ".at", jobfile::Tree::List{31.0 + i, -19.0 + 17 * i});
        tree.set(hole + ".diameter", 3);
    }
    const std::string job = path("holes.plate.json");
    ASSERT_TRUE(jobfile::saveTree(tree, job).ok());
    const Outcome o = run({"check", job, "--json"});
    EXPECT_NE(o.err.find("no symmetry and 10 holes"), std::string::npos) << o.err;
    EXPECT_TRUE(jobfile::fromJson(o.out)) << "standard output is not JSON alone";
    EXPECT_EQ(run({"check", sample("mill_lane_six_pin"), "--json"}).err, "");
}

TEST_F(Commands, CheckSaysHoldsInWordsAndExitsZero) {
    const Outcome o = run({"check", sample("mill_lane_six_pin")});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_NE(o.out.find("holds"), std::string::npos);
    EXPECT_TRUE(o.err.empty()) << o.err;
}

TEST_F(Commands, CheckSaysOfEveryMemberWhatItRestsOnWhenAsked) {
    const Outcome o = run({"check", sample("mill_lane_pull_two_bolt"), "--reasons"});
    EXPECT_EQ(o.status, 0);
    std::size_t sources = 0;
    for (std::size_t at = o.out.find("Source:"); at != std::string::npos; at = o.out.find("Source:", at + 1))
        ++sources;
    EXPECT_GE(sources, 12u) << o.out;
    for (const char* part : {"Puller bolts, 4.5", "Screw, buckling", "Johnson", "Bolt threads in the hub"})
        EXPECT_NE(o.out.find(part), std::string::npos) << part;
}

TEST_F(Commands, CheckOfAPlateThatDoesNotHoldExitsOne) {
    EXPECT_EQ(run({"check", sample("mill_lane_six_pin_thin")}).status, 1);
}

TEST_F(Commands, JsonHasTheKeysThatOutsideChecksDependOn) {
    const Outcome o = run({"check", sample("mill_lane_six_pin"), "--json", "--at=30,5", "--at=-30,-5"});
    ASSERT_EQ(o.status, 0) << o.err;
    const auto tree = jobfile::fromJson(o.out);
    ASSERT_TRUE(tree) << tree.problem().message;
    for (const char* path : {"platewright",
                             "title",
                             "verdict",
                             "weakest",
                             "load.total_N",
                             "load.per_station_N",
                             "load.energy_J",
                             "load.source",
                             "checks[0].id",
                             "checks[0].member",
                             "checks[0].verdict",
                             "checks[0].demand",
                             "checks[0].capacity",
                             "checks[0].unit",
                             "checks[0].margin",
                             "checks[0].wanted",
                             "checks[0].basis",
                             "checks[0].source",
                             "plate.by_book.moment_Nmm_per_mm",
                             "plate.by_book.stress_MPa",
                             "plate.by_book.deflection_mm",
                             "plate.by_book.ligament_efficiency",
                             "plate.field.peak_stress_MPa",
                             "plate.field.peak_at_mm",
                             "plate.field.bore_edge_stress_MPa",
                             "plate.field.access_hole_stress_MPa",
                             "plate.field.deflection_mm",
                             "plate.field.error_percent",
                             "plate.field.unknowns",
                             "plate.field.sector_of",
                             "plate.field.solve_ms",
                             "plate.first_yield_factor",
                             "plate.collapse_factor",
                             "plate.set_mm",
                             "plate.set_at_proof_mm",
                             "plate.points[0].x",
                             "plate.points[1].w_mm",
                             "plate.points[1].Mx",
                             "plate.points[1].My",
                             "plate.points[1].Mxy",
                             "plate.points[1].stress_top_MPa[2]",
                             "plate.points[1].von_mises_MPa",
                             "screw.torque_Nm",
                             "screw.torque_range_Nm",
                             "screw.stop_torque_Nm",
                             "screw.rated_load_N",
                             "screw.stamp_N",
                             "hub.pressure_MPa",
                             "hub.pull_N",
                             "hub.heat_to_free_C",
                             "travel.release_mm",
                             "travel.to_solid_mm",
                             "travel.thread_left_mm",
                             "proof.load_N",
                             "proof.torque_Nm",
                             "proof.reading_mm",
                             "proof.reading_at_mm",
                             "proof.return_within_mm",
                             "assumptions",
                             "cautions",
                             "changes"})
        EXPECT_TRUE(tree->at(path)) << path;
    EXPECT_EQ(*tree->find("verdict")->text(), "holds");
    EXPECT_EQ(*tree->at("plate.field.sector_of")->number(), 12);
}

TEST_F(Commands, CutAndSolidAreWrittenForAPlateThatHolds) {
    EXPECT_EQ(run({"cut", sample("mill_lane_six_pin"), "-o", path("a.dxf")}).status, 0);
    EXPECT_NE(read(path("a.dxf")).find("AC1015"), std::string::npos);
    const Outcome o = run({"solid", sample("mill_lane_six_pin"), "-o", path("a.step")});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_EQ(read(path("a.step")).rfind("ISO-10303-21", 0), 0u);
    EXPECT_EQ(filesIn(), 2);
}

TEST_F(Commands, NothingIsWrittenOnABadVerdictUnlessAskedAndThenItSaysSo) {
    const std::string job = sample("mill_lane_six_pin_thin");
    for (const auto& [command, name] : std::vector<std::pair<std::string, std::string>>{
             {"cut", "thin.dxf"}, {"cut", "thin.svg"}, {"cut", "thin.ngc"}, {"solid", "thin.step"}}) {
        const std::string file = path(name);
        const Outcome refused = run({command, job, "-o", file});
        EXPECT_EQ(refused.status, 1);
        EXPECT_FALSE(fs::exists(file));
        EXPECT_NE(refused.err.find("--anyway"), std::string::npos);
        const Outcome written = run({command, job, "-o", file, "--anyway"});
        EXPECT_EQ(written.status, 0) << written.err;
        EXPECT_NE(read(file).find("DO NOT USE"), std::string::npos);
    }
}

TEST_F(Commands, CutWritesTheFinishedSizeOrThePathInEachFormat) {
    const std::string job = sample("mill_lane_square_four"); // metric, torch table, one hole to drill
    for (const char* name : {"a.dxf", "a.svg"}) {
        const Outcome plain = run({"cut", job, "-o", path(name)});
        EXPECT_EQ(plain.status, 0) << plain.err;
        EXPECT_NE(read(path(name)).find("Lines are the finished edges."), std::string::npos);
        EXPECT_EQ(plain.out.find("pierces"), std::string::npos);
        const Outcome asPath = run({"cut", job, "--path", "-o", path(name)});
        EXPECT_EQ(asPath.status, 0) << asPath.err;
        EXPECT_NE(read(path(name)).find("Lines are the middle of the cut"), std::string::npos);
        EXPECT_NE(asPath.out.find("6 pierces"), std::string::npos) << asPath.out;
        EXPECT_NE(asPath.out.find("To drill: hole 1, 8 mm, too small to burn."), std::string::npos)
            << asPath.out;
    }
    EXPECT_EQ(run({"cut", job, "--path", "--r12", "-o", path("b.dxf")}).status, 0);
    EXPECT_NE(read(path("b.dxf")).find("AC1009"), std::string::npos);
    const Outcome program = run({"cut", job, "-o", path("a.NGC")});
    EXPECT_EQ(program.status, 0) << program.err;
    EXPECT_NE(program.out.find("guessed feed"), std::string::npos) << program.out;
    EXPECT_NE(read(path("a.NGC")).find("\nG21 G17"), std::string::npos);
    EXPECT_EQ(run({"cut", sample("mill_lane_eight_pin_inch"), "-o", path("i.ngc")}).status, 0);
    EXPECT_NE(read(path("i.ngc")).find("\nG20 G17"), std::string::npos);
}

TEST_F(Commands, CutTakesFeedAndPierceTimeFromTheTorchsChart) {
    const std::string job = sample("mill_lane_six_pin");
    const Outcome o = run({"cut", job, "--feed", "45 in/min", "--pierce", "0.75 s", "-o", path("a.ngc")});
    ASSERT_EQ(o.status, 0) << o.err;
    EXPECT_EQ(o.out.find("guess"), std::string::npos);
    EXPECT_NE(read(path("a.ngc")).find(" F1143.0\n"), std::string::npos); // 45 x 25.4
    EXPECT_NE(read(path("a.ngc")).find("G4 P0.75\n"), std::string::npos);
    EXPECT_EQ(read(path("a.ngc")).find("guess"), std::string::npos);
    fs::remove(path("a.ngc"));
    for (const std::vector<std::string>& more :
         std::vector<std::vector<std::string>>{{"--feed", "1200"},
                                               {"--feed", "fast"},
                                               {"--feed", "0 mm/min"},
                                               {"--feed", "-5 mm/min"},
                                               {"--feed", "1,2 m/min"},
                                               {"--feed", "nan mm/min"},
                                               {"--feed", "1e9 mm/min"},
                                               {"--pierce", "soon"},
                                               {"--pierce", "-1 s"},
                                               {"--pierce", "1 min"}}) {
        std::vector<std::string> words = {"cut", job, "-o", path("a.ngc")};
        words.insert(words.end(), more.begin(), more.end());
        const Outcome bad = run(words);
        EXPECT_EQ(bad.status, 2) << more.back();
        EXPECT_NE(bad.err.find(more.front()), std::string::npos) << bad.err;
    }
    EXPECT_EQ(filesIn(), 0);
}

TEST_F(Commands, CutRefusesWhatTheFormatOrTheProcessCannotCarryAndSaysTheMend) {
    const std::string burned = sample("mill_lane_six_pin"), sawn = sample("mill_lane_pull_two_bolt");
    std::string byHand = read(burned);
    const std::size_t at = byHand.find("plasma table");
    ASSERT_NE(at, std::string::npos);
    byHand.replace(at, 12, "hand torch");
    const std::string hand = write("hand.plate.json", byHand);
    const std::vector<std::pair<std::vector<std::string>, std::string>> cases = {
        {{"cut", burned, "-o", path("a.ngc"), "--r12"}, "plate.dxf"},
        {{"cut", burned, "-o", path("a.svg"), "--r12"}, "plate.dxf"},
        {{"cut", burned, "-o", path("a.dxf"), "--feed", "900 mm/min"}, "plate.ngc"},
        {{"cut", burned, "-o", path("a.pdf")}, "plate.dxf, plate.svg or plate.ngc"},
        {{"cut", burned, "-o", path("a")}, "plate.dxf, plate.svg or plate.ngc"},
        {{"cut", sawn, "-o", path("a.ngc"), "--anyway"}, "cutting.process"},
        {{"cut", sawn, "-o", path("a.dxf"), "--path", "--anyway"}, "cutting.process"},
        {{"cut", hand, "-o", path("a.ngc"), "--anyway"}, "no table runs a hand torch"}};
    for (const auto& [words, said] : cases) {
        const Outcome o = run(words);
        EXPECT_EQ(o.status, 2) << words[3];
        EXPECT_NE(o.err.find(said), std::string::npos) << o.err;
    }
    EXPECT_EQ(filesIn(), 1);
    EXPECT_EQ(run({"cut", sawn, "-o", path("a.dxf"), "--anyway"}).status, 0);
    EXPECT_EQ(run({"cut", sawn, "-o", path("a.svg"), "--anyway"}).status, 0);
}

TEST_F(Commands, EverySampleIsCutInEveryFormatItsProcessAllows) {
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES)) {
        const std::string job = entry.path().string();
        if (!job.ends_with(".plate.json"))
            continue;
        const std::string text = read(job);
        const bool table = text.find("saw and drill") == std::string::npos &&
                           text.find("hand torch") == std::string::npos &&
                           text.find("milled") == std::string::npos;
        for (const char* name : {"a.dxf", "a.svg", "a.ngc"})
            EXPECT_EQ(run({"cut", job, "-o", path(name), "--anyway"}).status,
                      table || std::string(name) != "a.ngc" ? 0 : 2)
                << job << " " << name;
    }
}

TEST_F(Commands, TheTemplateIsAPdfAndSaysHowToPrintIt) {
    const Outcome o = run({"sheet", sample("mill_lane_six_pin"), "-o", path("plate.pdf"), "--template"});
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_TRUE(o.err.empty()) << o.err;
    EXPECT_NE(o.out.find("Wrote " + path("plate.pdf")), std::string::npos) << o.out;
    EXPECT_NE(o.out.find("A4, one sheet. Print at 100 %"), std::string::npos) << o.out;
    EXPECT_TRUE(read(path("plate.pdf")).starts_with("%PDF-"));
    EXPECT_EQ(filesIn(), 1);
}

TEST_F(Commands, TheShopSheetIsAPdfAndOnlyWrittenAnywayWhereThePlateSets) {
    EXPECT_EQ(run({"sheet", sample("mill_lane_six_pin"), "-o", path("sheet.pdf")}).status, 0);
    EXPECT_TRUE(read(path("sheet.pdf")).starts_with("%PDF-"));
    EXPECT_EQ(run({"sheet", sample("mill_lane_six_pin_thin"), "-o", path("thin.pdf")}).status, 1);
    EXPECT_EQ(filesIn(), 1);
    EXPECT_EQ(run({"sheet", sample("mill_lane_six_pin_thin"), "-o", path("thin.pdf"), "--anyway"}).status, 0);
    EXPECT_EQ(filesIn(), 2);
}

TEST_F(Commands, TheSheetIsWrittenInTheLanguageThatIsAskedForAndNothingAfterIt) {
    const std::string job = sample("mill_lane_six_pin");
    const auto words = [&](const std::string& pdf) {
        return pw::testing::run("pdftotext -layout '" + pdf + "' -").output;
    };
    const Outcome german = run({"sheet", job, "-o", path("de.pdf"), "--language", "de"});
    EXPECT_EQ(german.status, 0) << german.err;
    EXPECT_TRUE(german.out.starts_with("hält: ")) << german.out;
    const std::string sheet = words(path("de.pdf"));
    for (const char* word : {"hält", "Zirkel einstellen", "unbekannter Schrott", "Bohrung ",
                             "Lochkreis, Radius", "Auf der Platte einprägen", "Seite 1 von"})
        EXPECT_NE(sheet.find(word), std::string::npos) << word << "\n" << sheet;
    for (const char* word : {"holds", "Set the dividers", " page ", "Taken for granted"})
        EXPECT_EQ(sheet.find(word), std::string::npos) << word << "\n" << sheet;
    // Half a pin circle of 101 mm, to a tenth, with the mark of the language.
    EXPECT_FALSE(std::regex_search(sheet, std::regex("[0-9]\\.[0-9] "))) << sheet;

    EXPECT_TRUE(run({"sheet", job, "-o", path("en.pdf")}).out.starts_with("holds: "));
    EXPECT_NE(words(path("en.pdf")).find("Set the dividers"), std::string::npos);
    const Outcome none = run({"sheet", job, "-o", path("none.pdf"), "--language", "xx"});
    EXPECT_EQ(none.status, 2);
    EXPECT_NE(none.err.find("There are: en, de"), std::string::npos) << none.err;
    EXPECT_FALSE(std::filesystem::exists(path("none.pdf")));
}

TEST_F(Commands, TheTemplatesPaperFollowsTheJobsUnitOrWhatIsAsked) {
    const std::string inches = sample("mill_lane_three_pin_polygon");
    EXPECT_NE(run({"sheet", inches, "-o", path("a.pdf"), "--template"}).out.find("Letter"),
              std::string::npos);
    EXPECT_NE(run({"sheet", inches, "-o", path("b.pdf"), "--template", "--paper", "A4"}).out.find("A4,"),
              std::string::npos);
    EXPECT_NE(
        run({"sheet", sample("mill_lane_six_pin"), "-o", path("c.pdf"), "--template", "--paper", "letter"})
            .out.find("Letter"),
        std::string::npos);
}

TEST_F(Commands, ATemplateOfAPlateThatSetsIsOnlyWrittenAnyway) {
    std::vector<std::string> words{"sheet", sample("mill_lane_six_pin_thin"), "-o", path("thin.pdf"),
                                   "--template"};
    Outcome o = run(words);
    EXPECT_EQ(o.status, 1);
    EXPECT_EQ(filesIn(), 0);
    EXPECT_NE(o.err.find("--anyway"), std::string::npos) << o.err;
    words.push_back("--anyway");
    o = run(words);
    EXPECT_EQ(o.status, 0) << o.err;
    EXPECT_EQ(filesIn(), 1);
}

TEST_F(Commands, ASheetThatCannotBeMadeExitsTwoAndWritesNothing) {
    const std::string job = sample("mill_lane_six_pin");
    const auto refused = [&](std::vector<std::string> words, const char* why) {
        const Outcome o = run(std::move(words));
        EXPECT_EQ(o.status, 2);
        EXPECT_NE(o.err.find(why), std::string::npos) << o.err;
    };
    refused({"sheet", job, "-o", path("plate.png"), "--template"}, "plate.pdf");
    refused({"sheet", job, "-o", path("plate.png")}, "plate.pdf");
    refused({"sheet", job, "-o", path("plate.pdf"), "--template", "--paper", "a3"}, "--paper");
    refused({"sheet", job, "-o", path("no/such/folder/plate.pdf"), "--template"}, "no such folder");
    EXPECT_EQ(filesIn(), 0);
}

TEST_F(Commands, BadInputExitsTwoNamesTheFileAndWritesNothing) {
    const std::string good = read(sample("mill_lane_six_pin"));
    const std::vector<std::string> bad = {
        path("missing.plate.json"),
        m_folder.string(),
        write("empty.plate.json", ""),
        write("cut_short.plate.json", good.substr(0, good.size() / 2)),
        write("binary.plate.json", std::string("\x7f"
                                               "ELF\0\x01\x02",
                                               7)),
        write("newer.plate.json", R"({"platewright": 99})"),
        write("no_version.plate.json", R"({"work": "compress"})"),
        write("no_unit.plate.json",
              R"({"platewright": 1, "work": "compress", "plate": {"thickness": "12"}})"),
        write("wrong_unit.plate.json",
              R"({"platewright": 1, "work": "compress", "plate": {"thickness": "12 N"}})"),
        write("negative.plate.json", R"({"platewright": 1, "work": "compress", "plate": {"thickness": -3}})"),
        write("huge.plate.json", R"({"platewright": 1, "work": "compress", "plate": {"thickness": 1e30}})"),
        write("thousand.plate.json",
              R"({"platewright": 1, "work": "compress", "stations": {"count": 1000, "circle": "100 mm"}})"),
        write("zero.plate.json",
              R"({"platewright": 1, "work": "compress", "stations": {"count": 0, "circle": "100 mm"}})"),
    };
    const int before = filesIn();
    for (const std::string& file : bad) {
        const Outcome o = run({"check", file});
        EXPECT_EQ(o.status, 2) << file << "\n" << o.out;
        EXPECT_TRUE(o.out.empty()) << file;
        EXPECT_FALSE(o.err.empty()) << file;
        EXPECT_EQ(run({"cut", file, "-o", path("x.dxf"), "--anyway"}).status, 2) << file;
    }
    EXPECT_EQ(filesIn(), before);
}

TEST_F(Commands, EveryWrongFigureIsListedAndTheJobIsLeftAlone) {
    const std::string text = R"({"platewright": 1, "work": "compress",
        "stations": {"count": 6, "circle": "100 mmm", "access_hole": "24"}, "plate": {"thickness": "thick"}})";
    const std::string file = write("wrong.plate.json", text);
    const Outcome o = run({"check", file});
    EXPECT_EQ(o.status, 2);
    for (const char* field : {"stations.circle", "stations.access_hole", "plate.thickness"})
        EXPECT_NE(o.err.find(field), std::string::npos) << field << "\n" << o.err;
    EXPECT_EQ(read(file), text);
}

TEST_F(Commands, BadCommandLinesExitTwo) {
    for (const std::vector<std::string>& words : std::vector<std::vector<std::string>>{
             {"check"},
             {"cut", sample("mill_lane_six_pin")},
             {"check", sample("mill_lane_six_pin"), "--at=here"},
             {"check", sample("mill_lane_six_pin"), "--at=1,2,3"},
             {"check", sample("mill_lane_six_pin"), "--nonsense"},
             {"cut", sample("mill_lane_six_pin"), "-o", path("x.pdf")},
             {"solid", sample("mill_lane_six_pin"), "-o", path("x.dxf")},
             {"cut", sample("mill_lane_six_pin"), "-o", path("no/such/folder/x.dxf")}})
        EXPECT_EQ(run(words).status, 2) << words.back();
    EXPECT_EQ(filesIn(), 0);
}

TEST_F(Commands, AJobFileAloneOpensTheWindow) {
    EXPECT_TRUE(run({sample("mill_lane_six_pin")}).windowOpened);
    EXPECT_TRUE(run({}).windowOpened);
    EXPECT_FALSE(run({"--version"}).windowOpened);
}
