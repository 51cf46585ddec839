#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/rack/rack_file.h"
#include "tests/support/jobs.h"

#include <chrono>
#include <csignal>
#include <functional>
#include <gtest/gtest.h>
#include <random>
#include <sys/wait.h>
#include <unistd.h>

/// Processes that save without a pause and are killed at some moment of it. Whatever the moment, the file is
/// a whole one: what was said to be saved, or what was being saved.
namespace pw::util {
namespace {

namespace fs = std::filesystem;
using jobfile::Tree;

constexpr unsigned kSeed = 20261126;
constexpr int kKills = 150;

/// State n, told from every other in its first and its last line, and long enough to be caught half written.
Tree jobOfState(int n) {
    Tree tree = testing::sampleTree("mill_lane_six_pin");
    tree.set("title", "job " + std::to_string(n));
    tree.set("notes",
             std::string(static_cast<std::size_t>(n * 7919 % 150000), static_cast<char>('a' + n % 26)));
    tree["last"] = n;
    return tree;
}

Tree rackOfState(int n) {
    Tree tree = rack::newRackTree();
    tree["title"] = "rack " + std::to_string(n);
    for (int i = 0; i < n * 31 % 400; ++i)
        tree["offcuts"].push(Tree::Object{{"name", "piece " + std::to_string(i)}, {"thickness", "12 mm"}});
    tree["last"] = n;
    return tree;
}

/// The state a file holds; -1 when it is no whole one.
int stateIn(const Result<Tree>& tree, const std::function<Tree(int)>& ofState) {
    const Tree* last = tree ? tree->find("last") : nullptr;
    if (!last || !last->number())
        return -1;
    const int n = static_cast<int>(*last->number());
    return *tree == ofState(n) ? n : -1;
}

/// Saves state after state and says each that is done; never comes back.
[[noreturn]] void saveForever(int from, int pipe, const std::function<bool(int)>& save) {
    for (int n = from;; ++n)
        if (!save(n) || ::write(pipe, &n, sizeof n) != sizeof n)
            ::_exit(1);
}

class Killed : public ::testing::Test {
protected:
    void SetUp() override {
        std::string name = (fs::temp_directory_path() / "pw-killed-XXXXXX").string();
        ASSERT_NE(mkdtemp(name.data()), nullptr);
        m_folder = name;
    }
    void TearDown() override { fs::remove_all(m_folder); }

    /// Starts, lets it save once or twice, kills at some moment of the next save; the last state that was
    /// said to be saved, or `newest`. How long a save takes is seen from the ones before.
    int lastSaidDone(int newest, std::mt19937& random, const std::function<bool(int)>& save) {
        int ends[2];
        if (::pipe(ends) != 0)
            return -1;
        const pid_t child = ::fork();
        if (child == 0) {
            ::close(ends[0]);
            saveForever(newest + 1, ends[1], save);
        }
        ::close(ends[1]);
        int done = newest;
        for (unsigned wait = 1 + random() % 2; wait > 0; --wait) {
            const auto begin = std::chrono::steady_clock::now();
            int n = 0;
            if (::read(ends[0], &n, sizeof n) == sizeof n)
                done = n;
            m_aSave = std::chrono::steady_clock::now() - begin;
        }
        const auto most = std::chrono::duration_cast<std::chrono::microseconds>(m_aSave).count();
        ::usleep(static_cast<unsigned>(random() % static_cast<unsigned>(most + most / 4 + 100)));
        ::kill(child, SIGKILL);
        int how = 0;
        ::waitpid(child, &how, 0);
        EXPECT_TRUE(WIFSIGNALED(how)) << "it stopped by itself";
        for (int n = 0; ::read(ends[0], &n, sizeof n) == sizeof n;)
            done = n;
        ::close(ends[0]);
        return done;
    }

    struct Counts {
        int old = 0, next = 0;
    };
    /// `load` reads the file; the copy beside it must be whole too.
    void killMany(const fs::path& file, const std::function<Tree(int)>& ofState,
                  const std::function<Result<Tree>(const fs::path&)>& load,
                  const std::function<bool(int)>& save) {
        std::mt19937 random(kSeed);
        Counts counts;
        int newest = 0;
        for (int kill = 0; kill < kKills; ++kill) {
            SCOPED_TRACE("kill " + std::to_string(kill) + " of seed " + std::to_string(kSeed));
            const int done = lastSaidDone(newest, random, save);
            fs::path copy = file;
            copy += "~";
            if (fs::exists(copy)) {
                EXPECT_GT(stateIn(load(copy), ofState), 0) << "the copy is not whole";
            }
            const int found = stateIn(load(file), ofState);
            EXPECT_TRUE(found == done || found == done + 1) << "found " << found << ", saved " << done;
            counts.old += found == done;
            counts.next += found == done + 1;
            newest = std::max(found, done);
        }
        int beside = 0;
        for (const auto& entry : fs::directory_iterator(m_folder))
            beside += entry.path().filename().string().starts_with(".platewright-");
        std::cout << kKills << " kills, " << newest << " saves: " << counts.old << " times what was saved, "
                  << counts.next << " times what was being saved; " << beside
                  << " times in the middle of a file written aside\n";
        EXPECT_GT(counts.old, 0);
    }

    fs::path m_folder;
    std::chrono::steady_clock::duration m_aSave{};
};

TEST_F(Killed, AJobFileIsTheOldJobOrTheNewOneWhole) {
    const fs::path file = m_folder / "pack.plate.json";
    killMany(file, jobOfState, jobfile::loadTree,
             [&](int n) { return jobfile::saveTree(jobOfState(n), file).ok(); });
}

TEST_F(Killed, ARackFileIsTheOldRackOrTheNewOneWhole) {
    const fs::path file = m_folder / "rack.json";
    killMany(file, rackOfState, rack::loadRackTree,
             [&](int n) { return rack::saveRackTree(rackOfState(n), file).ok(); });
}

} // namespace
} // namespace pw::util
