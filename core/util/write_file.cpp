#include "core/util/write_file.h"

#include "core/util/say.h"

#include <cerrno>
#include <chrono>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace pw::util {

namespace {

namespace fs = std::filesystem;

/// A file descriptor that is closed whatever happens.
class Handle {
public:
    explicit Handle(int fd) : m_fd(fd) {}
    ~Handle() {
        if (m_fd >= 0)
            ::close(m_fd);
    }
    Handle(const Handle&) = delete;
    Handle& operator=(const Handle&) = delete;

    void open(const fs::path& file, int flags, mode_t mode) { m_fd = ::open(file.c_str(), flags, mode); }
    int get() const { return m_fd; }
    bool ok() const { return m_fd >= 0; }
    /// Closes now; false when the system only now says that the data did not arrive.
    bool closeNow() {
        const int fd = m_fd;
        m_fd = -1;
        return ::close(fd) == 0;
    }

private:
    int m_fd;
};

constexpr std::string_view kAsideName = ".platewright-";

/// What killed processes left of files written aside. No save takes a day, so that nobody's own is taken away,
/// even where a network drive's clock is some hours off.
void tidyAsides(const fs::path& folder) {
    const auto aDayAgo = fs::file_time_type::clock::now() - std::chrono::hours(24);
    std::error_code error;
    for (fs::directory_iterator at(folder, error), none; !error && at != none; at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (!name.starts_with(kAsideName) ||
            name.find_first_not_of("0123456789-", kAsideName.size()) != std::string::npos)
            continue;
        std::error_code unknown;
        const auto written = fs::last_write_time(at->path(), unknown);
        if (!unknown && written < aDayAgo && at->is_regular_file(unknown))
            ::unlink(at->path().c_str());
    }
}

/// The file written aside; gone again unless it was renamed into place.
class AsideFile {
public:
    /// `mode` as for open(2): what the user's mask takes away is taken away.
    AsideFile(const fs::path& folder, mode_t mode) : m_handle(-1) {
        constexpr int kTries = 100; // names left behind by crashes of programs with our number
        for (int i = 0; i < kTries && !m_handle.ok(); ++i) {
            m_path = folder /
                     (std::string(kAsideName) + std::to_string(::getpid()) + "-" + std::to_string(i));
            m_handle.open(m_path, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, mode);
            if (!m_handle.ok() && errno != EEXIST)
                break;
        }
        m_made = m_handle.ok();
    }
    ~AsideFile() {
        if (m_made)
            ::unlink(m_path.c_str());
    }
    AsideFile(const AsideFile&) = delete;
    AsideFile& operator=(const AsideFile&) = delete;

    Handle& handle() { return m_handle; }
    bool renameTo(const fs::path& file) {
        if (::rename(m_path.c_str(), file.c_str()) != 0)
            return false;
        m_made = false;
        return true;
    }

private:
    fs::path m_path;
    Handle m_handle;
    bool m_made = false;
};

std::string systemText(int error) {
    return std::generic_category().message(error);
}

Problem cannotWrite(const fs::path& file, int error) {
    const auto because = [&](const std::string& why) {
        return Problem{file.string(), say("not written: %1", {why})};
    };
    switch (error) {
    case ENOENT:
    case ENOTDIR:
        return because(say("there is no such folder; make it first or choose another"));
    case EACCES:
    case EPERM:
        return because(say("the folder or the file is write-protected; save somewhere else"));
    case EROFS:
        return because(say("the disk is read-only; save somewhere else"));
    case ENOSPC:
    case EDQUOT:
        return because(say("the disk is full; make room or save somewhere else"));
    case EFBIG:
        return because(say("the file is larger than is allowed here"));
    case EIO:
    case ESTALE:
    case ENODEV:
    case ENXIO:
    case ENOTCONN:
    case ENETDOWN:
    case ENETUNREACH:
    case EHOSTDOWN:
    case EHOSTUNREACH:
    case ETIMEDOUT:
        return because(say("the drive does not answer; connect it again, or save somewhere else"));
    case ENAMETOOLONG:
        return because(say("the name is too long; choose a shorter one"));
    case EISDIR:
        return because(say("this is a folder; give a file name"));
    default:
        return because(systemText(error));
    }
}

bool writeAll(int fd, std::string_view content) {
    while (!content.empty()) {
        const ssize_t written = ::write(fd, content.data(), content.size());
        if (written < 0 && errno == EINTR)
            continue;
        if (written == 0) // nothing taken and no reason given
            errno = ENOSPC;
        if (written <= 0)
            return false;
        content.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// The rename itself must reach the disk too. Some file systems cannot do this for a folder; the file is
/// whole anyway.
void flushFolder(const fs::path& folder) {
    const Handle handle(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (handle.ok())
        ::fsync(handle.get());
}

} // namespace

Status writeFileWhole(const fs::path& file, std::string_view content) {
    if (file.empty())
        return Problem{"", say("not written: no file name was given")};
    // A link is followed, so that it is the file behind it that changes and the link stays a link.
    std::error_code unresolved;
    fs::path target = fs::is_symlink(file, unresolved) ? fs::canonical(file, unresolved) : file;
    if (unresolved || target.empty())
        target = file;
    if (!target.has_filename())
        return cannotWrite(file, EISDIR);

    struct stat old {};
    const bool replaces = ::stat(target.c_str(), &old) == 0;
    if (!replaces && errno != ENOENT)
        return cannotWrite(file, errno);
    if (replaces && S_ISDIR(old.st_mode))
        return cannotWrite(file, EISDIR);
    if (replaces && !S_ISREG(old.st_mode))
        return Problem{file.string(), say("not written: this is a device or a pipe, not a file")};
    if (replaces && ::faccessat(AT_FDCWD, target.c_str(), W_OK, AT_EACCESS) != 0)
        return cannotWrite(file, errno);

    const fs::path folder = target.has_parent_path() ? target.parent_path() : fs::path(".");
    AsideFile aside(folder, replaces ? 0600 : 0666);
    if (!aside.handle().ok())
        return cannotWrite(file, errno);
    const int fd = aside.handle().get();
    // Group first: changing the owner clears set-id bits, and may be refused, which is no reason to lose the
    // work.
    if (replaces && ::fchown(fd, old.st_uid, old.st_gid) != 0)
        errno = 0;
    if ((replaces && ::fchmod(fd, old.st_mode & 07777) != 0) || !writeAll(fd, content) || ::fsync(fd) != 0 ||
        !aside.handle().closeNow() || !aside.renameTo(target))
        return cannotWrite(file, errno);
    flushFolder(folder);
    tidyAsides(folder);
    return Done{};
}

Result<std::string> readFile(const fs::path& file, std::size_t limit) {
    const auto because = [&](const std::string& why) {
        return Problem{file.string(), say("cannot be read: %1", {why})};
    };
    if (file.empty())
        return Problem{"", say("no file name was given")};
    // Not blocking, so that a pipe nobody writes to is refused below instead of waited for.
    const Handle handle(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK));
    if (!handle.ok()) {
        const int error = errno;
        if (error == ENOENT || error == ENOTDIR)
            return because(say("there is no such file"));
        if (error == EACCES || error == EPERM)
            return because(say("no permission to read it"));
        return because(systemText(error));
    }
    struct stat info {};
    if (::fstat(handle.get(), &info) != 0)
        return because(systemText(errno));
    if (S_ISDIR(info.st_mode))
        return because(say("this is a folder; give a file"));
    if (!S_ISREG(info.st_mode))
        return because(say("this is a device or a pipe, not a file"));

    std::string content;
    std::string piece(std::size_t(64) << 10, '\0');
    for (;;) {
        const ssize_t got = ::read(handle.get(), piece.data(), piece.size());
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return because(systemText(errno));
        if (got == 0)
            return content;
        content.append(piece.data(), static_cast<std::size_t>(got));
        if (content.size() > limit)
            return because(say("larger than %1 KiB, which is no file of ours", {limit >> 10}));
    }
}

} // namespace pw::util
