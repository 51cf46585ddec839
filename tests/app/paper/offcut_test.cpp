#include "app/paper/offcut.h"

#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"

#include <gtest/gtest.h>
#include <numbers>

using namespace pw;

namespace {

rack::RackReading sampleRack() {
    const auto tree = rack::loadRackTree(PW_SAMPLES "/rack.json");
    EXPECT_TRUE(tree);
    return rack::readRack(*tree);
}

job::Job jobOn(const std::string& piece) {
    job::Job job = jobfile::readJob(*jobfile::loadTree(PW_SAMPLES "/mill_lane_six_pin.plate.json")).job;
    job.piece = job::PieceChoice{piece, job::PointXY{units::Length::fromMm(126), units::Length::fromMm(46)},
                                 units::Angle::fromDegree(90)};
    return job;
}

} // namespace

TEST(OffcutOnPaper, IsThePieceOfTheRackWithThePlateWhereTheJobPutsIt) {
    const auto rack = sampleRack();
    ASSERT_FALSE(rack.rack.offcuts.empty());
    for (const rack::Offcut& piece : rack.rack.offcuts) {
        const auto offcut = paper::offcutOf(jobOn(piece.name), rack);
        ASSERT_TRUE(offcut) << piece.name;
        EXPECT_EQ(offcut->name, piece.name);
        EXPECT_EQ(offcut->holes.size(), piece.holes.size() + piece.badAreas.size()) << piece.name;
        EXPECT_DOUBLE_EQ(offcut->at.x, 126);
        EXPECT_DOUBLE_EQ(offcut->at.y, 46);
        EXPECT_DOUBLE_EQ(offcut->turn, std::numbers::pi / 2);
    }
}

TEST(OffcutOnPaper, IsNotDrawnWhereNothingIsKnownOfIt) {
    const auto rack = sampleRack();
    EXPECT_FALSE(paper::offcutOf(jobOn("no such piece"), rack));
    job::Job job = jobOn(rack.rack.offcuts.front().name);
    job.piece->at.reset();
    EXPECT_FALSE(paper::offcutOf(job, rack)); // which place on it is not said
    job.piece.reset();
    EXPECT_FALSE(paper::offcutOf(job, rack));
}
