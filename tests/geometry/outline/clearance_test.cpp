#include "geometry/outline/clearance.h"

#include "tests/geometry/outline/plates.h"

#include <algorithm>
#include <gtest/gtest.h>

using namespace pw;
using namespace pw::testing;
using shape::Part;

TEST(Clearance, LigamentsOfADiscFollowFromItsCircles) {
    const auto found = outline::ligaments(outline::buildRegion(discJob()).region);
    ASSERT_EQ(found.size(), 7u * 6 / 2 + 7);
    // Rim to hole: 70 - 50 - 12; hole to its neighbour on a hexagon: 50 - 24; bore to hole: 50 - 10 - 12.
    for (int i = 0; i < 6; ++i) {
        EXPECT_EQ(found[i].a, Part::Rim);
        EXPECT_NEAR(found[i].width, 8, 1e-9);
        EXPECT_NEAR(shape::norm(found[i].at), 66, 1e-9);
    }
    for (int i = 6; i < 12; ++i)
        EXPECT_NEAR(found[i].width, 26, 1e-9);
    for (int i = 12; i < 18; ++i) {
        EXPECT_EQ(found[i].a, Part::Bore);
        EXPECT_NEAR(found[i].width, 28, 1e-9);
    }
    for (std::size_t i = 1; i < found.size(); ++i)
        EXPECT_LE(found[i - 1].width, found[i].width);
}

TEST(Clearance, NoPathAcrossALigamentIsShorter) {
    for (const job::Job& job : soundRandomJobs(60, 21)) {
        const auto region = outline::buildRegion(job).region;
        for (const auto& l : outline::ligaments(region)) {
            EXPECT_NEAR(shape::distance(l.onA, l.onB), l.width, 1e-9);
            EXPECT_GT(l.width, 0);
            const auto& b = *std::find_if(region.holes.begin(), region.holes.end(),
                                          [&](const auto& h) { return h.part == l.b && h.index == l.ib; });
            for (std::size_t i = 0; i < b.loop.size(); ++i)
                for (int k = 0; k < 40; ++k) {
                    const shape::Point p = b.loop.side(i).pointAt(k / 40.0);
                    if (l.a == Part::Rim) {
                        EXPECT_GE(shape::distanceTo(region.rim, p), l.width - 1e-9);
                    }
                }
        }
    }
}
