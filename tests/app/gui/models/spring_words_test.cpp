#include "app/gui/models/spring_words.h"

#include "tests/app/gui/support/fake_engine.h"

#include <gtest/gtest.h>

namespace pw::gui {
namespace {

using jobfile::Tree;

QString wordsOf(std::initializer_list<std::pair<const char*, const char*>> readings) {
    Tree tree = testing::eightPinJob();
    tree.erase("springs[0].rate");
    tree.erase("springs[0].loads");
    std::size_t i = 0;
    for (const auto& [length, force] : readings) {
        const std::string row = "springs[0].loads[" + std::to_string(i++) + "]";
        tree.set(row + ".length", length);
        tree.set(row + ".force", force);
    }
    return springWords(tree, jobfile::readJob(tree), 0, units::System::Metric).join(QLatin1Char('\n'));
}

TEST(SpringWords, work_rate_and_preload_out_of_two_readings) {
    // 1000 N at 40 mm and 800 N at 50 mm: 20 N/mm, and at 42 mm, as built in, 960 N. The stated ranges are
    // the readings themselves, so nothing is widened.
    const QString words = wordsOf({{"40 mm", "1000-1000.001 N"}, {"50 mm", "800-800.001 N"}});
    EXPECT_TRUE(words.contains(QStringLiteral("rises by 20\u00a0N/mm"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("960\u00a0N"))) << words.toStdString();
    // 3 mm further: 1020 N.
    EXPECT_TRUE(words.contains(QStringLiteral("1.02\u00a0kN"))) << words.toStdString();
}

TEST(SpringWords, say_that_one_reading_leaves_the_rate_a_guess) {
    EXPECT_TRUE(wordsOf({{"42 mm", "800 N"}}).contains(QStringLiteral("guess")));
}

TEST(SpringWords, name_the_pair_that_cannot_both_be_right) {
    const QString words = wordsOf({{"50 mm", "1000 N"}, {"45 mm", "1250 N"}, {"40 mm", "600 N"}});
    EXPECT_TRUE(words.contains(QStringLiteral("Readings 1 and 3"))) << words.toStdString();
    EXPECT_TRUE(words.contains(QStringLiteral("Readings 2 and 3"))) << words.toStdString();
    EXPECT_FALSE(words.contains(QStringLiteral("Readings 1 and 2")));
}

TEST(SpringWords, name_the_reading_that_lies_off_the_line_of_the_others) {
    // Through (40, 1000), (45, 995), (50, 800), (55, 700) least squares gives 928 N at 45 mm.
    const QString words = wordsOf(
        {{"40 mm", "990-1010 N"}, {"45 mm", "985-1005 N"}, {"50 mm", "790-810 N"}, {"55 mm", "690-710 N"}});
    EXPECT_TRUE(words.contains(QStringLiteral("reading at 45\u00a0mm lies off"))) << words.toStdString();
}

TEST(SpringWords, are_silent_without_figures) {
    EXPECT_TRUE(wordsOf({}).isEmpty());
}

} // namespace
} // namespace pw::gui
