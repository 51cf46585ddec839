#include "core/util/say.h"

#include "tests/support/other_tongue.h"

#include <gtest/gtest.h>
#include <stdexcept>

namespace pw {
namespace {

using testing::OtherTongue;

/// Turns the order of two places round, as languages do, and has three ways to count.
std::string turned(const char* sentence, long long count) {
    const std::string_view text = sentence;
    if (text == "%1 of %2")
        return "of %2 the %1";
    if (text == "%n jars")
        return count == 1 ? "%1: einer" : count == 2 ? "%1: ein Paar" : "%1: " + std::to_string(count);
    return {};
}

TEST(Say, puts_words_in_their_places) {
    EXPECT_EQ(say("%1 of %2", {"a", 3}), "a of 3");
    EXPECT_EQ(say("%2, then %1 and %2", {"a", "b"}), "b, then a and b");
    EXPECT_EQ(say("nothing to fill"), "nothing to fill");
}

TEST(Say, leaves_per_cent_signs_and_places_without_a_word_alone) {
    EXPECT_EQ(say("100 % of %1, %2", {"it"}), "100 % of it, %2");
    EXPECT_EQ(say("%1%", {"5"}), "5%");
    EXPECT_EQ(say("%1 and %2", {"%2", "x"}), "%2 and x"); // what was put in is not looked into again
}

TEST(Say, counts_one_apart_from_many) {
    EXPECT_EQ(sayMany("%n turns", "1 turn", 1), "1 turn");
    EXPECT_EQ(sayMany("%n turns", "1 turn", 0), "0 turns");
    EXPECT_EQ(sayMany("%n turns of %1", "1 turn of %1", 12, {"it"}), "12 turns of it");
}

TEST(Say, asks_the_tongue_first_and_says_english_where_it_has_no_word) {
    const OtherTongue other(turned);
    EXPECT_EQ(say("%1 of %2", {"a", "b"}), "of b the a");
    EXPECT_EQ(say("unheard of"), "unheard of");
    EXPECT_EQ(sayMany("%n jars", "1 jar", 1, {"x"}), "x: einer");
    EXPECT_EQ(sayMany("%n jars", "1 jar", 2, {"x"}), "x: ein Paar");
    EXPECT_EQ(sayMany("%n jars", "1 jar", 5, {"x"}), "x: 5");
}

TEST(Say, lists_as_people_do) {
    EXPECT_EQ(sayAll({}), "");
    EXPECT_EQ(sayAll({"a"}), "a");
    EXPECT_EQ(sayAll({"a", "b"}), "a and b");
    EXPECT_EQ(sayAll({"a", "b", "c", "d"}), "a, b, c and d");
}

TEST(SetTongue, takes_a_point_or_a_comma_and_nothing_else) {
    EXPECT_THROW(setTongue({nullptr, ';'}), std::logic_error);
    EXPECT_EQ(tongue().decimalMark, '.');
}

TEST(Say, a_title_inside_a_sentence_loses_its_capital_in_english_only) {
    EXPECT_EQ(inSentence("Plate, permanent set"), "plate, permanent set");
    EXPECT_EQ(inSentence(""), "");
    const OtherTongue german(turned);
    EXPECT_EQ(inSentence("Platte"), "Platte");
}

} // namespace
} // namespace pw
