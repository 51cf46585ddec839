#include "geometry/exchange/dxf.h"
#include "geometry/exchange/rs274.h"
#include "geometry/exchange/svg.h"

#include "tests/geometry/outline/plates.h"
#include "tests/support/comma_desktop.h"
#include "tests/support/cut_files.h"
#include "tests/support/hostile_texts.h"
#include "tests/support/plates.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace pw::exchange {
namespace {

using nlohmann::json;
using shape::Point;
using testing::apart;
using testing::readBy;

// How far a file may be off, mm: a few last places of what is written.
constexpr double kDxfTrue = 1e-7; // ten places of mm or inch
constexpr double kSvgTrue = 2e-4; // six places, but an arc by its ends and radius
/// Ten last places: each end and centre is rounded, and the length gone drifts by a few of them along the
/// way.
constexpr double kMetricTrue = 10 * 1e-4, kInchTrue = 10 * 1e-5 * 25.4;

CutPath pathOf(const shape::Region& region, double thickness, double kerf = 1.5) {
    CutSettings settings;
    settings.thickness = Length::fromMm(thickness);
    settings.kerf = Length::fromMm(kerf);
    const auto path = makeCutPath({region}, settings, usualRates(settings.process, settings.thickness));
    EXPECT_TRUE(path.ok());
    return path.ok() ? *path : CutPath{};
}

std::vector<CutPath> paths() {
    std::vector<CutPath> all;
    for (const testing::KnownPlate& plate : testing::knownPlates())
        all.push_back(pathOf(plate.region, plate.thickness));
    for (const job::Job& job : testing::soundRandomJobs(40, 5))
        all.push_back(pathOf(outline::buildRegion(job).region, 6));
    return all;
}

std::string programOf(const CutPath& path, const Rs274Options& options) {
    const auto program = toRs274(path, options);
    EXPECT_TRUE(program.ok());
    return program.ok() ? *program : "";
}

Point shiftOf(const CutPath& path) {
    return Point{5, 5} - path.extents.low;
}

class CutFiles : public ::testing::TestWithParam<units::System> {
protected:
    Rs274Options program() const {
        Rs274Options options;
        options.units = GetParam();
        options.title = "Bench plate 7";
        options.material = "S235";
        return options;
    }
    double programTrue() const { return GetParam() == units::System::Metric ? kMetricTrue : kInchTrue; }
    SvgOptions svg() const { return {GetParam(), "Bench plate 7", ""}; }
    DxfOptions dxf(DxfVersion version = DxfVersion::R2000) const {
        DxfOptions options;
        options.version = version;
        options.units = GetParam();
        options.title = "Bench plate 7";
        return options;
    }
};

TEST_P(CutFiles, TheProgramMovesTheTorchWhereTheGeometryHasIt) {
    const std::vector<CutPath> all = paths();
    std::vector<std::string> texts;
    for (const CutPath& path : all)
        texts.push_back(programOf(path, program()));
    const std::vector<json> reports = readBy("cut_read.py", ".ngc", texts);
    for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_LT(apart(reports[i], all[i].burns, shiftOf(all[i])), programTrue()) << i;
        double cut = 0;
        for (const json& burn : reports[i]["paths"]) {
            cut += burn["length"].get<double>();
            for (const json& place : burn["places"]) {
                EXPECT_GE(place[0], 5 - programTrue());
                EXPECT_GE(place[1], 5 - programTrue());
            }
        }
        EXPECT_NEAR(cut, all[i].cutLength, programTrue() * 10);
        // Travel from the low left corner to the first pierce is not in the program.
        const double first = distance(all[i].extents.low, all[i].burns[0].pierce());
        EXPECT_NEAR(reports[i]["travel"], all[i].travelLength - first, programTrue() * 10);
        for (const json& turns : reports[i]["turns"])
            for (const double turn : turns)
                EXPECT_LE(std::abs(turn), std::numbers::pi * 1.001);
        for (const double dwell : reports[i]["dwells"])
            EXPECT_NEAR(dwell, all[i].rates.pierceSeconds, 0.005);
        for (const double feed : reports[i]["feeds"])
            EXPECT_NEAR(feed, all[i].rates.feed, 1.3); // to 1 mm/min or 0.1 in/min
    }
}

TEST_P(CutFiles, TheDrawingHasTheSamePathInTheSameOrderAndSense) {
    const std::vector<CutPath> all = paths();
    for (const DxfVersion version : {DxfVersion::R2000, DxfVersion::R12}) {
        std::vector<std::string> texts;
        for (const CutPath& path : all)
            texts.push_back(toDxf(path, dxf(version)));
        readBy("dxf_check.py", ".dxf", texts); // the strict reader and the audit of ezdxf
        const std::vector<json> reports = readBy("cut_read.py", ".dxf", texts);
        for (std::size_t i = 0; i < all.size(); ++i) {
            EXPECT_LT(apart(reports[i], all[i].burns, {}), kDxfTrue) << i;
            for (std::size_t k = 0; k < all[i].burns.size(); ++k)
                EXPECT_EQ(reports[i]["paths"][k]["layer"],
                          all[i].burns[k].outside ? kLayerOutside : kLayerInside);
            ASSERT_EQ(reports[i]["points"].size(), all[i].drilled.size());
            for (std::size_t k = 0; k < all[i].drilled.size(); ++k) {
                EXPECT_NEAR(reports[i]["points"][k][0], all[i].drilled[k].centre.x, kDxfTrue);
                EXPECT_NEAR(reports[i]["points"][k][1], all[i].drilled[k].centre.y, kDxfTrue);
            }
        }
    }
}

TEST_P(CutFiles, TheSvgHasTheSamePathAtTrueSize) {
    const std::vector<CutPath> all = paths();
    std::vector<std::string> texts;
    for (const CutPath& path : all)
        texts.push_back(toSvg(path, svg()));
    const std::vector<json> reports = readBy("cut_read.py", ".svg", texts);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const json& first = reports[i]["paths"][0]["places"][0];
        const Point shift = Point{first[0], first[1]} - all[i].burns[0].pierce();
        EXPECT_LT(apart(reports[i], all[i].burns, shift), kSvgTrue) << i;
        EXPECT_EQ(reports[i]["title"], "Bench plate 7");
    }
}

TEST_P(CutFiles, TheFinishedSizeAsSvgIsTheFinishedSize) {
    std::vector<std::string> texts;
    const std::vector<testing::KnownPlate> plates = testing::knownPlates();
    for (const testing::KnownPlate& plate : plates) {
        CutSettings settings;
        settings.thickness = Length::fromMm(plate.thickness);
        texts.push_back(toSvg(makeCutPlan(plate.region, settings), svg()));
    }
    const std::vector<json> reports = readBy("cut_read.py", ".svg", texts);
    for (std::size_t i = 0; i < plates.size(); ++i) {
        const json& outside = reports[i]["paths"].back();
        EXPECT_EQ(outside["layer"], kLayerOutside);
        EXPECT_NEAR(outside["length"], perimeter(plates[i].region.rim), 1e-3);
        std::vector<shape::Side> sides;
        for (std::size_t k = 0; k < plates[i].region.rim.size(); ++k)
            sides.push_back(plates[i].region.rim.side(k));
        const json& read = outside["places"];
        const std::vector<Point> wanted = testing::places(sides, static_cast<int>(read.size()) - 1);
        const Point shift = Point{read[0][0], read[0][1]} - wanted[0];
        for (std::size_t k = 0; k < wanted.size(); ++k)
            EXPECT_NEAR(distance(wanted[k] + shift, {read[k][0], read[k][1]}), 0, kSvgTrue);
    }
}

TEST_P(CutFiles, EverySpoiledProgramIsNoticed) {
    for (const testing::KnownPlate& plate : testing::knownPlates()) {
        const json report =
            readBy("rs274_run.py", ".ngc", {programOf(pathOf(plate.region, plate.thickness), program())},
                   "--controls")
                .front();
        EXPECT_GE(report["controls"], 27) << plate.name;
    }
}

TEST_P(CutFiles, TheSpoiledDrawingsOfAPathAreNoticed) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    for (const DxfVersion version : {DxfVersion::R2000, DxfVersion::R12})
        readBy("dxf_check.py", ".dxf", {toDxf(path, dxf(version))}, "--controls");
}

TEST_P(CutFiles, HostileTitlesAndWarningsLeaveSoundFiles) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    std::vector<std::string> texts = testing::hostileTexts();
    texts.insert(texts.end(), {"(a) ((b", ") M3 (", "MSG, now", "%", "a)\nM30\nG0 X0 Y0", "<svg onload='x'>",
                               "]]> --> <!-- <![CDATA[ &#0; &nope;", "\xEF\xBF\xBE \xEF\xBF\xBF"});
    std::vector<std::string> programs, drawings, svgs;
    for (const std::string& text : texts) {
        Rs274Options hostile = program();
        hostile.title = hostile.material = hostile.warning = text;
        programs.push_back(programOf(path, hostile));
        DxfOptions drawing = dxf();
        drawing.title = drawing.warning = text;
        drawings.push_back(toDxf(path, drawing));
        svgs.push_back(toSvg(path, {GetParam(), text, text}));
    }
    for (const json& report : readBy("cut_read.py", ".ngc", programs))
        EXPECT_LT(apart(report, path.burns, shiftOf(path)), programTrue());
    for (const json& report : readBy("cut_read.py", ".dxf", drawings))
        EXPECT_LT(apart(report, path.burns, {}), kDxfTrue);
    for (const json& report : readBy("cut_read.py", ".svg", svgs))
        EXPECT_EQ(report["paths"].size(), path.burns.size());
}

TEST_P(CutFiles, ReadTheSameOnADesktopWithADecimalComma) {
    const CutPath path = pathOf(testing::barWithOpenSlots().region, 9.525);
    const std::string ngc = programOf(path, program()), drawing = toDxf(path, dxf()),
                      picture = toSvg(path, svg());
    const testing::CommaDesktop comma;
    EXPECT_EQ(programOf(path, program()), ngc);
    EXPECT_EQ(toDxf(path, dxf()), drawing);
    EXPECT_EQ(toSvg(path, svg()), picture);
}

TEST_P(CutFiles, TheWarningStandsOnTheFaceOfEach) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    Rs274Options options = program();
    EXPECT_EQ(programOf(path, options).find("DO NOT USE"), std::string::npos);
    options.warning = "DO NOT USE: BREAKS";
    const std::string text = programOf(path, options);
    EXPECT_EQ(text.rfind("(MSG, DO NOT USE: BREAKS)\n(DO NOT USE: BREAKS)\n", 0), 0u) << text.substr(0, 80);
    const json run = readBy("cut_read.py", ".ngc", {text}).front();
    EXPECT_EQ(run["stops"], 1); // the operator has to go on past it
    EXPECT_LT(text.find("\nM0\n"), text.find("\nM3\n"));

    const json svgRun =
        readBy("cut_read.py", ".svg", {toSvg(path, {GetParam(), "Plate", options.warning})}).front();
    EXPECT_EQ(svgRun["title"], "DO NOT USE: BREAKS Plate");
    EXPECT_EQ(svgRun["texts"][0], json::array({"warning", "DO NOT USE: BREAKS"}));
    DxfOptions drawing = dxf();
    drawing.warning = options.warning;
    EXPECT_NE(toDxf(path, drawing).find("\nDO NOT USE: BREAKS\n"), std::string::npos);
}

TEST_P(CutFiles, SayTheJobKerfMaterialThicknessSizeUnitsAndPierces) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12.7);
    const bool inch = GetParam() == units::System::Inch;
    std::string words;
    const json run = readBy("cut_read.py", ".ngc", {programOf(path, program())}).front();
    for (const json& comment : run["comments"])
        words += comment.get<std::string>() + "\n";
    for (const char* wanted :
         {"job: Bench plate 7", "plate: S235", "plasma table", "pierces: 8.", "guesses", "drill",
          "too small to burn", "not burned: hole 2: too narrow to burn", "offsets from the start of the arc", inch ? "0.5 in thick" : "12.7 mm thick",
          inch ? "kerf 0.0591 in" : "kerf 1.5 mm", inch ? "units: inch" : "units: mm",
          inch ? "x 5.57 in" : "x 141.5 mm"})
        EXPECT_NE(words.find(wanted), std::string::npos) << wanted << "\n" << words;
    for (const std::string& text : {toDxf(path, dxf()), toSvg(path, svg())})
        for (const char* wanted :
             {"Bench plate 7", "plasma table", "8 pierces", inch ? "Units: inch" : "Units: mm",
              inch ? "0.5 in thick" : "12.7 mm thick", "too small to burn", "Shaped hole: too narrow to burn"})
            EXPECT_NE(text.find(wanted), std::string::npos) << wanted;
}

INSTANTIATE_TEST_SUITE_P(Units, CutFiles, ::testing::Values(units::System::Metric, units::System::Inch));

TEST(Rs274, TheRunnerKnowsTheArcOfTheReport) {
    // NISTIR 6556, 3.5.3.2: from (7, 7), "G17 G2 x10 y16 i3 j4" has its centre at (10, 11) and a radius of 5.
    // The way from (7, 7) clockwise to (10, 16): from 233.13 to 90 degrees, so 143.13 degrees of 5.
    const std::string text =
        "M5\nG21 G17 G40 G90 G94\nG0 X7 Y7\nM3\nG4 P0.5\nG2 x10 y16 i3 j4 F600\nM5\nM2\n";
    const json report = readBy("cut_read.py", ".ngc", {text}).front();
    ASSERT_EQ(report["paths"].size(), 1u);
    const double sweep = std::atan2(-4, -3) + 2 * std::numbers::pi - std::numbers::pi / 2;
    EXPECT_NEAR(report["paths"][0]["length"], 5 * sweep, 1e-12);
    for (const json& place : report["paths"][0]["places"])
        EXPECT_NEAR(std::hypot(place[0].get<double>() - 10, place[1].get<double>() - 11), 5, 1e-12);
}

TEST(Rs274, OnThePlatesOwnOriginItLiesWhereTheDrawingHasIt) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    Rs274Options options;
    options.datum = Datum::PlateOrigin;
    const json report = readBy("cut_read.py", ".ngc", {programOf(path, options)}).front();
    EXPECT_LT(apart(report, path.burns, {}), kMetricTrue);
}

TEST(Rs274, AHairOfAnArcNeverBecomesACircle) {
    // Ends closer than the last place written: with I and J that would be a full turn (NISTIR 6556, 3.5.3.2).
    for (const double hair : {1e-3, 1e-4, 3e-5, 1e-6}) {
        CutPath path = pathOf(testing::threeQuarterPie().region, 6);
        Burn& burn = path.burns.front();
        const shape::Vertex first = burn.loop.vertices.front();
        const Point along = burn.loop.side(0).tangentAt(0);
        burn.loop.vertices.front().at = first.at + along * hair;
        burn.loop.vertices.insert(burn.loop.vertices.begin(), {first.at, 0.3});
        const json report = readBy("cut_read.py", ".ngc", {programOf(path, {})}).front();
        EXPECT_LT(apart(report, path.burns, shiftOf(path)), 2 * kMetricTrue) << hair;
    }
}

TEST(Rs274, HeightsAreWrittenOnlyWhenAsked) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    Rs274Options options;
    EXPECT_EQ(programOf(path, options).find('Z'), std::string::npos);
    options.heights = TorchHeights{Length::fromMm(20), Length::fromMm(4), Length::fromMm(1.5)};
    const std::string text = programOf(path, options);
    readBy("rs274_run.py", ".ngc", {text});
    const std::size_t lift = text.find("G0 Z20.0\nG0 X"), pierce = text.find("\nG0 Z4.0\nM3\nG4 P"),
                      cut = text.find("\nG1 Z1.5 F");
    EXPECT_LT(lift, pierce);
    EXPECT_LT(pierce, cut);
    EXPECT_NE(cut, std::string::npos);
    EXPECT_NE(text.find("G0 Z20.0\nM5\nM2\n"), std::string::npos);
}

TEST(Rs274, TorchWordsAreTheTablesOwnAndNothingElse) {
    const CutPath path = pathOf(testing::ringOfSix().region, 12);
    Rs274Options options;
    options.torchOn = "M64 P0";
    options.torchOff = "M65 P0";
    const std::string text = programOf(path, options);
    EXPECT_NE(text.find("\nM64 P0\nG4 P"), std::string::npos);
    EXPECT_EQ(text.find("M3\n"), std::string::npos);
    for (const char* bad : {"", "M3\nM5", "(M3", "m3;", "M3 (x)"}) {
        options.torchOn = bad;
        EXPECT_FALSE(toRs274(path, options).ok()) << bad;
    }
}

TEST(Rs274, EndsAndBeginsWithTheTorchOff) {
    const std::string text = programOf(pathOf(testing::ringOfSix().region, 12), {});
    EXPECT_LT(text.find("\nM5\n"), text.find("\nG0"));
    EXPECT_EQ(text.substr(text.size() - 6), "M5\nM2\n");
}

TEST(CutFilesAlike, TheSamePathGivesTheSameBytes) {
    const shape::Region region = testing::ringOfSix().region;
    EXPECT_EQ(programOf(pathOf(region, 12), {}), programOf(pathOf(region, 12), {}));
    EXPECT_EQ(toDxf(pathOf(region, 12)), toDxf(pathOf(region, 12)));
    EXPECT_EQ(toSvg(pathOf(region, 12)), toSvg(pathOf(region, 12)));
}

} // namespace
} // namespace pw::exchange
