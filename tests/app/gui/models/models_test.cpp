#include "app/gui/models/assumed_text.h"
#include "app/gui/models/check_text.h"
#include "app/gui/models/fields.h"
#include "app/gui/models/missing_order.h"
#include "app/gui/models/new_job.h"
#include "app/gui/models/sentences.h"
#include "core/jobfile/read.h"
#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>

namespace pw::gui {
namespace {

using jobfile::Tree;
using testing::eightPinJob;
using units::System;

QString sentence(const char* group, const Tree& tree, System system = System::Metric) {
    return groupSentence(group, tree, jobfile::readJob(tree).job, nullptr, system);
}

TEST(Fields, are_all_known_to_the_reader_of_the_job_file) {
    // Every path that a field writes is one that the reader takes: none comes back as an unknown key.
    Tree tree = eightPinJob();
    tree.set("stations.hole.shape", "slot");
    std::vector<Field> fields;
    for (const auto& group : fieldGroups(tree))
        fields.insert(fields.end(), group.fields.begin(), group.fields.end());
    const auto spring = springFields(tree, 0);
    fields.insert(fields.end(), spring.main.begin(), spring.main.end());
    fields.insert(fields.end(), spring.more.begin(), spring.more.end());
    for (const auto& row : spring.readings)
        fields.insert(fields.end(), row.begin(), row.end());
    EXPECT_GT(fields.size(), 50u);
    for (const auto& field : fields) {
        Tree filled = tree;
        filled.set(field.path, "x");
        EXPECT_TRUE(jobfile::readJob(filled).unknownKeys.empty()) << field.path;
        EXPECT_FALSE(field.label.isEmpty()) << field.path;
        EXPECT_EQ(groupOf(tree, field.path).empty(), false) << field.path;
    }
}

TEST(Fields, offer_only_choices_that_the_reader_understands) {
    const Tree tree = eightPinJob();
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields)
            for (const auto& [value, words] : field.choices) {
                if (value.isEmpty())
                    continue;
                Tree chosen = tree;
                if (field.kind == FieldKind::Flag)
                    chosen.set(field.path, value == QLatin1String("true"));
                else
                    chosen.set(field.path, value.toStdString());
                for (const auto& problem : jobfile::readJob(chosen).problems)
                    EXPECT_NE(problem.field, field.path) << value.toStdString() << ": " << problem.message;
            }
}

TEST(Fields, of_a_puller_ask_for_bolts_and_not_for_pins) {
    Tree tree = eightPinJob();
    tree.set("work", "pull");
    for (const auto& group : fieldGroups(tree))
        for (const auto& field : group.fields) {
            if (field.path == "stations.pin") {
                EXPECT_FALSE(field.appliesTo(tree));
            } else if (field.path == "stations.circle") {
                EXPECT_EQ(field.label, "Bolt circle");
            }
        }
}

TEST(Fields, ask_how_a_hub_sits_and_is_gripped_only_when_something_is_pulled) {
    Tree tree = eightPinJob();
    const auto asked = [&](const std::string& id) {
        for (const auto& group : fieldGroups(tree))
            if (group.id == id)
                return group.applies;
        return false;
    };
    for (const char* id : {"hub", "grip", "ram"})
        EXPECT_FALSE(asked(id)) << id;
    tree.set("work", "pull");
    for (const char* id : {"hub", "grip", "ram"})
        EXPECT_TRUE(asked(id)) << id;
}

TEST(Sentences, say_the_whole_job_in_plain_words) {
    const Tree tree = eightPinJob();
    EXPECT_EQ(sentence("squeezed", tree), "Springs in a ring, 3\u00a0mm further");
    EXPECT_EQ(sentence("stations", tree), "8 on Ø130, access holes 20");
    EXPECT_EQ(sentence("steel", tree), "10\u00a0mm, unknown scrap, disc Ø180");
    EXPECT_EQ(sentence("back", tree), "Bar 60 × 25, 150 apart");
    EXPECT_EQ(sentence("cutting", tree), "Plasma table, holes ±\u00a00.5");
    EXPECT_EQ(sentence("wanted", tree), "2, and no set to see");
}

TEST(Sentences, follow_the_unit_of_the_window) {
    Tree tree = eightPinJob();
    tree.set("stations.circle", "6 in");
    tree.set("stations.access_hole", "7/8 in");
    EXPECT_EQ(sentence("stations", tree, System::Inch), "8 on Ø6″, access holes 7/8″");
}

TEST(NewJob, has_nothing_wrong_in_it_and_asks_for_what_only_a_measurement_tells) {
    for (const auto kind : {NewJob::CompressRing, NewJob::CompressBar, NewJob::PullBolts, NewJob::PullStrongback}) {
        const Tree tree = newJob(kind, System::Metric);
        const auto reading = jobfile::readJob(tree);
        EXPECT_TRUE(reading.unknownKeys.empty());
        for (const auto& problem : reading.problems) // an open row of readings is all that may be unfinished
            EXPECT_TRUE(problem.field.starts_with("springs[0].loads[0]")) << problem.field << problem.message;
        EXPECT_FALSE(reading.job.plate.thickness);
        EXPECT_FALSE(reading.job.stations.circle);
    }
}

TEST(AssumedText, is_what_the_check_itself_takes) {
    Tree tree = eightPinJob();
    tree.set("cutting.process", "hand torch");
    tree.erase("cutting.layout_error");
    const auto job = jobfile::readJob(tree).job;
    EXPECT_EQ(assumedText("cutting.layout_error", job, nullptr, System::Metric),
              QString::fromStdString(units::show(units::Length::fromMm(1.5), System::Metric)));
    EXPECT_EQ(assumedText("stations.land", job, nullptr, System::Metric), "30\u00a0mm"); // the retainer
    EXPECT_EQ(assumedText("stations.pin", job, nullptr, System::Metric), "");
}

TEST(MissingOrder, asks_first_for_what_comes_first_in_the_column) {
    engine::Report report;
    report.missing = {{"screw.thread", "thread"},
                      {"plate.thickness", "thickness"},
                      {"stations.circle", "circle"},
                      {"springs", "springs"}};
    orderMissing(report, newJob(NewJob::CompressRing, System::Metric));
    EXPECT_EQ(report.missing[0].field, "stations.circle");
    EXPECT_EQ(report.missing[1].field, "springs");
    EXPECT_EQ(report.missing[2].field, "plate.thickness");
    EXPECT_EQ(report.reason, "circle");
}

TEST(MissingOrder, leaves_the_reason_alone_when_a_figure_is_wrong) {
    engine::Report report;
    report.reason = "The bore is larger than the plate.";
    report.missing = {{"screw.thread", "thread"}};
    report.problems = {{"plate.bore", "too large"}};
    orderMissing(report, eightPinJob());
    EXPECT_EQ(report.reason, "The bore is larger than the plate.");
}

TEST(MarginText, is_a_ratio_for_strength_and_a_short_figure_for_room) {
    verdict::Check check;
    check.margin = 2.6412;
    EXPECT_EQ(marginText(check, System::Metric), "2.6");
    check.kind = verdict::CheckKind::Fit;
    check.unit = "mm";
    check.margin = 14.142;
    EXPECT_EQ(marginText(check, System::Metric), "14.1\u00a0mm");
    EXPECT_EQ(marginText(check, System::Inch), "0.557″"); // 14.142 / 25.4
    check.margin.reset();
    EXPECT_EQ(marginText(check, System::Metric), "?");
}

} // namespace
} // namespace pw::gui
