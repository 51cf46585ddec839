#include "app/engine/rack_place.h"

#include <fstream>
#include <gtest/gtest.h>

using namespace pw;
namespace fs = std::filesystem;

namespace {

/// A job in a folder of its own, a rack beside it, one in a folder below, one above.
class RackPlace : public ::testing::Test {
protected:
    void SetUp() override {
        const std::string test = ::testing::UnitTest::GetInstance()->current_test_info()->name();
        m_top = fs::temp_directory_path() / ("platewright_rack_place_" + test);
        fs::remove_all(m_top);
        fs::create_directories(m_top / "jobs/below");
        for (const char* file :
             {"jobs/rack.json", "jobs/below/rack.json", "rack.json", "jobs/job.plate.json"})
            std::ofstream(m_top / file) << "{}";
    }
    void TearDown() override { fs::remove_all(m_top); }

    util::Result<fs::path> named(const std::string& rack) const {
        return engine::rackToRead(job::Job{.rack = rack}, m_top / "jobs/job.plate.json");
    }

    fs::path m_top;
};

TEST_F(RackPlace, BesideTheJobAndBelowItIsFollowed) {
    EXPECT_TRUE(named("rack.json"));
    EXPECT_TRUE(named("./below/rack.json"));
    EXPECT_TRUE(named("below/../rack.json"));
    EXPECT_TRUE(named((m_top / "jobs/rack.json").string())) << "absolute, but in the folder";
    EXPECT_TRUE(named("not there yet.json"));
    EXPECT_EQ(*named("rack.json"), m_top / "jobs/rack.json");
}

TEST_F(RackPlace, NoRackIsNoTrouble) {
    const auto none = named("");
    ASSERT_TRUE(none);
    EXPECT_TRUE(none->empty());
}

TEST_F(RackPlace, WhatLeadsOutOfTheFolderIsNotFollowed) {
    for (const std::string& rack :
         {std::string("../rack.json"), std::string("below/../../rack.json"), (m_top / "rack.json").string(),
          std::string("/etc/passwd"), std::string("../not there.json"),
          std::string("../jobs_of_others/rack.json")}) {
        const auto place = named(rack);
        ASSERT_FALSE(place) << rack;
        EXPECT_EQ(place.problem().field, "rack");
        EXPECT_NE(place.problem().message.find(rack), std::string::npos);
    }
}

TEST_F(RackPlace, AFolderWhoseNameOnlyBeginsTheSameIsAnother) {
    fs::create_directories(m_top / "jobs_old");
    std::ofstream(m_top / "jobs_old/rack.json") << "{}";
    EXPECT_FALSE(named((m_top / "jobs_old/rack.json").string()));
}

TEST_F(RackPlace, ALinkThatLeadsOutCountsAsOutside) {
    fs::create_symlink(m_top / "rack.json", m_top / "jobs/linked.json");
    fs::create_directory_symlink(m_top, m_top / "jobs/up");
    fs::create_symlink(m_top / "gone.json", m_top / "jobs/dangling.json");
    fs::create_symlink("loop.json", m_top / "jobs/loop.json");
    for (const char* rack : {"linked.json", "up/rack.json", "dangling.json", "loop.json"})
        EXPECT_FALSE(named(rack)) << rack;
    fs::create_symlink("below/rack.json", m_top / "jobs/inner.json");
    EXPECT_TRUE(named("inner.json")) << "a link that stays in the folder";
}

TEST_F(RackPlace, AFolderThatIsReachedByALinkIsTheJobsOwn) {
    fs::create_directory_symlink(m_top / "jobs", m_top / "shortcut");
    EXPECT_TRUE(engine::rackToRead(job::Job{.rack = "rack.json"}, m_top / "shortcut/job.plate.json"));
    EXPECT_TRUE(engine::rackToRead(job::Job{.rack = (m_top / "jobs/rack.json").string()},
                                   m_top / "shortcut/job.plate.json"));
}

TEST_F(RackPlace, AJobThatIsNotSavedHasNoFolder) {
    EXPECT_TRUE(engine::rackToRead(job::Job{.rack = "rack.json"}, {}));
    EXPECT_FALSE(engine::rackToRead(job::Job{.rack = (m_top / "rack.json").string()}, {}));
}

} // namespace
