#include "geometry/exchange/dxf.h"

#include "tests/support/comma_desktop.h"
#include "tests/support/hostile_texts.h"
#include "tests/support/plates.h"
#include "tests/support/run.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <memory>
#include <nlohmann/json.hpp>
#include <sstream>

namespace pw::exchange {
namespace {

using nlohmann::json;

/// The writer keeps ten places of a drawing unit.
constexpr double kPlace = 1e-9;

/// The strict reader's report on each drawing; `option` goes before the files.
std::vector<json> readBackAll(const std::vector<std::string>& drawings, const std::string& option = "") {
    std::vector<std::unique_ptr<testing::FileForTest>> files;
    std::string command = "/usr/bin/python3 '" PW_SUPPORT "/dxf_check.py' " + option;
    for (const std::string& dxf : drawings) {
        files.push_back(std::make_unique<testing::FileForTest>(".dxf", dxf));
        command += " '" + files.back()->path() + "'";
    }
    const testing::Ran ran = testing::run(command);
    EXPECT_EQ(ran.status, 0);
    std::vector<json> reports;
    std::istringstream lines(ran.output);
    for (std::string line; std::getline(lines, line);) {
        reports.push_back(json::parse(line));
        EXPECT_EQ(reports.back()["problems"], json::array());
    }
    EXPECT_EQ(reports.size(), drawings.size());
    reports.resize(drawings.size());
    return reports;
}

json readBack(const std::string& dxf, const std::string& option = "") {
    return readBackAll({dxf}, option).front();
}

CutPlan planOf(const testing::KnownPlate& plate, job::Process process = job::Process::PlasmaTable) {
    CutSettings settings;
    settings.process = process;
    settings.thickness = Length::fromMm(plate.thickness);
    settings.kerf = Length::fromMm(1.5);
    return makeCutPlan(plate.region, settings);
}

std::vector<std::string> drawingsOfKnownPlates(const DxfOptions& options) {
    std::vector<std::string> drawings;
    for (const testing::KnownPlate& plate : testing::knownPlates())
        drawings.push_back(toDxf(planOf(plate), options));
    return drawings;
}

/// Area inside a closed row of corners with bulges, by the trapezoids of the chords and the circle segments
/// beyond them: r^2 (a - sin a) / 2 with a the arc's angle.
double areaByBulge(const json& vertices) {
    double area = 0;
    for (std::size_t i = 0; i < vertices.size(); ++i) {
        const json& p = vertices[i];
        const json& q = vertices[(i + 1) % vertices.size()];
        const double x0 = p[0], y0 = p[1], x1 = q[0], y1 = q[1], angle = 4 * std::atan(p[2].get<double>());
        area += (x0 * y1 - x1 * y0) / 2;
        if (angle != 0) {
            const double radius = std::hypot(x1 - x0, y1 - y0) / 2 / std::sin(angle / 2);
            area += radius * radius / 2 * (angle - std::sin(angle));
        }
    }
    return area;
}

std::vector<json> on(const json& report, const std::string& layer, const std::string& type = "") {
    std::vector<json> found;
    for (const json& entity : report["entities"])
        if (entity["layer"] == layer && (type.empty() || entity["type"] == type))
            found.push_back(entity);
    return found;
}

double areaOf(const json& entity) {
    return entity["type"] == "CIRCLE" ? testing::discArea(entity["radius"]) : areaByBulge(entity["vertices"]);
}

struct Way {
    DxfVersion version;
    units::System units;
};

class DxfEachWay : public ::testing::TestWithParam<Way> {
protected:
    DxfOptions options() const {
        DxfOptions options;
        options.version = GetParam().version;
        options.units = GetParam().units;
        options.title = "Bench plate 7";
        return options;
    }
    double unit() const { return GetParam().units == units::System::Inch ? 25.4 : 1; } // mm
};

TEST_P(DxfEachWay, EveryCutIsWhereTheRegionHasIt) {
    const std::vector<json> reports = readBackAll(drawingsOfKnownPlates(options()));
    for (std::size_t each = 0; each < reports.size(); ++each) {
        const testing::KnownPlate plate = testing::knownPlates()[each];
        SCOPED_TRACE(plate.name);
        const CutPlan plan = planOf(plate);
        const json& report = reports[each];
        std::vector<json> cuts = on(report, kLayerInside);
        ASSERT_EQ(cuts.size(), plan.inside.size());
        const std::vector<json> outside = on(report, kLayerOutside);
        ASSERT_EQ(outside.size(), 1u);
        cuts.push_back(outside[0]);
        for (std::size_t i = 0; i < cuts.size(); ++i) {
            const shape::Loop& loop = i < plan.inside.size() ? plan.inside[i].loop : plate.region.rim;
            EXPECT_NEAR(areaOf(cuts[i]) * unit() * unit(), signedArea(loop), 1e-4);
            if (const auto circle = asCircle(loop)) {
                ASSERT_EQ(cuts[i]["type"], "CIRCLE");
                EXPECT_NEAR(cuts[i]["x"], circle->centre.x / unit(), kPlace);
                EXPECT_NEAR(cuts[i]["y"], circle->centre.y / unit(), kPlace);
                EXPECT_NEAR(cuts[i]["radius"], circle->radius / unit(), kPlace);
                continue;
            }
            ASSERT_EQ(cuts[i]["type"], "LWPOLYLINE");
            EXPECT_TRUE(cuts[i]["closed"]);
            ASSERT_EQ(cuts[i]["vertices"].size(), loop.size());
            for (std::size_t k = 0; k < loop.size(); ++k) {
                EXPECT_NEAR(cuts[i]["vertices"][k][0], loop.vertices[k].at.x / unit(), kPlace);
                EXPECT_NEAR(cuts[i]["vertices"][k][1], loop.vertices[k].at.y / unit(), kPlace);
                EXPECT_NEAR(cuts[i]["vertices"][k][2], loop.vertices[k].bulge, 1e-12);
            }
        }
    }
}

TEST_P(DxfEachWay, CutsAndDrilledHolesLeaveTheKnownArea) {
    const std::vector<json> reports = readBackAll(drawingsOfKnownPlates(options()));
    for (std::size_t each = 0; each < reports.size(); ++each) {
        const testing::KnownPlate plate = testing::knownPlates()[each];
        SCOPED_TRACE(plate.name);
        const json& report = reports[each];
        double area = 0;
        for (const json& entity : on(report, kLayerOutside))
            area += areaOf(entity);
        for (const json& entity : on(report, kLayerInside))
            area -= areaOf(entity);
        for (const json& entity : on(report, kLayerDrill, "CIRCLE"))
            area -= areaOf(entity);
        // Ten places of an inch on a rim of half a metre: far under 1e-4 mm2.
        EXPECT_NEAR(area * unit() * unit(), plate.area, 1e-4);
    }
}

TEST_P(DxfEachWay, TheReaderNoticesEverySpoiledFile) {
    const json report = readBack(toDxf(planOf(testing::ringOfSix()), options()), "--controls");
    EXPECT_GE(report["controls"], 12);
}

TEST_P(DxfEachWay, SaysItsUnitsAndThicknessInWords) {
    const json report = readBack(toDxf(planOf(testing::barWithOpenSlots()), options()));
    std::string words;
    for (const json& note : on(report, kLayerNote, "TEXT"))
        words += note["text"].get<std::string>() + "\n";
    const bool inch = GetParam().units == units::System::Inch;
    EXPECT_NE(words.find("Bench plate 7"), std::string::npos) << words;
    EXPECT_NE(words.find(inch ? "Units: inch" : "Units: mm"), std::string::npos) << words;
    EXPECT_NE(words.find(inch ? "0.375 in thick" : "9.53 mm thick"), std::string::npos)
        << words; // 9.525 mm = 3/8 in
}

TEST_P(DxfEachWay, CarriesItsUnitsWhereTheVersionCan) {
    const json report = readBack(toDxf(planOf(testing::ringOfSix()), options()));
    const bool r12 = GetParam().version == DxfVersion::R12;
    EXPECT_EQ(report["version"], r12 ? "AC1009" : "AC1015");
    // DXF reference, $INSUNITS: 1 inches, 4 millimetres. R12 has none.
    EXPECT_EQ(report["units"], r12 ? 0 : GetParam().units == units::System::Inch ? 1 : 4);
}

TEST_P(DxfEachWay, HostileTitlesAndWarningsLeaveASoundFile) {
    std::vector<std::string> drawings;
    for (const std::string& text : testing::hostileTexts()) {
        DxfOptions hostile = options();
        hostile.title = text;
        hostile.warning = text;
        drawings.push_back(toDxf(planOf(testing::threeQuarterPie()), hostile));
    }
    for (const json& report : readBackAll(drawings))
        EXPECT_EQ(on(report, kLayerOutside).size(), 1u);
}

TEST_P(DxfEachWay, ReadsTheSameOnADesktopWithADecimalComma) {
    const CutPlan plan = planOf(testing::barWithOpenSlots());
    const std::string before = toDxf(plan, options());
    const testing::CommaDesktop comma;
    EXPECT_EQ(toDxf(plan, options()), before);
}

INSTANTIATE_TEST_SUITE_P(Versions, DxfEachWay,
                         ::testing::Values(Way{DxfVersion::R2000, units::System::Metric},
                                           Way{DxfVersion::R2000, units::System::Inch},
                                           Way{DxfVersion::R12, units::System::Metric},
                                           Way{DxfVersion::R12, units::System::Inch}));

TEST(Dxf, InsidesStandBeforeTheOutsideAndDrillMarksBeforeBoth) {
    const json report = readBack(toDxf(planOf(testing::ringOfSix())));
    const std::vector<std::string> order = {kLayerDrill, kLayerInside, kLayerOutside, kLayerNote};
    std::size_t reached = 0;
    for (const json& entity : report["entities"]) {
        const auto at =
            static_cast<std::size_t>(std::find(order.begin(), order.end(), entity["layer"]) - order.begin());
        ASSERT_LT(at, order.size());
        EXPECT_GE(at, reached);
        reached = std::max(reached, at);
    }
    EXPECT_EQ(reached, order.size() - 1);
}

TEST(Dxf, ADrilledHoleIsAPointACrossAndItsCircleOnTheDrillLayer) {
    const json report = readBack(toDxf(planOf(testing::ringOfSix()))); // 6 mm hole in 12 mm plate
    const std::vector<json> points = on(report, kLayerDrill, "POINT");
    ASSERT_EQ(points.size(), 1u);
    EXPECT_NEAR(points[0]["x"], 25, kPlace);
    EXPECT_NEAR(points[0]["y"], 14, kPlace);
    const std::vector<json> lines = on(report, kLayerDrill, "LINE");
    ASSERT_EQ(lines.size(), 2u);
    for (const json& line : lines) {
        EXPECT_NEAR((line["x"].get<double>() + line["x2"].get<double>()) / 2, 25, kPlace);
        EXPECT_NEAR((line["y"].get<double>() + line["y2"].get<double>()) / 2, 14, kPlace);
        EXPECT_LT(std::hypot(line["x2"].get<double>() - line["x"].get<double>(),
                             line["y2"].get<double>() - line["y"].get<double>()),
                  6); // a burned cross would still be drilled away
    }
    const std::vector<json> circles = on(report, kLayerDrill, "CIRCLE");
    ASSERT_EQ(circles.size(), 1u);
    EXPECT_NEAR(circles[0]["radius"], 3, kPlace);
}

TEST(Dxf, TheCircleRoundADrillMarkCanBeLeftOut) {
    DxfOptions options;
    options.drillCircles = false;
    const json report = readBack(toDxf(planOf(testing::ringOfSix()), options));
    EXPECT_TRUE(on(report, kLayerDrill, "CIRCLE").empty());
    EXPECT_EQ(on(report, kLayerDrill, "POINT").size(), 1u);
}

TEST(Dxf, ASawnPlateHasNoRoundCutInside) {
    const json report = readBack(toDxf(planOf(testing::ringOfSix(), job::Process::SawAndDrill)));
    EXPECT_TRUE(on(report, kLayerInside, "CIRCLE").empty());
    EXPECT_EQ(on(report, kLayerDrill, "POINT").size(), 8u);
}

TEST(Dxf, NoWordTouchesThePlate) {
    DxfOptions options;
    options.title = "A title";
    options.warning = "Does not hold";
    const std::vector<json> reports = readBackAll(drawingsOfKnownPlates(options));
    for (std::size_t each = 0; each < reports.size(); ++each) {
        const testing::KnownPlate plate = testing::knownPlates()[each];
        const std::vector<json> notes = on(reports[each], kLayerNote);
        EXPECT_GE(notes.size(), 3u);
        for (const json& note : notes) {
            const double y = note["y"], height = note["height"];
            // Signs such as g reach a third of their height under the line.
            EXPECT_TRUE(y + height < plate.box.low.y || y - height / 3 > plate.box.high.y) << note;
        }
    }
}

TEST(Dxf, TheWarningStandsAboveThePlateAndIsTheLargestText) {
    DxfOptions options;
    options.title = "A title";
    const std::string plain = toDxf(planOf(testing::ringOfSix()), options);
    options.warning =
        "NOT STRONG ENOUGH. The plate sets: make it from 12 mm or more before it is used for anything";
    const json report = readBack(toDxf(planOf(testing::ringOfSix()), options));
    EXPECT_EQ(plain.find("NOT STRONG"), std::string::npos);
    std::string above;
    double leastAbove = 1e9, mostBelow = 0;
    for (const json& note : on(report, kLayerNote)) {
        if (note["y"] > 70) {
            above += note["text"].get<std::string>() + " ";
            leastAbove = std::min<double>(leastAbove, note["height"]);
        } else {
            mostBelow = std::max<double>(mostBelow, note["height"]);
        }
    }
    EXPECT_EQ(above, options.warning + " "); // wrapped, no word lost
    EXPECT_GT(leastAbove, mostBelow);
}

TEST(Dxf, TheTapIsNamedWithItsDrill) {
    CutSettings settings;
    settings.thickness = Length::fromMm(12);
    settings.tappedBore = TappedBore{"M20", Length::fromMm(17.5)};
    const json report = readBack(toDxf(makeCutPlan(testing::ringOfSix().region, settings)));
    std::string words;
    for (const json& note : on(report, kLayerNote))
        words += note["text"].get<std::string>() + "\n";
    EXPECT_NE(words.find("Drill 1 x %%c17.5 mm: tap M20"), std::string::npos) << words;
}

TEST(Dxf, TheSamePlanGivesTheSameBytes) {
    const CutPlan plan = planOf(testing::ringOfSix());
    EXPECT_EQ(toDxf(plan), toDxf(plan));
}

} // namespace
} // namespace pw::exchange
