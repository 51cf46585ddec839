#include "core/jobfile/read.h"

#include "core/jobfile/json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

namespace pw::jobfile {
namespace {

using units::Angle;
using units::Force;
using units::Length;

/// A job with nothing wrong, to spoil one figure at a time.
Tree soundJob() {
    const auto tree = fromJson(R"({
        "platewright": 1, "title": "ring", "notes": "n", "work": "compress",
        "stations": {"count": 6, "circle": "100 mm", "start": "15 deg", "access_hole": "24 mm",
                     "hole": {"shape": "slot", "length": "30 mm", "width": "24 mm", "turn": 90},
                     "land": 36, "retainer": "36 mm", "keeper": "18 mm", "pin": "12 mm", "pin_end": "9 mm",
                     "loaded": [true, true, false, true, true, true],
                     "readings": [{"pins": [1, 2], "over": "62 mm", "between": "38 mm"}, {"pins": [1, 4]}]},
        "load": {"share": [1, 1, 0, 1, 1, 1]},
        "springs": [{"name": "outer", "per_station": 1, "assembled_length": "60 mm",
                     "loads": [{"length": "60 mm", "force": ["650 N", "725 N"]}, {"length": "55 mm", "force": 800}],
                     "rate": "12 N/mm", "free_length": "110 mm", "solid_length": "45 mm", "wire": "5 mm",
                     "coil_outside": "32 mm", "active_coils": 7, "total_coils": 9, "ends": "closed ground",
                     "G": "79 GPa", "wire_material": "music wire"}],
        "travel": {"compress_further": "4 mm", "swell": "0 mm"},
        "plate": {"outline": {"shape": "disc", "diameter": "160 mm"}, "thickness": "12 mm", "stacked": 1,
                  "bore": "21 mm", "holes": [{"at": ["10 mm", "-50 mm"], "diameter": "8 mm", "shape": "round",
                                               "made": "drilled"}],
                  "steel": "unknown scrap", "tests": {"file": "bites", "bend": "bent", "cracks": "none"}},
        "centre": {"bearing_outside": "44 mm", "bearing_inside": "21 mm", "contact": "hard"},
        "screw": {"thread": "M20", "grade": "8.8", "nut_grade": "8", "turns": "nut", "into": "shaft",
                  "into_material": "1045", "thread_condition": "worn", "engagement": "24 mm", "standoff": "30 mm",
                  "usable_length": "180 mm", "free_length": "150 mm", "nut_height": "16 mm",
                  "washer_outside": "37 mm", "washer_thickness": "4 mm", "point_diameter": "16 mm",
                  "lubrication": "oiled", "thread_friction": 0.15, "collar_friction": [0.1, 0.2],
                  "wrench": "300 mm", "hand_pull": "250 N", "hammering": true},
        "ram": {"capacity": "12 t", "area": "1600 mm2", "max_pressure": "700 bar", "rod": "M24", "rod_grade": "8.8",
                "stroke": "50 mm"},
        "back": {"kind": "bar", "span": "200 mm", "width": "50 mm", "thickness": "20 mm", "steel": "S235"},
        "hub": {"fit": "taper", "shaft": "60 mm", "shaft_bore": "0 mm", "length": "70 mm", "outside": "110 mm",
                "interference": ["0.03 mm", "0.08 mm"], "half_angle": "3 deg", "draw": "1 mm",
                "hub_material": "cast iron", "shaft_material": {"name": "mine", "yield": "300 MPa",
                "ultimate": "450 MPa", "E": "205 GPa", "nu": 0.29, "density": 7850},
                "friction": [0.12, 0.20], "rust": 1.5, "force": "20-30 kN",
                "bolts": {"count": 4, "thread": "M12", "grade": "8.8", "engagement": "18 mm"},
                "flange": {"outside": "160 mm", "root": "90 mm", "thickness": "12 mm", "material": "cast iron"},
                "jaws": {"count": 3, "width": "20 mm", "overlap": "15 mm"}},
        "legs": {"count": 2, "span": "180 mm", "thread": "M16", "grade": "8.8", "length": "250 mm"},
        "heat": {"part": "20 C", "tool": "68 F"},
        "keep_clear": [{"at": ["90 mm", "0 mm"], "diameter": "20 mm", "note": "stud"}],
        "rack": "rack.json",
        "cutting": {"process": "torch table", "kerf": "1.5 mm", "layout_error": "0.5 mm", "growth": "0.3 mm"},
        "wanted": {"margin": 2.0, "set_limit": "0.02 mm", "stamp": "8000 N"}
    })");
    EXPECT_TRUE(tree) << (tree ? "" : tree.problem().message);
    return *tree;
}

Reading readWith(std::string_view path, Tree value) {
    Tree tree = soundJob();
    tree.set(path, std::move(value));
    return readJob(tree);
}

/// One figure is spoilt: exactly one problem, with the field's path, and each of the words in its message.
void expectProblem(std::string_view path, Tree value, std::initializer_list<std::string_view> words,
                   std::string_view field = {}) {
    const Reading reading = readWith(path, std::move(value));
    ASSERT_EQ(reading.problems.size(), 1u) << path << "\n" << util::toText(reading.problems);
    EXPECT_EQ(reading.problems[0].field, field.empty() ? path : field);
    for (const std::string_view word : words)
        EXPECT_NE(reading.problems[0].message.find(word), std::string::npos)
            << util::toText(reading.problems) << "should say: " << word;
}

TEST(ReadJob, EveryKeyOfTheFileIsKnownAndArrives) {
    const Reading reading = readJob(soundJob());
    EXPECT_EQ(util::toText(reading.problems), "");
    EXPECT_TRUE(reading.unknownKeys.empty());
    const job::Job& job = reading.job;
    EXPECT_EQ(job.title, "ring");
    EXPECT_EQ(job.work, job::Work::Compress);
    EXPECT_EQ(job.stations.count, 6);
    EXPECT_EQ(job.stations.circle, Length::fromMm(100));
    EXPECT_NEAR(job.stations.start->degree(), 15, 1e-12);
    EXPECT_EQ(job.stations.hole.shape, job::HoleShape::Slot);
    EXPECT_NEAR(job.stations.hole.turn->degree(), 90, 1e-12);
    EXPECT_EQ(job.stations.land, Length::fromMm(36));
    EXPECT_EQ(job.stations.pinEnd, Length::fromMm(9));
    EXPECT_EQ(job.stations.loaded, (std::vector<bool>{true, true, false, true, true, true}));
    ASSERT_EQ(job.stations.readings.size(), 2u);
    EXPECT_EQ(job.stations.readings[0].second, 2);
    EXPECT_EQ(job.stations.readings[0].over, Length::fromMm(62));
    EXPECT_EQ(job.stations.readings[0].between, Length::fromMm(38));
    EXPECT_FALSE(job.stations.readings[1].over);
    EXPECT_EQ(job.load.share, (std::vector<double>{1, 1, 0, 1, 1, 1}));
    ASSERT_EQ(job.springs.size(), 1u);
    ASSERT_EQ(job.springs[0].loads.size(), 2u);
    EXPECT_EQ(job.springs[0].loads[0].force, (units::Range<Force>{Force::fromN(650), Force::fromN(725)}));
    EXPECT_EQ(job.springs[0].loads[1].force, units::Range<Force>::exactly(Force::fromN(800)));
    EXPECT_EQ(job.springs[0].ends, "closed ground");
    EXPECT_EQ(job.springs[0].shearModulus, units::Stress::fromMpa(79000));
    EXPECT_EQ(job.springs[0].totalCoils, 9);
    EXPECT_EQ(job.travel.compressFurther, Length::fromMm(4));
    EXPECT_EQ(job.travel.swell, Length::fromMm(0));
    EXPECT_EQ(job.plate.outline->diameter, Length::fromMm(160));
    EXPECT_EQ(job.plate.thickness, Length::fromMm(12));
    ASSERT_EQ(job.plate.holes.size(), 1u);
    EXPECT_EQ(job.plate.holes[0].at.y, Length::fromMm(-50));
    EXPECT_TRUE(job.plate.holes[0].drilled);
    EXPECT_EQ(job.plate.steel->name, "unknown scrap");
    EXPECT_EQ(job.plate.tests.cracks, job::CrackTest::None);
    EXPECT_EQ(job.centre.contact, job::Contact::Hard);
    EXPECT_EQ(job.screw->thread, "M20");
    EXPECT_EQ(job.screw->threadCondition, job::ThreadCondition::Worn);
    EXPECT_EQ(job.screw->collarFriction, (units::Range<double>{0.1, 0.2}));
    EXPECT_TRUE(job.screw->hammering);
    EXPECT_EQ(job.ram->maxPressure, units::Stress::fromMpa(70));
    EXPECT_EQ(job.back->kind, job::BackKind::Bar);
    EXPECT_EQ(job.hub->fit, job::Fit::Taper);
    EXPECT_EQ(job.hub->interference->high, Length::fromMm(0.08));
    EXPECT_EQ(job.hub->shaftMaterial->yield, units::Stress::fromMpa(300));
    EXPECT_EQ(job.hub->force->high, Force::fromN(30000));
    EXPECT_EQ(job.hub->bolts->count, 4);
    EXPECT_EQ(job.hub->flange->root, Length::fromMm(90));
    EXPECT_EQ(job.hub->jaws->overlap, Length::fromMm(15));
    EXPECT_EQ(job.legs->length, Length::fromMm(250));
    EXPECT_NEAR(job.heat.tool->celsius(), 20, 1e-9);
    ASSERT_EQ(job.keepClear.size(), 1u);
    EXPECT_EQ(job.keepClear[0].note, "stud");
    EXPECT_EQ(job.rack, "rack.json");
    EXPECT_EQ(job.cutting.process, job::Process::TorchTable);
    EXPECT_EQ(job.wanted.margin, 2.0);
    EXPECT_EQ(job.wanted.stamp, Force::fromN(8000));
    EXPECT_EQ(job.preferred, units::System::Metric);
}

TEST(ReadJob, AMissingFigureIsNoProblemAndStaysEmpty) {
    for (const std::string_view path :
         {"work", "stations", "stations.count", "stations.circle", "plate", "plate.thickness",
          "plate.outline", "springs", "springs[0].loads", "screw", "plate.steel", "load", "screw.thread"}) {
        Tree tree = soundJob();
        ASSERT_TRUE(tree.erase("load.share"));
        ASSERT_TRUE(tree.erase("stations.loaded"));
        tree.erase(path);
        const Reading reading = readJob(tree);
        EXPECT_EQ(util::toText(reading.problems), "") << "without " << path;
    }
    Tree tree;
    tree.set("platewright", 1);
    const Reading reading = readJob(tree);
    EXPECT_TRUE(reading.problems.empty());
    EXPECT_EQ(reading.job, job::Job());
}

TEST(ReadJob, NullCountsAsLeftOut) {
    const Reading reading = readWith("plate.thickness", nullptr);
    EXPECT_TRUE(reading.problems.empty());
    EXPECT_FALSE(reading.job.plate.thickness);
}

TEST(ReadJob, EveryWrongFigureIsListedNotOnlyTheFirst) {
    Tree tree = soundJob();
    tree.set("stations.circle", "-100 mm");
    tree.set("plate.thickness", "12");
    tree.set("screw.lubrication", "butter");
    tree.set("springs[0].rate", true);
    const Reading reading = readJob(tree);
    std::vector<std::string> fields;
    for (const auto& problem : reading.problems)
        fields.push_back(problem.field);
    std::ranges::sort(fields);
    EXPECT_EQ(fields, (std::vector<std::string>{"plate.thickness", "screw.lubrication", "springs[0].rate",
                                                "stations.circle"}));
    EXPECT_FALSE(reading.job.stations.circle);
    EXPECT_FALSE(reading.job.plate.thickness);
    EXPECT_FALSE(reading.job.screw->lubrication);
    EXPECT_EQ(reading.job.stations.count, 6);
}

TEST(ReadJob, AStringWithoutAUnitNamesFieldTextAndExample) {
    expectProblem("plate.thickness", "12", {"\"12\"", "unit", "3/4 in"});
    expectProblem("plate.thickness", "12 N", {"\"12 N\"", "3/4 in"});
    expectProblem("plate.thickness", "", {"3/4 in"});
    expectProblem("plate.thickness", "thick", {"\"thick\"", "3/4 in"});
    expectProblem("plate.thickness", "12,5 mm", {"\"12,5 mm\"", "point"});
    expectProblem("springs[0].rate", "12 N", {"\"12 N\"", "N/mm"});
    expectProblem("springs[0].loads[0].force", "650-725", {"\"650-725\"", "lbf"});
}

TEST(ReadJob, NegativeZeroAndHugeFiguresAreRefused) {
    for (const std::string_view path : {"plate.thickness", "stations.circle", "stations.access_hole",
                                        "stations.land", "plate.outline.diameter", "springs[0].wire"}) {
        expectProblem(path, "-12 mm", {"\"-12 mm\"", "out of range", "0.1 mm"});
        expectProblem(path, "0 mm", {"\"0 mm\"", "out of range"});
        expectProblem(path, 0, {"0", "out of range"});
        expectProblem(path, "12 km", {"12 km"});
        expectProblem(path, "11 m", {"\"11 m\"", "10 m"});
        expectProblem(path, 1e300, {"1e+300", "out of range"});
    }
    expectProblem("springs[0].loads[0].force", 0, {"0", "more than 0 N"});
    expectProblem("springs[0].loads[0].force", "0 lbf", {"\"0 lbf\"", "more than 0 N"});
    expectProblem("ram.capacity", "-3 t", {"\"-3 t\""});
    expectProblem("travel.swell", "-1 mm", {"\"-1 mm\"", "from 0 mm"});
    expectProblem("wanted.margin", -2, {"-2", "from 1 to 20"});
    expectProblem("screw.thread_friction", 0, {"0", "0.01"});
    expectProblem("plate.stacked", 0, {"0", "from 1"});
}

TEST(ReadJob, NotANumberIsRefused) {
    const double nan = std::numeric_limits<double>::quiet_NaN(),
                 infinite = std::numeric_limits<double>::infinity();
    expectProblem("plate.thickness", nan, {"out of range"});
    expectProblem("plate.thickness", infinite, {"out of range"});
    expectProblem("stations.count", nan, {"out of range"});
    expectProblem("hub.rust", infinite, {"out of range"});
    expectProblem("plate.thickness", "NaN mm", {"NaN mm"});
    EXPECT_EQ(readWith("platewright", nan).problems.size(), 1u);
}

TEST(ReadJob, AWrongTypeIsNamed) {
    expectProblem("plate.thickness", true, {"true", "length"});
    expectProblem("plate.thickness", Tree::List{1, 2}, {"a list", "length"});
    expectProblem("plate.thickness", Tree::object(), {"a group", "length"});
    expectProblem("plate", 5, {"group", "5"});
    expectProblem("plate", Tree::List{}, {"group", "a list"});
    expectProblem("springs", Tree::object(), {"list", "a group"});
    expectProblem("springs", "two", {"list", "\"two\""});
    expectProblem("springs[0]", 3, {"group", "3"});
    expectProblem("title", 3, {"text", "3"});
    expectProblem("screw.hammering", "yes", {"true or false", "\"yes\""});
    expectProblem("stations.count", "6", {"number", "\"6\""});
    expectProblem("stations.count", 5.5, {"whole", "5.5"});
    expectProblem("stations.loaded", Tree::List{1, 0}, {"true or false"});
    expectProblem("load.share", Tree::List{"a"}, {"number"}, "load.share[0]");
    expectProblem("hub.friction", "slippery", {"number"});
    expectProblem("work", 1, {"compress, pull"});
}

TEST(ReadJob, AWordNobodyKnowsComesWithTheListOfThoseThatAreKnown) {
    expectProblem("work", "squeeze", {"\"squeeze\"", "compress, pull"});
    expectProblem("work", "compres", {"did you mean \"compress\""});
    expectProblem("plate.outline.shape", "dics", {"disc, bar, rectangle, polygon", "did you mean \"disc\""});
    expectProblem("plate.tests.file", "bit", {"bites, skates"});
    expectProblem("cutting.process", "laser",
                  {"plasma table, torch table, hand torch, saw and drill, milled"});
    expectProblem("screw.thread_condition", "fine", {"good, worn, rusty, damaged"});
    expectProblem("hub.fit", "rust-only", {"straight, taper, rust only"});
    expectProblem("back.kind", "beam", {"shaft, bar, block, stop bolt, none"});
    expectProblem("springs[0].ends", "open", {"closed ground, closed, plain ground, plain"});
}

TEST(ReadJob, AThreadNobodyCanReadIsRefused) {
    for (const std::string_view path :
         {"screw.thread", "plate.bore_thread", "ram.rod", "hub.bolts.thread", "legs.thread"}) {
        expectProblem(path, "M2OO", {"M2OO", "M20"});
        expectProblem(path, "5/8", {"\"5/8\"", "5/8-11"});
        expectProblem(path, 20, {"text", "20"});
    }
    EXPECT_TRUE(readWith("screw.thread", "5/8-18 UNF").problems.empty());
    EXPECT_TRUE(readWith("screw.thread", "1-1/4-7").problems.empty());
    EXPECT_TRUE(readWith("screw.thread", "Tr 24x5").problems.empty());
}

TEST(ReadJob, AMaterialOrGradeOutsideTheTablesIsRefused) {
    for (const std::string_view path :
         {"plate.steel", "screw.into_material", "back.steel", "hub.hub_material", "hub.flange.material"})
        expectProblem(path, "unobtainium", {"\"unobtainium\""});
    expectProblem("plate.steel", "S253", {"\"S253\"", "S235"});
    expectProblem("plate.steel", Tree(Tree::Object{{"name", "S253"}}), {"S235"});
    expectProblem("hub.shaft_material.nu", 0.7, {"0.7", "0.499"});
    expectProblem("hub.shaft_material.expansion", 12, {"12 is out of range", "12e-6"}); // meant 12e-6
    EXPECT_EQ(readWith("hub.shaft_material.expansion", 11e-6).job.hub->shaftMaterial->expansion, 11e-6);
    for (const std::string_view path : {"screw.grade", "ram.rod_grade", "hub.bolts.grade", "legs.grade"})
        expectProblem(path, "8.9", {"\"8.9\"", "8.8"});
    expectProblem("screw.nut_grade", "soft", {"\"soft\""});
    for (const char* grade : {"10.9", "B7", "SAE 5", "unknown"})
        EXPECT_TRUE(readWith("screw.grade", grade).problems.empty()) << grade;
    for (const char* steel : {"S355", "A36", "cast iron", "1018"})
        EXPECT_TRUE(readWith("plate.steel", steel).problems.empty()) << steel;
}

TEST(ReadJob, NoneOrTooManyStationsAreRefused) {
    expectProblem("stations.count", 0, {"0", "from 1 to 200"});
    expectProblem("stations.count", -6, {"-6", "from 1 to 200"});
    expectProblem("stations.count", 1000, {"1000", "from 1 to 200"});
    Tree tree = soundJob();
    for (const char* key :
         {"stations.count", "stations.circle", "stations.start", "stations.loaded", "load.share"})
        ASSERT_TRUE(tree.erase(key));
    for (std::size_t i = 0; i < 1000; ++i)
        tree.set("stations.at[" + std::to_string(i) + "]", Tree::List{50, 0});
    const Reading reading = readJob(tree);
    ASSERT_EQ(reading.problems.size(), 1u);
    EXPECT_EQ(reading.problems[0].field, "stations.at");
    EXPECT_NE(reading.problems[0].message.find("1000"), std::string::npos);
    EXPECT_TRUE(reading.job.stations.at.empty());
}

TEST(ReadJob, TwoWaysOfPlacingTheStationsContradict) {
    Tree tree = soundJob();
    for (const char* key : {"stations.start", "stations.loaded", "load.share"})
        ASSERT_TRUE(tree.erase(key));
    tree.set("stations.at", Tree::List{Tree::List{"50 mm", "0 mm"}, Tree::List{"-50 mm", "0 mm"}});
    tree.set("stations.count", 2);
    Reading reading = readJob(tree);
    ASSERT_EQ(reading.problems.size(), 1u);
    EXPECT_EQ(reading.problems[0].field, "stations.circle");
    EXPECT_NE(reading.problems[0].message.find("Both \"at\" and \"circle\""), std::string::npos);
    tree.erase("stations.circle");
    EXPECT_TRUE(readJob(tree).problems.empty());
    tree.set("stations.count", 3);
    reading = readJob(tree);
    ASSERT_EQ(reading.problems.size(), 1u);
    EXPECT_EQ(reading.problems[0].field, "stations.count");
}

TEST(ReadJob, ListsForTheStationsMustHaveOneEntryEach) {
    expectProblem("stations.loaded", Tree::List{true, true}, {"2 entries for 6 stations"});
    expectProblem("load.share", Tree::List{1, 1, 1}, {"3 entries for 6 stations"});
    expectProblem("stations.loaded", Tree::List{false, false, false, false, false, false},
                  {"No station is loaded"});
    expectProblem("load.share", Tree::List{0, 0, 0, 0, 0, 0}, {"Every share is 0"});
    expectProblem("load.share", Tree::List{1, 1, 1, 1, 1, -1}, {"-1"}, "load.share[5]");
}

TEST(ReadJob, ACaliperReadingNamesTwoPinsAndIsMoreOverThemThanBetween) {
    for (const auto& [key, value] :
         {std::pair{"stations.readings[0].pins", Tree(Tree::List{Tree(3), Tree(3)})},
          {"stations.readings[0].pins", Tree(Tree::List{Tree(1)})},
          {"stations.readings[0].pins", Tree(Tree::List{Tree(1), Tree(2.5)})},
          {"stations.readings[0].between", Tree("63 mm")},
          {"stations.readings[0].over", Tree("much")}}) {
        Tree tree = soundJob();
        tree.set(key, value);
        const Reading reading = readJob(tree);
        ASSERT_EQ(reading.problems.size(), 1u) << key;
        EXPECT_TRUE(reading.problems[0].field.starts_with(key)) << reading.problems[0].field;
    }
}

TEST(ReadJob, RangesMustRunFromLowToHigh) {
    expectProblem("springs[0].loads[0].force", Tree::List{"725 N", "650 N"},
                  {"\"725 N\"", "\"650 N\"", "swap"});
    expectProblem("springs[0].loads[0].force", "725-650 N", {"725-650 N"});
    expectProblem("springs[0].loads[0].force", Tree::List{"725 N"}, {"[low, high]"});
    expectProblem("hub.friction", Tree::List{0.3, 0.1}, {"0.3", "0.1", "swap"});
    expectProblem("hub.interference", Tree::List{1, 2, 3}, {"[low, high]"});
}

TEST(ReadJob, RangesComeAsTextToo) {
    const Reading reading = readWith("springs[0].loads[0].force", "150 lbf ±5%");
    ASSERT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
    EXPECT_NEAR(reading.job.springs[0].loads[0].force.low.lbf(), 142.5, 1e-9);
    EXPECT_NEAR(reading.job.springs[0].loads[0].force.high.lbf(), 157.5, 1e-9);
}

TEST(ReadJob, PolygonsTakeAllThreeWaysOfWritingACorner) {
    Tree outline;
    outline.set("shape", "polygon");
    outline.set("points", Tree::List{Tree::List{"1 in", "0 in"}, Tree::List{0, 30, 0.5},
                                     Tree(Tree::Object{{"at", Tree::List{-30, 0}}, {"bulge", -0.25}})});
    const Reading reading = readWith("plate.outline", outline);
    ASSERT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
    const auto& points = reading.job.plate.outline->points;
    ASSERT_EQ(points.size(), 3u);
    EXPECT_EQ(points[0], (shape::Vertex{{25.4, 0}, 0}));
    EXPECT_EQ(points[1], (shape::Vertex{{0, 30}, 0.5}));
    EXPECT_EQ(points[2], (shape::Vertex{{-30, 0}, -0.25}));
}

TEST(ReadJob, PolygonsWithTooFewOrBrokenCornersAreRefused) {
    const auto polygon = [](Tree points) {
        return Tree(Tree::Object{{"shape", "polygon"}, {"points", points}});
    };
    const Tree a = Tree::List{0, 0}, b = Tree::List{10, 0};
    expectProblem("plate.outline", polygon(Tree::List{a, b}), {"at least 3"}, "plate.outline.points");
    expectProblem("plate.outline", polygon(Tree::List{a, b, 5}), {"[x, y]", "5"}, "plate.outline.points[2]");
    expectProblem("plate.outline", polygon(Tree::List{a, b, Tree::List{1}}), {"list of 1"},
                  "plate.outline.points[2]");
    expectProblem("plate.outline", polygon(Tree::List{a, b, Tree::List{1, "2"}}), {"\"2\"", "unit"},
                  "plate.outline.points[2][1]");
    expectProblem("plate.outline", polygon(Tree::List{a, b, Tree::List{1, 2, 1e9}}), {"1e+09"},
                  "plate.outline.points[2][2]");
    EXPECT_FALSE(readWith("plate.outline", polygon(Tree::List{a, b})).job.plate.outline);
}

TEST(ReadJob, AnOutlineMustSayItsShape) {
    expectProblem("plate.outline", Tree(Tree::Object{{"diameter", "140 mm"}}),
                  {"disc, bar, rectangle, polygon"}, "plate.outline.shape");
}

TEST(ReadJob, HalfAReadingOrHalfAPlaceIsAProblem) {
    expectProblem("springs[0].loads", Tree::List{Tree(Tree::Object{{"length", "60 mm"}})}, {"Missing"},
                  "springs[0].loads[0].force");
    expectProblem("keep_clear", Tree::List{Tree(Tree::Object{{"at", Tree::List{90, 0}}})}, {"Missing"},
                  "keep_clear[0].diameter");
    expectProblem("plate.holes", Tree::List{Tree(Tree::Object{{"diameter", 8}})}, {"Missing"},
                  "plate.holes[0].at");
}

TEST(ReadJob, FiguresOfOneThingThatCannotBeTrueTogetherAreRefused) {
    expectProblem("springs[0].solid_length", "120 mm", {"free_length"});
    expectProblem("springs[0].assembled_length", "110 mm", {"free_length"});
    expectProblem("springs[0].wire", "16 mm", {"coil_outside"});
    expectProblem("springs[0].active_coils", 10, {"total_coils"});
    expectProblem("springs[0].loads[1].force", "600 N", {"pushes harder"}, "springs[0].loads");
    expectProblem("centre.bearing_inside", "44 mm", {"bearing_outside"});
    expectProblem("hub.shaft_bore", "60 mm", {"shaft"});
    expectProblem("hub.outside", "60 mm", {"larger than the shaft"});
    expectProblem("hub.flange.root", "170 mm", {"outside"});
    expectProblem("hub.shaft_material.ultimate", "200 MPa", {"yield"});
    expectProblem("stations.hole.width", "31 mm", {"end to end"}, "stations.hole.length");
}

TEST(ReadJob, AHubThatCannotHoldSoIsRefusedWithTheMend) {
    expectProblem("hub.interference", "-0.05 mm", {"\"-0.05 mm\"", "out of range", "0.05 mm", "rust only"});
    expectProblem("hub.interference", Tree::List{"-0.02 mm", "0.03 mm"}, {"\"-0.02 mm\"", "loose end"},
                  "hub.interference[0]");
    expectProblem("hub.interference", "-0.02 to 0.03 mm", {"-0.02 to 0.03 mm", "loose end"});
    expectProblem("hub.interference", "6 mm", {"\"6 mm\"", "to 5 mm"});
    expectProblem("hub.friction", 0, {"0 is out of range", "0.01", "0.15"});
    expectProblem("hub.friction", Tree::List{0, 0.2}, {"0 is out of range", "0.15"}, "hub.friction[0]");
    expectProblem("hub.friction", "", {"plain number", "0.15"});
    expectProblem("hub.friction", 15, {"15 is out of range", "0.15"}); // per cent
    expectProblem("hub.half_angle", "0 deg", {"\"0 deg\"", "3 deg", "straight"});
    expectProblem("hub.half_angle", 0, {"0 is out of range", "3 deg", "straight"});
    expectProblem("hub.half_angle", "90 deg", {"\"90 deg\"", "45 deg"});
    expectProblem("hub.half_angle", "-3 deg", {"\"-3 deg\"", "3 deg"});
    expectProblem("hub.draw", "-1 mm", {"\"-1 mm\"", "from 0 mm"});
    expectProblem("hub.rust", 0.5, {"0.5 is out of range", "1 clean"});
    EXPECT_TRUE(readWith("hub.interference", "0-0.03 mm").problems.empty());
}

TEST(ReadJob, AHalfAngleWithoutAFitAsksForTheFit) {
    expectProblem("hub.fit", Tree(), {"taper", "half_angle"});
    Tree tree = soundJob();
    for (const char* key : {"hub.fit", "hub.half_angle", "hub.draw"})
        ASSERT_TRUE(tree.erase(key));
    EXPECT_TRUE(readJob(tree).problems.empty());
}

TEST(ReadJob, AMaterialOfTheUsersOwnNeedsItsYield) {
    expectProblem("plate.steel", Tree(Tree::Object{{"E", "200 GPa"}}), {"Name a grade", "S235"});
    expectProblem("plate.steel", 235, {"group", "235"});
    const Reading reading = readWith("plate.steel", Tree(Tree::Object{{"yield", "36 ksi"}}));
    ASSERT_TRUE(reading.problems.empty()) << util::toText(reading.problems);
    EXPECT_NEAR(reading.job.plate.steel->yield->ksi(), 36, 1e-12);
}

TEST(ReadJob, UnknownKeysAtEveryLevelAreReportedWithWhatWasProbablyMeant) {
    Tree tree = soundJob();
    tree.set("plate.colour", "red");
    tree.set("plate.thicknes", "12 mm");
    tree.set("springs[0].loads[0].note", "cold");
    tree.set("shop", "Mill Lane");
    const Reading reading = readJob(tree);
    EXPECT_TRUE(reading.problems.empty());
    ASSERT_EQ(reading.unknownKeys.size(), reading.suggestions.size());
    std::vector<std::pair<std::string, std::string>> found;
    for (std::size_t i = 0; i < reading.unknownKeys.size(); ++i)
        found.emplace_back(reading.unknownKeys[i], reading.suggestions[i]);
    std::ranges::sort(found);
    const std::vector<std::pair<std::string, std::string>> expected{{"plate.colour", ""},
                                                                    {"plate.thicknes", "plate.thickness"},
                                                                    {"shop", ""},
                                                                    {"springs[0].loads[0].note", ""}};
    EXPECT_EQ(found, expected);
}

TEST(ReadJob, TheUnitsMostFiguresWereTypedInAreThePreferredOnes) {
    const auto preferred = [](const char* circle, const char* land, Tree pin) {
        Tree tree;
        tree.set("platewright", 1);
        tree.set("stations.circle", circle);
        tree.set("stations.land", land);
        tree.set("stations.pin", std::move(pin));
        return readJob(tree).job.preferred;
    };
    EXPECT_EQ(preferred("4 in", "1 3/8\"", 12), units::System::Inch);
    EXPECT_EQ(preferred("4 in", "30 mm", 12), units::System::Metric);
    EXPECT_EQ(preferred("4 IN", "900 thou", "12 mm"), units::System::Inch);
    Tree tonnes;
    tonnes.set("platewright", 1);
    tonnes.set("ram.capacity", "12 tonne");
    EXPECT_EQ(readJob(tonnes).job.preferred, units::System::Metric);
    tonnes.set("ram.capacity", "12 ton");
    EXPECT_EQ(readJob(tonnes).job.preferred, units::System::Inch);
}

TEST(ReadJob, TheVersionMustBeThereAndOurs) {
    expectProblem("platewright", 2, {"newer Platewright, version 2", "reads 1"});
    expectProblem("platewright", 0, {"0", "reads 1"});
    expectProblem("platewright", "1", {"\"1\"", "reads 1"});
    expectProblem("platewright", nullptr, {"missing"});
    EXPECT_EQ(readJob(Tree(5)).problems.size(), 1u);
    EXPECT_EQ(readJob(Tree()).problems.size(), 1u);
    Tree rack;
    rack.set("platewright_rack", 1);
    EXPECT_NE(readJob(rack).problems.at(0).message.find("rack file"), std::string::npos);
}

} // namespace
} // namespace pw::jobfile
