#include "app/engine/check.h"
#include "app/engine/propose.h"
#include "app/gui/models/proposal_rows.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/propose/proposal_model.h"
#include "app/gui/propose/propose_dialog.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/widgets/work_bar.h"
#include "app/gui/window.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <algorithm>
#include <atomic>
#include <gtest/gtest.h>
#include <QAbstractItemModelTester>
#include <QAccessible>
#include <QAction>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPointer>
#include <QTest>
#include <QThread>

namespace pw::gui {
namespace {

using jobfile::Tree;

constexpr int kPatienceMs = 60000; // the real engine, beside other work

Tree sampleTree(const char* name) {
    const auto tree = jobfile::loadTree(std::string(PW_SAMPLES "/") + name + ".plate.json");
    EXPECT_TRUE(tree.ok());
    return tree ? *tree : Tree();
}

/// The six-pin sample before anybody thought of a plate.
Tree withoutPlate() {
    Tree tree = sampleTree("mill_lane_six_pin");
    for (const char* path :
         {"plate", "stations.access_hole", "screw.washer_outside", "screw.washer_thickness"})
        tree.erase(path);
    return tree;
}

/// A real window, off the screen. Plates are proposed by the real engine; the window's own verdict is made
/// up where nothing hangs on it.
class ProposeTest : public ::testing::Test {
protected:
    void open(const Tree& tree, CheckFunction check = testing::fakeCheck) {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(text);
        settings::setColours(settings::Colours::Light);
        Engine engine;
        engine.check = std::move(check);
        engine.propose = propose;
        window = std::make_unique<Window>(engine, Questions{});
        window->resize(1366, 768);
        window->document().startNew(tree);
        window->show();
        window->activateWindow();
    }
    void ask() {
        dialog = window->propose();
        ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog->isBusy(); }, kPatienceMs));
        QTest::qWait(20);
    }

    double text = 1;
    ProposeFunction propose = engine::propose;
    std::unique_ptr<Window> window;
    QPointer<ProposeDialog> dialog;
};

TEST_F(ProposeTest, shows_the_grades_that_the_engine_gives) {
    const Tree tree = withoutPlate();
    open(tree);
    ask();
    const engine::Proposals own = engine::propose(tree, {}, units::System::Metric);
    const std::vector<ProposalRow>& rows = dialog->model().rows();
    ASSERT_GE(rows.size(), 2u);
    ASSERT_EQ(rows.size(), own.best.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const job::Job made = jobfile::readJob(engine::withChanges(tree, own.best[i].changes)).job;
        const engine::Report report = engine::check(made);
        EXPECT_EQ(rows[i].grade, report.grade) << own.best[i].title;
        ASSERT_TRUE(rows[i].margin && rows[i].region);
        EXPECT_NEAR(*rows[i].margin, *report.find(report.weakest)->marginOverWanted(), 1e-9);
        EXPECT_TRUE(rows[i].figures.contains(QString::fromStdString(own.best[i].thicknessLabel)))
            << rows[i].figures.toStdString();
        EXPECT_FALSE(rows[i].tradeOff.isEmpty());
    }
    // The rules stand below, with where they are from.
    EXPECT_EQ(dialog->view()->model()->rowCount(), static_cast<int>(rows.size()) + 1);
    EXPECT_TRUE(dialog->model().rules().join(' ').contains("ISO 273"));
    // One scale for all pictures: none is larger than its box.
    const double scale = proposalScale(rows, 100, 80);
    for (const ProposalRow& row : rows) {
        const shape::Box box = shape::bounds(row.region->rim);
        EXPECT_LE(box.width() * scale, 100 + 1e-9);
        EXPECT_LE(box.height() * scale, 80 + 1e-9);
    }
    QAbstractItemModelTester tester(&dialog->model());
    dialog->close();
}

TEST_F(ProposeTest, taking_one_is_one_step_and_undo_brings_the_old_job_back_byte_for_byte) {
    const Tree tree = withoutPlate();
    open(tree, engine::check);
    const std::string before = jobfile::toJson(window->document().tree());
    ask();
    ASSERT_GE(dialog->model().rows().size(), 2u);
    const verdict::Grade promised = dialog->model().rows()[1].grade;
    QTest::keyClick(dialog->view(), Qt::Key_Down);
    QTest::keyClick(dialog->view(), Qt::Key_Return);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog; }, kPatienceMs));
    EXPECT_EQ(window->document().undoStack().count(), 1);
    EXPECT_TRUE(window->document().reading().problems.empty());
    EXPECT_EQ(engine::check(window->document().job()).grade, promised);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            return !window->isChecking() && window->report() &&
                   window->report()->grade != verdict::Grade::Incomplete;
        },
        kPatienceMs));
    EXPECT_EQ(window->report()->grade, promised);
    // It can be edited like a typed one.
    window->figures().openField("plate.thickness", true);
    QTest::qWait(20);
    auto* box = window->figures().findChild<FieldBox*>("plate.thickness");
    ASSERT_TRUE(box);
    EXPECT_FALSE(box->findChild<QLineEdit*>()->text().isEmpty());
    EXPECT_FALSE(box->findChild<QLineEdit*>()->isReadOnly());
    window->document().undoStack().undo();
    EXPECT_EQ(jobfile::toJson(window->document().tree()), before);
    EXPECT_FALSE(window->document().undoStack().canUndo());
}

TEST_F(ProposeTest, what_is_missing_is_named_and_leads_to_its_figure) {
    Tree tree = withoutPlate();
    tree.erase("stations.circle");
    tree.erase("screw.thread");
    open(tree);
    ask();
    EXPECT_TRUE(dialog->model().rows().empty());
    EXPECT_FALSE(dialog->takeButton()->isVisible());
    EXPECT_TRUE(dialog->emptyWords().contains("pin circle")) << dialog->emptyWords().toStdString();
    EXPECT_TRUE(dialog->emptyWords().contains("thread")) << dialog->emptyWords().toStdString();
    ASSERT_GE(dialog->wantButtons().size(), 2u);
    dialog->wantButtons()[0]->click();
    QTest::qWait(50);
    EXPECT_FALSE(dialog);
    auto* box = window->figures().findChild<FieldBox*>("stations.circle");
    ASSERT_TRUE(box);
    EXPECT_TRUE(box->isVisible());
}

TEST_F(ProposeTest, stops_and_looks_again) {
    std::atomic<int> begun = 0, stopped = 0;
    propose = [&](const Tree&, const engine::CheckOptions& options, units::System) -> engine::Proposals {
        ++begun;
        for (int i = 0; i < 20000; ++i) {
            if (!options.progress(i / 20000.0, "Trying a ring, 8 mm thick")) {
                ++stopped;
                throw engine::Stopped{};
            }
            QThread::msleep(1);
        }
        return {};
    };
    open(withoutPlate());
    dialog = window->propose();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return dialog->work().words().startsWith("Trying a ring"); }, kPatienceMs));
    EXPECT_TRUE(dialog->work().isBusy());
    dialog->work().button()->click();
    EXPECT_FALSE(dialog->isBusy());
    EXPECT_FALSE(dialog->work().isBusy());
    EXPECT_TRUE(dialog->work().words().startsWith("Stopped"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return stopped == 1; }, kPatienceMs));
    dialog->work().button()->click(); // once more
    ASSERT_TRUE(QTest::qWaitFor([&] { return begun == 2; }, kPatienceMs));
    // Closed with the key, it stops by itself and leaves the job alone.
    const std::string before = jobfile::toJson(window->document().tree());
    QTest::keyClick(dialog, Qt::Key_Escape);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog && stopped == 2; }, kPatienceMs));
    EXPECT_EQ(jobfile::toJson(window->document().tree()), before);
}

TEST_F(ProposeTest, an_answer_for_an_older_job_is_dropped_and_cannot_be_taken) {
    std::atomic<bool> hold = true;
    std::atomic<int> asked = 0;
    // Deaf to stop, so that an old answer does come late.
    propose = [&](const Tree& tree, const engine::CheckOptions&, units::System) {
        const int mine = ++asked;
        while (mine == 1 && hold)
            QThread::msleep(1);
        engine::Proposals proposals;
        engine::Proposal one;
        one.title = tree.at("title") && tree.at("title")->text() ? *tree.at("title")->text() : "none";
        one.grade = verdict::Grade::Holds;
        proposals.best.push_back(one);
        return proposals;
    };
    open(withoutPlate());
    window->document().edit("title", "first", "Title");
    dialog = window->propose();
    ASSERT_TRUE(QTest::qWaitFor([&] { return asked == 1; }, kPatienceMs));
    window->document().edit("title", "second", "Title");
    hold = false;
    ASSERT_TRUE(QTest::qWaitFor([&] { return !dialog->model().rows().empty(); }, kPatienceMs));
    EXPECT_EQ(dialog->model().rows()[0].title, "second");
    EXPECT_EQ(asked, 2);
    // While the job is another again, what stands there cannot be taken.
    window->document().edit("title", "third", "Title");
    EXPECT_FALSE(dialog->takeButton()->isEnabled());
    QTest::keyClick(dialog->view(), Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible());
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return !dialog->isBusy() && dialog->takeButton()->isEnabled(); }, kPatienceMs));
    EXPECT_EQ(dialog->model().rows()[0].title, "third");
    dialog->close();
}

TEST_F(ProposeTest, is_offered_in_the_menu_and_where_the_plate_is_asked_for) {
    propose = [](const Tree&, const engine::CheckOptions&, units::System) { return engine::Proposals{}; };
    open(sampleTree("mill_lane_six_pin"), engine::check);
    const auto verdictIs = [&](bool incomplete) {
        return QTest::qWaitFor(
            [&] {
                return window->report() && !window->isChecking() &&
                       (window->report()->grade == verdict::Grade::Incomplete) == incomplete;
            },
            kPatienceMs);
    };
    ASSERT_TRUE(verdictIs(false));
    EXPECT_FALSE(window->verdict().proposeButton()->isVisible());
    const auto actions = window->menu().actions();
    EXPECT_TRUE(
        std::ranges::any_of(actions, [](QAction* a) { return a->text().startsWith("Propose a plate"); }));
    window->document().edit("plate", Tree(), "Plate");
    ASSERT_TRUE(verdictIs(true));
    EXPECT_TRUE(window->verdict().proposeButton()->isVisible());
    window->verdict().proposeButton()->click();
    dialog = window->findChild<ProposeDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_TRUE(dialog->isVisible());
    dialog->close();
    // Other figures come first: then it is those that are asked for.
    window->document().edit("stations.circle", Tree(), "Circle");
    ASSERT_TRUE(verdictIs(true));
    EXPECT_FALSE(window->verdict().proposeButton()->isVisible());
}

TEST_F(ProposeTest, reads_out_what_the_row_shows) {
    open(withoutPlate());
    ask();
    const QModelIndex first = dialog->model().index(0);
    const QString spoken = dialog->model().data(first, Qt::AccessibleTextRole).toString();
    for (const QString& part : {dialog->model().rows()[0].title, QStringLiteral("holds"),
                                dialog->model().rows()[0].figures, dialog->model().rows()[0].tradeOff})
        EXPECT_TRUE(spoken.contains(part)) << spoken.toStdString();
    auto* list = QAccessible::queryAccessibleInterface(dialog->view());
    ASSERT_TRUE(list);
    EXPECT_EQ(list->role(), QAccessible::List);
    EXPECT_FALSE(list->text(QAccessible::Name).isEmpty());
    // All can be reached with the keyboard, the rules as well, which cannot be taken.
    EXPECT_TRUE(dialog->view()->hasFocus());
    QTest::keyClick(dialog->view(), Qt::Key_End);
    EXPECT_EQ(dialog->view()->currentIndex().row(), dialog->model().rowCount() - 1);
    QTest::keyClick(dialog->view(), Qt::Key_Return);
    EXPECT_TRUE(dialog && dialog->isVisible());
    dialog->close();
}

TEST_F(ProposeTest, rows_are_as_tall_as_their_words_in_a_narrow_window_and_large_type) {
    text = 2;
    open(withoutPlate());
    ask();
    dialog->resize(640, 480);
    QTest::qWait(50);
    for (int i = 0; i < dialog->model().rowCount(); ++i) {
        const QRect at = dialog->view()->visualRect(dialog->model().index(i));
        EXPECT_LE(at.width(), dialog->view()->viewport()->width());
        EXPECT_GT(at.height(), 100);
    }
    dialog->close();
    settings::setTextSize(1);
}

} // namespace
} // namespace pw::gui
