#include "app/engine/rack.h"

#include "core/jobfile/json.h"
#include "core/units/format.h"
#include "geometry/placement/parted.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

/// What is left of a piece once plates are cut from it.
namespace pw::engine {
namespace {

using jobfile::Tree;
using shape::Point;

constexpr double kPi = std::numbers::pi;

Tree rackOf(const std::string& outline, const std::string& more = "") {
    return *jobfile::fromJson(
        R"({"platewright_rack": 1, "offcuts": [{"name": "piece", "thickness": "12 mm", "steel": "S235", )"
        R"("where": "shelf", "outline": )" +
        outline + more + "}]}");
}

shape::Region disc(double diameter) {
    shape::Region region;
    region.rim = shape::circleLoop({0, 0}, diameter / 2);
    return region;
}

struct Cut {
    rack::RackReading before, after;
    Cutting cutting;
    std::vector<placement::Stock> rests;
    double piece = 0, left = 0;
};

/// Cuts plates at these places, spacing as given; reads back what the rack file then holds.
Cut cutAt(const Tree& rack, const shape::Region& plate, const std::vector<placement::Pose>& poses,
          placement::Spacing spacing) {
    Cut cut;
    cut.before = rack::readRack(rack);
    PieceAnswer answer;
    answer.name = "piece";
    answer.stock = placement::buildStock(cut.before.rack.offcuts.at(0)).stock;
    answer.spacing = spacing;
    for (const placement::Pose& pose : poses) {
        placement::Placement place;
        place.pose = pose;
        if (answer.place)
            answer.others.push_back(place);
        else
            answer.place = place;
    }
    cut.piece = placement::area(answer.stock);
    cut.cutting = cutFrom(rack, cut.before.rack.offcuts[0], plate, answer);
    cut.after = rack::readRack(cut.cutting.rack);
    EXPECT_TRUE(cut.after.refused.empty())
        << cut.after.refused[0].field << ": " << cut.after.refused[0].message;
    for (const std::string& name : cut.cutting.rests) {
        const auto row = std::ranges::find(cut.after.rack.offcuts, name, &rack::Offcut::name);
        EXPECT_NE(row, cut.after.rack.offcuts.end()) << name;
        const placement::BuiltStock built = placement::buildStock(*row);
        EXPECT_TRUE(built.problems.empty()) << name << ": " << util::toText(built.problems);
        EXPECT_FALSE(shape::crossesItself(built.stock.rim)) << name;
        cut.rests.push_back(built.stock);
        cut.left += placement::area(built.stock);
    }
    // A millionth of the piece: the file keeps corners to a hundred-thousandth of a millimetre.
    EXPECT_NEAR((cut.left + cut.cutting.cutMm2 + cut.cutting.droppedMm2) / cut.piece, 1, 1e-6);
    return cut;
}

bool lies(const placement::Stock& stock, Point p) {
    return shape::contains(stock.rim, p) &&
           std::ranges::none_of(stock.obstacles, [&](const placement::Obstacle& thing) {
               return thing.isHole && shape::contains(thing.loop, p);
           });
}

TEST(CutFrom, ADiscFromANarrowBarLeavesTwoPieces) {
    // 90 mm and 1 mm of kerf in a bar 100 mm wide: 4 mm are left on either side, and 4.5 would be kept.
    const Cut cut = cutAt(rackOf(R"({"shape": "rectangle", "length": 400, "width": 100})"), disc(90),
                          {{{0, 0}, 0}}, {1, 3.5});
    ASSERT_EQ(cut.rests.size(), 2u);
    EXPECT_EQ(cut.cutting.rests[0], "piece, rest 1");
    EXPECT_EQ(cut.cutting.rests[1], "piece, rest 2");
    ASSERT_EQ(cut.after.rack.offcuts.size(), 2u);
    for (const rack::Offcut& rest : cut.after.rack.offcuts) {
        EXPECT_EQ(rest.where, "shelf");
        EXPECT_EQ(rest.count, 1);
        EXPECT_NE(units::plainBlanks(rest.note).find("4 mm is left"), std::string::npos) << rest.note;
        EXPECT_NE(units::plainBlanks(rest.note).find("4.5 mm"), std::string::npos) << rest.note;
    }
    // The steel gets thinner than 4.5 mm where the cut is 45.5 mm from the middle line. From there on: the
    // bar's end less the disc's segment, R2 acos(x/R) - x sqrt(R2 - x2).
    const double r = 46, x = std::sqrt(r * r - 45.5 * 45.5);
    const double end = (200 - x) * 100 - (r * r * std::acos(x / r) - x * std::sqrt(r * r - x * x));
    EXPECT_NEAR(placement::area(cut.rests[0]), end, 0.02);
    EXPECT_NEAR(placement::area(cut.rests[1]), end, 0.02);
}

TEST(CutFrom, FarFromAllEdgesThePieceKeepsItsOutline) {
    const Cut cut = cutAt(rackOf(R"({"shape": "rectangle", "length": 400, "width": 300})"), disc(90),
                          {{{10, 0}, 0}}, {1, 3.5});
    ASSERT_EQ(cut.rests.size(), 1u);
    EXPECT_EQ(cut.cutting.rests[0], "piece, rest");
    const rack::Offcut& rest = cut.after.rack.offcuts.at(0);
    EXPECT_EQ(rest.outline.shape, job::OutlineShape::Rectangle);
    ASSERT_EQ(rest.holes.size(), 1u);
    EXPECT_NEAR(rest.holes[0].form.diameter->mm(), 92, 1e-9);
    EXPECT_TRUE(cut.cutting.words.empty());
    EXPECT_EQ(cut.cutting.droppedMm2, 0);
}

TEST(CutFrom, NearOneEdgeTheWebIsNotCounted) {
    const Cut cut = cutAt(rackOf(R"({"shape": "rectangle", "length": 400, "width": 300})"), disc(90),
                          {{{0, 102}, 0}}, {1, 3}); // 2 mm to the edge, 4 would be kept
    ASSERT_EQ(cut.rests.size(), 1u);
    EXPECT_TRUE(cut.rests[0].obstacles.empty()) << "a notch, not a hole";
    EXPECT_GT(cut.cutting.droppedMm2, 0);
    ASSERT_EQ(cut.cutting.words.size(), 1u);
    EXPECT_NE(units::plainBlanks(cut.cutting.words[0]).find("2 mm"), std::string::npos)
        << cut.cutting.words[0];
    EXPECT_FALSE(lies(cut.rests[0], {0, 149})) << "in the web";
    EXPECT_TRUE(lies(cut.rests[0], {100, 149}));
}

TEST(CutFrom, InACornerTheCrumbBehindIsDroppedAndSaid) {
    const Cut cut = cutAt(rackOf(R"({"shape": "rectangle", "length": 400, "width": 300})"), disc(90),
                          {{{152, 102}, 0}}, {1, 3});
    ASSERT_EQ(cut.rests.size(), 1u);
    EXPECT_FALSE(lies(cut.rests[0], {198, 148})) << "the corner";
    ASSERT_EQ(cut.cutting.words.size(), 2u);
    EXPECT_NE(units::plainBlanks(cut.cutting.words[1]).find("40 mm"), std::string::npos)
        << cut.cutting.words[1];
}

TEST(CutFrom, AStackFromOnePieceIsOneStep) {
    const Tree rack = rackOf(R"({"shape": "rectangle", "length": 500, "width": 300})", R"(, "count": 3)");
    const Cut cut = cutAt(rack, disc(90), {{{-150, 0}, 0}, {{0, 0}, 0}, {{150, 0}, 0}}, {1, 3});
    ASSERT_EQ(cut.after.rack.offcuts.size(), 2u);
    EXPECT_EQ(cut.after.rack.offcuts[0].count, 2);
    EXPECT_EQ(cut.after.rack.offcuts[1].holes.size(), 3u);
    // In a row along a narrow bar they leave the two ends; what is between them is scrap.
    const Cut bar = cutAt(rackOf(R"({"shape": "rectangle", "length": 500, "width": 100})"), disc(90),
                          {{{-50, 0}, 0}, {{46, 0}, 0}}, {1, 3.5});
    EXPECT_EQ(bar.rests.size(), 2u);
    EXPECT_TRUE(lies(bar.rests[0], {200, 0}));
    EXPECT_TRUE(lies(bar.rests[1], {-200, 0}));
    EXPECT_EQ(bar.cutting.words.size(), 2u);
}

TEST(CutFrom, OfARingNothingIsLeft) {
    const Cut cut = cutAt(rackOf(R"({"shape": "disc", "diameter": 100})"), disc(90), {{{0, 0}, 0}}, {1, 3.5});
    EXPECT_TRUE(cut.rests.empty());
    EXPECT_TRUE(cut.after.rack.offcuts.empty());
    EXPECT_NEAR(cut.cutting.droppedMm2, kPi * (50.0 * 50 - 46 * 46), 1e-6);
}

TEST(CutFrom, AHoleBesideTheCutBecomesPartOfIt) {
    const Tree rack =
        rackOf(R"({"shape": "rectangle", "length": 400, "width": 300})",
               R"(, "holes": [{"at": [-68, 0], "diameter": 40}, {"at": [-150, 100], "diameter": 20}])");
    const Cut cut = cutAt(rack, disc(90), {{{0, 0}, 0}}, {1, 3}); // 2 mm between the two
    ASSERT_EQ(cut.rests.size(), 1u);
    EXPECT_EQ(cut.rests[0].obstacles.size(), 2u) << "one hole out of two, and the far one";
    EXPECT_FALSE(lies(cut.rests[0], {-47, 0}));
}

TEST(CutFrom, ABadAreaGoesWithThePartItLiesOn) {
    const Tree rack = rackOf(
        R"({"shape": "rectangle", "length": 400, "width": 100})",
        R"(, "bad_areas": [{"points": [[150, -20], [180, -20], [180, 20], [150, 20]], "note": "rust"}])");
    const Cut cut = cutAt(rack, disc(90), {{{0, 0}, 0}}, {1, 3.5});
    ASSERT_EQ(cut.rests.size(), 2u);
    for (std::size_t i = 0; i < 2; ++i) {
        const bool right = lies(cut.rests[i], {190, 0});
        EXPECT_EQ(cut.after.rack.offcuts[i].badAreas.size(), right ? 1u : 0u);
    }
}

TEST(CutFrom, AreasAddUpAndNothingUsefulIsLost) {
    std::mt19937 random(20260727); // printed by the failure's trace
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(random);
    };
    int parted = 0, websSeen = 0, several = 0;
    for (int round = 0; round < 120; ++round) {
        SCOPED_TRACE("seed 20260727, round " + std::to_string(round));
        std::string outline, more;
        const double across = between(40, 100);
        shape::Region plate = disc(across);
        if (round % 5 == 0)
            plate.rim = shape::barLoop(between(60, 140), between(30, 70), round % 2 == 0);
        const placement::Spacing spacing{between(0.5, 3), between(1.5, 5)};
        const double length = between(150, 500);
        // Every third one is hardly wider than the plate with its spacing.
        const double width =
            round % 3 == 1 ? across + 2 * spacing.clear() + between(0.2, 1) : between(70, 260);
        switch (round % 4) {
        case 0:
            outline = R"({"shape": "rectangle", "length": )" + std::to_string(length) + R"(, "width": )" +
                      std::to_string(width) + "}";
            break;
        case 1:
            outline = R"({"shape": "bar", "length": )" + std::to_string(length + width) + R"(, "width": )" +
                      std::to_string(width) + R"(, "ends": "round"})";
            break;
        case 2:
            outline = R"({"shape": "disc", "diameter": )" + std::to_string(length) + "}";
            break;
        default: { // star-shaped, some sides arcs
            outline = R"({"shape": "polygon", "points": [)";
            const int corners = 5 + round % 4;
            for (int i = 0; i < corners; ++i) {
                const Point p = shape::polar(between(0.6, 1) * length / 2, 2 * kPi * i / corners);
                outline += (i ? ", [" : "[") + std::to_string(p.x) + ", " + std::to_string(p.y) +
                           (i % 2 ? ", " + std::to_string(between(0, 0.3)) : "") + "]";
            }
            outline += "]}";
        }
        }
        if (round % 3 == 0)
            more = R"(, "holes": [{"at": [)" + std::to_string(between(-length / 4, length / 4)) + ", " +
                   std::to_string(between(-width / 5, width / 5)) + R"(], "diameter": )" +
                   std::to_string(between(8, 30)) + "}]";
        const Tree rack = rackOf(outline, more);
        const rack::RackReading reading = rack::readRack(rack);
        ASSERT_EQ(reading.rack.offcuts.size(), 1u);
        const placement::Stock stock = placement::buildStock(reading.rack.offcuts[0]).stock;
        // area() itself is rough where a hole runs over the edge.
        if (std::ranges::any_of(stock.obstacles, [&](const placement::Obstacle& thing) {
                return placement::liesOn(stock.rim, thing.loop) != placement::Lies::Inside;
            }))
            continue;
        placement::FitOptions quick;
        quick.thorough = false;
        if (round % 2) // pushed against an edge, as a mechanic who saves steel does
            quick.towards = between(0, 2 * kPi);
        std::vector<placement::Pose> poses;
        for (const placement::Placement& place :
             placement::fitSeveral(plate, stock, spacing, 1 + static_cast<std::size_t>(round % 3), quick))
            poses.push_back(place.pose);
        // The search saves steel and goes to the ends; a person may also cut from the middle.
        const placement::Pose middle{{between(-length / 5, length / 5), 0}, 0};
        if (round % 3 == 1 && placement::fits(plate, stock, spacing, middle))
            poses = {middle};
        if (poses.empty())
            continue;
        const Cut cut = cutAt(rack, plate, poses, spacing);
        parted += cut.rests.size() > 1;
        websSeen += cut.cutting.droppedMm2 > 0;
        several += poses.size() > 1;
        // Where a disc of 40 mm has room beside the cuts, one part and only one has the steel.
        std::vector<shape::Loop> cuts;
        for (const placement::Pose& pose : poses)
            cuts.push_back(placement::placed(placement::cutLoop(plate, spacing.kerf), pose));
        const shape::Box box = shape::bounds(stock.rim);
        for (int i = 0; i < 400; ++i) {
            const Point p{between(box.low.x, box.high.x), between(box.low.y, box.high.y)};
            const bool inCut =
                std::ranges::any_of(cuts, [&](const auto& c) { return shape::contains(c, p); });
            const auto in = std::ranges::count_if(cut.rests, [&](const auto& part) { return lies(part, p); });
            EXPECT_LE(in, 1);
            if (inCut || !lies(stock, p)) {
                EXPECT_EQ(in, 0) << p.x << ' ' << p.y;
                continue;
            }
            double room = shape::distanceTo(stock.rim, p);
            for (const placement::Obstacle& thing : stock.obstacles)
                room = std::min(room, shape::distanceTo(thing.loop, p));
            for (const shape::Loop& c : cuts)
                room = std::min(room, shape::distanceTo(c, p));
            if (room > placement::kUsableWidth / 2 + 0.5) { // polygons for arcs are this rough and less
                EXPECT_EQ(in, 1) << p.x << ' ' << p.y;
            }
        }
    }
    EXPECT_GE(parted, 5);
    EXPECT_GE(websSeen, 20);
    EXPECT_GE(several, 20);
}

} // namespace
} // namespace pw::engine
