#include "app/gui/window.h"

#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/top_bar.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/measure_card.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/word_button.h"
#include "tests/app/gui/support/fake_engine.h"
#include "tests/support/jobs.h"

#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <QApplication>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>

namespace pw::gui {
namespace {

using jobfile::Tree;

constexpr int kPatienceMs = 8000;

/// A real window, off the screen, with the made-up engine; its questions are answered from here.
class WindowTest : public ::testing::Test {
protected:
    WindowTest() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        Questions q;
        q.unsaved = [this](QWidget*, const QString&) {
            ++askedUnsaved;
            return unsaved;
        };
        q.really = [this](QWidget*, const QString&, const QString& words, const QString&) {
            askedReally = words;
            return really;
        };
        q.openPath = [this](QWidget*) { return chosen; };
        q.savePath = [this](QWidget*, const QString&, const QString&, const QString&) { return chosen; };
        Engine engine;
        engine.check = testing::fakeCheck;
        engine.write = [this](Output output, const job::Job&, const engine::Report&,
                              const std::filesystem::path& file, const OutputChoices& choices) {
            written = file;
            writtenAs = output;
            writtenAnyway = choices.anyway;
            return util::Result<std::vector<std::string>>(std::vector<std::string>());
        };
        window = std::make_unique<Window>(engine, q);
        window->resize(1366, 768);
        window->document().startNew(testing::eightPinJob());
        window->show();
        window->activateWindow();
        settle();
        window->plan().fit();
    }
    ~WindowTest() override { unsaved = Questions::Unsaved::Discard; }

    void settle() {
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return window->report() && !window->isChecking(); }, kPatienceMs));
        QTest::qWait(20);
    }
    FieldBox* box(const char* field) {
        window->figures().openField(field, false);
        QTest::qWait(10);
        return window->figures().findChild<FieldBox*>(QString::fromUtf8(field));
    }
    QLineEdit* edit(const char* field) { return box(field)->findChild<QLineEdit*>(); }
    void type(const char* field, const QString& text, Qt::Key end = Qt::Key_Return) {
        auto* line = edit(field);
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, text);
        QTest::keyClick(line, end);
        QTest::qWait(10);
    }
    std::string at(const char* field) {
        const Tree* value = window->document().tree().at(field);
        return value && value->text() ? *value->text() : std::string();
    }
    QPoint place(shape::Point p) { return window->plan().transform().toScreen(p).toPoint(); }
    void drag(QPoint from, QPoint to) {
        QTest::mouseMove(&window->plan(), from);
        QTest::mousePress(&window->plan(), Qt::LeftButton, {}, from);
        for (int i = 1; i <= 6; ++i)
            QTest::mouseMove(&window->plan(), from + (to - from) * i / 6);
        QTest::mouseRelease(&window->plan(), Qt::LeftButton, {}, to);
    }

    int askedUnsaved = 0;
    QString askedReally;
    Questions::Unsaved unsaved = Questions::Unsaved::Discard;
    bool really = false, writtenAnyway = false;
    Output writtenAs = Output::Json;
    std::filesystem::path chosen, written;
    std::unique_ptr<Window> window;
};

TEST_F(WindowTest, shows_the_verdict_of_the_job_it_opens_with) {
    EXPECT_EQ(window->verdict().head()->grade(), verdict::Grade::Holds);
    EXPECT_EQ(window->verdict().rows().size(), 12u);
}

TEST_F(WindowTest, takes_a_typed_figure_with_the_unit_of_the_field_and_checks_again) {
    type("plate.thickness", "6");
    EXPECT_EQ(at("plate.thickness"), "6 mm");
    EXPECT_EQ(edit("plate.thickness")->text(), "6 mm");
    settle();
    EXPECT_EQ(window->verdict().head()->grade(), verdict::Grade::Sets);
}

TEST_F(WindowTest, counts_a_figure_after_a_pause_without_touching_what_is_being_typed) {
    auto* line = edit("plate.thickness");
    line->setFocus();
    line->selectAll();
    QTest::keyClicks(line, "7");
    ASSERT_TRUE(QTest::qWaitFor([&] { return at("plate.thickness") == "7 mm"; }, kPatienceMs));
    EXPECT_EQ(line->text(), "7");
    QTest::keyClicks(line, ".5");
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(at("plate.thickness"), "7.5 mm");
    window->document().undoStack().undo(); // one spell of typing, one step
    EXPECT_EQ(at("plate.thickness"), "10 mm");
}

TEST_F(WindowTest, counts_a_figure_that_is_left_with_the_tab_key) {
    type("plate.thickness", "7", Qt::Key_Tab);
    EXPECT_EQ(at("plate.thickness"), "7 mm");
}

TEST_F(WindowTest, keeps_a_figure_it_does_not_understand_as_typed_and_the_last_good_one_in_the_job) {
    type("stations.access_hole", "20 mmm");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::NotUnderstood);
    EXPECT_EQ(edit("stations.access_hole")->text(), "20 mmm");
    EXPECT_EQ(at("stations.access_hole"), "20 mm");
    type("stations.access_hole", "22");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::Typed);
    EXPECT_EQ(at("stations.access_hole"), "22 mm");
}

TEST_F(WindowTest, keeps_what_it_does_not_understand_while_other_figures_are_typed) {
    type("stations.access_hole", "20 mmm", Qt::Key_Tab);
    type("stations.keeper", "15", Qt::Key_Tab);
    EXPECT_EQ(at("stations.keeper"), "15 mm");
    settle();
    EXPECT_EQ(edit("stations.access_hole")->text(), "20 mmm");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::NotUnderstood);
    // Another group is opened, and its boxes are others.
    type("plate.thickness", "11", Qt::Key_Tab);
    EXPECT_EQ(edit("stations.access_hole")->text(), "20 mmm");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::NotUnderstood);
    EXPECT_EQ(at("stations.access_hole"), "20 mm");
    // Beside the verdict it is said that it does not count, and it leads there.
    type("plate.thickness", "12", Qt::Key_Tab);
    auto* notCounted = window->verdict().notCountedButton();
    EXPECT_FALSE(notCounted->isHidden());
    EXPECT_TRUE(notCounted->text().contains("Access hole")) << notCounted->text().toStdString();
    QTest::mouseClick(notCounted, Qt::LeftButton);
    QTest::qWait(10);
    auto* line = edit("stations.access_hole");
    EXPECT_EQ(line->text(), "20 mmm");
    EXPECT_TRUE(line->hasFocus());
    // Escape takes it back.
    QTest::keyClick(line, Qt::Key_Escape);
    EXPECT_TRUE(notCounted->isHidden());
    EXPECT_EQ(line->text(), "20 mm");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::Typed);
}

TEST_F(WindowTest, an_edit_of_the_same_figure_elsewhere_or_another_job_ends_what_was_not_understood) {
    type("stations.access_hole", "20 mmm", Qt::Key_Tab);
    window->document().edit("stations.access_hole", "24 mm", "Access hole");
    window->document().edit("stations.keeper", "15 mm", "Keeper");
    window->figures().setFocus();
    QTest::qWait(10);
    window->document().edit("stations.access_hole", "25 mm", "Access hole");
    EXPECT_EQ(edit("stations.access_hole")->text(), "25 mm");
    type("stations.access_hole", "20 mmm", Qt::Key_Tab);
    window->document().startNew(window->document().tree());
    EXPECT_EQ(edit("stations.access_hole")->text(), "25 mm");
    EXPECT_EQ(box("stations.access_hole")->state(), FieldState::Typed);
}

TEST_F(WindowTest, a_figure_that_the_job_does_not_ask_for_any_more_is_not_said_to_be_left_out) {
    type("stations.keeper", "15 mmm", Qt::Key_Tab);
    EXPECT_FALSE(window->verdict().notCountedButton()->isHidden());
    window->document().edit("work", "pull", "Work");
    settle();
    EXPECT_TRUE(window->verdict().notCountedButton()->isHidden());
}

TEST_F(WindowTest, what_did_not_go_with_the_rest_is_taken_when_it_does_and_the_box_is_left_again) {
    window->document().edit("springs[0].total_coils", Tree(8), "Coils");
    window->document().edit("springs[0].active_coils", Tree(6), "Coils");
    settle();
    type("springs[0].active_coils", "10", Qt::Key_Tab);
    EXPECT_EQ(box("springs[0].active_coils")->state(), FieldState::NotUnderstood);
    type("springs[0].total_coils", "12", Qt::Key_Tab);
    // Nothing by itself, so that undo stays plain.
    EXPECT_EQ(*window->document().tree().at("springs[0].active_coils")->number(), 6);
    EXPECT_EQ(edit("springs[0].active_coils")->text(), "10");
    auto* line = edit("springs[0].active_coils");
    line->setFocus();
    QTest::keyClick(line, Qt::Key_Return);
    EXPECT_EQ(*window->document().tree().at("springs[0].active_coils")->number(), 10);
    EXPECT_EQ(box("springs[0].active_coils")->state(), FieldState::Typed);
}

TEST_F(WindowTest, folds_the_way_to_measure_up_at_once_when_the_keyboard_leaves) {
    edit("stations.circle")->setFocus();
    QTest::qWait(10);
    auto* card = window->figures().findChild<MeasureCard*>();
    ASSERT_TRUE(card && card->isVisible());
    // What is to be deleted later stays while a dialog is open.
    const QPointer<MeasureCard> kept(card);
    window->plan().setFocus();
    EXPECT_TRUE(!kept || kept->isHidden());
}

TEST_F(WindowTest, shows_a_field_that_is_needed_dashed_and_says_how_to_get_it) {
    window->document().edit("stations.circle", Tree(), "Pin circle");
    settle();
    EXPECT_EQ(window->verdict().head()->grade(), verdict::Grade::Incomplete);
    EXPECT_TRUE(window->verdict().head()->reason().contains("opposite pins"));
    EXPECT_EQ(box("stations.circle")->state(), FieldState::Needed);
}

TEST_F(WindowTest, drags_the_rim_in_whole_millimetres_as_one_step_of_undo) {
    const QPoint rim = place(shape::polar(90, 0.39));
    drag(rim, place(shape::polar(96, 0.39)));
    // The mouse moves in whole pixels, 0.7 mm of diameter here: 192 give or take one.
    const double across = window->document().job().plate.outline->diameter->mm();
    EXPECT_NEAR(across, 192, 1);
    EXPECT_EQ(across, std::round(across));
    EXPECT_EQ(window->document().undoStack().count(), 1);
    window->document().undoStack().undo();
    EXPECT_EQ(at("plate.outline.diameter"), "180 mm");
}

TEST_F(WindowTest, shows_a_drag_at_once_and_puts_what_it_came_to_into_the_job) {
    // Half a second for each check: the hand is far quicker.
    Engine slow;
    slow.check = [](const job::Job& job, const engine::CheckOptions& options) {
        for (int i = 0; i < 50; ++i) {
            if (!options.progress(i / 50.0, "Bending the plate"))
                throw engine::Stopped{};
            QThread::msleep(10);
        }
        return testing::fakeCheck(job, options);
    };
    Window other(slow, {});
    other.resize(1366, 768);
    other.document().startNew(testing::eightPinJob());
    other.show();
    other.plan().fit();
    auto& plan = other.plan();
    const auto px = [&](double r) { return plan.transform().toScreen(shape::polar(r, 0.39)).toPoint(); };
    const QPoint from = px(90), to = px(97);
    QTest::mousePress(&plan, Qt::LeftButton, {}, from);
    QTest::mouseMove(&plan, (from + to) / 2);
    QTest::mouseMove(&plan, to);
    EXPECT_NEAR(plan.shape().rimDiameter, 194, 1);
    EXPECT_DOUBLE_EQ(other.document().job().plate.outline->diameter->mm(), 180);
    QTest::mouseRelease(&plan, Qt::LeftButton, {}, to);
    EXPECT_DOUBLE_EQ(other.document().job().plate.outline->diameter->mm(), plan.shape().rimDiameter);
    EXPECT_EQ(other.document().undoStack().count(), 1);
    other.document().undoStack().setClean();
}

TEST_F(WindowTest, says_how_long_a_check_will_take_while_it_begins_and_not_once_it_is_answered) {
    std::atomic<bool> go = false;
    Engine slow;
    slow.check = [&go](const job::Job& job, const engine::CheckOptions& options) {
        while (!go) {
            if (!options.progress(0, "Bending the plate"))
                throw engine::Stopped{};
            QThread::msleep(1);
        }
        return testing::fakeCheck(job, options);
    };
    Window other(slow, {});
    other.resize(1366, 768);
    other.document().startNew(testing::sixPinWithHoles(30));
    other.show();
    auto* head = other.verdict().findChild<VerdictHead*>();
    ASSERT_TRUE(QTest::qWaitFor([&] { return head->busyWords().contains("37 holes"); }, kPatienceMs));
    EXPECT_TRUE(head->isBusy());
    EXPECT_TRUE(head->busyWords().contains("minutes")) << head->busyWords().toStdString();
    go = true;
    ASSERT_TRUE(QTest::qWaitFor([&] { return !other.isChecking() && !head->isBusy(); }, kPatienceMs));
    EXPECT_FALSE(head->busyWords().contains("37 holes"));
    other.document().undoStack().setClean();
}

TEST_F(WindowTest, drags_an_access_hole_by_its_edge_and_all_of_them_follow) {
    const shape::Point centre = window->plan().shape().stations[2]; // straight up
    drag(place(centre + shape::Point{10, 0}), place(centre + shape::Point{12, 0}));
    EXPECT_EQ(at("stations.access_hole"), "24 mm");
    EXPECT_DOUBLE_EQ(window->plan().shape().access, 24);
}

TEST_F(WindowTest, turns_the_ring_when_an_access_hole_is_moved_along_its_circle) {
    drag(place(shape::polar(65, 0)), place(shape::polar(65, 10 * 3.14159265358979 / 180)));
    EXPECT_EQ(at("stations.start"), "10 deg");
}

TEST_F(WindowTest, reaches_every_part_of_the_plan_by_keyboard_and_changes_it_by_one_step) {
    auto& plan = window->plan();
    plan.setFocus();
    QTest::keyClick(&plan, Qt::Key_Tab); // the rim
    QTest::keyClick(&plan, Qt::Key_Up);
    EXPECT_EQ(at("plate.outline.diameter"), "181 mm");
    QTest::keyClick(&plan, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(at("plate.outline.diameter"), "180.9 mm");
    QTest::keyClick(&plan, Qt::Key_Tab); // the pin circle
    QTest::keyClick(&plan, Qt::Key_Down);
    EXPECT_EQ(at("stations.circle"), "129 mm");
}

TEST_F(WindowTest, pans_on_empty_ground_zooms_with_the_wheel_and_fits_with_F) {
    auto& plan = window->plan();
    const auto fitted = plan.transform();
    drag(QPoint(30, plan.height() - 60), QPoint(70, plan.height() - 90));
    EXPECT_NE(plan.transform().origin, fitted.origin);
    plan.setFocus();
    QTest::keyClick(&plan, Qt::Key_F);
    EXPECT_EQ(plan.transform().origin, fitted.origin);
    EXPECT_EQ(window->document().undoStack().count(), 0);
}

TEST_F(WindowTest, saves_and_reopens_what_was_typed) {
    QTemporaryDir folder;
    chosen = folder.filePath("pack.plate.json").toStdString();
    type("stations.access_hole", "7/8 in");
    EXPECT_TRUE(window->save());
    EXPECT_FALSE(window->document().isChanged());
    window->document().edit("stations.access_hole", "30 mm", "Access hole");
    EXPECT_TRUE(window->openFile(chosen));
    EXPECT_EQ(at("stations.access_hole"), "7/8 in");
    EXPECT_FALSE(window->document().undoStack().canUndo());
}

TEST_F(WindowTest, says_in_the_bar_what_is_wrong_with_a_file_and_loses_nothing) {
    QTemporaryDir folder;
    const auto file = folder.filePath("cut_short.plate.json");
    std::ofstream(file.toStdString()) << "{\"platewright\": 1, \"stations\": {";
    EXPECT_FALSE(window->openFile(file.toStdString()));
    EXPECT_TRUE(window->notice().isVisible());
    EXPECT_TRUE(window->notice().words().contains("cut_short.plate.json"));
    EXPECT_EQ(at("plate.bore"), "26 mm");
}

TEST_F(WindowTest, names_keys_it_does_not_know_and_keeps_them) {
    window->document().edit("stations.colour", "red", "Colour");
    EXPECT_TRUE(window->notice().isVisible());
    EXPECT_TRUE(window->notice().words().contains("stations.colour"));
    EXPECT_EQ(at("stations.colour"), "red");
    window->document().undoStack().undo();
    EXPECT_FALSE(window->notice().isVisible());
}

TEST_F(WindowTest, asks_before_it_closes_with_changes_and_stays_when_told_to) {
    window->document().edit("plate.bore", "28 mm", "Bore");
    unsaved = Questions::Unsaved::Cancel;
    EXPECT_FALSE(window->close());
    EXPECT_EQ(askedUnsaved, 1);
    unsaved = Questions::Unsaved::Discard;
    EXPECT_TRUE(window->close());
}

TEST_F(WindowTest, writes_a_cut_file_of_what_holds_without_asking) {
    chosen = "plate.dxf";
    window->write(Output::CutSize);
    EXPECT_EQ(written, "plate.dxf");
    EXPECT_FALSE(writtenAnyway);
    EXPECT_TRUE(askedReally.isEmpty());
}

TEST_F(WindowTest, asks_before_it_writes_what_sets_and_marks_it) {
    window->document().edit("plate.thickness", "6 mm", "Thickness");
    settle();
    chosen = "plate.dxf";
    window->write(Output::CutSize);
    EXPECT_TRUE(askedReally.contains("sets"));
    EXPECT_TRUE(written.empty());
    really = true;
    window->write(Output::CutSize);
    EXPECT_EQ(written, "plate.dxf");
    EXPECT_TRUE(writtenAnyway);
}

TEST_F(WindowTest, has_every_output_in_its_menu_and_writes_what_was_picked) {
    QMenu* outputs = nullptr;
    for (auto* menu : window->menu().findChildren<QMenu*>())
        if (menu->title() == "Write")
            outputs = menu;
    ASSERT_NE(outputs, nullptr);
    for (const OutputKind& kind : outputKinds()) {
        QAction* found = nullptr;
        for (auto* action : outputs->actions())
            if (action->text() == kind.menu)
                found = action;
        ASSERT_NE(found, nullptr) << kind.menu.toStdString();
        chosen = "named"; // the ending is put to it
        found->trigger();
        EXPECT_EQ(written, "named" + kind.suffix.toStdString());
        EXPECT_EQ(writtenAs, kind.output);
        EXPECT_FALSE(writtenAnyway);
    }
    EXPECT_TRUE(askedReally.isEmpty());
}

TEST_F(WindowTest, asks_before_every_output_of_what_sets_but_a_report) {
    window->document().edit("plate.thickness", "6 mm", "Thickness");
    settle();
    chosen = "named.any";
    for (const OutputKind& kind : outputKinds()) {
        written.clear();
        askedReally.clear();
        window->write(kind.output);
        EXPECT_EQ(askedReally.contains("sets"), kind.judged) << kind.menu.toStdString();
        EXPECT_EQ(written.empty(), kind.judged) << kind.menu.toStdString();
    }
}

TEST_F(WindowTest, offers_the_mend_and_takes_it_as_one_step) {
    EXPECT_FALSE(window->verdict().mendButton()->isVisible());
    window->document().edit("plate.thickness", "6 mm", "Thickness");
    settle();
    ASSERT_TRUE(window->verdict().mendButton()->isVisible());
    window->verdict().mendButton()->click();
    settle();
    EXPECT_EQ(at("plate.thickness"), "10 mm");
    EXPECT_EQ(window->verdict().head()->grade(), verdict::Grade::Holds);
}

TEST_F(WindowTest, opens_one_check_at_a_time) {
    auto rows = window->verdict().rows();
    rows[0]->findChild<QAbstractButton*>()->click();
    rows[1]->findChild<QAbstractButton*>()->click();
    EXPECT_FALSE(rows[0]->isOpen());
    EXPECT_TRUE(rows[1]->isOpen());
    rows[1]->findChild<QAbstractButton*>()->click();
    EXPECT_FALSE(rows[1]->isOpen());
}

TEST_F(WindowTest, opens_the_field_of_a_part_that_is_picked_on_the_plan) {
    window->figures().openGroup("cutting");
    const QPoint rim = place(shape::polar(90, 0.39));
    QTest::mouseClick(&window->plan(), Qt::LeftButton, {}, rim);
    EXPECT_EQ(window->figures().openGroupId(), "steel");
}

TEST_F(WindowTest, adds_and_removes_springs_and_readings) {
    window->figures().openGroup("load");
    QTest::qWait(10);
    const auto press = [this](const QString& words) {
        for (auto* button : window->figures().findChildren<WordButton*>())
            if (button->text() == words && button->isVisible()) {
                button->click();
                QTest::qWait(20);
                return;
            }
        FAIL() << "no button " << words.toStdString();
    };
    press("Add a reading");
    EXPECT_EQ(window->document().tree().at("springs[0].loads")->items()->size(), 2u);
    press("Add a spring inside it");
    EXPECT_EQ(window->document().tree().at("springs")->items()->size(), 2u);
    press("Remove");
    EXPECT_EQ(window->document().tree().at("springs")->items()->size(), 1u);
    EXPECT_EQ(at("springs[0].name"), "inner");
}

TEST_F(WindowTest, shows_a_fault_of_the_check_where_the_verdict_stands_and_stays_usable) {
    Engine engine;
    engine.check = [](const job::Job&, const engine::CheckOptions&) -> engine::Report {
        throw std::logic_error("node 7 is nowhere");
    };
    Window faulty(engine, {});
    faulty.show();
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return faulty.verdict().head()->reason().contains("node 7 is nowhere"); }, kPatienceMs));
    faulty.document().edit("plate.bore", "20 mm", "Bore");
    EXPECT_DOUBLE_EQ(faulty.document().job().plate.bore->mm(), 20);
}

TEST_F(WindowTest, gives_every_field_and_button_a_name_to_be_read_out) {
    for (const char* group :
         {"squeezed", "stations", "load", "steel", "centre", "back", "cutting", "wanted"}) {
        window->figures().openGroup(group);
        QTest::qWait(10);
        for (auto* widget : window->findChildren<QWidget*>()) {
            if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible())
                continue;
            auto* button = qobject_cast<QAbstractButton*>(widget);
            EXPECT_FALSE(widget->accessibleName().isEmpty() && !(button && !button->text().isEmpty()))
                << group << ": " << widget->metaObject()->className();
        }
    }
}

TEST_F(WindowTest, keeps_head_stop_torque_and_cautions_in_sight_in_a_small_window_and_in_large_type) {
    for (const double text : {1.0, 2.0}) {
        settings::setTextSize(text);
        Look::now().set(Tone::Light, text);
        window->resize(text == 1.0 ? QSize(1024, 700) : QSize(1366, 768));
        QTest::qWait(30);
        const QRect column(QPoint(0, 0), window->verdict().size());
        for (const QObject* child : window->verdict().children()) {
            const auto* widget = qobject_cast<const QWidget*>(child);
            if (!widget || !widget->isVisible())
                continue;
            EXPECT_TRUE(column.contains(widget->geometry()))
                << widget->metaObject()->className() << " at text size " << text;
        }
    }
    Look::now().set(Tone::Light, 1);
}

} // namespace
} // namespace pw::gui
