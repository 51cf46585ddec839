#include "app/gui/views/check_place.h"

#include "app/engine/check.h"
#include "core/jobfile/read.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>

namespace pw::gui {
namespace {

TEST(PlaceOfCheck, is_known_for_every_check_of_every_sample) {
    std::size_t seen = 0;
    for (const auto& file : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (!file.path().string().ends_with(".plate.json"))
            continue;
        const auto tree = jobfile::loadTree(file.path());
        if (!tree)
            continue;
        engine::CheckOptions quick;
        quick.mend = quick.spread = false;
        for (const auto& check : engine::check(jobfile::readJob(*tree).job, quick).checks) {
            const CheckPlace place = placeOfCheck(check.id);
            EXPECT_TRUE(place.part != PlanPart::None || !place.section.empty() || place.springs) << check.id;
            ++seen;
        }
    }
    EXPECT_GT(seen, 50u);
}

TEST(PlaceOfCheck, tells_members_of_a_family_apart) {
    using Role = SectionPart::Role;
    EXPECT_EQ(placeOfCheck("access.keeper").part, PlanPart::Keeper);
    EXPECT_EQ(placeOfCheck("land.width").part, PlanPart::Land);
    EXPECT_EQ(placeOfCheck("thread.nut").section.front(), Role::Nut);
    EXPECT_EQ(placeOfCheck("thread.shaft").section.front(), Role::Shaft);
    EXPECT_TRUE(placeOfCheck("load.coil_bind").springs);
    EXPECT_TRUE(placeOfCheck("no.such").section.empty());
}

} // namespace
} // namespace pw::gui
