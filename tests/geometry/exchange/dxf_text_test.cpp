#include "geometry/exchange/dxf_text.h"

#include "core/util/require.h"
#include "tests/support/comma_desktop.h"
#include "tests/support/hostile_texts.h"

#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace pw::exchange {
namespace {

TEST(DxfReal, IsFixedWithAPointWhateverTheSize) {
    EXPECT_EQ(dxfReal(0), "0.0");
    EXPECT_EQ(dxfReal(-0.0), "0.0");
    EXPECT_EQ(dxfReal(-1e-14), "0.0");
    EXPECT_EQ(dxfReal(12), "12.0");
    EXPECT_EQ(dxfReal(-12.7), "-12.7");
    EXPECT_EQ(dxfReal(1234567.25), "1234567.25");
    EXPECT_EQ(dxfReal(1.0 / 3, 4), "0.3333");
}

TEST(DxfReal, KeepsItsPointOnADesktopWithADecimalComma) {
    const testing::CommaDesktop comma;
    EXPECT_EQ(dxfReal(1234.5), "1234.5");
    EXPECT_EQ(plainFigure(12.7, 2), "12.7");
}

TEST(DxfReal, RefusesWhatIsNoNumber) {
    EXPECT_THROW(dxfReal(std::nan("")), util::Bug);
    EXPECT_THROW(dxfReal(std::numeric_limits<double>::infinity()), util::Bug);
}

TEST(DxfText, LeavesPlainTextAlone) {
    EXPECT_EQ(dxfText("Six-pin disc, 1/2\" (scrap) 50%"), "Six-pin disc, 1/2\" (scrap) 50%");
}

TEST(DxfText, SpellsOtherSignsByTheirNumber) {
    // Unicode: one half U+00BD, latin capital O with stroke U+00D8, cyrillic capital zhe U+0416, CJK U+5186.
    EXPECT_EQ(dxfText("½ Ø Ж 円"), "\\U+00BD \\U+00D8 \\U+0416 \\U+5186");
}

TEST(DxfText, MakesLineEndsAndControlsOneSpace) {
    EXPECT_EQ(dxfText("  a\r\n\tb \x01 c\xE2\x80\xA8 d\n"), "a b c d");
    EXPECT_EQ(dxfText("left \xE2\x80\xAEright"), "left right"); // right-to-left override
}

TEST(DxfText, DisarmsTheControlCodesOfTheFormat) {
    EXPECT_EQ(dxfText("\\U+0041"), "\\U+005CU+0041");
    EXPECT_EQ(dxfText("^J"), "\\U+005EJ");
    EXPECT_EQ(dxfText("%%u 50%%"), "%u 50%");
}

TEST(DxfText, PutsAQuestionMarkOrReplacementForWhatCannotBeSpelled) {
    EXPECT_EQ(dxfText("a\xF0\x9F\x94\xA9z"), "a?z");    // U+1F529
    EXPECT_EQ(dxfText("a\xC3"), "a\\U+FFFD");           // torn
    EXPECT_EQ(dxfText("\xC0\xAF"), "\\U+FFFD\\U+FFFD"); // overlong
}

TEST(DxfText, CutsALongTextAndShowsThatItDid) {
    const std::string cut = dxfText(std::string(10000, 'x'), 100);
    EXPECT_EQ(cut, std::string(100, 'x') + "...");
}

TEST(DxfText, NeverExceedsAGroupValueNorTearsASpelledSign) {
    for (const std::string& text : testing::hostileTexts()) {
        const std::string spelled = dxfText(text);
        EXPECT_LE(spelled.size(), 255u); // the most an R12 reader takes
        for (std::size_t i = 0; i < spelled.size(); ++i) {
            EXPECT_GE(spelled[i], ' ');
            EXPECT_LE(spelled[i], '~');
            if (spelled[i] == '\\') {
                ASSERT_LE(i + 7, spelled.size());
                EXPECT_EQ(spelled.substr(i, 3), "\\U+");
                EXPECT_EQ(spelled.substr(i + 3, 4).find_first_not_of("0123456789ABCDEF"), std::string::npos);
            }
        }
    }
}

TEST(Wrapped, BreaksAtSpacesAndLosesNoWord) {
    const std::vector<std::string> lines = wrapped("one two three four five", 9);
    EXPECT_EQ(lines, (std::vector<std::string>{"one two", "three", "four five"}));
}

TEST(Wrapped, BreaksALongWordAtASignNotInsideIt) {
    for (const std::string& line : wrapped("ЖЖЖЖЖЖЖЖЖЖЖЖ", 9))
        EXPECT_EQ(line.size() % 2, 0u) << line; // each sign has two bytes
}

} // namespace
} // namespace pw::exchange
