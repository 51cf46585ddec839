#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/palette.h"
#include "app/gui/widgets/verdict_head.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "core/jobfile/json.h"
#include "tests/app/gui/support/fake_engine.h"

#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <QApplication>
#include <QLineEdit>
#include <QTemporaryDir>
#include <QTest>

namespace pw::gui {
namespace {

using jobfile::Tree;

constexpr int kPatienceMs = 8000;
constexpr const char* kRack = R"({"platewright_rack": 1, "offcuts": [
  {"name": "door plate", "thickness": "12 mm", "steel": "S235",
   "outline": {"shape": "rectangle", "length": "420 mm", "width": "260 mm"},
   "holes": [{"at": ["-150 mm", "0 mm"], "diameter": "40 mm"}],
   "bad_areas": [{"points": [["150 mm", "-100 mm"], ["190 mm", "-100 mm"], ["190 mm", "-40 mm"]]}]},
  {"name": "strip", "thickness": "10 mm",
   "outline": {"shape": "rectangle", "length": "400 mm", "width": "60 mm"}}]})";

/// A job in a folder with a rack beside it. Its plate is a disc of 180 mm.
class PieceTest : public ::testing::Test {
protected:
    PieceTest() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        Questions q;
        q.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        Engine engine;
        engine.check = testing::fakeCheck;
        window = std::make_unique<Window>(engine, q);
        window->resize(1366, 768);
        window->show();
        window->activateWindow();
        write("rack.json", kRack);
    }

    std::filesystem::path in(const std::string& name) {
        return (folder.path() + QLatin1Char('/')).toStdString() + name;
    }
    void write(const std::string& name, const std::string& text) { std::ofstream(in(name)) << text; }
    void open(const char* rack, const char* piece) {
        Tree job = testing::eightPinJob();
        job.set("plate.outline", Tree::object());
        job.set("plate.outline.shape", "disc");
        job.set("plate.outline.diameter", "180 mm");
        if (rack)
            job.set("rack", rack);
        if (piece) {
            job.set("piece.name", piece);
            job.set("piece.at", Tree(Tree::List{"10 mm", "5 mm"}));
        }
        ASSERT_TRUE(jobfile::saveTree(job, in("job.plate.json")));
        ASSERT_TRUE(window->openFile(in("job.plate.json")));
        settle();
    }
    void settle() {
        EXPECT_TRUE(
            QTest::qWaitFor([this] { return window->report() && !window->isChecking(); }, kPatienceMs));
        QTest::qWait(20);
    }
    PlanView& plan() { return window->plan(); }
    const job::PieceChoice& piece() { return *window->document().job().piece; }
    QPoint place(shape::Point p) { return plan().transform().toScreen(p).toPoint(); }
    void drag(shape::Point from, shape::Point to) {
        const QPoint a = place(from), b = place(to);
        QTest::mouseMove(&plan(), a);
        QTest::mousePress(&plan(), Qt::LeftButton, {}, a);
        for (int i = 1; i <= 6; ++i)
            QTest::mouseMove(&plan(), a + (b - a) * i / 6);
        QTest::mouseRelease(&plan(), Qt::LeftButton, {}, b);
        settle();
    }
    QColor colourAt(shape::Point p) { return plan().grab().toImage().pixelColor(place(p)); }
    const verdict::Check* stockFit() { return window->report()->find("stock.fit"); }
    FieldBox* box(const char* path) {
        window->figures().openField(path, false);
        QTest::qWait(10);
        return window->figures().findChild<FieldBox*>(QString::fromUtf8(path));
    }

    QTemporaryDir folder;
    std::unique_ptr<Window> window;
};

TEST_F(PieceTest, lies_under_the_plate_when_the_job_is_opened) {
    open("rack.json", "door plate");
    ASSERT_TRUE(plan().shape().piece);
    const shape::Box box = shape::bounds(plan().shape().piece->rim);
    EXPECT_NEAR(box.low.x, -220, 1e-9);
    EXPECT_NEAR(box.high.x, 200, 1e-9);
    EXPECT_NEAR(box.low.y, -135, 1e-9);
    // All of it is in the picture, its steel and its hole.
    EXPECT_TRUE(plan().rect().contains(place(box.low)));
    EXPECT_TRUE(plan().rect().contains(place(box.high)));
    const Palette& c = paletteFor(Tone::Light);
    EXPECT_EQ(colourAt({150, 100}), c.scrap);
    EXPECT_EQ(colourAt({-160, -5}), c.ground);
    EXPECT_EQ(colourAt({30, 80}), c.steel);
    plan().setView(PlanView::View::Cut);
    EXPECT_EQ(colourAt({150, 100}), c.scrap);
    ASSERT_TRUE(stockFit());
    EXPECT_EQ(stockFit()->grade, verdict::Grade::Holds);
    EXPECT_EQ(window->notice().words(), QString());
}

TEST_F(PieceTest, is_dragged_in_whole_steps_and_undone_in_one) {
    open("rack.json", "door plate");
    drag({150, 100}, {170.3, 92.8});
    EXPECT_NEAR(piece().at->x.mm(), -10, 1.01); // the piece to the right: the plate to the left on it
    EXPECT_NEAR(piece().at->y.mm(), 12, 1.01);
    EXPECT_DOUBLE_EQ(piece().at->x.mm(), std::round(piece().at->x.mm()));
    EXPECT_EQ(window->document().undoStack().count(), 1);
    window->document().undoStack().undo();
    EXPECT_DOUBLE_EQ(piece().at->x.mm(), 10);
    EXPECT_NEAR(shape::bounds(plan().shape().piece->rim).high.x, 200, 1e-9);
}

TEST_F(PieceTest, dragged_off_under_the_plate_it_cannot_be_made) {
    open("rack.json", "door plate");
    drag({150, 100}, {150, -20});
    ASSERT_TRUE(stockFit());
    EXPECT_EQ(stockFit()->grade, verdict::Grade::Breaks);
    EXPECT_EQ(window->verdict().head()->grade(), verdict::Grade::Breaks);
    window->document().undoStack().undo();
    settle();
    EXPECT_EQ(stockFit()->grade, verdict::Grade::Holds);
}

TEST_F(PieceTest, is_turned_by_its_knob) {
    open("rack.json", "door plate");
    const shape::Point knob = plan().shape().piece->knob;
    const double angle = std::atan2(knob.y, knob.x);
    drag(knob, shape::polar(shape::norm(knob), angle + 0.35));
    // 0.35 rad are 20.05 degrees; a pixel there is less than half of one.
    EXPECT_NEAR(piece().turn->degree(), -20, 1.01);
    EXPECT_EQ(window->document().undoStack().count(), 1);
}

TEST_F(PieceTest, is_reached_moved_turned_and_taken_away_by_keyboard) {
    open("rack.json", "door plate");
    plan().setFocus(Qt::TabFocusReason);
    QTest::keyClick(&plan(), Qt::Key_Left); // the last of what can be reached: the turn
    for (int i = 0; i < 5; ++i)
        QTest::keyClick(&plan(), Qt::Key_Right);
    EXPECT_NEAR(piece().turn->degree(), 5, 1e-9);
    QTest::keyClick(&plan(), Qt::Key_Backtab, Qt::ShiftModifier);
    QTest::keyClick(&plan(), Qt::Key_Up);
    QTest::keyClick(&plan(), Qt::Key_Up);
    EXPECT_DOUBLE_EQ(piece().at->y.mm(), 3); // the piece went up, the plate down on it
    EXPECT_EQ(window->document().undoStack().count(), 2);
    QTest::keyClick(&plan(), Qt::Key_Delete);
    EXPECT_FALSE(window->document().job().piece);
    EXPECT_FALSE(plan().shape().piece);
    settle();
    EXPECT_FALSE(stockFit());
}

TEST_F(PieceTest, a_rack_that_is_missing_or_broken_costs_nothing_but_a_word) {
    open("no_such.json", "door plate");
    EXPECT_TRUE(window->notice().words().contains("no_such.json")) << window->notice().words().toStdString();
    EXPECT_FALSE(plan().shape().piece);
    EXPECT_FALSE(stockFit());
    EXPECT_EQ(window->verdict().head()->grade(), testing::fakeCheck(window->document().job()).grade);
    write("broken.json", "{\"platewright_rack\": 1, ");
    open("broken.json", "door plate");
    EXPECT_TRUE(window->notice().words().contains("broken.json"));
    EXPECT_FALSE(plan().shape().piece);
    open("rack.json", "door plate");
    EXPECT_EQ(window->notice().words(), QString());
    EXPECT_TRUE(plan().shape().piece);
    open("rack.json", "no such piece");
    EXPECT_FALSE(plan().shape().piece);
    ASSERT_TRUE(stockFit());
    EXPECT_EQ(stockFit()->grade, verdict::Grade::Breaks);
}

TEST_F(PieceTest, a_rack_outside_the_jobs_folder_is_read_only_when_the_person_says_so) {
    QTemporaryDir elsewhere;
    const std::string rack = (elsewhere.path() + QStringLiteral("/rack.json")).toStdString();
    std::ofstream(rack) << kRack;
    open(rack.c_str(), "door plate");
    EXPECT_TRUE(window->notice().words().contains("outside the job's folder"))
        << window->notice().words().toStdString();
    EXPECT_FALSE(plan().shape().piece);
    EXPECT_FALSE(stockFit());
    ASSERT_EQ(window->notice().choices().size(), 1u);
    QTest::mouseClick(window->notice().choices().front(), Qt::LeftButton);
    settle();
    EXPECT_TRUE(plan().shape().piece);
    EXPECT_TRUE(stockFit());
    EXPECT_FALSE(window->document().isChanged()) << "what may be read is not a figure of the job";
    open("rack.json", "door plate");
    open(rack.c_str(), "door plate");
    EXPECT_EQ(window->notice().words(), QString()) << "asked once";
    EXPECT_TRUE(plan().shape().piece);
}

TEST_F(PieceTest, a_piece_that_is_picked_brings_its_thickness_and_steel_and_the_plate_where_it_fits) {
    open("rack.json", nullptr);
    EXPECT_FALSE(plan().shape().piece);
    auto* name = box("piece.name");
    ASSERT_TRUE(name);
    Q_EMIT name->picked(QStringLiteral("door plate"));
    settle();
    EXPECT_EQ(piece().name, "door plate");
    EXPECT_DOUBLE_EQ(window->document().job().plate.thickness->mm(), 12);
    EXPECT_EQ(window->document().job().plate.steel->name, "S235");
    ASSERT_TRUE(stockFit());
    EXPECT_EQ(stockFit()->grade, verdict::Grade::Holds);
    EXPECT_EQ(window->document().undoStack().count(), 1);
    auto* along = box("piece.at[0]")->findChild<QLineEdit*>();
    along->setFocus();
    along->selectAll();
    QTest::keyClicks(along, QStringLiteral("25"));
    QTest::keyClick(along, Qt::Key_Return);
    EXPECT_DOUBLE_EQ(piece().at->x.mm(), 25);
}

TEST_F(PieceTest, a_rack_written_anew_counts_when_the_window_comes_to_the_front) {
    open("rack.json", "strip");
    EXPECT_NEAR(shape::bounds(plan().shape().piece->rim).height(), 60, 1e-9);
    std::string wider = kRack;
    wider.replace(wider.find("\"60 mm"), 6, "\"90 mm");
    write("rack.json", wider);
    std::filesystem::last_write_time(in("rack.json"),
                                     std::filesystem::file_time_type::clock::now() + std::chrono::seconds(2));
    QEvent front(QEvent::WindowActivate);
    QApplication::sendEvent(window.get(), &front);
    settle();
    EXPECT_NEAR(shape::bounds(plan().shape().piece->rim).height(), 90, 1e-9);
}

} // namespace
} // namespace pw::gui
