#include "app/engine/check.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/top_bar.h"
#include "app/gui/rack/piece_editor.h"
#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/piece_view.h"
#include "app/gui/rack/rack_desk.h"
#include "app/gui/rack/rack_list.h"
#include "app/gui/rack/rack_page.h"
#include "app/gui/views/ladder_view.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/widgets/work_bar.h"
#include "app/gui/window.h"
#include "core/jobfile/json.h"
#include "core/rack/rack_file.h"
#include "core/util/write_file.h"
#include "tests/app/gui/support/fake_engine.h"
#include "tests/support/jobs.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <QAbstractItemModelTester>
#include <QApplication>
#include <QLineEdit>
#include <QListView>
#include <QTemporaryDir>
#include <QTest>
#include <QThread>
#include <unistd.h>

namespace pw::gui {
namespace {

using jobfile::Tree;

constexpr int kPatienceMs = 60000;
constexpr const char* kRack = R"({"platewright_rack": 1, "shelf": "kept as it is", "offcuts": [
  {"name": "door plate", "thickness": "12 mm", "steel": "S235",
   "outline": {"shape": "rectangle", "length": "420 mm", "width": "260 mm"},
   "holes": [{"at": ["-150 mm", "0 mm"], "diameter": "40 mm"}]},
  {"name": "strip", "thickness": "10 mm",
   "outline": {"shape": "rectangle", "length": "400 mm", "width": "60 mm"}},
  {"name": "gusset", "thickness": "15 mm", "steel": "S355", "count": 2,
   "outline": {"shape": "polygon", "points": [["0 mm", "0 mm"], ["300 mm", "0 mm"], ["300 mm", "200 mm"], ["0 mm", "280 mm"]]}}]})";

/// A job in a folder with a rack beside it, in the real window.
class RackPageTest : public ::testing::Test {
protected:
    RackPageTest() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        settings::setRackPreference({});
        settings::setLastRack({});
    }

    void make(RankFunction rank = {}, bool realCheck = false) {
        Questions q;
        q.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        q.really = [](QWidget*, const QString&, const QString&, const QString&) { return true; };
        q.text = [this](QWidget*, const QString&, const QString&, const QString&) { return answer; };
        Engine engine;
        engine.check = testing::fakeCheck;
        if (realCheck)
            engine.check = engine::check;
        engine.ladder = testing::fakeLadder;
        if (rank)
            engine.rank = std::move(rank);
        window = std::make_unique<Window>(engine, q);
        window->resize(1366, 768);
        window->show();
        window->activateWindow();
        (void)QTest::qWaitForWindowActive(window.get(), 500);
    }

    std::filesystem::path in(const std::string& name) {
        return (folder.path() + QLatin1Char('/')).toStdString() + name;
    }
    void write(const std::string& name, const std::string& text) { std::ofstream(in(name)) << text; }
    std::string held(const std::string& name) {
        const auto text = util::readFile(in(name));
        return text ? *text : "none";
    }
    rack::RackReading onDisk() {
        const auto tree = rack::loadRackTree(in("rack.json"));
        return tree ? rack::readRack(*tree) : rack::RackReading{};
    }
    /// The job with a disc of 180 mm.
    void openJob(bool namesRack) {
        Tree job = testing::eightPinJob();
        job.set("plate.outline", Tree::object());
        job.set("plate.outline.shape", "disc");
        job.set("plate.outline.diameter", "180 mm");
        if (namesRack)
            job.set("rack", "rack.json");
        ASSERT_TRUE(jobfile::saveTree(job, in("job.plate.json")));
        ASSERT_TRUE(window->openFile(in("job.plate.json")));
    }
    void openWithRack(const char* rack = kRack) {
        write("rack.json", rack);
        make([](const job::Job& job, const rack::RackReading& reading, const engine::RackOptions& options) {
            return engine::rankRack(job, reading, options);
        });
        openJob(true);
    }
    void openPage() {
        QTest::mouseClick(window->topBar().rackButton(), Qt::LeftButton);
        ASSERT_TRUE(page().isVisible());
    }
    bool ranked() {
        return QTest::qWaitFor(
            [this] { return !window->desk().isRanking() && window->desk().ranked().answer; }, kPatienceMs);
    }
    RackPage& page() { return window->desk().page(); }
    RackList& list() { return page().list(); }
    RackDocument& rack() { return *window->findChild<RackDocument*>(); }
    QStringList names() {
        QStringList names;
        for (const RackRow& row : list().model().rows())
            if (row.kind != RackRow::Kind::Heading)
                names << row.title;
        return names;
    }
    const RackRow* row(const QString& name) {
        for (const RackRow& each : list().model().rows())
            if (each.kind != RackRow::Kind::Heading && each.title == name)
                return &each;
        return nullptr;
    }
    void pick(const QString& name) {
        ASSERT_TRUE(row(name)) << name.toStdString();
        list().pick(row(name)->row);
    }
    FieldBox* box(const std::string& path) {
        return page().editor().findChild<FieldBox*>(QString::fromStdString(path));
    }
    void type(const std::string& path, const char* text) {
        FieldBox* field = box(path);
        ASSERT_TRUE(field) << path;
        auto* edit = field->findChild<QLineEdit*>();
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(text));
        QTest::keyClick(edit, Qt::Key_Return);
        QTest::qWait(10);
    }
    /// The edits are in the file.
    void settle() {
        QTest::qWait(RackDocument::kRestMs / 4);
        (void)rack().write();
    }

    QTemporaryDir folder;
    QString answer;
    std::unique_ptr<Window> window;
};

TEST_F(RackPageTest, begins_a_rack_beside_the_job_with_the_first_offcut) {
    make();
    openJob(false);
    openPage();
    EXPECT_TRUE(page().emptyWords().startsWith("No pieces yet. Add the first offcut"))
        << page().emptyWords().toStdString();
    QTest::mouseClick(page().ways().front(), Qt::LeftButton);
    ASSERT_TRUE(page().isEditing());
    EXPECT_EQ(window->document().job().rack, "rack.json");
    type("offcuts[0].name", "hatch cover");
    type("offcuts[0].thickness", "12");
    type("offcuts[0].outline.length", "1/2 in");
    EXPECT_EQ(box("offcuts[0].outline.length")->value(), "1/2 in");
    type("offcuts[0].outline.length", "400");
    settle();
    ASSERT_EQ(onDisk().rack.offcuts.size(), 1U);
    const rack::Offcut piece = onDisk().rack.offcuts[0];
    EXPECT_EQ(piece.name, "hatch cover");
    EXPECT_EQ(piece.thickness.low.mm(), 12);
    EXPECT_EQ(piece.outline.length->mm(), 400);
    QTest::mouseClick(page().editor().doneButton(), Qt::LeftButton);
    EXPECT_EQ(names(), QStringList{"hatch cover"});
}

TEST_F(RackPageTest, writes_each_edit_and_an_undo_of_all_brings_the_very_letters_back) {
    openWithRack();
    openPage();
    pick("strip");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    type("offcuts[1].thickness", "8.5-9.6 mm");
    type("offcuts[1].pitting", "0.5 mm");
    settle();
    EXPECT_EQ(onDisk().rack.offcuts[1].thickness.low.mm(), 8.5);
    EXPECT_EQ(onDisk().rack.offcuts[1].pitting->mm(), 0.5);
    EXPECT_NE(held("rack.json").find("kept as it is"), std::string::npos);
    EXPECT_EQ(held("rack.json~"), kRack); // what it held before the sitting
    EXPECT_FALSE(window->document().isChanged());
    QTest::mouseClick(window->topBar().undoButton(), Qt::LeftButton);
    settle();
    EXPECT_FALSE(onDisk().rack.offcuts[1].pitting);
    EXPECT_EQ(onDisk().rack.offcuts[1].thickness.low.mm(), 8.5);
    QTest::mouseClick(window->topBar().undoButton(), Qt::LeftButton);
    settle();
    EXPECT_EQ(held("rack.json"), kRack);
    EXPECT_FALSE(window->topBar().undoButton()->isEnabled());
}

TEST_F(RackPageTest, says_a_wrong_figure_where_it_stands_and_keeps_the_last_good_one) {
    openWithRack();
    openPage();
    pick("door plate");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    for (const char* wrong : {"12 mmm", "0", "-3 mm"}) {
        type("offcuts[0].thickness", wrong);
        EXPECT_EQ(box("offcuts[0].thickness")->state(), FieldState::NotUnderstood) << wrong;
        settle();
        EXPECT_EQ(held("rack.json"), kRack) << wrong;
    }
    type("offcuts[0].pitting", "13 mm"); // deeper than it is thick
    EXPECT_EQ(box("offcuts[0].pitting")->state(), FieldState::NotUnderstood);
    EXPECT_EQ(rack().reading()->rack.offcuts[0].thickness.low.mm(), 12);
}

TEST_F(RackPageTest, holes_stay_where_the_tape_found_them_when_a_side_is_mended) {
    openWithRack();
    openPage();
    pick("door plate");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    page().editor().figures().openPart(PlanPart::Extra, 0);
    QTest::qWait(20); // the boxes that stood there before go
    // The file counts from the middle, the person from the left end and the lower edge.
    EXPECT_EQ(box("offcuts[0].holes[0].at[0]")->value(), "60 mm");
    EXPECT_EQ(box("offcuts[0].holes[0].at[1]")->value(), "130 mm");
    type("offcuts[0].outline.length", "440 mm");
    EXPECT_EQ(box("offcuts[0].holes[0].at[0]")->value(), "60 mm");
    EXPECT_EQ(rack().reading()->rack.offcuts[0].holes[0].form.at.x.mm(), -160);
    type("offcuts[0].holes[0].at[0]", "70");
    EXPECT_EQ(rack().reading()->rack.offcuts[0].holes[0].form.at.x.mm(), -150);
    window->desk().history().undo();
    window->desk().history().undo();
    EXPECT_EQ(rack().reading()->rack.offcuts[0].holes[0].form.at.x.mm(), -150);
    EXPECT_EQ(rack().reading()->rack.offcuts[0].outline.length->mm(), 420);
}

TEST_F(RackPageTest, ranks_the_samples_rack_with_the_engines_own_grades_best_first) {
    make({}, true);
    ASSERT_TRUE(window->openFile(PW_SAMPLES "/mill_lane_six_pin.plate.json"));
    openPage();
    ASSERT_TRUE(ranked());
    const auto reading = rack().reading();
    job::Job job = window->document().job();
    const engine::RackAnswer want = engine::rankRack(job, *reading);
    QStringList order;
    for (const auto& piece : want.pieces)
        order << QString::fromStdString(piece.name);
    QStringList shown = names();
    EXPECT_EQ(shown.mid(0, order.size()), order);
    for (const auto& piece : want.pieces) {
        const RackRow* line = row(QString::fromStdString(piece.name));
        ASSERT_TRUE(line);
        EXPECT_EQ(line->fits, piece.fits);
        EXPECT_EQ(line->grade, piece.grade) << piece.name;
    }
    // Bought sizes stand behind what is owned, under a heading of their own.
    QStringList headings;
    for (const RackRow& line : list().model().rows())
        if (line.kind == RackRow::Kind::Heading)
            headings << line.title;
    ASSERT_GE(headings.size(), 3);
    EXPECT_EQ(headings[0], "On the rack, and it will do");
    EXPECT_EQ(headings[1], "To buy, and it will do");
    EXPECT_TRUE(row("almost big enough")->said.contains("too narrow"));
    const QAbstractItemModelTester tester(list().view()->model(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    // Another preference, another order; and it is remembered.
    Q_EMIT page().preferChosen(engine::Prefer::ThickestMargin);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return window->desk().ranked().answer->prefer == engine::Prefer::ThickestMargin; },
        kPatienceMs));
    EXPECT_EQ(settings::rackPreference(), "thickest-margin");
    std::vector<double> margins;
    for (const RackRow& line : list().model().rows())
        if (line.ranked && line.fits && line.grade == verdict::Grade::Holds && line.answer->owned)
            margins.push_back(line.margin.value_or(0));
    EXPECT_TRUE(std::is_sorted(margins.rbegin(), margins.rend()));
}

TEST_F(RackPageTest, lays_a_piece_under_the_plan_as_one_step_of_the_job) {
    openWithRack();
    const Tree before = window->document().tree();
    openPage();
    ASSERT_TRUE(ranked());
    pick("door plate");
    QTest::keyClick(list().view(), Qt::Key_Return);
    EXPECT_FALSE(window->desk().isOpen());
    ASSERT_TRUE(window->document().job().piece);
    EXPECT_EQ(window->document().job().piece->name, "door plate");
    EXPECT_EQ(window->document().job().plate.thickness->mm(), 12);
    EXPECT_EQ(window->document().job().plate.steel->name, "S235");
    QTest::mouseClick(window->topBar().undoButton(), Qt::LeftButton);
    EXPECT_EQ(window->document().tree(), before);
    EXPECT_EQ(held("rack.json"), kRack);
}

TEST_F(RackPageTest, stops_ranking_when_it_is_told_to_and_can_begin_again) {
    write("rack.json", kRack);
    std::atomic<int> runs{0}, stopped{0};
    std::atomic<bool> slow{true};
    make([&](const job::Job& job, const rack::RackReading& reading, const engine::RackOptions& options) {
        ++runs;
        while (slow) {
            if (!options.progress(0.4, "Laying the plate on each piece")) {
                ++stopped;
                throw engine::Stopped{};
            }
            QThread::msleep(5);
        }
        return engine::rankRack(job, reading, options);
    });
    openJob(true);
    openPage();
    ASSERT_TRUE(
        QTest::qWaitFor([&] { return page().progress().isBusy() && page().progress().isVisible(); }, 5000));
    EXPECT_TRUE(page().progress().words().contains("40 %"));
    // An edit overtakes it: the old work stops, the new begins.
    rack().takeOff(1);
    ASSERT_TRUE(QTest::qWaitFor([&] { return stopped == 1 && runs == 2; }, 5000));
    QTest::mouseClick(page().progress().button(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return stopped == 2 && !window->desk().isRanking(); }, 5000));
    EXPECT_FALSE(page().progress().isBusy());
    EXPECT_EQ(names(), (QStringList{"door plate", "gusset"}));
    slow = false;
    QTest::mouseClick(page().progress().button(), Qt::LeftButton);
    ASSERT_TRUE(ranked());
    EXPECT_TRUE(row("door plate")->ranked);
}

TEST_F(RackPageTest, says_before_it_ranks_how_long_that_will_take) {
    write("rack.json", kRack);
    std::atomic<bool> go{false};
    make([&](const job::Job&, const rack::RackReading&, const engine::RackOptions& options) {
        while (!go) {
            if (!options.progress(0, "Laying the plate on each piece"))
                throw engine::Stopped{};
            QThread::msleep(1);
        }
        return engine::RackAnswer{};
    });
    Tree job = testing::sixPinWithHoles(30);
    job.set("rack", "rack.json");
    ASSERT_TRUE(jobfile::saveTree(job, in("job.plate.json")));
    ASSERT_TRUE(window->openFile(in("job.plate.json")));
    openPage();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page().progress().ahead().isEmpty(); }, kPatienceMs));
    EXPECT_TRUE(page().progress().isVisible());
    EXPECT_TRUE(page().progress().ahead().contains("37 holes"));
    go = true;
    ASSERT_TRUE(ranked());
    EXPECT_TRUE(page().progress().ahead().isEmpty());
    EXPECT_FALSE(page().progress().isVisible());
}

TEST_F(RackPageTest, ranks_the_rest_when_one_piece_is_broken_and_says_what_to_mend) {
    openWithRack(R"({"platewright_rack": 1, "offcuts": [
      {"name": "nothing left", "thickness": "0 mm", "outline": {"shape": "disc", "diameter": "300 mm"}},
      {"name": "bow tie", "thickness": "10 mm", "outline": {"shape": "polygon",
        "points": [["0 mm", "0 mm"], ["100 mm", "100 mm"], ["100 mm", "0 mm"], ["0 mm", "100 mm"]]}},
      {"name": "good", "thickness": "12 mm", "steel": "S235", "outline": {"shape": "disc", "diameter": "300 mm"}}]})");
    openPage();
    ASSERT_TRUE(ranked());
    ASSERT_TRUE(row("good") && row("nothing left") && row("bow tie"));
    EXPECT_TRUE(row("good")->ranked);
    EXPECT_EQ(row("nothing left")->kind, RackRow::Kind::Mend);
    EXPECT_TRUE(row("nothing left")->said.startsWith("Thickness:"))
        << row("nothing left")->said.toStdString();
    EXPECT_TRUE(row("bow tie")->said.contains("crosses itself")) << row("bow tie")->said.toStdString();
    // Mended from there, it is ranked with the others.
    pick("nothing left");
    EXPECT_FALSE(list().layButton()->isEnabled());
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    type("offcuts[0].thickness", "14 mm");
    QTest::mouseClick(page().editor().doneButton(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return row("nothing left")->ranked; }, kPatienceMs));
    EXPECT_EQ(row("nothing left")->kind, RackRow::Kind::Piece);
}

TEST_F(RackPageTest, cutting_leaves_the_rest_and_undo_gives_the_same_file_back) {
    openWithRack();
    openPage();
    ASSERT_TRUE(ranked());
    pick("door plate");
    QTest::mouseClick(list().layButton(), Qt::LeftButton);
    openPage();
    pick("door plate");
    ASSERT_TRUE(list().cutButton()->isVisible());
    QTest::mouseClick(list().cutButton(), Qt::LeftButton);
    settle();
    EXPECT_TRUE(page().notice().words().contains("door plate")) << page().notice().words().toStdString();
    ASSERT_EQ(onDisk().rack.offcuts.size(), 3U);
    const auto rest = onDisk().rack.offcuts[0];
    EXPECT_NE(rest.name, "door plate");
    EXPECT_FALSE(window->document().job().piece); // there is no such piece any more to lie on
    QTest::mouseClick(window->topBar().undoButton(), Qt::LeftButton);
    settle();
    EXPECT_EQ(held("rack.json"), kRack);
}

TEST_F(RackPageTest, a_rack_that_may_not_be_written_is_told_and_nothing_is_lost) {
    openWithRack();
    openPage();
    const auto locked = std::filesystem::path(folder.path().toStdString());
    std::filesystem::permissions(locked, std::filesystem::perms(0555));
    constexpr uid_t kNobody = 65534; // root may write anywhere
    const uid_t self = geteuid();
    if (self == 0) {
        ASSERT_EQ(seteuid(kNobody), 0);
    }
    rack().takeOff(1);
    QTest::qWait(50);
    if (self == 0) {
        ASSERT_EQ(seteuid(self), 0);
    }
    std::filesystem::permissions(locked, std::filesystem::perms::owner_all);
    EXPECT_TRUE(page().notice().words().contains("write-protected")) << page().notice().words().toStdString();
    EXPECT_EQ(held("rack.json"), kRack);
    EXPECT_EQ(names(), (QStringList{"door plate", "gusset"}));
    ASSERT_EQ(page().notice().choices().size(), 1U);
    QTest::mouseClick(page().notice().choices().front(), Qt::LeftButton);
    EXPECT_EQ(onDisk().rack.offcuts.size(), 2U);
    EXPECT_EQ(page().notice().words(), QString());
}

TEST_F(RackPageTest, never_writes_over_what_somebody_else_has_written) {
    openWithRack();
    openPage();
    std::string theirs = kRack;
    theirs.replace(theirs.find("door plate"), 10, "barn doors");
    write("rack.json", theirs);
    rack().takeOff(1);
    QTest::qWait(50);
    EXPECT_EQ(held("rack.json"), theirs);
    ASSERT_EQ(page().notice().choices().size(), 2U);
    QTest::mouseClick(page().notice().choices()[1], Qt::LeftButton); // theirs
    EXPECT_TRUE(row("barn doors"));
    EXPECT_EQ(held("rack.json"), theirs);
    window->desk().history().undo(); // mine again, and theirs is kept beside it
    settle();
    EXPECT_EQ(onDisk().rack.offcuts.size(), 2U);
    EXPECT_EQ(held("rack.json~"), theirs);
}

TEST_F(RackPageTest, corners_are_dragged_in_one_step_and_moved_by_the_keyboard) {
    openWithRack();
    openPage();
    pick("gusset");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    QTest::qWait(20);
    PieceView& view = page().editor().view();
    ASSERT_EQ(view.handles().size(), 4U);
    const QPoint from = view.transform().toScreen({300, 200}).toPoint();
    const QPoint to = view.transform().toScreen({300, 240}).toPoint();
    QTest::mousePress(&view, Qt::LeftButton, {}, from);
    for (int i = 1; i <= 5; ++i)
        QTest::mouseMove(&view, from + (to - from) * i / 5);
    QTest::mouseRelease(&view, Qt::LeftButton, {}, to);
    const auto corner = [&](std::size_t i) { return rack().reading()->rack.offcuts[2].outline.points[i].at; };
    EXPECT_NEAR(corner(2).y, 240, 3); // a pixel is a millimetre or so
    EXPECT_EQ(rack().undoStack().count(), 1);
    const double y = corner(2).y;
    QTest::keyClick(&view, Qt::Key_Up);
    QTest::keyClick(&view, Qt::Key_Up);
    EXPECT_NEAR(corner(2).y, std::floor(y) + 2, 1.01);
    EXPECT_EQ(rack().undoStack().count(), 2);
    window->desk().history().undo();
    window->desk().history().undo();
    EXPECT_EQ(corner(2).y, 200);
    // Pulled across the opposite side the piece would be none: it stops before.
    QTest::mousePress(&view, Qt::LeftButton, {}, view.transform().toScreen({300, 200}).toPoint());
    QTest::mouseMove(&view, view.transform().toScreen({-80, 100}).toPoint());
    QTest::mouseRelease(&view, Qt::LeftButton, {}, view.transform().toScreen({-80, 100}).toPoint());
    EXPECT_TRUE(rack().reading()->refused.empty());
}

TEST_F(RackPageTest, takes_four_sides_and_a_diagonal_or_pasted_points) {
    openWithRack();
    openPage();
    pick("strip");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    answer = "300, 400, 300, 400; 500"; // a rectangle by the 3-4-5 triangle
    QTest::mouseClick(page().editor().sidesButton(), Qt::LeftButton);
    const auto points = [&] { return rack().reading()->rack.offcuts[1].outline.points; };
    ASSERT_EQ(points().size(), 4U);
    EXPECT_NEAR(points()[2].at.x, 300, 0.02);
    EXPECT_NEAR(points()[2].at.y, 400, 0.02);
    EXPECT_NEAR(points()[3].at.x, 0, 0.02);
    EXPECT_NEAR(points()[3].at.y, 400, 0.02);
    answer = "300, 400, 300, 400; 800"; // does not close
    QTest::mouseClick(page().editor().sidesButton(), Qt::LeftButton);
    EXPECT_TRUE(page().notice().words().contains("do not close"));
    answer = "0 0; 10 in 0; 100, 120 mm";
    QTest::mouseClick(page().editor().pointsButton(), Qt::LeftButton);
    ASSERT_EQ(points().size(), 3U);
    EXPECT_NEAR(points()[1].at.x, 254, 0.01);
    EXPECT_NEAR(points()[2].at.y, 120, 0.01);
    answer = "0 0; 100 100; 100 0; 0 100"; // crosses itself
    QTest::mouseClick(page().editor().pointsButton(), Qt::LeftButton);
    EXPECT_EQ(points().size(), 3U);
    EXPECT_TRUE(page().notice().words().contains("crosses itself"));
}

TEST_F(RackPageTest, the_job_goes_on_naming_a_piece_that_gets_another_name) {
    openWithRack();
    window->document().edit("piece.name", "gusset", "Piece");
    openPage();
    pick("gusset");
    QTest::mouseClick(list().changeButton(), Qt::LeftButton);
    type("offcuts[2].name", "bracket");
    EXPECT_EQ(window->document().job().piece->name, "bracket");
    QTest::mouseClick(page().editor().doneButton(), Qt::LeftButton);
    QTest::mouseClick(list().copyButton(), Qt::LeftButton);
    EXPECT_TRUE(row("bracket 2"));
    settle();
    EXPECT_EQ(onDisk().rack.offcuts.size(), 4U);
}

TEST_F(RackPageTest, the_ladder_marks_thicknesses_of_which_there_is_a_piece) {
    openWithRack();
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->strip().ladder()->ladder() != nullptr; }, kPatienceMs));
    const auto& rungs = window->strip().ladder()->ladder()->rungs;
    for (std::size_t i = 0; i < rungs.size(); ++i) {
        const double mm = rungs[i].thickness.mm();
        bool have = false;
        for (const double piece : {12.0, 10.0, 15.0})
            have = have || std::abs(piece - mm) <= 0.5;
        EXPECT_EQ(rungs[i].onRack, have) << mm;
        EXPECT_EQ(window->strip().ladder()->wordsOf(static_cast<int>(i)).contains("on the rack"), have);
    }
}

} // namespace
} // namespace pw::gui
