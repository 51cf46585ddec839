#include "app/gui/document/journal.h"

#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"

#include <algorithm>
#include <cerrno>
#include <charconv>
#include <csignal>
#include <fcntl.h>
#include <QStandardPaths>
#include <string>
#include <sys/file.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

namespace pw::gui {

namespace {

namespace fs = std::filesystem;
using jobfile::Tree;

constexpr const char* kKey = "platewright_journal"; ///< of the one key that makes a job file a journal
constexpr std::string_view kJobEnd = ".plate.json", kLockEnd = ".lock";

fs::path lockOf(const fs::path& journal) {
    std::string name = journal.string();
    name.replace(name.size() - kJobEnd.size(), kJobEnd.size(), kLockEnd);
    return name;
}

/// The same file gets the same words from whatever folder it is named.
std::string plainName(const fs::path& file) {
    std::error_code error;
    const fs::path whole = fs::weakly_canonical(file, error);
    return (error ? file : whole).string();
}

/// The number in "job-1234-0.lock".
pid_t processOf(const fs::path& lockFile) {
    const std::string name = lockFile.filename().string();
    const std::size_t from = name.find('-') + 1;
    int number = 0;
    std::from_chars(name.data() + from, name.data() + name.size(), number);
    return number;
}

/// Is the window that made this lock still there?
bool isAlive(const fs::path& lockFile) {
    const int fd = ::open(lockFile.c_str(), O_RDONLY | O_CLOEXEC);
    if (fd < 0)
        return false;
    const bool free = ::flock(fd, LOCK_EX | LOCK_NB) == 0;
    const int error = errno;
    ::close(fd);
    if (free)
        return false;
    if (error == EWOULDBLOCK)
        return true;
    // A file system without locks: the process number has to do.
    const pid_t process = processOf(lockFile);
    return process > 0 && (::kill(process, 0) == 0 || errno == EPERM);
}

/// Removed while it is held, so that a window that is just making it notices.
void removeIfDead(const fs::path& lockFile) {
    const int fd = ::open(lockFile.c_str(), O_RDONLY | O_CLOEXEC);
    if (fd < 0)
        return;
    if (::flock(fd, LOCK_EX | LOCK_NB) == 0)
        ::unlink(lockFile.c_str());
    ::close(fd);
}

std::vector<fs::path> filesEnding(const fs::path& folder, std::string_view end) {
    std::vector<fs::path> found;
    std::error_code error;
    for (fs::directory_iterator at(folder, error), none; !error && at != none; at.increment(error)) {
        const std::string name = at->path().filename().string();
        if (name.starts_with("job-") && name.ends_with(end))
            found.push_back(at->path());
    }
    return found;
}

} // namespace

QString KeptJob::name() const {
    if (const Tree* title = tree.find("title"); title && title->text() && !title->text()->empty())
        return QString::fromStdString(*title->text());
    return QString::fromStdString(jobFile.filename().string());
}

Journal::Journal(fs::path folder) : m_folder(std::move(folder)) {}

Journal::~Journal() {
    if (m_lock < 0)
        return;
    // Our lock goes with us unless it still has a journal to answer for.
    std::error_code error;
    if (!fs::exists(m_file, error))
        ::unlink(m_lockFile.c_str());
    ::close(m_lock);
}

fs::path Journal::standardFolder() {
    return (QStandardPaths::writableLocation(QStandardPaths::GenericDataLocation) +
            QStringLiteral("/platewright/journal"))
        .toStdString();
}

util::Status Journal::take() {
    const std::lock_guard once(m_taking);
    if (m_lock >= 0)
        return util::Done{};
    std::error_code error;
    fs::create_directories(m_folder, error);
    if (error)
        return util::Problem{m_folder.string(), "cannot be made: " + error.message()};
    fs::permissions(m_folder, fs::perms::owner_all, error); // jobs of one person
    constexpr int kTries = 1000;
    for (int i = 0; i < kTries; ++i) {
        const std::string name = "job-" + std::to_string(::getpid()) + "-" + std::to_string(i);
        const fs::path lock = m_folder / (name + std::string(kLockEnd));
        const int fd = ::open(lock.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
        if (fd < 0 && errno == EEXIST)
            continue;
        if (fd < 0)
            return util::Problem{m_folder.string(),
                                 "cannot be written: " + std::generic_category().message(errno)};
        (void)::flock(fd, LOCK_EX); // another window holds it for a moment at most, while it tidies
        struct stat info {};
        if (::fstat(fd, &info) != 0 || info.st_nlink == 0) { // tidied away before it was ours
            ::close(fd);
            continue;
        }
        m_lock = fd;
        m_lockFile = lock;
        m_file = m_folder / (name + std::string(kJobEnd));
        return util::Done{};
    }
    return util::Problem{m_folder.string(), "is full of journals"};
}

util::Status Journal::keep(const Tree& tree, const fs::path& jobFile, quint64 revision) {
    if (const auto taken = take(); !taken)
        return taken;
    Tree kept = tree;
    Tree about = Tree::object();
    about.set("job_file", jobFile.empty() ? std::string() : plainName(jobFile));
    about.set("revision", static_cast<double>(revision));
    about.set("written", QDateTime::currentDateTimeUtc().toString(Qt::ISODateWithMs).toStdString());
    kept.set(kKey, std::move(about));
    return util::writeFileWhole(m_file, jobfile::toJson(kept));
}

void Journal::forget() {
    if (m_lock >= 0)
        ::unlink(m_file.c_str());
}

std::vector<KeptJob> Journal::leftBehind() const {
    std::vector<KeptJob> found;
    for (const fs::path& file : filesEnding(m_folder, kJobEnd)) {
        if (file == m_file || isAlive(lockOf(file)))
            continue;
        auto tree = jobfile::loadTree(file);
        if (!tree)
            continue;
        KeptJob kept;
        kept.journal = file;
        if (const Tree* about = tree->find(kKey)) {
            if (const Tree* text = about->find("job_file"); text && text->text())
                kept.jobFile = *text->text();
            if (const Tree* number = about->find("revision"); number && number->number())
                kept.revision = static_cast<quint64>(*number->number());
            if (const Tree* time = about->find("written"); time && time->text())
                kept.written =
                    QDateTime::fromString(QString::fromStdString(*time->text()), Qt::ISODateWithMs);
        }
        tree->erase(kKey);
        kept.tree = std::move(*tree);
        found.push_back(std::move(kept));
    }
    // Locks of the dead that have nothing to answer for.
    for (const fs::path& lock : filesEnding(m_folder, kLockEnd)) {
        std::string journal = lock.string();
        journal.replace(journal.size() - kLockEnd.size(), kLockEnd.size(), kJobEnd);
        std::error_code error;
        if (!fs::exists(journal, error))
            removeIfDead(lock);
    }
    std::sort(found.begin(), found.end(),
              [](const KeptJob& a, const KeptJob& b) { return a.written > b.written; });
    return found;
}

bool Journal::takeOver(const KeptJob& kept) {
    // The rename is the claim: of two windows that try, one finds nothing to rename.
    if (!take() || ::rename(kept.journal.c_str(), m_file.c_str()) != 0)
        return false;
    ::unlink(lockOf(kept.journal).c_str());
    return true;
}

bool Journal::discard(const KeptJob& kept) {
    if (::unlink(kept.journal.c_str()) != 0)
        return false;
    ::unlink(lockOf(kept.journal).c_str());
    return true;
}

void Journal::setOpenFile(const fs::path& jobFile) {
    if (jobFile == m_openFile || !take())
        return;
    m_openFile = jobFile;
    const std::string name = jobFile.empty() ? std::string() : plainName(jobFile);
    // Only a hint for other windows: nothing is lost when it cannot be written.
    if (::ftruncate(m_lock, 0) == 0)
        (void)!::pwrite(m_lock, name.data(), name.size(), 0);
}

bool Journal::isOpenElsewhere(const fs::path& jobFile) const {
    const std::string name = plainName(jobFile);
    for (const fs::path& lock : filesEnding(m_folder, kLockEnd)) {
        if (lock == m_lockFile)
            continue;
        const auto text = util::readFile(lock);
        if (text && *text == name && isAlive(lock))
            return true;
    }
    return false;
}

} // namespace pw::gui
