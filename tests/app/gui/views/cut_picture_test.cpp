#include "app/gui/views/cut_picture.h"

#include <gtest/gtest.h>
#include <numbers>

namespace pw::gui {
namespace {

// Places on lines and arcs are exact but for rounding.
constexpr double kExact = 1e-9;

exchange::CutPath discWithBore() {
    shape::Region region;
    region.rim = shape::circleLoop({}, 90);
    region.holes.push_back({shape::circleLoop({}, 13), shape::Part::Bore, 0});
    region.holes.push_back({shape::circleLoop({50, 0}, 2), shape::Part::Extra, 0});
    exchange::CutSettings settings;
    settings.thickness = units::Length::fromMm(10);
    settings.kerf = units::Length::fromMm(1.5);
    const auto path =
        exchange::makeCutPath({region}, settings, exchange::usualRates(settings.process, settings.thickness));
    EXPECT_TRUE(path);
    return *path;
}

TEST(CutPicture, has_every_burn_its_pierce_and_its_arrows_and_travel_between_them) {
    const auto path = discWithBore();
    const CutPicture picture = cutPictureOf(path, units::System::Metric);
    ASSERT_EQ(picture.pierces.size(), path.burns.size());
    EXPECT_EQ(picture.arrows.size(), 2 * path.burns.size());
    for (std::size_t i = 0; i < path.burns.size(); ++i)
        EXPECT_EQ(picture.pierces[i].at, path.burns[i].pierce());
    double travel = 0, cut = 0;
    for (const auto& line : picture.lines)
        for (const auto& side : line.sides)
            (line.kind == CutPicture::Kind::Travel ? travel : cut) += side.length();
    EXPECT_NEAR(cut, path.cutLength, 1e-6);
    // The path's own travel counts the way to the first pierce as well.
    EXPECT_LE(travel, path.travelLength + kExact);
    ASSERT_EQ(picture.drills.size(), 1u); // 4 mm in 10 mm plate
    EXPECT_EQ(picture.drills[0].at, (shape::Point{50, 0}));
}

TEST(CutPicture, lines_follow_one_another_without_gaps_within_a_burn) {
    const CutPicture picture = cutPictureOf(discWithBore(), units::System::Metric);
    for (std::size_t i = 1; i < picture.lines.size(); ++i)
        EXPECT_LT(shape::distance(picture.lines[i - 1].sides.back().to, picture.lines[i].sides.front().from),
                  1e-6);
}

TEST(CutPicture, points_its_arrows_the_way_the_torch_goes) {
    // Counter-clockwise round a circle: a quarter of the way round from +x it goes left.
    const auto arrow = arrowAlong(shape::circleLoop({}, 10), 0.25);
    EXPECT_NEAR(arrow.at.x, 0, kExact);
    EXPECT_NEAR(arrow.at.y, 10, kExact);
    EXPECT_NEAR(arrow.way.x, -1, kExact);
    const auto corner = arrowAlong(shape::rectangleLoop(20, 10), 0);
    EXPECT_NEAR(shape::norm(corner.way), 1, kExact);
}

TEST(CutPicture, says_why_there_is_none) {
    const auto none =
        cutPictureOf(util::Problem{"cutting.process", "nothing is burned"}, units::System::Metric);
    EXPECT_TRUE(none.lines.empty());
    EXPECT_TRUE(none.trouble == "Nothing is burned.");
}

} // namespace
} // namespace pw::gui
