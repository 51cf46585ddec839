#include "tests/app/gui/support/grab.h"

#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/settings/settings.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/window.h"
#include "tests/app/gui/support/fake_engine.h"

#include <functional>
#include <QAbstractButton>
#include <QDir>
#include <QElapsedTimer>
#include <QLineEdit>
#include <QTest>

namespace pw::testing {

namespace {

struct Shot {
    const char* name;
    QSize size{1366, 768};
    bool dark = false;
    double text = 1;
    std::function<void(gui::Window&)> set;
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

} // namespace

int grabWindows(const QString& folder) {
    QDir().mkpath(folder);
    using View = gui::PlanView::View;
    const std::vector<Shot> shots{
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
        {.name = "12_1920_light",
         .size = {1920, 1080},
         .set = [](gui::Window& w) { w.figures().openGroup("wanted"); }},
    };
    for (const auto& shot : shots) {
        gui::settings::setColours(shot.dark ? gui::settings::Colours::Dark : gui::settings::Colours::Light);
        gui::settings::setTextSize(shot.text);
        gui::settings::setUnitSystem(units::System::Metric);
        gui::Window window(gui::Engine{fakeCheck, {}, {}});
        window.resize(shot.size);
        window.document().startNew(eightPinJob());
        window.show();
        window.activateWindow();
        (void)QTest::qWaitForWindowActive(&window, 500);
        shot.set(window);
        QTest::qWait(600);
        const QString file = folder + QLatin1Char('/') + QLatin1String(shot.name) + QStringLiteral(".png");
        if (!window.grab().save(file))
            return 1;
    }
    return 0;
}

} // namespace pw::testing
