#include "app/gui/help/help_window.h"

#include "app/engine/check.h"
#include "app/gui/help/help_pages.h"
#include "app/gui/help/help_scenes.h"
#include "app/gui/models/fields.h"
#include "app/gui/models/new_job.h"
#include "app/gui/panels/figures_panel.h"
#include "app/gui/panels/verdict_panel.h"
#include "app/gui/views/plan_view.h"
#include "app/gui/widgets/check_row.h"
#include "app/gui/widgets/field_box.h"
#include "app/gui/window.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <algorithm>
#include <filesystem>
#include <gtest/gtest.h>
#include <QAbstractButton>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QTest>
#include <QTextBlock>
#include <QTextBrowser>

namespace pw::gui {
namespace {

QStringList linksOf(const QString& html) {
    static const QRegularExpression link(QStringLiteral("(?:href|src)=\"([^\"]+)\""));
    QStringList found;
    for (auto all = link.globalMatch(html); all.hasNext();)
        found << all.next().captured(1);
    return found;
}

bool hasGroup(const std::string& path) {
    for (const NewJob kind : {NewJob::CompressRing, NewJob::PullBolts, NewJob::PullStrongback})
        if (!groupOf(newJob(kind, units::System::Metric), path).empty())
            return true;
    return false;
}

class HelpPagesIn : public ::testing::TestWithParam<const char*> {
protected:
    HelpPagesIn() { settings::setLanguage(QString::fromLatin1(GetParam())); }
    ~HelpPagesIn() override { settings::setLanguage(QStringLiteral("en")); }
};

TEST_P(HelpPagesIn, are_all_there) {
    for (const auto& page : helpPages())
        EXPECT_GT(helpPage(page.name).size(), 400) << page.name.toStdString();
}

TEST_P(HelpPagesIn, lead_only_to_what_exists) {
    QStringList pages;
    for (const auto& page : helpPages())
        pages << page.name;
    for (const auto& page : helpPages())
        for (const QString& link : linksOf(helpPage(page.name))) {
            const QString kind = link.section(':', 0, 0), what = link.section(':', 1);
            const std::string at = (page.name + ": " + link).toStdString();
            if (kind == "page")
                EXPECT_TRUE(pages.contains(what)) << at;
            else if (kind == "scene")
                EXPECT_FALSE(helpScene(what, 1).isNull()) << at;
            else if (kind == "figure")
                EXPECT_TRUE(hasGroup(what.toStdString())) << at;
            else
                EXPECT_TRUE((QStringList{"view", "new", "verdict", "sketch"}.contains(kind))) << at;
        }
}

TEST_P(HelpPagesIn, name_every_field_they_point_at_as_the_window_does) {
    for (const auto& page : helpPages())
        EXPECT_FALSE(helpPage(page.name).contains(QStringLiteral(">@<"))) << page.name.toStdString();
}

TEST_P(HelpPagesIn, explain_every_check_of_every_sample) {
    const QString page = helpPage(QStringLiteral("checks"));
    int checks = 0;
    for (const auto& entry : std::filesystem::directory_iterator(PW_SAMPLES)) {
        if (!entry.path().string().ends_with(".plate.json"))
            continue;
        const auto tree = jobfile::loadTree(entry.path());
        ASSERT_TRUE(tree);
        for (const auto& check : engine::check(jobfile::readJob(*tree).job).checks) {
            ++checks;
            EXPECT_TRUE(page.contains(QStringLiteral("name=\"%1\"").arg(QString::fromStdString(check.id))))
                << check.id << " of " << entry.path();
        }
    }
    EXPECT_GT(checks, 200);
}

TEST_P(HelpPagesIn, tell_how_to_measure_every_field_that_says_how) {
    const QString page = helpPage(QStringLiteral("measuring"));
    for (const NewJob kind : {NewJob::CompressRing, NewJob::PullBolts, NewJob::PullStrongback})
        for (const auto& group : fieldGroups(newJob(kind, units::System::Metric)))
            for (const auto& field : group.fields)
                if (!field.how.isEmpty()) {
                    const QString mark =
                        QStringLiteral("name=\"%1\"").arg(QString::fromStdString(field.path));
                    EXPECT_TRUE(page.contains(mark)) << field.path;
                }
}

INSTANTIATE_TEST_SUITE_P(Languages, HelpPagesIn, ::testing::Values("en", "de"));

/// A window with the real engine, and its help.
class HelpTest : public ::testing::Test {
protected:
    HelpTest() {
        settings::setUnitSystem(units::System::Metric);
        Engine engine;
        engine.check = [](const job::Job& job, const engine::CheckOptions& options) {
            return engine::check(job, options);
        };
        Questions questions;
        questions.unsaved = [](QWidget*, const QString&) { return Questions::Unsaved::Discard; };
        window = std::make_unique<Window>(engine, questions);
        window->resize(1366, 768);
        window->show();
        window->activateWindow();
        settle();
    }
    void settle() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return window->report() && !window->isChecking(); }, 30000));
        QTest::qWait(20);
    }
    /// As a mechanic does: a choice is picked by its words, everything else is typed.
    void enter(const std::string& path, const QString& words) {
        window->figures().openField(path, true);
        QTest::qWait(5);
        auto* box = window->figures().findChild<FieldBox*>(QString::fromStdString(path));
        ASSERT_TRUE(box) << path;
        for (const auto& group : fieldGroups(window->document().tree()))
            for (const auto& field : group.fields)
                if (field.path == path && field.kind == FieldKind::Choice) {
                    const auto choice = std::find_if(field.choices.begin(), field.choices.end(),
                                                     [&](const auto& c) { return c.second == words; });
                    ASSERT_NE(choice, field.choices.end()) << path << " " << words.toStdString();
                    window->document().edit(path, choice->first.toStdString(), field.label);
                    return;
                }
        auto* line = box->findChild<QLineEdit*>();
        ASSERT_TRUE(line) << path;
        line->setFocus();
        line->selectAll();
        QTest::keyClicks(line, words);
        QTest::keyClick(line, Qt::Key_Return);
    }

    std::unique_ptr<Window> window;
};

TEST_F(HelpTest, leads_from_an_empty_job_to_the_verdicts_it_names) {
    static const QRegularExpression step(
        QStringLiteral("<a href=\"(figure|verdict|new):([^\"]+)\">[^<]*</a>(?::\\s*<b>([^<]*)</b>)?"));
    int figures = 0, verdicts = 0;
    for (auto all = step.globalMatch(helpPage(QStringLiteral("first_job"))); all.hasNext();) {
        const auto match = all.next();
        const QString kind = match.captured(1), what = match.captured(2);
        if (kind == "new") {
            ASSERT_EQ(what, "ring");
            window->document().startNew(newJob(NewJob::CompressRing, units::System::Metric));
        } else if (kind == "verdict") {
            settle();
            EXPECT_EQ(QString::fromUtf8(verdict::wordOf(window->report()->grade)), what)
                << window->report()->reason;
            ++verdicts;
        } else {
            ASSERT_FALSE(match.captured(3).isEmpty()) << what.toStdString();
            enter(what.toStdString(), match.captured(3));
            ++figures;
        }
    }
    EXPECT_GT(figures, 30);
    EXPECT_EQ(verdicts, 2);
}

TEST_F(HelpTest, opens_the_field_and_the_view_its_links_name) {
    HelpWindow* help = window->showHelp(QStringLiteral("first_job"));
    Q_EMIT help->text().anchorClicked(QUrl(QStringLiteral("figure:plate.thickness")));
    EXPECT_EQ(window->figures().openGroupId(), "steel");
    Q_EMIT help->text().anchorClicked(QUrl(QStringLiteral("view:stress")));
    EXPECT_EQ(window->plan().view(), PlanView::View::Stress);
    Q_EMIT help->text().anchorClicked(QUrl(QStringLiteral("page:cautions")));
    EXPECT_EQ(help->page(), "cautions");
    EXPECT_EQ(help->list().currentItem()->data(Qt::UserRole).toString(), "cautions");
}

TEST_F(HelpTest, starts_where_the_keyboard_is) {
    window->figures().openField("stations.circle", true);
    QTest::qWait(20);
    HelpWindow* help = window->showHelp();
    EXPECT_EQ(help->page(), "measuring");
    help->close();
    window->document().startNew(testing::eightPinJob());
    settle();
    ASSERT_FALSE(window->verdict().rows().empty());
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get(), 5000));
    window->verdict().rows()[0]->findChild<QAbstractButton*>()->setFocus();
    EXPECT_EQ(window->showHelp()->page(), "checks");
}

} // namespace
} // namespace pw::gui
