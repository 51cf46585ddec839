#include "core/util/write_file.h"

#include <gtest/gtest.h>

#include <chrono>
#include <csignal>
#include <fstream>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

namespace pw::util {
namespace {

namespace fs = std::filesystem;

constexpr uid_t kNobody = 65534;

/// Root may write anywhere; the test then speaks as nobody for a while.
class WithoutRootRights {
public:
    WithoutRootRights() : m_before(geteuid()) {
        if (m_before == 0 && seteuid(kNobody) != 0)
            ADD_FAILURE() << "cannot give up root";
    }
    ~WithoutRootRights() {
        if (geteuid() != m_before && seteuid(m_before) != 0)
            ADD_FAILURE() << "cannot become root again";
    }

private:
    uid_t m_before;
};

class WriteFile : public ::testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "pw-write-XXXXXX").string();
        ASSERT_NE(mkdtemp(name.data()), nullptr);
        m_folder = name;
        fs::permissions(m_folder, fs::perms::all);
    }
    void TearDown() override {
        fs::permissions(m_folder, fs::perms::all);
        fs::remove_all(m_folder);
    }
    std::size_t filesInFolder() const {
        return static_cast<std::size_t>(
            std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()));
    }
    static std::string content(const fs::path& file) {
        std::ifstream stream(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), {}};
    }
    static void expectRefusal(const Status& status, std::string_view reason) {
        ASSERT_FALSE(status.ok());
        EXPECT_NE(status.problem().message.find(reason), std::string::npos) << toText(status.problem());
    }

    fs::path m_folder;
};

TEST_F(WriteFile, WritesWholeAndLeavesNothingBeside) {
    const fs::path file = m_folder / "ring.plate.json";
    const std::string text = "one\0two\r\n" + std::string(300'000, 'x');
    ASSERT_TRUE(writeFileWhole(file, text).ok());
    EXPECT_EQ(content(file), text);
    EXPECT_EQ(*readFile(file), text);
    EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(WriteFile, ReplacesTheOldContent) {
    const fs::path file = m_folder / "a";
    ASSERT_TRUE(writeFileWhole(file, "long old content").ok());
    ASSERT_TRUE(writeFileWhole(file, "new").ok());
    EXPECT_EQ(content(file), "new");
}

TEST_F(WriteFile, WhatAKilledSaveLeftADayAgoIsTidiedAwayAndNothingElse) {
    const fs::path old = m_folder / ".platewright-4711-0", fresh = m_folder / ".platewright-4712-0",
                   other = m_folder / ".platewright-notes";
    const auto twoDaysAgo = fs::file_time_type::clock::now() - std::chrono::hours(48);
    for (const fs::path& file : {old, fresh, other}) {
        std::ofstream(file) << "half a j";
        if (file != fresh)
            fs::last_write_time(file, twoDaysAgo);
    }
    ASSERT_TRUE(writeFileWhole(m_folder / "a", "x").ok());
    EXPECT_FALSE(fs::exists(old));
    EXPECT_TRUE(fs::exists(fresh)) << "it may be being written";
    EXPECT_TRUE(fs::exists(other));
}

TEST_F(WriteFile, KeepsThePermissionsOfTheOldFile) {
    const fs::path file = m_folder / "a";
    ASSERT_TRUE(writeFileWhole(file, "old").ok());
    ASSERT_EQ(chmod(file.c_str(), 0640), 0);
    ASSERT_TRUE(writeFileWhole(file, "new").ok());
    struct stat info {};
    ASSERT_EQ(stat(file.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 07777, 0640u);
}

TEST_F(WriteFile, ANewFileHasTheUsualPermissions) {
    const fs::path file = m_folder / "a";
    const mode_t mask = umask(022);
    ASSERT_TRUE(writeFileWhole(file, "new").ok());
    umask(mask);
    struct stat info {};
    ASSERT_EQ(stat(file.c_str(), &info), 0);
    EXPECT_EQ(info.st_mode & 07777, 0644u);
}

TEST_F(WriteFile, ALinkStaysALinkAndTheFileBehindItChanges) {
    const fs::path file = m_folder / "a", link = m_folder / "b";
    ASSERT_TRUE(writeFileWhole(file, "old").ok());
    fs::create_symlink(file, link);
    ASSERT_TRUE(writeFileWhole(link, "new").ok());
    EXPECT_TRUE(fs::is_symlink(link));
    EXPECT_EQ(content(file), "new");
}

TEST_F(WriteFile, AFullDiskLeavesTheOldFileAndNothingBeside) {
    const fs::path file = m_folder / "a";
    ASSERT_TRUE(writeFileWhole(file, "old").ok());
    // A file size limit fails a write part of the way, as a full disk does.
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto oldHandler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit small = before;
    small.rlim_cur = 4096;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const Status status = writeFileWhole(file, std::string(100'000, 'x'));
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, oldHandler);
    expectRefusal(status, "larger than is allowed");
    EXPECT_EQ(content(file), "old");
    EXPECT_EQ(filesInFolder(), 1u);
}

TEST_F(WriteFile, AWriteProtectedFolderIsNamed) {
    const fs::path file = m_folder / "a";
    fs::permissions(m_folder, fs::perms::owner_read | fs::perms::owner_exec | fs::perms::others_read |
                                  fs::perms::others_exec);
    const WithoutRootRights nobody;
    const Status status = writeFileWhole(file, "new");
    expectRefusal(status, "write-protected");
    EXPECT_EQ(status.problem().field, file.string());
}

TEST_F(WriteFile, AWriteProtectedFileIsNotReplaced) {
    const fs::path file = m_folder / "a";
    ASSERT_TRUE(writeFileWhole(file, "old").ok());
    ASSERT_EQ(chmod(file.c_str(), 0444), 0);
    const WithoutRootRights nobody;
    expectRefusal(writeFileWhole(file, "new"), "write-protected");
    EXPECT_EQ(content(file), "old");
}

TEST_F(WriteFile, AMissingFolderIsNamed) {
    expectRefusal(writeFileWhole(m_folder / "none" / "a", "x"), "no such folder");
    ASSERT_TRUE(writeFileWhole(m_folder / "a", "x").ok());
    expectRefusal(writeFileWhole(m_folder / "a" / "b", "x"), "no such folder");
}

TEST_F(WriteFile, AFolderDeviceOrEmptyNameIsRefused) {
    expectRefusal(writeFileWhole(m_folder, "x"), "folder");
    expectRefusal(writeFileWhole(m_folder.string() + "/", "x"), "folder");
    expectRefusal(writeFileWhole("/dev/null", "x"), "device");
    expectRefusal(writeFileWhole("", "x"), "no file name");
    EXPECT_TRUE(fs::is_character_file("/dev/null"));
}

TEST_F(WriteFile, AnOverlongNameIsNamed) {
    expectRefusal(writeFileWhole(m_folder / std::string(300, 'n'), "x"), "too long");
    EXPECT_TRUE(writeFileWhole(m_folder / std::string(255, 'n'), "x").ok());
}

TEST_F(WriteFile, ReadingRefusesWhatIsNoReadableFile) {
    const auto refusal = [](const Result<std::string>& result) {
        return result.ok() ? "read" : result.problem().message;
    };
    EXPECT_NE(refusal(readFile(m_folder / "none")).find("no such file"), std::string::npos);
    EXPECT_NE(refusal(readFile(m_folder)).find("folder"), std::string::npos);
    EXPECT_NE(refusal(readFile("/dev/zero")).find("device"), std::string::npos);
    EXPECT_NE(refusal(readFile("")).find("no file name"), std::string::npos);
    const fs::path pipe = m_folder / "pipe";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0666), 0);
    EXPECT_NE(refusal(readFile(pipe)).find("pipe"), std::string::npos);
    const fs::path secret = m_folder / "secret";
    ASSERT_TRUE(writeFileWhole(secret, "x").ok());
    ASSERT_EQ(chmod(secret.c_str(), 0), 0);
    const WithoutRootRights nobody;
    EXPECT_NE(refusal(readFile(secret)).find("permission"), std::string::npos);
}

TEST_F(WriteFile, ReadingStopsAtTheLimit) {
    const fs::path file = m_folder / "a";
    ASSERT_TRUE(writeFileWhole(file, std::string(5000, 'x')).ok());
    EXPECT_TRUE(readFile(file, 5000).ok());
    EXPECT_FALSE(readFile(file, 4999).ok());
}

} // namespace
} // namespace pw::util
