#include "app/gui/document/journal.h"

#include "app/gui/document/document.h"
#include "app/gui/document/job_keeper.h"
#include "core/jobfile/read.h"
#include "core/util/write_file.h"
#include "tests/app/gui/support/fake_engine.h"
#include "tests/app/gui/support/live_edit.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QProcess>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <random>

namespace pw::gui {
namespace {

using jobfile::Tree;
using testing::eightPinJob;

constexpr int kPatienceMs = 8000;

class JournalTest : public ::testing::Test {
protected:
    std::filesystem::path in(const char* name) const { return folder.filePath(name).toStdString(); }
    std::filesystem::path journals() const { return in("journal"); }
    std::vector<KeptJob> leftBehind() const { return Journal(journals()).leftBehind(); }
    /// A window that died: its lock is let go of, what it kept stays.
    void leave(const Tree& tree, const std::filesystem::path& jobFile = {}) {
        Journal journal(journals());
        ASSERT_TRUE(journal.keep(tree, jobFile, 7).ok());
    }
    QTemporaryDir folder;
};

TEST_F(JournalTest, offers_what_a_dead_window_left_with_where_it_belongs_and_when) {
    leave(eightPinJob(), in("pack.plate.json"));
    const auto left = leftBehind();
    ASSERT_EQ(left.size(), 1u);
    EXPECT_EQ(left[0].tree, eightPinJob());
    EXPECT_EQ(left[0].jobFile, in("pack.plate.json"));
    EXPECT_EQ(left[0].revision, 7u);
    EXPECT_EQ(left[0].name(), "Clutch pack, 8 pins");
    EXPECT_LT(std::abs(left[0].written.secsTo(QDateTime::currentDateTimeUtc())), 60);
}

TEST_F(JournalTest, does_not_offer_the_job_of_a_window_that_is_alive) {
    Journal alive(journals());
    ASSERT_TRUE(alive.keep(eightPinJob(), {}, 1).ok());
    EXPECT_TRUE(leftBehind().empty());
    EXPECT_TRUE(alive.leftBehind().empty());
}

TEST_F(JournalTest, gives_a_job_that_was_left_to_one_window_only) {
    leave(eightPinJob());
    const auto left = leftBehind();
    ASSERT_EQ(left.size(), 1u);
    Journal first(journals()), second(journals());
    EXPECT_TRUE(first.takeOver(left[0]));
    EXPECT_FALSE(second.takeOver(left[0]));
    EXPECT_FALSE(Journal::discard(left[0]));
    EXPECT_TRUE(leftBehind().empty());
    EXPECT_TRUE(jobfile::loadTree(first.file()).ok());
}

TEST_F(JournalTest, leaves_nothing_in_the_folder_once_all_is_saved_or_thrown_away) {
    leave(eightPinJob());
    EXPECT_TRUE(Journal::discard(leftBehind().front()));
    {
        Journal journal(journals());
        ASSERT_TRUE(journal.keep(eightPinJob(), {}, 1).ok());
        journal.forget();
    }
    EXPECT_TRUE(QDir(folder.filePath("journal")).isEmpty());
}

TEST_F(JournalTest, leaves_a_journal_that_it_cannot_read_where_it_is) {
    QDir(folder.path()).mkdir("journal");
    QFile broken(folder.filePath("journal/job-1-0.plate.json"));
    ASSERT_TRUE(broken.open(QIODevice::WriteOnly));
    broken.write("{\"platewright\": 1, \"sta");
    broken.close();
    EXPECT_TRUE(leftBehind().empty());
    EXPECT_TRUE(broken.exists());
}

TEST_F(JournalTest, tells_two_windows_on_one_file_apart_from_two_on_two) {
    Journal here(journals()), there(journals());
    there.setOpenFile(in("pack.plate.json"));
    EXPECT_TRUE(here.isOpenElsewhere(in("./pack.plate.json")));
    EXPECT_FALSE(here.isOpenElsewhere(in("bar.plate.json")));
    EXPECT_FALSE(there.isOpenElsewhere(in("pack.plate.json")));
    there.setOpenFile({});
    EXPECT_FALSE(here.isOpenElsewhere(in("pack.plate.json")));
}

class KeeperTest : public JournalTest {
protected:
    KeeperTest() {
        keeper.setHeldTest([this] { return held; });
        document.startNew(eightPinJob());
    }
    bool kept() { return QFile::exists(QString::fromStdString(keeper.journal().file().string())); }
    std::string bore() {
        const auto tree = jobfile::loadTree(keeper.journal().file());
        return tree ? *tree->at("plate.bore")->text() : std::string();
    }
    Document document;
    JobKeeper keeper{document, journals()};
    bool held = false;
};

TEST_F(KeeperTest, writes_a_moment_after_an_edit_by_itself) {
    EXPECT_FALSE(kept());
    document.edit("plate.bore", "28 mm", "Bore");
    EXPECT_FALSE(kept());
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(); }, kPatienceMs));
    EXPECT_EQ(bore(), "28 mm");
}

TEST_F(KeeperTest, waits_for_the_end_of_a_drag) {
    held = true;
    const int gesture = document.newGesture();
    document.edit("plate.bore", "28 mm", "Bore", gesture);
    QTest::qWait(2 * JobKeeper::kQuietMs);
    EXPECT_FALSE(kept());
    document.edit("plate.bore", "30 mm", "Bore", gesture);
    held = false;
    ASSERT_TRUE(QTest::qWaitFor([&] { return kept(); }, kPatienceMs));
    EXPECT_EQ(bore(), "30 mm");
}

TEST_F(KeeperTest, writes_while_edit_follows_edit_without_a_pause) {
    QElapsedTimer time;
    time.start();
    for (int i = 0; !kept() && time.elapsed() < kPatienceMs; ++i) {
        document.edit("plate.bore", std::to_string(20 + i % 50) + " mm", "Bore");
        QTest::qWait(50);
    }
    EXPECT_TRUE(kept());
}

TEST_F(KeeperTest, keeps_nothing_of_a_job_that_is_saved_or_undone_to_what_is_saved) {
    document.edit("plate.bore", "28 mm", "Bore");
    ASSERT_TRUE(keeper.flush());
    EXPECT_TRUE(kept());
    ASSERT_TRUE(document.saveAs(in("pack.plate.json")).ok());
    EXPECT_FALSE(kept());
    document.edit("plate.bore", "30 mm", "Bore");
    ASSERT_TRUE(keeper.flush());
    EXPECT_TRUE(kept());
    document.undoStack().undo();
    EXPECT_FALSE(kept());
}

TEST_F(KeeperTest, says_when_it_cannot_keep_the_job_and_when_it_can_again) {
    std::filesystem::create_directory(keeper.journal().file()); // in its way
    QSignalSpy trouble(&keeper, &JobKeeper::trouble);
    document.edit("plate.bore", "28 mm", "Bore");
    EXPECT_FALSE(keeper.flush());
    ASSERT_TRUE(QTest::qWaitFor([&] { return trouble.count() == 1; }, kPatienceMs));
    EXPECT_FALSE(trouble[0][0].toString().isEmpty());
    std::filesystem::remove(keeper.journal().file());
    document.edit("plate.bore", "29 mm", "Bore");
    EXPECT_TRUE(keeper.flush());
    ASSERT_TRUE(QTest::qWaitFor([&] { return trouble.count() == 2; }, kPatienceMs));
    EXPECT_TRUE(trouble[1][0].toString().isEmpty());
}

TEST_F(KeeperTest, takes_a_job_back_as_one_step_over_what_its_file_holds) {
    ASSERT_TRUE(document.saveAs(in("pack.plate.json")).ok());
    Tree changed = eightPinJob();
    changed.set("plate.bore", "31 mm");
    leave(changed, in("pack.plate.json"));
    document.startNew(eightPinJob());
    document.edit("plate.thickness", "6 mm", "Thickness"); // and this window has a job of its own, given up
    ASSERT_TRUE(keeper.flush());
    ASSERT_TRUE(keeper.takeBack(keeper.journal().leftBehind().front()));
    EXPECT_EQ(document.tree(), changed);
    EXPECT_EQ(document.path(), in("pack.plate.json"));
    EXPECT_TRUE(document.isChanged());
    EXPECT_EQ(bore(), "31 mm"); // still kept, until it is saved
    document.undoStack().undo();
    EXPECT_EQ(document.tree(), eightPinJob());
    EXPECT_FALSE(document.isChanged());
    EXPECT_FALSE(kept());
}

TEST_F(KeeperTest, takes_a_job_back_that_never_had_a_file_and_counts_it_as_not_saved) {
    Tree changed = eightPinJob();
    changed.set("plate.bore", "31 mm");
    leave(changed);
    ASSERT_TRUE(keeper.takeBack(keeper.journal().leftBehind().front()));
    EXPECT_EQ(document.tree(), changed);
    EXPECT_TRUE(document.path().empty());
    EXPECT_TRUE(document.isChanged());
    EXPECT_EQ(bore(), "31 mm");
}

TEST_F(JournalTest, finds_old_or_new_job_whole_whenever_the_process_is_killed) {
    constexpr int kKills = 100;
    constexpr unsigned kSeed = 20260307;
    std::mt19937 random(kSeed);
    const auto jobFile = in("pack.plate.json");
    Tree first = eightPinJob();
    first.set("title", "job 1");
    first.set("plate.bore", "1 mm");
    ASSERT_TRUE(jobfile::saveTree(first, jobFile).ok());
    int newest = 1, fromJournal = 0, fromFile = 0;
    for (int kill = 0; kill < kKills; ++kill) {
        SCOPED_TRACE("kill " + std::to_string(kill) + " of seed " + std::to_string(kSeed));
        QProcess process;
        process.start(QCoreApplication::applicationFilePath(),
                      {"--edit-forever", QString::fromStdString(jobFile.string()),
                       QString::fromStdString(journals().string()), QString::number(newest + 1),
                       QString::number(random())});
        ASSERT_TRUE(process.waitForReadyRead(kPatienceMs));
        // One edit is done, however slow the machine; the moment lies in one of those after it.
        while (process.peek(process.bytesAvailable()).count('\n') < 2)
            ASSERT_TRUE(process.waitForReadyRead(kPatienceMs));
        QThread::usleep(random() % 40000);
        process.kill(); // SIGKILL
        ASSERT_TRUE(process.waitForFinished(kPatienceMs));
        ASSERT_EQ(process.exitStatus(), QProcess::CrashExit) << "it stopped by itself";
        // The last thing it said was done, by a whole line.
        const QByteArray said = process.readAllStandardOutput();
        const auto lines = said.left(said.lastIndexOf('\n') + 1).trimmed().split('\n');
        const int done = lines.last().startsWith("ready") ? newest : lines.last().split(' ')[1].toInt();

        const int inFile = testing::stateOf(jobFile.string());
        EXPECT_GE(inFile, 1) << "the job file is not whole";
        const std::filesystem::path copy = jobFile.string() + "~";
        if (std::filesystem::exists(copy)) {
            EXPECT_GE(testing::stateOf(copy.string()), 1) << "the copy is not whole";
        }
        int inJournal = 0;
        const auto left = leftBehind();
        ASSERT_LE(left.size(), 1u);
        if (!left.empty()) {
            inJournal = testing::stateOf(left[0].journal.string());
            EXPECT_GE(inJournal, 1) << "the journal is not whole";
        }
        EXPECT_GE(std::max(inFile, inJournal), done) << "what was done is lost";
        if (inJournal > inFile) { // as a person would: take it back, save it
            Document document;
            JobKeeper keeper(document, journals());
            ASSERT_TRUE(keeper.takeBack(left[0]));
            ASSERT_TRUE(document.save().ok());
        } else if (!left.empty()) {
            EXPECT_TRUE(Journal::discard(left[0]));
        }
        ++(inJournal > inFile ? fromJournal : fromFile);
        newest = std::max({newest, inFile, inJournal, done});
    }
    std::cout << kKills << " kills, " << newest << " edits kept or saved: " << fromFile
              << " times from the file, " << fromJournal << " times from the journal\n";
    // It did die in the middle of things, both ways.
    EXPECT_GT(newest, kKills);
    EXPECT_GT(fromJournal, 0);
    EXPECT_GT(fromFile, 0);
}

} // namespace
} // namespace pw::gui
