#include "app/engine/check.h"
#include "app/engine/mend.h"
#include "app/engine/write.h"
#include "core/jobfile/json.h"
#include "core/jobfile/read.h"
#include "core/units/parse.h"

#include "tests/support/jobs.h"
#include "tests/support/other_tongue.h"

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <sstream>

/// In a language with a decimal comma people read commas, and whatever is written stays as it is.
namespace pw::engine {
namespace {

using testing::OtherTongue;

constexpr const char* kSamples[] = {"mill_lane_six_pin", "mill_lane_eight_pin_inch", "mill_lane_square_four",
                                    "mill_lane_six_pin_thin"};

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in(file, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::string upper(const char* sentence, long long) {
    return "UEBERSETZT " + std::string(sentence);
}

/// Everything that is written of a job, one text a file.
std::vector<std::string> writtenOf(const std::string& sample) {
    const auto folder = std::filesystem::path(::testing::TempDir());
    std::vector<std::string> texts;
    const jobfile::Tree tree = testing::sampleTree(sample);
    const auto saved = folder / "other_tongue.plate.json";
    EXPECT_TRUE(jobfile::saveTree(tree, saved).ok());
    texts.push_back(contentOf(saved));
    const job::Job job = testing::jobOf(tree);
    const Report report = check(job);
    for (const char* name : {"plate.dxf", "plate.svg", "plate.ngc"})
        for (const bool path : {false, true}) {
            CutChoices choices;
            choices.path = path;
            choices.anyway = true;
            const auto file = folder / name;
            const auto said = writeCutFile(job, report, file, choices);
            EXPECT_TRUE(said.ok()) << util::toText(said.problem());
            texts.push_back(contentOf(file));
        }
    return texts;
}

TEST(OtherTongue, changes_no_byte_of_what_is_written) {
    for (const char* sample : kSamples) {
        const auto english = writtenOf(sample);
        for (const auto translate : {static_cast<std::string (*)(const char*, long long)>(nullptr), &upper}) {
            const OtherTongue other(translate);
            const auto there = writtenOf(sample);
            ASSERT_EQ(there.size(), english.size());
            for (std::size_t i = 0; i < english.size(); ++i) {
                EXPECT_GT(english[i].size(), 100U);
                EXPECT_TRUE(there[i] == english[i]) << sample << ", text " << i;
            }
        }
    }
}

/// A figure with a point in it and a unit behind it: "12.5 mm", with the no-break space of what is shown.
bool hasPointedFigure(const std::string& text) {
    const auto isDigit = [&](std::size_t i) { return i < text.size() && text[i] >= '0' && text[i] <= '9'; };
    for (std::size_t dot = text.find('.'); dot != std::string::npos; dot = text.find('.', dot + 1)) {
        if (dot == 0 || !isDigit(dot - 1) || !isDigit(dot + 1))
            continue;
        std::size_t end = dot + 1;
        while (isDigit(end))
            ++end;
        for (const char* unit : {"mm", "kN", "N", "MPa", "J", "in", "lbf", "lb-ft", "ksi"})
            if (std::string_view(text).substr(end).starts_with(std::string("\u00a0") + unit))
                return true;
    }
    return false;
}

TEST(OtherTongue, has_its_comma_in_every_figure_that_is_read) {
    for (const char* sample : kSamples) {
        const job::Job job = testing::jobOf(testing::sampleTree(sample));
        const Report english = check(job);
        const OtherTongue comma;
        const Report report = check(job);
        int pointsInEnglish = 0;
        const auto look = [&](const std::string& before, const std::string& text) {
            pointsInEnglish += hasPointedFigure(before) ? 1 : 0;
            EXPECT_FALSE(hasPointedFigure(text)) << text;
        };
        look(english.reason, report.reason);
        ASSERT_EQ(report.checks.size(), english.checks.size());
        for (std::size_t i = 0; i < report.checks.size(); ++i)
            look(english.checks[i].basis, report.checks[i].basis);
        ASSERT_EQ(report.steps.size(), english.steps.size());
        for (std::size_t i = 0; i < report.steps.size(); ++i)
            look(english.steps[i], report.steps[i]);
        EXPECT_GT(pointsInEnglish, 3) << sample; // there was something to change
    }
}

TEST(OtherTongue, leaves_the_values_of_mends_as_a_job_file_has_them) {
    const job::Job job = testing::jobOf(testing::sampleTree("mill_lane_six_pin_thin"));
    const auto english = mends(job, check(job), {});
    ASSERT_FALSE(english.empty());
    const OtherTongue comma(upper);
    const auto there = mends(job, check(job), {});
    ASSERT_EQ(there.size(), english.size());
    for (std::size_t i = 0; i < there.size(); ++i) {
        EXPECT_EQ(there[i].field, english[i].field);
        EXPECT_EQ(there[i].value, english[i].value);
    }
}

} // namespace
} // namespace pw::engine
