#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/top_bar.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/bent_view.h"
#include "app/gui/views/curve_view.h"
#include "app/gui/views/ladder_view.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>
#include <QAbstractButton>
#include <QApplication>
#include <QSplitter>
#include <QTest>
#include <QWheelEvent>

namespace pw::gui {
namespace {

constexpr int kPatienceMs = 8000;

/// What stands below and over the plan, in a real window off the screen.
class StripTest : public ::testing::Test {
protected:
    StripTest() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        forgetSession();
        open();
    }
    ~StripTest() override {
        window.reset();
        forgetSession();
        settings::setTextSize(1);
        Look::now().set(Tone::Light, 1);
    }
    static void forgetSession() { settings::forgetSession(); }
    void open(QSize size = {1366, 768}) {
        Questions q;
        q.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        window = std::make_unique<Window>(Engine{.check = testing::fakeCheck, .ladder = testing::fakeLadder}, q);
        window->resize(size);
        window->document().startNew(testing::eightPinJob());
        window->show();
        window->activateWindow();
        settle();
    }
    void settle() {
        EXPECT_TRUE(QTest::qWaitFor(
            [this] {
                return window->report() && !window->isChecking() && !window->strip().isSearching() &&
                       strip().ladder()->ladder();
            },
            kPatienceMs));
        QTest::qWait(20);
    }
    LowerStrip& strip() { return window->strip(); }
    LadderView& ladder() { return *strip().ladder(); }
    std::string thickness() { return *window->document().tree().at("plate.thickness")->text(); }

    std::unique_ptr<Window> window;
};

TEST_F(StripTest, leaves_the_plan_usable_on_1366_by_768) {
    EXPECT_FALSE(strip().isFolded());
    EXPECT_GE(window->plan().height(), 440);
    EXPECT_GE(strip().height(), 230);
    EXPECT_TRUE(strip().section()->isVisible());
    EXPECT_TRUE(ladder().isVisible());
}

TEST_F(StripTest, folds_by_itself_in_a_low_window_and_stays_as_the_user_wants_it) {
    window->resize(1366, 700);
    QTest::qWait(20);
    EXPECT_TRUE(strip().isFolded());
    EXPECT_TRUE(strip().section()->slider()->isVisible()); // the row that can be worked with
    EXPECT_GE(window->plan().height(), 550);
    strip().foldButton()->click();
    EXPECT_FALSE(strip().isFolded());
    window->resize(1366, 680);
    QTest::qWait(20);
    EXPECT_FALSE(strip().isFolded());
}

TEST_F(StripTest, does_not_fold_because_a_notice_comes_and_goes) {
    window->document().edit("nonsense", "kept", "Nonsense");
    QTest::qWait(20);
    ASSERT_TRUE(window->notice().isVisible());
    EXPECT_FALSE(strip().isFolded());
}

TEST_F(StripTest, remembers_its_height_and_fold) {
    auto* splitter = qobject_cast<QSplitter*>(strip().parentWidget());
    ASSERT_TRUE(splitter);
    splitter->setSizes({splitter->height() - 301, 300});
    Q_EMIT splitter->splitterMoved(splitter->height() - 301, 1);
    window->close();
    open();
    EXPECT_NEAR(strip().height(), 300, 2);
    strip().foldButton()->click();
    window->close();
    open();
    EXPECT_TRUE(strip().isFolded());
}

TEST_F(StripTest, takes_a_thickness_by_a_click_as_one_step_of_undo) {
    EXPECT_EQ(thickness(), "10 mm");
    const auto& layout = ladder().layoutNow();
    const int rung = rungOf(*ladder().ladder(), units::Length::fromMm(12));
    ASSERT_TRUE(layout.shows(rung));
    QTest::mouseClick(&ladder(), Qt::LeftButton, {},
                      QPoint(static_cast<int>(layout.middleOf(rung)), ladder().height() / 2));
    EXPECT_EQ(thickness(), "12 mm");
    window->document().undoStack().undo();
    EXPECT_EQ(thickness(), "10 mm");
    EXPECT_FALSE(window->document().undoStack().canUndo());
}

TEST_F(StripTest, takes_a_thickness_by_keyboard) {
    ladder().setFocus(Qt::TabFocusReason);
    QTest::keyClick(&ladder(), Qt::Key_Left);
    EXPECT_EQ(thickness(), "10 mm"); // looking is not taking
    EXPECT_TRUE(ladder().accessibleDescription().contains(QStringLiteral("8")));
    QTest::keyClick(&ladder(), Qt::Key_Return);
    EXPECT_EQ(thickness(), "8 mm");
    QTest::keyClick(&ladder(), Qt::Key_End);
    QTest::keyClick(&ladder(), Qt::Key_Space);
    EXPECT_EQ(thickness(), "40 mm");
}

TEST_F(StripTest, brings_thicknesses_out_of_sight_into_it_by_wheel_and_keyboard) {
    const int first = ladder().layoutNow().first;
    ASSERT_GT(first, 0); // a window of 1366 px has no room for all
    const QPointF at(ladder().width() / 2.0, ladder().height() / 2.0);
    QWheelEvent wheel(at, ladder().mapToGlobal(at), {}, {0, 120}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QApplication::sendEvent(&ladder(), &wheel);
    EXPECT_EQ(ladder().layoutNow().first, first - 1);
    ladder().setFocus(Qt::TabFocusReason);
    QTest::keyClick(&ladder(), Qt::Key_Home);
    EXPECT_EQ(ladder().layoutNow().first, 0);
    EXPECT_EQ(thickness(), "10 mm");
}

TEST_F(StripTest, lists_inch_stock_when_the_window_shows_inches) {
    window->setUnits(units::System::Inch);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return ladder().ladder() && ladder().ladder()->rungs.front().label == "1/8 in"; },
        kPatienceMs));
}

TEST_F(StripTest, says_why_there_is_no_ladder_when_a_figure_is_wanting) {
    auto tree = window->document().tree();
    tree.erase("plate.bore");
    window->document().replace(tree, "Bore");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !ladder().ladder(); }, kPatienceMs));
    window->document().undoStack().undo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return ladder().ladder() != nullptr; }, kPatienceMs));
}

TEST_F(StripTest, moves_the_section_by_keyboard_from_stop_to_stop) {
    auto* section = strip().section();
    auto* slider = section->slider();
    slider->setFocus();
    EXPECT_DOUBLE_EQ(section->state().towardsHub, 3); // squeezed, to begin with
    QTest::keyClick(slider, Qt::Key_PageDown);
    EXPECT_DOUBLE_EQ(section->state().towardsHub, 0);
    QTest::keyClick(slider, Qt::Key_PageUp);
    QTest::keyClick(slider, Qt::Key_PageUp);
    EXPECT_LT(section->state().towardsHub, -30);
    QTest::keyClick(slider, Qt::Key_Left);
    EXPECT_GT(section->state().force->high, units::Force());
    EXPECT_TRUE(slider->accessibleDescription().contains(section->words().left(12)));
}

TEST_F(StripTest, says_solid_in_words_when_the_coils_touch) {
    auto tree = window->document().tree();
    tree.set("springs[0].solid_length", "40 mm");
    window->document().replace(tree, "Solid");
    QTest::qWait(20);
    EXPECT_TRUE(strip().section()->words().contains(QStringLiteral("solid, 1")));
    strip().section()->slider()->setFocus();
    QTest::keyClick(strip().section()->slider(), Qt::Key_Home);
    EXPECT_TRUE(strip().section()->words().contains(QStringLiteral("tight")));
}

TEST_F(StripTest, puts_the_bent_plate_over_the_plan_and_the_load_below_it) {
    auto& plan = window->plan();
    EXPECT_FALSE(plan.bent()->isVisible());
    plan.setView(PlanView::View::Bent);
    QTest::qWait(20);
    EXPECT_TRUE(plan.bent()->isVisible());
    EXPECT_TRUE(strip().curve()->isVisible());
    EXPECT_FALSE(strip().section()->isVisible());
    EXPECT_GT(plan.bent()->times(), 1);
    const double yaw = plan.bent()->camera().yaw;
    plan.bent()->setFocus();
    QTest::keyClick(plan.bent(), Qt::Key_Right);
    EXPECT_NE(plan.bent()->camera().yaw, yaw);
    const double times = plan.bent()->times();
    QTest::keyClick(plan.bent(), Qt::Key_Plus);
    EXPECT_GT(plan.bent()->times(), times);
    QTest::keyClick(plan.bent(), Qt::Key_Home);
    EXPECT_DOUBLE_EQ(plan.bent()->times(), times);
    EXPECT_DOUBLE_EQ(plan.bent()->camera().yaw, Camera::first().yaw);
    plan.setView(PlanView::View::Plain);
    EXPECT_FALSE(plan.bent()->isVisible());
    EXPECT_TRUE(strip().section()->isVisible());
}

TEST_F(StripTest, bends_the_plate_by_the_load_that_is_taken_on_the_curve) {
    window->plan().setView(PlanView::View::Bent);
    QTest::qWait(20);
    auto* curve = strip().curve();
    EXPECT_DOUBLE_EQ(curve->factor(), 1);
    const QImage full = window->plan().bent()->grab().toImage();
    curve->setFocus();
    QTest::keyClick(curve, Qt::Key_PageDown);
    EXPECT_DOUBLE_EQ(curve->factor(), 0);
    QTest::qWait(200);
    EXPECT_NE(window->plan().bent()->grab().toImage(), full);
    QTest::keyClick(curve, Qt::Key_PageUp);
    EXPECT_DOUBLE_EQ(curve->factor(), 1);
    QTest::mouseClick(curve, Qt::LeftButton, {}, QPoint(curve->width() - 12, curve->height() / 3));
    EXPECT_GT(curve->factor(), 1.25);
    QTest::keyClick(curve, Qt::Key_Home);
    EXPECT_DOUBLE_EQ(curve->factor(), 1);
}

TEST_F(StripTest, turns_the_bent_plate_with_the_mouse) {
    window->plan().setView(PlanView::View::Bent);
    auto* bent = window->plan().bent();
    const Camera before = bent->camera();
    QTest::mousePress(bent, Qt::LeftButton, {}, QPoint(300, 200));
    QTest::mouseMove(bent, QPoint(340, 180));
    QTest::mouseRelease(bent, Qt::LeftButton, {}, QPoint(340, 180));
    EXPECT_NE(bent->camera().yaw, before.yaw);
    EXPECT_LT(bent->camera().elevation, before.elevation);
}

TEST_F(StripTest, names_everything_that_can_be_reached_in_the_bent_view_as_well) {
    window->plan().setView(PlanView::View::Bent);
    QTest::qWait(20);
    int reached = 0;
    for (auto* widget : window->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible())
            continue;
        ++reached;
        auto* button = qobject_cast<QAbstractButton*>(widget);
        EXPECT_FALSE(widget->accessibleName().isEmpty() && !(button && !button->text().isEmpty()))
            << widget->metaObject()->className();
    }
    EXPECT_GT(reached, 10);
}

TEST_F(StripTest, is_reached_by_the_tab_key_after_the_plan_and_before_the_verdict) {
    const auto visited = [this] {
        QWidgetList all;
        for (int i = 0; i < 80; ++i) {
            QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab);
            if (!all.contains(QApplication::focusWidget()))
                all << QApplication::focusWidget();
        }
        return all;
    };
    window->figures().setFocus();
    window->plan().setFocus(Qt::OtherFocusReason);
    const auto plain = visited();
    for (QWidget* widget : {static_cast<QWidget*>(strip().section()->slider()),
                            static_cast<QWidget*>(&ladder()), static_cast<QWidget*>(strip().foldButton())})
        EXPECT_TRUE(plain.contains(widget)) << widget->metaObject()->className();
    const auto* row = window->verdict().rows().front()->findChild<QAbstractButton*>();
    EXPECT_LT(plain.indexOf(strip().section()->slider()), plain.indexOf(&ladder()));
    EXPECT_LT(plain.indexOf(&ladder()), plain.indexOf(row));
    window->plan().setView(PlanView::View::Bent);
    window->plan().bent()->setFocus(Qt::OtherFocusReason);
    const auto bent = visited();
    EXPECT_TRUE(bent.contains(window->plan().bent()->slider()));
    EXPECT_TRUE(bent.contains(strip().curve()));
    EXPECT_TRUE(bent.contains(window->plan().bent()));
}

TEST_F(StripTest, shows_one_pane_at_a_time_in_very_large_type) {
    settings::setTextSize(2);
    Look::now().set(Tone::Light, 2);
    QTest::qWait(20);
    EXPECT_TRUE(strip().isFolded());
    strip().foldButton()->click();
    QTest::qWait(20);
    const int shown = strip().section()->isVisible() + strip().curve()->isVisible() + ladder().isVisible();
    EXPECT_EQ(shown, 1);
    EXPECT_TRUE(QRect(QPoint(), strip().size()).contains(strip().foldButton()->geometry()));
}

} // namespace
} // namespace pw::gui
