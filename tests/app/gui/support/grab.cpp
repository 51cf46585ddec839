#include "tests/app/gui/support/grab.h"

#include "app/engine/tool.h"
#include "app/gui/document/journal.h"
#include "app/gui/help/help_window.h"
#include "app/gui/models/job_rows.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/lower_strip.h"
#include "app/gui/panels/preferences.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/propose/propose_dialog.h"
#include "app/gui/rack/piece_editor.h"
#include "app/gui/rack/piece_figures.h"
#include "app/gui/rack/rack_desk.h"
#include "app/gui/rack/rack_list.h"
#include "app/gui/rack/rack_page.h"
#include "app/gui/settings/settings.h"
#include "app/gui/views/bent_view.h"
#include "app/gui/views/curve_view.h"
#include "app/gui/views/ladder_view.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/views/section_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/widgets/segments.h"
#include "app/gui/widgets/stop_slider.h"
#include "app/gui/widgets/word_button.h"
#include "app/gui/window.h"
#include "app/paper/paint_paper.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <functional>
#include <QAbstractButton>
#include <QDir>
#include <QElapsedTimer>
#include <QFile>
#include <QImage>
#include <QLineEdit>
#include <QListView>
#include <QMenu>
#include <QPainter>
#include <QTemporaryDir>
#include <QTest>

namespace pw::testing {

namespace {

struct Shot {
    const char* name;
    QSize size{1366, 768};
    bool dark = false;
    double text = 1;
    std::function<void(gui::Window&)> set{};
    const char* sample = nullptr;             ///< checked by the real engine
    std::function<void(gui::Window&)> last{}; ///< when everything is worked out
    /// What is looked at, when it is not the job's window.
    std::function<QWidget*(gui::Window&)> seen{};
};

void type(gui::Window& w, const std::string& path, const char* text) {
    w.figures().openField(path, true);
    QTest::qWait(30);
    if (auto* edit =
            w.figures().findChild<gui::FieldBox*>(QString::fromStdString(path))->findChild<QLineEdit*>()) {
        edit->setFocus();
        edit->selectAll();
        QTest::keyClicks(edit, QString::fromUtf8(text));
    }
    QTest::qWait(500);
}

void thickness(gui::Window& w, const char* mm) {
    w.document().edit("plate.thickness", mm, "Thickness");
}

/// A job that a window left when it died, offered in this one.
void leftBehind(gui::Window& w) {
    QTemporaryDir folder;
    {
        gui::Journal dead(folder.path().toStdString());
        (void)dead.keep(w.document().tree(), "/home/mill/jobs/clutch_pack.plate.json", 3);
    }
    w.keepIn(folder.path().toStdString());
}

void fileChanged(gui::Window& w) {
    QTemporaryDir folder;
    const auto file = folder.filePath("clutch_pack.plate.json").toStdString();
    (void)w.document().saveAs(file);
    thickness(w, "8 mm");
    jobfile::Tree theirs = w.document().tree();
    theirs.set("plate.bore", "27 mm");
    (void)jobfile::saveTree(theirs, file);
    w.save();
}

/// The plate on a piece of the samples' rack, as if picked in the figures.
void onPiece(gui::Window& w, const char* name) {
    w.document().edit("rack", "rack.json", "Rack");
    w.figures().openField("piece.name", false);
    QTest::qWait(30);
    Q_EMIT w.figures().findChild<gui::FieldBox*>("piece.name")->picked(QLatin1String(name));
    w.plan().fit();
}

/// A sample and its rack in a folder where they may be written, on the rack page, ranked.
void onRack(gui::Window& w) {
    static const QTemporaryDir folder;
    const auto at = [&](const char* name) { return folder.filePath(QLatin1String(name)); };
    QFile::copy(QStringLiteral(PW_SAMPLES "/mill_lane_six_pin.plate.json"), at("six_pin.plate.json"));
    QFile::copy(QStringLiteral(PW_SAMPLES "/rack.json"), at("rack.json"));
    w.openFile(at("six_pin.plate.json").toStdString());
    w.desk().open();
    (void)QTest::qWaitFor([&] { return !w.desk().isRanking() && !w.isChecking(); }, 60000);
}

void changePiece(gui::Window& w, const char* name) {
    onRack(w);
    for (const gui::RackRow& row : w.desk().page().list().model().rows())
        if (row.title == QLatin1String(name) && row.kind != gui::RackRow::Kind::Heading) {
            w.desk().change(row.row);
            break;
        }
    QTest::qWait(50);
}

QWidget* preferences(gui::Window& w) {
    return w.showPreferences();
}

/// A page of the help, as tall as it is.
std::function<QWidget*(gui::Window&)> help(const char* page, int height = 1400) {
    return [page, height](gui::Window& w) -> QWidget* {
        gui::HelpWindow* window = w.showHelp(QLatin1String(page));
        window->resize(window->width(), height);
        QTest::qWait(50);
        return window;
    };
}

/// Proposed plates when they are all there, in a dialog of this size; none: as it opens.
std::function<QWidget*(gui::Window&)> proposed(QSize size = {}) {
    return [size](gui::Window& w) -> QWidget* {
        gui::ProposeDialog* dialog = w.propose();
        if (size.isValid())
            dialog->resize(size);
        (void)QTest::qWaitFor([&] { return !dialog->isBusy(); }, 60000);
        QTest::qWait(50);
        return dialog;
    };
}

/// The plate is yet to be found.
void noPlate(gui::Window& w) {
    jobfile::Tree t = w.document().tree();
    for (const char* path : {"plate.outline", "plate.thickness", "plate.bore", "stations.access_hole"})
        t.erase(path);
    w.document().replace(t, "Plate");
}

QWidget* jobMenu(gui::Window& w) {
    w.menu().popup(w.mapToGlobal(QPoint(14, 48)));
    return &w.menu();
}

void travelTo(gui::Window& w, double place) {
    w.strip().section()->slider()->setPlace(place);
    Q_EMIT w.strip().section()->slider()->moved(place);
}

/// Four pins read with the calipers, one reading mistyped.
void readings(gui::Window& w) {
    auto t = w.document().tree();
    t.set("stations.count", 6);
    const char* figures[][3] = {{"1", "2", "73.1 mm"},  {"2", "3", "72.9 mm"},  {"3", "4", "73.0 mm"},
                                {"4", "5", "74.6 mm"},  {"5", "6", "73.1 mm"},  {"1", "6", "73.0 mm"},
                                {"1", "3", "120.6 mm"}, {"2", "4", "120.5 mm"}, {"3", "5", "120.7 mm"},
                                {"4", "6", "120.6 mm"}, {"1", "5", "120.5 mm"}, {"2", "6", "120.6 mm"}};
    for (std::size_t i = 0; i < std::size(figures); ++i) {
        const std::string row = gui::rowPath("stations.readings", i);
        t.set(row + ".pins",
              jobfile::Tree(jobfile::Tree::List{std::stod(figures[i][0]), std::stod(figures[i][1])}));
        t.set(row + ".over", figures[i][2]);
    }
    w.document().replace(t, "Readings");
    w.figures().openField("stations.readings[3].over", true);
}

/// The printed sheet of samples, checked by the real engine.
bool grabSheets(const QString& folder, std::string_view part) {
    for (const char* sample : {"mill_lane_six_pin", "mill_lane_two_pin_bar"}) {
        const QString name = QStringLiteral("60_sheet_") + QLatin1String(sample);
        if (name.toStdString().find(part) == std::string::npos)
            continue;
        const auto tree = jobfile::loadTree(std::string(PW_SAMPLES "/") + sample + ".plate.json");
        if (!tree)
            return false;
        const job::Job job = jobfile::readJob(*tree).job;
        int page = 1;
        QImage image(2100, 2970, QImage::Format_RGB32); // A4, a pixel 0.1 mm
        image.fill(Qt::white);
        const auto save = [&] {
            return image.save(QStringLiteral("%1/%2_%3.png").arg(folder, name).arg(page++));
        };
        QPainter painter(&image);
        paper::PaperChoices choices;
        choices.anyway = true;
        choices.size = paper::PaperSize::A4;
        choices.file = std::string(sample) + ".plate.json";
        if (!paper::paintShopSheet({painter, 10,
                                    [&] {
                                        save();
                                        image.fill(Qt::white);
                                    }},
                                   job, engine::check(job), choices))
            return false;
        painter.end();
        if (!save())
            return false;
    }
    return true;
}

} // namespace

int grabWindows(const QString& folder, const char* part) {
    QDir().mkpath(folder);
    using View = gui::PlanView::View;
    const std::vector<Shot> shots{
        {.name = "readme_window",
         .set = [](gui::Window& w) { w.figures().openField("stations.circle", false); },
         .sample = "mill_lane_six_pin"},
        {.name = "readme_sets_dark",
         .dark = true,
         .set =
             [](gui::Window& w) {
                 thickness(w, "4 mm");
                 w.plan().setView(View::Stress);
                 w.figures().openGroup("steel");
             },
         .sample = "mill_lane_six_pin"},
        {.name = "readme_bent",
         .set =
             [](gui::Window& w) {
                 thickness(w, "4 mm");
                 w.plan().setView(View::Bent);
             },
         .sample = "mill_lane_six_pin"},
        {.name = "readme_rack", .last = onRack},
        {.name = "readme_help", .seen = help("first_job", 760)},
        {.name = "01_light_holds",
         .set = [](gui::Window& w) { w.figures().openField("stations.circle", true); }},
        {.name = "02_dark_sets_stress",
         .dark = true,
         .set =
             [](gui::Window& w) {
                 thickness(w, "6 mm");
                 w.plan().setView(View::Stress);
                 w.figures().openField("plate.thickness", true);
                 QTest::qWait(300);
                 w.verdict().rows()[0]->findChild<QAbstractButton*>()->click();
             }},
        {.name = "03_light_breaks_stress",
         .set =
             [](gui::Window& w) {
                 thickness(w, "4 mm");
                 w.plan().setView(View::Stress);
             }},
        {.name = "04_light_new",
         .set =
             [](gui::Window& w) {
                 jobfile::Tree t = jobfile::Tree::object();
                 t.set("platewright", 1);
                 t.set("work", "compress");
                 t.set("stations.count", 6);
                 t.set("springs[0].name", "outer");
                 t.set("springs[0].loads[0]", jobfile::Tree::object());
                 t.set("plate.outline.shape", "disc");
                 w.document().startNew(t);
                 w.plan().fit();
             }},
        {.name = "05_light_thin_springs",
         .set =
             [](gui::Window& w) {
                 thickness(w, "9 mm");
                 w.figures().openGroup("load");
             }},
        {.name = "06_1024_wrong_figure",
         .size = {1024, 700},
         .set = [](gui::Window& w) { type(w, "stations.access_hole", "20 mmm"); }},
        {.name = "07_dark_1024_centre",
         .size = {1024, 700},
         .dark = true,
         .set =
             [](gui::Window& w) {
                 w.figures().openGroup("centre");
                 w.plan().setView(View::Deflection);
             }},
        {.name = "08_200_percent",
         .text = 2,
         .set = [](gui::Window& w) { w.figures().openField("stations.circle", true); }},
        {.name = "09_200_percent_1920",
         .size = {1920, 1080},
         .text = 2,
         .set =
             [](gui::Window& w) {
                 thickness(w, "6 mm");
                 w.plan().setView(View::Stress);
             }},
        {.name = "10_light_inch_fit",
         .set =
             [](gui::Window& w) {
                 w.setUnits(units::System::Inch);
                 w.plan().setView(View::Fit);
                 w.figures().openGroup("steel");
             }},
        {.name = "11_bar_long_words",
         .set =
             [](gui::Window& w) {
                 auto t = w.document().tree();
                 t.set("title", "Backing spring pack of the second reduction clutch in the long bed lathe");
                 t.set("stations.count", 2);
                 t.set("plate.outline", jobfile::Tree::object());
                 t.set("plate.outline.shape", "bar");
                 t.set("plate.outline.length", "200 mm");
                 t.set("plate.outline.width", "60 mm");
                 t.set("plate.outline.ends", "round");
                 t.set("nonsense", "kept");
                 w.document().replace(t, "Bar");
                 w.figures().openGroup("steel");
             }},
        {.name = "20_thin_stress",
         .set = [](gui::Window& w) { w.plan().setView(View::Stress); },
         .sample = "mill_lane_six_pin_thin"},
        {.name = "21_polygon_stress",
         .dark = true,
         .set = [](gui::Window& w) { w.plan().setView(View::Stress); },
         .sample = "mill_lane_three_pin_polygon"},
        {.name = "22_bar_deflection",
         .set = [](gui::Window& w) { w.plan().setView(View::Deflection); },
         .sample = "mill_lane_two_pin_bar"},
        {.name = "23_square_fit",
         .set = [](gui::Window& w) { w.plan().setView(View::Fit); },
         .sample = "mill_lane_square_four"},
        {.name = "24_pull",
         .set = [](gui::Window& w) { w.figures().openGroup("load"); },
         .sample = "mill_lane_pull_three_bolt_inch"},
        {.name = "30_strip_light", .sample = "mill_lane_six_pin"},
        {.name = "31_strip_dark_thin",
         .dark = true,
         .sample = "mill_lane_six_pin_thin",
         .last = [](gui::Window& w) { travelTo(w, 0.7); }},
        {.name = "32_strip_2560_light", .size = {2560, 1440}, .sample = "mill_lane_six_pin"},
        {.name = "33_strip_2560_dark",
         .size = {2560, 1440},
         .dark = true,
         .sample = "mill_lane_two_pin_bar",
         .last = [](gui::Window& w) { travelTo(w, 1); }},
        {.name = "34_strip_solid_light",
         .set = [](gui::Window& w) { w.document().edit("travel.compress_further", "23 mm", "Further"); },
         .sample = "mill_lane_six_pin"},
        {.name = "35_strip_pull_inch_light",
         .set = [](gui::Window& w) { w.setUnits(units::System::Inch); },
         .sample = "mill_lane_pull_three_bolt_inch"},
        {.name = "36_strip_eight_inch_dark",
         .size = {1920, 1080},
         .dark = true,
         .set = [](gui::Window& w) { w.setUnits(units::System::Inch); },
         .sample = "mill_lane_eight_pin_inch"},
        {.name = "37_strip_folded_1024_light", .size = {1024, 700}, .sample = "mill_lane_square_four"},
        {.name = "38_strip_200_open_light",
         .text = 2,
         .set = [](gui::Window& w) { w.strip().foldButton()->click(); },
         .sample = "mill_lane_six_pin"},
        {.name = "39_strip_200_2560_dark",
         .size = {2560, 1440},
         .dark = true,
         .text = 2,
         .sample = "mill_lane_six_pin_thin"},
        {.name = "3a_strip_looking_light",
         .sample = "mill_lane_six_pin_thin",
         .last =
             [](gui::Window& w) {
                 w.strip().ladder()->setFocus(Qt::TabFocusReason);
                 QTest::keyClick(w.strip().ladder(), Qt::Key_Right);
             }},
        {.name = "3b_strip_load_2560_dark",
         .size = {2560, 1440},
         .dark = true,
         .sample = "mill_lane_pull_two_bolt",
         .last =
             [](gui::Window& w) {
                 w.strip().ladder()->setFocus(Qt::TabFocusReason);
                 QTest::keyClick(w.strip().ladder(), Qt::Key_Left);
             }},
        {.name = "3c_strip_200_ladder_light",
         .size = {1920, 1080},
         .text = 2,
         .set =
             [](gui::Window& w) {
                 w.strip().foldButton()->click();
                 w.strip().findChildren<gui::Segments*>()[1]->findChildren<QAbstractButton*>()[2]->click();
             },
         .sample = "mill_lane_six_pin"},
        {.name = "40_bent_light_sets",
         .set =
             [](gui::Window& w) {
                 thickness(w, "6 mm");
                 w.plan().setView(View::Bent);
             }},
        {.name = "41_bent_dark_thin",
         .dark = true,
         .set = [](gui::Window& w) { w.plan().setView(View::Bent); },
         .sample = "mill_lane_six_pin_thin"},
        {.name = "46_bent_less_load_light",
         .set = [](gui::Window& w) { w.plan().setView(View::Bent); },
         .sample = "mill_lane_six_pin_thin",
         .last =
             [](gui::Window& w) {
                 w.strip().curve()->setFocus(Qt::TabFocusReason);
                 for (int i = 0; i < 10; ++i)
                     QTest::keyClick(w.strip().curve(), Qt::Key_Down);
                 QTest::qWait(200);
             }},
        {.name = "42_bent_2560_light",
         .size = {2560, 1440},
         .set = [](gui::Window& w) { w.plan().setView(View::Bent); },
         .sample = "mill_lane_six_pin_thin"},
        {.name = "43_bent_2560_dark_polygon",
         .size = {2560, 1440},
         .dark = true,
         .set = [](gui::Window& w) { w.plan().setView(View::Bent); },
         .sample = "mill_lane_three_pin_polygon"},
        {.name = "44_bent_bar_inch_light",
         .set =
             [](gui::Window& w) {
                 w.setUnits(units::System::Inch);
                 w.plan().setView(View::Bent);
             },
         .sample = "mill_lane_two_pin_bar",
         .last = [](gui::Window& w) { QTest::keyClick(w.plan().bent(), Qt::Key_Down); }},
        {.name = "45_bent_200_1920_dark",
         .size = {1920, 1080},
         .dark = true,
         .text = 2,
         .set = [](gui::Window& w) { w.plan().setView(View::Bent); },
         .sample = "mill_lane_six_pin_thin"},
        {.name = "50_left_behind_light", .last = leftBehind},
        {.name = "51_left_behind_dark", .dark = true, .last = leftBehind},
        {.name = "52_file_changed_light", .last = fileChanged},
        {.name = "53_file_changed_dark_150", .dark = true, .text = 1.5, .last = fileChanged},
        {.name = "54_preferences_light", .seen = preferences},
        {.name = "55_preferences_dark", .dark = true, .seen = preferences},
        {.name = "56_preferences_200", .text = 2, .seen = preferences},
        {.name = "57_job_menu_light", .seen = jobMenu},
        {.name = "58_job_menu_dark", .dark = true, .seen = jobMenu},
        {.name = "70_help_first_job_light", .seen = help("first_job", 2200)},
        {.name = "71_help_checks_dark", .dark = true, .seen = help("checks", 1800)},
        {.name = "72_help_measuring_light", .seen = help("measuring")},
        {.name = "73_help_cautions_light", .seen = help("cautions", 900)},
        {.name = "74_help_cautions_dark_200", .dark = true, .text = 2, .seen = help("cautions", 1300)},
        {.name = "75_help_window_light", .seen = help("window", 900)},
        {.name = "60_holes_light",
         .set =
             [](gui::Window& w) {
                 auto t = w.document().tree();
                 t.set("plate.holes[0].at", gui::typedPlace({0, 38}, units::System::Metric));
                 t.set("plate.holes[0].diameter", "8 mm");
                 t.set("plate.holes[1].at", gui::typedPlace({30, -28}, units::System::Metric));
                 t.set("plate.holes[1].diameter", "14 mm");
                 t.set("keep_clear[0].at", gui::typedPlace({108, 20}, units::System::Metric));
                 t.set("keep_clear[0].diameter", "20 mm");
                 t.set("keep_clear[0].note", "Stud");
                 w.document().replace(t, "Holes");
                 w.figures().openField("plate.holes[0].at[0]", true);
             }},
        {.name = "61_corners_dark",
         .dark = true,
         .set = [](gui::Window& w) { w.figures().openRow("plate.outline.points[1]"); },
         .sample = "mill_lane_three_pin_polygon"},
        {.name = "62_stations_200",
         .text = 2,
         .set = [](gui::Window& w) { w.figures().openRow("stations.at[2]"); }},
        {.name = "63_readings_light", .set = [](gui::Window& w) { readings(w); }},
        {.name = "64_readings_200_dark", .dark = true, .text = 2, .set = [](gui::Window& w) { readings(w); }},
        {.name = "65_cut_path_light",
         .set = [](gui::Window& w) { w.plan().setView(View::Cut); },
         .sample = "mill_lane_six_pin"},
        {.name = "66_cut_path_dark_200",
         .dark = true,
         .text = 2,
         .set = [](gui::Window& w) { w.plan().setView(View::Cut); },
         .sample = "mill_lane_three_pin_polygon"},
        {.name = "67_spring_words_light",
         .set = [](gui::Window& w) { w.figures().openGroup("load"); },
         .sample = "mill_lane_six_pin"},
        {.name = "68_check_open_light",
         .sample = "mill_lane_six_pin_thin",
         .last =
             [](gui::Window& w) {
                 w.verdict().rows()[1]->findChild<QAbstractButton*>()->click();
                 QTest::qWait(100);
             }},
        {.name = "69_tool_light",
         .seen = [](gui::Window& w) -> QWidget* {
             auto* dialog = w.tryTool();
             QTest::qWait(1500);
             return dialog;
         }},
        {.name = "70_piece_light",
         .set = [](gui::Window& w) { onPiece(w, "door plate, left half"); },
         .sample = "mill_lane_six_pin",
         .last = [](gui::Window& w) { w.figures().openGroup("piece"); }},
        {.name = "71_piece_dark_does_not_fit",
         .dark = true,
         .set =
             [](gui::Window& w) {
                 onPiece(w, "crane gusset");
                 w.document().edit("piece.at", jobfile::Tree(jobfile::Tree::List{"75 mm", "80 mm"}), "Piece");
                 w.document().edit("piece.turn", "20 deg", "Piece");
             },
         .sample = "mill_lane_six_pin",
         .last = [](gui::Window& w) { w.plan().light(gui::PlanPart::Piece); }},
        {.name = "72_piece_cut_light",
         .set =
             [](gui::Window& w) {
                 onPiece(w, "crane gusset");
                 w.plan().setView(View::Cut);
             },
         .sample = "mill_lane_six_pin"},
        {.name = "80_rack_light", .last = onRack},
        {.name = "81_rack_dark", .dark = true, .last = onRack},
        {.name = "82_rack_1024", .size = {1024, 700}, .last = onRack},
        {.name = "83_rack_200", .text = 2, .last = onRack},
        {.name = "84_rack_lower_rows",
         .size = {1366, 1400},
         .last =
             [](gui::Window& w) {
                 onRack(w);
                 QTest::keyClick(w.desk().page().list().view(), Qt::Key_End);
             }},
        {.name = "85_rack_empty",
         .last =
             [](gui::Window& w) {
                 w.desk().open();
                 QTest::qWait(50);
             }},
        {.name = "86_piece_light",
         .last =
             [](gui::Window& w) {
                 changePiece(w, "crane gusset");
                 w.desk().page().editor().figures().openPart(gui::PlanPart::Corner, 2);
                 QTest::qWait(50);
             }},
        {.name = "87_piece_dark",
         .dark = true,
         .last =
             [](gui::Window& w) {
                 changePiece(w, "base plate with bolt holes");
                 w.desk().page().editor().figures().openPart(gui::PlanPart::Extra, 1);
                 QTest::qWait(50);
             }},
        {.name = "88_piece_1024",
         .size = {1024, 700},
         .last = [](gui::Window& w) { changePiece(w, "tank end, rusted"); }},
        {.name = "89_piece_200", .text = 2, .last = [](gui::Window& w) { changePiece(w, "stair tread"); }},
        {.name = "8a_rack_2560", .size = {2560, 1440}, .last = onRack},
        {.name = "8b_piece_bad_area_wrong",
         .last =
             [](gui::Window& w) {
                 changePiece(w, "L from the loader arm");
                 w.desk().page().editor().figures().openPart(gui::PlanPart::Obstacle, 0);
                 QTest::qWait(50);
                 auto* box = w.desk().page().editor().findChild<gui::FieldBox*>("offcuts[12].thickness");
                 auto* edit = box->findChild<QLineEdit*>();
                 edit->setFocus();
                 edit->selectAll();
                 QTest::keyClicks(edit, "16 mmm");
                 QTest::keyClick(edit, Qt::Key_Return);
                 QTest::qWait(50);
             }},
        {.name = "90_propose_light", .set = noPlate, .sample = "mill_lane_six_pin", .seen = proposed()},
        {.name = "91_propose_dark",
         .dark = true,
         .set = [](gui::Window& w) { w.setUnits(units::System::Inch); },
         .sample = "mill_lane_eight_pin_inch",
         .seen = proposed()},
        {.name = "92_propose_small",
         .set = noPlate,
         .sample = "mill_lane_six_pin",
         .seen = proposed({460, 400})},
        {.name = "93_propose_200",
         .text = 2,
         .set = noPlate,
         .sample = "mill_lane_six_pin",
         .seen = proposed({1240, 700})},
        {.name = "94_propose_missing",
         .set =
             [](gui::Window& w) {
                 noPlate(w);
                 w.document().edit("stations.circle", {}, "Circle");
                 w.document().edit("screw.thread", {}, "Thread");
             },
         .sample = "mill_lane_six_pin",
         .seen = proposed()},
        {.name = "95_propose_working",
         .dark = true,
         .sample = "mill_lane_six_pin",
         .seen = [](gui::Window& w) -> QWidget* {
             gui::ProposeDialog* dialog = w.propose();
             QTest::qWait(250);
             return dialog;
         }},
        {.name = "96_propose_wanted", .set = noPlate, .sample = "mill_lane_six_pin"},
        {.name = "97_propose_weak",
         .set =
             [](gui::Window& w) {
                 w.document().edit("screw.thread", "M10", "Thread");
                 w.document().edit("load.total", "60 kN", "Load");
             },
         .sample = "mill_lane_six_pin",
         .seen = proposed()},
        {.name = "98_propose_whole",
         .set = noPlate,
         .sample = "mill_lane_six_pin",
         .seen = proposed({900, 1000})},
        {.name = "12_1920_light",
         .size = {1920, 1080},
         .set = [](gui::Window& w) { w.figures().openGroup("wanted"); }},
    };
    for (const auto& shot : shots) {
        if (std::string_view(shot.name).find(part) == std::string_view::npos)
            continue;
        gui::settings::setColours(shot.dark ? gui::settings::Colours::Dark : gui::settings::Colours::Light);
        gui::settings::setTextSize(shot.text);
        gui::settings::setUnitSystem(units::System::Metric);
        gui::CheckFunction check = fakeCheck;
        if (shot.sample)
            check = engine::check;
        gui::LadderFunction ladder = fakeLadder;
        if (shot.sample)
            ladder = engine::ladder;
        gui::Window window(gui::Engine{
            .check = check, .ladder = ladder, .tryTool = engine::tryTool, .propose = engine::propose});
        window.resize(shot.size);
        window.document().startNew(eightPinJob());
        window.show();
        window.activateWindow();
        (void)QTest::qWaitForWindowActive(&window, 500);
        if (shot.sample)
            window.openFile(std::string(PW_SAMPLES "/") + shot.sample + ".plate.json");
        if (shot.set)
            shot.set(window);
        QTest::qWait(600);
        if (!QTest::qWaitFor([&] { return !window.isChecking() && !window.strip().isSearching(); }, 60000))
            return 1;
        if (shot.last)
            shot.last(window);
        QTest::qWait(100);
        const QString file = folder + QLatin1Char('/') + QLatin1String(shot.name) + QStringLiteral(".png");
        QWidget* seen = shot.seen ? shot.seen(window) : &window;
        if (!seen->grab().save(file))
            return 1;
    }
    return grabSheets(folder, part) ? 0 : 1;
}

} // namespace pw::testing
