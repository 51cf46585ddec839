#include "app/engine/check.h"
#include "app/engine/ladder.h"
#include "app/engine/mend.h"
#include "app/gui/help/help_window.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/roles.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "core/jobfile/json.h"
#include "tests/support/chance.h"

#include <array>
#include <cmath>
#include <fstream>
#include <gtest/gtest.h>
#include <QAbstractItemModelTester>
#include <QAbstractItemView>
#include <QAccessible>
#include <QComboBox>
#include <QLineEdit>
#include <QListWidget>
#include <QTemporaryDir>
#include <QTest>
#include <unistd.h>

/// The window with the real engine behind it, used as its user does.
namespace pw::gui {
namespace {

using jobfile::Tree;

class WholeJob : public ::testing::Test {
protected:
    WholeJob() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        teachRoles();
        Engine engine;
        engine.check = [](const job::Job& job, const engine::CheckOptions& options) {
            return engine::check(job, options);
        };
        engine.mend = engine::mends;
        engine.ladder = [](const job::Job& job, const engine::CheckOptions& options) {
            return engine::ladder(job, options);
        };
        Questions questions;
        questions.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        questions.really = [](QWidget*, const QString&, const QString&, const QString&) { return false; };
        questions.savePath = [this](QWidget*, const QString&, const QString&, const QString&) {
            return chosen;
        };
        window = std::make_unique<Window>(engine, questions);
        window->resize(1366, 768);
        window->show();
        window->activateWindow();
        settle();
    }
    void open(const char* sample) {
        ASSERT_TRUE(window->openFile(std::string(PW_SAMPLES "/") + sample + ".plate.json"));
        settle();
        window->plan().fit();
    }
    void settle() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return window->report() && !window->isChecking(); }, 60000));
        QTest::qWait(10);
    }
    verdict::Grade grade() const { return window->report()->grade; }
    QPoint place(shape::Point p) { return window->plan().transform().toScreen(p).toPoint(); }

    std::filesystem::path chosen;
    std::unique_ptr<Window> window;
};

TEST_F(WholeJob, a_hole_dragged_until_the_plate_no_longer_holds_comes_back_in_one_step) {
    open("mill_lane_six_pin");
    ASSERT_EQ(grade(), verdict::Grade::Holds);
    const std::string before = jobfile::toJson(window->document().tree());
    auto& plan = window->plan();
    const shape::Point centre = plan.shape().stations[0];
    // By its edge, outwards along the pin circle, until neighbouring holes meet.
    const QPoint from = place(centre + shape::Point{0, 12});
    QTest::mousePress(&plan, Qt::LeftButton, {}, from);
    for (double r = 13; r < 30; r += 1) {
        QTest::mouseMove(&plan, place(centre + shape::Point{0, r}));
        settle();
    }
    QTest::mouseRelease(&plan, Qt::LeftButton, {}, place(centre + shape::Point{0, 29}));
    settle();
    EXPECT_GE(grade(), verdict::Grade::Sets) << window->report()->reason;
    EXPECT_EQ(window->document().undoStack().count(), 1);
    window->document().undoStack().undo();
    settle();
    EXPECT_EQ(grade(), verdict::Grade::Holds);
    EXPECT_EQ(jobfile::toJson(window->document().tree()), before);
}

TEST_F(WholeJob, what_holds_is_written_to_cut_and_what_sets_is_not) {
    open("mill_lane_six_pin");
    QTemporaryDir folder;
    chosen = folder.filePath("plate.dxf").toStdString();
    window->document().edit("plate.thickness", "4 mm", "Thickness");
    settle();
    ASSERT_EQ(grade(), verdict::Grade::Sets);
    window->write(Output::CutSize);
    EXPECT_FALSE(std::filesystem::exists(chosen));
    window->document().edit("plate.thickness", "12 mm", "Thickness");
    settle();
    window->write(Output::CutSize);
    EXPECT_TRUE(std::filesystem::exists(chosen)) << window->notice().words().toStdString();
    EXPECT_GT(std::filesystem::file_size(chosen), 2000u);
}

TEST_F(WholeJob, other_units_change_words_and_not_the_job_nor_its_verdict) {
    open("mill_lane_six_pin");
    const std::string before = jobfile::toJson(window->document().tree());
    const auto metric = window->report();
    window->setUnits(units::System::Inch);
    settle();
    EXPECT_EQ(jobfile::toJson(window->document().tree()), before);
    EXPECT_EQ(window->report()->grade, metric->grade);
    ASSERT_EQ(window->report()->checks.size(), metric->checks.size());
    for (std::size_t i = 0; i < metric->checks.size(); ++i)
        if (const auto margin = metric->checks[i].margin) {
            EXPECT_NEAR(*window->report()->checks[i].margin, *margin, 1e-9 * std::abs(*margin))
                << metric->checks[i].id;
        }
    window->setUnits(units::System::Metric);
}

TEST_F(WholeJob, offers_the_first_job_on_a_first_start_and_only_then) {
    settings::forgetSession();
    EXPECT_TRUE(settings::isFirstStart());
    EXPECT_FALSE(settings::isFirstStart());
    window->welcome();
    ASSERT_EQ(window->notice().choices().size(), 1u);
    window->notice().choices()[0]->click();
    auto* help = window->findChild<HelpWindow*>();
    ASSERT_TRUE(help);
    EXPECT_EQ(help->page(), "first_job");
}

TEST_F(WholeJob, has_item_models_that_keep_their_rules) {
    window->showHelp(QStringLiteral("checks"));
    window->showPreferences();
    int models = 0;
    for (QWidget* top : {static_cast<QWidget*>(window.get())}) {
        for (auto* view : top->findChildren<QAbstractItemView*>()) {
            QAbstractItemModelTester tester(view->model(),
                                            QAbstractItemModelTester::FailureReportingMode::Fatal);
            ++models;
            if (auto* list = qobject_cast<QListWidget*>(view))
                for (int i = 0; i < list->count(); ++i)
                    list->setCurrentRow(i);
        }
        for (auto* box : top->findChildren<QComboBox*>()) {
            QAbstractItemModelTester tester(box->model(),
                                            QAbstractItemModelTester::FailureReportingMode::Fatal);
            ++models;
        }
    }
    EXPECT_GE(models, 1);
}

TEST_F(WholeJob, tells_screen_readers_what_each_thing_is) {
    open("mill_lane_six_pin");
    const auto roleOf = [](QWidget* widget) { return QAccessible::queryAccessibleInterface(widget)->role(); };
    EXPECT_EQ(roleOf(&window->plan()), QAccessible::Graphic);
    for (auto* widget : window->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible())
            continue;
        const auto role = roleOf(widget);
        EXPECT_NE(role, QAccessible::NoRole) << widget->metaObject()->className();
        EXPECT_NE(role, QAccessible::Client) << widget->metaObject()->className();
    }
}

/// Bytes this process has in memory, from the kernel.
double residentMb() {
    std::ifstream statm("/proc/self/statm");
    double pages = 0, resident = 0;
    statm >> pages >> resident;
    return resident * static_cast<double>(sysconf(_SC_PAGESIZE)) / 1e6;
}

TEST_F(WholeJob, five_thousand_edits_leave_no_trace_once_undone) {
    open("mill_lane_six_pin");
    const std::string before = jobfile::toJson(window->document().tree());
    struct Figure {
        const char* path;
        double low, high;
    };
    constexpr std::array<Figure, 9> kFigures{{{"plate.thickness", 4, 30},
                                              {"plate.outline.diameter", 160, 220},
                                              {"plate.bore", 20, 30},
                                              {"stations.circle", 95, 120},
                                              {"stations.access_hole", 18, 32},
                                              {"screw.washer_outside", 30, 60},
                                              {"screw.engagement", 5, 40},
                                              {"travel.compress_further", 0, 25},
                                              {"stations.start", 0, 60}}};
    constexpr std::array kViews{PlanView::View::Plain, PlanView::View::Stress, PlanView::View::Deflection,
                                PlanView::View::Fit, PlanView::View::Bent};
    constexpr std::array kGroups{"squeezed", "stations", "load", "steel", "centre", "cutting", "wanted"};
    constexpr int kEdits = 5000;
    pw::testing::Chance chance(20261);
    const auto pick = [&](std::size_t count) {
        return std::min(static_cast<std::size_t>(chance.between(0, static_cast<double>(count))), count - 1);
    };
    auto& document = window->document();
    double warmMb = 0;
    int edits = 0;
    for (int step = 0; edits < kEdits; ++step) {
        const double what = chance.between(0, 1);
        if (what < 0.80) {
            const Figure& figure = kFigures[pick(kFigures.size())];
            const bool angle = std::string_view(figure.path) == "stations.start";
            const double value = std::round(chance.between(figure.low, figure.high) * 10) / 10;
            const std::string text = std::to_string(value);
            document.edit(figure.path, text.substr(0, text.find('.') + 2) + (angle ? " deg" : " mm"), "Edit");
            ++edits;
        } else if (what < 0.86) {
            document.undoStack().undo();
        } else if (what < 0.89) {
            document.undoStack().redo();
        } else if (what < 0.92) {
            window->plan().setView(kViews[pick(kViews.size())]);
        } else if (what < 0.95) {
            window->figures().openGroup(kGroups[pick(kGroups.size())]);
        } else if (what < 0.97) {
            window->setUnits(what < 0.96 ? units::System::Inch : units::System::Metric);
        } else {
            const shape::Point rim = shape::polar(window->plan().shape().rimDiameter / 2, 0.4);
            QTest::mousePress(&window->plan(), Qt::LeftButton, {}, place(rim));
            QTest::mouseMove(&window->plan(), place(rim * chance.between(0.95, 1.05)));
            QTest::mouseRelease(&window->plan(), Qt::LeftButton, {}, place(rim));
            ++edits;
        }
        QCoreApplication::processEvents();
        if (step % 200 == 0)
            settle();
        if (edits > kEdits / 5 && warmMb == 0)
            warmMb = residentMb();
    }
    settle();
    const double endMb = residentMb();
    std::cout << "resident after a fifth: " << warmMb << " MB, at the end: " << endMb << " MB\n";
    EXPECT_LT(endMb, 250);
    EXPECT_LT(endMb - warmMb, 60) << "memory grows with the edits";
    while (document.undoStack().canUndo())
        document.undoStack().undo();
    EXPECT_EQ(jobfile::toJson(document.tree()), before);
    settle();
    EXPECT_EQ(grade(), verdict::Grade::Holds);
    window->setUnits(units::System::Metric);
}

} // namespace
} // namespace pw::gui
