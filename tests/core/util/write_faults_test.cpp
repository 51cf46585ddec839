#include "core/util/write_file.h"

#include <algorithm>
#include <cerrno>
#include <fstream>
#include <gtest/gtest.h>
#include <string>
#include <unistd.h>

/// A disk that fails at any step of a save. The linker puts these in place of the system's own (--wrap, see
/// tests/CMakeLists.txt); without a fault planned they pass on.
namespace {

enum class Call { None, Write, Sync, Close, Rename };

struct Fault {
    Call call = Call::None;
    int after = 0; ///< this many calls go well first
    int error = 0; ///< 0: the call does nothing and says that it did nothing
};
Fault planned;

/// Is this call the one that fails?
bool failsNow(Call call) {
    if (planned.call != call || planned.after-- > 0)
        return false;
    planned.call = Call::None;
    errno = planned.error;
    return true;
}

} // namespace

extern "C" {
ssize_t __real_write(int fd, const void* data, size_t size);
int __real_fsync(int fd);
int __real_close(int fd);
int __real_rename(const char* from, const char* to);

ssize_t __wrap_write(int fd, const void* data, size_t size) {
    if (planned.call != Call::Write)
        return __real_write(fd, data, size);
    // Pieces at a time, so that a fault lies in the middle of the file.
    if (failsNow(Call::Write))
        return planned.error == 0 ? 0 : -1;
    return __real_write(fd, data, std::min<size_t>(size, 1000));
}
int __wrap_fsync(int fd) {
    return failsNow(Call::Sync) ? -1 : __real_fsync(fd);
}
int __wrap_close(int fd) {
    if (!failsNow(Call::Close))
        return __real_close(fd);
    const int error = errno;
    __real_close(fd);
    errno = error;
    return -1;
}
int __wrap_rename(const char* from, const char* to) {
    return failsNow(Call::Rename) ? -1 : __real_rename(from, to);
}
}

namespace pw::util {
namespace {

namespace fs = std::filesystem;

class WriteFaults : public ::testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "pw-faults-XXXXXX").string();
        ASSERT_NE(mkdtemp(name.data()), nullptr);
        m_folder = name;
        m_file = m_folder / "a";
        ASSERT_TRUE(writeFileWhole(m_file, kOld).ok());
    }
    void TearDown() override {
        planned = {};
        fs::remove_all(m_folder);
    }
    static std::string content(const fs::path& file) {
        std::ifstream stream(file, std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), {}};
    }
    /// Saves with the fault; the words, empty when all went well.
    std::string saved(Fault fault) {
        planned = fault;
        const Status status = writeFileWhole(m_file, kNew);
        const bool met = planned.call == Call::None && fault.call != Call::None;
        planned = {};
        EXPECT_TRUE(met) << "the fault was not met";
        EXPECT_EQ(std::distance(fs::directory_iterator(m_folder), fs::directory_iterator()), 1) << "litter";
        EXPECT_EQ(content(m_file), status.ok() ? kNew : kOld);
        return status.ok() ? "" : status.problem().message;
    }

    inline static const std::string kOld = "old", kNew = std::string(5000, 'n');
    fs::path m_folder, m_file;
};

TEST_F(WriteFaults, AFullDiskAtAnyStepLeavesTheOldFileAndIsSaid) {
    for (const int error : {ENOSPC, EDQUOT}) {
        for (int piece = 0; piece < 5; ++piece)
            EXPECT_NE(saved({Call::Write, piece, error}).find("disk is full"), std::string::npos);
        // Network drives and disks with late allocation only find out at the end.
        EXPECT_NE(saved({Call::Sync, 0, error}).find("disk is full"), std::string::npos);
        EXPECT_NE(saved({Call::Close, 0, error}).find("disk is full"), std::string::npos);
        EXPECT_NE(saved({Call::Rename, 0, error}).find("disk is full"), std::string::npos);
    }
}

TEST_F(WriteFaults, ADriveThatIsGoneLeavesTheOldFileAndIsSaid) {
    for (const int error : {EIO, ESTALE, ENODEV, ENXIO, ENOTCONN, ETIMEDOUT, EHOSTDOWN})
        for (const Call call : {Call::Write, Call::Sync, Call::Close, Call::Rename})
            EXPECT_NE(saved({call, 0, error}).find("does not answer"), std::string::npos) << error;
}

TEST_F(WriteFaults, ADiskThatTurnsReadOnlyLeavesTheOldFileAndIsSaid) {
    for (const Call call : {Call::Write, Call::Sync, Call::Close, Call::Rename})
        EXPECT_NE(saved({call, 0, EROFS}).find("read-only"), std::string::npos);
}

TEST_F(WriteFaults, ASignalInTheMiddleOfAWriteIsNoFault) {
    EXPECT_EQ(saved({Call::Write, 2, EINTR}), "");
}

/// Asked for more, some file systems write nothing and say so, for ever.
TEST_F(WriteFaults, ADiskThatTakesNothingDoesNotHangASave) {
    EXPECT_NE(saved({Call::Write, 3, 0}).find("disk is full"), std::string::npos);
}

TEST_F(WriteFaults, AFolderThatCannotBeFlushedIsNoReasonToSayThatNothingWasSaved) {
    EXPECT_EQ(saved({Call::Sync, 1, EINVAL}), "");
}

} // namespace
} // namespace pw::util
