#include "app/gui/document/ladder_finder.h"

#include <atomic>
#include <gtest/gtest.h>
#include <QTest>
#include <thread>

namespace pw::gui {
namespace {

constexpr int kPatienceMs = 5000;

job::Job jobOf(const char* screw, double mm = 10) {
    job::Job job;
    job.screw.emplace();
    job.screw->thread = screw;
    job.plate.thickness = units::Length::fromMm(mm);
    return job;
}

engine::Ladder named(const job::Job& job) {
    engine::Ladder ladder;
    ladder.thinnestThatHolds = job.screw->thread;
    return ladder;
}

struct Answers {
    std::vector<std::string> all;
    explicit Answers(LadderFinder& finder) {
        QObject::connect(&finder, &LadderFinder::found, &finder,
                         [this](const std::shared_ptr<const engine::Ladder>& ladder) {
                             all.push_back(ladder ? ladder->thinnestThatHolds : "none");
                         });
    }
};

TEST(LadderFinder, answers_once_for_a_spell_of_edits_with_the_newest_job) {
    std::atomic<int> asked = 0;
    LadderFinder finder([&](const job::Job& job, const engine::CheckOptions&) {
        ++asked;
        return named(job);
    });
    Answers answers(finder);
    for (const char* screw : {"M16", "M20", "M24"})
        finder.ask(jobOf(screw));
    EXPECT_TRUE(finder.isBusy());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.all.empty(); }, kPatienceMs));
    EXPECT_EQ(answers.all, std::vector<std::string>{"M24"});
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(finder.isBusy());
}

TEST(LadderFinder, stops_a_search_that_is_overtaken) {
    std::atomic<bool> started = false, stopped = false;
    LadderFinder finder([&](const job::Job& job, const engine::CheckOptions& options) {
        if (job.screw->thread == "M16") {
            started = true;
            while (options.progress(0, ""))
                std::this_thread::sleep_for(std::chrono::milliseconds(1));
            stopped = true;
            throw engine::Stopped{};
        }
        return named(job);
    });
    Answers answers(finder);
    finder.ask(jobOf("M16"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return started.load(); }, kPatienceMs));
    finder.ask(jobOf("M20"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.all.empty(); }, kPatienceMs));
    EXPECT_TRUE(stopped);
    EXPECT_EQ(answers.all, std::vector<std::string>{"M20"});
}

TEST(LadderFinder, stops_at_once_when_the_job_is_another_but_not_for_its_thickness) {
    std::atomic<bool> started = false, stopped = false;
    LadderFinder finder([&](const job::Job&, const engine::CheckOptions& options) -> engine::Ladder {
        started = true;
        while (options.progress(0, ""))
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        stopped = true;
        throw engine::Stopped{};
    });
    Answers answers(finder);
    finder.ask(jobOf("M16", 10));
    ASSERT_TRUE(QTest::qWaitFor([&] { return started.load(); }, kPatienceMs));
    finder.overtake(jobOf("M16", 12));
    QTest::qWait(30);
    EXPECT_FALSE(stopped);
    finder.overtake(jobOf("M20"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return stopped && !finder.isBusy(); }, kPatienceMs));
    EXPECT_TRUE(answers.all.empty());
}

TEST(LadderFinder, does_not_search_again_for_another_thickness_or_title) {
    std::atomic<int> asked = 0;
    LadderFinder finder([&](const job::Job& job, const engine::CheckOptions&) {
        ++asked;
        return named(job);
    });
    Answers answers(finder);
    finder.ask(jobOf("M20", 10));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.all.empty(); }, kPatienceMs));
    job::Job other = jobOf("M20", 6);
    other.title = "Another name";
    finder.ask(other);
    EXPECT_FALSE(finder.isBusy());
    finder.ask(jobOf("M24"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return answers.all.size() == 2; }, kPatienceMs));
    EXPECT_EQ(asked, 2);
}

TEST(LadderFinder, forgets_when_there_can_be_none_and_finds_the_same_one_anew) {
    LadderFinder finder([](const job::Job& job, const engine::CheckOptions&) { return named(job); });
    Answers answers(finder);
    finder.ask(jobOf("M20"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.all.empty(); }, kPatienceMs));
    finder.forget();
    EXPECT_EQ(answers.all.back(), "none");
    finder.ask(jobOf("M20"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return answers.all.size() == 3; }, kPatienceMs));
    EXPECT_EQ(answers.all.back(), "M20");
}

TEST(LadderFinder, turns_a_thrown_fault_into_words) {
    LadderFinder finder([](const job::Job&, const engine::CheckOptions&) -> engine::Ladder {
        throw std::logic_error("no rung 3");
    });
    QString words;
    QObject::connect(&finder, &LadderFinder::failed, [&](const QString& what) { words = what; });
    finder.ask(jobOf("M20"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return !words.isEmpty(); }, kPatienceMs));
    EXPECT_TRUE(words.contains("no rung 3"));
}

TEST(LadderFinder, can_be_thrown_away_while_it_works) {
    auto finder = std::make_unique<LadderFinder>([](const job::Job&, const engine::CheckOptions& options) {
        while (options.progress(0, ""))
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        throw engine::Stopped{};
        return engine::Ladder{};
    });
    bool answered = false;
    QObject::connect(finder.get(), &LadderFinder::found, [&] { answered = true; });
    finder->ask(jobOf("M20"));
    QTest::qWait(LadderFinder::kRestMs + 60);
    finder.reset();
    QTest::qWait(20);
    EXPECT_FALSE(answered);
}

} // namespace
} // namespace pw::gui
