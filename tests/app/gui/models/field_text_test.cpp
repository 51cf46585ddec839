#include "app/gui/models/field_text.h"

#include "tests/support/other_tongue.h"

#include <gtest/gtest.h>

namespace pw::gui {
namespace {

using jobfile::Tree;
using units::System;

const QLocale kPoint = QLocale::c();
const QLocale kComma(QLocale::German, QLocale::Germany);

Field length() {
    return {.path = "x", .label = "x", .kind = FieldKind::Length};
}

Field ofKind(FieldKind kind) {
    return {.path = "x", .label = "x", .kind = kind};
}

TEST(TypedValue, gives_a_bare_figure_the_unit_of_the_preference) {
    EXPECT_EQ(*typedValue("130", length(), System::Metric, kPoint), Tree("130 mm"));
    EXPECT_EQ(*typedValue("5 1/8", length(), System::Inch, kPoint), Tree("5 1/8 in"));
    EXPECT_EQ(*typedValue("180-205", ofKind(FieldKind::Force), System::Inch, kPoint), Tree("180-205 lbf"));
    EXPECT_EQ(*typedValue("190 ±5%", ofKind(FieldKind::Force), System::Inch, kPoint), Tree("190 lbf ±5%"));
}

TEST(TypedValue, keeps_a_figure_with_its_unit_to_the_letter) {
    EXPECT_EQ(*typedValue("2 11/32\"", length(), System::Metric, kPoint), Tree("2 11/32\""));
    EXPECT_EQ(*typedValue("180-205 lb", ofKind(FieldKind::Force), System::Metric, kPoint),
              Tree("180-205 lb"));
}

TEST(TypedValue, asks_what_a_bare_fraction_is_where_millimetres_are_usual) {
    const auto value = typedValue("7/8", length(), System::Metric, kPoint);
    ASSERT_FALSE(value.ok());
    EXPECT_NE(value.problem().message.find("7/8 in"), std::string::npos);
}

TEST(TypedValue, is_nothing_for_an_empty_box) {
    EXPECT_TRUE(typedValue("  ", length(), System::Metric, kPoint)->isNull());
}

TEST(TypedValue, takes_whole_numbers_only_where_things_are_counted) {
    EXPECT_EQ(*typedValue("8", ofKind(FieldKind::Count), System::Metric, kPoint), Tree(8));
    EXPECT_FALSE(typedValue("8.5", ofKind(FieldKind::Count), System::Metric, kPoint).ok());
    EXPECT_FALSE(typedValue("many", ofKind(FieldKind::Count), System::Metric, kPoint).ok());
}

TEST(DecimalComma, is_read_and_saved_as_a_point) {
    EXPECT_EQ(*typedValue("12,7", length(), System::Metric, kComma), Tree("12.7 mm"));
    EXPECT_EQ(*typedValue("12,7 mm", length(), System::Metric, kComma), Tree("12.7 mm"));
    EXPECT_EQ(*typedValue("2,5", ofKind(FieldKind::Number), System::Metric, kComma), Tree(2.5));
    EXPECT_EQ(*typedValue("1.250,5 N", ofKind(FieldKind::Force), System::Metric, kComma), Tree("1250.5 N"));
    EXPECT_EQ(*typedValue("12.7 mm", length(), System::Metric, kComma), Tree("12.7 mm"));
}

TEST(DecimalComma, makes_a_point_before_three_digits_a_question) {
    const auto value = typedValue("1.250 N", ofKind(FieldKind::Force), System::Metric, kComma);
    ASSERT_FALSE(value.ok());
    EXPECT_NE(value.problem().message.find("1250"), std::string::npos);
    EXPECT_NE(value.problem().message.find("1,250"), std::string::npos);
    EXPECT_EQ(*typedValue("0.125 in", length(), System::Metric, kComma), Tree("0.125 in"));
}

TEST(DecimalComma, is_shown_but_not_in_threads_and_names) {
    const Tree thread("M20x1.5"), size("12.7 mm");
    EXPECT_EQ(shownText(&size, length(), kComma), "12,7 mm");
    EXPECT_EQ(shownText(&thread, ofKind(FieldKind::Thread), kComma), "M20x1.5");
    EXPECT_EQ(withLocalMark("1,690 lbf and .030 in", kComma), "1\u00a0690 lbf and ,030 in");
}

TEST(DecimalComma, is_in_the_other_unit_too) {
    const testing::OtherTongue comma;
    const Tree mm("130 mm"), thin("2.5 mm");
    EXPECT_EQ(otherUnit(&mm, length()), "5,118″");
    EXPECT_EQ(otherUnit(&thin, length()), "0,0984″"); // 2.5 / 25.4
}

TEST(ShownText, gives_a_plain_number_the_unit_it_counts_in) {
    const Tree number(12.5), range(Tree::List{Tree("650 N"), Tree("725 N")});
    EXPECT_EQ(shownText(&number, length(), kPoint), "12.5 mm");
    EXPECT_EQ(shownText(&range, ofKind(FieldKind::Force), kPoint), "650 N to 725 N");
    EXPECT_EQ(shownText(nullptr, length(), kPoint), "");
}

TEST(OtherUnit, shows_the_same_figure_on_the_other_side_of_the_inch) {
    const Tree mm("130 mm"), inch("1 in"), force("180-205 lbf"), plain(25.4);
    EXPECT_EQ(otherUnit(&mm, length()), "5.118″");
    EXPECT_EQ(otherUnit(&inch, length()), "25.4\u00a0mm");
    EXPECT_EQ(otherUnit(&plain, length()), "1″");
    EXPECT_EQ(otherUnit(&force, ofKind(FieldKind::Force)), "801–912\u00a0N"); // 1 lbf = 4.4482216 N
    const Tree nonsense("20 mmm");
    EXPECT_EQ(otherUnit(&nonsense, length()), "");
}

} // namespace
} // namespace pw::gui
