#include "app/gui/models/job_rows.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/tool_dialog.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/text_block.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <numbers>
#include <QContextMenuEvent>
#include <QLineEdit>
#include <QMenu>
#include <QPointer>
#include <QTest>

namespace pw::gui {
namespace {

using jobfile::Tree;
using units::System;

constexpr int kPatienceMs = 8000;

/// The window with the made-up engine: what is entered in it beyond single figures.
class EditingTest : public ::testing::Test {
protected:
    EditingTest() {
        settings::setUnitSystem(System::Metric);
        settings::setTextSize(1);
        Questions q;
        q.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        Engine engine;
        engine.check = testing::fakeCheck;
        engine.tryTool = [](const job::Job& tool, const job::Job& part, const std::string&,
                            const engine::CheckOptions&) {
            // Fits when its holes are as many as the part's stations; holds when it is thick enough.
            engine::OtherUse use;
            use.fits = tool.stations.count == part.stations.count;
            if (!use.fits)
                use.reasons = {"the part has other stations"};
            use.grade = testing::fakeCheck(tool).grade;
            use.reason = testing::fakeCheck(tool).reason;
            return use;
        };
        window = std::make_unique<Window>(engine, q);
        window->resize(1366, 768);
        start(testing::eightPinJob());
    }

    void start(const Tree& tree) {
        window->document().startNew(tree);
        window->show();
        window->activateWindow();
        settle();
        window->plan().fit();
    }
    void settle() {
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return window->report() && !window->isChecking(); }, kPatienceMs));
        QTest::qWait(20);
    }
    const Tree& tree() { return window->document().tree(); }
    const job::Job& job() { return window->document().job(); }
    QUndoStack& undo() { return window->document().undoStack(); }
    std::string at(const std::string& path) {
        const Tree* value = tree().at(path);
        return value && value->text() ? *value->text() : std::string();
    }
    QPoint place(shape::Point p) { return window->plan().transform().toScreen(p).toPoint(); }
    void drag(QPoint from, QPoint to) {
        auto& plan = window->plan();
        QTest::mouseMove(&plan, from);
        QTest::mousePress(&plan, Qt::LeftButton, {}, from);
        for (int i = 1; i <= 6; ++i)
            QTest::mouseMove(&plan, from + (to - from) * i / 6);
        QTest::mouseRelease(&plan, Qt::LeftButton, {}, to);
        settle();
    }
    WordButton* button(const QString& words) {
        QTest::qWait(20);
        for (auto* each : window->figures().findChildren<WordButton*>())
            if (each->text() == words && each->isVisible())
                return each;
        ADD_FAILURE() << "no button " << words.toStdString();
        return nullptr;
    }
    void press(const QString& words) {
        if (auto* found = button(words)) {
            EXPECT_TRUE(found->isEnabled()) << words.toStdString();
            found->click();
        }
        QTest::qWait(20);
    }
    void type(const std::string& field, const QString& text) {
        window->figures().openField(field, false);
        QTest::qWait(10);
        auto* box = window->figures().findChild<FieldBox*>(QString::fromStdString(field));
        ASSERT_TRUE(box) << field;
        auto* line = box->findChild<QLineEdit*>();
        line->setFocus();
        line->selectAll();
        if (text.isEmpty())
            QTest::keyClick(line, Qt::Key_Delete);
        QTest::keyClicks(line, text);
        QTest::keyClick(line, Qt::Key_Return);
        QTest::qWait(10);
    }
    /// Every line of text in the figures, one string.
    QString said() {
        QTest::qWait(20);
        QStringList lines;
        for (auto* block : window->figures().findChildren<TextBlock*>())
            if (block->isVisible())
                lines << block->text();
        return lines.join(QLatin1Char('\n'));
    }
    QAction* menuAction(QPoint at, const QString& words) {
        menu.reset(window->plan().menuAt(at));
        for (auto* action : menu->actions())
            if (action->text() == words)
                return action;
        ADD_FAILURE() << "not in the menu: " << words.toStdString();
        return nullptr;
    }
    void choose(QPoint at, const QString& words) {
        if (auto* action = menuAction(at, words))
            action->trigger();
        menu.reset();
        settle();
    }

    std::unique_ptr<Window> window;
    std::unique_ptr<QMenu> menu;
};

TEST_F(EditingTest, adds_a_hole_and_drags_it_in_whole_millimetres_as_one_step) {
    window->figures().openGroup("holes");
    press("Add a hole");
    ASSERT_EQ(job().plate.holes.size(), 1u);
    settle();
    EXPECT_TRUE(window->report()->region) << "the new hole must have room";
    window->document().edit("plate.holes[0].at", typedPlace({0, 35}, System::Metric), "Hole");
    settle();
    const int before = undo().count();
    drag(place({0, 35}), place({7, 33}));
    EXPECT_NEAR(job().plate.holes[0].at.x.mm(), 7, 1);
    EXPECT_NEAR(job().plate.holes[0].at.y.mm(), 33, 1);
    EXPECT_EQ(job().plate.holes[0].at.x.mm(), std::round(job().plate.holes[0].at.x.mm()));
    EXPECT_EQ(undo().count(), before + 1);
    undo().undo();
    EXPECT_EQ(at("plate.holes[0].at[0]"), "0 mm");
}

TEST_F(EditingTest, widens_a_hole_by_its_edge_and_leaves_its_place) {
    window->document().edit("plate.holes[0].at", typedPlace({0, 38}, System::Metric), "Hole");
    window->document().edit("plate.holes[0].diameter", "12 mm", "Hole");
    settle();
    drag(place({6, 38}), place({8, 38}));
    EXPECT_NEAR(job().plate.holes[0].diameter->mm(), 16, 1);
    EXPECT_EQ(at("plate.holes[0].at[1]"), "38 mm");
}

TEST_F(EditingTest, moves_a_hole_by_keyboard_and_takes_it_out_with_delete) {
    window->document().edit("plate.holes[0].at", typedPlace({0, 35}, System::Metric), "Hole");
    window->document().edit("plate.holes[0].diameter", "8 mm", "Hole");
    settle();
    auto& plan = window->plan();
    QTest::mouseClick(&plan, Qt::LeftButton, {}, place({0, 35}));
    EXPECT_EQ(window->figures().openGroupId(), "holes");
    plan.setFocus();
    QTest::mouseClick(&plan, Qt::LeftButton, {}, place({0, 35}));
    QTest::keyClick(&plan, Qt::Key_Right);
    QTest::keyClick(&plan, Qt::Key_Right);
    QTest::keyClick(&plan, Qt::Key_Down, Qt::ShiftModifier);
    EXPECT_EQ(at("plate.holes[0].at[0]"), "2 mm");
    EXPECT_EQ(at("plate.holes[0].at[1]"), "34.9 mm");
    QTest::keyClick(&plan, Qt::Key_Delete);
    EXPECT_TRUE(job().plate.holes.empty());
    undo().undo();
    EXPECT_EQ(job().plate.holes.size(), 1u);
}

TEST_F(EditingTest, drags_the_right_hole_when_another_in_the_file_could_not_be_read) {
    Tree tree = testing::eightPinJob();
    tree.set("plate.holes[0].diameter", "8 mm"); // nowhere
    tree.set("plate.holes[1].at", typedPlace({0, 35}, System::Metric));
    tree.set("plate.holes[1].diameter", "10 mm");
    start(tree);
    drag(place({0, 35}), place({5, 35}));
    EXPECT_FALSE(this->tree().at("plate.holes[0].at"));
    EXPECT_NE(at("plate.holes[1].at[0]"), "0 mm");
}

TEST_F(EditingTest, types_where_a_hole_is_left_of_the_bore_and_will_not_have_it_nowhere) {
    window->document().edit("plate.holes[0].at", typedPlace({0, 35}, System::Metric), "Hole");
    window->document().edit("plate.holes[0].diameter", "8 mm", "Hole");
    type("plate.holes[0].at[0]", "-12");
    EXPECT_EQ(at("plate.holes[0].at[0]"), "-12 mm");
    type("plate.holes[0].at[0]", "");
    EXPECT_EQ(at("plate.holes[0].at[0]"), "-12 mm");
    EXPECT_EQ(window->figures().findChild<FieldBox*>("plate.holes[0].at[0]")->state(),
              FieldState::NotUnderstood);
}

TEST_F(EditingTest, makes_a_polygon_of_the_disc_and_drags_a_corner) {
    window->figures().openGroup("steel");
    auto* box = window->figures().findChild<FieldBox*>("plate.outline.shape");
    ASSERT_TRUE(box);
    Q_EMIT box->picked("polygon");
    settle();
    ASSERT_EQ(job().plate.outline->points.size(), 8u);
    const shape::Point corner = window->plan().shape().corners[0].at;
    const int before = undo().count();
    drag(place(corner), place(corner + shape::Point{8, 4}));
    const shape::Point now = window->plan().shape().corners[0].at;
    EXPECT_NEAR(shape::distance(now, corner + shape::Point{8, 4}), 0, 1.5);
    EXPECT_EQ(now.x, std::round(now.x));
    EXPECT_EQ(undo().count(), before + 1);
}

TEST_F(EditingTest, adds_a_corner_on_a_side_and_takes_it_away_again) {
    Tree tree = testing::eightPinJob();
    switchOutline(tree, jobfile::readJob(tree).job, "polygon", System::Metric);
    start(tree);
    const auto corners = window->plan().shape().corners;
    const shape::Point middle = 0.5 * (corners[2].at + corners[3].at);
    choose(place(middle), "Add a corner here");
    ASSERT_EQ(window->plan().shape().corners.size(), 9u);
    EXPECT_LT(shape::distance(window->plan().shape().corners[3].at, middle), 1.5);
    choose(place(middle), "Remove corner 4");
    EXPECT_EQ(window->plan().shape().corners.size(), 8u);
}

TEST_F(EditingTest, puts_what_stands_in_the_way_where_it_was_asked_for) {
    choose(place({0, 105}), "Something stands in the way here");
    ASSERT_EQ(job().keepClear.size(), 1u);
    EXPECT_NEAR(job().keepClear[0].at.y.mm(), 105, 1.5);
    EXPECT_EQ(window->figures().openGroupId(), "holes");
    drag(place({0, 105}), place({-6, 108}));
    EXPECT_NEAR(job().keepClear[0].at.x.mm(), -6, 1.5);
}

TEST_F(EditingTest, places_stations_one_by_one_drags_one_and_goes_back_to_a_circle) {
    window->figures().openGroup("stations");
    press("Each station");
    press("Place each by itself");
    settle();
    ASSERT_EQ(job().stations.at.size(), 8u);
    EXPECT_FALSE(tree().at("stations.count"));
    const shape::Point third = window->plan().shape().stations[2];
    drag(place(third), place(third + shape::Point{3, 0}));
    EXPECT_NEAR(job().stations.at[2].x.mm() - third.x, 3, 1);
    press("Place them evenly on a circle");
    EXPECT_EQ(job().stations.count, 8);
    EXPECT_NEAR(job().stations.circle->mm(), 130, 1);
}

TEST_F(EditingTest, opens_a_station_that_is_picked_and_lets_it_carry_nothing) {
    QTest::mouseClick(&window->plan(), Qt::LeftButton, {}, place(window->plan().shape().stations[3]));
    QTest::qWait(20);
    EXPECT_EQ(window->figures().openGroupId(), "stations");
    auto* carries = window->figures().findChild<FieldBox*>("stations.loaded[3]");
    ASSERT_TRUE(carries);
    Q_EMIT carries->picked("false");
    EXPECT_EQ(job().stations.loaded, (std::vector<bool>{true, true, true, false, true, true, true, true}));
    EXPECT_TRUE(window->plan().shape().idle[3]);
    type("load.share[1]", "0.5");
    EXPECT_DOUBLE_EQ(job().load.share.at(1), 0.5);
    // Fewer stations: their lists follow, so that the job can still be read.
    type("stations.count", "6");
    EXPECT_EQ(job().stations.loaded.size(), 6u);
    EXPECT_TRUE(window->document().reading().problems.empty());
}

TEST_F(EditingTest, finds_the_pins_from_readings_and_names_the_mistyped_one) {
    Tree tree = testing::eightPinJob();
    tree.set("stations.count", 4);
    start(tree);
    window->figures().openGroup("stations");
    press("Calipers on the pins");
    press("Read neighbours");
    press("Read opposite pins");
    ASSERT_EQ(rowCount(this->tree(), "stations.readings"), 6u);
    // Four pins of 8 mm on 130 mm, one of them pushed out by 1 mm: over them, and between neighbours too so
    // that there are figures to spare.
    std::vector<shape::Point> pins;
    for (int i = 0; i < 4; ++i)
        pins.push_back(shape::polar(65, i * std::numbers::pi / 2));
    pins[1].y += 1;
    const auto figure = [&](std::size_t row, const char* key, double sign) {
        const auto& r = job().stations.readings[row];
        const double d = shape::distance(pins[static_cast<std::size_t>(r.first - 1)],
                                         pins[static_cast<std::size_t>(r.second - 1)]);
        type(rowPath("stations.readings", row) + key, QString::number(d + sign * 8, 'f', 2));
    };
    for (std::size_t row = 0; row < 6; ++row)
        figure(row, ".over", 1);
    for (std::size_t row = 0; row < 4; ++row)
        figure(row, ".between", -1);
    EXPECT_TRUE(said().contains("The readings agree")) << said().toStdString();
    EXPECT_TRUE(said().contains("Pin 2 is furthest")) << said().toStdString();

    const std::string good = at("stations.readings[2].over");
    type("stations.readings[2].over", QString::number(std::stod(good) + 3, 'f', 2));
    EXPECT_TRUE(said().contains("3 to 4, over does not agree, by 3\u00a0mm")) << said().toStdString();
    window->document().undoStack().undo();

    press("Take each pin's own place");
    ASSERT_EQ(job().stations.at.size(), 4u);
    const auto places = window->plan().shape().stations;
    for (std::size_t i = 0; i < 4; ++i)
        EXPECT_NEAR(shape::distance(places[i], places[(i + 1) % 4]),
                    shape::distance(pins[i], pins[(i + 1) % 4]), 0.03);
    window->document().undoStack().undo();
    press("Take one even circle");
    EXPECT_EQ(job().stations.count, 4);
    EXPECT_NEAR(job().stations.circle->mm(), 130.5, 0.1);
    EXPECT_EQ(rowCount(this->tree(), "stations.readings"), 6u) << "the readings stay with the job";
}

TEST_F(EditingTest, says_what_a_springs_readings_come_to) {
    window->figures().openGroup("load");
    EXPECT_TRUE(said().contains("It rises by 21")) << said().toStdString();
    press("Add a reading");
    type("springs[0].loads[1].length", "39");
    type("springs[0].loads[1].force", "700");
    EXPECT_TRUE(said().contains("Readings 1 and 2 cannot both be right")) << said().toStdString();
}

TEST_F(EditingTest, shows_the_torchs_path_with_a_pierce_for_each_cut_in_their_order) {
    window->plan().setView(PlanView::View::Cut);
    const CutPicture& cut = window->plan().cutPicture();
    EXPECT_TRUE(cut.trouble.isEmpty()) << cut.trouble.toStdString();
    // Bore, eight access holes, the outside: every one is wide enough to burn in 10 mm.
    ASSERT_EQ(cut.pierces.size(), 10u);
    for (std::size_t i = 0; i < cut.pierces.size(); ++i)
        EXPECT_EQ(cut.pierces[i].order, static_cast<int>(i) + 1);
    EXPECT_EQ(std::ranges::count(cut.lines, CutPicture::Kind::Cut, &CutPicture::Line::kind), 10);
    EXPECT_EQ(std::ranges::count(cut.lines, CutPicture::Kind::Travel, &CutPicture::Line::kind), 9);
    // The last is the outside: pierced beyond the rim.
    EXPECT_GT(shape::norm(cut.pierces.back().at), 90);
    window->document().edit("cutting.process", "saw and drill", "Process");
    settle();
    EXPECT_FALSE(window->plan().cutPicture().trouble.isEmpty());
    EXPECT_TRUE(window->plan().cutPicture().lines.empty());
}

TEST_F(EditingTest, lights_what_an_opened_check_is_about_and_puts_it_out_again) {
    const auto row = [&](const char* id) {
        for (auto* each : window->verdict().rows())
            if (each->check().id == id)
                return each->findChild<QAbstractButton*>();
        return static_cast<QAbstractButton*>(nullptr);
    };
    const auto& section = *window->strip().section();
    ASSERT_TRUE(row("thread.nut") && row("load.coil_bind"));
    row("thread.nut")->click();
    EXPECT_EQ(section.lit().section.front(), SectionPart::Role::Nut);
    row("load.coil_bind")->click();
    EXPECT_TRUE(section.lit().springs);
    row("load.coil_bind")->click();
    EXPECT_FALSE(section.lit().springs);
    EXPECT_TRUE(section.lit().section.empty());
}

TEST_F(EditingTest, tries_a_tool_that_exists_without_touching_the_job) {
    const Tree before = tree();
    QPointer<ToolDialog> dialog = window->tryTool();
    const auto answered = [&](verdict::Grade grade) {
        return QTest::qWaitFor([&] { return !dialog->isBusy() && dialog->head().grade() == grade; },
                               kPatienceMs);
    };
    EXPECT_TRUE(answered(verdict::Grade::Holds));
    dialog->tool().edit("plate.thickness", "6 mm", "Thickness");
    EXPECT_TRUE(answered(verdict::Grade::Sets));
    dialog->tool().edit("stations.count", 6, "Count");
    EXPECT_TRUE(answered(verdict::Grade::Breaks));
    EXPECT_TRUE(dialog->head().reason().contains("does not go on"));
    EXPECT_TRUE(dialog->remarks().contains("other stations"));
    EXPECT_EQ(tree(), before);
    dialog->close();
}

} // namespace
} // namespace pw::gui
