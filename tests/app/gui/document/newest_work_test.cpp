#include "app/gui/document/newest_work.h"

#include "app/engine/check.h"

#include <gtest/gtest.h>
#include <QStringList>
#include <QTest>
#include <QThread>
#include <stdexcept>

namespace pw::gui {
namespace {

constexpr int kPatienceMs = 5000; // a loaded machine may be slow; the tests end as soon as it is there

class NewestWorkTest : public ::testing::Test {
protected:
    NewestWorkTest() {
        QObject::connect(&work, &NewestWork::slow, [this](double, const QString& what) { slow << what; });
        QObject::connect(&work, &NewestWork::failed, [this](const QString& what) { failed << what; });
        QObject::connect(&work, &NewestWork::foretold, [this](const QString& words) { foretold << words; });
    }

    /// Works until nobody waits any more, or it is let go.
    NewestWork::Work endless(const QString& name) {
        return [this, name](const NewestWork::Beside& beside) -> NewestWork::Then {
            ++begun;
            double done = 0;
            while (!go) {
                if (!beside.progress(done += 0.001, name.toStdString()))
                    throw engine::Stopped{};
                QThread::msleep(1);
            }
            return [this, name] { answers << name; };
        };
    }
    NewestWork::Work quick(const QString& name) {
        return [this, name](const NewestWork::Beside&) -> NewestWork::Then {
            return [this, name] { answers << name; };
        };
    }
    static bool waitFor(const std::function<bool()>& what) { return QTest::qWaitFor(what, kPatienceMs); }

    std::atomic<bool> go{false};
    std::atomic<int> begun{0};
    QStringList answers, slow, failed, foretold;
    NewestWork work; // last: it waits for its thread
};

TEST_F(NewestWorkTest, AnswersInTheThreadThatAsked) {
    QThread* there = nullptr;
    QThread* here = nullptr;
    work.ask([&](const NewestWork::Beside&) -> NewestWork::Then {
        there = QThread::currentThread();
        return [&] { here = QThread::currentThread(); };
    });
    EXPECT_TRUE(work.isBusy());
    ASSERT_TRUE(waitFor([&] { return here != nullptr; }));
    EXPECT_EQ(here, QThread::currentThread());
    EXPECT_NE(there, here);
    EXPECT_FALSE(work.isBusy());
}

TEST_F(NewestWorkTest, AnswersOnlyTheNewestQuestion) {
    work.ask(endless("first"));
    ASSERT_TRUE(waitFor([&] { return begun == 1; }));
    work.ask(endless("second")); // overtaken before it begins
    work.ask(quick("third"));
    ASSERT_TRUE(waitFor([&] { return !answers.isEmpty(); }));
    EXPECT_EQ(answers, QStringList{"third"});
    EXPECT_EQ(begun, 1);
    EXPECT_TRUE(failed.isEmpty()); // to be stopped is no fault
}

TEST_F(NewestWorkTest, BeginsOnceNothingElseWasAskedForAWhile) {
    for (int i = 0; i < 5; ++i) {
        work.ask(quick(QString::number(i)), 60);
        QTest::qWait(5);
    }
    EXPECT_TRUE(work.isBusy());
    ASSERT_TRUE(waitFor([&] { return !answers.isEmpty(); }));
    EXPECT_EQ(answers, QStringList{"4"});
}

TEST_F(NewestWorkTest, GivesNoAnswerOnceItIsToldToStopAndTellsOfProgressAgainAfterwards) {
    work.ask(endless("stopped"));
    ASSERT_TRUE(waitFor([&] { return !slow.isEmpty(); }));
    work.stop();
    EXPECT_FALSE(work.isBusy());
    slow.clear();
    work.ask(endless("again")); // while the first may still be on its way out
    ASSERT_TRUE(waitFor([&] { return slow.contains("again"); }));
    go = true;
    ASSERT_TRUE(waitFor([&] { return !answers.isEmpty(); }));
    EXPECT_EQ(answers, QStringList{"again"});
    EXPECT_TRUE(failed.isEmpty());
}

TEST_F(NewestWorkTest, LooksOnInSilenceOnceAnAnswerIsThere) {
    work.ask([this](const NewestWork::Beside& beside) -> NewestWork::Then {
        beside.tell([this] {
            work.hush();
            answers << "first";
        });
        for (double done = 0; !go; QThread::msleep(1))
            beside.progress(done += 0.001, "more");
        return [this] { answers << "whole"; };
    });
    ASSERT_TRUE(waitFor([&] { return answers == QStringList{"first"}; }));
    QTest::qWait(NewestWork::kSlowMs + 100);
    EXPECT_TRUE(work.isBusy());
    EXPECT_TRUE(slow.isEmpty());
    go = true;
    ASSERT_TRUE(waitFor([&] { return answers.size() == 2; }));
}

TEST_F(NewestWorkTest, TellsWhatWasThrownAndGoesOn) {
    work.ask([](const NewestWork::Beside&) -> NewestWork::Then {
        throw std::runtime_error("no triangle at node 7");
    });
    ASSERT_TRUE(waitFor([&] { return !failed.isEmpty(); }));
    EXPECT_EQ(failed, QStringList{"no triangle at node 7"});
    work.ask([](const NewestWork::Beside&) -> NewestWork::Then { throw 7; });
    ASSERT_TRUE(waitFor([&] { return failed.size() == 2; }));
    work.ask(quick("well"));
    ASSERT_TRUE(waitFor([&] { return !answers.isEmpty(); }));
    EXPECT_EQ(failed.size(), 2);
}

TEST_F(NewestWorkTest, ForetellsLongWorkAndHasNothingToSayOfShort) {
    engine::WorkEstimate estimate;
    estimate.seconds = estimate.mostSeconds = 0.1;
    const auto telling = [&](const NewestWork::Beside& beside) -> NewestWork::Then {
        beside.foretell(estimate);
        return [] {};
    };
    work.ask(telling);
    ASSERT_TRUE(waitFor([&] { return foretold.size() == 1; }));
    EXPECT_EQ(foretold.back(), "");
    ASSERT_TRUE(waitFor([&] { return !work.isBusy(); }));
    estimate.holes = 31;
    estimate.seconds = estimate.mostSeconds = 130;
    work.ask(telling);
    ASSERT_TRUE(waitFor([&] { return foretold.size() == 2; }));
    EXPECT_TRUE(foretold.back().contains("31 holes")) << foretold.back().toStdString();
    EXPECT_TRUE(foretold.back().contains("2 minutes")) << foretold.back().toStdString();
}

} // namespace
} // namespace pw::gui
