#include "core/jobfile/json.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <clocale>
#include <limits>

namespace pw::jobfile {
namespace {

std::string refusal(std::string_view text) {
    const auto tree = fromJson(text);
    return tree ? "read without a problem" : tree.problem().message;
}

/// The message has the place and the reason.
void expectRefusal(std::string_view text, std::string_view place, std::string_view reason) {
    const std::string message = refusal(text);
    EXPECT_NE(message.find(place), std::string::npos) << message;
    EXPECT_NE(message.find(reason), std::string::npos) << message;
}

TEST(Json, ReadsEveryKindOfValueInOrder) {
    const auto tree = fromJson(R"({"b": 1.5, "a": [true, null, "½ in", -7], "c": {"d": {}}})");
    ASSERT_TRUE(tree) << tree.problem().message;
    EXPECT_EQ(tree->members()->front().first, "b");
    EXPECT_EQ(*tree->at("b")->number(), 1.5);
    EXPECT_TRUE(*tree->at("a[0]")->boolean());
    EXPECT_TRUE(tree->at("a[1]")->isNull());
    EXPECT_EQ(*tree->at("a[2]")->text(), "½ in");
    EXPECT_EQ(*tree->at("a[3]")->number(), -7);
    EXPECT_TRUE(tree->at("c.d")->members()->empty());
}

TEST(Json, AByteOrderMarkIsNoHindrance) {
    EXPECT_TRUE(fromJson("\xEF\xBB\xBF{\"a\": 1}"));
}

TEST(Json, ADoubledKeyIsRefusedWithItsPlace) {
    expectRefusal("{\"plate\": 1,\n \"work\": 2,\n \"plate\": 3}", "line 3, column 8",
                  "\"plate\" stands twice");
}

TEST(Json, TheSameKeyInTwoGroupsIsFine) {
    EXPECT_TRUE(fromJson(R"({"a": {"x": 1}, "b": {"x": 1}})"));
}

TEST(Json, NotANumberIsRefused) {
    expectRefusal("{\"a\": NaN}", "line 1, column 7", "NaN");
    expectRefusal("{\"a\": -Infinity}", "line 1", "NaN and Infinity");
}

TEST(Json, ANumberNoDoubleCanHoldIsRefused) {
    expectRefusal("{\"a\": 1e999}", "line 1", "too large");
    expectRefusal("{\"a\": 9007199254740993}", "line 1", "more digits");
}

TEST(Json, DepthOver64IsRefusedAndDepth64IsNot) {
    const auto nested = [](std::size_t depth) { return std::string(depth, '[') + std::string(depth, ']'); };
    EXPECT_TRUE(fromJson(nested(64)));
    expectRefusal(nested(65), "line 1, column 65", "deeper than 64");
    expectRefusal(std::string(1'000'000, '['), "line 1, column 65", "deeper than 64");
}

TEST(Json, TextOver4MiBIsRefused) {
    expectRefusal("[" + std::string(std::size_t(4) << 20, ' ') + "]", "4 MiB", "no job file");
}

TEST(Json, AFileCutShortSaysSo) {
    expectRefusal("{\"plate\": {\"thick", "line 1, column", "cut short");
    expectRefusal("{\"plate\": {\n\"thickness\": 3,", "line 2, column", "cut short");
}

TEST(Json, AnEmptyFileSaysSo) {
    expectRefusal("", "", "empty");
    expectRefusal(" \n\t", "", "empty");
}

TEST(Json, ABinaryFileSaysSo) {
    expectRefusal(std::string_view("\x7f"
                                   "ELF\x02\x01\0\0",
                                   8),
                  "", "binary");
    expectRefusal("PK\x03\x04 zipped", "", "binary");
}

TEST(Json, TextThatIsNotUtf8IsRefused) {
    expectRefusal("{\"title\": \"caf\xe9\"}", "line 1", "UTF-8");      // Latin-1
    expectRefusal("{\"title\": \"\xc0\xaf\"}", "line 1", "UTF-8");     // overlong
    expectRefusal("{\"title\": \"\xed\xa0\x80\"}", "line 1", "UTF-8"); // surrogate
}

TEST(Json, CommonSlipsAreNamed) {
    expectRefusal("{\"a\": [1, 2,]}", "line 1, column 13", "comma too many");
    expectRefusal("{\"a\": 1 \"b\": 2}", "line 1", "comma");
    expectRefusal("{\"a\" 1}", "line 1", "colon");
    expectRefusal("{a: 1}", "line 1", "double quotes");
    expectRefusal("{\"a\": 1}\n{}", "line 2, column 1", "more text after the end");
    expectRefusal("{\"a\": \"two\nlines\"}", "line 1", "line break");
}

TEST(Json, FiguresThatShouldStandInQuotesAreNamed) {
    expectRefusal("{\"a\": 1/2 in}", "line 1, column 8", "\"1/2 in\"");
    expectRefusal("{\"a\": .5}", "line 1, column 7", "0.5");
    expectRefusal("{\"a\": 1.}", "line 1", "0.5");
    expectRefusal("{\"a\": 1,\n// two\n}", "line 2, column 1", "comment");
    expectRefusal("{\"a\": True}", "line 1", "not JSON");
}

TEST(Json, ColumnsCountCharactersNotBytes) {
    expectRefusal("{\"½\": x}", "line 1, column 7", "not JSON");
}

TEST(Json, WritesShortListsOnOneLineAndGroupsOverSeveral) {
    Tree tree;
    tree.set("platewright", 1);
    tree.set("stations.at[0][0]", "50 mm");
    tree.set("stations.at[0][1]", "0 mm");
    tree.set("springs[0].wire", 4.5);
    EXPECT_EQ(toJson(tree), "{\n"
                            "  \"platewright\": 1,\n"
                            "  \"stations\": {\n"
                            "    \"at\": [[\"50 mm\", \"0 mm\"]]\n"
                            "  },\n"
                            "  \"springs\": [{\"wire\": 4.5}]\n"
                            "}\n");
}

TEST(Json, AListTooLongForALineStandsOverSeveral) {
    Tree tree = Tree::list();
    for (int i = 0; i < 20; ++i)
        tree.push("123456789");
    const std::string text = toJson(tree);
    EXPECT_EQ(std::ranges::count(text, '\n'), 22);
    EXPECT_EQ(*fromJson(text), tree);
}

TEST(Json, NumbersComeBackExactly) {
    for (const double value :
         {0.1, 1.0 / 3, 1e-300, 1.7976931348623157e308, -0.30000000000000004, 6.0, 1e21}) {
        const auto back = fromJson(toJson(Tree::List{Tree(value)}));
        ASSERT_TRUE(back) << back.problem().message;
        EXPECT_EQ(*back->at("[0]")->number(), value);
    }
    EXPECT_EQ(toJson(0.1), "0.1\n");
    EXPECT_EQ(toJson(6), "6\n");
}

TEST(Json, AFigureThatWasNotComputedIsWrittenAsNull) {
    EXPECT_EQ(toJson(Tree(std::numeric_limits<double>::quiet_NaN())), "null\n");
    EXPECT_EQ(toJson(Tree(std::numeric_limits<double>::infinity())), "null\n");
    EXPECT_EQ(toJson(Tree()), "null\n");
}

TEST(Json, QuotesLineBreaksAndForeignLettersComeBack) {
    const Tree tree("a \"b\" \\ \n\t\x01 ½ ″ ± –");
    EXPECT_EQ(*fromJson(toJson(tree)), tree);
}

TEST(Json, WhatIsWrittenIsAlwaysUtf8) {
    const auto back = fromJson(toJson(Tree("bad \xff byte")));
    ASSERT_TRUE(back);
    EXPECT_EQ(*back->text(), "bad \uFFFD byte");
}

TEST(Json, ACommaDecimalDesktopChangesNothing) {
    const std::string before = std::setlocale(LC_ALL, nullptr);
    // Where the locale is not installed this asserts the same thing under "C".
    std::setlocale(LC_ALL, "de_DE.UTF-8");
    const std::string written = toJson(Tree(1.5));
    const auto read = fromJson("2.25");
    std::setlocale(LC_ALL, before.c_str());
    EXPECT_EQ(written, "1.5\n");
    EXPECT_EQ(*read->number(), 2.25);
}

} // namespace
} // namespace pw::jobfile
