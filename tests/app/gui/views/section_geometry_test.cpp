#include "app/gui/views/section_geometry.h"

#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <cmath>
#include <filesystem>
#include <gtest/gtest.h>

namespace pw::gui {
namespace {

using Role = SectionPart::Role;

job::Job sample(const char* name) {
    return jobfile::readJob(*jobfile::loadTree(std::string(PW_SAMPLES "/") + name + ".plate.json")).job;
}

/// mill_lane_six_pin: 60 mm assembled, 3 mm further, solid at 37.5, 560 to 630 N at 60 mm and 51 N/mm.
class StackSection : public ::testing::Test {
protected:
    job::Job job = sample("mill_lane_six_pin");
    engine::Report report;
    StackTravel travel;
    StackSection() {
        report.travel.threadLeft = units::Length::fromMm(40);
        travel = stackTravel(job, &report);
    }
};

TEST_F(StackSection, goes_from_assembled_through_squeezed_to_free) {
    EXPECT_DOUBLE_EQ(travel.squeeze, 3);
    EXPECT_DOUBLE_EQ(travel.towardsHub(0), 0);
    EXPECT_DOUBLE_EQ(travel.towardsHub(travel.squeezedPlace()), 3);
    ASSERT_TRUE(travel.release);
    EXPECT_NEAR(travel.towardsHub(1), 3 - *travel.release, 1e-9);
    // By hand from the file: the soft end is free at 60 + 630 / 51 mm, so 630 / 51 + 3 from squeezed.
    EXPECT_NEAR(*travel.release, 630.0 / 51 + 3, 1e-6);
}

TEST_F(StackSection, finds_its_way_back_from_a_travel_to_the_place_of_the_slider) {
    for (const double place : {0.0, 0.2, 0.4, 0.55, 0.8, 1.0})
        EXPECT_NEAR(travel.placeOf(travel.towardsHub(place), place > travel.squeezedPlace()), place, 1e-12);
}

TEST_F(StackSection, says_length_push_and_room_to_solid_at_each_place) {
    const StackState assembled = stateAt(travel, 0);
    EXPECT_DOUBLE_EQ(assembled.springLength->mm(), 60);
    EXPECT_DOUBLE_EQ(assembled.shortOfSolid->mm(), 22.5);
    EXPECT_NEAR(assembled.force->low.newton(), 6 * 560, 1e-6);
    EXPECT_NEAR(assembled.force->high.newton(), 6 * 630, 1e-6);
    const StackState squeezed = stateAt(travel, travel.squeezedPlace());
    EXPECT_DOUBLE_EQ(squeezed.springLength->mm(), 57);
    EXPECT_EQ(squeezed.coils, spring::Coils::Clear);
    EXPECT_NEAR(squeezed.force->high.newton(), travel.pack.total.high.newton(), 1e-6);
    // 3 mm of an M20's 2.5 mm pitch (ISO 261).
    EXPECT_NEAR(*squeezed.turns, 3 / 2.5, 1e-9);
    const StackState free = stateAt(travel, 1);
    EXPECT_NEAR(free.force->high.newton(), 0, 1e-6);
    EXPECT_NEAR(free.springLength->mm(), 60 + 630.0 / 51, 1e-6);
}

TEST_F(StackSection, spends_the_thread_as_the_nut_backs_off_down_to_what_the_report_leaves) {
    EXPECT_NEAR(stateAt(travel, 1).threadLeft->mm(), 40, 1e-9);
    EXPECT_NEAR(stateAt(travel, travel.squeezedPlace()).threadLeft->mm(), 40 + *travel.release, 1e-9);
    EXPECT_FALSE(stateAt(stackTravel(job, nullptr), 1).threadLeft); // not worked out is empty, not 0
}

TEST_F(StackSection, calls_the_springs_solid_when_the_coils_touch) {
    job.travel.compressFurther = units::Length::fromMm(22.5);
    const StackTravel far = stackTravel(job, &report);
    const StackState s = stateAt(far, far.squeezedPlace());
    EXPECT_EQ(s.coils, spring::Coils::Solid);
    EXPECT_NEAR(s.shortOfSolid->mm(), 0, 1e-9);
    EXPECT_TRUE(sectionAt(job, far, far.squeezedPlace()).springSolid.at(0));
    EXPECT_FALSE(sectionAt(job, far, 0).springSolid.at(0));
    EXPECT_EQ(stateAt(far, 0).coils, spring::Coils::Clear);
}

TEST_F(StackSection, draws_the_springs_as_long_as_they_are_and_the_plate_where_it_stands) {
    for (const double place : {0.0, travel.squeezedPlace(), 0.7, 1.0}) {
        const Section s = sectionAt(job, travel, place);
        const StackState state = stateAt(travel, place);
        EXPECT_NEAR(s.springTo - s.springFrom, state.springLength->mm(), 1e-9);
        // Standoff 30 mm, assembled: the plate's right face, moved by the travel.
        ASSERT_TRUE(s.find(Role::Plate));
        EXPECT_NEAR(s.find(Role::Plate)->x1, -30 + state.towardsHub, 1e-9);
        EXPECT_NEAR(s.find(Role::Plate)->x1 - s.find(Role::Plate)->x0, 12, 1e-9);
    }
}

TEST_F(StackSection, cuts_the_plate_at_bore_access_hole_and_rim) {
    const Section s = sectionAt(job, travel, 0);
    std::vector<std::pair<double, double>> steel;
    for (const auto& part : s.parts)
        if (part.role == Role::Plate)
            steel.emplace_back(part.low, part.high);
    // Bore 21, holes of 24 on 110, rim 160.
    ASSERT_EQ(steel.size(), 2u);
    EXPECT_NEAR(steel[0].first, 10.5, 1e-9);
    EXPECT_NEAR(steel[0].second, 55 - 12, 1e-6);
    EXPECT_NEAR(steel[1].first, 55 + 12, 1e-6);
    EXPECT_NEAR(steel[1].second, 80, 1e-6);
}

TEST_F(StackSection, takes_the_keepers_out_once_it_is_let_up) {
    EXPECT_TRUE(sectionAt(job, travel, 0).find(Role::Keeper));
    EXPECT_TRUE(sectionAt(job, travel, travel.squeezedPlace()).find(Role::Keeper));
    EXPECT_FALSE(sectionAt(job, travel, 0.8).find(Role::Keeper));
}

TEST_F(StackSection, keeps_every_place_within_its_bounds) {
    const QRectF bounds = sectionBounds(job, travel);
    for (int i = 0; i <= 20; ++i)
        for (const auto& part : sectionAt(job, travel, i / 20.0).parts) {
            EXPECT_GE(part.x0, bounds.left() - 1e-9) << i;
            EXPECT_LE(part.x1, bounds.right() + 1e-9) << i;
            EXPECT_LE(part.high, bounds.bottom() + 1e-9) << i;
        }
}

TEST_F(StackSection, marks_what_was_not_given) {
    EXPECT_TRUE(sectionAt(job, travel, 0).find(Role::Plate)->known);
    EXPECT_TRUE(sectionAt(job, travel, 0).find(Role::Screw)->known);
    job.plate.thickness.reset();
    job.screw->usableLength.reset();
    EXPECT_FALSE(sectionAt(job, travel, 0).find(Role::Plate)->known);
    EXPECT_FALSE(sectionAt(job, travel, 0).find(Role::Screw)->known);
}

TEST(Section, shows_a_pull_with_screw_plate_bolts_hub_and_shaft) {
    job::Job job = sample("mill_lane_pull_three_bolt_inch");
    StackTravel travel = stackTravel(job, nullptr);
    EXPECT_TRUE(travel.isPull);
    EXPECT_FALSE(travel.moves()); // nobody said how far it must come off
    const Section s = sectionAt(job, travel, 0);
    for (const Role role : {Role::Screw, Role::Plate, Role::Bolt, Role::Hub, Role::Shaft})
        EXPECT_TRUE(s.find(role));
    // 3 in of screw between plate and shaft end, plate 3/4 in.
    EXPECT_NEAR(s.find(Role::Plate)->x1, -3 * 25.4, 1e-9);
    EXPECT_NEAR(s.find(Role::Screw)->x1, 0, 1e-9);

    job.hub->draw = units::Length::fromMm(5);
    travel = stackTravel(job, nullptr);
    EXPECT_TRUE(travel.moves());
    const Section off = sectionAt(job, travel, 1);
    EXPECT_NEAR(off.find(Role::Hub)->x0, -5, 1e-9);
    EXPECT_NEAR(off.find(Role::Plate)->x1, -3 * 25.4 - 5, 1e-9);
    EXPECT_NEAR(off.find(Role::Shaft)->x0, 0, 1e-9); // the shaft stays
}

TEST(Section, of_a_job_with_nothing_in_it_is_still_a_drawing) {
    const job::Job nothing;
    const StackTravel travel = stackTravel(nothing, nullptr);
    EXPECT_FALSE(travel.moves());
    EXPECT_FALSE(sectionAt(nothing, travel, 0).parts.empty());
    EXPECT_TRUE(std::isfinite(sectionBounds(nothing, travel).width()));
    EXPECT_FALSE(stateAt(travel, 0).springLength);
    EXPECT_FALSE(stateAt(travel, 0).force);
}

TEST(Section, of_every_sample_is_whole_at_every_place) {
    int samples = 0;
    for (const auto& file : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (!file.path().string().ends_with(".plate.json"))
            continue;
        ++samples;
        const job::Job job = jobfile::readJob(*jobfile::loadTree(file.path())).job;
        const StackTravel travel = stackTravel(job, nullptr);
        for (int i = 0; i <= 10; ++i) {
            const Section s = sectionAt(job, travel, i / 10.0);
            EXPECT_TRUE(s.find(SectionPart::Role::Plate)) << file.path();
            EXPECT_TRUE(s.find(SectionPart::Role::Screw)) << file.path();
            for (const auto& part : s.parts) {
                EXPECT_TRUE(std::isfinite(part.x0) && std::isfinite(part.high)) << file.path();
                EXPECT_LT(part.x0, part.x1) << file.path();
                EXPECT_LT(part.low, part.high) << file.path();
            }
            // No coil runs into the next one or out of its spring.
            for (std::size_t k = 2; k < s.coils.size(); ++k)
                if (s.coils[k].spring == s.coils[k - 2].spring) {
                    EXPECT_GE(s.coils[k].x - s.coils[k - 2].x, 0.8 * s.coils[k].wire) << file.path();
                }
        }
    }
    EXPECT_GE(samples, 8);
}

TEST(CoilPlaces, lie_side_by_side_when_solid_and_touch_both_ends) {
    const auto coils = coilPlaces(10, 37.5, 5, 7.5); // 7.5 coils of 5 mm: solid
    EXPECT_DOUBLE_EQ(coils.front(), 12.5);
    EXPECT_DOUBLE_EQ(coils.back(), 10 + 37.5 - 2.5);
    const auto eight = coilPlaces(0, 40, 5, 8);
    for (std::size_t i = 1; i < eight.size(); ++i)
        EXPECT_NEAR(eight[i] - eight[i - 1], 5, 1e-9);
}

} // namespace
} // namespace pw::gui
