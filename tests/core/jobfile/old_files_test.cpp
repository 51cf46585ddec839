#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"
#include "core/rack/read_rack.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

/// Files of past versions, frozen in tests/reference/old_files (today's samples of version 1, as they were
/// when they were put there). That they open is a promise; their verdicts are no reference and are not asked
/// here.
namespace {

using namespace pw;
namespace fs = std::filesystem;

std::vector<fs::path> oldFiles(bool racks) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::recursive_directory_iterator(std::string(PW_REFERENCE) + "/old_files"))
        if (entry.path().extension() == ".json" && (entry.path().filename() == "rack.json") == racks)
            files.push_back(entry.path());
    return files;
}

std::string textOf(const fs::path& file) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    return text.str();
}

TEST(OldFiles, JobsOpenWithoutAProblemAndEveryKeyIsStillKnown) {
    const auto files = oldFiles(false);
    ASSERT_GE(files.size(), 15u);
    for (const fs::path& file : files) {
        const auto tree = jobfile::loadTree(file);
        ASSERT_TRUE(tree.ok()) << file << util::toText(tree.problem());
        const jobfile::Reading reading = jobfile::readJob(*tree);
        EXPECT_TRUE(reading.problems.empty()) << file << util::toText(reading.problems);
        EXPECT_TRUE(reading.unknownKeys.empty()) << file << reading.unknownKeys[0];
    }
}

TEST(OldFiles, RacksOpenWithoutAProblemAndEveryKeyIsStillKnown) {
    const auto files = oldFiles(true);
    ASSERT_GE(files.size(), 1u);
    for (const fs::path& file : files) {
        const auto tree = rack::loadRackTree(file);
        ASSERT_TRUE(tree.ok()) << file << util::toText(tree.problem());
        const rack::RackReading reading = rack::readRack(*tree);
        EXPECT_TRUE(reading.problems.empty()) << file << util::toText(reading.problems);
        EXPECT_TRUE(reading.refused.empty()) << file << reading.refused[0].message;
        EXPECT_TRUE(reading.unknownKeys.empty()) << file << reading.unknownKeys[0];
    }
}

TEST(OldFiles, WhatWasTypedIsSavedAsTyped) {
    for (const bool racks : {false, true})
        for (const fs::path& file : oldFiles(racks)) {
            const auto tree = racks ? rack::loadRackTree(file) : jobfile::loadTree(file);
            ASSERT_TRUE(tree.ok()) << file;
            const auto before = jobfile::fromJson(textOf(file));
            const auto after = jobfile::fromJson(jobfile::toJson(*tree));
            ASSERT_TRUE(before.ok() && after.ok()) << file;
            EXPECT_EQ(*after, *before) << file;
        }
}

} // namespace
