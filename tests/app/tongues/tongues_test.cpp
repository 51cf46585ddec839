#include "app/tongues/tongues.h"

#include "app/engine/check.h"
#include "core/util/say.h"

#include "tests/support/jobs.h"

#include <gtest/gtest.h>
#include <QCoreApplication>
#include <QLocale>

namespace pw::tongues {
namespace {

/// A program, in a language that ends with it.
class Tongues : public ::testing::Test {
protected:
    void SetUp() override { QLocale::setDefault(QLocale::c()); }
    void TearDown() override {
        EXPECT_TRUE(speak(QStringLiteral("en")));
        QLocale::setDefault(QLocale::c());
        EXPECT_TRUE(speak(QStringLiteral("en")));
    }

private:
    int m_count = 1;
    char m_name[6] = "tests";
    char* m_words[2] = {m_name, nullptr};
    QCoreApplication m_application{m_count, m_words};
};

TEST_F(Tongues, german_comes_with_the_program) {
    EXPECT_TRUE(languages().contains(QStringLiteral("en")));
    EXPECT_TRUE(languages().contains(QStringLiteral("de")));
}

TEST_F(Tongues, german_is_spoken_by_window_core_and_engine_alike_with_a_comma) {
    ASSERT_TRUE(speak(QStringLiteral("de")));
    EXPECT_EQ(tongue().decimalMark, ',');
    EXPECT_EQ(QLocale().language(), QLocale::German);
    EXPECT_EQ(say("%1 to %2", {"1", "2"}), "1 bis 2");
    EXPECT_EQ(sayMany("%n pierces, %1 of cut, about %2.", "1 pierce, %1 of cut, about %2.", 3, {"a", "b"}),
              "3 Lochstiche, a Schnitt, etwa b.");
    EXPECT_EQ(QCoreApplication::translate("pw::gui::VerdictHead", "thin"), QStringLiteral("knapp"));
    const auto report = engine::check(testing::jobOf(testing::sampleTree("mill_lane_six_pin")));
    EXPECT_NE(report.reason.find("Bleibt bei voller Federkraft gerade."), std::string::npos) << report.reason;
}

TEST_F(Tongues, a_german_desktop_of_another_country_keeps_its_own_mark) {
    QLocale::setDefault(QLocale(QLocale::German, QLocale::Switzerland));
    ASSERT_TRUE(speak(QStringLiteral("de")));
    EXPECT_EQ(tongue().decimalMark, '.');
}

TEST_F(Tongues, english_on_a_desktop_with_a_comma_shows_commas) {
    QLocale::setDefault(QLocale(QLocale::French, QLocale::France));
    EXPECT_TRUE(speak(QStringLiteral("en")));
    EXPECT_EQ(tongue().decimalMark, ',');
    EXPECT_EQ(say("%1 to %2", {"1", "2"}), "1 to 2");
}

TEST_F(Tongues, english_comes_back_whole) {
    ASSERT_TRUE(speak(QStringLiteral("de")));
    ASSERT_TRUE(speak(QStringLiteral("en")));
    EXPECT_EQ(QCoreApplication::translate("pw::gui::VerdictHead", "thin"), QStringLiteral("thin"));
    EXPECT_EQ(say("full load"), "full load");
}

TEST_F(Tongues, a_language_without_a_translation_is_english) {
    EXPECT_FALSE(speak(QStringLiteral("tlh")));
    EXPECT_EQ(say("full load"), "full load");
    EXPECT_EQ(tongue().decimalMark, '.');
}

} // namespace
} // namespace pw::tongues
