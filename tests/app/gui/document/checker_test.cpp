#include "app/gui/document/checker.h"

#include "tests/support/jobs.h"

#include <atomic>
#include <gtest/gtest.h>
#include <QSignalSpy>
#include <QTest>
#include <thread>

namespace pw::gui {
namespace {

constexpr int kPatienceMs =
    5000; ///< a loaded machine may be slow; the tests end as soon as the answer is there

TEST(Checker, answers_with_the_revision_it_was_asked_for) {
    Checker checker([](const job::Job& job, const engine::CheckOptions&) {
        engine::Report report;
        report.title = job.title;
        return report;
    });
    QString title;
    quint64 revision = 0;
    QObject::connect(&checker, &Checker::answered,
                     [&](quint64 r, const std::shared_ptr<const engine::Report>& report) {
                         revision = r;
                         title = QString::fromStdString(report->title);
                     });
    job::Job job;
    job.title = "seven";
    checker.ask(job, 7);
    ASSERT_TRUE(QTest::qWaitFor([&] { return revision != 0; }, kPatienceMs));
    EXPECT_EQ(revision, 7u);
    EXPECT_EQ(title, "seven");
    EXPECT_FALSE(checker.isBusy());
}

TEST(Checker, stops_an_older_check_and_answers_only_the_newest) {
    std::atomic<int> started = 0, stopped = 0;
    Checker checker([&](const job::Job& job, const engine::CheckOptions& options) {
        ++started;
        while (job.title == "old") {
            if (!options.progress(0.5, "Bending the plate")) {
                ++stopped;
                throw engine::Stopped{};
            }
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        return engine::Report{};
    });
    std::vector<quint64> answers;
    QObject::connect(&checker, &Checker::answered, [&](quint64 r) { answers.push_back(r); });
    job::Job old, fresh;
    old.title = "old";
    checker.ask(old, 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return started == 1; }, kPatienceMs));
    checker.ask(old, 2); // overtaken before it ever starts
    checker.ask(fresh, 3);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !answers.empty(); }, kPatienceMs));
    EXPECT_EQ(answers, std::vector<quint64>{3});
    EXPECT_EQ(stopped, 1);
    EXPECT_EQ(started, 2);
}

TEST(Checker, tells_of_progress_only_when_the_work_is_slow) {
    std::atomic<bool> go = false;
    Checker checker([&](const job::Job&, const engine::CheckOptions& options) {
        options.progress(0.25, "Bending the plate");
        while (!go)
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return engine::Report{};
    });
    double done = -1;
    QString what;
    bool answered = false;
    QObject::connect(&checker, &Checker::slow, [&](double d, const QString& w) {
        done = d;
        what = w;
    });
    QObject::connect(&checker, &Checker::answered, [&] { answered = true; });
    checker.ask({}, 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return done >= 0; }, kPatienceMs));
    EXPECT_DOUBLE_EQ(done, 0.25);
    EXPECT_EQ(what, "Bending the plate");
    go = true;
    ASSERT_TRUE(QTest::qWaitFor([&] { return answered; }, kPatienceMs));

    done = -1;
    answered = false;
    checker.ask({}, 2); // at once this time
    ASSERT_TRUE(QTest::qWaitFor([&] { return answered; }, kPatienceMs));
    QTest::qWait(NewestWork::kSlowMs + 50);
    EXPECT_EQ(done, -1);
}

TEST(Checker, foretells_long_work_before_it_begins) {
    QString words;
    std::atomic<bool> go = false, told = false;
    bool answered = false;
    Checker checker([&](const job::Job&, const engine::CheckOptions&) {
        while (!go) // the check stands at its beginning until the words are there
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        return engine::Report{};
    });
    QObject::connect(&checker, &Checker::foretold, [&](const QString& w) {
        words = w;
        told = true;
    });
    QObject::connect(&checker, &Checker::answered, [&] { answered = true; });
    checker.ask(testing::jobOf(testing::sixPinWithHoles(30)), 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return told.load(); }, kPatienceMs));
    EXPECT_FALSE(answered);
    EXPECT_TRUE(words.contains("no symmetry and 37 holes")) << words.toStdString();
    go = true;
    ASSERT_TRUE(QTest::qWaitFor([&] { return answered; }, kPatienceMs));
    told = answered = false;
    checker.ask(testing::jobOf(testing::sampleTree("mill_lane_six_pin")), 2);
    ASSERT_TRUE(QTest::qWaitFor([&] { return answered; }, kPatienceMs));
    EXPECT_TRUE(told);
    EXPECT_EQ(words, "");
}

TEST(Checker, turns_a_thrown_fault_into_words) {
    Checker checker([](const job::Job&, const engine::CheckOptions&) -> engine::Report {
        throw std::logic_error("no triangle at node 7");
    });
    QString words;
    QObject::connect(&checker, &Checker::failed, [&](quint64, const QString& what) { words = what; });
    checker.ask({}, 1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !words.isEmpty(); }, kPatienceMs));
    EXPECT_TRUE(words.contains("no triangle at node 7"));
}

TEST(Checker, can_be_thrown_away_while_it_works) {
    auto checker = std::make_unique<Checker>([](const job::Job&, const engine::CheckOptions& options) {
        while (options.progress(0, "Working"))
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        throw engine::Stopped{};
        return engine::Report{};
    });
    bool answered = false;
    QObject::connect(checker.get(), &Checker::answered, [&] { answered = true; });
    checker->ask({}, 1);
    QTest::qWait(20);
    checker.reset();
    QTest::qWait(20);
    EXPECT_FALSE(answered);
}

} // namespace
} // namespace pw::gui
