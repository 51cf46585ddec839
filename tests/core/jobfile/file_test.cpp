#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <unistd.h>

namespace pw::jobfile {
namespace {

namespace fs = std::filesystem;

class JobFile : public ::testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "pw-job-XXXXXX").string();
        ASSERT_NE(mkdtemp(name.data()), nullptr);
        m_folder = name;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    fs::path write(std::string_view text) const {
        const fs::path file = m_folder / "job.plate.json";
        EXPECT_TRUE(util::writeFileWhole(file, text).ok());
        return file;
    }
    std::string refusal(std::string_view text) const {
        const auto tree = loadTree(write(text));
        return tree ? "" : util::toText(tree.problem());
    }

    fs::path m_folder;
};

TEST_F(JobFile, WhatWasTypedIsSavedAsTyped) {
    const fs::path file =
        write("{\"platewright\":1,\"stations\":{\"circle\":\"4 1/2″\",\"count\":6,\"land\":\"1-3/8 in\"},"
              "\"springs\":[{\"loads\":[{\"force\":\"190 ±8 lbf\",\"length\":\".030 in\"}]}],"
              "\"mine\":{\"x\":[1.50,null,\"kept\"]},\"plate\":{\"colour\":\"red\"}}");
    const auto tree = loadTree(file);
    ASSERT_TRUE(tree) << util::toText(tree.problem());
    ASSERT_TRUE(saveTree(*tree, file).ok());
    const auto again = loadTree(file);
    ASSERT_TRUE(again) << util::toText(again.problem());
    EXPECT_EQ(*again, *tree);
    EXPECT_EQ(*again->at("stations.circle")->text(), "4 1/2″");
    EXPECT_EQ(*again->at("springs[0].loads[0].force")->text(), "190 ±8 lbf");
    EXPECT_EQ(*again->at("mine.x[2]")->text(), "kept");
    EXPECT_EQ(*again->at("plate.colour")->text(), "red");
    EXPECT_EQ(again->members()->at(3).first, "mine");
}

TEST_F(JobFile, AProblemNamesTheFileThePlaceAndTheReason) {
    const std::string text = refusal("{\n  \"platewright\": 1,\n  \"plate\": {\n");
    EXPECT_NE(text.find((m_folder / "job.plate.json").string()), std::string::npos) << text;
    EXPECT_NE(text.find("line 4"), std::string::npos) << text;
    EXPECT_NE(text.find("cut short"), std::string::npos) << text;
}

TEST_F(JobFile, NewerForeignAndBrokenFilesAreRefused) {
    EXPECT_NE(refusal("{\"platewright\": 7}").find("newer Platewright, version 7; this one reads 1"),
              std::string::npos);
    EXPECT_NE(refusal("{\"plate\": {}}").find("version is missing"), std::string::npos);
    EXPECT_NE(refusal("[1]").find("braces"), std::string::npos);
    EXPECT_NE(refusal("").find("empty"), std::string::npos);
    EXPECT_NE(refusal(std::string("\x89PNG\r\n\x1a\n\0\0", 10)).find("binary"), std::string::npos);
    EXPECT_NE(refusal("{\"platewright\": 1, \"platewright\": 1}").find("twice"), std::string::npos);
}

TEST_F(JobFile, AMissingFileOrAFolderIsRefused) {
    EXPECT_NE(util::toText(loadTree(m_folder / "none").problem()).find("no such file"), std::string::npos);
    EXPECT_NE(util::toText(loadTree(m_folder).problem()).find("folder"), std::string::npos);
}

TEST_F(JobFile, AFailedSaveLeavesTheOldJobUntouched) {
    const fs::path file = write("{\"platewright\": 1}");
    const auto status = saveTree(Tree::object(), file / "inside");
    EXPECT_FALSE(status.ok());
    EXPECT_EQ(*util::readFile(file), "{\"platewright\": 1}");
}

} // namespace
} // namespace pw::jobfile
