#include "app/gui/job_files.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/notice_bar.h"
#include "app/gui/panels/preferences.h"
#include "app/gui/settings/settings.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/look.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <csignal>
#include <fstream>
#include <gtest/gtest.h>
#include <QAbstractButton>
#include <QApplication>
#include <QDropEvent>
#include <QFile>
#include <QLineEdit>
#include <QMenu>
#include <QMimeData>
#include <QPrinter>
#include <QPrintPreviewDialog>
#include <QPrintPreviewWidget>
#include <QTemporaryDir>
#include <QTest>
#include <QTimer>
#include <QUrl>
#include <sys/resource.h>
#include <unistd.h>

namespace pw::gui {
namespace {

using jobfile::Tree;
using testing::eightPinJob;

constexpr int kPatienceMs = 8000;

/// Real windows off the screen, and what passes between them and their files.
class FilesTest : public ::testing::Test {
protected:
    FilesTest() {
        settings::setUnitSystem(units::System::Metric);
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        settings::forgetSession();
        EXPECT_TRUE(jobfile::saveTree(eightPinJob(), file).ok());
        window = open();
    }
    ~FilesTest() override {
        window.reset();
        settings::forgetSession();
        settings::setTextSize(1);
        settings::setColours(settings::Colours::Light);
        settings::setUnitSystem(units::System::Metric);
        settings::setSnapStepMm(units::System::Metric, 1);
        Look::now().set(Tone::Light, 1);
    }
    std::unique_ptr<Window> open() {
        Questions q;
        q.unsaved = [this](QWidget*, const QString&) {
            ++asked;
            return unsaved;
        };
        q.savePath = [this](QWidget*, const QString&, const QString&, const QString&) { return chosen; };
        Engine engine;
        engine.check = testing::fakeCheck;
        auto made = std::make_unique<Window>(engine, q);
        made->resize(1366, 768);
        made->show();
        return made;
    }
    /// A window that dies with changes in it.
    void die(const char* bore, bool withFile = true) {
        auto dying = open();
        dying->keepIn(journals);
        if (withFile) {
            ASSERT_TRUE(dying->openFile(file));
        } else {
            dying->document().startNew(eightPinJob());
        }
        dying->document().edit("plate.bore", bore, "Bore");
        ASSERT_TRUE(dying->files().keeper()->flush());
    }
    void edit(const char* bore) { window->document().edit("plate.bore", bore, "Bore"); }
    std::string bore() const { return *window->document().tree().at("plate.bore")->text(); }
    static std::string boreIn(const std::filesystem::path& path) {
        const auto tree = jobfile::loadTree(path);
        return tree ? *tree->at("plate.bore")->text() : std::string();
    }
    void someoneElseWrites(const char* size) {
        Tree theirs = eightPinJob();
        theirs.set("plate.bore", size);
        ASSERT_TRUE(jobfile::saveTree(theirs, file).ok());
    }
    static void press(NoticeBar& bar, const QString& words) {
        for (auto* button : bar.choices())
            if (button->text().startsWith(words)) {
                button->click();
                return;
            }
        ADD_FAILURE() << "no " << words.toStdString() << " in: " << bar.words().toStdString();
    }
    QMenu* menuOf(const QString& words) const {
        for (auto* action : window->menu().actions())
            if (action->text() == words)
                return action->menu();
        return nullptr;
    }
    static bool journalled(const std::filesystem::path& folder) {
        std::error_code error;
        for (const auto& entry : std::filesystem::directory_iterator(folder, error))
            if (entry.path().string().ends_with(".plate.json"))
                return true;
        return false;
    }

    int asked = 0;
    Questions::Unsaved unsaved = Questions::Unsaved::Discard;
    QTemporaryDir folder;
    std::filesystem::path file = folder.filePath("pack.plate.json").toStdString();
    std::filesystem::path journals = folder.filePath("journal").toStdString();
    std::filesystem::path chosen;
    std::unique_ptr<Window> window;
};

TEST_F(FilesTest, offers_a_job_that_was_left_behind_in_a_bar_and_takes_it_back) {
    die("31 mm");
    window->keepIn(journals);
    ASSERT_TRUE(window->leftBehindNotice().isVisible());
    EXPECT_TRUE(window->leftBehindNotice().words().contains("Clutch pack, 8 pins"));
    EXPECT_EQ(asked, 0);
    press(window->leftBehindNotice(), "Take it back");
    EXPECT_EQ(bore(), "31 mm");
    EXPECT_EQ(window->document().path(), file);
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_FALSE(window->leftBehindNotice().isVisible());
    EXPECT_TRUE(journalled(journals)); // until it is saved
    EXPECT_TRUE(window->save());
    EXPECT_EQ(boreIn(file), "31 mm");
    EXPECT_FALSE(journalled(journals));
}

TEST_F(FilesTest, throws_a_job_that_was_left_behind_away_only_when_told_to) {
    die("31 mm", false);
    window->keepIn(journals);
    window->leftBehindNotice().say({}); // closed: not now
    window.reset();
    window = open();
    window->keepIn(journals);
    ASSERT_TRUE(window->leftBehindNotice().isVisible());
    press(window->leftBehindNotice(), "Throw it away");
    EXPECT_FALSE(window->leftBehindNotice().isVisible());
    EXPECT_FALSE(journalled(journals));
}

TEST_F(FilesTest, offers_one_after_another_in_one_bar) {
    die("31 mm");
    die("32 mm", false);
    window->keepIn(journals);
    EXPECT_TRUE(window->leftBehindNotice().words().contains("1 more"));
    press(window->leftBehindNotice(), "Throw it away");
    EXPECT_TRUE(window->leftBehindNotice().isVisible());
    EXPECT_FALSE(window->leftBehindNotice().words().contains("more"));
    press(window->leftBehindNotice(), "Take it back");
    EXPECT_EQ(bore(), "31 mm");
}

TEST_F(FilesTest, says_that_the_file_was_saved_after_the_job_that_was_left_behind) {
    die("31 mm");
    QTest::qWait(20);
    someoneElseWrites("40 mm");
    window->keepIn(journals);
    EXPECT_TRUE(window->leftBehindNotice().words().contains("saved after that"));
    press(window->leftBehindNotice(), "Take it back");
    window->document().undoStack().undo(); // what is on the disk is one step away
    EXPECT_EQ(bore(), "40 mm");
}

TEST_F(FilesTest, does_not_offer_what_is_in_the_file_already) {
    die("31 mm");
    someoneElseWrites("31 mm");
    window->keepIn(journals);
    EXPECT_FALSE(window->leftBehindNotice().isVisible());
    EXPECT_FALSE(journalled(journals));
}

TEST_F(FilesTest, keeps_nothing_of_a_window_that_was_closed) {
    window->keepIn(journals);
    edit("31 mm");
    ASSERT_TRUE(window->files().keeper()->flush());
    EXPECT_TRUE(journalled(journals));
    EXPECT_TRUE(window->close());
    EXPECT_EQ(asked, 1);
    EXPECT_FALSE(journalled(journals));
}

TEST_F(FilesTest, does_not_overwrite_what_someone_else_saved_until_told_to_and_keeps_theirs) {
    ASSERT_TRUE(window->openFile(file));
    edit("31 mm");
    someoneElseWrites("40 mm");
    EXPECT_FALSE(window->save());
    EXPECT_EQ(boreIn(file), "40 mm");
    ASSERT_TRUE(window->fileNotice().isVisible());
    press(window->fileNotice(), "Save mine");
    EXPECT_EQ(boreIn(file), "31 mm");
    EXPECT_EQ(boreIn(file.string() + "~"), "40 mm");
    EXPECT_FALSE(window->isWindowModified());
}

TEST_F(FilesTest, takes_what_someone_else_saved_as_a_step_that_can_be_undone) {
    ASSERT_TRUE(window->openFile(file));
    edit("31 mm");
    someoneElseWrites("40 mm");
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->fileNotice().isVisible(); }, kPatienceMs))
        << "it was not noticed";
    EXPECT_TRUE(window->fileNotice().words().contains("pack.plate.json"));
    press(window->fileNotice(), "Take theirs");
    EXPECT_EQ(bore(), "40 mm");
    EXPECT_FALSE(window->isWindowModified());
    window->document().undoStack().undo();
    EXPECT_EQ(bore(), "31 mm");
}

TEST_F(FilesTest, says_when_the_file_is_gone_and_saves_it_again) {
    ASSERT_TRUE(window->openFile(file));
    std::filesystem::remove(file);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->fileNotice().isVisible(); }, kPatienceMs));
    EXPECT_TRUE(window->isWindowModified());
    press(window->fileNotice(), "Save it again");
    EXPECT_EQ(boreIn(file), "26 mm");
    EXPECT_FALSE(window->isWindowModified());
}

TEST_F(FilesTest, says_that_a_file_is_open_in_another_window) {
    auto other = open();
    other->keepIn(journals);
    ASSERT_TRUE(other->openFile(file));
    window->keepIn(journals);
    ASSERT_TRUE(window->openFile(file));
    EXPECT_TRUE(window->fileNotice().words().contains("another window"));
    EXPECT_FALSE(other->leftBehindNotice().isVisible());
    other->document().edit("plate.bore", "33 mm", "Bore");
    ASSERT_TRUE(other->save());
    edit("31 mm");
    EXPECT_FALSE(window->save()); // the second is asked
    EXPECT_EQ(boreIn(file), "33 mm");
}

TEST_F(FilesTest, keeps_old_file_and_new_job_when_the_disk_is_full_and_says_so) {
    window->keepIn(journals);
    ASSERT_TRUE(window->openFile(file));
    edit("31 mm");
    // A file size limit fails a write part of the way, as a full disk does.
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto oldHandler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit small = before;
    small.rlim_cur = 64;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const bool saved = window->save();
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    std::signal(SIGXFSZ, oldHandler);
    EXPECT_FALSE(saved);
    EXPECT_EQ(boreIn(file), "26 mm");
    EXPECT_EQ(bore(), "31 mm");
    EXPECT_TRUE(window->isWindowModified());
    EXPECT_TRUE(window->fileNotice().words().contains("pack.plate.json"));
    EXPECT_TRUE(window->save());
    EXPECT_EQ(boreIn(file), "31 mm");
    EXPECT_FALSE(window->fileNotice().isVisible());
}

TEST_F(FilesTest, offers_another_place_when_the_folder_is_write_protected) {
    QDir(folder.path()).mkdir("locked");
    const auto locked = std::filesystem::path(folder.filePath("locked").toStdString());
    std::filesystem::copy_file(file, locked / "pack.plate.json");
    std::filesystem::permissions(folder.path().toStdString(), std::filesystem::perms::all);
    std::filesystem::permissions(locked, std::filesystem::perms(0555));
    window->keepIn(journals);
    ASSERT_TRUE(window->openFile(locked / "pack.plate.json"));
    edit("31 mm");
    ASSERT_TRUE(window->files().keeper()->flush());
    constexpr uid_t kNobody = 65534; // root may write anywhere
    const uid_t self = geteuid();
    if (self == 0) {
        ASSERT_EQ(seteuid(kNobody), 0);
    }
    EXPECT_FALSE(window->save());
    if (self == 0) {
        ASSERT_EQ(seteuid(self), 0);
    }
    EXPECT_TRUE(window->fileNotice().words().contains("write-protected"));
    EXPECT_EQ(boreIn(locked / "pack.plate.json"), "26 mm");
    chosen = file;
    press(window->fileNotice(), "Save as");
    EXPECT_EQ(boreIn(file), "31 mm");
    EXPECT_EQ(window->document().path(), file);
    std::filesystem::permissions(locked, std::filesystem::perms::owner_all);
}

TEST_F(FilesTest, lists_the_last_ten_jobs_newest_first_and_drops_the_missing_ones) {
    for (int i = 0; i < 12; ++i) {
        const auto path = folder.filePath(QStringLiteral("job%1.plate.json").arg(i)).toStdString();
        ASSERT_TRUE(jobfile::saveTree(eightPinJob(), path).ok());
        ASSERT_TRUE(window->openFile(path));
    }
    ASSERT_TRUE(
        window->openFile(folder.filePath("job5.plate.json").toStdString())); // again: once in the list
    std::filesystem::remove(folder.filePath("job10.plate.json").toStdString());
    Q_EMIT window->menu().aboutToShow();
    auto* recent = menuOf("Open again");
    ASSERT_NE(recent, nullptr);
    const auto actions = recent->actions();
    ASSERT_EQ(actions.size(), 10);
    EXPECT_TRUE(actions[0]->text().startsWith("job5 "));
    EXPECT_TRUE(actions[1]->text().startsWith("job11 "));
    EXPECT_TRUE(actions[2]->text().startsWith("job9 "));
    actions[2]->trigger();
    EXPECT_EQ(window->document().path(), folder.filePath("job9.plate.json").toStdString());
}

TEST_F(FilesTest, opens_a_job_that_is_dropped_on_it) {
    QMimeData data;
    data.setUrls({QUrl::fromLocalFile(QString::fromStdString(file.string()))});
    QDragEnterEvent enter({100, 100}, Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &enter);
    EXPECT_TRUE(enter.isAccepted());
    QDropEvent drop(QPointF(100, 100), Qt::CopyAction, &data, Qt::LeftButton, {});
    QApplication::sendEvent(window.get(), &drop);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->document().path() == file; }, kPatienceMs));
    EXPECT_TRUE(window->windowTitle().contains("Clutch pack, 8 pins"));
}

TEST_F(FilesTest, marks_the_title_when_the_job_is_changed_and_goes_back_to_what_is_saved) {
    ASSERT_TRUE(window->openFile(file));
    EXPECT_FALSE(window->isWindowModified());
    edit("31 mm");
    EXPECT_TRUE(window->isWindowModified());
    window->files().revert();
    EXPECT_EQ(bore(), "26 mm");
    EXPECT_FALSE(window->isWindowModified());
    window->document().undoStack().undo();
    EXPECT_EQ(bore(), "31 mm");
}

TEST_F(FilesTest, comes_back_in_the_size_it_was_left_and_keeps_preferences_apart_from_that) {
    settings::setUnitSystem(units::System::Inch);
    window->resize(1200, 700);
    ASSERT_TRUE(window->close());
    window = open();
    window->restoreGeometry(settings::windowGeometry());
    EXPECT_EQ(window->size(), QSize(1200, 700));
    settings::forgetSession();
    EXPECT_TRUE(settings::windowGeometry().isEmpty());
    EXPECT_EQ(settings::unitSystem(), units::System::Inch);
}

TEST_F(FilesTest, applies_every_preference_at_once) {
    auto* preferences = window->showPreferences();
    const auto choose = [&](const char* row, int index) {
        auto* words = preferences->row(row);
        ASSERT_NE(words, nullptr) << row;
        words->findChildren<QAbstractButton*>().at(index)->click();
    };
    choose("colours", 2);
    EXPECT_EQ(Look::now().tone(), Tone::Dark);
    choose("text", 1);
    EXPECT_DOUBLE_EQ(Look::now().scale(), 1.25);
    choose("paper", 1);
    EXPECT_EQ(settings::paper(), settings::Paper::Letter);
    choose("paper", 0);
    EXPECT_EQ(settings::paper(), settings::Paper::A4);
    choose("text", 0);
    window->document().startNew(eightPinJob());
    choose("snap_mm", 3); // 5 mm
    auto& plan = window->plan();
    QTest::keyClick(&plan, Qt::Key_Up); // picks the rim, 180 mm
    QTest::keyClick(&plan, Qt::Key_Up);
    EXPECT_DOUBLE_EQ(window->document().job().plate.outline->diameter->mm(), 185);
    choose("units", 1);
    EXPECT_EQ(settings::unitSystem(), units::System::Inch);
    QTest::keyClick(&plan, Qt::Key_Up); // in inches it snaps to what was chosen there: 1/16 in
    EXPECT_NEAR(window->document().job().plate.outline->diameter->inch() * 16, 117, 1e-6);
}

TEST_F(FilesTest, shows_a_print_preview_on_the_paper_of_the_preferences) {
    ASSERT_TRUE(window->openFile(file));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window->report() && !window->isChecking(); }, kPatienceMs));
    settings::setPaper(settings::Paper::Letter);
    int pages = 0;
    QPageSize::PageSizeId size = QPageSize::Custom;
    QTimer look;
    QObject::connect(&look, &QTimer::timeout, [&] {
        auto* dialog = window->findChild<QPrintPreviewDialog*>();
        auto* preview = dialog ? dialog->findChild<QPrintPreviewWidget*>() : nullptr;
        if (!preview || preview->pageCount() == 0)
            return;
        pages = preview->pageCount();
        size = dialog->printer()->pageLayout().pageSize().id();
        look.stop();
        dialog->close();
    });
    look.start(50);
    window->printPreview();
    EXPECT_GE(pages, 1);
    EXPECT_LE(pages, 2);
    EXPECT_EQ(size, QPageSize::Letter);
    settings::setPaper(settings::Paper::A4);
}

TEST_F(FilesTest, counts_what_stands_half_typed_when_it_saves) {
    ASSERT_TRUE(window->openFile(file));
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get(), kPatienceMs));
    window->figures().openField("plate.bore", true);
    QTest::qWait(30);
    auto* line = window->figures().findChild<FieldBox*>("plate.bore")->findChild<QLineEdit*>();
    ASSERT_EQ(QApplication::focusWidget(), line);
    line->selectAll();
    QTest::keyClicks(line, "31");
    EXPECT_EQ(line->text(), "31");
    EXPECT_TRUE(window->save());
    EXPECT_EQ(line->text(), "31 mm");
    EXPECT_EQ(boreIn(file), "31 mm");
}

TEST_F(FilesTest, reaches_bars_and_preferences_by_keyboard_and_names_what_stands_there) {
    die("31 mm");
    window->keepIn(journals);
    auto* preferences = window->showPreferences();
    for (auto* widget : window->findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible() || widget == preferences)
            continue;
        auto* button = qobject_cast<QAbstractButton*>(widget);
        EXPECT_FALSE(widget->accessibleName().isEmpty() && !(button && !button->text().isEmpty()))
            << widget->metaObject()->className();
    }
    preferences->close();
    // From the top bar the tab key comes to the bar's first button.
    auto* take = window->leftBehindNotice().choices().front();
    take->setFocus();
    QTest::keyClick(take, Qt::Key_Space);
    EXPECT_EQ(bore(), "31 mm");
}

} // namespace
} // namespace pw::gui
