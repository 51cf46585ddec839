#include "app/cli/commands.h"
#include "app/cli/terminal.h"
#include "app/engine/several.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/support/comma_desktop.h"
#include "tests/support/cut_files.h"
#include "tests/support/hostile_texts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <map>
#include <nlohmann/json.hpp>
#include <numbers>
#include <set>
#include <sstream>

// Every output of a job, by the command line, held to what is asked of all of them.

namespace fs = std::filesystem;
using namespace pw;

namespace {

struct Ran {
    int status = 0;
    std::string out, err;
};

Ran call(std::vector<std::string> words) {
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
    return std::string(PW_SAMPLES) + "/" + name + ".plate.json";
}

std::string contents(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// A folder that goes away again.
class Folder {
public:
    Folder() : m_marker(".folder", ""), m_path(m_marker.path() + ".d") { fs::create_directory(m_path); }
    ~Folder() { fs::remove_all(m_path); }
    std::string file(const std::string& name) const { return (m_path / name).string(); }
    bool empty() const { return fs::is_empty(m_path); }

private:
    pw::testing::FileForTest m_marker;
    fs::path m_path;
};

/// Every output: its command, its file, what goes after them.
struct Made {
    std::string command, file;
    std::vector<std::string> more{};
};
std::vector<Made> outputs() {
    return {{"cut", "size.dxf"},
            {"cut", "r12.dxf", {"--r12"}},
            {"cut", "path.dxf", {"--path"}},
            {"cut", "size.svg"},
            {"cut", "path.svg", {"--path"}},
            {"cut", "program.ngc"},
            {"cut", "several.dxf", {"--path", "--on", "700 x 800 mm"}},
            {"cut", "several.ngc", {"--on", "700 x 800 mm"}},
            {"solid", "plate.step"},
            {"solid", "stack.step", {"--stack"}},
            {"sheet", "sheet.pdf"},
            {"sheet", "template.pdf", {"--template"}}};
}

Ran make(const Made& made, const std::string& job, const Folder& folder, bool anyway) {
    std::vector<std::string> words{made.command, job, "-o", folder.file(made.file)};
    words.insert(words.end(), made.more.begin(), made.more.end());
    if (anyway)
        words.push_back("--anyway");
    return call(words);
}

/// As a person sees or searches it; a PDF's words by another program.
std::string faceOf(const std::string& file) {
    if (file.ends_with("stack.step") && contents(file).find("DO NOT USE") == std::string::npos)
        return pw::testing::run("'" PW_STEP_CHECK "' '" + file + "' | sort").output;
    if (file.ends_with(".pdf"))
        return pw::testing::run("pdftotext -raw '" + file + "' - 2>&1").output;
    return contents(file);
}

std::string jobWith(const Folder& folder, const std::string& sampleName, const std::string& title) {
    auto tree = *jobfile::loadTree(sample(sampleName));
    tree.set("title", title);
    tree.set("notes", title);
    const std::string file = folder.file("job.plate.json");
    std::ofstream(file, std::ios::binary) << jobfile::toJson(tree);
    return file;
}

} // namespace

TEST(Outputs, NothingIsWrittenOfAWeakVerdictUnlessItIsSaidAndThenEachSaysSo) {
    for (const Made& made : outputs()) {
        SCOPED_TRACE(made.file);
        const Folder folder;
        const Ran refused = make(made, sample("mill_lane_six_pin_thin"), folder, false);
        EXPECT_EQ(refused.status, 1);
        EXPECT_TRUE(folder.empty());
        EXPECT_NE(refused.err.find("--anyway"), std::string::npos);
        const Ran written = make(made, sample("mill_lane_six_pin_thin"), folder, true);
        EXPECT_EQ(written.status, 0) << written.err;
        EXPECT_NE(faceOf(folder.file(made.file)).find("DO NOT USE: SETS"), std::string::npos);
        // What holds does not say so.
        EXPECT_EQ(make(made, sample("mill_lane_six_pin"), folder, false).status, 0);
        EXPECT_EQ(faceOf(folder.file(made.file)).find("DO NOT USE"), std::string::npos);
    }
}

TEST(Outputs, ADesktopWithADecimalCommaChangesNoFile) {
    const Folder before, after;
    for (const Made& made : outputs())
        ASSERT_EQ(make(made, sample("mill_lane_six_pin"), before, false).status, 0) << made.file;
    const std::string text = call({"check", sample("mill_lane_six_pin"), "--text"}).out;
    const std::string words = call({"check", sample("mill_lane_six_pin")}).out;
    const pw::testing::CommaDesktop comma;
    for (const Made& made : outputs()) {
        ASSERT_EQ(make(made, sample("mill_lane_six_pin"), after, false).status, 0) << made.file;
        // A PDF carries the time it was made at; of an assembly the library writes the colours in any order.
        if (made.file.ends_with(".pdf") || made.file == "stack.step")
            EXPECT_EQ(faceOf(before.file(made.file)), faceOf(after.file(made.file))) << made.file;
        else
            EXPECT_TRUE(contents(before.file(made.file)) == contents(after.file(made.file))) << made.file;
    }
    EXPECT_EQ(call({"check", sample("mill_lane_six_pin"), "--text"}).out, text);
    EXPECT_EQ(call({"check", sample("mill_lane_six_pin")}).out, words);
}

int ordersIn(const std::string& text) {
    return static_cast<int>(std::ranges::count_if(
        text, [](unsigned char c) { return (c < 0x20 && c != '\n' && c != '\t') || c == 0x7f; }));
}

TEST(Outputs, NothingFromAFileGivesTheTerminalAnOrder) {
    const Folder folder;
    const std::string job = folder.file("odd.plate.json"),
                      plain = "\\u001b[2J\\u0007\\u009b2J\\u202e\\u2066\\u007f";
    for (const std::string& text :
         {R"({"platewright": 1, "title": ")" + plain + R"(", "key )" + plain +
              R"(": 1, "plate": {"thickness": "12 mm"}})",
          R"({"platewright": 1, "plate": {"thickness": ")" + plain + R"(", "steel": ")" + plain +
              R"("}, "work": ")" + plain + R"(", "screw": {"thread": ")" + plain + R"(", "grade": ")" +
              plain + R"("}})",
          R"({"platewright": 1, "rack": "../)" + plain + R"(", "piece": {"name": ")" + plain + R"("}})",
          R"({"platewright": ")" + plain + R"("})"}) {
        std::ofstream(job) << text;
        for (const char* command : {"check", "ladder", "rack", "propose", "tool"}) {
            const Ran ran = call({command, job});
            EXPECT_EQ(ordersIn(ran.out + ran.err), 0) << command << text;
            for (const char* mark : {"\xC2\x9B", "\xE2\x80\xAE", "\xE2\x81\xA6"})
                EXPECT_EQ((ran.out + ran.err).find(mark), std::string::npos) << command << text;
        }
    }
    // In JSON it is escaped by JSON's own rules, so that the text is what it was.
    std::ofstream(job) << R"({"platewright": 1, "title": "a\u001b[2Jb"})";
    EXPECT_NE(call({"check", job, "--json"}).out.find("a\\u001b[2Jb"), std::string::npos);
    // Other scripts, signs and line ends stay.
    EXPECT_EQ(cli::forTerminal("Ж ½ Ø 円\n\tend"), "Ж ½ Ø 円\n\tend");
}

TEST(Outputs, HostileTitlesAndNotesLeaveEveryFormatWhole) {
    int tried = 0;
    for (const std::string& title : pw::testing::hostileTexts()) {
        const Folder folder;
        const std::string job = jobWith(folder, "mill_lane_two_at_a_time", title);
        SCOPED_TRACE(title.substr(0, 60));
        if (call({"check", job}).status == 2)
            continue; // not even a job file: torn UTF-8 is refused there
        ++tried;
        for (const Made& made : outputs()) {
            if (made.file.starts_with("several"))
                continue;
            SCOPED_TRACE(made.file);
            const Ran ran = make(made, job, folder, true);
            ASSERT_EQ(ran.status, 0) << ran.err;
            const std::string file = folder.file(made.file), text = contents(file);
            if (file.ends_with(".pdf")) {
                const std::string info = pw::testing::run("pdfinfo '" + file + "' 2>&1").output;
                EXPECT_NE(info.find("Pages:"), std::string::npos) << info;
                EXPECT_EQ(info.find("rror"), std::string::npos) << info;
            } else if (file.ends_with(".step")) {
                const auto read = pw::testing::run("'" PW_STEP_CHECK "' '" + file + "'");
                EXPECT_EQ(read.status, 0);
                EXPECT_NE(read.output.find("sound 1"), std::string::npos);
            } else if (made.file.starts_with("path") || file.ends_with(".ngc")) {
                (void)pw::testing::readBy("cut_read.py", fs::path(file).extension().string(), {text});
            } else if (file.ends_with(".dxf")) {
                (void)pw::testing::readBy("dxf_check.py", ".dxf", {text});
            }
        }
        // A terminal takes control characters for orders; none gets there.
        for (const char* command : {"check", "tool"}) {
            const Ran ran = call({command, job});
            EXPECT_EQ(ordersIn(ran.out + ran.err), 0) << command;
        }
        // A line a figure, whatever is in the names.
        const std::string text = call({"check", job, "--text"}).out;
        std::istringstream lines(text);
        for (std::string line; std::getline(lines, line);)
            EXPECT_NE(line.find(" = "), std::string::npos) << line;
    }
    EXPECT_GT(tried, 10);
}

TEST(Outputs, SeveralPlatesOfOnePieceAreCutByOneProgramAndDrawing) {
    const Folder folder;
    const std::string a = sample("mill_lane_six_pin"), b = sample("mill_lane_six_pin");
    for (const char* name : {"two.dxf", "two.ngc", "two.svg"}) {
        const Ran ran = call({"cut", a, b, "-o", folder.file(name), "--path", "--on", "400 x 200 mm"});
        ASSERT_EQ(ran.status, 0) << ran.err;
        EXPECT_NE(ran.out.find("16 pierces"), std::string::npos) << ran.out; // two rims, two bores, 12 holes
    }
    // The program's torch goes where the drawing's lines are; X0 Y0 is the piece's corner in both.
    const auto dxf = pw::testing::readBy("cut_read.py", ".dxf", {contents(folder.file("two.dxf"))})[0];
    const auto ngc = pw::testing::readBy("cut_read.py", ".ngc", {contents(folder.file("two.ngc"))})[0];
    ASSERT_EQ(dxf["paths"].size(), 16u);
    ASSERT_EQ(ngc["paths"].size(), 16u);
    double outside = 0;
    for (std::size_t i = 0; i < 16; ++i) {
        const auto &one = dxf["paths"][i]["places"], &other = ngc["paths"][i]["places"];
        ASSERT_EQ(one.size(), other.size());
        for (std::size_t k = 0; k < one.size(); ++k) {
            const double x = one[k][0], y = one[k][1];
            EXPECT_NEAR(x, other[k][0].get<double>(), 1e-3);
            EXPECT_NEAR(y, other[k][1].get<double>(), 1e-3);
            EXPECT_TRUE(x > 0 && x < 400 && y > 0 && y < 200) << x << " " << y;
        }
        outside = std::max(outside, dxf["paths"][i]["length"].get<double>());
    }
    // A rim of 160 and half a kerf of 1.5 round it, and its leads.
    EXPECT_GT(outside, std::numbers::pi * 161.5);
    EXPECT_LT(outside, std::numbers::pi * 161.5 + 40);
    EXPECT_EQ(call({"cut", a, b, "-o", folder.file("no.dxf"), "--on", "300 x 200 mm"}).status, 2);
    EXPECT_EQ(call({"cut", a, b, "-o", folder.file("no.dxf")}).status, 2);
    EXPECT_EQ(call({"cut", a, b, "-o", folder.file("no.dxf"), "--on", "wide"}).status, 2);
    const Ran unlike =
        call({"cut", a, sample("mill_lane_two_at_a_time"), "-o", folder.file("no.dxf"), "--on", "2 x 2 ft"});
    EXPECT_EQ(unlike.status, 2);
    EXPECT_NE(unlike.err.find("one thickness"), std::string::npos) << unlike.err;
    EXPECT_FALSE(fs::exists(folder.file("no.dxf")));
}

TEST(Outputs, APieceIsReadAsItIsTyped) {
    EXPECT_NEAR(engine::pieceOf("300 x 400 mm")->wide.mm(), 300, 1e-9);
    EXPECT_NEAR(engine::pieceOf("300 mm x 40 cm")->high.mm(), 400, 1e-9);
    EXPECT_NEAR(engine::pieceOf("12 x 20 in")->wide.mm(), 12 * 25.4, 1e-9);
    EXPECT_NEAR(engine::pieceOf("2 x 3 ft")->wide.mm(), 24 * 25.4, 1e-9);
    EXPECT_NEAR(engine::pieceOf("7 1/2 in x 2 ft")->high.mm(), 24 * 25.4, 1e-9);
    for (const char* wrong : {"", "x", "300", "300 x 400", "-3 x 4 mm", "0 x 4 mm", "a x b mm"})
        EXPECT_FALSE(engine::pieceOf(wrong)) << wrong;
}

TEST(Outputs, TheTextReportHasEveryFigureOnItsLineAndTheSameEachTime) {
    const std::string once = call({"check", sample("mill_lane_six_pin"), "--text"}).out;
    EXPECT_EQ(once, call({"check", sample("mill_lane_six_pin"), "--text"}).out);
    const auto json = nlohmann::json::parse(call({"check", sample("mill_lane_six_pin"), "--json"}).out);
    std::map<std::string, std::string> lines;
    std::vector<std::string> ids;
    std::istringstream in(once);
    for (std::string line; std::getline(in, line);) {
        const std::size_t at = line.find(" = ");
        ASSERT_NE(at, std::string::npos) << line;
        EXPECT_TRUE(lines.emplace(line.substr(0, at), line.substr(at + 3)).second) << line;
        if (line.starts_with("checks[") && line.find("].id = ") != std::string::npos)
            ids.push_back(line.substr(line.find(" = ") + 3));
    }
    EXPECT_TRUE(std::is_sorted(ids.begin(), ids.end()));
    EXPECT_EQ(ids.size(), json["checks"].size());
    EXPECT_EQ(lines["verdict"], "holds");
    for (const auto& check : json["checks"])
        if (check["margin"].is_number()) {
            const std::string name = "checks[" + check["id"].get<std::string>() + "].margin";
            ASSERT_TRUE(lines.contains(name)) << name;
            EXPECT_NEAR(std::stod(lines[name]), check["margin"].get<double>(),
                        1e-5 * std::abs(check["margin"].get<double>()));
        }
    EXPECT_NEAR(std::stod(lines["proof.load_N"]), json["proof"]["load_N"].get<double>(), 0.1);
    EXPECT_EQ(once.find("solve_ms"), std::string::npos);
    EXPECT_EQ(call({"check", sample("mill_lane_six_pin"), "--text", "--json"}).status, 2);
    // One figure changed shows in the lines that depend on it, and the rest stay in their places.
    const Folder folder;
    auto tree = *jobfile::loadTree(sample("mill_lane_six_pin"));
    tree.set("title", "other");
    std::ofstream(folder.file("other.plate.json")) << jobfile::toJson(tree);
    const std::string other = call({"check", folder.file("other.plate.json"), "--text"}).out;
    EXPECT_EQ(once.substr(once.find("\nverdict")), other.substr(other.find("\nverdict")));
}

TEST(Outputs, TheStackIsAnAssemblyOfNamedAndColouredParts) {
    const Folder folder;
    const std::string file = folder.file("stack.step");
    ASSERT_EQ(call({"solid", sample("mill_lane_six_pin"), "-o", file, "--stack"}).status, 0);
    const auto read = pw::testing::run("'" PW_STEP_CHECK "' '" + file + "'");
    ASSERT_EQ(read.status, 0);
    std::multimap<std::string, std::string> facts;
    std::istringstream in(read.output);
    for (std::string line; std::getline(in, line);)
        facts.emplace(line.substr(0, line.find(' ')), line.substr(line.find(' ') + 1));
    const auto only = [&](const std::string& key) {
        EXPECT_EQ(facts.count(key), 1u) << key;
        return facts.find(key)->second;
    };
    EXPECT_EQ(only("name"), "Clutch plate for the bank winch");
    EXPECT_EQ(only("unit"), "millimetre");
    EXPECT_EQ(only("sound"), "1");
    EXPECT_EQ(facts.count("solid"), 10u); // plate, washer, nut, screw, six retainers
    std::set<std::string> parts, colours;
    for (auto [at, end] = facts.equal_range("part"); at != end; ++at)
        parts.insert(at->second);
    for (auto [at, end] = facts.equal_range("partcolour"); at != end; ++at)
        colours.insert(at->second);
    EXPECT_EQ(parts,
              (std::set<std::string>{"Plate", "Washer", "Nut M20", "Screw M20", "Retainer (usual size)"}));
    EXPECT_EQ(colours.size(), 5u);
    // By hand: disc 160, bore 21, six holes 24, 12 thick; washer 44 on the bore's 21 and 6 thick; nut 30
    // across flats and 18 high on M20; stud of 20 from 30 + 24 below the plate to 125 - 30 above; retainers
    // 36 on pins of 12, 0.12 x 36 high.
    const double pi = std::numbers::pi;
    const auto disc = [&](double d) { return pi / 4 * d * d; };
    const double plate = (disc(160) - disc(21) - 6 * disc(24)) * 12;
    const double nut = (std::sqrt(3.0) / 2 * 30 * 30 - disc(20)) * 18, stud = disc(20) * (54 + 95);
    const double retainers = 6 * (disc(36) - disc(12)) * 4.32;
    const double without = plate + nut + stud + retainers;
    const double washer = std::stod(only("volume")) - without;
    EXPECT_GT(washer, (disc(44) - disc(22)) * 6 * 0.99); // its hole is 21 or the washer's own
    EXPECT_LT(washer, (disc(44) - disc(20)) * 6 * 1.01);
    std::istringstream box(only("box"));
    std::array<double, 6> ends{};
    for (double& end : ends)
        box >> end;
    const std::array<double, 6> wanted{-80, -80, -54, 80, 80, 95};
    for (std::size_t i = 0; i < ends.size(); ++i)
        EXPECT_NEAR(ends[i], wanted[i], 1e-5) << i;
}

TEST(Outputs, ATappedBoreIsItsTappingDrillAndTheSolidSaysSo) {
    const Folder folder;
    const std::string file = folder.file("tapped.step");
    ASSERT_EQ(call({"solid", sample("mill_lane_pull_three_bolt_inch"), "-o", file}).status, 0);
    const std::string text = contents(file);
    // 1-8 UNC is tapped after 7/8 in (handbook tables of tapping drills).
    EXPECT_NE(text.find("Bore: drill 0.875 in, tap 1-8 UNC"), std::string::npos);
    const auto read = pw::testing::run("'" PW_STEP_CHECK "' '" + file + "'");
    EXPECT_NE(read.output.find("cylinder 0 0 "), std::string::npos) << read.output;
    EXPECT_NE(read.output.find("unit INCH"), std::string::npos);
    const std::string bore = "cylinder 0 0 ";
    double least = 1e9;
    for (std::size_t at = read.output.find(bore); at != std::string::npos;
         at = read.output.find(bore, at + 1))
        least = std::min(least, std::stod(read.output.substr(at + bore.size())));
    EXPECT_NEAR(2 * least, 0.875 * 25.4, 1e-6);
}

TEST(Outputs, EverySampleGivesASoundStack) {
    for (const auto& entry : fs::directory_iterator(PW_SAMPLES)) {
        if (!entry.path().string().ends_with(".plate.json"))
            continue;
        SCOPED_TRACE(entry.path().string());
        const Folder folder;
        const Ran ran =
            call({"solid", entry.path().string(), "-o", folder.file("s.step"), "--stack", "--anyway"});
        ASSERT_EQ(ran.status, 0) << ran.err;
        const auto read = pw::testing::run("'" PW_STEP_CHECK "' '" + folder.file("s.step") + "'");
        EXPECT_EQ(read.status, 0);
        EXPECT_NE(read.output.find("sound 1"), std::string::npos);
    }
}
